"""``seatwork rules`` as typed in a terminal."""

from pathlib import Path

import pytest
from seatwork import opening, shop
from seatwork.cli.program import app
from typer.testing import CliRunner

RUNNER = CliRunner()


@pytest.fixture
def elsewhere(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Stand in a folder that belongs to no workbook."""
    monkeypatch.chdir(tmp_path)
    return tmp_path


def test_every_rule_is_listed_with_its_source(elsewhere: Path) -> None:
    """Each house rule has its value and its source on the list."""
    shown = RUNNER.invoke(app, ["rules"]).output
    for rule in shop.rules().values():
        assert f"{rule.name} = " in shown
        assert rule.source in shown


def test_a_word_narrows_the_list(elsewhere: Path) -> None:
    """With a word only the rules that hold it are shown, among them the 300 rev/min cap."""
    shown = RUNNER.invoke(app, ["rules", "countersink_cap"]).output
    assert shown.startswith("speeds.countersink_cap = 300 rev/min\n")
    assert "common practice, no source" in shown
    assert "flush" not in shown


def test_a_word_of_no_rule_is_told(elsewhere: Path) -> None:
    """A word that no rule holds gives a sentence and exit code 1."""
    done = RUNNER.invoke(app, ["rules", "zzz"])
    assert (done.exit_code, done.output) == (1, "No house rule holds the word 'zzz'.\n")


def test_a_changed_rule_names_file_and_line(elsewhere: Path) -> None:
    """A rule the instructor changed in the workbook shows the new value and where it is written."""
    folder = opening.deliver(elsewhere / "w").folder
    text = 'format = 1\n[speeds]\ncountersink_cap = "250 rev/min"\n'
    (folder / "shop" / "house_rules.toml").write_text(text)
    with pytest.MonkeyPatch.context() as there:
        there.chdir(folder / "notebooks")
        shown = RUNNER.invoke(app, ["rules", "countersink_cap"]).output
    assert "speeds.countersink_cap = 250 rev/min" in shown
    assert "house_rules.toml, line 3" in shown
