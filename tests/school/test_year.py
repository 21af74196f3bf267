"""A school year rehearsed: what befell a room, and how two share it, changes no cell."""

import importlib.util
import sys
from pathlib import Path
from types import ModuleType

import pytest

pytestmark = pytest.mark.long
ROOMS, LEARNERS, SHEETS = 3, 20, 12


@pytest.fixture(scope="module")
def rehearsal() -> ModuleType:
    """Load the command that plays it."""
    spec = importlib.util.spec_from_file_location(
        "rehearse_year", Path(__file__).with_name("rehearse_year.py")
    )
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module  # dataclasses look their module up
    spec.loader.exec_module(module)
    return module


def test_a_year_in_three_rooms(rehearsal, tmp_path: Path) -> None:
    """A laptop lost, a copy brought back, two instructors: the picture of a year without."""
    told = list(rehearsal.year(tmp_path, ROOMS, LEARNERS, SHEETS))
    assert len(told) == ROOMS
    for made, same in told:
        assert same, made.place.name
        assert made.befalls == ""
        assert rehearsal.faults(made.first) == []
    assert {"lost laptop", "bring back"} <= {what for made, _ in told for what in made.spent}
