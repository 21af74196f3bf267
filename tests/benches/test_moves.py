"""What one move of a bench asks of the kernel: calls counted, no file opened, no path asked."""

import os
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager

import pytest
from seatwork import benches
from seatwork.benches.page.notes import OUTDATED
from seatwork.benches.page.view import BenchView

MOVES = {
    "angles": ("angles", {"cut_open": True}, "cutter_angle", 2430 + 240),
    "angles, measured": ("angles", {"measure": True}, "cutter_angle", 5002),
    "depth": ("depth", {"cut": True}, "new_nose", 4626),
    "edges": ("edges", {"all_round": True}, "width", 2461),
    "speeds": ("speeds", {}, "diameter", 2285),
    "flush": ("flush", {}, "diameter", 4607),
    "counterbore": ("counterbore", {}, "depth", 4032),
    "spotface": ("spotface", {"shown": True, "depth": 1.0}, "depth", 3741),
    "spotface, tilted": ("spotface", {"shown": True, "depth": 1.0}, "tilt", 4192),
    "gaging": ("gaging", {"shown": True}, "rise", 2895),
    "on the hole": ("on_the_hole", {"shown": True}, "off_center", 3300),
    "on the hole, leaning": ("on_the_hole", {"shown": True}, "out_of_square", 3300),
    "chatter, map": ("chatter", {"shown": True, "on_map": True}, "speed", 4719),
    "chatter, cones": ("chatter", {"shown": True}, "speed", 27820),
}
"""By name the bench, its state, the row that moves, and the calls of a move on tree 936a790, in
Python 3.11 and matplotlib 3.11, before the benches kept what can be kept. A limit is two thirds
of it: a third of the calls is gone and is not to come back. Since then the angles bench draws the
far side of its plates as well, 240 calls of its own. The bench on the hole is younger than that
tree: it made 2,050 calls when it was built, and its number is half as much again and some room;
the triangle, younger too, is held to what the depth bench may take, a picture of its kind."""

WARM, COUNTED = 4, 12
"""Moves before the count, which lay out letters and fill tables, and moves counted [-]."""


def stepped(name: str) -> Iterator[Callable[[], None]]:
    """Yield one move after the other: what the kernel does when a page asks for the next step."""
    called, given, row, _ = MOVES[name]
    bench = getattr(benches, called)(**given)
    view = BenchView(bench)
    view.live.send = lambda *_: None
    part = view.panel.parts[row]
    at, (low, high) = part.now["step"], part.number.steps(bench.system)
    to_and_fro = [*range(at, high), *range(high, low, -1), *range(low, at)]
    for number in range(1, WARM + COUNTED + 1):
        asked = {"step": to_and_fro[number % len(to_and_fro)], "asked": f"page:{number}"}
        yield lambda asked=asked: part._hear(part, asked, [])
    view.close()


def calls_of(move: Callable[[], None]) -> int:
    """Count the calls of functions, Python's and the libraries', that a move makes."""
    count = 0

    def heard(frame: object, event: str, argument: object) -> None:
        nonlocal count
        count += event in ("call", "c_call")

    sys.setprofile(heard)
    try:
        move()
    finally:
        sys.setprofile(None)
    return count


@contextmanager
def nothing_asked(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Refuse whatever opens a file, asks a path or walks a folder."""

    def refused(*given: object, **_: object) -> None:
        raise AssertionError(f"a move asked for {given[:1]}")

    with monkeypatch.context() as patched:
        for name in ("stat", "lstat", "listdir", "scandir", "getcwd", "open"):
            patched.setattr(os, name, refused)
        patched.setattr("builtins.open", refused)
        patched.setattr("io.open", refused)
        yield


@pytest.mark.slow
@pytest.mark.parametrize("name", MOVES)
def test_a_move_makes_a_third_fewer_calls_than_it_did(name: str):
    """The median move of each bench keeps within two thirds of the calls it once made."""
    counted = [calls_of(move) for move in stepped(name)][WARM:]
    assert sorted(counted)[COUNTED // 2] <= MOVES[name][3] * 2 / 3


@pytest.mark.slow
@pytest.mark.parametrize("name", MOVES)
def test_a_move_opens_no_file_and_asks_no_path(name: str, workbook, monkeypatch):
    """What a bench needs of the shop's files it read when it was made, in a workbook too."""
    moves = stepped(name)
    for _ in range(WARM):
        next(moves)()
    with nothing_asked(monkeypatch):
        for _ in range(COUNTED):
            next(moves)()


@pytest.fixture
def workbook(tmp_path, monkeypatch):
    """Make a workbook folder with one house rule of its own, and work in it."""
    (tmp_path / "shop").mkdir()
    (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    rule = tmp_path / "shop" / "house_rules.toml"
    rule.write_text('[flush]\ngreatest_below = "0.015 in"\n', encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    return rule


def test_a_rule_edited_shows_when_the_cell_runs_again(workbook):
    """A bench keeps the rules it was made with and says that they were edited; a new one has them.

    A nose of 1.966 mm in place of 1.524 makes an 82° seat wider by 0.442 mm, and lays the screw
    0.442 / 2 / tan 41° = 0.254 mm (.010 in) below the face: a rule of .015 takes that, one of .001
    does not.
    """
    view = BenchView(benches.depth(cut=True, new_nose=1.966))
    lies = "0.010 in (0.25 mm) below, within the rule"
    assert view.bench.readouts()[1] == ["Screw in it", lies]
    assert view.notes.outdated == ""
    workbook.write_text('[flush]\ngreatest_below = "0.001 in"\n', encoding="utf-8")
    os.utime(workbook, ns=(1, 1))
    view._heard({"settled": True})
    assert view.notes.outdated == OUTDATED
    view.bench.set(new_nose=1.9)
    view.bench.set(new_nose=1.966)
    assert view.bench.readouts()[1] == ["Screw in it", lies]
    again = BenchView(benches.depth(cut=True, new_nose=1.966))
    again._heard({"settled": True})
    assert again.bench.readouts()[1][1] == lies.replace("within", "outside")
    assert again.notes.outdated == ""
    for one in (view, again):
        one.close()
