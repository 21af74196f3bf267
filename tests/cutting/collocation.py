"""A second method for chatter: Chebyshev collocation of delay equations.

The state over the longest delay is a polynomial through Chebyshev points. For
constant coefficients its generator is differentiated (Breda, Maset and
Vermiglio 2005); for coefficients that repeat with the delay the map from one
period to the next is solved. Nothing here is shared with the package.
"""

from collections.abc import Callable

import numpy as np
from scipy.linalg import eigvals

Matrix = np.ndarray


def points(count: int) -> tuple[Matrix, Matrix]:
    """Chebyshev points from 1 down to -1, and their differentiation matrix (Trefethen 2000)."""
    k = np.arange(count + 1)
    x = np.cos(np.pi * k / count)
    c = np.where((k == 0) | (k == count), 2.0, 1.0) * (-1.0) ** k
    difference = x[:, None] - x[None, :] + np.eye(count + 1)
    d = np.outer(c, 1 / c) / difference
    return x, d - np.diag(d.sum(axis=1))


def interpolation(x: Matrix, at: float) -> Matrix:
    """Row of barycentric weights that reads the polynomial through `x` at `at`."""
    if np.any(np.isclose(x, at, rtol=0, atol=1e-14)):
        return np.isclose(x, at, rtol=0, atol=1e-14).astype(float)
    weights = (-1.0) ** np.arange(len(x))
    weights[[0, -1]] /= 2
    row = weights / (at - x)
    return row / row.sum()


def roots(now: Matrix, delayed: list[tuple[float, Matrix]], count: int) -> Matrix:
    """Characteristic roots of x' = now x + sum of matrix x(t - delay), rightmost first."""
    longest, n = max(delay for delay, _ in delayed), len(now)
    x, d = points(count)
    generator = np.kron(2 / longest * d, np.eye(n))
    generator[:n] = 0
    generator[:n, :n] = now
    for delay, matrix in delayed:
        generator[:n] += np.kron(interpolation(x, 1 - 2 * delay / longest), matrix)
    found = eigvals(generator)
    return found[np.argsort(-found.real)]


def multiplier(
    now: Callable[[float], Matrix], delayed: Callable[[float], Matrix], period: float, count: int
) -> float:
    """Largest multiplier of x' = now(t) x + delayed(t) x(t - period) over one period."""
    x, d = points(count)
    times, n = (x + 1) / 2 * period, len(now(0.0))
    left = np.kron(2 / period * d, np.eye(n))
    right = np.zeros_like(left)
    for row, time in enumerate(times):
        block = slice(n * row, n * (row + 1))
        left[block, block] -= now(time)
        right[block, block] = delayed(time)
    left[-n:], right[-n:] = 0, 0
    left[-n:, -n:] = np.eye(n)  # the period starts where the last one ended
    right[-n:, :n] = np.eye(n)
    return float(np.abs(np.linalg.eigvals(np.linalg.solve(left, right))).max())


def axial(
    *,
    stiffness: float,
    frequency: float,
    damping: float,
    gain: float,
    rub: float,
    shares: list[float],
    turn: float,
    count: int,
) -> Matrix:
    """Roots of the axial loop; `gain` and `rub` of all lips at a width, `turn` the time of one."""
    w = 2 * np.pi * frequency
    m = stiffness / w**2
    now = np.array(
        [[0, 1], [-(stiffness + gain) / m, -(2 * damping * stiffness / w + rub) / m]], dtype=float
    )
    back = np.array([[0, 0], [gain / m / len(shares), 0]])
    return roots(now, [(share * turn, back) for share in shares], count)


def turning(
    *,
    stiffness: float,
    frequency: float,
    damping: float,
    normal: float,
    tangential: float,
    rub: float,
    friction: float,
    lean: float,
    shares: list[float],
    turn: float,
    count: int,
) -> Matrix:
    """Roots of sideways chatter in real coordinates on the tool.

    `normal`, `tangential` and `rub` are of one lip at a width; `lean` is the
    cosine of half the included angle. Lip j+1 stands share j ahead of lip j.
    """
    w, spin = 2 * np.pi * frequency, 2 * np.pi / turn
    m, c = stiffness / w**2, 2 * damping * stiffness / w
    j, one = np.array([[0.0, -1.0], [1.0, 0.0]]), np.eye(2)
    place = (m * spin**2 - stiffness) * one - c * spin * j
    speed = -c * one - 2 * m * spin * j
    delayed, angle = [], 0.0
    for share in shares:
        out, along = (
            np.array([np.cos(angle), np.sin(angle)]),
            np.array([-np.sin(angle), np.cos(angle)]),
        )
        chip = np.outer(normal * lean * out + tangential * along, lean * out)
        drag = np.outer(lean * out + friction * along, lean * rub * out)
        place = place - chip - spin * drag @ j
        speed = speed - drag
        back = -spin * share * turn
        rotate = np.array([[np.cos(back), -np.sin(back)], [np.sin(back), np.cos(back)]])
        delayed.append((share * turn, _lower(chip @ rotate / m)))
        angle += 2 * np.pi * share
    now = np.block([[np.zeros((2, 2)), one], [place / m, speed / m]])
    return roots(now, delayed, count)


def _lower(block: Matrix) -> Matrix:
    return np.block([[np.zeros((2, 2)), np.zeros((2, 2))], [block, np.zeros((2, 2))]])
