"""``seatwork coverage`` as typed in a terminal."""

import csv
from pathlib import Path

import pytest
from seatwork import opening
from seatwork.cli.program import app
from seatwork.marking.outline import coverage
from typer.testing import CliRunner

RUNNER = CliRunner()


@pytest.fixture(autouse=True)
def elsewhere(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Stand in a folder that belongs to no workbook."""
    monkeypatch.chdir(tmp_path)
    return tmp_path


def test_every_code_is_listed_with_what_serves_it() -> None:
    """Code, competency, lessons, questions and sheets are on the screen, then a count of gaps."""
    shown = " ".join(RUNNER.invoke(app, ["coverage"]).output.split())
    found = coverage().codes
    for one in found:
        assert f"{one.code} {one.competency} lessons:" in shown
    assert f"{len(found)} codes, {sum(bool(one.gaps) for one in found)} with a gap." in shown


def test_only_gaps_are_shown_when_asked(elsewhere: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A code that is taught, asked and on a sheet is left out; one without questions is shown."""
    assert "0 with a gap" in RUNNER.invoke(app, ["coverage", "--gaps"]).output
    workbook = opening.deliver(elsewhere / "w").folder
    monkeypatch.chdir(workbook)
    outline = workbook / "shop" / "outline.csv"
    outline.write_text("code,competency\nS4,Cut a cone\nZ9,Sing a song\n", encoding="utf-8")
    shown = RUNNER.invoke(app, ["coverage", "--gaps"]).output
    assert "Z9  Sing a song" in shown
    assert "gap: no" in shown
    assert "S4  " not in shown


def test_a_word_narrows_the_report() -> None:
    """A word of the competency, in any case, is enough."""
    shown = RUNNER.invoke(app, ["coverage", "CHATTER"]).output
    assert shown.startswith("M3  Recognize chatter")
    assert "S4  " not in shown


def test_the_report_goes_to_a_spreadsheet_and_writes_over_nothing(elsewhere: Path) -> None:
    """A row for each code, read back as written; a file that is there stays unless told."""
    assert RUNNER.invoke(app, ["coverage", "--csv", "c.csv"]).exit_code == 0
    with (elsewhere / "c.csv").open(encoding="utf-8-sig", newline="") as file:
        rows = list(csv.DictReader(file))
    assert [row["code"] for row in rows] == [one.code for one in coverage().codes]
    again = RUNNER.invoke(app, ["coverage", "--csv", "c.csv"])
    assert again.exit_code == 1
    assert "there already" in str(again.exception)
    assert RUNNER.invoke(app, ["coverage", "--csv", "c.csv", "--replace"]).exit_code == 0


def test_a_list_to_begin_with_reads_back_as_it_was_written(
    elsewhere: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The list that is written changes nothing until a row of it is changed."""
    workbook = opening.deliver(elsewhere / "w").folder
    monkeypatch.chdir(workbook)
    before = coverage()
    file = workbook / "shop" / "coverage.csv"
    assert RUNNER.invoke(app, ["coverage", "--list", "shop/coverage.csv"]).exit_code == 0
    assert coverage() == before
    text = file.read_text(encoding="utf-8-sig")
    assert "question,seat-depth,S4\n" in text
    file.write_text(text.replace("seat-depth,S4", "seat-depth,M1"), encoding="utf-8")
    after = coverage()
    pairs = zip(before.codes, after.codes, strict=True)
    assert [old.code for old, new in pairs if old != new] == ["S4", "M1"]
    again = RUNNER.invoke(app, ["coverage", "--list", "shop/coverage.csv"])
    assert "there already" in str(again.exception)
