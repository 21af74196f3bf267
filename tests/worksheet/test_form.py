"""The form, driven without a browser."""

from dataclasses import replace

from seatwork.marking import given, sheets
from seatwork.worksheet import Desk, model_sheet
from seatwork.worksheet.form import Form


def test_a_form_says_which_slip_was_made() -> None:
    """Typing a slip's number and pressing Check names the slip in a status region."""
    form = Form(model_sheet("cones").ask("c1"))
    form.boxes[0].value = ".422"
    form._check(None)
    assert 'role="status"' in form.verdict.value
    assert "both sides of the cone" in form.verdict.value


def test_a_form_shows_typed_text_escaped() -> None:
    """Text typed by a learner never becomes markup."""
    form = Form(model_sheet("cones").ask("c1"))
    form.boxes[0].value = "<img src=x onerror=alert(1)>"
    form._check(None)
    assert "<img" not in form.verdict.value


def test_hints_come_one_at_a_time_and_the_worked_answer_after_a_try() -> None:
    """A first press shows one hint; the worked answer opens with the first check."""
    form = Form(model_sheet("cones").ask("c1"))
    assert form.worked_button.disabled
    form._hint(None)
    assert form.help.value.count("Hint") == 1
    form._hint(None)
    assert form.help.value.count("Hint") == 2
    form.boxes[0].value = ".2"
    form._check(None)
    assert not form.worked_button.disabled


def test_a_choice_and_a_number_stand_in_one_form() -> None:
    """The question about the wrong angle has buttons for the place and a box for the height."""
    form = Form(model_sheet("cones").ask("c3"))
    form.boxes[0].value, form.boxes[1].value = "rim", ".022"
    form._check(None)
    assert form.verdict.value.count("Right") == 2


def test_the_form_as_text_never_changes() -> None:
    """The referee compares the text of the widget, so it must not hold what was typed."""
    form = Form(model_sheet("cones").ask("c1"))
    before = repr(form.view)
    form.boxes[0].value = ".2"
    assert repr(form.view) == before


def test_a_slip_can_be_refused_by_the_learner() -> None:
    """Beside a slip stands a button that takes the learner's word and gives a hint."""
    form = Form(model_sheet("cones").ask("c1"))
    assert form.other_button.layout.display == "none"
    form.boxes[0].value = ".422"
    form._check(None)
    assert form.other_button.layout.display == ""
    form._not_that(None)
    assert "Hint 1" in form.help.value


def test_twins_are_named_together() -> None:
    """Seat 0.773 on 0.406 at 82°: .1835 times .8693 is .1595, by two thoughts."""
    feedback = model_sheet("cones").ask("c1", answer=".1595").feedback[0]
    assert "[M04]" in feedback
    assert "[M09]" in feedback


def test_new_numbers_start_a_question_anew() -> None:
    """A practice question gets other numbers, and its answer starts empty."""
    desk = model_sheet("cones")
    form = Form(desk.ask("c1", answer=".422"))
    before = desk.question("c1")
    form._renew(None)
    assert desk.question("c1") != before
    assert desk.answers.of("c1").parts == ()
    assert "Run this cell again" in form.verdict.value


def test_a_graded_form_saves_and_tells_nothing() -> None:
    """On a graded sheet there is no verdict, no worked answer and no slip, only "saved"."""
    plan = sheets.load("cones")
    mine = replace(given.practice("cones"), mode="graded")
    desk = Desk(plan, mine, None)
    form = Form(desk.ask("c1"))
    form.boxes[0].value = ".422"
    form._check(None)
    assert "Saved" in form.verdict.value
    assert "M02" not in form.verdict.value
    assert desk.ask("c1").worked() == ""
    names = [button.description for button in form.view.children[2].children]
    assert names == ["Save"]
    form.view.children[1].value = True
    assert desk.answers.of("c1").sure
    assert "1 of 3 answered" in repr(desk.finish())
    desk.keep("c3", ("a", " "))
    said = repr(desk.finish())
    assert "1 of 3 answered" in said
    assert "answered in part: c3." in said


def test_keys_that_come_in_after_the_click_are_judged_with_it() -> None:
    """A busy kernel may get the last key presses after Check; they are the same try."""
    form = Form(model_sheet("cones").ask("c1"))
    form.boxes[0].value = "."
    form._check(None)
    form.boxes[0].value = ".211 in"
    assert "Right" in form.verdict.value
    assert form.entry.desk.answers.of("c1").tries == 1


def test_typing_on_ends_an_old_verdict() -> None:
    """A verdict never stands beside a text it was not given for."""
    form = Form(model_sheet("cones").ask("c1"))
    form.boxes[0].value = ".211 in"
    form._check(None)
    form._checked_at -= 60
    form.boxes[0].value = ".3 in"
    assert form.verdict.value == ""


def test_an_empty_box_says_the_unit_in_words() -> None:
    """A box for a length in inches says "in inches", not "in in"."""
    assert Form(model_sheet("cones").ask("c1")).boxes[0].placeholder == "in inches"
