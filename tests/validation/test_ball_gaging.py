"""Worked examples of ball gaging against ``seats.angle_from_two_balls`` and ``ball_top``."""

import csv
import json
from pathlib import Path

import pytest
from seatwork.seats import Countersink, angle_from_two_balls, ball_top, diameter_from_ball

ROWS = list(
    csv.DictReader((Path(__file__).parent / "rows" / "ball_gaging.csv").open(encoding="utf-8"))
)


def found(row: dict[str, str]) -> float:
    """Work a row out: an angle from two balls, or the top of one."""
    inputs = json.loads(row["inputs"])
    if "ball_mm" in inputs:
        # the hole plays no part as long as the ball touches above it
        seat = Countersink(
            diameter=inputs["surface_dia_mm"], hole_diameter=1, included_angle=inputs["angle_deg"]
        )
        return ball_top(inputs["ball_mm"], seat)
    tops = (
        (inputs["top_small_mm"], inputs["top_big_mm"])
        if "top_big_mm" in inputs
        else (-inputs["small_below_face_mm"], inputs["big_above_face_mm"])
    )
    angle = angle_from_two_balls(inputs["d_small_mm"], inputs["d_big_mm"], *tops)
    return angle / 2 if "half angle asin" in row["statement"] else angle


@pytest.mark.outside("published example", "seats.angle_from_two_balls")
@pytest.mark.outside("closed form", "seats.ball_top")
@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['id']} {row['confirmed']}")
def test_published_balls(row: dict[str, str], outside) -> None:
    """A worked example of one or two balls comes out as it was worked."""
    assert outside.row(row, found(row))


@pytest.mark.outside("closed form", "seats.diameter_from_ball")
@pytest.mark.parametrize("row", [row for row in ROWS if "ball_mm" in row["inputs"]])
def test_published_balls_read_back(row: dict[str, str]) -> None:
    """The height of one ball gives the diameter at the face back."""
    inputs = json.loads(row["inputs"])
    diameter = diameter_from_ball(inputs["ball_mm"], float(row["expected"]), inputs["angle_deg"])
    # the height is printed to 0.0001 mm, which the cone turns into up to 0.00024 mm
    assert diameter == pytest.approx(inputs["surface_dia_mm"], abs=3e-4)
