"""Why did they get that number: single slips, pairs and factors."""

from decimal import Decimal
from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.marking import Handout, Sheet
from seatwork.marking.why import reasons, why
from seatwork.questions.bank.seat_depth import SeatDepth
from seatwork.questions.type.parts import NumberPart
from seatwork.record import forms

# .507 at the face on .266, 82°: 0.1386 deep; the wrong values worked out on paper.
SEAT = SeatDepth(diameter=12.8778, hole_diameter=6.7564, included_angle=82.0)


def part() -> NumberPart:
    """Give the one number that is asked for."""
    found = SEAT.parts[0]
    assert isinstance(found, NumberPart)
    return found


@pytest.mark.parametrize(
    ("typed", "how"),
    [
        (".1386", "right"),
        (".0169", "M01"),
        (".2772", "M02"),
        (".2916", "M03"),
        (".1047", "M04"),
        (".1837", "M08"),
        (".7500", "M06"),
        (".1205", "M07"),
        ("1.386", "ten times"),
        ("3.521", "25.4"),
        (".0339", "M01"),
    ],
)
def test_a_number_is_explained(typed: str, how: str) -> None:
    """The example of the misconception list, .507 on .266 at 82°, is explained row by row.

    The last row is two slips at once: whole angle and full difference, 2 × .0169.
    """
    assert any(how in reason.how for reason in why(part(), typed))


def test_pairs_are_kept_for_the_instructor() -> None:
    """A pair of slips is found here, and never told to a learner."""
    found = why(part(), ".0339")
    assert any("at once" in reason.how for reason in found)
    assert part().matching(Decimal(".0339"), Decimal(".0001")) == ()


def test_reasons_read_what_was_handed_out(
    course_folder: Path, sheet: Sheet, handouts: dict[str, Handout]
) -> None:
    """A learner's own numbers are looked up, a part by its letter."""
    record = forms(course_folder)
    asked = handouts["L01"].questions["q3"].parts[1]
    assert isinstance(asked, NumberPart)
    found = reasons(record, sheet, "L01", "q3b", str(asked.rounded))
    assert found[0].how == "right"
    with pytest.raises(SeatworkError, match="no number"):
        reasons(record, sheet, "L01", "q3a", "1")
    with pytest.raises(SeatworkError, match="not handed out"):
        reasons(record, sheet, "L77", "q1", "1")
