"""The which-seat bench: a question with its answer hidden, and why the other three would not do."""

import itertools

import pytest
from seatwork import benches
from seatwork.benches.bank.which_seat_sums import (
    FLAT,
    ROUGH,
    SEATS,
    SINK,
    STAND,
    THREAD,
    asked_of,
    screws,
)
from seatwork.benches.bank.which_seat_sums import case as case_of
from seatwork.drawings.scene import Look, Scene
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture
from seatwork.seats import Head, fit

INCH = 25.4
PAD = {"screw": "1/2-13 hex cap", "face": ROUGH, "wish": STAND}
BAR = {"screw": "3/8-16 SHCS", "face": FLAT, "wish": SINK}
HOPPER = {"screw": "#10-24 flat head machine screw", "face": FLAT, "wish": SINK}
TAPPED = {"screw": "1/4-20 hex cap", "face": FLAT, "wish": THREAD}
MILLED = {"screw": "1/2-13 hex cap", "face": FLAT, "wish": STAND}
ANSWERS = (
    (PAD, "spotface"),
    (BAR, "counterbore"),
    (HOPPER, "countersink"),
    (TAPPED, "chamfer"),
    (MILLED, "chamfer"),
    ({"screw": "M6 csk socket", "face": ROUGH, "wish": STAND}, "countersink"),
    ({"screw": "M8 SHCS", "face": ROUGH, "wish": STAND}, "spotface"),
    ({"screw": "M18 hex", "face": FLAT, "wish": SINK}, "counterbore"),
)
"""Common practice, no source: rough pads are spot-faced, heads that are flat below and must not
stand proud counterbored, flat heads countersunk, holes chamfered before the tap; a milled face is
a seat already."""
PARTS = [part for part, _ in ANSWERS]


def case(part):
    """Give the case of a screw, a face and what is wanted."""
    return case_of(asked_of(part["screw"]), part["face"], part["wish"])


@pytest.mark.parametrize("part", PARTS)
def test_it_opens_as_a_question(words, part):
    """Before the answer is asked for, neither picture, text, readouts nor sources give it."""
    bench = benches.which_seat(**part)
    told = f"{words(bench)} {bench.text} {bench.readouts()} {bench.sources(bench.result)}"
    assert "Which of the four seats does it want?" in told
    assert "yes" not in told
    assert " mm)" not in told
    for seat in SEATS:
        assert seat in told.lower()


@pytest.mark.parametrize(("part", "answer"), ANSWERS)
def test_the_answer_and_why_not_the_others(part, answer):
    """The answer is that of shop practice, and each of the other three has its reason."""
    bench = benches.which_seat(**part, opened=True)
    assert bench.result.case.answer == answer
    assert bench.text.count(": yes.") == 1
    assert bench.text.count(": no.") == 3
    assert set(bench.result.case.why) == set(SEATS)


def test_sizes_are_those_of_the_lists():
    """Counterbore 5/8 by .385, countersink .385, tapped-hole chamfer .270: from the lists.

    Sources: ASME B18.3 appendix (5/8, from memory), head .375 + .010 by house rule; ASME B18.6.3
    (.385); major diameter .250 + .020, house rule (common practice, no source); hex head 1/2:
    across corners .866, ASME B18.2.1.
    """
    assert case(BAR).seat.diameter / INCH == pytest.approx(0.625)
    assert case(BAR).seat.depth / INCH == pytest.approx(0.385)
    assert case(HOPPER).seat.diameter / INCH == pytest.approx(0.385)
    assert case(TAPPED).seat.diameter / INCH == pytest.approx(0.270)
    assert case(PAD).fastener.diameter / INCH == pytest.approx(0.866, abs=5e-4)


def test_the_flat_head_is_flush():
    """In its countersink the head of theoretical sharp diameter lies flush."""
    flat = case(HOPPER).fastener.flat
    assert isinstance(flat, Head)
    assert fit(flat, case(HOPPER).seat).state == "flush"


def test_the_heads_go_into_their_seats():
    """Head and spotface: the spotface is wider than the head across corners; so is the bore."""
    for part in (PAD, BAR):
        assert case(part).seat.diameter > case(part).fastener.diameter


def test_another_part_is_another_question():
    """Picking another screw, face or wish hides the answer again."""
    bench = benches.which_seat(opened=True)
    for name, value in BAR.items():
        assert bench.set(opened=True).set(**{name: value}).values["opened"] is False
    assert bench.reset().values == PAD | {"opened": True}


def test_the_list_of_screws_is_the_shops() -> None:
    """The menu names each screw of the list of jobs once; any other may be typed."""
    assert len(set(screws())) == len(screws()) > 5
    with pytest.raises(SeatworkError, match="measure the head across"):
        benches.which_seat(screw="M8 button head")
    with pytest.raises(SeatworkError, match="names no screw"):
        benches.which_seat(screw="edges of the holes (guard)")
    with pytest.raises(SeatworkError, match="coarse or fine"):
        benches.which_seat(screw="3/8 hex cap", wish=THREAD)


@pytest.mark.parametrize(
    ("given", "sentence"),
    [({"screw": "<b>crank</b>"}, "no such job"), ({"opened": 1}, "on or off")],
)
def test_errors_are_sentences_and_change_nothing(given, sentence):
    """What is no part or no switch is told in a sentence; the bench stays as it was."""
    bench = benches.which_seat()
    before = bench.values, bench.text
    with pytest.raises(SeatworkError, match=sentence):
        bench.set(**given)
    assert (bench.values, bench.text) == before


def test_the_text_carries_every_number():
    """The text twin and the readouts have every size in both systems; sources name documents."""
    bench = benches.which_seat(**BAR, opened=True)
    rows = [text for _, text in bench.readouts()]
    for number in ("0.625 in (15.88 mm)", "0.385 in (9.78 mm)", "0.406 in (10.32 mm)"):
        assert number in bench.text
        assert number in rows
    told = " ".join(bench.sources(bench.result))
    for source in ("B18.3", "B18.2.8", "counterbore.inch_below_face"):
        assert source in told


def test_code_rebuilds_it():
    """The line that code() gives makes a bench with the same values and the same text."""
    bench = benches.which_seat(**HOPPER, opened=True).use("metric")
    again = eval(bench.code(), {"benches": benches})
    assert again.values == bench.values
    assert again.text == bench.text


@pytest.mark.slow
@pytest.mark.parametrize("look", [Look(), Look(system="metric", projector=True)])
def test_nothing_overlaps_or_leaves_the_page(look, drawing_faults):
    """Over all parts, asked and answered, all words stand clear, whole and complete."""
    found = []
    for part, opened in itertools.product(PARTS, (False, True)):
        bench = benches.which_seat(**part, opened=opened)
        drawing = bench.scene(bench.result, look).draw()
        found += [f"{part}: {fault}" for fault in drawing_faults(drawing)]
        last = "chamfer" if not opened else list(bench.result.case.why.values())[-1].split()[-1]
        shown = [t.get_text() for t in drawing.figure.axes[0].texts if t.get_text()]
        assert any(text.endswith(last) for text in shown)
    assert found == []


@pytest.mark.slow
def test_the_page_can_show_it():
    """The scene goes through the live picture, and a second telling changes nothing."""
    bench = benches.which_seat(opened=True)
    scene = bench.scene(bench.result, bench.look())
    assert isinstance(scene, Scene)
    assert LivePicture(scene).move(bench.drawn)[0] == bench.text
