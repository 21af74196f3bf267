"""What a list says of one thing, as rows, in the words of its columns."""

from dataclasses import fields

from seatwork.rows import Row


def listed_rows(listed: object) -> tuple[Row, ...]:
    """Return a row for each column of a thing in the shop's lists that is not blank.

    Parameters
    ----------
    listed : object
        A dataclass of this room, a field for each column.
    """
    found = ((one.name, getattr(listed, one.name)) for one in fields(listed))  # type: ignore[arg-type]
    return tuple(
        Row(label=name.replace("_", " "), text=str(value))
        for name, value in found
        if value not in (None, "", (), False) and name != "name"
    )
