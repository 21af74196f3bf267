"""The widest quiet cut along the spindle at one speed, in plain floats.

A plan asks for this one number, also where no arrays are installed. It is the search of
`crossings.find_crossings` on the grid of `loop.Loop` with one speed and real coefficients; a test
holds the two together.
"""

from dataclasses import dataclass
from itertools import pairwise
from math import ceil, cos, inf, isfinite, pi, sin, sqrt

from seatwork import checks
from seatwork.cutting.chatter.parts import Cut, Cutter, Machine
from seatwork.cutting.chatter.search import BELOW, PER_RESONANCE, POINTS_PER_TURN, POLISH, VERTICES
from seatwork.errors import SeatworkError


@dataclass(frozen=True, slots=True)
class Point:
    """A frequency [rad/s] and the mismatch there, zero at a crossing."""

    at: float
    value: float


@dataclass(frozen=True, slots=True, kw_only=True)
class AxialLoop:
    """Cutting and structure along the spindle at one speed, in SI units."""

    machine: Machine
    gain: float
    drag: float
    delays: tuple[float, ...]

    def cutting(self, w: float) -> tuple[float, float]:
        """Return the real and the imaginary part of D2 at a frequency [rad/s]."""
        one = sum(1 - cos(w * delay) for delay in self.delays) / len(self.delays)
        sine = sum(sin(w * delay) for delay in self.delays) / len(self.delays)
        return self.gain * one, self.drag * w + self.gain * sine

    def point(self, w: float) -> Point:
        """Return the mismatch at a frequency [rad/s]."""
        m, (real, imaginary) = self.machine, self.cutting(w)
        stiff = m.stiffness - m.mass * w**2
        return Point(w, m.damping * w * real - stiff * imaginary)

    def width(self, w: float) -> float:
        """Return the width of cut [m] that puts a root at a frequency [rad/s]."""
        m, (real, imaginary) = self.machine, self.cutting(w)
        stiff = m.stiffness - m.mass * w**2
        size = max(real**2 + imaginary**2, 1e-300)
        return -(stiff * real + m.damping * w * imaginary) / size

    def band(self, widest: float) -> tuple[float, float]:
        """Return the frequencies [rad/s] between which roots cross for widths to `widest` [m]."""
        m, reach = self.machine, widest * self.drag
        far = m.stiffness + 2 * widest * self.gain
        top = (reach + sqrt(reach**2 + 4 * m.mass * far)) / (2 * m.mass)
        rubbed_out = self.gain / self.drag if self.drag > 0 else inf
        return BELOW * m.angular_frequency, min(top, rubbed_out)

    @property
    def density(self) -> float:
        """Points of the grid for each rad/s."""
        resonance = max(PER_RESONANCE, 3 / self.machine.damping_ratio)
        turns = max(self.delays) / (2 * pi) * POINTS_PER_TURN
        return max(turns, resonance / self.machine.angular_frequency)


def axial_limit(
    *, machine: Machine, cutter: Cutter, cut: Cut, spindle_speed: float, widest: float = 50.0
) -> tuple[float, float] | None:
    """Find the width of cut at which chatter along the spindle begins.

    Parameters
    ----------
    machine : Machine
        How the machine gives, axially.
    cutter : Cutter
        Lips, angle and spacing.
    cut : Cut
        Cutting coefficient, mean diameter, process damping.
    spindle_speed : float
        Spindle speed [rev/min].
    widest : float
        Widest cut looked at [mm].

    Returns
    -------
    (float, float) or None
        Width [mm] and frequency [Hz]; None if there is no limit up to `widest`.

    Raises
    ------
    SeatworkError
        If a speed or width is not above zero, or the machine gives laterally.
    """
    checks.quantity(spindle_speed, "spindle speed", "rev/min")
    checks.length(widest, "widest cut")
    if machine.direction != "axial":
        fault = "this search holds along the spindle only"
        raise SeatworkError(machine.direction, fault, "use width_limit for sideways chatter")
    loop = _loop(machine, cutter, cut, spindle_speed)
    found = [(loop.width(w), w) for w in _crossings(loop, *loop.band(widest / 1000))]
    first = min((one for one in found if 0 < one[0] <= widest / 1000), default=None)
    return (1000 * first[0], first[1] / (2 * pi)) if first else None


def _loop(machine: Machine, cutter: Cutter, cut: Cut, spindle_speed: float) -> AxialLoop:
    share = cutter.flutes * sin(cutter.half_angle) ** 2
    surface_speed = pi * cut.mean_diameter / 1000 * spindle_speed / 60
    shares = cutter.shares[:1] if cutter.equally_spaced else cutter.shares
    return AxialLoop(
        machine=machine,
        gain=share * cut.normal_coefficient,
        drag=share * cut.process_damping / surface_speed,
        delays=tuple(one * 60 / spindle_speed for one in shares),
    )


def _crossings(loop: AxialLoop, low: float, top: float) -> list[float]:
    """Return the frequencies between two at which the mismatch is zero."""
    if top <= low:
        return []
    count = ceil((top - low) * loop.density) + 3
    step = (top - low) / (count - 1)
    grid = [loop.point(low + n * step) for n in range(count)]
    pairs = pairwise(grid)
    brackets = [(a, b) for a, b in pairs if (a.value < 0) != (b.value < 0)]
    for three in zip(grid, grid[1:], grid[2:], strict=False):
        brackets += _hidden_pair(loop, *three)
    return [_closed_in(loop, a, b) for a, b in brackets]


def _hidden_pair(loop: AxialLoop, a: Point, middle: Point, b: Point) -> list[tuple[Point, Point]]:
    """Return the brackets of two crossings that lie between three points of one sign."""
    below = middle.value < 0
    same = (a.value < 0) == below == (b.value < 0)
    if not same or abs(middle.value) > min(abs(a.value), abs(b.value)):
        return []
    for _ in range(VERTICES):
        turn = loop.point(_vertex(a, middle, b))
        if turn.value > middle.value if middle.value <= 0 else turn.value < middle.value:
            middle = turn
    if (middle.value < 0) == (a.value < 0):
        return []
    return [(a, middle), (middle, b)]


def _vertex(a: Point, middle: Point, b: Point) -> float:
    """Return where a parabola through three points turns, kept between the outer two."""
    before = (middle.at - a.at) * (middle.value - b.value)
    after = (middle.at - b.at) * (middle.value - a.value)
    slope = before - after
    if not slope:
        return middle.at
    turn = middle.at - 0.5 * ((middle.at - a.at) * before - (middle.at - b.at) * after) / slope
    return min(max(turn if isfinite(turn) else middle.at, a.at), b.at)


def _closed_in(loop: AxialLoop, a: Point, b: Point) -> float:
    """Close a bracket by the Illinois rule."""
    for _ in range(POLISH):
        span = b.value - a.value
        c = loop.point(b.at - b.value * (b.at - a.at) / (span or 1))
        a = b if (c.value < 0) != (b.value < 0) else Point(a.at, a.value / 2)
        b = c
    return b.at
