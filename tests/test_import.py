"""What ``import seatwork`` loads, and what each room leaves alone until it is needed."""

import json
import subprocess
import sys

import pytest

HEAVY = {"pandas", "matplotlib", "pint", "ipywidgets", "scipy"}
LIGHT_ROOMS = ("errors", "units", "seats", "cutting", "tables", "shop", "hardware", "notes", "cli")


def loaded(statement: str) -> set[str]:
    """Run a statement in a new Python and list the top-level modules it ends with."""
    script = f"{statement}\nimport json, sys\nprint(json.dumps(list(sys.modules)))"
    done = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=True
    )
    return {name.partition(".")[0] for name in json.loads(done.stdout)}


def test_the_package_loads_nothing_heavy() -> None:
    """``import seatwork`` loads none of pandas, matplotlib, pint, ipywidgets and scipy."""
    assert not loaded("import seatwork") & HEAVY


@pytest.mark.slow
def test_the_check_sees_a_heavy_library() -> None:
    """The check would see pint if it were loaded."""
    assert "pint" in loaded("import seatwork, pint")


@pytest.mark.slow
@pytest.mark.parametrize("room", LIGHT_ROOMS)
def test_a_light_room_loads_nothing_heavy(room: str) -> None:
    """The rooms below the drawings load their heavy library when it is called for, not before."""
    assert not loaded(f"import seatwork.{room}") & HEAVY
