"""What may run code: own question files only from a folder that the instructor named."""

from pathlib import Path

import pytest
from seatwork.marking import AnswerFile, examples
from seatwork.marking.text import right_answer
from seatwork.questions.checking.template import own_type
from seatwork.record import forms

from tests.as_saved import as_saved

pytestmark = pytest.mark.slow
SHEET = 'format = 1\ntitle = "Friday"\n' + "".join(
    f'[[questions]]\nid = "{name}"\ntype = "{kind}"\npoints = 2\n'
    for name, kind in (("f1", "seat-depth"), ("f2", "my-question"))
)


def workbook(folder: Path, canary: Path) -> Path:
    """Make a workbook with a sheet, a question type that leaves a trace when run, and a course."""
    (folder / "exercises" / "sheets").mkdir(parents=True)
    (folder / "questions").mkdir()
    (folder / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    (folder / "exercises" / "sheets" / "friday.toml").write_text(SHEET, encoding="utf-8")
    trace = f"open({str(canary)!r}, 'a').close()\n"
    text = own_type("my-question", "E1").replace("from ", trace + "from ", 1)
    assert trace in text
    (folder / "questions" / "mine.py").write_text(text, encoding="utf-8")
    examples.make_course(folder / "course")
    return folder


@pytest.fixture
def canary(tmp_path: Path) -> Path:
    """Give a file that running the question type makes."""
    return tmp_path / "canary"


@pytest.mark.parametrize("named", [(), ("--course", "../mine")])
def test_standing_in_a_handed_in_workbook_runs_nothing_of_it(
    tmp_path: Path, canary: Path, run, named: tuple[str, ...]
) -> None:
    """Six commands leave a learner's question files alone, with their course or one's own."""
    theirs = workbook(tmp_path / "theirs", canary)
    examples.make_course(tmp_path / "mine")
    (theirs / "in").mkdir()
    for words in (
        ("hand-out", "friday", *named),
        ("hand-out", "cones", *named),
        ("mark", "friday", "in", *named),
        ("mark", "cones", "in", *named),
        ("slips", "friday", *named),
        ("why", "friday", "L01", "f2", "1", *named),
        ("override", "friday", "L01", "f2", "1", "because", *named),
        ("coverage",),
        ("question", "check", "questions/mine.py"),
    ):
        run(*words, here=theirs)
        assert not canary.exists(), words


def test_a_question_not_run_is_told_with_what_would_do(tmp_path: Path, canary: Path, run) -> None:
    """The sentence names the question type and the options that would do."""
    own = workbook(tmp_path / "own", canary)
    done = run("hand-out", "friday", here=own)
    assert done.code == 1
    assert "question type my-question: it is left out" in done.out
    assert "add --questions FOLDER, or --course FOLDER" in done.out
    assert "--mine" in run("question", "check", "questions/mine.py", here=own).out
    assert not canary.exists()


@pytest.mark.parametrize("named", [("--course", "course"), ("--questions", "questions")])
def test_a_folder_that_is_named_is_run(tmp_path: Path, canary: Path, run, named) -> None:
    """One's own type is handed out and marked once its folder or its course is named."""
    own = workbook(tmp_path / "own", canary)
    assert "mine.py" in run("question", "allow", "questions", here=own).out
    assert not canary.exists()
    assert run("hand-out", "friday", *named, here=own).code == 0
    assert canary.exists()
    paper(own, "L01").save(own / "in")
    assert "1 file, 1 marked" in run("mark", "friday", "in", *named, here=own).out
    assert "keeps the contract" in run(
        "question", "check", "questions/mine.py", "--mine", here=own
    ).out  # fmt: skip


def paper(own: Path, learner: str) -> AnswerFile:
    """Answer the question of the package right and the own one with nothing."""
    form = forms(own / "course").form("friday", learner, 1)
    assert form is not None
    kind = next(kind for kind in form_types() if kind.id == "seat-depth")
    (part,) = kind(**form.sizes["f1"]).parts
    file = AnswerFile(learner=learner, sheet="friday", form=1)
    file = file.changed("f1", parts=(right_answer(part),)).changed("f2", parts=("1 in",))
    return as_saved(own / "course", file)


def form_types() -> list:
    """Give the question types of the package."""
    from seatwork.questions import all_types

    return list(all_types().values())


def test_a_broken_question_file_leaves_out_that_question(tmp_path, canary, run) -> None:
    """The file is named with its line, its question needs a person, the rest is marked."""
    own = workbook(tmp_path / "own", canary)
    course = ("--course", "course")
    run("question", "allow", "questions/mine.py", here=own)
    assert run("hand-out", "friday", *course, here=own).code == 0
    assert run("hand-out", "cones", *course, "--to", tmp_path / "to", here=own).code == 1
    paper(own, "L01").save(own / "in")
    broken = own / "questions" / "mine.py"
    broken.write_text(broken.read_text(encoding="utf-8") + "\ndef (:\n", encoding="utf-8")
    lines = len(broken.read_text(encoding="utf-8").splitlines())
    run("question", "allow", "questions/mine.py", here=own)
    done = run("mark", "friday", "in", *course, here=own)
    assert done.code == 0
    assert f"Question file left out: mine.py, line {lines}: it is no Python" in done.out
    assert "f2: its question type my-question is left out" in done.out
    done = run("override", "friday", "L01", "f2", "1", "read it myself", *course, here=own)
    assert "3 of 4 points" in done.out
    assert "my-question" in run("hand-out", "friday", "--sitting", "2", *course, here=own).out


@pytest.mark.parametrize(
    "text", ["raise SystemExit(3)", "1 / 0", "import no_such_module_here", "x = 1", "\0", "("]
)
def test_a_question_file_may_fail_in_any_way(tmp_path: Path, run, text: str) -> None:
    """Leaving, dividing by zero, a missing module and no type at all are one sentence."""
    (tmp_path / "bad.py").write_text(text, encoding="utf-8")
    done = run("question", "check", "bad.py")
    assert done.code == 1
    assert done.out.startswith("bad.py")


def test_a_question_file_that_is_not_there_is_one_sentence(tmp_path: Path, run) -> None:
    """A missing file and a folder are told."""
    (tmp_path / "folder.py").mkdir()
    for name in ("nofile.py", "folder.py"):
        assert "name a file that ends with .py" in run("question", "check", name).out


def test_coverage_names_own_types_without_running_them(tmp_path: Path, canary: Path, run) -> None:
    """What a file says of its name is read as text."""
    own = workbook(tmp_path / "own", canary)
    assert "my-question" in run("coverage", here=own).out
    assert not canary.exists()


@pytest.mark.parametrize("named", [("--course", "course"), ("--questions", "questions")])
def test_a_file_is_run_only_as_it_was_allowed(tmp_path: Path, canary: Path, run, named) -> None:
    """Not allowed, allowed, changed by one sign: only the middle one runs, each is told by name."""
    own = workbook(tmp_path / "own", canary)
    told = run("hand-out", "friday", *named, here=own).out
    assert "mine.py: it is not allowed in this course" in told
    assert "seatwork question allow" in told
    assert "question type my-question: it is left out" in told
    assert not canary.exists()
    (own / "in").mkdir()
    run("question", "allow", "questions", here=own)
    assert run("hand-out", "friday", *named, here=own).code == 0
    assert canary.exists()
    canary.unlink()
    place = own / "questions" / "mine.py"
    place.write_text(place.read_text(encoding="utf-8") + "# more\n", encoding="utf-8")
    told = run("mark", "friday", "in", *named, here=own).out
    assert "mine.py: it was changed since it was allowed" in told
    assert not canary.exists()


def test_a_drawing_beside_a_type_is_allowed_with_it(tmp_path: Path, canary: Path, run) -> None:
    """A drawing that comes later, or is changed, leaves its type out; allowing takes both."""
    own = workbook(tmp_path / "own", canary)
    run("question", "allow", "questions", here=own)
    drawing = own / "questions" / "drawings" / "my_question.py"
    drawing.parent.mkdir()
    drawing.write_text(f"open({str(tmp_path / 'drawn')!r}, 'a').close()\n", encoding="utf-8")
    words = ("hand-out", "friday", "--course", "course", "--paper")
    done = run(*words, here=own)
    assert done.code == 1
    assert "drawings/my_question.py: it is not allowed in this course" in done.out
    assert not (tmp_path / "drawn").exists()
    done = run("question", "allow", "questions/mine.py", here=own)
    assert "drawings/my_question.py, mine.py" in done.out
    run(*words, here=own)
    assert (tmp_path / "drawn").exists()


def test_what_cannot_be_allowed_is_one_sentence(tmp_path: Path, canary: Path, run) -> None:
    """A folder that is not there, a text file, a course that is not there: nothing is written."""
    own = workbook(tmp_path / "own", canary)
    for words in (("nowhere",), ("workbook.toml",), ("questions", "--course", "nowhere")):
        done = run("question", "allow", *words, here=own)
        assert done.code == 1, words
    assert not (own / "nowhere").exists()
    assert not (own / "course" / "own_questions.txt").exists()
