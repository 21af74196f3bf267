"""Worksheets as their TOML files define them: questions, points, tries and hint cost."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

import seatwork
from seatwork.errors import SeatworkError
from seatwork.marking.apart import clash
from seatwork.marking.names import NAME, QUESTION, sheet_name
from seatwork.marking.seeds import question_seed
from seatwork.questions import Question, named, own_types
from seatwork.questions.left_out import MEND_IT, described, left_out
from seatwork.questions.registry import NotAllowed, is_ours
from seatwork.questions.type.draws import generator
from seatwork.rows import short
from seatwork.shop import find
from seatwork.shop.folder import read_toml
from seatwork.shop.lists.pages import present

FORMAT = 1
Types = dict[str, type[Question]]
LESSONS = "lessons"
MODES = ("practice", "graded")
SYSTEMS = ("inch", "metric")
MOST_QUESTIONS = 60
DRAWS, ROUNDS = 20, 40
"""Draws of a question that clashes before all are drawn anew, and how often that is done."""
LESSON = re.compile(r"[a-z0-9_]{0,60}", re.ASCII)
SHEET_KEYS = {
    "format", "title", "mode", "system", "tries", "hint_cost", "pass_mark", "questions",
}  # fmt: skip
QUESTION_KEYS = {"id", "type", "points", "system", "lesson", "start"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Item:
    """One question on a sheet.

    Parameters
    ----------
    id : str
        Its place on the sheet, such as c1.
    kind : type
        Its question type.
    points : float
        Points for a right answer [1], above zero.
    system : {"inch", "metric"} or None
        Unit system; as drawn if None.
    lesson, start : str
        File name and title of the lesson to begin with if it is missed; empty for none.
    """

    id: str
    kind: type[Question]
    points: float
    system: str | None
    lesson: str = ""
    start: str = ""

    def __repr__(self) -> str:
        return f"<Item {self.id}: {self.kind.id}, {self.points:g} points>"


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """A worksheet: its questions and its rules.

    Parameters
    ----------
    name : str
        Name of its file.
    title : str
        Heading.
    mode : {"practice", "graded"}
        Practice tells at once what an answer is; graded only saves it.
    tries : int
        Checks allowed for a question; 0 for no limit.
    hint_cost : float
        Share of a question's points that each hint costs, 0 to 1 [-].
    pass_mark : float
        Share of all points that passes, 0 to 1 [-].
    items : tuple of Item
        The questions.
    faults : tuple of str
        Of each file of own question types that had to be left out, why.
    """

    name: str
    title: str
    mode: str
    tries: int
    hint_cost: float
    pass_mark: float
    items: tuple[Item, ...]
    faults: tuple[str, ...] = ()

    def __repr__(self) -> str:
        return f"<Sheet {short(self.title, 60)}: {len(self.items)} questions, {self.mode}>"

    @property
    def points(self) -> float:
        """Points for the whole sheet [-]."""
        return sum(item.points for item in self.items)

    def item(self, question: str) -> Item:
        """Return the question with this id.

        Raises
        ------
        SeatworkError
            If the sheet has none.
        """
        for item in self.items:
            if item.id == question:
                return item
        known = ", ".join(item.id for item in self.items)
        raise SeatworkError(str(question)[:40], f"the sheet {self.name} has no such question",
                            f"ask for one of {known}")  # fmt: skip

    def draw(
        self, seed: bytes, attempts: Mapping[str, int] | None = None, *, apart: bool = True
    ) -> dict[str, Question]:
        """Return the questions with the numbers that `seed` gives, by their id.

        No number printed in one of them is accepted in another, unless `apart` is False, as
        it was when older forms were handed out.
        """
        counts = attempts or {}
        return {
            item.id: self.question(item.id, seed, counts.get(item.id, 1), apart=apart)
            for item in self.items
        }

    def question(self, name: str, seed: bytes, attempt: int = 1, *, apart: bool = True) -> Question:
        """Return one question with the numbers that `seed` and `attempt` give.

        Raises
        ------
        SeatworkError
            If the sheet has no such question.
        """
        item = self.item(name)
        if not apart:
            return draw_item(item, seed, attempt)
        drawn = dict(_drawn(self, seed, attempt))
        return drawn[item.id] if item.id in drawn else draw_item(item, seed, attempt)


@lru_cache(maxsize=256)
def _drawn(sheet: Sheet, seed: bytes, attempt: int) -> tuple[tuple[str, Question], ...]:
    """Draw every question of a sheet, kept apart from one another and from the first form.

    They are drawn in the order of their ids, so that another order on the page changes nothing.
    A question that cannot be drawn is left out here; it says why where it is asked.
    """
    first = dict(_drawn(sheet, seed, 1)) if attempt > 1 else {}
    least: tuple[int, dict[str, Question]] | None = None
    for start in range(0, ROUNDS * DRAWS, DRAWS):
        found: dict[str, Question] = {}
        clashes = 0
        for item in sorted(sheet.items, key=lambda item: (len(item.id), item.id)):
            beside = [question for name, question in first.items() if name != item.id]
            try:
                count, question = _apart(item, seed, attempt, start, [*found.values(), *beside])
            except Exception:  # an own type may fail in any way; where it is asked, it says so
                continue
            found[item.id], clashes = question, clashes + count
        if least is None or clashes < least[0]:
            least = clashes, found
        if not clashes:
            break
    return tuple(least[1].items()) if least else ()


def _apart(
    item: Item, seed: bytes, attempt: int, start: int, beside: list[Question]
) -> tuple[int, Question]:
    """Draw a question until it clashes with none beside it; else the one that clashes least."""
    best: tuple[int, Question] | None = None
    for again in range(start, start + DRAWS):
        question = draw_item(item, seed, attempt, again)
        count = sum(clash(question, other) for other in beside)
        if best is None or count < best[0]:
            best = count, question
        if not count:
            break
    assert best is not None
    return best


def draw_item(item: Item, seed: bytes, attempt: int = 1, again: int = 0) -> Question:
    """Return one question of a sheet with its numbers, `again` times drawn anew."""
    own = question_seed(seed, item.id, attempt, item.kind.version, again)
    question = item.kind.draw(generator(own))
    return question.stated_in(item.system) if item.system else question


def folder() -> Path:
    """Return the folder of the sheets: the workbook's, else the one that came along."""
    workbook = find()
    if workbook and (workbook / "exercises" / "sheets").is_dir():
        return workbook / "exercises" / "sheets"
    package = Path(seatwork.__file__).resolve().parent
    project = package.parents[1]
    home = project if (project / "pyproject.toml").is_file() else package / "workbook"
    return home / "exercises" / "sheets"


def place_of(name: str, home: Path) -> Path | None:
    """Return the file of a sheet: a worksheet's, else that of the questions in a lesson.

    Parameters
    ----------
    name : str
        Name of the sheet.
    home : Path
        Folder of the sheets; its folder ``lessons`` holds those that the lessons ask.
    """
    file = f"{sheet_name(name)}.toml"
    return next((path for path in (home / file, home / LESSONS / file) if path.is_file()), None)


def own_folder(start: Path | None = None) -> Path | None:
    """Return the folder of own question types in the workbook at or above a folder.

    Parameters
    ----------
    start : Path, optional
        Where to begin; the working folder if not given, which only a learner's own page may do.
    """
    workbook = find(start)
    place = workbook / "questions" if workbook else None
    return place if place and place.is_dir() else None


def load(
    name: str,
    place: Path | None = None,
    *,
    own: Path | None = None,
    allowed: Mapping[str, str] | None = None,
) -> Sheet:
    """Return a sheet by its name.

    Parameters
    ----------
    name : str
        Name of the sheet, such as cones.
    place : Path, optional
        Folder of the sheets; found if not given.
    own : Path, optional
        Folder of own question types; its files are run. Without it none is run, and a question
        of such a type is left out by name.
    allowed : mapping of str to str, optional
        Fingerprints of the files of it that are run, see `seatwork.marking.allowed`; all of
        them if not given.

    Raises
    ------
    SeatworkError
        If there is no such sheet, or its file has a fault: file, key, what would do.
    """
    home = place or folder()
    path = place_of(name, home)
    if path is None:
        known = ", ".join(sorted(found.stem for found in home.glob("*.toml"))) or "none is there"
        raise SeatworkError(name, "there is no such sheet", f"take one of these: {known}")
    return read(path, own=own, allowed=allowed)


def read(path: Path, *, own: Path | None = None, allowed: Mapping[str, str] | None = None) -> Sheet:
    """Return the sheet that a TOML file defines; `own` and `allowed` as for `load`."""
    found = read_toml(path)
    _check_keys(path, found, SHEET_KEYS)
    if found.get("format") != FORMAT:
        raise SeatworkError(path.name, "its format is not known", f"write format = {FORMAT}")
    items = found.get("questions", [])
    if not isinstance(items, list) or not 0 < len(items) <= MOST_QUESTIONS:
        raise SeatworkError(path.name, "it has no list of questions", "add [[questions]]")
    system = _one_of(path, found, "system", (*SYSTEMS, None))
    types, faults = _types(path, own, allowed)
    read_items = tuple(_item(path, item, system, types, faults) for item in items)
    if len({item.id for item in read_items}) < len(read_items):
        raise SeatworkError(path.name, "two questions have the same id", "rename one")
    return Sheet(
        name=sheet_name(path.stem),
        title=str(found.get("title", path.stem)),
        mode=_one_of(path, found, "mode", MODES) or "practice",
        tries=int(_amount(path, found, "tries", 0, 100)),
        hint_cost=_amount(path, found, "hint_cost", 0, 1),
        pass_mark=_amount(path, found, "pass_mark", 0, 1, 0.8),
        items=read_items,
        faults=faults,
    )


def _types(
    path: Path, own: Path | None, allowed: Mapping[str, str] | None
) -> tuple[Types, tuple[str, ...]]:
    """Return the own types that a sheet may ask, and the faults of files left out."""
    if own is None:
        seen = described(path.resolve().parents[2] / "questions")
        return {name: kind for name, kind in seen.items() if not is_ours(name)}, ()
    faults: list[SeatworkError] = []
    types = own_types(own, faults, allowed)
    for fault in faults:
        if isinstance(fault, NotAllowed):
            why = f"its file {fault.value}: {fault.fault}"
            types = described(own, why, fault.remedy, only=str(fault.value)) | types
    return types, tuple(map(_said, faults))


def _said(fault: SeatworkError) -> str:
    """Say why a file was left out; what would do, where the file itself may be sound."""
    remedy = f"; {fault.remedy}" if isinstance(fault, NotAllowed) else ""
    return f"{fault.value}: {fault.fault}{remedy}"


def _kind(name: str, types: Types, faults: tuple[str, ...]) -> type[Question]:
    """Return a question type; a stand-in if it may be one of the files left out."""
    doubled = any(fault.split(": ")[0].endswith(f", {name}") for fault in faults)
    if doubled or (faults and name not in types and not is_ours(name)):
        return left_out(name, "; ".join(faults), MEND_IT)
    return named(name, types)


def _item(path: Path, item: Any, system: str | None, types: Types, faults: tuple[str, ...]) -> Item:
    if not isinstance(item, dict):
        raise SeatworkError(path.name, "a question is no table", "write [[questions]]")
    _check_keys(path, item, QUESTION_KEYS)
    name, kind = item.get("id"), item.get("type")
    if not isinstance(name, str) or not QUESTION.fullmatch(name):
        raise SeatworkError(path.name, f"{name!r} is no question id", 'write one such as "c1"')
    if not isinstance(kind, str) or not NAME.fullmatch(kind):
        raise SeatworkError(path.name, f"{name} has no question type", 'write type = "seat-depth"')
    return Item(
        id=name,
        kind=_kind(kind, types, faults),
        points=_amount(path, item, "points", 0.01, 100, 1.0),
        system=_one_of(path, item, "system", (*SYSTEMS, None)) or system,
        **_lesson(path, name, item),
    )


def _lesson(path: Path, name: str, item: dict[str, Any]) -> dict[str, str]:
    """Read the lesson that a missed question leads to."""
    lesson, start = (str(item.get(key, "")) for key in ("lesson", "start"))
    if bool(lesson) != bool(start) or not LESSON.fullmatch(lesson):
        raise SeatworkError(
            path.name,
            f"{name} names half a lesson",
            'write both, such as lesson = "02_angle_standards" and start = "Which angle?"',
        )
    return {"lesson": present(lesson), "start": start}


def _check_keys(path: Path, found: dict[str, Any], known: set[str]) -> None:
    for key in found:
        if key not in known:
            remedy = f"known are {', '.join(sorted(known))}"
            raise SeatworkError(f"{path.name}, {key}", "that key is not known", remedy)


def _one_of(path: Path, found: dict[str, Any], key: str, known: tuple[str | None, ...]) -> Any:
    value = found.get(key)
    if value is not None and value not in known:
        remedy = f"write one of {', '.join(word for word in known if word)}"
        raise SeatworkError(f"{path.name}, {key}", f"{value!r} is not known", remedy)
    return value


def _amount(
    path: Path, found: dict[str, Any], key: str, least: float, most: float, usual: float = 0.0
) -> float:
    value = found.get(key, usual)
    if isinstance(value, bool) or not isinstance(value, int | float) or not least <= value <= most:
        raise SeatworkError(
            f"{path.name}, {key}", f"{value!r} is out of range", f"write {least:g} to {most:g}"
        )
    return float(value)
