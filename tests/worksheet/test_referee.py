"""nbval as the referee of worksheets: a worked one passes, an open or a wrong one fails."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
EXERCISES = ROOT / "exercises"
SHEETS = sorted(path.stem for path in (EXERCISES / "sheets").glob("*.toml"))


def referee(notebook: Path) -> subprocess.CompletedProcess[str]:
    """Run nbval on one notebook, comparing every output."""
    return subprocess.run(
        [
            *(sys.executable, "-m", "pytest", "--nbval", "--nbval-current-env", "-q"),
            *("--nbval-sanitize-with", str(ROOT / "tests" / "nbval_sanitize.cfg")),
            *("-p", "no:cacheprovider", "-c", "/dev/null", str(notebook)),
        ],
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
        cwd=notebook.parent,
    )


def changed_copy(source: Path, folder: Path, old: str, new: str) -> Path:
    """Copy a notebook with one piece of one cell's code changed."""
    notebook = json.loads(source.read_text(encoding="utf-8"))
    count = 0
    for cell in notebook["cells"]:
        code = "".join(cell["source"])
        if cell["cell_type"] == "code" and old in code:
            cell["source"], count = code.replace(old, new), count + 1
    assert count == 1, f"{old} stands in {count} cells"
    target = folder / source.name
    target.write_text(json.dumps(notebook), encoding="utf-8")
    return target


def test_referee_passes_the_worked_sheet() -> None:
    """The model answers of the first worksheet pass, every output compared."""
    done = referee(EXERCISES / "worked" / "cones.ipynb")
    assert done.returncode == 0, done.stdout


def test_referee_fails_an_unworked_sheet(tmp_path: Path) -> None:
    """The worksheet as it is handed out fails, at its last cell, in one clean line."""
    source = EXERCISES / "cones.ipynb"
    copy = tmp_path / source.name
    copy.write_bytes(source.read_bytes())
    done = referee(copy)
    assert done.returncode == 1
    assert "1 failed" in done.stdout
    assert "Cones: not yet, not answered: c1 c2 c3" in done.stdout
    assert "desk.py" not in done.stdout


@pytest.mark.parametrize(
    ("right", "wrong"),
    [('".211 in"', '".422 in"'), ('".771 in"', '".589 in"'), ('("b", ".022 in")', '"a; .022 in"')],
)
def test_referee_fails_a_single_wrong_answer(tmp_path: Path, right: str, wrong: str) -> None:
    """A worked sheet with one wrong answer fails, and only its last cell does."""
    copy = changed_copy(EXERCISES / "worked" / "cones.ipynb", tmp_path, right, wrong)
    done = referee(copy)
    assert done.returncode == 1
    assert "1 failed, 4 passed" in done.stdout, done.stdout
    assert "not right: c" in done.stdout


def last_answer(source: Path) -> tuple[str, str]:
    """Find the last typed answer of a worked sheet, and a wrong one for it."""
    code = ["".join(cell["source"]) for cell in json.loads(source.read_text())["cells"]]
    typed = next(line for line in reversed(code) if "answer=" in line)
    inside = typed[typed.index("answer=") : -1]
    return inside, 'answer=("9.99", "9.99", "9.99", "9.99")'


@pytest.mark.long
@pytest.mark.parametrize("name", SHEETS)
def test_every_sheet_is_refereed(tmp_path: Path, name: str) -> None:
    """For each sheet the worked copy passes, the handed-out one and a wrong one fail."""
    worked = EXERCISES / "worked" / f"{name}.ipynb"
    assert referee(worked).returncode == 0
    unworked = tmp_path / f"{name}.ipynb"
    unworked.write_bytes((EXERCISES / f"{name}.ipynb").read_bytes())
    assert "not yet, not answered" in referee(unworked).stdout
    done = referee(changed_copy(worked, tmp_path, *last_answer(worked)))
    assert "not yet, not right" in done.stdout
    assert "1 failed" in done.stdout
