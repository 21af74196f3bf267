"""The jobs of the shop: a seat for a screw in a part, by the list or by any screw's name."""

from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.hardware.bores import head_bore
from seatwork.hardware.clearance import LISTS, ClearanceHole, clearance_hole
from seatwork.hardware.drill_list import Drill, drill
from seatwork.hardware.naming import screw
from seatwork.hardware.screws import Screw
from seatwork.hardware.threads import Thread
from seatwork.rows import short
from seatwork.shop.folder import find, once
from seatwork.shop.lists.reading import Row, read_list
from seatwork.units import length

FILE = "jobs.csv"
COLUMNS = (
    "job", "seat", "screw", "hole", "diameter", "material", "machine", "thickness",
    "edge_distance", "balls", "note",
)  # fmt: skip
FITS = {"inch": ("close", "normal", "loose"), "metric": ("fine", "medium", "coarse")}
SEATS = ("countersink", "counterbore", "spotface", "chamfer")
FIRST_MATERIAL, FIRST_MACHINE = "1018 steel", "bench drill press"

FORMER = {
    "1/4 flat head, frame (gray iron)": "1/4 flat head 82° (frame)",
    "1/4 flat head, crank arm (1018 steel)": "1/4 flat head 82° (crank arm)",
    "M6 socket flat, hopper plate (6061 aluminum)": "M6 socket flat 90° (hopper plate)",
    "frame, 1/4 flat head": "1/4 flat head 82° (frame)",
    "hopper plate, #10 flat head": "#10 flat head 82° (hopper plate)",
    "crank, M6 socket flat head": "M6 socket flat 90° (hopper plate)",
    "guard: edges of its holes": "edges of the holes (guard)",
    "hopper plate: flat heads": "#10 flat head 82° (hopper plate)",
    "bearing cap: socket heads": "3/8 socket head (bearing cap)",
    "frame pad: spotfaces": "spotface 1-1/4 (frame pad)",
    "guard bracket: 100° flat heads": "#10 flat head 100° (guard)",
    "spotface 1-1/4 on gray iron (frame pad)": "spotface 1-1/4 (frame pad, drill press)",
    "countersink .507 in 1018 (frame)": "1/4 flat head 82° (crank arm)",
    "countersink .385 in 6061 (hopper plate)": "#10 flat head 82° (hopper plate)",
}
"""Names that version 0.1 gave its jobs, each bench its own; read for one version more."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Job:
    """A seat to cut: its screw and hole, and the part that has them.

    Parameters
    ----------
    name : str
        As the list or the person says it.
    seat : {"countersink", "counterbore", "spotface", "chamfer"}
        What is cut.
    fastener : Screw or None
        From the tables; None where no screw is named.
    called : str
        The screw's name as the list or the person writes it; blank where none is named.
    hole : Drill or ClearanceHole
        The hole, with its source.
    diameter : float or None
        Of the seat at the face, where the list says it [mm].
    material, machine : str
        Names in the shop's lists.
    thickness, edge_distance : float or None
        Of the part [mm].
    balls : tuple of float
        The smaller and the larger of two balls to gage it with, and one to gage it alone [mm];
        empty where the list names none.
    """

    name: str
    seat: str
    fastener: Screw | None
    hole: Drill | ClearanceHole
    called: str = ""
    diameter: float | None = None
    material: str = FIRST_MATERIAL
    machine: str = FIRST_MACHINE
    thickness: float | None = None
    edge_distance: float | None = None
    balls: tuple[float, ...] = ()

    def __repr__(self) -> str:
        return f"<Job {short(self.name, 60)}: {self.seat} in {self.material}, {self.machine}>"

    @property
    def screw(self) -> Screw:
        """The screw.

        Raises
        ------
        SeatworkError
            If the job names none.
        """
        if self.fastener is None:
            raise SeatworkError(self.name, "this job names no screw", "take one that does")
        return self.fastener

    @property
    def flat(self) -> bool:
        """Whether its screw has a flat head."""
        return self.fastener is not None and self.fastener.seat_angle is not None

    @property
    def across(self) -> float:
        """Diameter of the seat at the face: the list's, or what the screw wants [mm].

        Raises
        ------
        SeatworkError
            If nothing here says how wide its seat is.
        """
        if self.diameter is not None:
            return self.diameter
        return self.screw.head.sharp_diameter if self.flat else head_bore(self.screw).diameter

    @property
    def part(self) -> str:
        """The part, in the words the name has in parentheses; blank if it has none."""
        return self.name.partition("(")[2].rstrip(")")


def jobs(fit: Callable[[Job], bool] | None = None) -> tuple[str, ...]:
    """Name the jobs of the shop's list in its order, all or those that `fit` takes.

    Raises
    ------
    SeatworkError
        With file, row and column, if the list cannot be read.

    Examples
    --------
    >>> jobs(lambda job: job.flat and job.screw.seat_angle == 100)
    ('#10 flat head 100° (guard)',)
    """
    return tuple(job.name for job in _listed(*_place()) if fit is None or fit(job))


def job(name: str) -> Job:
    """Find a job by its name in the shop's list, or make one of any screw's name.

    Parameters
    ----------
    name : str
        A name of the list, in any case, or a screw such as ``M8 socket flat head``; its hole is
        then the clearance hole of the house rule, its seat the one its head wants.

    Raises
    ------
    SeatworkError
        If the list has no such job and the name is no screw, or several.

    Examples
    --------
    >>> job("M8 socket flat head").hole.diameter
    9.0
    """
    return _job(name.strip(), *_place())


def flat_jobs() -> tuple[str, ...]:
    """Name the jobs of the list whose screw has a flat head."""
    return jobs(lambda job: job.flat)


def flat_job(name: str) -> Job:
    """Find a job as `job` does, whose screw has a flat head.

    Raises
    ------
    SeatworkError
        If it has another head.
    """
    found = job(name)
    if not found.flat:
        raise SeatworkError(
            name, "its head is no cone, so it has no countersink", "name a flat head screw"
        )
    return found


@once
def _place() -> tuple[Path | None, int]:
    """Return the workbook folder and when its own list was saved; so that a new one is read."""
    folder = find()
    own = folder / "shop" / FILE if folder else None
    return folder, own.stat().st_mtime_ns if own is not None and own.is_file() else 0


@lru_cache(maxsize=64)
def _job(name: str, folder: Path | None, saved: int) -> Job:
    wanted = {name.casefold(), FORMER.get(name, name).casefold()}
    for listed in _listed(folder, saved):
        if listed.name.casefold() in wanted:
            return listed
    if not any(letter.isdigit() for letter in name):
        fault = "the shop's list has no such job, and no screw is called so"
        raise SeatworkError(name, fault, "pick a job, or write a screw such as M6 socket flat")
    own = screw(name)
    return Job(
        name=own.name, seat=_wanted(own), fastener=own, hole=_clearing(own.thread), called=name
    )


@lru_cache(maxsize=4)
def _listed(folder: Path | None, saved: int) -> tuple[Job, ...]:
    del saved  # only tells one state of the file from another
    return read_list(FILE, folder, _read, columns=COLUMNS, needed=COLUMNS[:1])


def _wanted(fastener: Screw | None) -> str:
    """Return the seat that a head wants."""
    return "counterbore" if fastener is None or fastener.seat_angle is None else "countersink"


def _read(row: Row) -> Job:
    fastener, hole = row.read("screw", screw), row.read("hole", drill)
    if fastener is None and hole is None:
        raise row.refuse("hole", "the row has no screw and no hole", "write one of them")
    seat = row.word("seat", SEATS, _wanted(fastener))
    flat = fastener is not None and fastener.seat_angle is not None
    if fastener is not None and flat != (seat == "countersink"):
        raise row.refuse("seat", f"a {seat} does not suit {fastener.name}", "leave it blank")
    diameter = row.length("diameter")
    if diameter is None and (seat in ("spotface", "chamfer") or fastener is None):
        raise row.refuse("diameter", "nothing says how wide the seat is", "write a diameter")
    return Job(
        name=row.needed("job"),
        seat=seat,
        fastener=fastener,
        called=row.text("screw"),
        hole=_hole(fastener, hole),
        diameter=diameter,
        material=row.text("material") or FIRST_MATERIAL,
        machine=row.text("machine") or FIRST_MACHINE,
        thickness=row.length("thickness"),
        edge_distance=row.length("edge_distance"),
        balls=row.read("balls", _balls) or (),
    )


def _balls(said: str) -> tuple[float, ...]:
    """Read three balls apart by semicolons [mm]."""
    found = tuple(length(part) for part in said.split(";"))
    if len(found) != 3:
        raise SeatworkError(said, "these are not three balls", "write 13/32 in; 19/32 in; 1/2 in")
    return found


def _hole(fastener: Screw | None, drilled: Drill | None) -> Drill | ClearanceHole:
    """Return the hole: of the clearance lists where one has it, so that it brings its fit."""
    if fastener is None or drilled is None:
        assert fastener or drilled
        return drilled or _clearing(fastener.thread)  # type: ignore[union-attr]
    for fit in FITS[fastener.thread.system]:
        with suppress(SeatworkError):
            listed = clearance_hole(fastener.thread, fit=fit)
            if abs(listed.diameter - drilled.diameter) < 1e-6:
                return listed
    return drilled


def _clearing(size: Thread) -> ClearanceHole:
    """Return the clearance hole of the usual list; of another list of the system if that has none.

    Raises
    ------
    SeatworkError
        If no list has one.
    """
    for standard in (None, *(name for name, held in LISTS.items() if held.system == size.system)):
        with suppress(SeatworkError):
            return clearance_hole(size, standard=standard)
    remedy = f"write a job with its hole in the list {FILE}"
    raise SeatworkError(size.name, "no list held here has a clearance hole for it", remedy)
