"""A head above its seat: everything that is given, nothing that is asked."""

import itertools

import pytest
from seatwork.drawings.parts.apart import head_over_seat
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.scene import Look
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink, Head


def part(head_angle=82, seat_angle=90, share=1.0, hole=0.525, height=None):
    """Seat a 1/4 flat head in a countersink `share` of its diameter."""
    head = Head(sharp_diameter=12.8778, included_angle=head_angle, height=height)
    diameter = 12.8778 * share
    seat = Countersink(diameter=diameter, hole_diameter=hole * diameter, included_angle=seat_angle)
    return SeatedHead(head=head, seat=seat)


def test_it_gives_sizes_and_angles_only():
    """The text carries both angles and all sizes, and neither amount, state nor contact."""
    text = head_over_seat(part()).text
    assert text == (
        "Section of an 82° head above a 90° seat, not yet let down: theoretical sharp diameter "
        "0.507 in (12.88 mm); seat, at the face 0.507 in (12.88 mm); hole 0.266 in (6.76 mm)."
    )


def test_no_contact_is_drawn():
    """No mark of contact is on the page: what touches is for the learner to say."""
    axes = head_over_seat(part()).figure.axes[0]
    contact = {"#b03000"}
    drawn = [line for line in axes.lines if line.get_color() in contact and len(line.get_xdata())]
    assert drawn == []


@pytest.mark.slow
@pytest.mark.parametrize("system", ["inch", "metric"])
def test_nothing_overlaps(system, faults):
    """Over steep and flat cones, wide and narrow holes, no words touch or are crossed."""
    for head, seat, share, hole in itertools.product(
        (60, 82, 120), (60, 90, 120), (0.7, 1.0, 1.8), (0.2, 0.5)
    ):
        drawing = head_over_seat(part(head, seat, share, hole), Look(system=system, projector=True))
        assert faults(drawing) == [], drawing.text


def test_what_cannot_sit_is_refused():
    """A head that would drop through its hole is told in a sentence."""
    with pytest.raises(SeatworkError, match="drops through"):
        head_over_seat(part(share=1.8, hole=0.9))
