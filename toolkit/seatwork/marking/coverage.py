"""Which lessons and questions serve each code of the course outline, and where the gaps are."""

import csv
import io
from dataclasses import dataclass
from pathlib import Path

from seatwork.marking import sheets
from seatwork.questions import all_types, own_types
from seatwork.shop import find
from seatwork.shop.lists import Row, each_once, list_text, rows_of

OUTLINE, SERVES = "outline.csv", "coverage.csv"
KINDS = ("lesson", "question")
HEADS = ("code", "competency", "lessons", "questions", "sheets", "gaps")


@dataclass(frozen=True, slots=True, kw_only=True)
class Covered:
    """One code of the outline and what serves it.

    Parameters
    ----------
    code, competency : str
        Its short name, and what a learner can do.
    lessons, questions, sheets : tuple of str
        Lessons that are there, question types, and the sheets that ask one of these.
    """

    code: str
    competency: str
    lessons: tuple[str, ...]
    questions: tuple[str, ...]
    sheets: tuple[str, ...]

    @property
    def gaps(self) -> tuple[str, ...]:
        """What is missing, in words; empty if nothing is."""
        lacks = (
            (self.lessons, "no lesson"),
            (self.questions, "no question"),
            (self.sheets or not self.questions, "on no sheet"),
        )
        return tuple(words for found, words in lacks if not found)


@dataclass(frozen=True, slots=True, kw_only=True)
class Coverage:
    """The whole outline, and what stands outside of it.

    Parameters
    ----------
    codes : tuple of Covered
        In the order of the outline.
    unlisted : tuple of str
        Lessons and question types that are there and serve no code.
    missing : tuple of str
        Lessons and question types that serve a code and are not there.
    """

    codes: tuple[Covered, ...]
    unlisted: tuple[str, ...]
    missing: tuple[str, ...]

    def csv(self) -> str:
        """Return the report as a table for a spreadsheet."""
        out = io.StringIO()
        table = csv.writer(out)
        table.writerow(HEADS)
        for one in self.codes:
            parts = (one.lessons, one.questions, one.sheets, one.gaps)
            table.writerow([one.code, one.competency, *("; ".join(part) for part in parts)])
        return out.getvalue()


def coverage(folder: Path | None = None) -> Coverage:
    """Compare lessons, question types and sheets with the outline.

    Parameters
    ----------
    folder : Path, optional
        A workbook folder; looked for if not given. Its ``shop/outline.csv`` and
        ``shop/coverage.csv`` stand in for the package's own.

    Raises
    ------
    SeatworkError
        If a list is not as described, or names a code that the outline does not hold.
    """
    place = folder or find()
    outline = _outline(place)
    serves = _serves(place, set(outline))
    there = _there(place)
    asked = _asked(place)
    named = {kind: {name for k, name in serves if k == kind} for kind in KINDS}
    codes = tuple(_covered(code, words, serves, there, asked) for code, words in outline.items())
    return Coverage(
        codes=codes,
        unlisted=tuple(name for kind in KINDS for name in sorted(there[kind] - named[kind])),
        missing=tuple(name for kind in KINDS for name in sorted(named[kind] - there[kind])),
    )


def _covered(
    code: str,
    words: str,
    serves: dict[tuple[str, str], tuple[str, ...]],
    there: dict[str, set[str]],
    asked: dict[str, set[str]],
) -> Covered:
    lessons, questions = (
        tuple(
            n for (k, n), codes in serves.items() if k == kind and code in codes and n in there[k]
        )
        for kind in KINDS
    )
    on = {sheet for name in questions for sheet in asked.get(name, ())}
    return Covered(
        code=code,
        competency=words,
        lessons=lessons,
        questions=questions,
        sheets=tuple(sorted(on)),
    )


def _outline(folder: Path | None) -> dict[str, str]:
    columns = ("code", "competency")
    text, file = list_text(OUTLINE, folder)
    rows = rows_of(text, file, columns=columns, needed=columns)
    return dict(each_once(rows, "code", lambda row: (row.text("code"), row.needed("competency"))))


def _serves(folder: Path | None, known: set[str]) -> dict[tuple[str, str], tuple[str, ...]]:
    columns = ("kind", "name", "codes")
    text, file = list_text(SERVES, folder)
    rows = rows_of(text, file, columns=columns, needed=columns)
    return dict(each_once(rows, "name", lambda row: _served(row, known)))


def _served(row: Row, known: set[str]) -> tuple[tuple[str, str], tuple[str, ...]]:
    """Read which codes a lesson or a question serves; refuse one that the outline lacks."""
    codes = tuple(code.strip() for code in row.text("codes").split(";") if code.strip())
    for code in codes:
        if code not in known:
            raise row.refuse("codes", f"the outline has no {code}", f"add it to {OUTLINE}")
    return (row.word("kind", KINDS), row.text("name")), codes


def _there(folder: Path | None) -> dict[str, set[str]]:
    """Name the lessons and the question types that are there, the instructor's own too."""
    home = folder or sheets.folder().parents[1]
    kinds = set(all_types())
    if folder:
        kinds |= set(own_types(folder / "questions"))
    lessons = {path.stem for path in (home / "notebooks").glob("[0-9][0-9]_*.ipynb")}
    return {"lesson": {name for name in lessons if not name.startswith("00")}, "question": kinds}


def _asked(folder: Path | None) -> dict[str, set[str]]:
    """Tell for each question type the sheets it is asked on."""
    own = folder / "exercises" / "sheets" if folder else None
    place = own if own and own.is_dir() else sheets.folder()
    asked: dict[str, set[str]] = {}
    for path in sorted(place.glob("*.toml")):
        for item in sheets.read(path).items:
            asked.setdefault(item.kind.id, set()).add(path.stem)
    return asked
