"""The export command writes whole pages and overwrites nothing unasked."""

import re
from pathlib import Path

import nbformat
import pytest
from seatwork import opening
from seatwork.cli.program import app
from seatwork.opening.export import export
from typer.testing import CliRunner

LESSON = opening.source() / "notebooks" / "02_angle_standards.ipynb"


@pytest.mark.slow
def test_a_lesson_becomes_one_page_without_network(tmp_path: Path) -> None:
    """Pictures, words and what moves them are inside; its own policy lets nothing be fetched."""
    done = CliRunner().invoke(app, ["export", str(LESSON), str(tmp_path)])
    assert done.exit_code == 0
    page = (tmp_path / "02_angle_standards.html").read_text(encoding="utf-8")
    assert "Which would you sign for?" in page
    assert "data:image/png" in page
    assert "<script src" not in page
    assert "default-src 'none'" in page
    assert 'src="http' not in page


def test_a_page_that_is_there_is_kept(tmp_path: Path) -> None:
    """Without --replace an older page stays as it was."""
    kept = tmp_path / "02_angle_standards.html"
    kept.write_text("mine", encoding="utf-8")
    done = CliRunner().invoke(app, ["export", str(LESSON), str(tmp_path)])
    assert done.exit_code != 0
    assert kept.read_text(encoding="utf-8") == "mine"


@pytest.mark.slow
def test_links_lead_to_pages_or_are_plain_words(tmp_path: Path) -> None:
    """Exported together, lessons link one another; what has no page is no link."""
    done = CliRunner().invoke(app, ["export", str(LESSON.parent), str(tmp_path)])
    assert done.exit_code == 0
    pages = list(tmp_path.glob("*.html"))
    assert len(pages) == len(list(LESSON.parent.glob("*.ipynb")))
    for page in pages:
        for where in re.findall(r'href="([^"#]*)', page.read_text(encoding="utf-8")):
            assert not where or (tmp_path / where).is_file(), f"{page.name} leads to {where}"


def test_a_fold_stays_a_fold_and_is_told_on_a_last_page(tmp_path: Path) -> None:
    """The answer of a pick stands inside closed folds alone, and on a page for paper only."""
    from nbformat import v4

    still = "**Your pick.** Which?\n\n- ☐ **a** one\n\n<details><summary>x</summary>\n\nRight: a.\n"
    page = v4.new_notebook()
    data = {"text/markdown": f"{still}\n</details>", "text/plain": "Your pick. Which?"}
    page.cells = [v4.new_code_cell("1", outputs=[v4.new_output("display_data", data)])]
    nbformat.write(page, tmp_path / "page.ipynb")
    told = export(tmp_path / "page.ipynb", tmp_path / "page.html").read_text(encoding="utf-8")
    fold = re.search(r"<details>(.*?)</details>", told, re.DOTALL)
    assert fold is not None
    assert "Right: a." in fold[1]
    assert told.count("Right: a.") == 2
    assert re.search(r'<section class="fold">.*Fold here.*Right: a\..*</section>', told, re.DOTALL)
    assert "⟦" not in told
