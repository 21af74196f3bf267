"""A worksheet on paper: each learner's own, those of a class as one, and the instructor's key."""

from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

from seatwork import files
from seatwork.cards.pages import THIN, Pages, bound
from seatwork.cards.pictures import in_gray, trimmed
from seatwork.errors import SeatworkError
from seatwork.marking import Handout, Sheet
from seatwork.marking.speaking import speaker
from seatwork.marking.text import band, right_answer
from seatwork.questions.type.parts import ChoicePart, NumberPart, Part
from seatwork.questions.type.pictures import spoken

LETTERS = "abcdefgh"
NAMED = 3
"""Learners whose codes stand in the name of what is printed for some alone."""
PICTURE = 0.8
WIDE, BOX = 5.3, 0.52
"""Width of a picture, whose labels then are 7.5 pt, and what a box to write in takes [in]."""
BOXES, WORK, GAP = 4.3, 1.4, 0.15
"""Width of the boxes with their units, least height of the room to work, and beside it [in]."""


def learner_pages(
    path: str | Path, sheet: Sheet, handout: Handout, paper: str = "", language: str = "en"
) -> None:
    """Write one learner's worksheet as a PDF, see `on_paper`."""
    on_paper(sheet, handout, paper, language).save(path)


def on_paper(sheet: Sheet, handout: Handout, paper: str = "", language: str = "en") -> Pages:
    """Set one learner's worksheet: numbers, drawings, boxes to write in, room to work.

    Parameters
    ----------
    sheet : Sheet
        The worksheet.
    handout : Handout
        The learner's form.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    language : {"en", "es"}
        What it asks in; numbers, units and print notes stay.

    Raises
    ------
    SeatworkError
        If there is no catalog of that language.
    """
    given, say = handout.given, speaker(language)
    named = f"{say('form')} {given.form}  {given.form_id}".rstrip()
    pages = Pages(paper, foot=f"{given.learner}  {sheet.name}  {named}", say=say)
    pages.text(sheet.title, size=18, bold=True)
    pages.text(f"{say('Learner')} {given.learner}    {named}    {say('date')} ____________")
    pages.text("Write the number in the box, with its unit if it is another than printed.")
    for item in sheet.items:
        _question(pages, item.id, item.points, handout)
    return pages


def for_a_class(
    sheet: Sheet, handouts: Sequence[Handout], paper: str = "", language: str = "en"
) -> Iterator[tuple[Handout, Pages]]:
    """Set the worksheets of a class, one learner after the other.

    Each has an even number of pages, so that a printer that prints both sides puts no two
    learners on one leaf.

    Parameters
    ----------
    sheet : Sheet
        The worksheet.
    handouts : sequence of Handout
        The learners' forms, in the order of the roster.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    language : {"en", "es"}
        What they ask in.

    Yields
    ------
    handout, pages : Handout, Pages
        A learner's form as it was handed out, and on paper.
    """
    for one in handouts:
        pages = on_paper(sheet, one, paper, language)
        if len(pages.figures) % 2:
            pages.new_page()
            pages.text("More room to work", bold=True)
        yield one, pages


def which_papers(sitting: int, only: Sequence[str] = ()) -> str:
    """Say which papers are printed: those of a few never take the place of the class's.

    Parameters
    ----------
    sitting : int
        2 for the first re-test.
    only : sequence of str
        Codes of the few; nothing for the whole class.

    Examples
    --------
    >>> which_papers(1), which_papers(2, ["L01", "L11"])
    ('', '2-L01-L11')
    """
    named = [*only[:NAMED], *([f"and-{len(only) - NAMED}-more"] if len(only) > NAMED else [])]
    return "-".join([str(sitting)] * (sitting > 1) + named)


def print_class(
    sheet: Sheet,
    handouts: Sequence[Handout],
    *,
    to: str | Path,
    keep: str | Path,
    which: str = "",
    paper: str = "",
    language: str = "en",
    progress: Callable[[int], None] | None = None,
) -> tuple[Path, Path]:
    """Write the worksheets of a class on paper: each learner's own, all as one, and the key.

    Parameters
    ----------
    sheet : Sheet
        The worksheet.
    handouts : sequence of Handout
        The learners' forms, in the order of the roster.
    to : str or Path
        Folder with a folder for each learner, where that learner's own goes.
    keep : str or Path
        The instructor's folder, for ``SHEET-papers.pdf`` and ``SHEET-key.pdf``.
    which : str
        What the two names say behind it of which papers these are, such as 2 for a re-test.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    language : {"en", "es"}
        What the worksheets ask in; the key is English.
    progress : callable, optional
        Called with the number of worksheets written.

    Returns
    -------
    papers, key : Path
        Where all worksheets and the key lie.

    Raises
    ------
    SeatworkError
        If no form is given, or a file cannot be written.
    """
    if not handouts:
        raise SeatworkError(sheet.name, "no form was handed out", "hand the sheet out first")
    printed = []
    for one, pages in for_a_class(sheet, handouts, paper, language):
        pages.save(Path(to) / one.given.learner / f"{sheet.name}-{one.given.form}.pdf")
        printed.append(pages)
        if progress:
            progress(len(printed))
    tail = f"-{which}" if which else ""
    papers, key = (Path(keep) / f"{sheet.name}-{what}{tail}.pdf" for what in ("papers", "key"))
    files.write(papers, bound(printed, f"{sheet.name}, one for each learner"), mode=files.PRIVATE)
    answer_key(key, sheet, handouts, paper)
    return papers, key


def _question(pages: Pages, name: str, points: float, handout: Handout) -> None:
    question = handout.questions[name]
    drawing = spoken(question.drawing(), pages.say)
    pixels = trimmed(in_gray(drawing.png(PICTURE))) if drawing else None
    high = WIDE * pixels.shape[0] / pixels.shape[1] + 0.1 if pixels is not None else 0.0
    boxes = 0.08 + BOX * len(question.parts)
    work = max(high + boxes, WORK)
    pages.space(0.25)
    pages.keep_together(0.3 + pages.high(question.ask()) + work)
    worth = pages.say(f"{points:g} point{'s' if points != 1 else ''}")
    pages.text(f"{name}    ({worth})", bold=True)
    pages.text(question.ask())
    pages.space(0.08)
    top = pages.down
    _room_to_work(pages, BOXES if pixels is None else WIDE, work)
    if pixels is not None:
        pages.image(pixels, WIDE)
    for number, part in enumerate(question.parts):
        label = name if len(question.parts) == 1 else f"{name}{LETTERS[number]}"
        pages.box(label, part.unit if isinstance(part, NumberPart) else "")
    pages.down = max(pages.down, top + work)


def _room_to_work(pages: Pages, left: float, high: float) -> None:
    """Draw an empty frame right of what is `left` inches wide, for the learner's own sums."""
    right = left + GAP
    pages.words[-1].append(f"[{pages.say('room to work')}]")
    pages.frame(right, pages.down, pages.room - right, high, weight=THIN)
    pages.set("work", right + 0.06, pages.down + 0.19)


def answer_key(
    path: str | Path, sheet: Sheet, handouts: Sequence[Handout], paper: str = ""
) -> None:
    """Write the instructor's key as a PDF for its owner alone, see `key_on_paper`."""
    key_on_paper(sheet, handouts, paper).save(path, private=True)


def key_on_paper(sheet: Sheet, handouts: Sequence[Handout], paper: str = "") -> Pages:
    """Set the instructor's key: every learner's answers with what is accepted.

    Parameters
    ----------
    sheet : Sheet
        The worksheet.
    handouts : sequence of Handout
        The learners' forms.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    """
    pages = Pages(paper, foot=f"{sheet.name}  KEY, instructor only")
    pages.text(f"{sheet.title}: key", size=18, bold=True)
    for handout in handouts:
        given = handout.given
        pages.space(0.15)
        pages.keep_together(1.0)
        pages.text(f"{given.learner}    form {given.form}    {given.form_id}".rstrip(), bold=True)
        for item in sheet.items:
            for number, part in enumerate(handout.questions[item.id].parts):
                single = len(handout.questions[item.id].parts) == 1
                label = item.id if single else f"{item.id}{LETTERS[number]}"
                accepted = band(part)
                shown = f"{_in_key(part)}   (accepted {accepted})" if accepted else _in_key(part)
                pages.text(f"{label}   {shown}", indent=0.3)
    return pages


def _in_key(part: Part) -> str:
    """Return the right answer, an option with the letter that stands on the learner's paper."""
    if not isinstance(part, ChoicePart) or part.is_on_drawing:
        return right_answer(part)
    words = [word for word, _ in part.options]
    return f"{LETTERS[words.index(part.right)]}) {right_answer(part)}"
