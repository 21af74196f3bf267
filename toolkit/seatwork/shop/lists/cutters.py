"""The shop's cutters for seats: read from its list, put together from sets."""

from dataclasses import dataclass
from pathlib import Path

from seatwork import cutting, units
from seatwork.errors import SeatworkError
from seatwork.rows import Blocks, Shown
from seatwork.shop.lists.reading import Row, read_list
from seatwork.shop.lists.shown import listed_rows

FILE = "cutters.csv"
COLUMNS = (
    "cutter",
    "kind",
    "angle",
    "flutes",
    "spacing",
    "rake",
    "body_diameter",
    "nose_diameter",
    "pilot",
    "pilot_diameter",
    "held_by",
    "set",
    "shank",
    "takes",
    "click",
    "material",
    "condition",
    "note",
)
CONES = ("countersink", "cross-hole countersink", "spot drill", "chamfer mill", "center drill")
FLAT = ("counterbore", "spotface cutter", "counterbore head", "end mill")
PARTS = ("pilot", "holder", "stop cage")
KINDS = (*CONES, *FLAT, *PARTS)
PILOTS = ("none", "fixed", "removable")
TOOL_MATERIALS = ("hss", "carbide", "carbon steel")
CONDITIONS = ("new", "good", "worn", "dull")


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class SeatCutter(Shown):
    """A cutter, or a part of an interchangeable set, as it lies in the drawer.

    Parameters
    ----------
    name : str
        As the drawer says it.
    kind : str
        One of `KINDS`.
    included_angle : float or None
        Full angle between opposite lips [deg]; 180 for flat-bottomed ones.
    flutes : int or None
        Number of lips.
    spacing : tuple of float or None
        Angle from each lip to the one ahead [deg]; None for equal.
    rake : float
        Rake of the lips [deg].
    body_diameter : float or None
        Largest diameter it cuts [mm]; of a pilot its own.
    nose_diameter : float
        Diameter of its nose, where the lips begin [mm]; 0 for a point.
    pilot : {"none", "fixed", "removable"}
        How it is piloted.
    pilot_diameter : float or None
        Diameter of a fixed pilot [mm].
    held_by : str
        How the pilot or head is held: set screw, bayonet, draw screw.
    set : str
        Letter of the interchangeable set; blank for none.
    shank : str
        Straight size, Morse taper number or thread, as written.
    shank_diameter : float or None
        Diameter of a straight shank [mm].
    takes : str
        What a holder or stop cage takes, as written.
    click : float or None
        Step of a stop cage [mm].
    material : {"hss", "carbide", "carbon steel"}
        What the lips are made of.
    condition : {"new", "good", "worn", "dull"}
        State of the lips.
    note : str
        What else there is to say.
    """

    name: str
    kind: str
    included_angle: float | None
    flutes: int | None
    spacing: tuple[float, ...] | None
    rake: float
    body_diameter: float | None
    nose_diameter: float
    pilot: str
    pilot_diameter: float | None
    held_by: str
    set: str
    shank: str
    shank_diameter: float | None
    takes: str
    click: float | None
    material: str
    condition: str
    note: str

    def _line(self) -> str:
        flutes = f", {self.flutes} flutes" if self.flutes else ""
        return f"{self.name}: {self.kind}{flutes}, {self.condition}"

    def _blocks(self) -> Blocks:
        yield "", listed_rows(self)

    @property
    def morse_taper(self) -> int | None:
        """Number of its Morse taper shank; None for another shank."""
        words = self.shank.casefold().split()
        return int(words[-1]) if words[:2] == ["morse", "taper"] else None

    @property
    def threaded(self) -> bool:
        """Whether it screws into a stop cage."""
        return self.shank.casefold().endswith("thread")

    @property
    def uneven(self) -> bool:
        """Whether its lips are spaced so that they do not sing."""
        return self.spacing is not None

    def for_chatter(self) -> cutting.Cutter:
        """Give the cutter as the chatter model sees it.

        Raises
        ------
        SeatworkError
            If the list gives no flutes or no angle.
        """
        if self.flutes is None or self.included_angle is None:
            raise SeatworkError(
                self.name, f"{FILE} gives it no flutes or no angle", "write them in its row"
            )
        return cutting.Cutter(
            flutes=self.flutes, included_angle=self.included_angle, spacing=self.spacing
        )


def cutters(folder: str | Path | None = None) -> tuple[SeatCutter, ...]:
    """Read the shop's cutters.

    Parameters
    ----------
    folder : str or Path, optional
        Workbook folder; the one found from the working folder if not given,
        and the package's own list where there is none.

    Returns
    -------
    tuple of SeatCutter

    Raises
    ------
    SeatworkError
        Naming file, row and column, and what would do.

    Examples
    --------
    >>> cutters()[0].name, cutters()[0].flutes
    ('CS82-1', 1)
    """
    return read_list(
        FILE, folder, _cutter, columns=COLUMNS, needed=("cutter", "kind", "body_diameter")
    )


def _cutter(row: Row) -> SeatCutter:
    kind = row.word("kind", KINDS)
    flutes = _flutes(row, kind)
    cutter = SeatCutter(
        name=row.needed("cutter"),
        kind=kind,
        included_angle=_angle(row, kind),
        flutes=flutes,
        spacing=_spacing(row, flutes),
        rake=row.number_in("rake", -30, 30) or 0.0,
        body_diameter=row.length("body_diameter"),
        nose_diameter=row.length("nose_diameter") or 0.0,
        pilot=row.word("pilot", PILOTS, "none"),
        pilot_diameter=row.length("pilot_diameter"),
        held_by=row.text("held_by"),
        set=row.text("set"),
        shank=row.text("shank"),
        shank_diameter=_straight(row),
        takes=row.text("takes"),
        click=row.length("click"),
        material=row.word("material", TOOL_MATERIALS, "hss"),
        condition=row.word("condition", CONDITIONS, "good"),
        note=row.text("note"),
    )
    _check_sizes(row, cutter)
    _check_shank(row, cutter)
    return cutter


def _flutes(row: Row, kind: str) -> int | None:
    if kind in PARTS:
        return None
    flutes = row.number_in("flutes", 1, 24)
    if flutes is None:
        raise row.refuse("flutes", "the cell is blank", "count the lips; a cross-hole cutter has 1")
    if flutes != int(flutes):
        raise row.refuse("flutes", f"{flutes:g} is no whole number", "count the lips")
    return int(flutes)


def _angle(row: Row, kind: str) -> float | None:
    if kind in PARTS:
        return None
    angle = row.angle("angle")
    if kind in FLAT:
        return 180.0
    if angle is None or not 0 < angle < 180:
        raise row.refuse("angle", "a cone needs its full angle", "write it, such as 82°")
    return angle


def _spacing(row: Row, flutes: int | None) -> tuple[float, ...] | None:
    if row.text("spacing").casefold() in ("", "equal"):
        return None
    spacing = row.numbers("spacing")
    if len(spacing) != flutes or abs(sum(spacing) - 360) > 1e-6:
        raise row.refuse(
            "spacing",
            f"{len(spacing)} angles that add up to {sum(spacing):g}°",
            "write one angle for each lip, together 360, or equal",
        )
    return spacing


def _check_sizes(row: Row, cutter: SeatCutter) -> None:
    body = cutter.body_diameter
    if cutter.kind not in ("holder", "stop cage") and not (body and body > 0):
        raise row.refuse(
            "body_diameter", "it has no size", "write it with its unit, such as 1/2 in"
        )
    if body and cutter.nose_diameter >= body:
        raise row.refuse("nose_diameter", "the nose is not smaller than the body", "check both")
    if (cutter.pilot == "fixed") != (cutter.pilot_diameter is not None):
        raise row.refuse(
            "pilot_diameter",
            "only a fixed pilot has a size here, and it needs one",
            "write fixed and the size, or neither; a removable pilot has its own row",
        )
    if cutter.pilot_diameter is not None and body and not 0 < cutter.pilot_diameter < body:
        raise row.refuse("pilot_diameter", "the pilot is not smaller than the body", "check both")
    if (cutter.pilot == "removable" or cutter.kind in ("pilot", "holder")) and not cutter.set:
        raise row.refuse("set", "the cell is blank", "name the set whose parts fit together")


def _check_shank(row: Row, cutter: SeatCutter) -> None:
    words = cutter.shank.casefold().split()
    if words[:1] == ["morse"] and not (
        len(words) == 3 and words[1] == "taper" and words[2].isdigit()
    ):
        raise row.refuse("shank", f"{cutter.shank} names no taper", "write such as Morse taper 2")


def _straight(row: Row) -> float | None:
    shank = row.text("shank")
    if not shank.casefold().startswith("straight"):
        return None
    try:
        return units.length(shank[len("straight") :].strip())
    except SeatworkError as error:
        raise row.refuse("shank", f"{shank}: {error.fault}", error.remedy) from error
