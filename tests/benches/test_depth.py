"""The depth bench: one stop setting, two touch-offs, a resharpened nose, a stop that is off."""

import json
from statistics import median

import pytest
from seatwork import benches
from seatwork.benches.bank.depth_bench import (
    FACE,
    HOLE_EDGE,
    SHALLOW,
)
from seatwork.drawings.scene import GhostScene, Scene
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture

INCH = 25.4
QUARTER, TEN, SHEET, M6 = (
    "1/4 flat head 82° (frame)",
    "#10 flat head 82° (hopper plate)",
    "#10 flat head 100° (guard)",
    "M6 socket flat 90° (hopper plate)",
)


def test_it_opens_on_a_question(words):
    """First there is one seat that was set right, one button, and nothing told of number 2."""
    bench = benches.depth()
    assert [c.name for c in bench.controls if c.needs is None and not c.folded] == ["cut"]
    assert "How wide will number 2 be?" in words(bench)
    assert not any("0.537" in text for row in bench.readouts() for text in row)


def test_the_surprise():
    """Nose ground from .060 to .090, the same travel .2571 off the face: .507 becomes .537.

    Source: worked by hand from D = f + 2 T Z with T = tan 41° = .8693:
    (.507 - .060)/1.7386 = .2571, .090 + 1.7386 x .2571 = .537.
    """
    pair = benches.depth(cut=True).result.pair
    assert pair.first.travel / INCH == pytest.approx(0.2571, abs=5e-5)
    assert pair.second.travel == pair.first.travel
    assert pair.first.seat.diameter / INCH == pytest.approx(0.507)
    assert pair.second.seat.diameter / INCH == pytest.approx(0.537, abs=1e-9)


def test_touched_on_the_hole_edge_it_is_unchanged(words):
    """On the hole edge the nose plays no part: the seat stays .507, whatever the new nose."""
    bench = benches.depth(cut=True, touch=HOLE_EDGE)
    for nose in (0.0, 1.524, 2.286, 4.9):
        pair = bench.set(new_nose=nose).result.pair
        assert pair.second.seat == pair.first.seat
    assert pair.first.travel / INCH == pytest.approx(0.1386, abs=5e-5)
    assert "Number 2 is as wide as number 1" in words(bench)


@pytest.mark.parametrize("touch", [FACE, HOLE_EDGE])
def test_one_flat_of_a_stop_nut(touch):
    """One flat of a 20-thread stop nut is .0083 of travel and .0145 of diameter, at 82°.

    Source: 1/20/6 = .00833; 2 x .8693 x .00833 = .01449, by hand.
    """
    error = INCH / 20 / 6
    bench = benches.depth(cut=True, touch=touch, new_nose=1.524, stop_error=error)
    pair = bench.result.pair
    assert pair.wider / INCH == pytest.approx(0.0145, abs=2e-5)
    assert pair.second.travel - pair.first.travel == pytest.approx(error)


def test_the_screw_breaks_the_shop_s_rule():
    """In the resharpened seat the 1/4 head lies .0173 below, more than the .015 of the house rule.

    Source: (.537 - .507)/(2 x .8693) = .01726, by hand; .015 is common practice, no source.
    """
    bench = benches.depth(cut=True)
    assert bench.result.lies.amount / INCH == pytest.approx(-0.01726, abs=2e-5)
    assert not bench.result.within_rule
    row = bench.readouts()[-1]
    assert row == ["Screw in it", "0.017 in (0.44 mm) below, outside the rule"]


def test_a_stop_that_is_short_leaves_it_proud(words):
    """A stop .010 short, nothing resharpened, leaves the head .010 proud, and says so."""
    bench = benches.depth(cut=True, new_nose="0.060", stop_error="0.010", stop_way=SHALLOW)
    assert bench.readouts()[-1][1] == "0.010 in (0.25 mm) proud, outside the rule"
    assert "0.010 in too shallow" in words(bench)
    assert "0.010 in (0.25 mm) too shallow" in bench.text


@pytest.mark.parametrize(
    ("screw", "sharp", "hole", "angle"),
    [
        (QUARTER, 0.507 * INCH, 0.266 * INCH, 82),
        (TEN, 0.385 * INCH, 0.201 * INCH, 82),
        (SHEET, 0.385 * INCH, 0.201 * INCH, 100),
        (M6, 13.44, 6.6, 90),
    ],
)
def test_a_screw_brings_its_seat(screw, sharp, hole, angle):
    """A screw brings its theoretical sharp diameter, hole and angle, all from the lists.

    Sources: ASME B18.6.3 (.507, .385), ISO 10642 (13.44), drills H and #7, ISO 273 medium (6.6).
    """
    bench = benches.depth().set(screw=screw)
    seat = bench.result.pair.first.seat
    assert seat.diameter == pytest.approx(sharp)
    assert seat.hole_diameter == pytest.approx(hole, abs=1e-3)
    assert seat.included_angle == angle


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ({"hole": "13 mm"}, "hole"),
        ({"angle": 130}, "countersinks are ground from 60° to 120°"),
        ({"angle": "nan"}, "nan"),
        ({"nose": "6 mm"}, "ground back"),
        ({"stop_error": "1 mm"}, "mended"),
        ({"touch": "by eye"}, "no such choice"),
        ({"touch": HOLE_EDGE, "hole": "4 mm", "new_nose": "5 mm"}, "nose"),
        ({"touch": HOLE_EDGE, "hole": "4 mm", "nose": "5 mm"}, "does not enter"),
        ({"stop_error": "-0.5 mm"}, "has no sign"),
        (
            {"diameter": "7 mm", "stop_error": "0.5 mm", "stop_way": SHALLOW, "new_nose": 1.5},
            "hole",
        ),
        ({"diameter": "#10"}, "names a drill or a screw"),
        ({"new_nose": "<b>"}, "<b>"),
    ],
)
def test_errors_are_sentences_and_change_nothing(given, sentence):
    """What cannot be is told in a sentence; the bench stays as it was."""
    bench = benches.depth(cut=True)
    values, text = bench.values, bench.text
    with pytest.raises(SeatworkError) as refused:
        bench.set(**given)
    told = str(refused.value)
    assert sentence in told or sentence in refused.value.value
    assert (bench.values, bench.text) == (values, text)


@pytest.mark.slow
def test_the_text_carries_every_number():
    """The text twin has every number of the picture, in both systems."""
    bench = benches.depth(cut=True)
    for number in ("0.507 in (12.88 mm)", "0.537 in (13.64 mm)", "0.257 in (6.53 mm)",
                   "0.060 in (1.52 mm)", "0.090 in (2.29 mm)", "0.266 in (6.76 mm)",
                   "0.030 in (0.76 mm)", "0.139 in (3.52 mm)", "82°"):  # fmt: skip
        assert number in bench.text


def test_every_number_has_its_source():
    """The sources name the standard, the house rules, and what is from memory."""
    told = " ".join(benches.depth(cut=True).sources(benches.depth(cut=True).result))
    for word in ("B18.6.3", "flush.greatest_below", "0.015 in (0.38 mm)", "plane geometry",
                 "B94.11M", "measure your own"):  # fmt: skip
        assert word in told


def test_code_rebuilds_it():
    """The line that code() gives makes a bench with the same values and the same text."""
    bench = benches.depth(cut=True, touch=HOLE_EDGE, stop_error="0.1 mm", hole=6.8).use("metric")
    again = eval(bench.code(), {"benches": benches})
    assert again.values == bench.values
    assert again.text == bench.text


@pytest.mark.slow
def test_moved_is_fresh():
    """A moved scene shows, to the pixel, what a fresh one shows; the wall may stay as a ghost."""
    bench = benches.depth()
    scene = bench.scene(bench.result, bench.look())
    drawing = scene.draw()
    assert isinstance(scene, Scene)
    assert isinstance(scene, GhostScene)
    assert scene.move(bench.set(cut=True, new_nose=3.0).drawn) == bench.text
    assert drawing.png(0.5) == bench.drawing.png(0.5)


@pytest.mark.slow
def test_a_move_is_short_on_the_wire():
    """A step of the slider sends less than 2.5 kB once the page has the letters."""
    bench = benches.depth(cut=True)
    picture = LivePicture(bench.scene(bench.result, bench.look()))
    sizes = []
    for thousandth in (*range(40, 121), *range(40, 121)):
        _, changes = picture.move(bench.set(new_nose=thousandth * 0.0254).drawn)
        sizes.append(len(json.dumps(changes, separators=(",", ":"))))
    assert median(sizes[81:]) < 2500


@pytest.mark.parametrize("name", ["M8 socket flat head", "#8 flat head", "1/2 socket flat head"])
def test_any_flat_head_goes_on_the_bench(name):
    """A screw that is in no list of the shop brings its seat and hole, and code() keeps it."""
    bench = benches.depth(cut=True, screw=name)
    assert bench.code() == f"benches.depth(cut=True, screw={name!r})"
    assert eval(bench.code(), {"benches": benches}).text == bench.text


def test_a_head_without_a_cone_is_refused():
    """A hex cap screw has no countersink; which flat head is meant is asked."""
    with pytest.raises(SeatworkError, match="no cone"):
        benches.depth(screw="3/8 hex cap")
    with pytest.raises(SeatworkError, match="slotted, recessed or socket"):
        benches.depth(screw="M6 flat head")
