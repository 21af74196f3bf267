"""Counterbores as published lists give them, for socket head and hex screws."""

from dataclasses import dataclass, replace

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware.facts import Fact, Sourced, fact, needed, weakest
from seatwork.hardware.limits import Limits, hole_limits
from seatwork.hardware.naming import screw
from seatwork.hardware.screws import Screw
from seatwork.hardware.spelling import as_typed
from seatwork.shop import rules
from seatwork.tables.reading import Cell
from seatwork.units import show_both

DIN_1, DIN_2 = "counterbore_din_974_1", "counterbore_din_974_2"
APPENDIX, COMPANY = "counterbore_inch_asme_b18_3_appendix", "counterbore_inch_company_practice"
AMERICAN_METRIC = "counterbore_metric_asme_b18_3_1m"
ALLOWANCE = "depth_allowance_over_head_height_mm"
WRENCH_ROWS = {
    "socket wrench": "counterbore_dia_row1_socket_wrench_mm",
    "ring wrench": "counterbore_dia_row2_ring_wrench_or_insert_mm",
    "no wrench": "counterbore_dia_row3_tight_no_wrench_room_mm",
}
USUAL = {
    "socket cap metric": "DIN 974-1",
    "hex metric": "DIN 974-2",
    "din 931": "DIN 974-2",
}
LISTS = {
    "DIN 974-1": "socket cap metric",
    "ASME B18.3.1M": "socket cap metric",
    "DIN 974-2": "hex metric",
    "ASME B18.3 appendix": "socket cap inch",
    "company practice": "socket cap inch",
}


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class CounterboreSize(Sourced):
    """A counterbore as a list gives it.

    Parameters
    ----------
    diameter : float
        Counterbore diameter [mm].
    depth : float
        Depth from the face [mm].
    depth_basis : str
        What the depth is made of, with the list or the house rule.
    standard : str
        Name of the list.
    series : str
        Series, row or fit of the list.
    limits : Limits, optional
        Limits of the diameter where the list gives a tolerance.
    fillet_countersink_diameter : float, optional
        Diameter of the countersink that clears the fillet under the head [mm].
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    diameter: float
    depth: float
    depth_basis: str
    standard: str
    series: str
    limits: Limits | None = None
    fillet_countersink_diameter: float | None = None

    def _line(self) -> str:
        return f"{show_both(self.diameter)} across, {self.standard}"


def listed_counterbore(
    text: str | Screw,
    *,
    standard: str | None = None,
    series: int = 1,
    room_for: str = "socket wrench",
    fit: str = "close",
    washer_thickness: float = 0.0,
) -> CounterboreSize:
    """Find the counterbore of a screw in a published list.

    Parameters
    ----------
    text : str or Screw
        A socket head cap screw, or a metric hex screw.
    standard : str, optional
        The list: ``DIN 974-1`` or ``ASME B18.3.1M`` (metric socket head), ``DIN 974-2``
        (metric hex), ``ASME B18.3 appendix`` or ``company practice`` (inch socket head).
        Without it DIN, or the house rule ``counterbore.inch_list``.
    series : int, optional
        Series 1 to 6 of DIN 974-1: 1 without washer, 5 with a plain washer.
    room_for : {"socket wrench", "ring wrench", "no wrench"}, optional
        Row of DIN 974-2.
    fit : {"close", "free"}, optional
        Column of the company practice.
    washer_thickness : float, optional
        Thickness of a washer under the head, added to the depth [mm].

    Returns
    -------
    CounterboreSize
        Depth by the list where it gives one, else head height and the house rule.

    Raises
    ------
    SeatworkError
        If no list has the screw: a hex cap screw in inches is one such.

    Examples
    --------
    >>> found = listed_counterbore("M6 SHCS")
    >>> found.diameter, found.depth, found.depth_basis
    (11.0, 6.4, 'head height 6 mm and 0.4 mm by DIN 974-1')
    """
    with as_typed(text):
        found = screw(text) if isinstance(text, str) else text
        name = _list_named(found, standard)
        makers = {
            "DIN 974-1": lambda: _din_974_1(found, series),
            "DIN 974-2": lambda: _din_974_2(found, room_for),
            "ASME B18.3 appendix": lambda: _appendix(found),
            "ASME B18.3.1M": lambda: _american_metric(found),
            "company practice": lambda: _company(found, fit),
        }
        made = makers[name]()
        if not 0 <= washer_thickness < float("inf"):
            raise SeatworkError(found.name, "no washer is that thick", "give 0 mm or more")
    if not washer_thickness:
        return made
    basis = f"{made.depth_basis}, and the washer"
    return replace(made, depth=made.depth + washer_thickness, depth_basis=basis)


def series_meaning(series: int) -> str:
    """Return what a series of DIN 974-1 is for.

    Raises
    ------
    SeatworkError
        If it is not 1 to 6.

    Examples
    --------
    >>> series_meaning(5)
    'with plain washer ISO 7089, ISO 7090, ISO 10673 form A'
    """
    return str(tables.row("counterbore_din_974_1_series_meaning", str(series))["used_for"])


def _list_named(found: Screw, standard: str | None) -> str:
    """Return the list asked for, or the usual one, if it holds such screws."""
    kind = "hex metric" if found.kind == "din 931" else found.kind
    fitting = [name for name, holds in LISTS.items() if holds == kind]
    if not fitting:
        raise SeatworkError(
            found.name,
            "no list held here gives a counterbore for it",
            "for a hex cap screw in inches take room for the wrench socket; a flat head wants"
            " a countersink",
        )
    if standard is not None and standard not in fitting:
        raise SeatworkError(
            found.name, f"{standard} gives no counterbore for it", f"say {' or '.join(fitting)}"
        )
    if standard is None and found.thread.system == "inch":
        return rules().word("counterbore.inch_list")
    return standard or USUAL[found.kind]


def _by_thread(table: str, found: Screw) -> dict[str, Cell]:
    return tables.row(table, found.thread.diameter)


def _din_974_1(found: Screw, series: int) -> CounterboreSize:
    row = _by_thread(DIN_1, found)
    meaning = series_meaning(series)
    across = needed(DIN_1, row, f"counterbore_dia_d1_H13_series_{series}_mm")
    depth, basis = _metric_depth(found, row)
    return _sized(across, depth, basis, "DIN 974-1", f"series {series}: {meaning}", grade="H13")


def _din_974_2(found: Screw, room_for: str) -> CounterboreSize:
    if room_for not in WRENCH_ROWS:
        raise SeatworkError(room_for, "DIN 974-2 has no such row", f"say {', '.join(WRENCH_ROWS)}")
    flats = found.across_flats or 0.0
    for row in tables.rows(DIN_2):
        if needed(DIN_2, row, "across_flats_s_mm").value >= flats - 1e-9:
            across = needed(DIN_2, row, WRENCH_ROWS[room_for])
            depth, basis = _metric_depth(found, _by_thread(DIN_1, found))
            return _sized(across, depth, basis, "DIN 974-2", f"room for: {room_for}")
    raise SeatworkError(found.name, "DIN 974-2 ends below its width", "measure the wrench socket")


def _metric_depth(found: Screw, row: dict[str, Cell]) -> tuple[Fact, str]:
    """Return the depth by the house rule ``counterbore.metric_depth``, and what it is made of."""
    rule = rules().word("counterbore.metric_depth")
    other = {
        "ISO 4762 flush": ("counterbore_depth_iso_4762_flush", "counterbore_depth_t_mm"),
        "DIN 74 form K": ("counterbore_depth_din_74_form_k", "counterbore_depth_mm"),
    }.get(rule)
    if other and found.kind == "socket cap metric":
        table, column = other
        return needed(table, tables.row(table, found.thread.size), column), f"list: {rule}"
    height, allowance = found.facts["height"], needed(DIN_1, row, ALLOWANCE)
    depth = Fact(
        value=height.value + allowance.value,
        source=f"{height.source}; {allowance.source}",
        confirmed=weakest(height.confirmed, allowance.confirmed),
    )
    return depth, f"head height {height.value:g} mm and {allowance.value:g} mm by DIN 974-1"


def _inch_depth(found: Screw) -> tuple[Fact, str]:
    """Return head height and the house rule ``counterbore.inch_below_face``."""
    height, rule = found.facts["height"], rules()["counterbore.inch_below_face"]
    depth = Fact(
        value=height.value + rules().number(rule.name),
        source=f"{height.source}; {rule.source}",
        confirmed=weakest(height.confirmed, rule.confirmed),
    )
    return depth, f"head height and the house rule {rule.name}"


def _appendix(found: Screw) -> CounterboreSize:
    row = tables.row(APPENDIX, found.thread.size)
    depth, basis = _inch_depth(found)
    clears = fact(APPENDIX, row, "fillet_countersink_dia_C_in")
    across = needed(APPENDIX, row, "counterbore_dia_B_in")
    return _sized(across, depth, basis, "ASME B18.3 appendix", "counterbore B", fillet=clears)


def _american_metric(found: Screw) -> CounterboreSize:
    row = tables.row(AMERICAN_METRIC, found.thread.size)
    depth, basis = _metric_depth(found, _by_thread(DIN_1, found))
    clears = fact(AMERICAN_METRIC, row, "fillet_countersink_dia_Y_mm")
    across = needed(AMERICAN_METRIC, row, "counterbore_dia_X_mm")
    return _sized(across, depth, basis, "ASME B18.3.1M", "counterbore X", fillet=clears)


def _company(found: Screw, fit: str) -> CounterboreSize:
    if fit not in ("close", "free"):
        raise SeatworkError(fit, "the company practice has no such fit", "say close or free")
    row = tables.row(COMPANY, found.thread.size)
    across = needed(COMPANY, row, f"counterbore_dia_{fit}_in")
    depth = needed(COMPANY, row, "counterbore_depth_in")
    return _sized(across, depth, "list: company practice", "company practice", fit)


def _sized(
    across: Fact,
    depth: Fact,
    basis: str,
    standard: str,
    series: str,
    *,
    grade: str | None = None,
    fillet: Fact | None = None,
) -> CounterboreSize:
    return CounterboreSize(
        diameter=across.value,
        depth=depth.value,
        depth_basis=basis,
        standard=standard,
        series=series,
        limits=hole_limits(across.value, grade) if grade else None,
        fillet_countersink_diameter=fillet.value if fillet else None,
        source=across.source,
        confirmed=across.confirmed,
    )
