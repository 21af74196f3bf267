"""What ``import seatwork`` loads, and what each room leaves alone until it is needed."""

import json
import subprocess
import sys
from pathlib import Path

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


ABSENT = (*sorted(LISTLESS | HEAVY), "anywidget", "traitlets", "sqlalchemy", "jupyter_core")
"""What the core does without; in a page taken home none of them is there."""
CORE = """
import sys
sys.modules |= dict.fromkeys({absent!r})
import random
import seatwork as sw
from seatwork.entries.asked import echo
from seatwork.questions import all_types, judge_all
plan = sw.make_plan({note!r}, material="6061 aluminum", machine="bench drill press")
print("plan", len(str(plan)) > 1000)
for kind in all_types().values():
    one = kind.draw(random.Random(1))
    one.ask(), one.worked(), one.drawn(), [part.slips for part in one.parts]
    right = [str(getattr(part, "rounded", part.answer)) for part in one.parts]
    assert all(verdict.is_right for verdict in judge_all(one, right)), kind.id
    [echo(text, part.asked) for text, part in zip(right, one.parts)]
desk = sw.sheet("cones")
for item in desk.plan.items:
    entry = desk.ask(item.id, answer=".001 in")
    assert all(entry.feedback) and entry.hint(0) and entry.worked()
    entry.renew()
print("desk", desk.ask("c1", answer=".001 in").verdicts[0].kind)
"""


@pytest.mark.slow
def test_the_core_works_where_no_arrays_are_installed(tmp_path: Path) -> None:
    """Notes, hardware, plan, questions, judging and the desk, with the heavy libraries blocked."""
    note = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
    script = CORE.format(absent=ABSENT, note=note)
    done = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, cwd=tmp_path
    )
    assert done.stdout.split("\n")[:2] == ["plan True", "desk wrong"], done.stderr
