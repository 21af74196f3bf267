"""Judged values as people read them, on screen and card alike."""

from seatwork.inspection.records import Judged
from seatwork.rows import Row
from seatwork.units import show_angle, show_both, show_length


def value_row(one: Judged, system: str) -> Row:
    """Return one judged value with its mark, its limits, and what it was measured with.

    Parameters
    ----------
    one : Judged
        The value.
    system : {"inch", "metric"}
        Which unit system stands first.
    """
    if one.value is None:
        answer = "yes" if one.mark == "OK" else "no"
        return Row(label=one.about, text=f"[{one.mark}] {answer}")
    sure = _show(one.key, one.uncertainty, system)
    limits = f"{_show(one.key, one.least, system)} to {_show(one.key, one.greatest, system)}"
    return Row(
        label=one.about,
        text=f"[{one.mark}] {_both(one, system)}, limits {limits}, {one.instrument} ±{sure}: "
        f"{one.verdict}",
        source=one.source,
    )


def _both(one: Judged, system: str) -> str:
    assert one.value is not None
    return show_angle(one.value) if one.key == "angle" else show_both(one.value, system)


def _show(key: str, value: float | None, system: str) -> str:
    if value is None:
        return "none"
    return show_angle(value) if key == "angle" else show_length(value, system)
