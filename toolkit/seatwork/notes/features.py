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
HEAD_STATES = ("flush", "flush or below", "flush to below", "flush to proud", "below", "proud")
FLOOR = "counterbore floor"
LARGEST_COUNT = 999


def kind_of(feature: object) -> str:
    """Return what a feature is, in lower case words."""
    return re.sub(r"(?<=[a-z])(?=[A-Z])", " ", type(feature).__name__).lower()


def stated_of(feature: object) -> Iterator[str]:
    """Yield what the note says of a feature, a phrase for each thing it says."""
    for one in fields(feature):  # type: ignore[arg-type]
        value = getattr(feature, one.name)
        if value != one.default:
            yield f"{one.name.replace('_', ' ')} {'yes' if value is True else value}"


def noted(feature: object) -> str:
    """Return the one line that stands for a feature of a note, apart from the seat it means."""
    stated = f"{kind_of(feature)} {'; '.join(stated_of(feature))}"
    return f"<note: {short(stated, 108)}>"


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
        The screw or rivet it is for, as the note says it; `seatwork.hardware` looks it up.
    measured_from : str
        The face the cut starts from, in lower case: ``"bottom"``, ``"top plate"``,
        ``"counterbore floor"``. Empty: the outer face on its `side`.
    """

    count: int = 1
    side: str = ""
    scope: str = ""
    screw: str = ""
    measured_from: str = ""

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
    state : {"flush", "flush or below", "flush to below", "flush to proud", "below", "proud"}
        Against the face. "flush or below" never lets it stand above, and leaves open how far
        below.
    amount : Size or None
        How far at most, or by how much [mm]; limits for ``.005 TO .010 BELOW``. Behind a
        bare "flush" it is the signed tolerance, above the face positive.
    """

    state: str
    amount: Size | None = None

    def __repr__(self) -> str:
        return noted(self)

    def __str__(self) -> str:
        return self.state if self.amount is None else f"{self.state} {self.amount}"

    def __post_init__(self) -> None:
        needs_amount = self.state in ("below", "flush to below", "flush to proud")
        misplaced = self.state == "flush or below" and self.amount is not None
        if self.state not in HEAD_STATES or misplaced or (needs_amount and self.amount is None):
            raise SeatworkError(self.state, "that is no place of a head", "say how far")

    @property
    def window(self) -> tuple[float, float] | None:
        """Least and greatest place of the head over the face, below it negative [mm].

        None where the note gives no number: a bare FLUSH, FLUSH OR BELOW or PROUD is for a
        house rule.

        Examples
        --------
        >>> Head(state="flush to below", amount=Size(value=0.254)).window
        (-0.254, 0.0)
        """
        if self.amount is None or self.amount.smallest is None or self.amount.largest is None:
            return None
        least, most = self.amount.smallest, self.amount.largest
        return {
            "flush": (least, most),
            "flush to below": (0.0 - most, 0.0),
            "flush to proud": (0.0, most),
            "below": (0.0 - most, 0.0 - least),
            "proud": (least, most),
        }[self.state]


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Hole(Feature):
    """A plain hole.

    Parameters
    ----------
    diameter : Size or None
        Diameter [mm], or the name of a drill.
    also : Size or None
        The same drill said a second time: [mm], or its name, as in ``#7 (.201)``. It agrees
        with `diameter` to the places written, or the note is asked about.
    depth : Size or None
        Depth from the face [mm].
    through : bool
        Whether the note says THRU.
    process : {"", "drill", "ream", "bore", "punch", "tap drill"}
        How it is made, if the note says so. A hole that is drilled and reamed is two
        features of one group: the drilled one, then the reamed one with its own limits.
    depth_to : {"", "full diameter", "point"}
        What the depth counts, if the note says so.
    bottom : {"", "U", "V", "W"}
        Form of the hole's bottom, ISO 15786 letters.
    """

    diameter: Size | None = None
    also: Size | None = None
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
        Depth from the face [mm], or from the counterbore floor if `measured_from` says so.
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
    fillet : Size or None
        Corner radius at the floor [mm], its bound as said.
    left : Size or None
        Thickness to be left under the floor [mm], a least one unless it has limits.
    wrench_room : bool
        Whether the wrench socket must go in, not the head alone.
    """

    diameter: Size | None = None
    depth: Size | None = None
    head: Head | None = None
    bottom: str = ""
    fillet: Size | None = None
    left: Size | None = None
    wrench_room: bool = False


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Spotface(Feature):
    """A spotface.

    Parameters
    ----------
    diameter : Size or None
        Diameter [mm].
    depth : Size or None
        Depth [mm]; where none is said, only deep enough to clean up all round.
    left : Size or None
        Thickness of flange to be left [mm], a least one unless it has limits.
    fillet : Size or None
        Corner radius at the floor [mm], its bound as said.
    clean_up : bool
        Whether the note says that it only cleans up.
    wrench_room : bool
        Whether the wrench socket must go in, not the head alone.
    """

    diameter: Size | None = None
    depth: Size | None = None
    left: Size | None = None
    fillet: Size | None = None
    clean_up: bool = False
    wrench_room: bool = False


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Counterdrill(Feature):
    """A counterdrill or a center-drilled hole.

    Parameters
    ----------
    meaning : {"counterdrill", "center drill", "ask"}
        What the word says; "ask" for C'DRILL, which can mean either.
    diameter : Size or None
        Diameter [mm], of a center at its mouth; or the name of a center drill.
    depth : Size or None
        Depth [mm].
    angle : Size or None
        Included angle of its bottom, or of a center's cone [deg].
    pilot : Size or None
        Diameter of a center's pilot hole [mm].
    form : {"", "A", "B", "R"}
        Form of a center, ISO 6411 letters.
    """

    meaning: str = "counterdrill"
    diameter: Size | None = None
    depth: Size | None = None
    angle: Size | None = None
    pilot: Size | None = None
    form: str = ""


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
    tap : {"", "taper", "plug", "bottoming"}
        The kind of tap, if the note says so.
    """

    size: str
    threads_per_inch: float | None = None
    pitch: float | None = None
    series: str = ""
    thread_class: str = ""
    left_hand: bool = False
    depth: Size | None = None
    through: bool = False
    tap: str = ""
