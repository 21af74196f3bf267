"""The service file of a hub: directives that systemd knows, and paths that mean themselves."""

import configparser
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.school import hub_recipe

DOCUMENTED = {
    "Unit": {"Description", "After"},
    "Service": {"ExecStart", "WorkingDirectory", "UMask", "Restart"},
    "Install": {"WantedBy"},
}
"""Sections and directives of systemd.unit(5), systemd.service(5) and systemd.exec(5), in use."""


def service(folder: Path) -> Path:
    """Write a recipe and return its service file."""
    return next(
        path for path in hub_recipe.write_recipe(folder, ["L01"]) if ".service" in path.name
    )


def test_every_directive_is_a_documented_one(tmp_path: Path) -> None:
    """A misspelt one would be passed over by systemd, which says so in its log alone."""
    read = configparser.ConfigParser(interpolation=None)
    read.optionxform = str
    read.read(service(tmp_path / "a hub of the atelier mécanique"), encoding="utf-8")
    assert {name: set(read[name]) for name in read.sections()} == DOCUMENTED
    assert read["Service"]["WorkingDirectory"] == str(tmp_path / "a hub of the atelier mécanique")
    begun = f'"{sys.executable}" -m jupyterhub -f "{tmp_path}/a hub of the atelier mécanique/'
    assert read["Service"]["ExecStart"] == f'{begun}jupyterhub_config.py"'
    assert int(read["Service"]["UMask"], 8) == 0o77
    assert read["Service"]["Restart"] == "on-failure"


@pytest.mark.slow
@pytest.mark.skipif(shutil.which("systemd-analyze") is None, reason="no systemd-analyze here")
def test_systemd_finds_nothing_wrong_with_it(tmp_path: Path) -> None:
    """`systemd-analyze verify` has no word to say of it, and has one of a misspelt directive."""
    good, bad = service(tmp_path / "hub é 2"), tmp_path / "bad.service"
    bad.write_text(good.read_text(encoding="utf-8").replace("UMask", "UMaks"), encoding="utf-8")
    told = {
        path: subprocess.run(
            ["systemd-analyze", "verify", str(path)], capture_output=True, encoding="utf-8"
        )
        for path in (good, bad)
    }
    ours = [line for line in told[good].stderr.splitlines() if good.name in line]
    assert (told[good].returncode, ours) == (0, [])
    assert "UMaks" in told[bad].stderr


@pytest.mark.parametrize("name", ["100%n", "$HOME", 'a "hub"', "it's", "back\\slash", "two\nlines"])
def test_a_folder_that_would_be_read_as_another_is_refused(tmp_path: Path, name: str) -> None:
    """A name in which systemd or a shell puts something else is told, and nothing is written."""
    with pytest.raises(SeatworkError, match="read as another by the service file"):
        hub_recipe.write_recipe(tmp_path / name, ["L01"])
    assert list(tmp_path.iterdir()) == []
