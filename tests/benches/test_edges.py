"""The edges bench: two readings of one width, notes without a size, the rim on three faces."""

import json
from math import cos, radians, sin, sqrt, tan
from statistics import median

import pytest
from seatwork import benches
from seatwork.benches.bank.edges_bench import (
    BORE,
    DRAFT,
    INCH_BREAK,
    INCH_CHAMFER,
    METRIC_CHAMFER,
    PAD,
    SHAFT,
    SIZED,
)
from seatwork.drawings.scene import Scene
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture

INCH = 25.4


def test_it_opens_on_two_readings(words):
    """One chamfer .030 wide: along the face the mouth is .326, across the bevel .308.

    Source: .266 + 2 x .030, and .266 + 2 x .030 x sin 45°, by hand.
    """
    bench = benches.edges()
    assert "measured where?" in words(bench)
    assert bench.readouts()[:2] == [
        ["Mouth by reading 1", "0.326 in (8.28 mm)"],
        ["Mouth by reading 2", "0.308 in (7.83 mm)"],
    ]


@pytest.mark.parametrize("angle", [60, 82, 90, 120])
def test_reading_two_is_the_bevel_itself(angle):
    """By reading 2 the bevel is as wide as noted; its leg is the width times sin(A/2)."""
    found = benches.edges(angle=angle, width=1.0).result
    assert found.across_bevel.slant_width == pytest.approx(1.0)
    assert found.across_bevel.leg == pytest.approx(sin(radians(angle / 2)))
    assert found.along_face.leg == 1.0


def test_the_82_tool_cuts_deeper_for_the_same_leg():
    """A leg of .030 with the 82° tool is .0345 deep, not .030: that is no .03 x 45°.

    Source: .030/tan 41° = .0345, by hand.
    """
    found = benches.edges(angle=82, width="0.030").result
    assert found.along_face.depth / INCH == pytest.approx(0.0345, abs=5e-5)


@pytest.mark.parametrize(
    ("note", "width", "most"),
    [
        (INCH_CHAMFER, INCH / 32, INCH / 16),
        (METRIC_CHAMFER, 1.0, 2.0),
        (INCH_BREAK, 0.015 * INCH, 0.015 * INCH),
    ],
)
def test_a_note_without_size_takes_the_house_rule(words, note, width, most):
    """No size: 45° per side, 1/32 to 1/16 in or 1 to 2 mm; edges broken to .015 at most.

    Source: common practice, no source; the break from memory (house rules chamfer.*, edge.*).
    """
    bench = benches.edges(note=note, angle=82)
    assert bench.values["angle"] == 82
    assert bench.set(note=SIZED).set(note=note).values["angle"] == 90.0
    assert bench.values["width"] == pytest.approx(width)
    assert bench.readouts()[-1][0] == "At most, by rule"
    assert bench.measures(bench.result)[-1].value == pytest.approx(most)
    assert "no size: by house rule" in words(bench)
    told = " ".join(bench.sources(bench.result))
    assert "House rule" in told
    assert "from memory" in told


def test_a_typed_width_is_a_size():
    """Moving the width makes it a size again: the house rule no longer speaks."""
    bench = benches.edges(note=INCH_CHAMFER).set(width="0.040")
    assert bench.values["note"] == SIZED
    assert len(bench.readouts()) == 3


def test_flat_is_even():
    """On a flat face the width across the bevel is the same all round, 1.414 legs at 90°."""
    found = benches.edges(place=PAD, all_round=True, width=1.0).result.rim
    assert found.least_width == pytest.approx(sqrt(2))
    assert found.greatest_width == pytest.approx(sqrt(2))


def test_tilted_is_an_ellipse_with_its_focus_on_the_axis():
    """On a tilted face the rim lies at R/(1 -+ k), k = T tan(tilt): high and low side.

    Source: cone and plane, a conic with one focus on the cone's axis; worked by hand.
    """
    found = benches.edges(place=DRAFT, tilt=8, width=1.0, hole=6.0).result.rim
    steep, radius = tan(radians(8)), 4.0
    high, low = radius / (1 - steep), radius / (1 + steep)
    assert found.greatest_width == pytest.approx((high - 3.0) * sqrt(2))
    assert found.least_width == pytest.approx((low - 3.0) * sqrt(2))
    assert found.least_diameter == pytest.approx(8.0)


def test_on_a_shaft_the_noted_width_is_across_it():
    """8 mm across a 20 mm shaft, 90°: 9.670 along it.

    Source: at 90°, R = 4 + (10 - sqrt(100 - 16)) = 4.8348 and along the crown the cone is 2 R.
    """
    found = benches.edges(place=SHAFT, round_diameter=20, hole=5, width=1.5).result.rim
    assert found.least_diameter == pytest.approx(8.0)
    assert found.greatest_diameter == pytest.approx(2 * (4 + 10 - sqrt(84)))


def test_inside_a_bore_it_is_wider_across():
    """From inside a bore the least lies along the bore and the greatest across it."""
    found = benches.edges(place=BORE, round_diameter=30, hole=6, width=1.0).result.rim
    assert found.width.argmin() * 5 % 180 == 90
    assert found.width.argmax() * 5 % 180 == 0
    assert cos(radians(found.directions[found.width.argmax()])) == pytest.approx(1)


def test_a_steep_face_leaves_part_of_the_edge_sharp():
    """At a tilt where the low side of the cone stays inside the hole the edge is not broken."""
    bench = benches.edges(all_round=True, tilt=20, width=0.4)
    assert bench.readouts()[2] == ["Edge", "not broken all round"]
    assert "does not break the edge all round" in bench.text


def test_a_size_of_a_face_brings_that_face():
    """Moving the tilt shows the tilted face, moving the diameter a round one."""
    bench = benches.edges(all_round=True, place=PAD)
    assert bench.set(round_diameter=30).values["place"] == SHAFT
    assert bench.set(tilt=5).values["place"] == DRAFT
    assert bench.set(place=BORE).set(round_diameter=40).values["place"] == BORE


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ({"width": "1/4"}, "a seat, not a chamfer"),
        ({"width": "nan"}, "nan"),
        ({"angle": 50}, "chamfering tools"),
        ({"tilt": 45}, "squared first"),
        ({"place": "roof"}, "no such choice"),
        ({"place": SHAFT, "round_diameter": 6, "hole": 8}, "round face"),
        ({"hole": "#7"}, "names a drill or a screw"),
    ],
)
def test_errors_are_sentences_and_change_nothing(given, sentence):
    """What cannot be is told in a sentence; the bench stays as it was."""
    bench = benches.edges(all_round=True)
    values, text = bench.values, bench.text
    with pytest.raises(SeatworkError) as refused:
        bench.set(**given)
    assert sentence in f"{refused.value.value} {refused.value}"
    assert (bench.values, bench.text) == (values, text)


def test_the_text_carries_every_number():
    """Both text twins have every number of their picture, in both systems."""
    corner = benches.edges().text
    for number in (
        "0.030 in (0.76 mm)",
        "0.266 in (6.76 mm)",
        "0.326 in (8.28 mm)",
        "0.308 in (7.83 mm)",
        "0.021 in (0.54 mm)",
        "0.042 in (1.08 mm)",
        "90°",
    ):
        assert number in corner
    bench = benches.edges(all_round=True)
    found = bench.result.rim
    for size in (found.least_diameter, found.greatest_diameter):
        assert f"{size:.2f} mm" in bench.text
    assert "tilted 3°" in bench.text


@pytest.mark.slow
@pytest.mark.parametrize("all_round", [False, True])
def test_code_and_move(all_round):
    """The line of code() rebuilds the bench; a moved scene shows what a fresh one shows."""
    bench = benches.edges(all_round=all_round)
    scene = bench.scene(bench.result, bench.look())
    drawing = scene.draw()
    assert isinstance(scene, Scene)
    bench.set(note=METRIC_CHAMFER, place=BORE, hole="1/4")
    assert scene.move(bench.drawn) == bench.text
    assert drawing.png(0.5) == bench.drawing.png(0.5)
    again = eval(bench.use("metric").code(), {"benches": benches})
    assert again.values == bench.values
    assert again.text == bench.text


@pytest.mark.slow
@pytest.mark.parametrize("all_round", [False, True])
def test_a_move_is_short_on_the_wire(all_round):
    """A step of the slider sends less than 3 kB once the page has the letters."""
    bench = benches.edges(all_round=all_round)
    picture = LivePicture(bench.scene(bench.result, bench.look()))
    sizes = []
    for thousandth in (*range(10, 100), *range(10, 100)):
        _, changes = picture.move(bench.set(width=thousandth * 0.0254).drawn)
        sizes.append(len(json.dumps(changes, separators=(",", ":"))))
    assert median(sizes[90:]) < 3000
