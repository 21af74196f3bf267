"""General tolerances of edges and angles: ISO 2768-1."""

import pytest
from seatwork import hardware
from seatwork.errors import SeatworkError

DATA = "edges"


def test_tolerance_of_a_broken_edge(edge_check) -> None:
    """ISO 2768-1 Table 2, by class and nominal size."""
    inputs = edge_check.inputs
    found = hardware.edge_tolerance(inputs["nominal_mm"], inputs["class"])
    assert edge_check.agrees(found.value)


def test_tolerance_of_an_angle(angle_check) -> None:
    """ISO 2768-1 Table 3, by class and shorter leg."""
    inputs = angle_check.inputs
    found = hardware.angle_tolerance(inputs["leg_mm"], inputs["class"])
    assert angle_check.agrees(found.value)


def test_an_edge_under_half_a_millimeter_has_no_general_tolerance() -> None:
    """Under 0.5 mm the tolerance stands at the dimension. Source: ISO 2768-1:1989."""
    with pytest.raises(SeatworkError, match="no tolerance here"):
        hardware.edge_tolerance(0.3)
    assert hardware.edge_tolerance(0.5).value == 0.2


@pytest.mark.parametrize(("tolerance_class", "degrees"), [("f", 0.5), ("c", 1.0), ("v", 2.0)])
def test_other_classes_of_angles_are_from_memory(tolerance_class, degrees) -> None:
    """Shorter leg 30 mm, classes f, c and v. Source: ISO 2768-1 Table 3, from memory."""
    found = hardware.angle_tolerance(30, tolerance_class)
    assert found.value == degrees
    assert found.caution == "from memory: check your copy"
