"""A sheet that is not done: one line in plain Python, and an error wherever it is run."""

import os
import subprocess
import sys
from pathlib import Path

import nbformat
import pytest
from nbformat import v4

pytestmark = pytest.mark.slow
PROJECT = Path(__file__).parents[2]
SHEET = "import seatwork as sw\ncones = sw.sheet('cones')\n"


def python(script: str, folder: Path, *asked: str) -> subprocess.CompletedProcess[str]:
    """Run lines in a new Python, from its file or typed at its prompt."""
    utf_8 = os.environ | {"PYTHONIOENCODING": "utf-8"}
    known = {"capture_output": True, "encoding": "utf-8", "cwd": folder, "env": utf_8}
    if asked:
        return subprocess.run([sys.executable, *asked], input=script, check=False, **known)
    (folder / "mine.py").write_text(script, encoding="utf-8")
    return subprocess.run([sys.executable, "mine.py"], check=False, **known)


def test_a_script_ends_in_one_line_and_with_1(tmp_path: Path) -> None:
    """Nothing but the line is told, and who started the script can see that it is not done."""
    done = python(f"{SHEET}cones.ask('c1', answer='.169 in')\ncones.finish()\n", tmp_path)
    (line,) = done.stderr.splitlines()
    assert line.startswith("Cones: not yet, not answered: c2 c3")
    assert done.returncode == 1


def test_at_the_prompt_work_goes_on_and_other_errors_are_told_as_ever(tmp_path: Path) -> None:
    """The line stands alone there, too; a fault of another kind still says where it is."""
    typed = f"{SHEET}cones.finish()\nprint('going', 'on')\n1 / 0\n"
    done = python(typed, tmp_path, "-i", "-q")
    told, _, after = done.stderr.partition("Traceback")
    assert "not answered: c1 c2 c3" in told
    assert "ZeroDivisionError" in after
    assert "going on" in done.stdout


def test_nbval_fails_a_sheet_that_is_not_worked(tmp_path: Path) -> None:
    """An unworked page with its line stored fails at that cell all the same, and at no other."""
    page = tmp_path / "unworked.ipynb"
    nbformat.write(nbformat.read(PROJECT / "exercises" / "cones.ipynb", v4.nbformat), page)
    asked = [sys.executable, "-m", "pytest", "--nbval", "--nbval-current-env", "-q", "-rA"]
    options = ["-p", "no:cacheprovider"]
    sanitize = ["--nbval-sanitize-with", str(PROJECT / "tests" / "nbval_sanitize.cfg")]
    known = {
        "capture_output": True,
        "encoding": "utf-8",
        "env": os.environ | {"PYTEST_ADDOPTS": ""},
    }
    done = subprocess.run([*asked, *options, *sanitize, page.name], cwd=tmp_path, **known)
    cells = len([one for one in nbformat.read(page, v4.nbformat).cells if one.cell_type == "code"])
    assert f"1 failed, {cells - 1} passed" in done.stdout
    assert "sheet.finish()" in done.stdout
