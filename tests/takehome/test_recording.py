"""A recorded slider is the live picture at every step: attributes, words and readouts."""

import pytest
from seatwork import benches
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture
from seatwork.takehome.choices import pictures
from seatwork.takehome.recording import record
from seatwork.units import explain

pytestmark = pytest.mark.slow

SLIDERS = {
    "angles": "cutter_angle", "depth": "new_nose", "counterbore": "depth", "gaging": "rise",
    "speeds": "diameter", "edges": "width", "flush": "diameter", "spotface": "tilt",
    "chatter": "speed", "on_the_hole": "off_center", "triangle": "step",
}  # fmt: skip
"""The slider that each bench is about; the spot face's depth would be an image at 250 steps."""
STRIDE = 23


def played(told: dict, frame: dict) -> list[dict]:
    """Return the state of every element as the page puts it together."""
    moved = frame["move"]
    return [state | moved.get(str(n), {}) for n, state in enumerate(told["page"]["state"])]


def shown(bench, picture: LivePicture, name: str, value: float) -> str:
    """Set one value and move the picture: what it shows in words, or why it is refused."""
    try:
        bench.set(**{name: value})
        with bench.as_read:
            part = bench.shows(bench.result)[1](bench.result, bench.system)
            return picture.move(part)[0]
    except SeatworkError as error:
        return explain(error, bench.system)


@pytest.mark.parametrize("name", SLIDERS)
def test_the_main_slider_is_recorded_as_the_live_bench_shows_it(name: str) -> None:
    """At every 23rd step, and the last: drawn anew, the picture has the same attributes."""
    bench = getattr(benches, name)()
    recording = record(bench)
    assert recording.control.name == SLIDERS[name]
    control, told = recording.control, recording.told
    bench.set(**recording.opens)
    scene = bench.scene(bench.result, bench.look())
    picture = LivePicture(scene)
    steps = range(len(told["frames"]))
    for at in {*steps[::STRIDE], steps[-1]}:
        frame = told["frames"][at]
        told_now = shown(bench, picture, control.name, control.at(told["first"] + at, bench.system))
        if "trouble" in frame:
            assert frame["trouble"] == told_now
            continue
        assert frame["text"] == told_now
        assert frame["rows"] == bench.readouts()
        assert played(told, frame) == picture.page()["state"]


def test_a_bench_is_left_as_it_was() -> None:
    """Recording sets it to and fro; afterwards it has the values it was given."""
    bench = benches.angles(cutter_angle=90)
    before = bench.values
    record(bench)
    assert bench.values == before


@pytest.mark.parametrize("name", ["note", "which_seat", "cutters", "slips"])
def test_a_bench_of_choices_shows_a_picture_for_each(name: str) -> None:
    """Each choice has words of its own, before its button and after it; the first stands first."""
    bench = getattr(benches, name)()
    assert record(bench) is None
    told = pictures(bench)
    assert told["start"] in [choice["name"] for choice in told["choices"]]
    shown = [tuple(still["text"] for still in choice["shown"]) for choice in told["choices"]]
    assert len(set(shown)) == len(shown) > 2
    assert {len(one) for one in shown} == {2}
