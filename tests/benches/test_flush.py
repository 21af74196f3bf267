"""The flush bench: one seat for a whole box of screws, and the box for which there is none."""

import json
from statistics import median

import numpy as np
import pytest
from seatwork import benches
from seatwork.benches.bank.flush_bench import ALL_ANGLES
from seatwork.drawings.scene import Scene
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture
from seatwork.seats import Countersink, Head, fit

QUARTER, TEN, SHEET = (
    "1/4 flat head 82° (frame)",
    "#10 flat head 82° (hopper plate)",
    "#10 flat head 100° (guard)",
)

INCH = 25.4


def test_it_opens_on_a_box_that_no_seat_can_hold(words):
    """1/4 heads gage .029 to .050: .021 apart, .015 allowed: no seat does it for all.

    Source: ASME B18.6.3 gage protrusion; .050 - .029 = .021; .015 is common practice, no source.
    """
    bench = benches.flush()
    assert not bench.result.range.exists
    assert bench.result.range.spread / INCH == pytest.approx(0.021, abs=1e-6)
    assert "No one seat fits them all: heads 0.021 in apart, 0.015 in allowed" in words(bench)
    assert bench.readouts()[2] == ["Seat for all", "none: try the screws"]
    assert "try the screws, or sort them" in bench.text


def test_the_shares_are_those_of_the_drawn_heads():
    """Evenly spread heads of .021 in an exact .507 seat: the sum by hand, within 2 %.

    Source: .507 lies (.507 - .424)/1.7386 = .04774 above the gage, so heads from .029 to
    .03274 are more than .015 deep, 3.74 of 21 parts, and from .04774 up proud, 2.26 of 21.
    """
    bench = benches.flush(tolerance=0.0)
    deep, _, proud = (
        float(np.mean(bench.result.heights < -0.381)),
        0,
        float(np.mean(bench.result.heights > 0.005)),
    )
    assert deep == pytest.approx(3.74 / 21, abs=0.02)
    assert proud == pytest.approx((2.26 - 0.2) / 21, abs=0.02)
    assert sum(float(row[1].split()[0]) for row in bench.readouts()[:1]) == pytest.approx(73, abs=3)


def test_a_box_that_shares_a_seat():
    """The #10 100° heads gage .021 to .034, .013 apart: one exact seat does it, and is named.

    Source: ASME B18.6.3 100° heads, gage protrusion .021 to .034.
    """
    bench = benches.flush(screw=SHEET)
    found = bench.result.range
    assert found.exists
    assert found.spread / INCH == pytest.approx(0.013, abs=1e-6)
    middle = (found.least + found.greatest) / 2
    exact = benches.flush(screw=SHEET, diameter=middle, tolerance=0.0)
    assert exact.readouts()[0] == ["Within the rule", "100 %"]


@pytest.mark.parametrize("screw", [QUARTER, TEN, SHEET])
@pytest.mark.parametrize("diameter", [9.0, 12.9, 15.0])
def test_no_head_is_worse_than_the_worst(screw, diameter):
    """Every head drawn lies between the two that are shown as worst."""
    bench = benches.flush(screw=screw, diameter=diameter, tolerance=0.1)
    box, found = bench.result.box, bench.result.range
    ends = []
    for head, wide in ((found.lowest_head, 0.1), (found.highest_head, -0.1)):
        seat = Countersink(
            diameter=diameter + wide,
            hole_diameter=box.hole_diameter.least,
            included_angle=box.seat_angle[0],
        )
        ends.append(fit(Head(sharp_diameter=head.sharp_diameter,
                             included_angle=head.included_angle), seat).amount)  # fmt: skip
    assert ends[0] - 1e-9 <= bench.result.heights.min()
    assert bench.result.heights.max() <= ends[1] + 1e-9


def test_heads_of_other_angles_spread_farther():
    """Heads from 80° to 82°, as the standard allows, lie farther apart than heads of 82°."""
    apart = [benches.flush(heads=h).result.range.spread for h in (ALL_ANGLES,)]
    assert apart[0] > benches.flush().result.range.spread


def test_the_same_box_every_time():
    """Two benches draw the same heads: stored pictures do not change from run to run."""
    assert np.array_equal(benches.flush().result.heights, benches.flush().result.heights)


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ({"diameter": "9 in"}, "every screw of the lists"),
        ({"hole": "8 mm", "diameter": "8 mm"}, "hole"),
        ({"tolerance": "1 mm"}, "mended first"),
        ({"angle": 130}, "ground from 60° to 120°"),
        ({"screw": "M6"}, "which head"),
        ({"screw": "M2 slotted flat"}, "no document held here"),
        ({"screw": "1/2 hex cap"}, "no cone"),
        ({"diameter": "nan"}, "nan"),
    ],
)
def test_errors_are_sentences_and_change_nothing(given, sentence):
    """What cannot be is told in a sentence; the bench stays as it was."""
    bench = benches.flush()
    values, text = bench.values, bench.text
    with pytest.raises(SeatworkError) as refused:
        bench.set(**given)
    assert sentence in f"{refused.value.value} {refused.value}"
    assert (bench.values, bench.text) == (values, text)


@pytest.mark.slow
def test_text_and_sources_carry_the_numbers():
    """The text twin has shares, rule and worst heads in both systems; the sources name rules."""
    bench = benches.flush()
    for number in ("17 %", "73 %", "0.015 in (0.38 mm)", "0.021 in (0.53 mm)", "proud", "below",
                   "0.504 in (12.80 mm)", "0.510 in (12.95 mm)"):  # fmt: skip
        assert number in bench.text
    told = " ".join(bench.sources(bench.result))
    for word in ("B18.6.3", "0.029 in (0.74 mm)", "flush.greatest_below", "drawn evenly"):
        assert word in told


@pytest.mark.slow
def test_code_and_move():
    """The line of code() rebuilds the bench; a moved scene shows what a fresh one shows."""
    bench = benches.flush()
    scene = bench.scene(bench.result, bench.look())
    drawing = scene.draw()
    assert isinstance(scene, Scene)
    bench.set(screw=TEN, tolerance="0.1 mm", heads=ALL_ANGLES)
    assert scene.move(bench.drawn) == bench.text
    assert drawing.png(0.5) == bench.drawing.png(0.5)
    again = eval(bench.use("metric").code(), {"benches": benches})
    assert again.values == bench.values
    assert again.text == bench.text


@pytest.mark.slow
def test_a_move_is_short_on_the_wire():
    """A step of the slider sends less than 3 kB once the page has the letters."""
    bench = benches.flush()
    picture = LivePicture(bench.scene(bench.result, bench.look()))
    sizes = []
    for tenth in (*range(120, 140), *range(120, 140)):
        _, changes = picture.move(bench.set(diameter=tenth / 10).drawn)
        sizes.append(len(json.dumps(changes, separators=(",", ":"))))
    assert median(sizes[20:]) < 3000
