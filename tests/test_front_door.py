"""The front door: what ``import seatwork as sw`` offers, and the stories that begin there."""

import ast
import json
import re
import subprocess
import sys
from importlib import import_module
from pathlib import Path

import pytest
import seatwork as sw

PROJECT = Path(__file__).parents[1]
NOTE = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
ROOMS = sw.ROOMS.split()
VERDICTS = ("right", "wrong", "slip", "several slips", "asks back")


def run(script: str, folder: Path) -> str:
    """Run a script in a new Python and return what it prints."""
    done = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, cwd=folder, check=False
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


def test_the_front_door_lists_what_is_public() -> None:
    """``dir`` gives the everyday names and the rooms, and each of them is there."""
    homes = {name for said in sw.NAMES.values() for name in said.split()}
    assert set(dir(sw)) == set(sw.__all__) == homes | set(ROOMS)
    assert all(hasattr(sw, name) for name in dir(sw))


@pytest.mark.parametrize("room", ROOMS)
def test_a_room_lists_what_is_public(room: str) -> None:
    """``dir`` of a room gives its public names alone, each with a sentence of its own."""
    found = import_module(f"seatwork.{room}")
    assert dir(found) == found.__all__
    for name in found.__all__:
        thing = getattr(found, name)
        assert not callable(thing) or thing.__doc__, name


def test_a_name_that_is_not_there_is_said_plainly() -> None:
    """A misspelt name raises what Python raises for any module."""
    with pytest.raises(AttributeError, match="module 'seatwork' has no attribute 'skrew'"):
        _ = sw.skrew


def test_importing_loads_no_room_and_no_library(tmp_path: Path) -> None:
    """``import seatwork`` loads its first file and the doors, and of Python what those name."""
    listed = "import sys, json; print(json.dumps(sorted(sys.modules)))"
    bare = json.loads(run(f"import importlib, typing, warnings, json\n{listed}", tmp_path))
    full = json.loads(run(f"import seatwork, json\n{listed}", tmp_path))
    assert set(full) - set(bare) == {"seatwork", "seatwork.doors"}


def stories() -> dict[str, str]:
    """Return the README's stories in Python, by the line that stands before each."""
    text = (PROJECT / "README.md").read_text(encoding="utf-8")
    return dict(re.findall(r"\nThe (\w[\w-]*), [^\n]*:\n\n```python\n(.*?)```", text, re.DOTALL))


def test_the_readme_tells_three_stories() -> None:
    """Instructor, student and self-learner meet five lines at most, the import among them."""
    assert set(stories()) == {"instructor", "student", "self-learner"}
    for story in stories().values():
        assert len(ast.parse(story).body) <= 5


@pytest.mark.slow
def test_the_instructor_before_class(tmp_path: Path) -> None:
    """In an empty folder a note becomes a card, a sheet is handed out, and marked afterwards."""
    told = run(f"{stories()['instructor']}\nprint(len(plan.seats))", tmp_path)
    assert "countersink" in told
    assert told.strip().endswith("1")
    assert (tmp_path / "card.pdf").read_bytes().startswith(b"%PDF")
    typed = "learner,question,answer\nL12,c1,.1 in\n"
    (tmp_path / "typed.csv").write_text(typed, encoding="utf-8")
    run("import seatwork as sw\nsw.record.mark('course', 'cones', 'typed.csv')", tmp_path)
    assert "L12" in (tmp_path / "course" / "cones-marks.csv").read_text("utf-8")


@pytest.mark.slow
def test_the_student_at_the_sheet(tmp_path: Path) -> None:
    """A question is shown and answered without a browser; finishing says what is open."""
    ended = "try:\n    cones.finish()\nexcept sw.worksheet.NotYet as left:\n    print(left)"
    told = run(stories()["student"].replace("cones.finish()", ended), tmp_path)
    assert told.startswith("Cones: not yet, not answered: c2 c3")
    story = stories()["student"].replace("cones.finish()", "print(cones.verdicts('c1')[0].kind)")
    assert run(story, tmp_path).strip() in VERDICTS
    asked = run("import seatwork as sw\nprint(sw.sheet('cones').ask('c1'))", tmp_path)
    assert asked.startswith("c1. ")


@pytest.mark.slow
def test_the_self_learner_asks_what_if(tmp_path: Path) -> None:
    """A screw, a note, a bench and a seat are looked at in one line each."""
    lines = [ast.unparse(line) for line in ast.parse(stories()["self-learner"]).body[1:]]
    shown = [f"print({line})" for line in lines]
    told = run("\n".join(["import seatwork as sw", *shown]), tmp_path)
    assert len(shown) == 4
    assert "#10 flat head machine screw, 82°: 0.385 in" in told
    assert "below" in told.splitlines()[-1]


def test_a_note_can_be_planned_as_read_or_as_typed() -> None:
    """``make_plan`` takes the text, the callout, or is called on the callout."""
    where = {"material": "6061 aluminum", "machine": "bench drill press"}
    typed = sw.make_plan(NOTE, **where)
    assert typed == sw.make_plan(sw.read(NOTE), **where) == sw.read(NOTE).plan(**where)


@pytest.mark.parametrize(
    ("ask", "options"),
    [
        (lambda: sw.units.length("1.5"), ("1.5 in", "1.5 mm")),
        (lambda: sw.screw("M6 flat head"), ("M6 flat head slotted screw", "M6 socket flat")),
        (lambda: sw.screw("#10-32"), ("#10-32 flat head", "#10-32 SHCS", "#10-32 hex cap")),
    ],
)
def test_an_error_that_asks_carries_its_choices(ask, options: tuple[str, ...]) -> None:  # type: ignore[no-untyped-def]
    """What would do is handed on word for word, and each of it does."""
    with pytest.raises(sw.SeatworkError) as caught:
        ask()
    assert caught.value.options == options


@pytest.mark.slow
def test_the_stubs_and_the_page_are_current() -> None:
    """What editors, type checkers and readers know of the public names is what there is."""
    done = subprocess.run(
        [sys.executable, PROJECT / "tests" / "api_page.py", "--check"],
        capture_output=True,
        text=True,
        check=False,
    )
    assert (done.returncode, done.stdout) == (0, "")


def test_the_change_page_names_this_version() -> None:
    """The newest heading that carries a date is the version of the package."""
    page = (PROJECT / "toolkit" / "CHANGELOG.md").read_text(encoding="utf-8")
    assert re.findall(r"^## (\d[\d.]*), ", page, re.MULTILINE)[0] == sw.__version__
