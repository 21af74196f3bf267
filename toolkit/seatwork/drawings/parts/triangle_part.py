"""What a picture of the triangle shows: a cone, what it holds, a step, and the slips beside it."""

from dataclasses import dataclass, replace

from seatwork.errors import SeatworkError
from seatwork.quantities import Angle, Length
from seatwork.seats import Countersink, Triangle, ball_top
from seatwork.seats.triangles import SLIPS

STEPS = 5
HOLDS = ("nothing", "a pin", "a ball", "a head")
FINDS = {
    "down": ("seat", "difference", "across", "half", "down"),
    "diameter": ("seat", "lines", "half", "across", "diameter"),
    "angle": ("seat", "difference", "across", "tangent", "angle"),
}
"""By what is looked for, what each step brings."""

BESIDE = "another angle"

FOLD = 3
"""The step at which the section is folded in half."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TrianglePart:
    """A cone and its triangle, as far as a step goes.

    Parameters
    ----------
    seat : Countersink
        The cone on its hole.
    step : int
        How far it is built, 1 to 5.
    slips : tuple of str
        Slips drawn beside it, of ``seatwork.seats.triangles.SLIPS``.
    holds : {"nothing", "a pin", "a ball", "a head"}
        What lies in the cone.
    held : float or None
        Its diameter [mm]; a head's theoretical sharp diameter.
    find : {"down", "diameter", "angle"}
        What is looked for; the others are given.
    beside : float or None
        Included angle of another cone drawn beside it, on the same hole and as wide [deg].

    Raises
    ------
    SeatworkError
        If the sizes make no triangle, or there is no such step, slip or thing to find.
    """

    seat: Countersink
    step: int = STEPS
    slips: tuple[str, ...] = ()
    holds: str = "nothing"
    held: float | None = None
    find: str = "down"
    beside: float | None = None

    def __post_init__(self) -> None:
        if isinstance(self.step, bool) or self.step not in range(1, STEPS + 1):
            raise SeatworkError(self.step, "there is no such step", f"take 1 to {STEPS}")
        _known(self.find, tuple(FINDS), "nothing of that name can be looked for")
        _known(self.holds, HOLDS, "a cone cannot hold that here")
        for slip in self.slips:
            _known(slip, SLIPS, "no slip has that name")
        if self.beside is not None and (self.slips or self.holds == "a ball"):
            other = "slips" if self.slips else "a ball"
            fault = f"another angle is not drawn together with {other}"
            raise SeatworkError(Angle(self.beside), fault, "leave one of them out")
        self._refuse_what_does_not_go()

    def _refuse_what_does_not_go(self) -> None:
        """Refuse what cannot lie in the cone, and what has no picture of its own."""
        if self.holds == "nothing":
            return
        if self.held is None:
            raise SeatworkError("nothing", f"{self.holds} has a diameter", "give it")
        if self.find != "down":
            raise SeatworkError(self.find, f"with {self.holds} only down is looked for", "leave it")
        if self.holds == "a ball":
            ball_top(self.held, self.seat)
            if self.slips:
                raise SeatworkError(self.slips[0], "a ball has no such slip", "leave it out")
        elif not self.held > self.seat.hole_diameter:
            raise SeatworkError(
                Length(self.held),
                f"{self.holds} no wider than the hole, {{hole}}, drops through",
                "take a wider one",
                hole=Length(self.seat.hole_diameter),
            )
        elif self.holds == "a pin" and not self.held < self.seat.diameter:
            raise SeatworkError(
                Length(self.held),
                "a pin as wide as the seat, {seat}, does not go into it",
                "take a narrower one",
                seat=Length(self.seat.diameter),
            )
        elif self.held == self.seat.diameter:
            fault = "so wide a head lies flush in this seat: there is no triangle"
            raise SeatworkError(Length(self.held), fault, "take another head or seat")

    @property
    def triangle(self) -> Triangle:
        """Across, half the angle and down."""
        wide, narrow = self.seat.diameter, self.seat.hole_diameter
        if self.holds == "a pin" and self.held is not None:
            narrow = self.held
        if self.holds == "a ball":
            narrow = 0.0
        if self.holds == "a head" and self.held is not None:
            narrow, wide = sorted((wide, self.held))
        return Triangle(wide=wide, narrow=narrow, included_angle=self.seat.included_angle)

    @property
    def other(self) -> Triangle:
        """The same of the angle beside it."""
        angle = self.seat.included_angle if self.beside is None else self.beside
        return replace(self.triangle, included_angle=angle)

    @property
    def proud(self) -> bool:
        """Whether a head stands above the face."""
        return self.holds == "a head" and (self.held or 0.0) > self.seat.diameter

    @property
    def top(self) -> float:
        """How high the wide end of the triangle lies above the face [mm]."""
        return self.triangle.down if self.proud else 0.0

    @property
    def ball_top(self) -> float:
        """How high the top of the ball stands above the face [mm]; minus below it."""
        return ball_top(self.held or 0.0, self.seat)

    @property
    def folded(self) -> bool:
        """Whether the section is folded in half; a ball is not."""
        return self.holds != "a ball" and (self.step >= FOLD or bool(self.slips or self.beside))

    def shows(self, name: str) -> bool:
        """Tell whether what a step brings is there already, or was given."""
        steps = FINDS[self.find]
        name = "angle" if name == "half" and self.find == "angle" else name
        return name not in steps or steps.index(name) < self.step

    @property
    def ghosts(self) -> tuple[tuple[str, float, float, float], ...]:
        """What is drawn dashed: its name, where it starts, across and down [mm].

        It is each slip that gives a number, or the cone of another angle.
        """
        its, found = self.triangle, []
        if self.beside is not None:
            found.append((BESIDE, its.narrow / 2, its.across, self.other.down))
        for slip in self.slips:
            down = its.slipped(slip)
            if down is None:
                continue
            across = {"whole difference": its.difference, "to the point": its.wide / 2}
            start = 0.0 if slip == "to the point" else its.narrow / 2
            found.append((slip, start, across.get(slip, its.across), down))
        return tuple(found)


def _known(given: object, names: tuple[str, ...], fault: str) -> None:
    if given not in names:
        raise SeatworkError(str(given)[:40], fault, f"take one of {', '.join(names)}")
