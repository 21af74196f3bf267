"""A counterbore or spotface from the note, the screw and the published lists."""

from dataclasses import dataclass

from seatwork import hardware
from seatwork.errors import SeatworkError
from seatwork.hardware import Screw
from seatwork.notes import Counterbore as BoreNote
from seatwork.notes import Spotface as FaceNote
from seatwork.plan.countersinks import wider_than_hole
from seatwork.plan.narrowing import narrowed_bore
from seatwork.plan.records import Given
from seatwork.plan.resolving import stated
from seatwork.plan.standing import stand_of
from seatwork.seats import Counterbore, Spotface
from seatwork.seats.counterbore_sizes import sized_for
from seatwork.seats.pilots import pilot_diameter
from seatwork.shop import HouseRules

INCH_LIST = "counterbore.inch_list"
DIAMETER, DEPTH, PILOT = "counterbore diameter", "depth from the face", "pilot"


@dataclass(frozen=True, slots=True, kw_only=True)
class SizedBore:
    """A counterbore with the source of each size.

    Parameters
    ----------
    seat : Counterbore
        At the sizes to aim for.
    sizes : tuple of Given
        Diameter, depth and pilot.
    """

    seat: Counterbore
    sizes: tuple[Given, ...]


def size_counterbore(
    note: BoreNote, *, hole: Given, screw: Screw | None, system: str, rules: HouseRules
) -> SizedBore:
    """Settle diameter, depth and pilot of a counterbore.

    Parameters
    ----------
    note : BoreNote
        The counterbore as the note says it.
    hole : Given
        The hole [mm].
    screw : Screw or None
        The screw that goes in.
    system : {"inch", "metric"}
        System of the print, for its usual title block.
    rules : HouseRules
        The rules in force.

    Raises
    ------
    SeatworkError
        If neither note nor screw gives a size.
    """
    listed = None if note.diameter and note.depth else _listed(screw, hole, rules)
    across = stated(note.diameter, DIAMETER) if note.diameter else _part(listed, DIAMETER)
    across = wider_than_hole(across, hole)
    deep = stated(note.depth, DEPTH) if note.depth else _deep(note, screw, listed, system, rules)
    deep = narrowed_bore(deep, note.head, screw, system=system, rules=rules)
    seat = Counterbore(diameter=across.value, depth=deep.value, hole_diameter=hole.value)
    return SizedBore(seat=seat, sizes=(across, deep, pilot(hole, rules)))


def size_spotface(note: FaceNote, *, hole: Given, screw: Screw | None) -> tuple[Spotface, Given]:
    """Settle the diameter of a spotface: the note's, or room for the head's washer face.

    Raises
    ------
    SeatworkError
        If neither note nor screw gives a diameter.
    """
    about = "spotface diameter"
    if note.diameter:
        across = stated(note.diameter, about)
    elif screw and screw.across_flats:
        room = hardware.wrench_socket(screw)
        across = Given(
            about=about,
            value=room.counterbore_diameter,
            least=room.counterbore_diameter,
            source=f"{room.source}; {room.basis}",
            confirmed=room.confirmed,
        )
    else:
        raise SeatworkError(
            "the spotface",
            "the note gives no diameter and no hex screw",
            "ask for the diameter, or name the screw",
        )
    across = wider_than_hole(across, hole)
    return Spotface(diameter=across.value, hole_diameter=hole.value), across


def pilot(hole: Given, rules: HouseRules) -> Given:
    """Return the pilot that suits a hole, by the house rule."""
    clearance = rules.number("pilot.clearance")
    return Given(
        about=PILOT,
        value=pilot_diameter(hole_diameter=hole.smallest, clearance=clearance),
        source="house rule pilot.clearance, under the hole",
        confirmed=rules["pilot.clearance"].confirmed,
    )


def _deep(
    note: BoreNote,
    screw: Screw | None,
    listed: dict[str, Given] | None,
    system: str,
    rules: HouseRules,
) -> Given:
    """Return the depth: what the note wants of the head and its height, else the list's."""
    window = note.head.window if note.head else None
    height = screw.head_height if screw else None
    if window is None or height is None or screw is None:
        return _part(listed, DEPTH)
    stand = stand_of(note.head, system=system, rules=rules)
    return Given(
        about=DEPTH,
        value=height - stand.aim,
        least=height - stand.highest,
        greatest=height - stand.lowest,
        source=f"greatest head height and where the head stands, {stand.source}",
        confirmed=screw.confirmed,
    )


def _listed(screw: Screw | None, hole: Given, rules: HouseRules) -> dict[str, Given]:
    if screw is None:
        raise SeatworkError(
            "the counterbore",
            "the note gives neither its sizes nor a screw",
            "name the screw that goes in, or ask for diameter and depth",
        )
    if screw.kind.startswith("hex") and screw.thread.system == "inch":
        return _for_hex(screw, hole, rules)
    inch = screw.thread.system == "inch"
    found = hardware.listed_counterbore(screw, standard=rules.word(INCH_LIST) if inch else None)
    limits = found.limits
    across = Given(
        about=DIAMETER,
        value=found.diameter,
        least=limits.least if limits else None,
        greatest=limits.greatest if limits else None,
        source=f"{found.standard}, {found.series}: {found.source}",
        confirmed=found.confirmed,
    )
    deep = Given(
        about=DEPTH, value=found.depth, source=found.depth_basis, confirmed=found.confirmed
    )
    return {DIAMETER: across, DEPTH: deep}


def _for_hex(screw: Screw, hole: Given, rules: HouseRules) -> dict[str, Given]:
    room = hardware.wrench_socket(screw)
    sized = sized_for(
        hole_diameter=hole.value,
        head_diameter=screw.across_corners or 0.0,
        head_height=screw.head_height or 0.0,
        clearance=0.0,
        below=rules.number("counterbore.inch_below_face"),
        wrench_socket_diameter=room.counterbore_diameter,
    )
    bore = sized.counterbore
    across = Given(about=DIAMETER, value=bore.diameter, source=room.basis, confirmed=room.confirmed)
    deep = Given(
        about=DEPTH,
        value=bore.depth,
        source="head height and the house rule counterbore.inch_below_face",
        confirmed=screw.confirmed,
    )
    return {DIAMETER: across, DEPTH: deep}


def _part(listed: dict[str, Given] | None, about: str) -> Given:
    assert listed is not None
    return listed[about]
