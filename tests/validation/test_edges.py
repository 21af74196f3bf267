"""General tolerances of edges: ISO 2768-1."""

import pytest
from seatwork import hardware
from seatwork.errors import SeatworkError

DATA = "edges"


def test_tolerance_of_a_broken_edge(edge_check) -> None:
    """ISO 2768-1 Table 2, by class and nominal size."""
    inputs = edge_check.inputs
    found = hardware.edge_tolerance(inputs["nominal_mm"], inputs["class"])
    assert edge_check.agrees(found.value)


def test_an_edge_under_half_a_millimeter_has_no_general_tolerance() -> None:
    """Under 0.5 mm the tolerance stands at the dimension. Source: ISO 2768-1:1989."""
    with pytest.raises(SeatworkError, match="no tolerance here"):
        hardware.edge_tolerance(0.3)
    assert hardware.edge_tolerance(0.5).value == 0.2
