"""The room of sentences: each says its number in both systems, and its long way agrees."""

import re
from contextlib import redirect_stdout
from importlib import util
from io import StringIO
from pathlib import Path
from typing import Any

import pytest
from seatwork import show
from seatwork.errors import SeatworkError
from seatwork.show import Said

SETTING = re.compile(r"\b[a-z]+\.[a-z]+_[a-z_]+\b")
NUMBER = re.compile(r"-?\d+\.?\d*")


def right_calls() -> dict[str, dict[str, Any]]:
    """Return one right call of every function of the room."""
    path = Path(__file__).parents[1] / "hostile" / "hostile_calls.py"
    spec = util.spec_from_file_location("calls_of_show", path)
    assert spec is not None
    assert spec.loader is not None
    module = util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return {
        name.partition(".")[2]: call(None)
        for name, call in module.CALLS.items()
        if name.startswith("show.")
    }


CALLS = right_calls()
OTHERS = [
    ("fit", {"head": "least M6 socket flat", "seat": "13.44 mm, 82°", "hole": "6.6 mm"}),
    ("fit", {"head": "3/4 flat head", "seat": "its edge, 82°"}),
    ("fit", {"head": "1/4 flat head, 80°", "seat": ".507 in, 82°", "hole": ".266 in"}),
    ("fit", {"head": "1/4 flat head, edge .462 in", "seat": ".462 in, 82°", "hole": "H"}),
    ("depth", {"screw": "#10 100° flat head", "hole": "#7", "angle": 100}),
    ("bend", {"slope": "1:20", "bolt": "1/2 in", "grip": "1-1/2 in"}),
    ("clean_up", {"diameter": "1-1/4 in", "boss": "4 in"}),
    ("clean_up", {"diameter": "1-1/4 in", "draft": 3}),
    ("counterbore", {"screw": "M6 SHCS"}),
    ("fillet", {"screw": "M6 SHCS"}),
    ("fillet", {"screw": "3/8-16 SHCS", "ring": True}),
    ("holes", {"thread": "M6"}),
    ("clearance_lists", {"screw": "M6"}),
    ("torque", {"tool": "22 mm drill", "feed": "0.15 mm/rev", "force": 2200}),
    ("step", {"turns": 143, "machine": "bench drill press"}),
    ("stop_error", {"error": ".006 in", "angle": 82}),
    *[("rule", {"about": one}) for one in ("chamfer without a size", "pilot", "casting skin")],
]
EVERY = [*CALLS.items(), *OTHERS]


def answer(name: str, given: dict[str, Any]) -> Any:
    """Ask one function of the room."""
    return getattr(show, name)(**given)


@pytest.mark.parametrize(("name", "given"), EVERY)
def test_the_long_way_leads_to_the_same_numbers(name: str, given: dict[str, Any]) -> None:
    """What `code()` gives runs by itself, and every sentence holds a number that it prints."""
    found = answer(name, given)
    if not isinstance(found, Said):
        return
    printed = StringIO()
    with redirect_stdout(printed):
        exec(found.code(), {})  # our own lines, none of a learner's
    numbers = [float(one) for one in NUMBER.findall(printed.getvalue())]
    last = [float(one) for one in NUMBER.findall(str(found).partition(": ")[2])]
    assert numbers, found.code()
    assert any(abs(one - other) <= 0.006 * abs(one) for one in numbers for other in last)


@pytest.mark.parametrize(("name", "given"), EVERY)
def test_no_sentence_speaks_like_a_program(name: str, given: dict[str, Any]) -> None:
    """No setting's name stands in a sentence, and a length is said in both systems."""
    found = answer(name, given)
    told = str(found) if isinstance(found, Said) else repr(found)
    assert not SETTING.search(told), told
    if isinstance(found, Said) and name not in ("read", "three_ways"):
        inches, millimeters = (re.search(rf"\d {unit}\b", told) for unit in ("in", "mm"))
        assert bool(inches) == bool(millimeters) or name in ("speed", "triangle"), told


def test_the_sentences_of_published_examples() -> None:
    """Numbers that others print: head heights, a washer, a drill's torque.

    Machinery's Handbook, 31st edition, page 1816, table 6 (heights .127 and .251) and page
    1694 (washer .812); a tool maker's drill catalog of 2017, page 601 (20 N·m).
    """
    assert "the table prints: 0.127 in" in str(show.head_height("#10 socket flat head"))
    assert "the table prints: 0.251 in" in str(show.head_height("1/2 socket flat head"))
    assert "0.812 in" in str(show.counterbore("3/8-16 SHCS", washer="3/8 narrow"))
    torque = show.torque("22 mm drill", feed="0.15 mm/rev", force=2200)
    assert "20.0 N·m" in str(torque)


def test_the_sentences_of_plane_geometry() -> None:
    """Sums done by hand: .241 wide at 82° is .139 deep; .076 of pin is .132 wider; 45° legs add.

    Half of .241 is .1205; the tangent of 41° is .8693; .1205 / .8693 = .1386. Twice .8693
    times .076 is .1321, and .375 + .1321 = .507.
    """
    assert "down: across ÷ tangent = 0.139 in" in str(
        show.triangle(".507 in", hole=".266 in", angle=82)
    )
    assert "0.507 in" in str(show.pin(".375 in", below=".076 in", angle=82))
    assert "0.296 in" in str(show.mouth(hole=".266 in", leg=".015 in"))
    assert "0.010 in" in str(show.stop_error(".006 in", angle=82))
    assert "9.3 seconds" in str(show.time(".139 in", rev=300, feed=".003 ipr"))


@pytest.mark.parametrize(
    ("name", "given", "fault"),
    [
        ("size", {"text": ".266"}, "in or mm"),
        ("depth", {"hole": "#7", "angle": 82}, "write the diameter, or the screw"),
        ("fit", {"head": ".507 in", "seat": ".507 in, 90°", "hole": "#7"}, "a size and an angle"),
        ("fit", {"head": ".507 in, 82°", "seat": ".507 in, 90°"}, "hole"),
        ("fit", {"head": ".507 in, 82°", "seat": "its edge, 90°", "hole": "#7"}, "edge"),
        ("stop_error", {"error": "1/0 turn of 1/2-20", "angle": 82}, "no part of a turn"),
        ("stop_error", {"error": "1/6 turn of 1/2", "angle": 82}, "pitch"),
        ("rule", {"about": "chamfer with no size"}, "chamfer without a size"),
        ("torque", {"tool": "22 mm tap", "feed": "0.1 mm/rev", "force": 1}, "no drill"),
        ("torque", {"tool": "9 mm counterbore", "feed": "0.1 mm/rev", "force": 1}, "on a hole"),
        ("bend", {"bolt": "1/2 in", "grip": "1 in", "slope": "steep"}, "1:20"),
        ("bend", {"bolt": "1/2 in", "grip": "1 in"}, "leans"),
        ("clean_up", {"diameter": "1 in"}, "leans or is round"),
        ("shortcut", {"constant": 5}, "no short rule"),
        ("measured", {"what": "hub"}, "lid"),
        ("gage_spread", {"screw": "M6 csk socket"}, "gage"),
        ("least_below", {"screw": "1/4 flat head"}, "how low"),
    ],
)
def test_what_cannot_be_said_is_one_plain_sentence(
    name: str, given: dict[str, Any], fault: str
) -> None:
    """A wrong word is refused with what would do, and nothing is guessed."""
    with pytest.raises(SeatworkError, match=re.escape(fault)):
        answer(name, given)


def test_a_plan_is_asked_part_by_part() -> None:
    """Steps are counted from 1; a step or a size that is not there is refused by name."""
    lid = show.plan("⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD", "6061 aluminum", "bench drill press")
    assert [row.text for row in lid.steps] == ["drill", "countersink", "deburr the far side"]
    assert lid.step(2)[0].label == "countersink"
    with pytest.raises(SeatworkError, match="from 1 to 3"):
        lid.step(4)
    with pytest.raises(SeatworkError, match="no such size"):
        lid.size("weight")


def test_a_sentence_shows_as_words_and_not_as_markup() -> None:
    """A notebook shows label and words in one line each; nothing of it is taken for markup."""
    told = show.rule("flush")._repr_markdown_()
    assert told.startswith("**How far below the face a flat head may sit**: 0.015 in")
    assert "<" not in told
