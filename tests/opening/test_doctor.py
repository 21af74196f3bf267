"""Looking the installation over."""

import json
import os
import sys
from pathlib import Path

import pytest
from seatwork.cli import program
from seatwork.opening import doctor, trial
from typer.testing import CliRunner


@pytest.mark.slow
def test_this_installation_is_well(tmp_path: Path) -> None:
    """Every check passes where the tests themselves run, and each is named once."""
    checks = list(doctor.examine(tmp_path))
    assert [check for check in checks if not check.passed] == []
    names = [check.name for check in checks]
    assert len(names) == len(set(names)) >= 10


def test_an_old_python_is_told_with_the_version_to_install() -> None:
    """Python 3.10 is too old; the fix names 3.11."""
    check = doctor.python((3, 10, 14))
    assert (check.found, check.fix) == ("3.10.14", "install Python 3.11 or newer")


def test_a_dead_clock_is_told() -> None:
    """A computer that believes in 1970 would date records wrongly."""
    assert not doctor.clock(86_400.0).passed


def test_a_kernel_of_another_installation_is_told(tmp_path: Path) -> None:
    """A kernel whose Python has no seatwork is named, with the right command."""
    check = doctor.kernel_versions(str(tmp_path / "elsewhere" / "python"))
    assert "lacks some of seatwork" in check.found
    assert sys.executable in check.fix


@pytest.mark.parametrize(("manager", "fits"), [("5.0.16", True), ("3.1.0", False)])
def test_a_page_part_of_another_version_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, manager: str, fits: bool
) -> None:
    """The page's widgets of ipywidgets 7 (version 3) shadowing the right ones are a fault."""
    from importlib.metadata import version

    for name, number in {
        "@jupyter-widgets/jupyterlab-manager": manager,
        "anywidget": version("anywidget"),
    }.items():
        home = tmp_path / "labextensions" / name
        home.mkdir(parents=True)
        (home / "package.json").write_text(json.dumps({"version": number}))
    monkeypatch.setenv("JUPYTER_PATH", str(tmp_path))
    assert doctor.page_parts().passed is fits


def test_a_folder_nobody_can_write_is_told() -> None:
    """The sentence of the refusal is what was found."""
    if not Path("/proc").is_dir():
        pytest.skip("needs the system's own read-only folder")
    check = doctor.write_access(Path("/proc/w"))
    assert not check.passed
    assert "cannot be opened or written" in check.found or "folder is needed" in check.found


def test_looking_leaves_nothing_behind(tmp_path: Path) -> None:
    """The trial file is taken away again."""
    assert doctor.write_access(tmp_path / "later" / "w").passed
    assert not list(tmp_path.iterdir())


@pytest.mark.slow
def test_a_trial_that_fails_is_told_and_the_others_still_run(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A lark that does not load fails the plan, with its own word; the drawing is made."""
    broken(tmp_path, "lark", monkeypatch)
    plan, drawing, *_ = doctor.trials(sys.executable)
    assert (plan.name, plan.found) == ("makes a plan", "ImportError: no such part")
    assert not plan.passed
    assert drawing.passed


def broken(folder: Path, library: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Let a library that does not load stand before the real one, in new processes."""
    said = "raise ImportError('no such part')\n"
    (folder / f"{library}.py").write_text(said, encoding="utf-8")
    monkeypatch.setenv("PYTHONPATH", str(folder))


@pytest.mark.slow
def test_a_library_that_ends_python_is_a_fault(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where matplotlib brings Python down, what comes after it is not said to be well."""
    (tmp_path / "matplotlib.py").write_text("import os\nos._exit(7)\n", encoding="utf-8")
    monkeypatch.setenv("PYTHONPATH", str(tmp_path))
    checks = {check.name: check for check in doctor.trials(sys.executable)}
    assert checks["makes a plan"].passed
    assert checks["makes a drawing"].found == "Python ended with 7"
    assert not checks["makes a question"].passed


def test_looking_that_fails_is_itself_the_fault() -> None:
    """A part that cannot even be looked at is told in one line, not as a traceback."""

    def look() -> doctor.Check:
        raise AttributeError("no such thing\nand more")

    check = doctor.looked("the page", look)
    assert (check.name, check.found) == ("the page", "AttributeError: no such thing")
    assert not check.passed


@pytest.mark.slow
@pytest.mark.parametrize(
    ("library", "made"), [("lark", "a plan"), ("pint", "a length from pint"), ("pandas", "a table")]
)
def test_one_fault_is_enough_for_the_command(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, library: str, made: str
) -> None:
    """With one library that fails ``seatwork doctor`` ends with 1, and does not say all is well."""
    broken(tmp_path, library, monkeypatch)
    done = CliRunner().invoke(program.app, ["doctor", str(tmp_path)])
    assert done.exit_code == 1
    assert f"FAULT  makes {made}: ImportError: no such part" in done.output
    assert "All is well" not in done.output


@pytest.mark.parametrize("name", trial.TRIALS)
def test_every_trial_passes_here(name: str) -> None:
    """Each trial, run in this process, finds no fault."""
    assert trial.TRIALS[name]() == ""


@pytest.mark.skipif(os.name != "posix", reason="permissions of this kind are POSIX")
def test_a_course_that_others_can_open_is_told(tmp_path: Path) -> None:
    """A course folder open to other accounts is named with its fix."""
    assert doctor.privacy(tmp_path).passed
    course = tmp_path / "course"
    course.mkdir()
    (course / "course.key").touch()
    course.chmod(0o755)
    check = doctor.privacy(tmp_path)
    assert not check.passed
    assert f"chmod 700 {course}" in check.fix
    course.chmod(0o700)
    assert doctor.privacy(tmp_path).passed
