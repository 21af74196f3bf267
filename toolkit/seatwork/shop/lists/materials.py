"""The shop's materials: cutting speeds, cutting oil, and how hard they cut."""

from dataclasses import dataclass
from pathlib import Path

from seatwork import units
from seatwork.errors import SeatworkError
from seatwork.rows import Blocks, Shown
from seatwork.shop.lists.reading import Row, read_list
from seatwork.shop.lists.shown import listed_rows

FILE = "materials.csv"
COLUMNS = (
    "material",
    "drill_speed_low",
    "drill_speed_high",
    "speed_source",
    "speed_confirmed",
    "cutting_oil",
    "oil_note",
    "rake_grabs",
    "main_value_mpa",
    "exponent",
    "force_source",
    "process_damping_n_per_m",
    "caution",
)
CONFIRMED = ("two-source", "one-source", "memory")


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Material(Shown):
    """A material of the shop.

    Parameters
    ----------
    name : str
        As the shop says it.
    drill_speed_low, drill_speed_high : float or None
        Range of cutting speeds of high-speed steel drills [m/min]; None is "no value".
    speed_source, speed_confirmed : str
        Where the range was published, and how well it is confirmed.
    cutting_oil : str
        What to put on; ``dry`` for none.
    oil_note : str
        What to say about it.
    rake_grabs : bool
        Whether positive rake grabs and feeds itself in it.
    main_value : float or None
        Specific cutting force of a 1 mm chip [MPa].
    exponent : float or None
        Its rise with thinner chips [-].
    force_source : str
        Where the two come from.
    process_damping : float or None
        Rubbing of a used lip, for the chatter model only [N/m].
    caution : str
        What can hurt in it; blank if nothing special.
    """

    name: str
    drill_speed_low: float | None
    drill_speed_high: float | None
    speed_source: str
    speed_confirmed: str
    cutting_oil: str
    oil_note: str
    rake_grabs: bool
    main_value: float | None
    exponent: float | None
    force_source: str
    process_damping: float | None
    caution: str

    def _line(self) -> str:
        return f"{self.name}: {self.cutting_oil}"

    def _blocks(self) -> Blocks:
        yield "", listed_rows(self)

    @property
    def drill_speeds(self) -> tuple[float, float]:
        """Range of drill cutting speeds [m/min].

        Raises
        ------
        SeatworkError
            If the list has no value.
        """
        if self.drill_speed_low is None or self.drill_speed_high is None:
            raise SeatworkError(
                self.name,
                f"{FILE} has no value for its cutting speed",
                "look it up and write drill_speed_low and drill_speed_high, with their source",
            )
        return self.drill_speed_low, self.drill_speed_high

    @property
    def dry(self) -> bool:
        """Whether it is cut without oil."""
        return self.cutting_oil.casefold().startswith("dry")


def materials(folder: str | Path | None = None) -> tuple[Material, ...]:
    """Read the shop's materials.

    Parameters
    ----------
    folder : str or Path, optional
        Workbook folder; the one found from the working folder if not given,
        and the package's own list where there is none.

    Returns
    -------
    tuple of Material

    Raises
    ------
    SeatworkError
        Naming file, row and column, and what would do.

    Examples
    --------
    >>> [material.name for material in materials()][:2]
    ['gray iron', '1018 steel']
    """
    return read_list(FILE, folder, _material, columns=COLUMNS, needed=("material", "cutting_oil"))


def _material(row: Row) -> Material:
    low, high = (row.read(column, units.cutting_speed) for column in COLUMNS[1:3])
    if (low is None) != (high is None) or (low and high and not low <= high):
        raise row.refuse(
            "drill_speed_high",
            "a range needs two speeds, the lower one first",
            "write both, or leave both blank for no value",
        )
    if low is not None and not row.text("speed_source"):
        raise row.refuse("speed_source", "the speed has no source", "say where it was published")
    return Material(
        name=row.needed("material"),
        drill_speed_low=low,
        drill_speed_high=high,
        speed_source=row.text("speed_source"),
        speed_confirmed=row.word("speed_confirmed", CONFIRMED, "memory"),
        cutting_oil=row.needed("cutting_oil"),
        oil_note=row.text("oil_note"),
        rake_grabs=row.word("rake_grabs", ("yes", "no"), "no") == "yes",
        main_value=row.number_in("main_value_mpa", 100, 10000),
        exponent=row.number_in("exponent", 0, 0.9),
        force_source=row.text("force_source"),
        process_damping=row.number_in("process_damping_n_per_m", 0, 1e8),
        caution=row.text("caution"),
    )
