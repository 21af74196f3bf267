"""An instructor's own question type: one file, a template, and what it still lacks."""

import sys
from pathlib import Path
from random import Random

import pytest
from seatwork.errors import SeatworkError
from seatwork.marking import sheets
from seatwork.questions import lacks, own_types
from seatwork.questions.checking.template import DRAWING, own_type
from seatwork.questions.registry import load

TEMPLATE = own_type("my-question", "E1")
EARLIER = (
    TEMPLATE[: TEMPLATE.index("    def working(self)")]
    + """\
    def worked(self) -> str:
        sizes = f"{self.stated('hole_diameter')} + 2 × {self.stated('leg')}"
        return f"{sizes} = {self.show(self.value())}."
"""
)
"""As types were written before steps were asked for."""


def written(folder: Path, text: str, name: str = "mine.py") -> Path:
    """Write a question type into a folder."""
    folder.mkdir(parents=True, exist_ok=True)
    path = folder / name
    path.write_text(text, encoding="utf-8")
    return path


def test_the_template_keeps_the_contract(tmp_path: Path) -> None:
    """What an instructor begins with works as it stands."""
    assert lacks(load(written(tmp_path, TEMPLATE))) == ()


def test_a_file_written_before_still_loads(tmp_path: Path) -> None:
    """What earlier files import is where it was, for one version, and says where it is now."""
    new = (
        "from seatwork.questions import LENGTH, Mistake, NumberQuestion, Tolerance, "
        "WorkedStep, pick, slip\n"
    )
    old = (
        "from seatwork.questions.draws import pick\n"
        "from seatwork.questions.measures import LENGTH\n"
        "from seatwork.questions.question import NumberQuestion, Tolerance\n"
        "from seatwork.questions.slips import Mistake, slip\n"
    )
    assert new in TEMPLATE
    for name in ("draws", "measures", "question", "slips"):
        sys.modules.pop(f"seatwork.questions.{name}", None)
    with pytest.warns(DeprecationWarning, match="import from seatwork.questions"):
        kind = load(written(tmp_path, EARLIER.replace(new, old)))
    assert lacks(kind) == ()


# A fault planted in the template, and what is said of it.
FAULTS = [
    ('hints = ("A first step, without the formula.", "A second step.")', "", "hints is missing"),
    (', "A second step.")', ",)", "not in steps"),
    ("A first step, without the formula.", "d + 2 × leg = mouth", "formula"),
    ("A first step, without the formula.", "The hole / the leg", "formula"),
    ('goal = "Say in one sentence what a learner can do after it."', "", "goal is missing"),
    ("what a learner can do after it.", "", "no sentence"),
    ("difficulty = 1", "difficulty = 4", "difficulty"),
    ("its leg {leg}", "its leg", "leg is not stated"),
    ("its leg {leg}", "its leg {leg} (0.5 mm)", "in the other unit"),
    ("self.hole_diameter + self.leg)", "self.hole_diameter + 2.05 * self.leg)", "numbers"),
    ("Say why just this much is accepted.", "", "the tolerance has no reason"),
    ('Tolerance("0.002"', 'Tolerance("0"', "not above zero"),
    ("yield WorkedStep(", "yield from () and (", "worked answer is empty"),
    ("self.value(), LENGTH)", "2 * self.value(), LENGTH)", "do not come to the answer"),
    ("working(self)", "working_it_out(self)", "worked answer is empty"),
    ('Tolerance("0.002", "0.05"', 'Tolerance("0.0001", "0.001"', "half of the last place"),
    ("(6.6, 9.0, 11.0)", "(6.6,)", "fewer than 5 of 40 questions differ"),
    ('("E1",)', '("E1", "E9")', "the course outline has no code E9"),
    (
        '    undrawn = "the two sizes say it all"',
        "",
        "has no drawing; write drawings/my_question.py",
    ),
    ("pick(rng, (0.5, 0.8, 1.0))", "pick(rng, ())", "there is nothing to pick from"),
    (
        "pick(rng, (0.5, 0.8, 1.0))",
        "1 / 0",
        "it fails: ZeroDivisionError: division by zero, line 32",
    ),
    ('yield slip("M41", ', 'yield Mistake("M41", sentence="", value=', "has no sentence"),
]


def test_sizes_written_by_their_former_name_still_stand(tmp_path: Path) -> None:
    """A type that calls said, or writes its sizes in said itself, asks as it asked."""
    now = load(written(tmp_path, EARLIER)).draw(Random(1))
    calls = load(written(tmp_path, EARLIER.replace("self.stated(", "self.said("))).draw(Random(1))
    with pytest.warns(DeprecationWarning, match="stated now"):
        assert calls.worked() == now.worked()
    writes = (
        "    def said(self, name: str) -> str:\n"
        '        return f"about {NumberQuestion.said(self, name)}"\n\n'
        "    def value("
    )
    path = written(tmp_path, EARLIER.replace("    def value(", writes))
    with pytest.warns(DeprecationWarning, match="said is called stated now"):
        kind = load(path)
    with pytest.warns(DeprecationWarning, match="said is called stated now"):
        asked = kind.draw(Random(1)).ask()
    assert asked == now.ask().replace("hole of ", "hole of about ").replace("leg ", "leg about ")


# A fault planted in a drawing beside the type, and what is said of it.
FAULTS_DRAWN = [
    ('mouth="?"', 'mouth="hole_diameter"', 'has no "?"'),
    ('labels("leg", ', 'labels() | {"leg": "7 mm"} | question.labels(', "shows 7 mm, which"),
    ("def draw(", "def paint(", "defines no draw"),
    ("question.labels(", "question.sizes_shown(", "cannot draw the question (AttributeError"),
]


@pytest.mark.parametrize(("old", "new", "said"), FAULTS_DRAWN)
def test_a_fault_of_a_drawing_is_said(tmp_path: Path, old: str, new: str, said: str) -> None:
    """A drawing that gives away, marks nothing, or fails is named in one sentence."""
    path = written(tmp_path, own_type("my-question", "E1", drawn=True))
    assert "has no drawing" in lacks(load(path))[0]
    written(tmp_path / "drawings", DRAWING, "my_question.py")
    assert lacks(load(path)) == ()
    assert old in DRAWING
    written(tmp_path / "drawings", DRAWING.replace(old, new, 1), "my_question.py")
    assert said in lacks(load(path))[0]


def test_a_drawing_that_fails_leaves_the_question_to_be_asked(tmp_path: Path) -> None:
    """A learner reads that the drawing is missing; paper without it is refused in one sentence."""
    written(tmp_path / "drawings", DRAWING.replace("return ", "return 1 / 0, "), "my_question.py")
    question = load(written(tmp_path, own_type("my-question", drawn=True))).draw(Random(1))
    drawing = question.drawing()
    assert drawing is not None
    assert "cannot be shown; tell your instructor" in drawing.markdown()
    with pytest.raises(SeatworkError, match=r"drawings/my_question.py: .* line 10\)"):
        drawing.png()


def test_a_drawing_and_a_reason_for_none_do_not_go_together(tmp_path: Path) -> None:
    """A reason left in a type that got its drawing later is found."""
    written(tmp_path / "drawings", DRAWING, "my_question.py")
    assert lacks(load(written(tmp_path, TEMPLATE))) == (
        "it has a drawing and says in undrawn why it has none; keep one",
    )


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("def (", "mine.py, line 1: it is no Python"),
        ("import nothing_of_that_name", "ModuleNotFoundError: No module named"),
        ("1 / 0", "mine.py: running it failed (ZeroDivisionError: division by zero, line 1)"),
        ("raise SystemExit", "mine.py: running it failed (SystemExit"),
        ("", "mine.py: it defines 0 question types"),
    ],
)
def test_a_broken_file_is_one_sentence(tmp_path: Path, text: str, said: str) -> None:
    """Whatever stands in it: file, what is wrong with the line where there is one, and a remedy."""
    with pytest.raises(SeatworkError) as raised:
        load(written(tmp_path, text))
    assert said in str(raised.value)
    assert "\n" not in str(raised.value)
    with pytest.raises(SeatworkError, match="name a file that ends with"):
        load(tmp_path / "missing.py")


@pytest.mark.parametrize(("old", "new", "said"), FAULTS)
def test_what_is_missing_is_said(tmp_path: Path, old: str, new: str, said: str) -> None:
    """Each part of the contract, broken by itself, gets its own sentence."""
    assert old in TEMPLATE
    kind = load(written(tmp_path, TEMPLATE.replace(old, new)))
    found = lacks(kind)
    assert len(found) == 1
    assert said in found[0]


def test_a_sheet_in_a_workbook_uses_an_own_type(tmp_path: Path) -> None:
    """A file in the workbook's ``questions/`` folder adds its type to the sheets there."""
    (tmp_path / "workbook.toml").write_text("format = 1\n")
    written(tmp_path / "questions", TEMPLATE)
    text = 'format = 1\n[[questions]]\nid = "x1"\ntype = "my-question"\n'
    path = written(tmp_path / "exercises" / "sheets", text, "own.toml")
    sheet = sheets.read(path, own=tmp_path / "questions")
    assert sheet.draw(b"seed")["x1"].id == "my-question"


def test_a_name_taken_already_is_refused(tmp_path: Path) -> None:
    """An own type cannot stand in for one of the package unseen."""
    written(tmp_path, TEMPLATE.replace("my-question", "seat-depth"))
    with pytest.raises(SeatworkError, match="rename yours"):
        own_types(tmp_path)
