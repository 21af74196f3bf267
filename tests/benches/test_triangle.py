"""The triangle bench: five steps, three slips, and what the cone holds."""

import pytest
from seatwork import benches
from seatwork.benches.page.view import BenchView
from seatwork.errors import SeatworkError

INCH = 25.4


def test_each_step_brings_one_readout_and_nothing_before_it():
    """The frame's seat, .507 on .266 at 82°: difference, across, half the angle, down."""
    bench = benches.triangle(diameter=0.507 * INCH, hole=0.266 * INCH, angle=82)
    labels = ["Difference", "Across", "Half the angle", "Down"]
    for step in range(1, 6):
        bench.set(step=step)
        assert [row[0] for row in bench.readouts()] == labels[: step - 1]
    assert bench.readouts()[-1][1].startswith("0.139 in")


def test_the_slips_are_told_with_their_numbers():
    """.277, .017 and .292 of the frame's seat, worked by hand; at 100° one gives none."""
    bench = benches.triangle(
        diameter=0.507 * INCH, hole=0.266 * INCH, angle=82,
        whole_difference=True, whole_angle=True, to_the_point=True,
    )  # fmt: skip
    shown = dict(bench.readouts())
    assert shown["Slip, whole difference"].startswith("0.277 in")
    assert shown["Slip, whole angle"].startswith("0.017 in")
    assert shown["Slip, to the point"].startswith("0.292 in")
    assert dict(bench.set(angle=100).readouts())["Slip, whole angle"].startswith("no number")


@pytest.mark.parametrize("holds", ["a pin", "a ball", "a head"])
@pytest.mark.parametrize("screw", ["1/4 flat head 82° (frame)", "M20 socket flat", "#4 flat head"])
def test_what_is_laid_in_lies_on_the_cone_of_any_screw(holds, screw):
    """Pin, ball and head come in a size that lies on the cone, small screws and large."""
    bench = benches.triangle(step=5).set(holds=holds)
    bench.set(screw=screw)
    assert holds in bench.text
    assert eval(bench.code(), {"benches": benches}).text == bench.text


def test_what_does_not_lie_on_the_cone_is_refused_and_the_bench_stays():
    """A pin narrower than the hole drops through; the former picture stays."""
    bench = benches.triangle(holds="a pin")
    text = bench.text
    with pytest.raises(SeatworkError, match="drops through"):
        bench.set(held=3.0)
    assert bench.text == text


def test_only_a_new_step_slides():
    """A step slides its lines; a size that moves under the hand, or a slip, jumps."""
    bench = benches.triangle(step=2)
    view, told = BenchView(bench), []
    view.live.send = lambda message, *_: told.append(message)
    for change in ({"step": 3}, {"diameter": 12.0}, {"whole_angle": True}):
        bench.set(**change)
    assert [message["glide"] for message in told if "move" in message] == [True, False, False]
    view.close()
