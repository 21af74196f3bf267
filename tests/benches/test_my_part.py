"""The page of one's own part: what it works out, how it is kept, and what it refuses."""

import json
import random
import tomllib
from pathlib import Path
from typing import Any

import pytest
from seatwork import benches
from seatwork.benches.part.desk import PartDesk
from seatwork.benches.part.page import PartPage
from seatwork.benches.part.state import from_data
from seatwork.benches.part.still import still
from seatwork.errors import SeatworkError
from seatwork.plan.rows import show_limits

WORKED = Path(__file__).parents[1] / "validation" / "data" / "worked_plans.toml"
PLANS = tomllib.loads(WORKED.read_text("utf-8"))["plan"]
PER, TOLERANCE = {"in": 25.4, "mm": 1.0, "deg": 1.0}, {"in": 2e-3, "mm": 1e-3, "deg": 1e-9}
NOTES = [
    "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD",
    "⌀6.6 ⌴ ⌀11 ↧ 6.5",
    "17/32 DR, 1-1/4 S.F., 3 HOLES",
    "DRILL 9/32, CSK 1/2 DIA X 82° BOTH SIDES",
    "BREAK ALL SHARP EDGES .005-.015",
    "4X ⌀.201 THRU ⌵ FOR M8 BUTTON HEAD",
    "what is this",
    "",
]
SCREWS = ["", "M8 socket flat head", "#10 flat head", "5/16-18 flat head machine screw"]
THICK = ["", ".250 in", "3 mm", "12.7 mm"]


@pytest.fixture
def workbook(tmp_path, monkeypatch):
    """Stand in a new workbook folder."""
    (tmp_path / "workbook.toml").write_text("format = 1\n")
    monkeypatch.chdir(tmp_path)
    return tmp_path


def drawn(rng: random.Random) -> PartDesk:
    """Bring a part into a state that hands came to, refused moves among the way."""
    part = benches.my_part(rng.choice(NOTES[:-1]))
    moves = [
        lambda: part.set(note=rng.choice(NOTES)),
        lambda: part.set(screw=rng.choice(SCREWS), thickness=rng.choice(THICK)),
        lambda: part.set(machine=rng.choice(["knee mill", "bench drill press", "gone"])),
        lambda: part.set(material=rng.choice(["gray iron", "1018 steel", "5052 aluminum sheet"])),
        lambda: part.add(f"note {rng.randint(2, 4)}"),
        lambda: part.go_to(part.state.seats[0].name),
        lambda: part.take_out(),
        lambda: part.change_rule("flush.greatest_below", rng.choice(["0.010 in", "", "9 in"])),
        lambda: part.measure(f"L0{rng.randint(1, 9)}-1", diameter=rng.choice([".385", "x", "4"])),
        lambda: part.use(rng.choice(["inch", "metric"])),
    ]
    for _ in range(rng.randint(1, 7)):
        try:
            rng.choice(moves)()
        except SeatworkError:
            continue
    return part


@pytest.mark.slow
def test_code_rebuilds_every_state() -> None:
    """Over 50 random states the line of code() makes a page that tells the same."""
    rng = random.Random("my part")
    for _ in range(50):
        part = drawn(rng)
        again = eval(part.code(), {"benches": benches})
        assert again.text == part.text, part.code()
        assert again.state.readings == part.state.readings


@pytest.mark.slow
@pytest.mark.parametrize("case", PLANS, ids=lambda case: case["name"])
def test_notes_worked_by_hand_come_out_so(case: dict[str, Any]) -> None:
    """Every size that the sheet of hand-worked plans gives is what the page shows."""
    part = benches.my_part(
        case["note"],
        material=case["material"],
        machine=case["machine"],
        thickness=case.get("thickness", ""),
    )
    for at, what, value, unit, _, source in case.get("figures", ()):
        kind, _, name = what.partition(" ")
        if kind != "size" or name.rpartition(" ")[2] in ("least", "greatest"):
            continue
        assert source
        size = part.plan.seats[at].size(name)
        assert size.value == pytest.approx(value * PER[unit], abs=TOLERANCE[unit]), what
        assert show_limits(size, part.system) in part.text


def test_what_is_kept_comes_back(workbook) -> None:
    """A page opened again is as it was left; the file is plain data."""
    part = benches.my_part()
    part.set(note="⌀6.6 ⌴ ⌀11 ↧ 6.5").measure("L07-1", diameter="11.02 mm")
    again = benches.my_part()
    assert again.state == part.state
    assert again.text == part.text
    kept = json.loads((workbook / "my_part" / "my_part.json").read_text("utf-8"))
    assert from_data(kept) == part.state


def test_two_parts_are_kept_apart(workbook) -> None:
    """Each name has a file of its own, and none is written before something is changed."""
    benches.my_part(NOTES[1], keep="frame").set(thickness="12 mm")
    assert benches.my_part().state.seat.note == NOTES[0]
    assert benches.my_part(keep="frame").state.seat.note == NOTES[1]
    assert [one.name for one in (workbook / "my_part").glob("*.json")] == ["frame.json"]


@pytest.mark.parametrize("name", ["../frame", "Frame", "", "a" * 41, "a b"])
def test_what_it_is_kept_under_is_no_path(workbook, name: str) -> None:
    """A name with anything but small letters, digits, - and _ is refused."""
    if name:
        with pytest.raises(SeatworkError, match="small letters"):
            benches.my_part(NOTES[1], keep=name)
    assert not (workbook / "my_part").exists()


def test_a_page_does_not_write_over_another(workbook) -> None:
    """The later of two pages says that it did not keep; the file stays the first one's."""
    first, second = benches.my_part(), benches.my_part()
    first.set(thickness="3 mm")
    second.set(thickness="5 mm")
    assert "another page" in second.trouble
    assert benches.my_part().state.seat.thickness == "3 mm"


@pytest.mark.parametrize(
    "spoiled",
    ["", "{", "[]", '{"format": 2}', '{"format": 1, "part": "x", "seats": []}', "[" * 9999],
)
def test_a_spoiled_file_is_left_as_it_is(workbook, spoiled: str) -> None:
    """It is told in a sentence, the demonstration opens, and nothing is written over it."""
    path = workbook / "my_part" / "my_part.json"
    path.parent.mkdir()
    path.write_text(spoiled)
    part = benches.my_part()
    assert "cannot be read" in part.trouble
    part.set(thickness="3 mm")
    assert path.read_text() == spoiled
    assert [one.name for one in path.parent.iterdir()] == ["my_part.json"]


def test_without_a_workbook_nothing_is_written(tmp_path, monkeypatch) -> None:
    """Outside of a workbook the page works and keeps nothing."""
    monkeypatch.chdir(tmp_path)
    benches.my_part().set(thickness="3 mm")
    assert not list(tmp_path.iterdir())


def test_a_rule_can_hold_otherwise_for_this_part() -> None:
    """Flush to .010 below instead of .015 leaves less depth, on this part alone.

    Geometry: depth limits are as far apart as the head may lie deep.
    """
    part = benches.my_part()

    def room() -> float:
        size = part.plan.seats[0].size("depth from the face")
        return (size.greatest - size.least) / 25.4

    assert room() == pytest.approx(0.015, abs=1e-6)
    part.change_rule("flush.greatest_below", "0.010 in")
    assert room() == pytest.approx(0.010, abs=1e-6)
    assert part.house_rule("flush.greatest_below") == "0.015 in"
    part.change_rule("flush.greatest_below", "")
    assert room() == pytest.approx(0.015, abs=1e-6)


@pytest.mark.parametrize(("rule", "text"), [("flush.nothing", "1"), ("flush.aim", "sideways")])
def test_a_rule_that_cannot_be_changes_nothing(rule: str, text: str) -> None:
    """An unknown rule or value is one sentence, and the part stays as it was."""
    part = benches.my_part()
    before = part.text
    with pytest.raises(SeatworkError):
        part.change_rule(rule, text)
    assert (part.text, part.state.rules) == (before, {})


def test_readings_are_judged() -> None:
    """A seat inside its limits is accepted, one too small rejected with what to change."""
    part = benches.my_part()
    good = {"diameter": ".395 in", "stand": ".004 in below", "angle": "82", "tried": "yes"}
    part.measure("L07-1", **good, angle_with="optical")
    part.measure("L07-2", diameter=".370 in")
    verdicts = [one.verdict for one in part.inspection.parts]
    assert verdicts == ["accept", "reject"]
    assert part.inspection.parts[1].changes


def test_a_name_given_to_a_note_takes_its_readings_along() -> None:
    """Readings stay with the note that is called otherwise now."""
    part = benches.my_part()
    part.measure("L07-1", diameter=".370 in")
    part.set(name="hopper lid")
    assert not part.inspection.faults
    assert part.inspection.parts[0].measured.feature == "hopper lid"


def test_a_name_with_a_comma_keeps_its_readings_too() -> None:
    """Another name goes to the readings of its own note alone, commas in it or not."""
    seats = [{"name": "plate", "note": "⌀.250 THRU"}, {"name": "plate, low", "note": "⌀.250 THRU"}]
    readings = [{"feature": "plate, low", "part": "L07-1", "cells": {"burr": "no"}}]
    part = benches.my_part(seats=seats, readings=readings)
    part.set(name="hopper")
    assert part.state.readings[0].feature == "plate, low"
    part.go_to("plate, low").set(name="rim, low")
    assert part.state.readings[0].feature == "rim, low"


def test_a_note_taken_out_takes_its_readings_along() -> None:
    """Readings of a note that is gone are no fault that nobody can mend."""
    note = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
    part = benches.my_part(seats=[{"name": "A", "note": note}, {"name": "B", "note": note}])
    part.measure("L07-1", "A", diameter=".390 in").measure("L07-1", "B", diameter=".390 in")
    part.take_out()
    assert [one.feature for one in part.state.readings] == ["B"]
    assert not part.inspection.faults


@pytest.mark.parametrize("cells", [{"diamter": ".390 in"}, {"diameter": "9", "diameter_[in]": "1"}])
def test_a_reading_of_no_such_name_is_told(cells: dict[str, str]) -> None:
    """A misspelled reading, or one given twice, is told by its part and spoils no other part."""
    part = benches.my_part("4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD")
    part.measure("L07-1", diameter=".390 in").measure("L07-2", **cells)
    assert len(part.inspection.parts) == 1
    assert [fault.partition(",")[0] for fault in part.inspection.faults] == ["L07-2"]


@pytest.mark.parametrize(
    ("word", "text", "box"),
    [
        ("thickness", "three", "thickness at the hole"),
        ("edge", "5", "hole to the nearest edge"),
        ("engagement", "-3 mm", "thread to engage"),
        ("slope", "steep", "slope of a raw pad"),
    ],
)
def test_a_size_that_cannot_be_read_names_its_box(word: str, text: str, box: str) -> None:
    """There is no plan, and the sentence says in which box what stands."""
    part = benches.my_part("⌀.250 THRU", **{word: text})
    assert part.seat.plan is None
    assert str(part.seat.trouble).startswith(f"{box}, {text}")


def test_a_reading_that_cannot_be_read_is_told_by_the_part() -> None:
    """The page has no rows to count: the part's mark and the reading say where it is."""
    part = benches.my_part("4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD")
    part.measure("L07-2", diameter="quite")
    assert [fault[:16] for fault in part.inspection.faults] == ["L07-2, diameter:"]


def test_readings_wait_while_their_note_has_no_plan() -> None:
    """A note that cannot be read says that its readings wait; mended, they are judged again."""
    note = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
    part = benches.my_part(note).measure("L07-2", diameter=".390 in")
    part.set(note="WHATNOT")
    assert "the readings wait" in part.inspection.faults[0]
    part.set(note=note)
    assert len(part.inspection.parts) == 1
    assert not part.inspection.faults


def test_a_class_job_has_one_card_and_one_list_of_what_is_measured() -> None:
    """Three notes of one part: a card for each seat, a summary, and every seat to measure."""
    part = benches.my_part(
        name="frame",
        seats=[
            {"name": "pad", "note": "⌀.406 THRU, ⌀1.00 S.F.", "material": "gray iron"},
            {"name": "cap", "note": "DRILL & C'BORE FOR 3/8 SHCS", "material": "gray iron"},
            {"name": "plate", "note": NOTES[0]},
        ],
    )
    pages = part.card()
    words = "\n".join(line for page in pages.words for line in page)
    assert "Part card: frame" in words
    assert all(f"{name}: " in words for name in ("pad", "cap", "plate"))
    assert len(part.found.cuts) == 3


def test_a_card_is_written_into_the_workbook(workbook) -> None:
    """The button's PDF lies beside the kept part."""
    part = benches.my_part()
    path = part.save_card()
    assert path == workbook / "my_part" / "my_part_card.pdf"
    assert path.read_bytes().startswith(b"%PDF")


def test_the_still_is_the_demonstration(workbook) -> None:
    """What stands in the file is the same with a kept part and without one."""
    before = still().text
    benches.my_part().set(note="⌀6.6 ⌴ ⌀11 ↧ 6.5")
    assert still().text == before
    assert "#10-32" in before


@pytest.mark.parametrize(
    "given",
    [
        {"note": 5},
        {"note": "x" * 3000},
        {"note": "a\x00b"},
        {"seats": [{"nam": "x"}]},
        {"seats": []},
    ],
)
def test_what_is_no_part_is_refused(given: dict[str, Any]) -> None:
    """Wrong things given are one sentence."""
    with pytest.raises(SeatworkError):
        benches.my_part(**given)


@pytest.mark.slow
def test_the_page_follows_the_part() -> None:
    """What is typed in the boxes reaches the part; what is refused changes nothing."""
    part = benches.my_part()
    page = PartPage(part)
    page.note.value = "⌀6.6 ⌴ ⌀11 ↧ 6.5"
    assert part.plan.seats[0].kind == "counterbore"
    page.note.value = "⌀6.6 ⌴ ⌀11 ↧"
    assert page.read.blocks[-1]["kind"] == "stop"
    assert not page.steps.blocks
    page.note.value = NOTES[0]
    page.rules.boxes["flush.greatest_below"].value = "0.010 in"
    assert part.state.rules == {"flush.greatest_below": "0.010 in"}
    page.readings.boxes["diameter [in]"].value = ".370"
    assert page.verdicts.blocks[0]["kind"] == "stop"
    page.elsewhere["thickness"].value = "thick"
    assert part.seat.plan is None
    page.close()
