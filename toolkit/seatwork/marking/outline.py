"""Which lessons and questions serve each code of the course outline, and where the gaps are."""

import csv
import io
import tomllib
from dataclasses import dataclass
from pathlib import Path

from seatwork.files import Row, build_each, read_table
from seatwork.marking import sheets
from seatwork.questions import Question, all_types
from seatwork.questions.left_out import described
from seatwork.shop import find
from seatwork.shop.folder import package_text
from seatwork.shop.lists.outline import read_outline
from seatwork.shop.lists.pages import present

SERVES, CONTENTS = "coverage.csv", "contents.toml"
KINDS = ("lesson", "question")
COLUMNS = ("kind", "name", "codes")
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
        Lessons and question types that are there and serve no code of the outline.
    missing : tuple of str
        Lessons and question types that serve a code and are not there.
    unknown : tuple of str
        Codes that a lesson or a question type serves and the outline does not hold.
    served : tuple of (str, str, str)
        Kind, name and codes of all that is there: a ``shop/coverage.csv`` to begin with.
    """

    codes: tuple[Covered, ...]
    unlisted: tuple[str, ...]
    missing: tuple[str, ...]
    unknown: tuple[str, ...]
    served: tuple[tuple[str, str, str], ...]

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
        A workbook folder; looked for if not given. Its ``shop/outline.csv`` stands in for the
        package's and is taken as it is. Question types say their codes themselves, lessons in
        the list of contents; a row of ``shop/coverage.csv`` stands in for either.

    Raises
    ------
    SeatworkError
        If a list cannot be read. Codes that nothing serves, and codes that the outline does
        not hold, are no fault: they are in the report.
    """
    place = folder or find()
    types: dict[str, type[Question]] = dict(all_types())
    types |= described(place / "questions") if place else {}
    outline, serves = read_outline(place), _serves(place, types)
    there, on = _there(place, types), asked_on(place)
    codes = tuple(_covered(code, words, serves, there, on) for code, words in outline.items())
    kept = {name for name, codes in serves.items() if outline.keys() & codes}
    named = {code: None for codes in serves.values() for code in codes}
    return Coverage(
        codes=codes,
        unlisted=tuple(name for _, name in sorted(there - kept, key=_order)),
        missing=tuple(name for _, name in sorted(serves.keys() - there, key=_order)),
        unknown=tuple(code for code in named if code not in outline),
        served=tuple((*one, "; ".join(serves.get(one, ()))) for one in sorted(there, key=_order)),
    )


def asked_on(folder: Path | None = None) -> dict[str, tuple[str, ...]]:
    """Name the sheets of a workbook that ask each question type; those that came along if none.

    Examples
    --------
    >>> asked_on()["seat-diameter"]
    ('cones', 'flushness')
    """
    own = folder / "exercises" / "sheets" if folder else None
    asked: dict[str, tuple[str, ...]] = {}
    for path in sorted((own if own and own.is_dir() else sheets.folder()).glob("*.toml")):
        for kind in {item.kind.id for item in sheets.read(path).items}:
            asked[kind] = (*asked.get(kind, ()), path.stem)
    return asked


Named = tuple[str, str]
"""A lesson or a question type: its kind and its name."""


def _order(one: Named) -> tuple[int, str]:
    return KINDS.index(one[0]), one[1]


def _covered(
    code: str,
    words: str,
    serves: dict[Named, tuple[str, ...]],
    there: set[Named],
    on: dict[str, tuple[str, ...]],
) -> Covered:
    found = sorted(one for one, codes in serves.items() if code in codes and one in there)
    lessons, questions = (tuple(name for k, name in found if k == kind) for kind in KINDS)
    return Covered(
        code=code,
        competency=words,
        lessons=lessons,
        questions=questions,
        sheets=tuple(sorted({sheet for name in questions for sheet in on.get(name, ())})),
    )


def _serves(folder: Path | None, types: dict[str, type[Question]]) -> dict[Named, tuple[str, ...]]:
    """Tell which codes each lesson and question type serves, the workbook's own rows last."""
    pages = tomllib.loads(package_text(CONTENTS))["page"]
    lessons = {("lesson", page["file"]): tuple(page["codes"]) for page in pages if "codes" in page}
    questions = {("question", kind.id): kind.codes for kind in types.values()}
    own = folder / "shop" / SERVES if folder else None
    if own is None or not own.is_file():
        return lessons | questions
    rows = read_table(own, columns=COLUMNS, needed=COLUMNS, name=str(own))
    seen: dict[Named, int] = {}
    return lessons | questions | dict(build_each(rows, lambda row: _served(row, seen)))


def _served(row: Row, seen: dict[Named, int]) -> tuple[Named, tuple[str, ...]]:
    """Read which codes a lesson or a question serves; refuse one that `seen` holds already."""
    kind, name = row.word("kind", KINDS), row.needed("name")
    one = kind, present(name) if kind == "lesson" else name
    if seen.setdefault(one, row.number) != row.number:
        fault = f"{one[1]} stands in row {seen[one]} too"
        raise row.refuse("name", fault, "write all its codes in one row")
    codes = (code.strip() for code in row.text("codes").split(";"))
    return one, tuple(filter(None, codes))


def _there(folder: Path | None, types: dict[str, type[Question]]) -> set[Named]:
    """Name the lessons and the question types that are there, the instructor's own too."""
    home = folder or sheets.folder().parents[1]
    lessons = {path.stem for path in (home / "notebooks").glob("[0-9][0-9]_*.ipynb")}
    return {
        *(("lesson", name) for name in lessons if not name.startswith("00")),
        *(("question", name) for name in types),
    }
