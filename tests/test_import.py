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


LISTLESS = {"numpy", "matplotlib", "pandas", "pint", "IPython", "ipywidgets", "PIL"}
"""What reading, looking up, asking, marking and the desk of a worksheet do without."""


@pytest.mark.parametrize(
    "statement",
    [
        "import seatwork.notes.reading",
        "import seatwork as sw; sw.read('⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD')",
        "import seatwork as sw; sw.screw('#10 flat head'), sw.drill('#7'), sw.clearance_hole('M6')",
        "import seatwork as sw; sw.questions.all_types()",
        "import seatwork.marking.marker, seatwork.marking.handing_out",
        "import seatwork.worksheet.desk",
    ],
)
def test_reading_and_marking_load_no_arrays(statement: str) -> None:
    """Notes, hardware, questions, marking and the desk work without arrays, figures and widgets."""
    assert not loaded(statement) & LISTLESS
