"""What notes say beside the sizes: open flushness, shared faces, one-sided limits, finishes.

How each must be read is common practice, no source; a deviation without sign beside a zero stands
so on ISO drawings (ISO 129-1, from memory).
"""

import pytest
from seatwork.errors import SeatworkError
from seatwork.notes import Callout, Countersink, Hole, read, write

FLAT = "⌀.201 THRU ⌵ FOR #10 FLAT HEAD"
IN = 25.4


def seat(callout: Callout) -> Countersink:
    """Return the countersink of a callout."""
    return next(one for one in callout.features if isinstance(one, Countersink))


@pytest.mark.parametrize(
    "words",
    [
        "FLUSH OR BELOW",
        "HEAD FLUSH OR BELOW",
        "FLUSH AND BELOW",
        "FLUSH TO BELOW",
        "FLUSH OR SLIGHTLY BELOW",
        "HEAD TO BE FLUSH OR BELOW SURFACE",
        "AT OR BELOW SURFACE",
        "FLUSH OR UNDER FLUSH",
        "NEVER PROUD",
        "NOT TO PROTRUDE ABOVE SURFACE",
        "FLUSH, NEVER PROUD",
    ],
)
def test_flush_or_below_keeps_both_ends(words: str) -> None:
    """Never above is said, how far below is left to the house; it is not a bare FLUSH."""
    callout = read(f"{FLAT}, {words}")
    assert seat(callout).head.state == "flush or below"
    assert [one.rule for one in callout.assumptions] == ["flush.greatest_below"]


def test_a_number_behind_below_is_the_lower_end() -> None:
    """FLUSH OR BELOW .010 MAX and FLUSH OR .010 BELOW run from flush to .010 below."""
    for words in ("FLUSH OR BELOW .010 MAX", "FLUSH OR .010 BELOW", "FLUSH TO .010 BELOW"):
        head = seat(read(f"{FLAT}, {words}")).head
        assert head.window == (pytest.approx(-0.010 * IN), 0.0), words


@pytest.mark.parametrize(("holes", "shared"), [(4, "2 NS & 2 FS"), (2, "2 NS & 2 FS"),
                                               (5, "3 NS & 2 FS"), (5, "2 FS & 3 NS")])  # fmt: skip
def test_seats_shared_out_to_the_faces_fit_the_holes(holes: int, shared: str) -> None:
    """Either each hole has one seat, or every hole has one on each face."""
    callout = read(f"{holes}X ⌀.281 THRU, C'BORE .438 DIA X .26 DP, {shared}")
    sides = {one.side: one.count for one in callout.features[1:]}
    assert sides == {"near": 3 if holes == 5 else 2, "far": 2}


@pytest.mark.parametrize(
    ("note", "asked"),
    [
        ("4X ⌀.281 THRU, C'BORE .438 DIA X .26 DP, 3 NS & 2 FS", "do not fit 4 holes: which"),
        ("⌀.281 THRU, C'BORE .438 DIA X .26 DP, 2 NS & 2 FS", "on how many holes"),
        ("C'BORE .438 DIA X .26 DP, 2 NS & 2 FS, DRILL .281 THRU, 6 HOLES", "do not fit 6 holes"),
        ("⌀.500 +.002 THRU", "one side of a tolerance is said: what is the other?"),
        ("C'BORE .625 +.005 DIA X .25 DP", "one side of a tolerance"),
        ("⌀.500 -.002 THRU", "two limits of a diameter so far apart, or a size and a depth"),
    ],
)
def test_what_does_not_fit_is_asked_in_a_sentence(note: str, asked: str) -> None:
    """A count that does not add up and half a tolerance are no sizes to cut to."""
    with pytest.raises(SeatworkError, match=asked.replace("?", r"\?")) as caught:
        read(note)
    assert caught.value.remedy


@pytest.mark.parametrize(
    ("written", "upper", "lower"),
    [
        ("+.005 -0", 0.005, 0.0),
        ("+.005 -.000", 0.005, 0.0),
        ("+.005/-0", 0.005, 0.0),
        ("-.000 +.005", 0.005, 0.0),
        ("-0/+.005", 0.005, 0.0),
        ("+.005 0", 0.005, 0.0),
        ("+.005 .000", 0.005, 0.0),
        ("+0 -.005", 0.0, -0.005),
        ("0/-.005", 0.0, -0.005),
        ("0 -.005", 0.0, -0.005),
        ("+.002/-.003", 0.002, -0.003),
    ],
)
def test_a_one_sided_tolerance_keeps_its_sign(written: str, upper: float, lower: float) -> None:
    """A zero needs no sign and stands on either side of the other deviation."""
    hole, sink = read(f"⌀.500 {written} THRU, CSK .750 {written} DIA X 82°").features
    for size in (hole.diameter, sink.diameter):
        assert size.upper == pytest.approx(upper * IN)
        assert size.lower == pytest.approx(lower * IN)


@pytest.mark.parametrize(
    ("words", "holds"),
    [
        ("AFTER PLATING", "after plating"),
        ("DIMENSIONS APPLY AFTER PLATING", "after plating"),
        ("DIMS AFTER PLATE", "after plating"),
        ("BEFORE PLATING", "before plating"),
        ("SIZES PRIOR TO ANODIZING", "before anodizing"),
        ("ALL DIMENSIONS ARE AFTER FINISH", "after finish"),
        ("BEFORE HEAT TREAT", "before heat treatment"),
    ],
)
def test_a_finish_is_kept_with_when_the_sizes_hold(words: str, holds: str) -> None:
    """The sizes stay as said, and the callout says before or after what they hold."""
    callout = read(f"⌀.201 THRU ⌵ ⌀.385 X 82°, {words}")
    assert callout.sizes_hold == holds
    assert callout.features == read("⌀.201 THRU ⌵ ⌀.385 X 82°").features
    assert callout != read("⌀.201 THRU ⌵ ⌀.385 X 82°")
    assert read(write(callout)) == callout


@pytest.mark.parametrize(
    ("note", "kept"),
    [
        ("DRILL .281 THRU; SEE NOTE 3", "SEE NOTE 3"),
        ("DRILL .281 THRU (SEE NOTE 3), 4 HOLES", "(SEE NOTE 3)"),
        ("DRILL .281 THRU PER NOTE 12, 4 HOLES", "PER NOTE 12"),
        ("4X ⌀.281 THRU, SEE DETAIL B", "SEE DETAIL B"),
        ("⌀.281 THRU, REFER TO SHEET 2\n4 HOLES", "REFER TO SHEET 2"),
        ("⌀.281 THRU, 4 HOLES, SEE NOTES 3 & 4", "SEE NOTES 3 & 4"),
    ],
)
def test_another_note_of_the_print_is_kept_with_its_number(note: str, kept: str) -> None:
    """The words are kept, and no number of them is taken for a count or a size."""
    callout = read(note)
    assert callout.said_not_used == (kept,)
    (hole,) = callout.features
    assert isinstance(hole, Hole)
    assert hole.count == (4 if "4 HOLES" in note or "4X" in note else 1)
    assert hole.diameter.value == pytest.approx(0.281 * IN)


@pytest.mark.parametrize(
    ("note", "asked"),
    [
        ("⌀.531 THRU, ⌀1.25 S.F. TO CLEAN UP X .06 DP", True),
        ("⌀.531 THRU, ⌀1.25 S.F. TO CLEAN UP .06 MAX DEEP", False),
        ("⌀.531 THRU, ⌀1.25 S.F. TO CLEAN UP", False),
    ],
)
def test_a_spotface_with_two_depths_is_asked_about(note: str, asked: bool) -> None:
    """As deep as it cleans up and a depth are two; a greatest depth only bounds the first."""
    said = [warning.code for warning in read(note).warnings]
    assert ("two-depths" in said) is asked
