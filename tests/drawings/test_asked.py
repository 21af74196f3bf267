"""Sketches for questions: every label in its place, whatever the numbers."""

import subprocess
import sys
from random import Random

import pytest
from matplotlib.backends.backend_agg import RendererAgg
from matplotlib.text import Text
from seatwork.drawings.sketches import balls, bores, castings, cones, edges, heads
from seatwork.drawings.sketches.prints import Print, fitted, print_of
from seatwork.drawings.sketches.screws import SCREW, screw_in_frame
from seatwork.questions import all_types

SKETCHED = sorted(
    name
    for name, kind in all_types().items()
    if (drawing := kind.draw(Random(0)).drawing()) and drawing.figure.get_size_inches()[1] < 5
)
RENDERER = RendererAgg(1280, 430, 100)


@pytest.mark.slow
@pytest.mark.parametrize("name", SKETCHED)
def test_labels_stay_on_the_page_and_apart(name, faults):
    """No label leaves the page or covers another; one in a line has paper of its own."""
    for state in range(3):
        for system in ("inch", "metric"):
            drawing = all_types()[name].draw(Random(state)).stated_in(system).drawing()
            found = [fault for fault in faults(drawing) if "a line crosses" not in fault]
            assert found == []
            high = drawing.figure.get_size_inches()[1] * 100
            for text in drawing.figure.axes[0].findobj(Text):
                if text.get_text():
                    box = text.get_window_extent(RENDERER)
                    assert 0 <= box.y0 < box.y1 <= high, f"{text.get_text()!r} leaves the page"


def test_most_sketches_are_here():
    """The sketches are found by their page, lower than that of a bench."""
    assert len(SKETCHED) >= 34


@pytest.mark.parametrize(
    ("draw", "names"),
    [
        (castings.round_boss, castings.BOSS),
        (edges.broken_edge, edges.EDGE),
        (edges.thread_chamfer, edges.CHAMFER),
        (bores.screw_in_bore, bores.BORES),
        (bores.pilot_in_hole, bores.PILOT),
        (heads.head_over_seat, heads.HEADS),
        (heads.seat_beside_axis, heads.BESIDE),
        (cones.cone_cut, cones.CONE),
        (screw_in_frame, SCREW),
        (castings.sloped_pad, castings.PAD),
    ],
)
def test_every_size_of_a_sketch_is_shown(draw, names):
    """A label given for any size stands on the page, and is told in the text."""
    for name in names:
        needed = {"leg": "1.5 mm"} if draw is edges.broken_edge else {}
        drawing = draw({**needed, name: "4.25 mm"})
        page = [text.get_text() for text in drawing.figure.axes[0].texts]
        assert any("4.25 mm" in text for text in page), name
        assert f"{names[name]} 4.25 mm" in drawing.text


def test_balls_show_one_or_two():
    """One ball is named ball, two are named small and large."""
    two = balls.gage_balls({"small": "6 mm", "large": "9 mm", "angle": "?"})
    assert two.text.startswith("Two gage balls, one after the other, in a seat, not to scale: ")
    assert "included angle to be found" in two.text
    one = balls.gage_balls({"ball": "9 mm", "top": "?"})
    assert "top of the ball above the face to be found" in one.text


def test_a_note_is_lettered_with_its_signs():
    """The note stands beside its leader, run by run, and whole in the text."""
    drawing = print_of(Print(note="4X ⌀.266 THRU ⌵ ⌀.507 X 82°", thickness=".250"))
    runs = [text.get_text() for text in drawing.figure.axes[0].texts if text.get_text()]
    assert runs == [".250", "4X", ".266 THRU", ".507 X 82°"]
    assert drawing.text.startswith("A corner of a print")
    assert "Its note: 4X ⌀.266 THRU ⌵ ⌀.507 X 82°" in drawing.text
    assert drawing.text.endswith("The plate is .250 thick")


def test_a_long_note_breaks_before_a_sign_or_after_a_comma():
    """No size is torn apart, and nothing of the note is lost."""
    note = "#7 X .63 DP, 1/4-20 UNC-2B X .38 DP, CSK ⌀.270 X 90°"
    size, lines = fitted(note, 800.0)
    assert " ".join(lines) == note
    assert all(line.endswith(",") for line in lines[:-1])
    assert size >= 15


def test_a_sketch_loads_no_pyplot():
    """A question's drawing keeps no figure alive and loads no window."""
    code = (
        "import sys; from seatwork.drawings.sketches.castings import round_boss;"
        "round_boss({'depth': '?'}).png(0.5); assert 'matplotlib.pyplot' not in sys.modules"
    )
    subprocess.run([sys.executable, "-c", code], check=True)
