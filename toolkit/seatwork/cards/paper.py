"""A worksheet on paper: one for each learner, and the key for the instructor."""

from collections.abc import Sequence
from pathlib import Path

from seatwork.cards.pages import Pages
from seatwork.cards.pictures import in_gray, trimmed
from seatwork.marking import Handout, Sheet
from seatwork.marking.text import band, right_answer
from seatwork.questions.type.parts import ChoicePart, NumberPart, Part

LETTERS = "abcdefgh"
PICTURE = 0.8
WIDE, BOX = 5.3, 0.52
"""Width of a picture, whose labels then are 7.5 pt, and what a box to write in takes [in]."""


def learner_pages(path: str | Path, sheet: Sheet, handout: Handout, paper: str = "") -> None:
    """Write one learner's worksheet as a PDF, see `on_paper`."""
    on_paper(sheet, handout, paper).save(path)


def on_paper(sheet: Sheet, handout: Handout, paper: str = "") -> Pages:
    """Set one learner's worksheet: numbers, drawings, boxes to write in.

    Parameters
    ----------
    sheet : Sheet
        The worksheet.
    handout : Handout
        The learner's form.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    """
    given = handout.given
    pages = Pages(paper, foot=f"{given.learner}  {sheet.name}  form {given.form}")
    pages.text(sheet.title, size=18, bold=True)
    pages.text(f"Learner {given.learner}    form {given.form}    date ____________")
    pages.text("Write the number in the box, with its unit if it is another than printed.")
    for item in sheet.items:
        _question(pages, item.id, item.points, handout)
    return pages


def _question(pages: Pages, name: str, points: float, handout: Handout) -> None:
    question = handout.questions[name]
    drawing = question.drawing()
    pixels = trimmed(in_gray(drawing.png(PICTURE))) if drawing else None
    high = WIDE * pixels.shape[0] / pixels.shape[1] if pixels is not None else 0.0
    pages.space(0.25)
    pages.keep_together(0.4 + pages.high(question.ask()) + high + BOX * len(question.parts))
    pages.text(f"{name}    ({points:g} point{'s' if points != 1 else ''})", bold=True)
    pages.text(question.ask())
    if pixels is not None:
        pages.image(pixels, WIDE)
    pages.space(0.08)
    for number, part in enumerate(question.parts):
        label = name if len(question.parts) == 1 else f"{name}{LETTERS[number]}"
        pages.box(label, part.unit if isinstance(part, NumberPart) else "")


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
        pages.text(f"{given.learner}    form {given.form}", bold=True)
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
