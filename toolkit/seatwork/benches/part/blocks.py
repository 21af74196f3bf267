"""What stands on the page of a part: blocks of a heading and rows, from note to verdict."""

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import Any

from seatwork import notes
from seatwork.benches.bank.note_words import feature_words
from seatwork.benches.part.found import PartFound, SeatFound
from seatwork.errors import SeatworkError
from seatwork.inspection.blank import columns_of, limits_words
from seatwork.inspection.columns import LENGTHS, UNITS, WITH
from seatwork.inspection.cuts import Cut
from seatwork.inspection.measured import QUANTITIES
from seatwork.plan import Plan
from seatwork.plan.contents import HEADINGS, NOT_YET
from seatwork.rows import Row
from seatwork.shop import HouseRules
from seatwork.units import explain

Block = dict[str, Any]

FIRST = ("stop", "ask")
REASONS = ("why",)
BESIDE = ("oil", "tool", "look", "setup", "how", "note", "memory")
SUMS = ("size", "check", "travel", "holds", "rule")


def block(
    heading: str,
    rows: Sequence[Sequence[str]],
    *,
    heads: Sequence[str] = (),
    kind: str = "",
    folded: bool = False,
) -> Block:
    """Return a block as the page shows it."""
    cells = [list(row) for row in rows]
    return {
        "heading": heading,
        "heads": list(heads),
        "rows": cells,
        "kind": kind,
        "folded": folded,
    }


def refusal_blocks(trouble: str) -> list[Block]:
    """Return why something typed was not taken; nothing where it was."""
    return [block("", [("not taken", trouble)], kind="stop")] if trouble else []


def read_blocks(found: SeatFound, system: str) -> list[Block]:
    """Return what was read in a note, or where and why reading stopped."""
    callout = found.callout
    rows: list[tuple[str, str]] = []
    if callout is not None:
        rows += [("it says", feature_words(one, system)) for one in callout.features]
        rows += [("said, not used", one) for one in callout.said_not_used]
        rows += [("with symbols", written)] if (written := _written(callout)) else []
    blocks = [block("What was read", rows)] if rows else []
    if found.trouble is not None:
        why = explain(found.trouble, system)
        blocks.append(block("No plan yet", [("what is wrong", why)], kind="stop"))
    return blocks


def asked_blocks(plan: Plan | None) -> list[Block]:
    """Return what must be settled before anything is cut."""
    return _of_kinds(plan, FIRST, kind="stop")


def set_blocks(plan: Plan | None) -> list[Block]:
    """Return what to set, step by step, then what to look at and how to hold the part."""
    if plan is None:
        return []
    asked = bool(plan.rows().of(*FIRST))
    blocks = []
    for place, found in groupby(plan.rows().of("set"), key=lambda row: row.place):
        rows = list(found)
        heads = [name for name, _ in rows[0].cells]
        lines = [(row.label, *(words for _, words in row.cells)) for row in rows]
        unit = {"inch": "inches", "metric": "millimeters"}[plan.callout.system]
        heading = f"{NOT_YET if asked else HEADINGS['set']}, in {unit}: {place}"
        blocks.append(block(heading, lines, heads=["step", *heads]))
    return [*blocks, *_of_kinds(plan, BESIDE)]


def why_blocks(plan: Plan | None) -> list[Block]:
    """Return why each tool and speed was chosen, then sums and sources, folded."""
    return [*_of_kinds(plan, REASONS), *_of_kinds(plan, (*SUMS, "source"), folded=True)]


def caution_blocks(plan: Plan | None) -> list[Block]:
    """Return the cautions that belong to these operations."""
    return _of_kinds(plan, ("caution", "last"))


def measure_blocks(name: str, cut: Cut, rules: HouseRules) -> list[Block]:
    """Return what to measure on a seat and what it must read."""
    rows = [
        (column.name, column.about, limits_words(column, cut, rules))
        for column in columns_of(cut.seat)
        if not column.name.endswith(WITH)
    ]
    gages = [(row.label, row.text, "") for row in cut.seat.reading_rows(cut.system)]
    unit = UNITS[cut.system]
    heads = ("reading", "what it is", f"good from, to [{unit}]")
    return [block(f"What to measure: {name}", [*rows, *gages], heads=heads)]


def verdict_blocks(found: PartFound, system: str) -> list[Block]:
    """Return the verdict of every part: what is off, why, and what to change."""
    inspection = found.inspection
    blocks = []
    for part in inspection.parts:
        mark, *rest = part.rows(system)
        place = f", {part.measured.feature}" if part.measured.feature else ""
        heading = f"{mark.label}{place}: {mark.text}"
        kind = "" if part.verdict == "accept" else "stop"
        blocks.append(block(heading, [(row.label, row.words) for row in rest], kind=kind))
    if inspection.faults:
        rows = [("to mend", fault) for fault in inspection.faults]
        blocks.append(block("Not judged", rows, kind="stop"))
    return blocks


def boxed_columns(cut: Cut) -> Iterator[tuple[str, str, tuple[str, ...]]]:
    """Yield heading, label and choices of each box for a seat's readings; no choices: free text."""
    for column in columns_of(cut.seat):
        key = column.name.removesuffix(WITH).replace(" ", "_")
        if column.name.endswith(WITH):
            yield column.name, column.name, QUANTITIES[key].instruments
        elif column.kind == "answer":
            yield column.name, column.name, ("yes", "no")
        elif column.kind == "place":
            yield column.name, column.name, ("face", "hole edge")
        else:
            unit = f" [{UNITS[cut.system]}]" if column.kind in LENGTHS else ""
            yield column.heading(cut.system), f"{column.name}{unit}", ()


def _of_kinds(
    plan: Plan | None, kinds: Sequence[str], *, kind: str = "", folded: bool = False
) -> list[Block]:
    if plan is None:
        return []
    blocks = []
    for (sort, place), found in groupby(plan.rows().of(*kinds), key=lambda r: (r.kind, r.place)):
        heading = f"{HEADINGS[sort]}: {place}" if place else HEADINGS[sort]
        rows = [(row.label, _words(row)) for row in found]
        blocks.append(block(heading, rows, kind=kind, folded=folded))
    return blocks


def _words(row: Row) -> str:
    return f"{row.text} ({row.source})" if row.source and row.kind == "rule" else row.text


def _written(callout: notes.Callout) -> str:
    """Write a callout with symbols, or nothing where they cannot carry it."""
    try:
        return notes.write(callout, "symbols").replace("\n", " / ")
    except SeatworkError:
        return ""
