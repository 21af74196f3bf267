"""The inspection sheet: verdicts, charts, and a practical that only a person signs."""

from collections.abc import Callable
from pathlib import Path

import pytest
from seatwork import plan
from seatwork.cards import Pages, inspection_page
from seatwork.errors import SeatworkError
from seatwork.inspection import Inspection, inspect, read_readings
from seatwork.plan.part_files import plan_part

DEMO = Path(plan.__file__).parent / "demo"


@pytest.fixture(scope="module")
def found() -> Inspection:
    """Judge the demo's measured parts of hopper plate and frame pad."""
    plans = {
        name: made
        for part in ("hopper_plate", "frame_pad")
        for name, made in plan_part(DEMO / f"{part}.csv").plans.items()
    }
    return inspect(read_readings(DEMO / "measured.csv", features=tuple(plans)).measured, plans)


@pytest.mark.slow
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_nothing_is_small_clipped_or_overlapping(
    found: Inspection, paper: str, faults: Callable[[Pages], list[str]]
) -> None:
    """Every letter is 12 pt or more, on the page and clear of the others."""
    assert faults(inspection_page(found, "lid screws", paper=paper)) == []


@pytest.mark.slow
def test_every_part_stands_with_sign_and_word(found: Inspection) -> None:
    """A verdict is a sign and a word, so that it does not hang on color."""
    said = [word for page in inspection_page(found, "lid screws").words for word in page]
    for part in found.parts:
        if part.measured.feature == "lid screws":
            assert part.measured.part in said
            assert any(word.startswith(f"{part.mark} ") for word in said)


@pytest.mark.slow
def test_the_practical_is_signed_by_a_person(found: Inspection) -> None:
    """Finish, burrs and safety are left open, and the page clears nobody."""
    said = " ".join(word for page in inspection_page(found, "lid screws").words for word in page)
    for name in ("Finish", "Burrs", "Safety", "clears nobody", "too few"):
        assert name in said


@pytest.mark.parametrize(("feature", "quantity"), [("axle", "diameter"), ("lid screws", "color")])
def test_what_was_not_measured_is_refused(found: Inspection, feature: str, quantity: str) -> None:
    """A feature or a quantity nobody measured gets one sentence."""
    with pytest.raises(SeatworkError):
        inspection_page(found, feature, quantity=quantity)
