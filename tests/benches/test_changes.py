"""The change of a readout says which way the head moved, not by how much its size differs."""

import pytest
from seatwork.benches.build.measures import Measure, table

MM = 25.4


def size(inches: float, note: str = "", label: str = "Head") -> Measure:
    """Return a readout of a size in inches."""
    return Measure(label, inches * MM, note=note)


@pytest.mark.parametrize(
    ("now", "kept", "said"),
    [  # worked by hand: .017 below is .034 lower than .017 proud
        (size(0.017, "below"), size(0.017, "proud"), "0.034 in (0.86 mm) lower"),
        (size(0.010, "proud"), size(0.005, "below"), "0.015 in (0.38 mm) higher"),
        (size(0.020, "below"), size(0.010, "below"), "0.010 in (0.25 mm) lower"),
        (size(0.020, "proud"), Measure("Head", "flush", kind="word"), "0.020 in (0.51 mm) higher"),
        (
            size(0.010, "or about 2 sheets", "Head below"),
            size(0.010, "or about 2 sheets", "Head proud"),
            "0.020 in (0.51 mm) lower",
        ),
        (
            size(0.020, "below, outside the rule"),
            size(0.005, "below, within the rule"),
            "0.015 in (0.38 mm) lower",
        ),
        (size(0.1, "below the face"), size(0.1, "over the face"), "0.200 in (5.08 mm) lower"),
        (size(0.1, "below"), size(0.2), "changed"),
        (size(0.1), size(0.1), "same"),
        (
            Measure("Quiet below", 600.0, kind="spindle"),
            Measure("Quiet below", 500.0, kind="spindle"),
            "+100 rev/min",
        ),
    ],
)
def test_a_head_is_said_to_stand_higher_or_lower(now: Measure, kept: Measure, said: str) -> None:
    """Proud and below count from the face, each its own way."""
    assert table((now,), (kept,), "inch")[0][3] == said
