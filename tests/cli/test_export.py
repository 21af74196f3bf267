"""The export command writes whole pages and overwrites nothing unasked."""

from pathlib import Path

from seatwork import opening
from seatwork.cli.program import app
from typer.testing import CliRunner

LESSON = opening.source() / "notebooks" / "02_angle_standards.ipynb"


def test_a_lesson_becomes_one_page_without_script_or_network(tmp_path: Path) -> None:
    """Pictures and words are inside; nothing is fetched and nothing runs."""
    done = CliRunner().invoke(app, ["export", str(LESSON), str(tmp_path)])
    assert done.exit_code == 0
    page = (tmp_path / "02_angle_standards.html").read_text(encoding="utf-8")
    assert "Which would you sign for?" in page
    assert "data:image/png" in page
    assert "<script" not in page
    assert 'src="http' not in page


def test_a_page_that_is_there_is_kept(tmp_path: Path) -> None:
    """Without --replace an older page stays as it was."""
    kept = tmp_path / "02_angle_standards.html"
    kept.write_text("mine", encoding="utf-8")
    done = CliRunner().invoke(app, ["export", str(LESSON), str(tmp_path)])
    assert done.exit_code != 0
    assert kept.read_text(encoding="utf-8") == "mine"
