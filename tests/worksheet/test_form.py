"""The form, driven without a browser."""

from dataclasses import replace

import pytest
from seatwork.marking import given, sheets
from seatwork.worksheet import Desk, model_sheet
from seatwork.worksheet.form import Form


def form_of(sheet: str = "cones", name: str = "c1") -> Form:
    """Open a question of a practice sheet; nothing is saved in a file."""
    return Form(model_sheet(sheet).ask(name))


def graded(name: str = "c1", **rules: object) -> Form:
    """Open a question of the sheet on cones as a graded one."""
    plan = replace(sheets.load("cones"), **rules)
    return Form(Desk(plan, replace(given.practice("cones"), mode="graded"), None).ask(name))


def check(form: Form, *texts: str) -> Form:
    """Type into the boxes and press Enter."""
    form.type(texts)
    form.press("check", texts)
    return form


def labels(form: Form) -> list[str]:
    """Give the buttons that can be pressed."""
    return [one["label"] for one in form.view.now["buttons"] if not one["shut"]]


def test_a_form_says_which_slip_was_made() -> None:
    """Checking a slip's number shows what was typed and names the slip, in one message."""
    form = check(form_of(), ".422")
    assert form.view.now["said"][0] == "Not yet: .422"
    assert form.view.now["tone"] == "wrong"
    assert form.view.now["focus"] == "select 0"


def test_nothing_is_said_while_typing() -> None:
    """Typing saves and judges nothing; the page is told what was kept, to say "saved"."""
    form = form_of()
    form.type([".422"])
    assert form.said == ""
    assert form.entry.desk.answers.of("c1").parts == (".422",)
    check(form, ".422")
    before = form.said
    form.type([".4"])
    assert form.said == before


def test_text_typed_is_told_as_text() -> None:
    """What a learner typed travels as text beside the words, and nothing of it is markup."""
    form = check(form_of(), "<img src=x onerror=alert(1)>")
    assert form.view.now["said"] == [
        'I cannot read "<img src=x onerror=alert(1)>". Write a size such as .125, 1/8 or 3.2 mm.'
    ]
    page = (form.view._esm, form.view._css)
    assert not any("innerHTML" in str(source) for source in page)


def test_an_unreadable_answer_is_told_once() -> None:
    """The typed text and what would do stand in the message once."""
    form = check(form_of(), "half of .367")
    assert form.said.count("half of .367") == 1
    assert form.said.count("cannot") == 1


def test_hints_come_one_at_a_time_and_stay() -> None:
    """Each press shows one hint more; those before stay, and the last press is the last."""
    form = form_of()
    for number in (1, 2, 3):
        assert f"Hint {number} of 3" in labels(form)
        form.press("hint")
        assert [one["heading"] for one in form.view.now["help"]] == [
            f"Hint {n} of 3" for n in range(1, number + 1)
        ]
        assert form.view.now["focus"] == "hint"
    assert not [label for label in labels(form) if "int" in label]


def test_the_worked_answer_opens_after_a_try() -> None:
    """It is there before, and says after what; then it says the answer."""
    form = form_of()
    assert "Worked answer" not in labels(form)
    check(form, ".2")
    form.press("worked")
    assert form.view.now["help"][-1]["heading"] == "Worked answer"
    assert "0.211" in " ".join(form.view.now["help"][-1]["lines"])


@pytest.mark.parametrize("typed", ["", "   "])
def test_an_empty_box_is_no_try(typed: str) -> None:
    """Check on an empty box says so, and neither opens the worked answer nor uses a try."""
    form = check(form_of(), typed)
    assert "No answer yet." in form.said
    assert "Worked answer" not in labels(form)
    kept = graded("c1", tries=1)
    check(check(kept, typed), ".2")
    assert kept.entry.desk.answers.of("c1").parts == (".2",)
    assert kept.entry.desk.answers.of("c1").tries == 1


def test_an_answer_not_known_opens_the_first_hint() -> None:
    """The hint comes by itself, within the one message, and counts as read."""
    form = check(form_of(), ".158")
    assert "I do not know how you got .158." in form.said
    assert "Hint 1 of 3: " in form.said
    assert form.entry.desk.answers.of("c1").hints == 1
    assert form.view.now["help"] == []
    form.press("hint")
    assert [one["heading"] for one in form.view.now["help"]] == ["Hint 2 of 3"]


def test_a_hint_that_costs_points_never_opens_by_itself() -> None:
    """Where a hint costs points the learner alone opens it, and sees what it costs."""
    plan = replace(sheets.load("cones"), hint_cost=0.1)
    form = check(Form(Desk(plan, given.practice("cones"), None).ask("c1")), ".158")
    assert form.entry.desk.answers.of("c1").hints == 0
    assert "Hint 1 of 3 (costs 10% of the points)" in labels(form)


def test_parts_have_their_verdicts_beside_their_boxes() -> None:
    """One check tells of both parts; the focus goes to the first that is wrong."""
    form = check(form_of(name="c3"), "rim", ".030")
    parts = form.view.now["parts"]
    assert [part["tone"] for part in parts] == ["right", "wrong"]
    assert form.view.now["said"] == ["1 of 2 right."]
    assert form.view.now["focus"] == "select 1"
    check(form, "rim", ".022")
    assert form.said.count("Right") == 2
    assert form.view.now["focus"] == "next"


def test_the_form_as_text_never_changes() -> None:
    """The referee compares the text of the widget, so it must not hold what was typed."""
    form = form_of()
    before = repr(form.view)
    check(form, ".2")
    assert repr(form.view) == before == "Form for c1: run this cell to answer here."


def test_new_numbers_come_in_place() -> None:
    """Question, picture and box change at once; the old answer is kept, read as before."""
    form = check(form_of(), ".422")
    before, picture = form.view.asked, form.view.picture
    form.press("renew")
    assert form.view.asked["lines"] != before["lines"]
    assert form.view.asked["alt"] != before["alt"]
    assert form.view.picture != picture
    assert (form.texts, form.said, form.view.now["focus"]) == (("",), "", "box")
    assert form.entry.desk.answers.of("c1").attempt == 2


def test_the_picture_follows_the_theme() -> None:
    """On a dark page the picture is drawn dark: its ground is darker than its lines."""
    form = form_of("flushness", "f2")
    light = form.view.picture
    form._heard({"page": {"dark": True, "scale": 1.0}})
    assert brightness(form.view.picture) < 60 < 200 < brightness(light)


def brightness(png: bytes) -> float:
    """Give the mean brightness of a picture, 0 to 255."""
    import io

    import numpy as np
    from PIL import Image

    return float(np.asarray(Image.open(io.BytesIO(png)).convert("L")).mean())


def test_tries_that_are_used_close_the_box() -> None:
    """The last answer is kept, and the box says so."""
    plan = replace(sheets.load("cones"), tries=1)
    form = check(Form(Desk(plan, given.practice("cones"), None).ask("c1")), ".2")
    check(form, ".3")
    assert form.said == "You have used your 1 tries. Your last answer is kept."
    assert form.view.now["closed"]


PRACTICE_WORDS = ("Right", "right", "Not yet", "accepted", "Hint", "Worked", "New numbers", "slip")


@pytest.mark.parametrize("typed", [".211", ".422", ".18", "two", ""])
def test_a_graded_form_has_no_word_of_practice(typed: str) -> None:
    """Whatever is answered, it saves and says nothing of right, wrong, hints or slips."""
    form = check(graded(), typed)
    shown = [*form.view.now["said"], *labels(form), form.view.asked["mode"].replace("No hints", "")]
    assert not [word for word in PRACTICE_WORDS for line in shown if word in line]
    assert labels(form) == ["Save"]
    assert (form.view.now["help"], form.view.now["figures"], form.entry.worked()) == ([], [], "")


@pytest.mark.parametrize(
    ("texts", "said"),
    [
        (("rim", ".022"), "Saved 2 of 2 parts."),
        (("rim", ""), "Saved. Part (b) is still empty."),
        (("", ".022"), "Saved. Part (a) is still empty."),
        (("", ""), "Nothing is typed yet."),
        (("rim", "two"), "Saved 2 of 2 parts. I cannot read (b): write a size such as .125, "
         "1/8 or 3.2 mm. It is saved as you typed it."),
    ],
)  # fmt: skip
def test_a_graded_form_says_what_is_saved(texts: tuple[str, ...], said: str) -> None:
    """Each part is said to be saved, empty or not readable."""
    form = check(graded("c3"), *texts)
    assert form.said == said
    assert form.entry.desk.answers.of("c3").parts == texts


def test_a_graded_sheet_ends_with_what_to_hand_in() -> None:
    """Its end counts what is answered and names what is not; the mark "sure" is kept."""
    form = graded()
    desk = form.entry.desk
    check(form, ".422")
    form._heard({"sure": True})
    assert desk.answers.of("c1").sure
    assert repr(desk.finish()).startswith("1 of 3 answered, c2 c3 empty.")
    desk.keep("c3", ("a", " "))
    assert "1 of 3 answered, c2 empty, c3 in part." in repr(desk.finish())


def test_a_verdict_comes_back_with_the_page() -> None:
    """What was checked before is told again when the cell is run again, and takes no focus."""
    desk = model_sheet("cones")
    check(Form(desk.ask("c1")), ".211 in")
    again = Form(desk.ask("c1"))
    assert "Right: 0.211 in" in again.said
    assert again.view.now["focus"] == ""


def test_a_box_says_its_unit_in_words() -> None:
    """The label says "in inches" to those who hear it, and the unit stands beside the box."""
    part = form_of().view.asked["parts"][0]
    assert (part["unit"], part["unit_words"]) == ("in", " in inches")


@pytest.mark.parametrize(
    ("typed", "why"),
    [
        ("1,875", "the comma can mean 1875 or 1.875"),
        ("-.018", "say proud or below"),
        ("135 mil", "write thou, or mm"),
        ("3 1/2 mm", "a fraction is read in inches"),
    ],
)
def test_why_an_answer_cannot_be_read_is_told(typed: str, why: str) -> None:
    """In practice and graded, with what would do; in Spanish too."""
    assert f'I cannot read "{typed}"' in check(form_of(), typed).said
    assert why in check(form_of(), typed).said
    assert why in check(graded(), typed).said
    spoken = form_of()
    spoken.press("speak es")
    said = check(spoken, typed).said
    assert said.startswith(f"No puedo leer «{typed}»: ")
    assert not {"write", "the", "inch"} & set(said.split())


def test_a_graded_sheet_does_not_count_what_cannot_be_read() -> None:
    """The last line names the question, so that nobody hands in unread."""
    form = graded()
    desk = form.entry.desk
    check(form, "1,46")
    assert "1 of 3 answered" in str(desk.finish())
    check(form, "1,875")
    assert "0 of 3 answered" in str(desk.finish())
    assert "c1 cannot be read yet" in str(desk.finish())
