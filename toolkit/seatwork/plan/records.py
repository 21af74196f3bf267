"""What a plan is put together from: sizes with where they come from, steps, stops, checks.

Lengths are mm, angles deg, spindle speeds rev/min, feeds mm/rev; people see both systems
through `seatwork.plan.rows`.
"""

from dataclasses import dataclass, replace
from typing import Self

from seatwork.cutting import Stall
from seatwork.rows import short
from seatwork.seats.touching_off import Limits
from seatwork.shop.choosing.choosing import Refusal
from seatwork.shop.choosing.spindles import Spindle
from seatwork.units import show_angle, show_both, show_spindle


@dataclass(frozen=True, slots=True, kw_only=True)
class Given:
    """One size of the plan, and who says so.

    Parameters
    ----------
    about : str
        What it is, such as ``"diameter at the face"``.
    value : float
        The size to aim for [mm or deg].
    least, greatest : float or None
        Limits [mm or deg], where there are any.
    kind : {"length", "angle"}
        What the value is.
    source : str
        ``"print note"``, a document, a house rule, or how it was worked out.
    confirmed : str
        two-source, one-source or memory for published values; empty for the others.
    name : str
        Name of a drill, where it is one.
    beside : str
        What else there is to say of that drill: others of the same size, or its own size
        where the hole to reckon with is another.
    noted : bool
        Whether the note itself gives it.
    """

    about: str
    value: float
    least: float | None = None
    greatest: float | None = None
    kind: str = "length"
    source: str = "print note"
    confirmed: str = ""
    name: str = ""
    beside: str = ""
    noted: bool = False

    def __repr__(self) -> str:
        size = show_angle(self.value) if self.kind == "angle" else show_both(self.value)
        return f"<Given {short(self.about, 60)}: {size}>"

    @property
    def smallest(self) -> float:
        """Least size allowed [mm or deg]; the size itself where there are no limits."""
        return self.value if self.least is None else self.least

    @property
    def largest(self) -> float:
        """Greatest size allowed [mm or deg]; the size itself where there are no limits."""
        return self.value if self.greatest is None else self.greatest


@dataclass(frozen=True, slots=True, kw_only=True)
class Operation:
    """One thing to do at the machine, in order.

    Parameters
    ----------
    name : str
        What is done: ``drill``, ``countersink``, ``tap`` ...
    why : str
        Why it is done, and why now.
    tool : str
        The tool from the shop's own list, or what to get.
    in_shop : bool
        Whether the shop has it.
    short : str
        The tool in few words, for a table; empty where `tool` is short enough.
    tool_reason : str
        Why that one.
    passed : tuple of Refusal
        Cutters that look at least as near, and why not they.
    grind : str
        What could be ground or turned where the shop has none.
    taper_shank : bool
        Whether it is held by a Morse taper.
    spindle : Spindle or None
        Speed, where a spindle turns.
    feed : float or None
        Feed [mm/rev].
    feed_source : str
        Where the feed comes from.
    oil, oil_note : str
        What to cut it with, and what to know of it.
    load : Stall or None
        Torque against the machine's.
    power : float or None
        Cutting power, erring high as `load` does [W].
    deep : str
        How far it goes, in few words, where no stop says it.
    by_hand : bool
        Whether it takes handwork too at a turning spindle, which `why` tells.
    before_hole : bool
        Whether it comes before the drill: a face for a tool without a pilot.
    """

    name: str
    why: str
    tool: str = ""
    short: str = ""
    in_shop: bool = True
    tool_reason: str = ""
    passed: tuple[Refusal, ...] = ()
    grind: str = ""
    taper_shank: bool = False
    spindle: Spindle | None = None
    feed: float | None = None
    feed_source: str = ""
    oil: str = ""
    oil_note: str = ""
    load: Stall | None = None
    power: float | None = None
    deep: str = ""
    by_hand: bool = False
    before_hole: bool = False

    def __repr__(self) -> str:
        speed = self.spindle.step.spindle_speed if self.spindle else None
        turns = f" at {show_spindle(speed)}" if speed else ""
        return f"<Operation {short(f'{self.name}: {self.tool}', 80)}{turns}>"

    def because(self, why: str) -> Self:
        """Return the same operation with another reason."""
        return replace(self, why=why)


@dataclass(frozen=True, slots=True, kw_only=True)
class Stop:
    """Where to touch off and how far to let the tool travel.

    Parameters
    ----------
    touch : str
        ``"the lips touch the hole edge"``, ``"the nose touches the solid face"``,
        ``"the lips touch the face"``.
    travel : float
        Travel from there [mm].
    error : float
        A stop error to reckon with [mm].
    effect : float
        What that error does to the diameter at the face; 0 where it only changes depth [mm].
    least, greatest : float or None
        Travels that give the seat's own limits on the hole aimed for [mm].
    any_hole : Limits or None
        Travels that hold on every hole within the limits of the hole [mm]; None where the
        hole has no limits, or its limits leave none.
    wanders : bool
        Whether the limits of the hole leave no travel that holds on every hole.
    device : str
        What stops the travel: ``"quill"``, ``"tailstock"``, ``"stop cage"``.
    step : float or None
        Smallest step of it [mm].
    operation : str
        Which operation it stops; empty for the cutting of the seat itself.
    short : str
        The touch in few words, for a table.
    """

    touch: str
    travel: float
    error: float
    effect: float
    least: float | None = None
    greatest: float | None = None
    any_hole: Limits | None = None
    wanders: bool = False
    device: str = "quill"
    step: float | None = None
    operation: str = ""
    short: str = ""

    def __repr__(self) -> str:
        return f"<Stop {show_both(self.travel)} after {short(self.touch, 60)}>"


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """A gage reading to expect.

    Parameters
    ----------
    instrument : str
        What is measured with.
    about : str
        What the reading is of.
    value : float
        Reading to expect [mm, or turns].
    least, greatest : float
        Limits of an acceptable reading [mm, or turns].
    source : str
        Which rule gives the limits; empty where the note or a standard does.
    kind : {"length", "turns"}
        What is read.
    quantity : str
        Which quantity of an inspection it is, such as ``stand``; empty for any other.
    operation : str
        After which operation; empty for the cutting of the seat itself.
    short : str
        What is read in few words, for a table.
    noted : bool
        Whether its limits are the note's own words.
    capped : bool
        Whether the note never lets the head stand above the face, whatever the house does.
    """

    instrument: str
    about: str
    value: float
    least: float
    greatest: float
    source: str = ""
    kind: str = "length"
    quantity: str = ""
    operation: str = ""
    short: str = ""
    noted: bool = False
    capped: bool = False

    def __repr__(self) -> str:
        if self.kind == "turns":
            return f"<Reading {short(self.instrument, 60)}: {self.value:.1f} turns>"
        return f"<Reading {short(self.instrument, 60)}: {show_both(self.value)}>"


@dataclass(frozen=True, slots=True, kw_only=True)
class Check:
    """Something that was looked at before cutting.

    Parameters
    ----------
    name : str
        What was looked at.
    verdict : {"holds", "look", "stop"}
        Whether it holds, wants a look, or must be settled first.
    sentence : str
        The same in words, sizes in both unit systems.
    question : str
        What to ask before cutting; empty where nothing must be settled.
    """

    name: str
    verdict: str
    sentence: str
    question: str = ""

    def __repr__(self) -> str:
        return f"<Check {self.verdict}: {short(self.sentence, 96)}>"


@dataclass(frozen=True, slots=True, kw_only=True)
class Assumed:
    """Something the note leaves open, and what was taken for it.

    Parameters
    ----------
    sentence : str
        What was taken, in words.
    rule : str
        The house rule that says so; empty where it is how a screw's name is read.
    """

    sentence: str
    rule: str = ""

    def __repr__(self) -> str:
        return f"<Assumed {short(self.sentence, 96)}>"


@dataclass(frozen=True, slots=True, kw_only=True)
class Setup:
    """One clamping of the part.

    Parameters
    ----------
    face : str
        Which face is up.
    held : str
        How the part is held, and on what.
    under : str
        What is under the holes.
    zero : str
        Where zero is, across and in depth.
    steps : tuple of str
        What is done in it, in order.
    far_up : bool
        Whether the far face is up, or the far end out.
    """

    face: str
    held: str
    under: str
    zero: str
    steps: tuple[str, ...]
    far_up: bool = False

    def __repr__(self) -> str:
        return f"<Setup {self.face}: {short(', '.join(self.steps), 80)}>"
