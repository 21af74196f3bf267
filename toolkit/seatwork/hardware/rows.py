"""Looked-up things as rows: each size in both unit systems, then where it comes from."""

from collections.abc import Iterator
from dataclasses import fields

from seatwork.rows import Row, Shown
from seatwork.units import show_angle, show_both, show_number

NOT_ROWS = ("source", "confirmed", "name", "facts")


def sized_rows(found: object, source: str, confirmed: str) -> Iterator[Row]:
    """Yield a row for each thing a looked-up dataclass knows, then one for its source.

    Parameters
    ----------
    found : object
        A dataclass of this room; lengths [mm] and angles [deg] as its fields.
    source, confirmed : str
        Where it comes from, and how well that is confirmed.
    """
    for one in fields(found):  # type: ignore[arg-type]
        value = getattr(found, one.name)
        if one.name not in NOT_ROWS and value not in (None, "", (), False):
            yield Row(label=one.name.replace("_", " "), text=_shown(one.name, value))
    yield Row(label="source", text=f"{source} ({confirmed})")


def _shown(name: str, value: object) -> str:
    if isinstance(value, bool):
        return "yes"
    if isinstance(value, int | float):
        if name.startswith(("diameter_ratio", "count")):
            return show_number(value, 3)
        return show_angle(value) if "angle" in name else show_both(value)
    if isinstance(value, tuple):
        return " to ".join(_shown(name, one) for one in value)
    return repr(value).strip("<>") if isinstance(value, Shown) else str(value)
