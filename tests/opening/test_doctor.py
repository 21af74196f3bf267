"""Looking the installation over."""

import json
import sys
from pathlib import Path

import pytest
from seatwork.opening import doctor


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
    assert "cannot be written" in check.found or "folder is needed" in check.found


def test_looking_leaves_nothing_behind(tmp_path: Path) -> None:
    """The trial file is taken away again."""
    assert doctor.write_access(tmp_path / "later" / "w").passed
    assert not list(tmp_path.iterdir())
