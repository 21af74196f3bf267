"""Ordinary print notes, each read field by field, or asked about as it must be.

The lines are the project's own, written in shop language by a machinist-instructor; how each
must be read is common practice, no source, where no document is named beside its kind.
"""

import json
import re
import sys
from pathlib import Path
from typing import Any

import pytest
from seatwork.errors import SeatworkError
from seatwork.notes import read

sys.path.insert(0, str(Path(__file__).parent))

from readings import expected, fastener, reading

pytestmark = pytest.mark.slow

LINES = [
    json.loads(text)
    for text in (Path(__file__).parent / "data" / "prints.jsonl").read_text("utf-8").splitlines()
]
ASKED = [line for line in LINES if line["asks"]]
READ = [line for line in LINES if not line["asks"]]
QUESTIONS = {
    "unit": r"in or mm\?",
    "count": r"how many places|places, or",
    "side": r"other than which\?",
    "angle": r"[Ww]hich angle",
    "size": r"neither diameter nor depth",
    "smaller": r"turned round",
    "spotface": r"may be a spotface",
    "from": r"height of the floor above the bottom",
    "drill": r"which holds\?",
    "thread-depth": r"which yields",
    "pitch": r"1/4-20 or 1/4-28\?",
    "leg": r"which one the note gives",
    "counterdrill": r"counterdrill, or center drill",
    "dimple": r"formed, not cut",
    "head": r"has no cone",
}
"""What the question of each kind must be about."""

ROUNDED = {"diameter_also_mm": 0.013}  # mm; a drill in brackets is rounded to .001 in
LOOSE = 2e-3  # mm or deg


def told(line: dict[str, Any]) -> str:
    """Return the name of a line for the report of a failure."""
    return f"{line['id']} {line['note'][:40]!r}"


def same(name: str, wanted: Any, got: Any) -> bool:
    """Tell whether a field was read as it was meant."""
    if name == "screw":
        return got == fastener(wanted)
    if name == "measured_from":
        return isinstance(got, str) and got.startswith(wanted)
    if isinstance(wanted, bool | str) or got is None:
        return wanted == got
    if isinstance(wanted, list):
        return isinstance(got, list) and all(map(same, [name] * 2, wanted, got))
    return abs(wanted - got) <= ROUNDED.get(name, LOOSE)


def faults(wanted: dict[str, Any], got: dict[str, Any]) -> list[str]:
    """Return the fields that were lost, read otherwise, or read out of nothing."""
    names = sorted({*wanted, *got})
    return [
        f"{name}: {wanted.get(name)} read as {got.get(name)}"
        for name in names
        if not (name in wanted and name in got and same(name, wanted[name], got[name]))
    ]


@pytest.mark.parametrize("line", READ, ids=told)
def test_a_print_note_is_read_field_by_field(line: dict[str, Any]) -> None:
    """Every field that is said is read, no other is, and nothing needless is asked."""
    callout = read(line["note"], line["system"])
    wanted, got = expected(line), reading(callout)
    assert [one["kind"] for one in got] == [one["kind"] for one in wanted]
    assert [faults(*pair) for pair in zip(wanted, got, strict=True)] == [[] for _ in wanted]
    assert callout.warnings == ()


@pytest.mark.parametrize("line", ASKED, ids=told)
def test_what_a_note_leaves_open_is_asked(line: dict[str, Any]) -> None:
    """The question that must be asked is asked, and it is the only one."""
    try:
        asked = [warning.sentence for warning in read(line["note"], line["system"]).warnings]
    except SeatworkError as error:
        asked = [str(error)]
    assert len(asked) == 1
    assert re.search(QUESTIONS[line["asks_code"]], asked[0])


@pytest.mark.parametrize("line", READ, ids=told)
def test_what_is_only_said_is_kept(line: dict[str, Any]) -> None:
    """Frames and words that are read past are kept as typed; a side word may stay with its end."""
    said = set(read(line["note"], line["system"]).said_not_used)
    assert said - {"ONE END"} == set(line.get("said_not_used", []))
