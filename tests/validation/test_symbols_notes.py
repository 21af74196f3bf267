"""Symbols of print notes and the reading of hole notes: Unicode, ASME Y14.5, ISO 15786."""

import json
import unicodedata

import pytest
from seatwork.notes import Counterbore, Countersink, Hole, Spotface, Thread, read
from seatwork.notes.characters import COUNTERBORE, COUNTERSINK, DEPTH, DIAMETER

DATA = "symbols_notes"
OURS = {
    "COUNTERBORE": COUNTERBORE,
    "COUNTERSINK": COUNTERSINK,
    "DOWNWARDS ARROW FROM BAR": DEPTH,
    "DIAMETER SIGN": DIAMETER,
}
FIELDS = {
    "hole": (Hole, "diameter"),
    "csk_dia": (Countersink, "diameter"),
    "csk_angle": (Countersink, "angle"),
    "spotface_dia": (Spotface, "diameter"),
}


def test_symbol_has_its_code_point(code_point_check) -> None:
    """The symbol is the published character; those we write are the same ones."""
    symbol = code_point_check.inputs["symbol"]
    ours = OURS.get(unicodedata.name(symbol), symbol)
    assert code_point_check.same(f"U+{ord(ours):04X}")


def test_symbol_has_its_bytes(utf8_check) -> None:
    """The countersink symbol we write is stored as the published bytes."""
    assert utf8_check.inputs["symbol"] == COUNTERSINK
    assert utf8_check.same(COUNTERSINK.encode().hex(" ").upper())


def test_note_gives_the_published_fields(note_check) -> None:
    """A hole note gives count, diameters [in] and angle [deg] as published."""
    callout = read(note_check.inputs["note"])
    expected = json.loads(note_check.expected)
    (count,) = {feature.count for feature in callout.features}
    read_there = {"count": count} if count > 1 else {}
    for name in FIELDS:
        kind, field = FIELDS[name]
        for feature in (f for f in callout.features if isinstance(f, kind)):
            size = getattr(feature, field)
            per_unit = 25.4 if size.unit == "in" else 1
            value = round(size.value / per_unit, 12)
            read_there[name] = value if value % 1 else int(value)
    assert note_check.same(json.dumps({name: read_there.pop(name) for name in expected}))
    assert read_there == {}
    assert {type(f) for f in callout.features} <= {kind for kind, _ in FIELDS.values()}


def test_counterbored_hole_in_symbols_and_words_is_one_callout() -> None:
    """Symbol and word notes of one counterbored hole say the same.

    Source: ASME Y14.5 hole notes and older word notes, drafting texts, from memory.
    """
    symbols = read("⌀.281 THRU | ⌴ ⌀.438 ↧ .250")
    assert read(".281 DIA THRU, CBORE .438 X .25 DP") == symbols


def test_iso_lines_put_the_seat_above_its_hole() -> None:
    """18 x 10.6 above 11 x 14 is a counterbore over its hole. Source: ISO 15786:2008 preview."""
    hole, seat = read("18 x 10.6\n11 x 14").features
    assert isinstance(hole, Hole)
    assert isinstance(seat, Counterbore)
    assert (hole.diameter.value, hole.depth.value) == (11.0, 14.0)
    assert (seat.diameter.value, seat.depth.value) == (18.0, 10.6)


def test_iso_countersink_is_diameter_by_included_angle() -> None:
    """13 × 90° is largest diameter by included angle. Source: ISO 15786:2008 preview."""
    (seat,) = read("13 × 90°").features
    assert isinstance(seat, Countersink)
    assert (seat.diameter.value, seat.angle.value) == (13.0, 90.0)


def test_iso_thread_gives_depth_of_thread_and_hole() -> None:
    """M10 × 25/30: 25 of thread in a hole 30 deep. Source: ISO 15786:2008 preview."""
    thread, hole = read("M10 × 25/30").features
    assert isinstance(thread, Thread)
    assert (thread.depth.value, hole.depth.value) == (25.0, 30.0)


@pytest.mark.parametrize("word", ["CBORE", "C'BORE", "C/BORE"])
def test_counterbore_abbreviations(word: str) -> None:
    """Abbreviations of counterbore. Source: ASME Y14.38 (memory); BS usage in a data book."""
    (seat,) = read(f"{word} .438 X .25 DP").features
    assert isinstance(seat, Counterbore)


@pytest.mark.parametrize("word", ["SF", "SFACE", "S'FACE", "S.F."])
def test_spotface_abbreviations(word: str) -> None:
    """Abbreviations of spotface. Source: ASME Y14.38 SF, BS S'FACE (memory)."""
    (seat,) = read(f"{word} ⌀.875").features
    assert isinstance(seat, Spotface)


@pytest.mark.parametrize(("word", "side"), [("NS", "near"), ("FS", "far"), ("FAR SIDE", "far")])
def test_side_abbreviations(word: str, side: str) -> None:
    """NS and FS are near and far side. Source: ASME Y14.38 (memory)."""
    (seat,) = read(f"CSK .385 X 82° {word}").features
    assert seat.side == side


@pytest.mark.parametrize("sign", ["⌀", "Ø", "ø", "∅", "φ"])
def test_diameter_aliases(sign: str) -> None:
    """Ø and ∅ are often typed for the diameter sign. Source: common practice, no source."""
    (hole,) = read(f"{sign}.281 THRU").features
    assert hole.diameter.value == pytest.approx(0.281 * 25.4)
