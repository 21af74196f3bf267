"""What an object shows: one line in a prompt, a text in print, tables in a notebook.

The samples are what the right calls of every public function give back, and what hangs on it.
"""

import re
from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass
from importlib import util
from inspect import isabstract, isclass
from pathlib import Path
from typing import Any

import pytest
import seatwork as sw
from seatwork.cutting.shortcuts import SPREAD
from seatwork.errors import SeatworkError
from seatwork.rows import Row, table

pytestmark = pytest.mark.slow

MOST = 120
GIVEN = {
    "seats.Allowed", "seats.CapScrew", "seats.Fault", "drawings.CutSeat", "seats.Triangle",
    "seats.Head", "seats.Countersink", "seats.Counterbore", "seats.Spotface", "seats.Chamfer",
    "cutting.Machine", "cutting.Cutter", "cutting.Cut", "cutting.SpeedRange", "drawings.Look",
    "cutting.Coefficients", "inspection.Measured", "marking.Answer", "marking.AnswerFile",
    "questions.Mistake", "questions.Slip", "questions.Tolerance", "notes.Size",
    "tables.Column", "tables.Table", "entries.AskedChoice", "entries.AskedNumber",
    "entries.AskedOrder", "plan.Row", "inspection.Readings", "record.Override",
}  # fmt: skip
"""What a person gives, or writes down: it shows the line that makes it again."""

NO_SAMPLE = {
    "drawings.Drawing", "drawings.Scene", "drawings.Section", "drawings.SeatWithScrew",
    "Sourced", "notes.Feature", "plan.Rows",
    "questions.Question", "questions.NumberQuestion", "questions.Step",
}  # fmt: skip
"""Contracts that others fulfil; pictures and rows, which are their own text."""

DEEPEST = 4


def calls() -> Any:
    """Load the right calls of every public function."""
    path = Path(__file__).parent / "hostile" / "hostile_calls.py"
    spec = util.spec_from_file_location("right_calls", path)
    assert spec is not None
    assert spec.loader is not None
    module = util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def public_classes() -> dict[type, str]:
    """Return every public class that has objects of its own, with its name."""
    return {
        kind: f"{room}.{name}"
        for room in sw.ROOMS.split()
        if room != "benches"
        for name in getattr(sw, room).__all__
        if isclass(kind := getattr(getattr(sw, room), name))
        and not issubclass(kind, BaseException)
        and not isabstract(kind)
        and f"{room}.{name}" not in NO_SAMPLE
    }


def within(found: Any, depth: int = 0) -> Iterator[Any]:
    """Yield an object of the package and what hangs on it."""
    if depth > DEEPEST or isinstance(found, str | bytes | int | float | type(None)):
        return
    if type(found).__module__.startswith("seatwork"):
        yield found
    if is_dataclass(found) and not isclass(found):
        for one in fields(found):
            yield from within(getattr(found, one.name), depth + 1)
    elif isinstance(found, Mapping):
        for one in list(found.values())[:3]:
            yield from within(one, depth + 1)
    elif isinstance(found, tuple | list):
        for one in found[:6]:
            yield from within(one, depth + 1)


@pytest.fixture(scope="module")
def samples(tmp_path_factory: pytest.TempPathFactory) -> dict[type, Any]:
    """Return one object of every public class that a right call gives."""
    right = calls()
    wanted = public_classes()
    ground = right.Ground(tmp_path_factory.mktemp("shown"))
    found: dict[type, Any] = {}
    for name, call in right.CALLS.items():
        room, _, function = name.partition(".")
        if room in ("benches", "opening"):
            continue
        made = getattr(getattr(sw, room), function)
        try:
            given = call(ground)
            several = [given.pop(one) for one in ("operations", "rows") if one in given]
            result = made(*(several[0] if several else ()), **given)
        except SeatworkError:  # a call that is right on another ground
            continue
        for one in (*within(result), *within(list(given.values()))):
            if type(one) in wanted:
                found.setdefault(type(one), one)
    return found | {type(one): one for one in more() if type(one) in wanted}


def more() -> list[Any]:
    """Return objects that no call of the table gives, of one print note and one shop."""
    callout = sw.read("⌀.201 THRU, 1/4-20 UNC ↧ .50, C'BORE .40 ↧ .25, .03 X 45° CHAMFER")
    edge = sw.read("BREAK EDGES .015")
    round_it = sw.read("4X ⌀.201 THRU EQ SP ON 3.00 B.C., SF ⌀1.00, CENTER DRILL")
    flush = sw.read("⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD, FLUSH TO .010 BELOW, OTHER SIDE")
    found = [
        *(callout, edge, round_it, flush, sw.shop.Shop.at()),
        *sw.cutting.SHORTCUTS.values(),
        *SPREAD,
        *(sw.drawings.Look(), Row(label="hole", text="#7 drill"), sw.screw("#10 flat head").gage),
        sw.plan.Part(name="plate", plans={}, faults=()),
        sw.marking.SlipCount(code="M02", sentence="s", questions=("c1",), learners=("L05",)),
        sw.marking.Marked(name="L05-cones-1.json", doubt="it answers the sheet angles"),
        sw.hardware.job("#10 flat head 100°"),
    ]
    return [one for given in found for one in within(given)]


def test_every_public_class_has_a_sample(samples: dict[type, Any]) -> None:
    """No class is left out of what follows."""
    missing = [name for kind, name in public_classes().items() if kind not in samples]
    assert not missing


def test_one_line_stands_for_each(samples: dict[type, Any]) -> None:
    """A repr has one line of under 120 characters; found things stand in angle brackets.

    A desk says its sentence as it is, since every learner reads it under the first cell.
    """
    wrong = {}
    for kind, name in public_classes().items():
        line = repr(samples[kind]) if kind in samples else ""
        given = line.startswith(f"{kind.__name__}(")
        open_line = line.startswith("<") or name == "worksheet.Desk"
        found = open_line and len(line) < MOST and " object at " not in line
        fits = given if name in GIVEN else found
        if "\n" in line or not fits:
            wrong[name] = line[:160]
    assert not wrong


def test_what_is_printed_is_a_text(samples: dict[type, Any]) -> None:
    """Printed, an object is words for people, no address in memory and no list of fields."""
    for sample in samples.values():
        told = str(sample)
        assert told.strip()
        assert " object at 0x" not in told
        assert "=None" not in told or repr(sample) == told


def test_nothing_shows_raw_html(samples: dict[type, Any]) -> None:
    """No object has HTML; in its Markdown every sign that could be a tag is escaped."""
    for sample in samples.values():
        assert not hasattr(sample, "_repr_html_")
        if hasattr(sample, "_repr_markdown_"):
            assert not re.search(r"(?<!\\)<", sample._repr_markdown_())


def test_what_is_typed_stays_text_in_a_table() -> None:
    """A rule's or a row's markup is shown, not followed."""
    told = table([Row(label="<b>x</b>", text="[a](b) | c")])
    assert r"\<b\>x\</b\>" in told
    assert r"\[a\](b) \| c" in told


def test_a_slip_code_is_the_instructors_alone(samples: dict[type, Any]) -> None:
    """What a verdict shows says the slip in words; its code stays in ``slips``."""
    asked = calls().question()
    for slip in asked.slips:
        verdict = sw.questions.judge_all(asked, [str(slip.value)])[0]
        assert not re.search(r"\bM\d\d\b", f"{verdict!r}{verdict}")


def test_an_error_says_one_sentence() -> None:
    """What is refused is told in a sentence that ends with a full stop."""
    assert str(SeatworkError("5 in", "that is too wide", "take less")).count("\n") == 0
