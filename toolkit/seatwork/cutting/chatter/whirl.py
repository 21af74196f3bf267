"""Sideways chatter of one or two flutes and of unequal spacing, seen from the turning tool.

In a frame that turns with the tool the coefficients stand still for any number
of lips and any spacing. Displacement u and its conjugate make a 2 x 2 matrix

    M(s) = [[L + b P, b Q], [b Q*, L* + b P*]]      D(s) = det M = d0 + d1 b + d2 b^2
    L = m (s+iO)^2 + c (s+iO) + k
    P = sum_j X_j(s+iO)/2        Q = sum_j exp(2i th_j) X_j(s-iO)/2
    X_j(p) = cos(a) (Kn cos(a) + i Kt) [1 - exp(-p tau_j)] + (C/v) cos(a) (cos(a) + i mu) p

O the spindle speed [rad/s], th_j the place of lip j on the tool; a star takes
the conjugate of the coefficients and leaves s alone. A root crosses where the
real and imaginary parts of D share a real width b: where their resultant is zero.
"""

from dataclasses import dataclass
from math import cos, pi

import numpy as np

from seatwork.cutting.chatter.loop import Complexes, Floats, Ints
from seatwork.cutting.chatter.parts import Cut, Cutter, Machine

HIGHEST = 3.5  # natural frequencies up to which sideways chatter is looked for
_SLANT = 1e-4  # imaginary over whole width, above which two roots are not the same


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Whirl:
    """Cutting and structure in the turning frame at a row of spindle speeds, in SI units.

    Parameters
    ----------
    machine : Machine
        Structure, equally soft all round.
    gain, drag : complex
        Factor of the chip [N/m2], and of velocity over v [N/m] in X.
    surface_speed : ndarray
        Speed at the mean diameter for each spindle speed [m/s].
    turning : ndarray
        Spindle speed [rad/s].
    places : ndarray, shape (lips,)
        Where each lip stands on the tool [rad].
    shares : ndarray, shape (lips,)
        Share of a turn to the lip ahead [-].
    """

    machine: Machine
    gain: complex
    drag: complex
    surface_speed: Floats
    turning: Floats
    places: Floats
    shares: Floats

    @property
    def roots_each(self) -> int:
        """Roots off the real axis cross in pairs."""
        return 2

    @property
    def delays(self) -> Floats:
        """Longest phase the resultant holds, as a delay [s] for each spindle speed."""
        return np.asarray(2 * self.shares.max() * 2 * pi / self.turning)[None, :]

    def _structure(self, p: Complexes) -> Complexes:
        m = self.machine
        return np.asarray(m.mass * p * p + m.damping * p + m.stiffness)

    def _lips(self, p: Complexes, column: Ints, turned: int) -> Complexes:
        """Half the sum of exp(turned i th_j) X_j(p)."""
        total: Complexes = p * 0
        period = 2 * pi / self.turning[column]
        for place, share in zip(self.places, self.shares, strict=True):
            chip = self.gain * (1 - np.exp(-p * (share * period)))
            rub = self.drag / self.surface_speed[column] * p
            total = total + np.exp(1j * turned * place) / 2 * (chip + rub)
        return total

    def matrix(self, w: Floats, column: Ints) -> tuple[Complexes, ...]:
        """L, P, Q at s = iw, then L*, P*, Q*."""
        turning = self.turning[column]
        up, down = 1j * (w + turning), 1j * (w - turning)
        plain = self._structure(up), self._lips(up, column, 0), self._lips(down, column, 2)
        # The conjugate of the coefficients at s is the conjugate of the whole at conj(s) = -iw.
        mirror = (
            self._structure(-down).conj(),
            self._lips(-down, column, 0).conj(),
            self._lips(-up, column, 2).conj(),
        )
        return *plain, *mirror

    def quadratic(self, w: Floats, column: Ints) -> tuple[Complexes, Complexes, Complexes]:
        """d0, d1 and d2 at s = iw."""
        low, p, q, low_star, p_star, q_star = self.matrix(w, column)
        last = 0 * p if self._straight() else p * p_star - q * q_star
        return low * low_star, low * p_star + low_star * p, last

    def _straight(self) -> bool:
        """Tell whether sharp lips stand on one line: then D is linear in the width."""
        opposite = len(self.shares) == 2 and abs(self.shares[0] - self.shares[1]) < 1e-12
        return self.drag == 0 and (len(self.shares) == 1 or opposite)

    def mismatch(self, w: Floats, column: Ints) -> Floats:
        """Resultant of the real and imaginary part of D as polynomials in the width."""
        d0, d1, d2 = self.quadratic(w, column)
        bc = (d1.conj() * d0).imag
        if self._straight():
            return bc
        ac, ab = (d2.conj() * d0).imag, (d2.conj() * d1).imag
        return ac**2 - ab * bc

    def width(self, w: Floats, column: Ints) -> Floats:
        """Width of cut [m] that is the common root."""
        d0, d1, d2 = self.quadratic(w, column)
        root = np.sqrt(d1**2 - 4 * d2 * d0)
        widths = np.stack([_share(2 * d0, -d1 + root), _share(2 * d0, -d1 - root)])
        with np.errstate(invalid="ignore"):
            slant = np.nan_to_num(np.abs(widths.imag) / np.abs(widths), nan=np.inf)
        best = slant.argmin(axis=0)[None, :]
        real: Floats = np.take_along_axis(widths, best, axis=0)[0].real
        # Where d2 vanishes the resultant does too, and the common root is an endless width.
        return np.where(np.take_along_axis(slant, best, axis=0)[0] < _SLANT, real, np.inf)

    def direction(self, w: Floats, column: Ints, width: Floats) -> Ints:
        """+1 where roots turn unstable as the width grows, -1 where they turn stable."""
        _, d1, d2 = self.quadratic(w, column)
        small = 1e-6 * self.machine.angular_frequency
        ahead, behind = (self._determinant(w + d, column, width) for d in (small, -small))
        slope = (ahead - behind) / (2j * small)
        motion = -(d1 + 2 * width * d2) * slope.conj()
        return np.where(motion.real > 0, 1, -1)

    def _determinant(self, w: Floats, column: Ints, width: Floats) -> Complexes:
        d0, d1, d2 = self.quadratic(w, column)
        return d0 + width * (d1 + width * d2)

    def bands(self, widest: float) -> list[tuple[Floats, Floats]]:
        """Frequencies [rad/s] between which roots can cross for widths up to `widest` [m]."""
        m, lips = self.machine, len(self.shares)
        drag = widest * lips * abs(self.drag) / self.surface_speed
        constant = m.stiffness + 2 * widest * lips * abs(self.gain)
        reach = (drag + np.sqrt(drag**2 + 4 * m.mass * constant)) / (2 * m.mass)
        low = np.full_like(self.turning, 1e-5 * m.angular_frequency)
        return [(low, np.minimum(reach, HIGHEST * m.angular_frequency) + self.turning)]

    def static(self, widest: float) -> tuple[Ints, Floats, Ints]:
        """Crossings of a real root: whirl that keeps step with the tool."""
        column = np.arange(len(self.turning))
        d0, d1, d2 = (part.real for part in self.quadratic(np.zeros(len(column)), column))
        root = np.sqrt((d1**2 - 4 * d2 * d0).astype(complex))
        widths = np.concatenate([_share(2 * d0, -d1 + root), _share(2 * d0, -d1 - root)])
        columns = np.concatenate([column, column])
        good = (np.abs(widths.imag) < 1e-12) & (widths.real > 0) & (widths.real <= widest)
        at, columns = widths.real[good], columns[good]
        return columns, at, self.direction(np.zeros(len(at)), columns, at)

    def stationary(self, w: float, column: int, width: float) -> float:
        """Frequency [rad/s] seen by a bystander: of the larger of the two turning waves."""
        low, p, q, low_star, p_star, q_star = (
            complex(part[0]) for part in self.matrix(np.array([w]), np.array([column]))
        )
        first, second = (low + width * p, width * q), (width * q_star, low_star + width * p_star)
        row = max(first, second, key=lambda row: abs(row[0]) + abs(row[1]))
        turning = float(self.turning[column])
        return turning + w if abs(row[1]) >= abs(row[0]) else turning - w


def _share(top: Complexes | Floats, bottom: Complexes) -> Complexes:
    with np.errstate(over="ignore", invalid="ignore"):
        return np.asarray(top / np.where(bottom == 0, 1e-300, bottom))


def whirl(machine: Machine, cutter: Cutter, cut: Cut, spindle_speeds: Floats) -> Whirl:
    """Turning-frame model of a cut at `spindle_speeds` [rev/min], any lips and spacing."""
    lean = cos(cutter.half_angle)
    return Whirl(
        machine=machine,
        gain=lean * (cut.normal_coefficient * lean + 1j * cut.tangential_coefficient),
        drag=cut.process_damping * lean * (lean + 1j * cut.friction),
        surface_speed=pi * cut.mean_diameter / 1000 * spindle_speeds / 60,
        turning=2 * pi * spindle_speeds / 60,
        places=2 * pi * np.array(cutter.places),
        shares=np.array(cutter.shares),
    )
