"""What is measured on a seat, with what, and how sure it is."""

from dataclasses import dataclass, field

from seatwork.errors import SeatworkError
from seatwork.quantities import Angle, Length

THOU = 0.0254


@dataclass(frozen=True, slots=True, kw_only=True)
class Instrument:
    """A way of measuring, and its expanded uncertainty in a learner's hands.

    Parameters
    ----------
    name : str
        What it is called.
    uncertainty : float
        Expanded uncertainty [mm or deg].
    """

    name: str
    uncertainty: float


# Common practice, no source: what a careful learner repeats, not what the instrument can do.
INSTRUMENTS = {
    one.name: one
    for one in (
        Instrument(name="caliper", uncertainty=2 * THOU),
        Instrument(name="depth micrometer", uncertainty=1 * THOU),
        Instrument(name="depth indicator", uncertainty=1 * THOU),
        Instrument(name="two balls", uncertainty=0.6),
        Instrument(name="optical", uncertainty=0.25),
        Instrument(name="protractor", uncertainty=2.0),
    )
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Quantity:
    """Something that is read off a part or written down beside it.

    Parameters
    ----------
    key : str
        Name of the field of `Measured`.
    about : str
        What it is, in words.
    kind : {"length", "signed", "height", "angle", "answer", "place", "words"}
        What a value of it looks like: signed ones say proud or below, heights are above the face
        unless they have a minus.
    instruments : tuple of str
        What it is measured with, the usual one first.
    """

    key: str
    about: str
    kind: str
    instruments: tuple[str, ...] = ()

    @property
    def column(self) -> str:
        """Name of its column and of its line on the printed sheet."""
        return self.key.replace("_", " ")


QUANTITIES = {
    one.key: one
    for one in (
        Quantity(
            key="diameter",
            about="diameter at the face",
            kind="length",
            instruments=("caliper", "optical"),
        ),
        Quantity(
            key="depth",
            about="depth from the face",
            kind="length",
            instruments=("depth micrometer", "depth indicator", "caliper"),
        ),
        Quantity(
            key="angle",
            about="included angle",
            kind="angle",
            instruments=("two balls", "optical", "protractor"),
        ),
        Quantity(key="ball", about="diameter of a ball laid in the cone", kind="length"),
        Quantity(
            key="ball_top",
            about="top of the ball above the face (minus is below)",
            kind="height",
            instruments=("depth indicator", "depth micrometer", "caliper"),
        ),
        Quantity(
            key="stand",
            about="head above the face (minus is below)",
            kind="signed",
            instruments=("depth indicator", "depth micrometer"),
        ),
        Quantity(
            key="protrusion",
            about="the screw itself: its head above the head gage",
            kind="length",
            instruments=("depth indicator", "depth micrometer", "caliper"),
        ),
        Quantity(key="tried", about="tried with the screw", kind="answer"),
        Quantity(key="screw", about="the screw tried, where it is not the print's", kind="words"),
        Quantity(key="go", about="GO thread plug goes in to the full depth", kind="answer"),
        Quantity(
            key="not_go",
            about="NOT GO thread plug stays out, but for the turns it may start",
            kind="answer",
        ),
        Quantity(
            key="hole",
            about="hole with limits tried with its plug gage: GO goes in, NOT GO stays out",
            kind="answer",
        ),
        Quantity(key="cleaned", about="spotface clean all round", kind="answer"),
        Quantity(key="touch", about="where the stop was set", kind="place"),
        Quantity(key="burr", about="burr left on when measured", kind="answer"),
    )
}
"""Every reading there is; the printed sheet, the blank file and its reader are made from it."""

OPTICAL_LENGTH = 0.5 * THOU


@dataclass(frozen=True, slots=True, kw_only=True)
class Measured:
    """The measured values of one part.

    Parameters
    ----------
    part : str
        The part's mark, such as L07-2; never a name.
    feature : str
        The feature of the plan it belongs to; empty where there is only one.
    diameter, depth : float or None
        Sizes as measured [mm].
    stand : float or None
        Head of the job's own screw above the face [mm]; minus below it.
    angle : float or None
        Included angle as measured [deg].
    ball : float or None
        Diameter of the ball laid in the cone [mm].
    ball_top : float or None
        Its top above the face [mm]; minus below it.
    protrusion : float or None
        Head of the screw above its head gage [mm].
    tried : bool or None
        Whether the job's own screw was tried and goes in.
    go, not_go : bool or None
        Whether the GO thread plug goes in to the full depth, and the NOT GO plug stays out.
    hole : bool or None
        Whether the hole, where the print gives it limits, is good by its plug gage.
    cleaned : bool or None
        Whether the spotface is clean all round.
    screw : str
        The screw that was tried, as written; empty where it is the print's.
    touch : {"", "face", "hole edge"}
        On what the stop was set.
    burr : bool or None
        Whether the burr was left on when measuring.
    instruments : dict of str to str
        What a quantity was measured with; of one that is not named the coarsest counts.
    place : str
        Where it is written, such as file and row; empty for one that was typed in.
    """

    part: str
    feature: str = ""
    diameter: float | None = None
    depth: float | None = None
    stand: float | None = None
    angle: float | None = None
    ball: float | None = None
    ball_top: float | None = None
    protrusion: float | None = None
    tried: bool | None = None
    go: bool | None = None
    not_go: bool | None = None
    hole: bool | None = None
    cleaned: bool | None = None
    screw: str = ""
    touch: str = ""
    burr: bool | None = None
    instruments: dict[str, str] = field(default_factory=dict)
    place: str = ""

    def __post_init__(self) -> None:
        for key in ("diameter", "depth", "ball", "protrusion"):
            value = getattr(self, key)
            if value is not None and not 0 < value < float("inf"):
                raise SeatworkError(Length(value), f"that is no {key}", "measure again")
        for key in ("stand", "ball_top"):
            value = getattr(self, key)
            if value is not None and not abs(value) < float("inf"):
                raise SeatworkError(Length(value), "that is no height", "measure again")
        if self.angle is not None and not 0 < self.angle < 180:
            raise SeatworkError(Angle(self.angle), "that is no angle of a seat", "measure again")

    def uncertainty(self, key: str) -> float:
        """Return the expanded uncertainty of a quantity [mm or deg]."""
        return _uncertainty(key, self._used(key))

    def instrument(self, key: str) -> str:
        """Name what a quantity was measured with, or say that the coarsest was taken."""
        none = "" if key in self.instruments else " (none is named: the coarsest counts)"
        return self._used(key) + none

    def _used(self, key: str) -> str:
        """Return the instrument that counts; a verdict by the coarsest holds for all."""
        coarsest = max(QUANTITIES[key].instruments, key=lambda name: _uncertainty(key, name))
        return self.instruments.get(key) or coarsest


def _uncertainty(key: str, name: str) -> float:
    if name == "optical" and QUANTITIES[key].kind != "angle":
        return OPTICAL_LENGTH
    return INSTRUMENTS[name].uncertainty
