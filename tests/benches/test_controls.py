"""Controls: whole steps under exact values, both systems."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork.benches.build.controls import Number, Pick
from seatwork.benches.build.kinds import KINDS
from seatwork.benches.page.pick_box import PickBox
from seatwork.errors import SeatworkError
from seatwork.hardware import screw

DEPTH = Number(name="depth", label="Depth", low=1.0, high=20.0, start=5.0, why="so it is")


def test_a_step_is_a_thousandth_or_a_hundredth():
    """One step is .001 in or 0.01 mm; 507 steps are .507 in, which is 12.8778 mm."""
    assert DEPTH.at(507, "inch") == 12.8778
    assert DEPTH.at(1288, "metric") == 12.88


@given(step=st.integers(40, 787), system=st.sampled_from(["inch", "metric"]))
def test_steps_and_values_are_inverse(step, system):
    """The value of a step lies on that step."""
    low, high = DEPTH.steps(system)
    step = min(high, max(low, step))
    assert DEPTH.step(DEPTH.at(step, system), system) == step


@pytest.mark.parametrize("system", ["inch", "metric"])
def test_every_step_of_the_range_can_be_taken(system):
    """Both ends are inside the range, one step further is not."""
    low, high = DEPTH.steps(system)
    for step in (low, high):
        assert DEPTH.read(DEPTH.at(step, system), system) == DEPTH.at(step, system)
    assert DEPTH.at(low - 1, system) < DEPTH.low
    assert DEPTH.at(high + 1, system) > DEPTH.high


@pytest.mark.parametrize(
    ("kind", "text", "system", "says"),
    [
        ("length", "0.507 in", "inch", "0.507 in (12.88 mm)"),
        ("length", "12.7", "metric", "12.70 mm (0.500 in)"),
        ("angle", "82", "inch", "82°"),
        ("fine angle", "82.5°", "inch", "82.5°"),
        ("speed", "90", "inch", "90 sfm"),
        ("feed", ".004", "inch", "0.004 in/rev"),
        ("spindle", "688", "inch", "688 rev/min"),
        ("count", "6", "inch", "6"),
        ("ratio", "0.5", "inch", "0.5"),
    ],
)
def test_every_kind_reads_and_tells_its_own(kind, text, system, says):
    """What a person types comes back as a screen reader should say it, unit included."""
    sort = KINDS[kind]
    assert sort.both(sort.read(text, system), system) == says


@pytest.mark.parametrize("kind", sorted(KINDS))
def test_what_stands_in_a_box_can_be_typed_again(kind) -> None:
    """The text of every box is read back as the value it shows, in both systems."""
    sort = KINDS[kind]
    for system in ("inch", "metric"):
        shown = sort.boxed(sort.read("12", system), system)
        assert sort.boxed(sort.read(shown, system), system) == shown


SCREWS = ("M6 socket flat head", "1/4 hex cap")
SCREW = Pick(
    name="screw",
    label="Screw",
    listed=lambda: SCREWS,
    known=screw,
    start="M8 hex",
    others="a screw",
)


def test_a_pick_takes_names_that_are_in_no_list():
    """Its reader knows more screws than the list; one it does not know is refused."""
    assert SCREW.read(" #10 flat head ", "inch") == "#10 flat head"
    with pytest.raises(SeatworkError, match="slotted, recessed or socket"):
        SCREW.read("M6 flat head", "inch")
    with pytest.raises(SeatworkError, match="screw wants a name"):
        SCREW.read("  ", "inch")
    with pytest.raises(SeatworkError, match="screw wants a name"):
        SCREW.read(6.0, "inch")


def test_a_pick_begins_with_what_the_shop_has():
    """Where the shop's own list lacks the first name, its own first one takes the place."""
    assert SCREW.first == SCREWS[0]
    assert replace(SCREW, start=SCREWS[1]).first == SCREWS[1]
    with pytest.raises(SeatworkError, match="the shop's list has none for screw"):
        _ = replace(SCREW, listed=lambda: ()).first


def test_the_box_of_a_pick_takes_a_name_typed(monkeypatch):
    """The last entry opens a line; a name that is taken stands in the menu from then on."""
    asked = []
    trouble = {"M6 flat hat": "no such head"}
    box = PickBox(SCREW, lambda name: asked.append(name) or trouble.get(name, ""))
    box.lay(SCREWS[0])
    assert box.line.layout.display == "none"
    assert [value for _, value in box.menu.options] == [*SCREWS, ""]
    box.menu.value = ""
    assert box.line.layout.display is None
    box.line.value = "M6 flat hat"
    assert (asked, box.line.value) == (["M6 flat hat"], "M6 flat hat")
    box.line.value = "#10 flat head"
    box.lay("#10 flat head")
    assert box.menu.value == "#10 flat head"
    assert box.line.layout.display == "none"
    box.menu.value = SCREWS[1]
    assert asked == ["M6 flat hat", "#10 flat head", SCREWS[1]]


def test_names_that_an_asking_error_gives_are_offered():
    """Where several are meant, the menu offers each of them."""
    box = PickBox(SCREW, lambda name: "which one?")
    box.lay(SCREWS[0])
    box.line.value = "M6 flat head"
    values = [value for _, value in box.menu.options]
    assert values == [*SCREWS, "M6 flat head slotted screw", "M6 socket flat", ""]
    assert (box.menu.value, box.line.value) == ("", "M6 flat head")
