"""How much of what the seats are checked against is from memory only."""

import csv
import sys
from pathlib import Path

import pytest

ROWS = Path(__file__).parent / "rows"
TOPICS = (
    "cones",
    "head_gaging",
    "ball_gaging",
    "bearing_bending",
    "tolerance_stack",
    "counterbore_geometry",
    "government_geometry",
)


def confirmed(topic: str) -> list[str]:
    """Read how each row of a topic is confirmed."""
    with (ROWS / f"{topic}.csv").open(encoding="utf-8") as file:
        return [row["confirmed"] for row in csv.DictReader(file)]


def test_the_share_from_memory_is_said(capsys: pytest.CaptureFixture[str]) -> None:
    """Under an eighth of the expected values for seats rest on memory alone, and it is printed."""
    kinds = {topic: confirmed(topic) for topic in TOPICS}
    everything = [kind for found in kinds.values() for kind in found]
    assert set(everything) <= {"two-source", "one-source", "memory"}
    with capsys.disabled():
        for topic, found in kinds.items():
            sys.stdout.write(f"\n{topic}: {found.count('memory')} of {len(found)} from memory")
        share = everything.count("memory") / len(everything)
        total = len(everything)
        sys.stdout.write(f"\nseats together: {share:.0%} of {total} values from memory\n")
    assert share < 1 / 8


@pytest.mark.parametrize("topic", TOPICS)
def test_every_row_names_its_source(topic: str) -> None:
    """No expected value comes without a source, a unit and a tolerance."""
    with (ROWS / f"{topic}.csv").open(encoding="utf-8") as file:
        for row in csv.DictReader(file):
            assert row["source"].strip(), row["id"]
            assert row["unit"].strip(), row["id"]
            assert float(row["tolerance"]) >= 0, row["id"]
