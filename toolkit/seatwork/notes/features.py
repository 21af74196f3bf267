"""What a print note can ask for, each as a small frozen record of what was said.

Lengths are mm, angles deg, in `Size`; None or an empty text means the note did not say.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass, fields

from seatwork.errors import SeatworkError
from seatwork.notes.sizes import Size
from seatwork.rows import short

SIDES = ("", "near", "far", "both", "other")
SCOPES = ("", "typical", "unless otherwise specified")
PROCESSES = ("", "drill", "ream", "bore", "punch", "tap drill")
BOTTOMS = ("", "U", "V", "W")
HEAD_STATES = ("flush", "flush to below", "below", "proud")
LARGEST_COUNT = 999


def kind_of(feature: object) -> str:
    """Return what a feature is, in lower case words."""
    return re.sub(r"(?<=[a-z])(?=[A-Z])", " ", type(feature).__name__).lower()


def said_of(feature: object) -> Iterator[str]:
    """Yield what the note says of a feature, a phrase for each thing it says."""
    for one in fields(feature):  # type: ignore[arg-type]
        value = getattr(feature, one.name)
        if value != one.default:
            yield f"{one.name.replace('_', ' ')} {'yes' if value is True else value}"


def noted(feature: object) -> str:
    """Return the one line that stands for a feature of a note, apart from the seat it means."""
    said = f"{kind_of(feature)} {'; '.join(said_of(feature))}"
    return f"<note: {short(said, 108)}>"


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Feature:
    """What every feature of a note may carry.

    Parameters
    ----------
    count : int
        Number of places, 1 to 999.
    side : {"", "near", "far", "both", "other"}
        The side of the part.
    scope : {"", "typical", "unless otherwise specified"}
        How far the note reaches.
    screw : str
        The screw it is for, as the note says it; another room looks it up.
    """

    count: int = 1
    side: str = ""
    scope: str = ""
    screw: str = ""

    def __repr__(self) -> str:
        return noted(self)

    def __post_init__(self) -> None:
        if not 1 <= self.count <= LARGEST_COUNT:
            raise SeatworkError(self.count, "that is no number of places", "write 1 to 999")
        if self.side not in SIDES or self.scope not in SCOPES:
            raise SeatworkError(self.side or self.scope, "that is no side or scope", "leave it out")


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Head:
    """Where the note wants the head.

    Parameters
    ----------
    state : {"flush", "flush to below", "below", "proud"}
        Against the face.
    amount : Size or None
        How far at most, or by how much [mm].
    """

    state: str
    amount: Size | None = None

    def __repr__(self) -> str:
        return noted(self)

    def __str__(self) -> str:
        return self.state if self.amount is None else f"{self.state} {self.amount}"

    def __post_init__(self) -> None:
        needs_amount = self.state in ("below", "flush to below")
        if self.state not in HEAD_STATES or (needs_amount and self.amount is None):
            raise SeatworkError(self.state, "that is no place of a head", "say how far")


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Hole(Feature):
    """A plain hole.

    Parameters
    ----------
    diameter : Size or None
        Diameter [mm], or the name of a drill.
    depth : Size or None
        Depth from the face [mm].
    through : bool
        Whether the note says THRU.
    process : {"", "drill", "ream", "bore", "punch", "tap drill"}
        How it is made, if the note says so.
    depth_to : {"", "full diameter", "point"}
        What the depth counts, if the note says so.
    bottom : {"", "U", "V", "W"}
        Form of the hole's bottom, ISO 15786 letters.
    """

    diameter: Size | None = None
    depth: Size | None = None
    through: bool = False
    process: str = ""
    depth_to: str = ""
    bottom: str = ""


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Countersink(Feature):
    """A countersink.

    Parameters
    ----------
    diameter : Size or None
        Diameter at the face [mm].
    angle : Size or None
        Included angle [deg].
    depth : Size or None
        Depth from the face [mm].
    head : Head or None
        Where the head is wanted.
    """

    diameter: Size | None = None
    angle: Size | None = None
    depth: Size | None = None
    head: Head | None = None


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Counterbore(Feature):
    """A counterbore.

    Parameters
    ----------
    diameter : Size or None
        Diameter [mm].
    depth : Size or None
        Depth from the face [mm].
    head : Head or None
        Where the head is wanted.
    bottom : {"", "U", "V", "W"}
        Form of the bottom, ISO 15786 letters.
    """

    diameter: Size | None = None
    depth: Size | None = None
    head: Head | None = None
    bottom: str = ""


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Spotface(Feature):
    """A spotface.

    Parameters
    ----------
    diameter : Size or None
        Diameter [mm].
    depth : Size or None
        Depth [mm]; where none is said, only deep enough to clean up all round.
    flange : Size or None
        Thickness of flange to be left [mm].
    """

    diameter: Size | None = None
    depth: Size | None = None
    flange: Size | None = None


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Counterdrill(Feature):
    """A counterdrill or a center-drilled hole.

    Parameters
    ----------
    meaning : {"counterdrill", "center drill", "ask"}
        What the word says; "ask" for C'DRILL, which can mean either.
    diameter : Size or None
        Diameter [mm], or the name of a center drill.
    depth : Size or None
        Depth [mm].
    angle : Size or None
        Included angle of its bottom [deg].
    """

    meaning: str = "counterdrill"
    diameter: Size | None = None
    depth: Size | None = None
    angle: Size | None = None


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Chamfer(Feature):
    """A chamfer.

    Parameters
    ----------
    leg : Size or None
        Length of the leg the note gives [mm].
    diameter : Size or None
        Diameter at the face [mm], where a hole is chamfered to a diameter.
    angle : Size or None
        Included angle [deg]: twice the angle of a leg × angle note, so 45° is 90.
    """

    leg: Size | None = None
    diameter: Size | None = None
    angle: Size | None = None


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class EdgeBreak(Feature):
    """Edges to be broken or freed of burrs.

    Parameters
    ----------
    size : Size or None
        Size of the break [mm].
    angle : Size or None
        Included angle [deg], where the note gives one.
    edges : bool
        Whether edges are to be broken.
    burrs : bool
        Whether burrs are to be removed.
    """

    size: Size | None = None
    angle: Size | None = None
    edges: bool = True
    burrs: bool = False


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Thread(Feature):
    """A tapped hole's thread.

    Parameters
    ----------
    size : str
        Nominal size as named: ``#10``, ``1/4``, ``M8``.
    threads_per_inch : float or None
        Threads per inch of an inch thread [1/in].
    pitch : float or None
        Pitch of a metric thread [mm], where the note gives it.
    series : str
        UNC, UNF, NPT ...; empty for metric or unsaid.
    thread_class : str
        2B, 6H ...
    left_hand : bool
        Whether the thread is left-hand.
    depth : Size or None
        Depth of full thread [mm].
    through : bool
        Whether the note says THRU.
    """

    size: str
    threads_per_inch: float | None = None
    pitch: float | None = None
    series: str = ""
    thread_class: str = ""
    left_hand: bool = False
    depth: Size | None = None
    through: bool = False


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class BoltCircle(Feature):
    """How the places are spread.

    Parameters
    ----------
    diameter : Size or None
        Diameter of the bolt circle [mm].
    equally_spaced : bool
        Whether the note says so.
    """

    diameter: Size | None = None
    equally_spaced: bool = False
