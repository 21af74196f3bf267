"""``seatwork question`` as typed in a terminal: a type begun, checked and pinned."""

from pathlib import Path

import pytest
from seatwork import opening
from seatwork.cli.program import app
from seatwork.errors import SeatworkError
from seatwork.questions.checking import beginning
from typer.testing import CliRunner

RUNNER = CliRunner()


@pytest.fixture(scope="module")
def delivered(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Deliver a workbook."""
    return opening.deliver(tmp_path_factory.mktemp("home") / "w").folder


@pytest.fixture
def workbook(delivered: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Stand in a clean workbook."""
    monkeypatch.chdir(delivered)
    for path in (*delivered.glob("questions/*.py"), *delivered.glob("questions/drawings/*.py")):
        path.unlink()
    return delivered


def answered(*words: str) -> str:
    """Give a command and return what it prints."""
    return RUNNER.invoke(app, ["question", *words], catch_exceptions=False).output


def test_a_new_type_passes_the_check_as_it_stands(workbook: Path) -> None:
    """In a workbook one file is written; it keeps the contract, and nothing is written over."""
    assert "Written: questions/my_type.py" in answered("new", "my-type")
    assert [path.name for path in (workbook / "questions").rglob("*.py")] == ["my_type.py"]
    shown = answered("check", "my-type", "--mine")
    assert shown == "my-type: keeps the contract.\nIt stands on these sheets: none yet.\n"
    assert answered("check", "questions/my_type.py", "--mine") == shown
    with pytest.raises(SeatworkError, match="there already"):
        answered("new", "my-type")


def test_a_file_of_a_workbook_is_run_only_if_it_is_one_s_own(workbook: Path) -> None:
    """By its name or by its file: a workbook may be one that was handed in."""
    assert "question check my-type --mine." in answered("new", "my-type")
    for words in ("my-type", "my_type", "questions/my_type.py"):
        with pytest.raises(SeatworkError, match="add --mine if you wrote it"):
            answered("check", words)


def test_a_new_type_gets_a_drawing_if_wanted(workbook: Path) -> None:
    """The drawing stands beside the type, and is found by its name."""
    answered("new", "my-type", "--drawing")
    assert (workbook / "questions" / "drawings" / "my_type.py").is_file()
    assert "keeps the contract" in answered("check", "my-type", "--mine")


def test_an_own_outline_without_the_code_of_the_template_is_no_hindrance(workbook: Path) -> None:
    """A type begun beside an own outline says no code that it lacks; the package's keep theirs."""
    outline = workbook / "shop" / "outline.csv"
    before = outline.read_text(encoding="utf-8")
    outline.write_text("code,competency\n7.1,Drill\n", encoding="utf-8")
    answered("new", "my-type")
    assert "keeps the contract" in answered("check", "my-type", "--mine")
    assert "keeps the contract" in answered("check", "seat-depth", "--draws", "9")
    outline.write_text(before, encoding="utf-8")


def test_what_is_missing_ends_the_command_with_a_fault(workbook: Path) -> None:
    """Each thing to mend has a line, and the command fails."""
    answered("new", "my-type")
    file = workbook / "questions" / "my_type.py"
    file.write_text(file.read_text("utf-8").replace("difficulty = 1", "difficulty = 9"), "utf-8")
    done = RUNNER.invoke(app, ["question", "check", "my-type", "--mine"])
    assert done.exit_code == 1
    assert "  the difficulty is not 1, 2 or 3\nmy-type: 1 to mend." in done.output


def test_a_type_of_the_package_says_its_sheets(workbook: Path) -> None:
    """The sheets that ask it are named; those of the workbook count."""
    assert "It stands on these sheets: cones, flushness." in answered(
        "check", "seat-diameter", "--draws", "9"
    )


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("check", "nothing-such"), "there is no nothing_such.py and no questions/nothing_such.py"),
        (("check", "nothing.py"), "name a file that ends with .py"),
        (("new", "seat-depth"), "the package has a type of that name"),
        (("new", "no name"), "write words with hyphens"),
        (("new", "../up/above"), "write words with hyphens"),
    ],
)
def test_a_wrong_name_is_one_sentence(workbook: Path, words: tuple[str, ...], said: str) -> None:
    """A name that is none, taken or not there is told, and nothing is written."""
    with pytest.raises(SeatworkError, match=said):
        answered(*words)
    assert not list((workbook / "questions").rglob("*.py"))


def test_outside_of_workbook_and_project_here_is_to_be_said(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Nothing is written into a folder that is neither, unless it is asked for."""
    monkeypatch.chdir(tmp_path)
    with pytest.raises(SeatworkError, match="neither in a workbook nor in the project"):
        answered("new", "my-type")
    assert "question check my-type." in answered("new", "my-type", "--here")
    assert "keeps the contract" in answered("check", "my-type")


def test_in_the_project_type_drawing_and_proof_are_written(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Three files, and nothing else is to be written by hand; the draws are pinned by command."""
    tests = tmp_path / "tests" / "questions"
    tests.mkdir(parents=True)
    monkeypatch.setattr(beginning, "project_tests", lambda: tests)
    monkeypatch.chdir(tmp_path / "tests")
    written = beginning.begin("my-type")
    assert [path.relative_to(tmp_path).as_posix() for path in written] == [
        "toolkit/seatwork/questions/bank/my_type.py",
        "toolkit/seatwork/drawings/asked/my_type.py",
        "tests/questions/proofs/my_type.py",
    ]
    assert all(path.is_file() for path in written)
