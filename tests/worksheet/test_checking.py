"""A learner's own copy before the referee: the finish cell comes from the original."""

import json
from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.worksheet.checking import check

EXERCISES = Path(__file__).resolve().parents[2] / "exercises"


def test_a_copy_without_its_finish_cell_does_not_pass(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Deleting or weakening the last cell does not help; the copy itself is not changed."""
    book = json.loads((EXERCISES / "cones.ipynb").read_text(encoding="utf-8"))
    book["cells"][-1]["source"] = "sheet  # sheet.finish() is not run"
    mine = tmp_path / "cones.ipynb"
    mine.write_text(json.dumps(book), encoding="utf-8")
    before = mine.read_bytes()
    monkeypatch.chdir(tmp_path)
    outcome = check(mine, EXERCISES / "cones.ipynb")
    assert not outcome.passed
    assert any("not yet, not answered: c1 c2 c3" in line for line in outcome.lines)
    assert mine.read_bytes() == before
    assert list(tmp_path.iterdir()) == [mine]


def test_a_path_is_taken_from_the_working_folder(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A sheet named as learners name it, from the folder above, is run and spoken of."""
    mine = tmp_path / "exercises" / "cones.ipynb"
    mine.parent.mkdir()
    mine.write_bytes((EXERCISES / "cones.ipynb").read_bytes())
    monkeypatch.chdir(tmp_path)
    outcome = check(Path("exercises/cones.ipynb"), EXERCISES / "cones.ipynb")
    assert any("not yet, not answered" in line for line in outcome.lines)


def test_a_worked_copy_passes(tmp_path: Path) -> None:
    """With every answer right the copy passes."""
    book = json.loads((EXERCISES / "cones.ipynb").read_text(encoding="utf-8"))
    answers = {"c1": '".211 in"', "c2": '".771 in"', "c3": '("b", ".022 in")'}
    for cell in book["cells"]:
        for name, answer in answers.items():
            if "".join(cell["source"]) == f'sheet.ask("{name}")':
                cell["source"] = f'sheet.ask("{name}", answer={answer})'
        if "".join(cell["source"]) == "sheet.finish()":
            cell["outputs"] = []
    mine = tmp_path / "cones.ipynb"
    mine.write_text(json.dumps(book), encoding="utf-8")
    assert check(mine, EXERCISES / "cones.ipynb").passed


@pytest.mark.parametrize("text", ["", "{}", "[]", "nothing"])
def test_what_is_no_notebook_is_told(tmp_path: Path, text: str) -> None:
    """A file that is no notebook gives one sentence."""
    mine = tmp_path / "cones.ipynb"
    mine.write_text(text, encoding="utf-8")
    with pytest.raises(SeatworkError, match="no notebook"):
        check(mine, EXERCISES / "cones.ipynb")
