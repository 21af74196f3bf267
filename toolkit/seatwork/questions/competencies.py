"""Competency tags of the question types: a table that an instructor may edit."""

import csv
from importlib import resources
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.shop import find

FILE = "competencies.csv"
HEADS = ("question", "tags")


def tags(folder: Path | None = None) -> dict[str, tuple[str, ...]]:
    """Return the competency tags by question type.

    Parameters
    ----------
    folder : Path, optional
        A workbook folder; looked for if not given. Its ``questions/competencies.csv``
        stands in for the package's table.

    Raises
    ------
    SeatworkError
        If the table has other columns than question and tags.

    Examples
    --------
    >>> tags()["seat-depth"]
    ('countersinks', 'trigonometry')
    """
    place = folder or find()
    own = place / "questions" / FILE if place else None
    packed = resources.files("seatwork.questions") / FILE
    text = (own if own and own.is_file() else packed).read_text(encoding="utf-8-sig")
    rows = csv.DictReader(text.splitlines())
    if tuple(rows.fieldnames or ()) != HEADS:
        raise SeatworkError(FILE, "its columns differ", f"head it {','.join(HEADS)}")
    return {row["question"]: _split(row["tags"] or "") for row in rows}


def _split(text: str) -> tuple[str, ...]:
    return tuple(tag.strip() for tag in text.split(";") if tag.strip())
