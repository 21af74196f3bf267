"""A form in Spanish: all of it is, at a press, and neither answers nor marks know of it."""

from pathlib import Path
from random import Random

import pytest
from seatwork.errors import SeatworkError
from seatwork.marking.speaking import Voice, unsaid
from seatwork.questions import all_types, judge_all
from seatwork.questions.type.parts import ChoicePart
from seatwork.worksheet import Desk, desk, model_sheet
from seatwork.worksheet.finishing import NotYet, open_points
from seatwork.worksheet.form import Form
from seatwork.worksheet.routing import HEADS, NOTHING_MISSED, result
from seatwork.worksheet.telling import example

from tests.catalogs import cut_texts, without_text


def spoken(sheet: str = "cones", name: str = "c1", *typed: str) -> Form:
    """Open a question, check an answer, and press Español."""
    form = Form(model_sheet(sheet).ask(name))
    if typed:
        form.type(typed)
        form.press("check", typed)
    form.press("speak es")
    return form


def test_a_press_says_everything_in_spanish_and_back() -> None:
    """Question, verdict, buttons and hint change; what was typed and checked stays."""
    form = spoken("cones", "c1", ".422")
    now, asked = form.view.now, form.view.asked
    assert asked["language"] == "es"
    assert asked["languages"] == [["en", "English"], ["es", "Español"]]
    assert asked["lines"][0].startswith("Un agujero de 0.406 in se avellana a 0.773 in")
    assert now["said"][0] == "Todavía no: .422"
    assert now["texts"] == now["judged"] == [".422"]
    assert now["buttons"][0]["label"] == "Comprobar"
    form.press("hint")
    assert form.view.now["help"][0]["heading"] == "Pista 1 de 3"
    form.press("speak en")
    assert form.view.now["said"][0] == "Not yet: .422"
    assert form.view.now["focus"] == "language"


def test_a_language_goes_for_all_questions_of_a_sheet() -> None:
    """The other forms on the page change, too, and keep the focus where it is."""
    sheet = model_sheet("cones")
    forms = [Form(sheet.ask(name)) for name in ("c1", "c2")]
    forms[0].press("speak es")
    assert [form.view.asked["language"] for form in forms] == ["es", "es"]
    assert [form.view.now["focus"] for form in forms] == ["language", ""]


def test_a_language_that_is_not_there_changes_nothing() -> None:
    """A press of no button is no language."""
    form = Form(model_sheet("cones").ask("c1"))
    form.press("speak tlh")
    assert form.view.asked["language"] == "en"
    with pytest.raises(SeatworkError, match="no catalog"):
        form.entry.desk.speak("tlh")


def test_an_option_is_kept_by_its_word_in_both_languages() -> None:
    """The page sends the word of the code, whatever is shown beside the button."""
    form = spoken("mixed_test", next_choice())
    shown = [dict(part["options"]) for part in form.view.asked["parts"] if part["options"]]
    form.press("speak en")
    english = [dict(part["options"]) for part in form.view.asked["parts"] if part["options"]]
    assert [list(one) for one in shown] == [list(one) for one in english]
    assert shown != english


def next_choice() -> str:
    """Return the first question of the mixed test with options in words."""
    items = model_sheet("mixed_test").plan.items
    return next(
        item.id
        for item in items
        if any(isinstance(part, ChoicePart) and not part.is_on_drawing for part in drawn(item.kind))
    )


def drawn(kind: type) -> tuple[object, ...]:
    """Return the parts of one draw."""
    return tuple(kind.draw(Random(0)).parts)  # type: ignore[attr-defined]


def test_marks_do_not_depend_on_the_language() -> None:
    """Each option is judged by its word in the code, its letter or its English; it has Spanish."""
    for kind in all_types().values():
        question = kind.draw(Random(1))
        for number, part in enumerate(question.parts):
            if not isinstance(part, ChoicePart):
                continue
            for letter, (word, shown) in zip("abcdefgh", part.options, strict=False):
                typed = [""] * len(question.parts)
                found = []
                for text in (word, letter, shown):
                    typed[number] = text
                    found.append(judge_all(question, typed)[number].is_right)
                assert found == [word == part.right] * 3
                assert unsaid(shown, "es") == ()


@pytest.mark.slow
def test_what_a_number_cuts_is_said_in_spanish() -> None:
    """Right numbers and slips of every type, as they are cut."""
    assert without_text(cut_texts(range(3)), "es") == set()


def test_the_small_words_of_a_form_have_their_spanish() -> None:
    """Examples beside a box, the end of a sheet, the route through the lessons."""
    texts = [*HEADS, NOTHING_MISSED, "Begin with", "not answered", "not right", "in {unit}"]
    texts += [result(()), "missed", "left empty", "Cones: all 8 questions are right."]
    texts += [example(part) for kind in all_types().values() for part in drawn(kind)]
    texts += ["Answer", "inches", "millimeters", "degrees", "seconds"]
    assert [text for text in texts if unsaid(text, "es")] == []
    assert open_points({}, Voice("es").say) == ""
    assert "todavía no" in str(NotYet("Cones", "x", Voice("es").say))


def test_a_workbook_names_its_language(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """``language = "es"`` opens every sheet in Spanish; what is no language is told at once."""
    marker = tmp_path / "workbook.toml"
    desk = model_sheet("cones")
    monkeypatch.chdir(tmp_path)
    marker.write_text('format = 1\nlanguage = "es"\n')
    assert Form(Desk(desk.plan, desk.mine, tmp_path).ask("c1")).view.asked["language"] == "es"
    for line in ('"tlh"', '"spanish"', "3"):
        marker.write_text(f"format = 1\nlanguage = {line}\n")
        with pytest.raises(SeatworkError, match="language is"):
            Desk(desk.plan, desk.mine, tmp_path)


def test_a_language_stays_when_a_page_is_run_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The workbook keeps what was chosen last, and its other lines."""
    marker = tmp_path / "workbook.toml"
    marker.write_text('format = 1\nhand_in = "/srv"\n', encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    Form(desk.sheet("cones").ask("c1")).press("speak es")
    assert Form(desk.sheet("angles").ask("a1")).view.asked["language"] == "es"
    assert marker.read_text(encoding="utf-8").splitlines()[:2] == ["format = 1", 'hand_in = "/srv"']
    Form(desk.sheet("cones").ask("c1")).press("speak en")
    assert Form(desk.sheet("cones").ask("c1")).view.asked["language"] == "en"
