"""What the referee finds on a page: one line for each question, and what the page lacks."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.marking import Sheet, given, sheets
from seatwork.marking.text import verdict_text
from seatwork.questions import Verdict
from seatwork.shop import find, wording
from seatwork.worksheet.finishing import NotYet
from seatwork.worksheet.watching import Watched, Witness, begins, plain

LETTERS = "abcdefgh"
RIGHT = "right."
IN_PART = "answered in part, still empty:"


@dataclass(slots=True)
class Findings:
    """What came of a page that has run.

    Parameters
    ----------
    faults : list of str
        What is wrong with the page itself.
    lines : list of str
        One for each question.
    right : bool
        Whether everything asked is right.
    whole : bool
        Whether the page has all its cells.
    """

    faults: list[str] = field(default_factory=list)
    lines: list[str] = field(default_factory=list)
    right: bool = True
    whole: bool = True

    @property
    def passed(self) -> bool:
        """Whether the page is whole, every cell ran, and everything asked is right."""
        return self.right and self.whole and not self.faults

    def lack(self, cell: str) -> None:
        """Note a cell that the page should have."""
        self.whole = False
        self.faults.append(f"A cell is missing from the page: {cell}")


def findings(seen: Witness) -> Findings:
    """Say what came of a page, as its witness saw it."""
    found = Findings(faults=[*_named(seen)])
    plans = _plans(seen, found)
    for plan in plans:
        desks = [desk for desk in seen.desks if desk.plan.name == plan.name]
        _look_at(plan, desks, seen, found)
    found.faults += _stops(seen)
    found.right = found.right and bool(plans)
    return found


def _look_at(plan: Sheet, desks: list[Watched], seen: Witness, found: Findings) -> None:
    """Look at one sheet: its first cell, each question, its last cell, its numbers."""
    if not desks and not seen.tried("sheet("):
        found.lack(f'sheet = sw.sheet("{plan.name}")')
    for item in plan.items:
        asking = [desk for desk in desks if item.id in desk.asked]
        if asking:
            line = _line(asking[-1], item.id)
            found.lines.append(f"{item.id}: {line}")
            found.right = found.right and line == RIGHT
        elif seen.tried(f"ask({item.id!r}", f'ask("{item.id}"'):
            found.lines.append(f"{item.id}: not looked at, since its cell stops.")
            found.right = False
        else:
            found.lack(f'sheet.ask("{item.id}")')
    if not any(desk.finished for desk in desks) and not seen.tried("finish("):
        found.lack("sheet.finish()")
    found.faults += _other_numbers(plan, desks, seen.folder)
    if any(not desk.is_practice for desk in desks):
        found.lines.append("This sheet is graded: your instructor says what is right.")
        found.right = False


def _stops(seen: Witness) -> Iterator[str]:
    """Name the first cell that stops with an error; an unfinished sheet's last one may."""
    stopped = [one for one in seen.stopped if not isinstance(one[1], NotYet)]
    for source, error in stopped[:1]:
        more = f", and {len(stopped) - 1} more after it" if len(stopped) > 1 else ""
        yield f"The cell that begins with {begins(source)!r} stops{more}: {_why(error)}"


def _why(error: BaseException) -> str:
    if isinstance(error, KeyboardInterrupt):
        return "it ran too long; look for a loop that never ends."
    if isinstance(error, SeatworkError):
        return plain(str(error))
    text = f"{type(error).__name__}: {error}"
    if isinstance(error, SyntaxError):
        text = f"line {error.lineno} cannot be read ({error.msg})"
    text = plain(text).rstrip(".: ")
    return f"{text}. Mend that cell, or take it out."


def _named(seen: Witness) -> Iterator[str]:
    """Say that a page does not open the sheet that its name promises, or none at all."""
    opened = list(dict.fromkeys(desk.plan.name for desk in seen.desks))
    promised = (sheets.folder() / f"{seen.named}.toml").is_file()
    if promised and opened and seen.named not in opened:
        yield f"The page is named {seen.named}, but opens the sheet {', '.join(opened)}."
    elif not promised and not opened and not seen.stopped:
        yield "The page opens no sheet, so nothing is asked on it."


def _plans(seen: Witness, found: Findings) -> list[Sheet]:
    """Return the sheets the page opens; if none, the one its file name promises."""
    plans = {desk.plan.name: desk.plan for desk in seen.desks}
    if plans or not (sheets.folder() / f"{seen.named}.toml").is_file():
        return list(plans.values())
    try:
        return [sheets.load(seen.named)]
    except Exception as error:  # a workbook's own question code may fail in any way
        found.faults += [] if seen.stopped else [_why(error)]
        return []


def _other_numbers(plan: Sheet, desks: list[Watched], folder: Path) -> Iterator[str]:
    if not desks:
        return
    mine = given.look_for(plan.name, folder, find())
    if any(desk.mine != mine for desk in desks):
        yield (
            f"The page answers other numbers than those given to {mine.learner}. Its first "
            f'cell is to be: sheet = sw.sheet("{plan.name}")'
        )


def _line(desk: Watched, name: str) -> str:
    try:
        return _answer(desk, name)
    except Exception as error:  # a question type of the workbook's own may fail in any way
        kind = "" if isinstance(error, SeatworkError) else f"{type(error).__name__}: "
        return f"could not be judged: {plain(f'{kind}{error}')}"


def _answer(desk: Watched, name: str) -> str:
    verdicts = desk.verdicts(name)
    blank = [verdict.kind == "blank" for verdict in verdicts]
    if all(blank):
        return "not answered yet."
    if desk.is_practice and all(verdict.is_right for verdict in verdicts):
        return RIGHT
    left = " ".join(f"({LETTERS[n]})" for n, empty in enumerate(blank) if empty)
    if not desk.is_practice:
        return f"{IN_PART} {left}." if left else "answered."
    lead = f"{IN_PART} {left}." if left else "answered, not right yet."
    return f"{lead} {_text_of(desk, name, verdicts)}".strip()


def _text_of(desk: Watched, name: str, verdicts: tuple[Verdict, ...]) -> str:
    """Tell of each part that is not right what is known of it."""
    parts, words = desk.question(name).parts, wording()
    return " ".join(
        (f"({LETTERS[number]}) " if len(parts) > 1 else "")
        + plain(verdict_text(verdict, part, words).removeprefix("Not yet. "), 400)
        for number, (verdict, part) in enumerate(zip(verdicts, parts, strict=True))
        if not verdict.is_right and verdict.kind != "blank"
    )
