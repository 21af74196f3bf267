"""The front door: what ``import seatwork as sw`` offers, and the stories that begin there."""

import json
import subprocess
import sys
from importlib import import_module
from pathlib import Path

import pytest
import seatwork as sw

PROJECT = Path(__file__).parents[1]
NOTE = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
ROOMS = sw.ROOMS.split()


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


@pytest.mark.slow
def test_the_instructor_before_class(tmp_path: Path) -> None:
    """A note becomes a plan and a card in three lines."""
    script = (
        "import seatwork as sw\n"
        f"plan = sw.make_plan({NOTE!r}, material='6061 aluminum', machine='bench drill press')\n"
        "plan.card().save('card.pdf')\n"
        "print([step.name for step in plan.seats[0].operations])\n"
    )
    assert run(script, tmp_path).strip() == "['drill', 'countersink', 'deburr the far side']"
    assert (tmp_path / "card.pdf").read_bytes().startswith(b"%PDF")


@pytest.mark.slow
def test_the_student_at_the_sheet(tmp_path: Path) -> None:
    """A question is shown and answered without a browser."""
    script = (
        "import seatwork as sw\n"
        "cones = sw.sheet('cones')\n"
        "print(cones.ask('c1'))\n"
        "print(cones.ask('c1', answer='.001 in').verdicts[0].kind)\n"
    )
    told = run(script, tmp_path).strip().splitlines()
    assert told[0].startswith("c1. ")
    assert "countersunk" in told[0]
    assert told[-1] == "wrong"


@pytest.mark.slow
def test_the_self_learner_asks_what_if(tmp_path: Path) -> None:
    """A screw, a note and a seat are looked at in one line each."""
    script = (
        "import seatwork as sw\n"
        "head = sw.screw('#10 flat head').head\n"
        "print(head.included_angle)\n"
        "print(len(sw.read('⌀6.6 THRU ⌵ FOR M6 CSK SOCKET').features))\n"
        "seat = sw.Countersink(diameter=9.8, hole_diameter=5.1, included_angle=82)\n"
        "print(sw.fit(head, seat).state)\n"
    )
    assert run(script, tmp_path).split() == ["82.0", "2", "below"]


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
