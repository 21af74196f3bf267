"""What is measured on a seat, with what, and how sure it is."""

from dataclasses import dataclass, field

from seatwork.errors import Angle, Length, SeatworkError

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
    """Something that may be measured.

    Parameters
    ----------
    key : str
        Name of the column.
    about : str
        What it is, in words.
    kind : {"length", "signed", "angle", "answer"}
        What a value of it looks like; signed lengths are heights above the face.
    instruments : tuple of str
        What it is measured with, the usual one first.
    """

    key: str
    about: str
    kind: str
    instruments: tuple[str, ...] = ()


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
            key="stand",
            about="head above the face (minus is below)",
            kind="signed",
            instruments=("depth indicator", "depth micrometer"),
        ),
        Quantity(
            key="angle",
            about="included angle",
            kind="angle",
            instruments=("two balls", "optical", "protractor"),
        ),
        Quantity(key="tried", about="tried with the screw", kind="answer"),
        Quantity(key="cleaned", about="spotface clean all round", kind="answer"),
    )
}
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
    tried : bool or None
        Whether the job's own screw was tried and goes in.
    cleaned : bool or None
        Whether the spotface is clean all round.
    screw : str
        The screw that was tried, as written; empty where it is the print's.
    touch : {"", "face", "hole edge"}
        On what the stop was set.
    burr : bool or None
        Whether the burr was left on when measuring.
    instruments : dict of str to str
        What a quantity was measured with, where it is not the usual one.
    """

    part: str
    feature: str = ""
    diameter: float | None = None
    depth: float | None = None
    stand: float | None = None
    angle: float | None = None
    tried: bool | None = None
    cleaned: bool | None = None
    screw: str = ""
    touch: str = ""
    burr: bool | None = None
    instruments: dict[str, str] = field(default_factory=dict)

    def __post_init__(self) -> None:
        for key in ("diameter", "depth"):
            value = getattr(self, key)
            if value is not None and not 0 < value < float("inf"):
                raise SeatworkError(Length(value), f"that is no {key}", "measure again")
        if self.stand is not None and not abs(self.stand) < float("inf"):
            raise SeatworkError(Length(self.stand), "that is no height", "measure again")
        if self.angle is not None and not 0 < self.angle < 180:
            raise SeatworkError(Angle(self.angle), "that is no angle of a seat", "measure again")

    def uncertainty(self, key: str) -> float:
        """Return the expanded uncertainty of a quantity [mm or deg]."""
        name = self.instruments.get(key) or QUANTITIES[key].instruments[0]
        if name == "optical" and QUANTITIES[key].kind != "angle":
            return OPTICAL_LENGTH
        return INSTRUMENTS[name].uncertainty

    def instrument(self, key: str) -> str:
        """Name what a quantity was measured with."""
        return self.instruments.get(key) or QUANTITIES[key].instruments[0]
