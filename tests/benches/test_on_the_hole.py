"""The bench of a seat beside its hole: its numbers against geometry, its refusals, its picture."""

from math import cos, radians, sin, tan

import pytest
from seatwork import benches
from seatwork.benches.bank.on_the_hole_bench import EYE, PILOT
from seatwork.drawings.scene import Look, Scene
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture

INCH, T = 25.4, tan(radians(41))


def test_it_opens_on_a_question_and_gives_nothing_away():
    """Before the screw is in, neither picture, text nor readout says how the head stands."""
    bench = benches.on_the_hole()
    assert "How will the head stand" in bench.text
    assert bench.readouts() == [["Seat beside its hole", "0.005 in (0.13 mm)"]]
    for piece in ("proud", "flush", "below", ".006", "touches"):
        assert piece not in bench.text


def test_five_thou_beside_is_six_thou_proud():
    """.005 / tan 41° = .0058, which is shown as .006, on both sides; .0115 open opposite."""
    bench = benches.on_the_hole(shown=True)
    assert bench.result.lies.high / INCH == pytest.approx(0.005 / T, abs=1e-6)
    told = dict(bench.readouts())
    assert told["Left side"] == told["Right side"] == "0.006 in (0.15 mm) proud"
    assert bench.result.lies.gap / INCH == pytest.approx(2 * 0.005 / T, abs=1e-6)


def test_a_pilot_is_off_by_half_of_what_it_is_under():
    """A pilot .031 under its hole: .0155 beside, .0178 proud at 82°."""
    bench = benches.on_the_hole(shown=True, guide=PILOT, pilot_under=".031 in")
    assert bench.result.offset / INCH == pytest.approx(0.0155)
    assert bench.result.lies.high / INCH == pytest.approx(0.0155 / T, abs=1e-6)
    assert "0.018 in (0.45 mm) proud" in bench.text
    close = bench.set(pilot_under=".002 in").result.lies.high
    assert close / INCH == pytest.approx(0.001 / T, abs=1e-6)


def test_out_of_square_runs_from_side_to_side():
    """At 1° the .477 edge of the head, ASME B18.6.3, runs .477 x sin 1° = .0083 across."""
    bench = benches.on_the_hole(shown=True, off_center=0.0, out_of_square=1.0)
    lies, edge = bench.result.lies, bench.result.job.screw.head.edge
    assert lies.high - lies.low == pytest.approx(edge * sin(radians(1)))
    assert [row[1].split()[-1] for row in bench.readouts()[:2]] == ["proud", "below"]
    both = bench.set(off_center=".005 in").result.lies
    assert both.high == pytest.approx(0.127 / T * cos(radians(1)) + edge / 2 * sin(radians(1)))


def test_a_free_screw_hides_the_error():
    """A 1/4 in body in a .266 hole shifts .008 and hides .005; of .020 it leaves .012 / tan 41°."""
    bench = benches.on_the_hole(shown=True, free=True)
    assert dict(bench.readouts())["Left side"] == "flush"
    far = bench.set(off_center=".020 in").result.lies
    assert far.high / INCH == pytest.approx(0.012 / T, abs=1e-6)


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ({"off_center": "9 in"}, "goes from"),
        ({"off_center": "-.1 in"}, "no sign"),
        ({"pilot_under": "0"}, "goes from"),
        ({"out_of_square": "12"}, "goes from"),
        ({"guide": "<b>"}, "no such choice"),
        ({"job": "M8 hex"}, "cone"),
    ],
)
def test_errors_are_sentences_and_change_nothing(given, sentence):
    """What cannot be is told in a sentence; the bench stays as it was."""
    bench = benches.on_the_hole(shown=True)
    before = bench.values, bench.text
    with pytest.raises(SeatworkError) as refused:
        bench.set(**given)
    assert sentence in str(refused.value)
    assert (bench.values, bench.text) == before


def test_the_text_carries_every_number():
    """Every length on the picture or in a readout stands in the text, in both systems."""
    bench = benches.on_the_hole(shown=True, off_center=0.5, out_of_square=3.0)
    lies, seat = bench.result.lies, bench.result.seat
    for size in (seat.diameter, seat.hole_diameter, 0.5, lies.high, lies.low, lies.gap):
        assert f"{abs(size) / INCH:.3f} in ({abs(size):.2f} mm)" in bench.text
    assert "both lean 3° from square" in bench.text
    assert " of 360°" in bench.text


def test_every_number_has_its_source():
    """Screw, hole, geometry, pilot and the rules of flush heads have their lines."""
    bench = benches.on_the_hole(shown=True)
    told = " ".join(bench.sources(bench.result))
    for piece in ("B18.6.3", "plane geometry", "pilot.greatest_play", "flush.greatest_proud",
                  "worst case", "roughness"):  # fmt: skip
        assert piece in told


STATES = [
    {},
    {"shown": True},
    {"guide": PILOT, "pilot_under": 1.0},
    {"guide": EYE, "off_center": 1.0, "out_of_square": 5.0},
    {"off_center": 0.0},
    {"free": True},
    {"job": "#10 flat head 82° (hopper plate)"},
    {"job": "3/4-10 flat head", "off_center": 1.0},
    {"job": "M3 socket flat head", "off_center": 0.2},
]


@pytest.mark.slow
@pytest.mark.parametrize("look", [Look(), Look(system="metric", projector=True)])
def test_nothing_overlaps_or_leaves_the_page(look, drawing_faults):
    """Over screws, offsets, leans and pilots all words stand clear and whole."""
    bench = benches.on_the_hole()
    scene = bench.scene(bench.result, look)
    drawing, found = scene.draw(), []
    for values in STATES:
        scene.move(bench.set(**values).drawn)
        found += [f"{values}: {fault}" for fault in drawing_faults(drawing)]
    assert found == []


@pytest.mark.slow
def test_moved_is_fresh():
    """A moved scene shows, to the pixel, what a fresh one shows."""
    bench = benches.on_the_hole()
    scene = bench.scene(bench.result, bench.look())
    drawing = scene.draw()
    assert isinstance(scene, Scene)
    for values in STATES:
        bench.set(**values)
        assert scene.move(bench.drawn) == bench.text
        assert drawing.png(0.5) == bench.drawing.png(0.5)


@pytest.mark.slow
def test_the_live_picture_follows():
    """After many moves the page stands, element by element, as one that is built anew."""
    bench = benches.on_the_hole()
    picture = LivePicture(bench.scene(bench.result, bench.look()))
    moves = ({"off_center": 0.3}, {"shown": True}, {"out_of_square": 2.0}, {"off_center": 0.0})
    for values in moves:
        picture.move(bench.set(**values).drawn)
        fresh = LivePicture(bench.scene(bench.result, bench.look()))
        shapes = [[one.get("d") for one in p.page()["state"]] for p in (picture, fresh)]
        assert shapes[0] == shapes[1]


def test_code_rebuilds_it():
    """The line that code() gives makes a bench with the same values and words."""
    bench = benches.on_the_hole(shown=True, off_center=".008 in", out_of_square=1.5)
    again = eval(bench.code(), {"benches": benches})
    assert again.values == bench.values
    assert again.text == bench.text
