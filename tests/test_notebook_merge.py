"""Two changes of one notebook come together cell by cell, and it opens whatever comes of it."""

import importlib.util
import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

pytestmark = pytest.mark.slow
PROJECT = Path(__file__).parents[1]
DRIVER = PROJECT / "tests" / "notebook_merge.py"
LESSON = PROJECT / "notebooks" / "06_reading_the_note.ipynb"


@pytest.fixture(scope="module")
def driver() -> Any:
    """Load the merge driver."""
    spec = importlib.util.spec_from_file_location("notebook_merge", DRIVER)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def cell(name: str, text: str, shown: str = "") -> dict[str, Any]:
    """Write a cell."""
    return {"id": name, "source": text.splitlines(keepends=True), "outputs": [shown]}


BASE = [cell("a", "x = 1\ny = 2\nz = 3"), cell("b", "print(x)", "1")]


def test_each_side_keeps_its_own_cell(driver) -> None:
    """One changed the first cell, the other the output of the second and added a third."""
    ours = [cell("a", "x = 5\ny = 2\nz = 3"), BASE[1]]
    theirs = [BASE[0], cell("b", "print(x)", "one"), cell("c", "more")]
    assert driver.merge(BASE, ours, theirs) == ([ours[0], *theirs[1:]], False)


def test_two_lines_of_one_cell_come_together(driver) -> None:
    """Lines apart in one cell are merged, and nobody needs to look."""
    ours, theirs = cell("a", "x = 5\ny = 2\nz = 3"), cell("a", "x = 1\ny = 2\nz = 7")
    cells, torn = driver.merge(BASE[:1], [ours], [theirs])
    assert ("".join(cells[0]["source"]), torn) == ("x = 5\ny = 2\nz = 7", False)


def test_one_line_changed_twice_is_marked(driver) -> None:
    """Both texts stay in the cell between git's marks, and the merge is not called done."""
    cells, torn = driver.merge(BASE[1:], [cell("b", "print(1)")], [cell("b", "print(2)")])
    text = "".join(cells[0]["source"])
    assert torn
    assert all(word in text for word in ("<<<<<<<", "print(1)", "=======", "print(2)", ">>>>>>>"))


def test_a_cell_taken_out_is_out_unless_the_other_side_changed_it(driver) -> None:
    """An unchanged cell goes; a changed one stays and asks for a look."""
    assert driver.merge(BASE, BASE[:1], BASE) == (BASE[:1], False)
    changed = [BASE[0], cell("b", "print(x, y)")]
    assert driver.merge(BASE, BASE[:1], changed) == (changed, True)


A, B, C, D = (cell(name, name) for name in "abcd")
THREE = [A, B, C]


@pytest.mark.parametrize("swap", [False, True], ids=["theirs moved", "ours moved"])
def test_cells_that_one_side_moved_stay_moved(driver, swap: bool) -> None:
    """One side put the last cell first, the other changed one: both hold, whichever is ours."""
    changed = cell("b", "B")
    sides = [A, changed, C], [C, A, B]
    assert driver.merge(THREE, *(sides[::-1] if swap else sides)) == ([C, A, changed], False)


def test_cells_that_both_sides_moved_ask_for_a_look(driver) -> None:
    """Ours stands, nothing is lost, and the merge is not called done; the same move is one."""
    assert driver.merge(THREE, [C, A, B], [B, A, C]) == ([C, A, B], True)
    assert driver.merge(THREE, [C, A, B], [C, A, B]) == ([C, A, B], False)


def test_a_new_cell_stays_behind_what_it_followed(driver) -> None:
    """Where that was taken out, behind the one before it, never at the top."""
    assert driver.merge(THREE, [A, C], [A, B, D, C]) == ([A, D, C], False)
    assert driver.merge(THREE, [A, B, D, C], [C, A, B]) == ([C, A, B, D], False)


def test_two_cells_of_one_name_are_both_kept(driver) -> None:
    """A copied cell keeps its name until the notebook is saved again; neither is lost."""
    twice = [A, {**B, "source": ["more"]}, cell("b", "b")]
    assert driver.merge(twice, twice, twice) == (twice, False)


def test_git_merges_a_lesson_by_it(tmp_path: Path) -> None:
    """In a clone that knows the driver two branches come together, though git alone could not."""
    git = ["git", "-c", "user.name=x", "-c", "user.email=x@example.org"]

    def give(*words: str) -> int:
        return subprocess.run([*git, *words], cwd=tmp_path, capture_output=True).returncode

    def write(first: str, last: str, branch: str) -> None:
        book = json.loads(LESSON.read_text(encoding="utf-8"))
        book["cells"] = [{**cell("a", first), "cell_type": "code"}, *book["cells"][:2]]
        book["cells"] += [{**cell("z", last), "cell_type": "code"}]
        (tmp_path / "a.ipynb").write_text(json.dumps(book, indent=1), encoding="utf-8")
        give("checkout", "-q", "-B", branch)
        assert give("commit", "-qam", branch) == 0

    give("init", "-q", "-b", "main")
    give("config", "merge.notebook.driver", f'"{sys.executable}" "{DRIVER}" %O %A %B')
    (tmp_path / ".gitattributes").write_text("*.ipynb merge=notebook\n", encoding="utf-8")
    (tmp_path / "a.ipynb").write_text("{}", encoding="utf-8")
    give("add", ".")
    write("one", "two", "main")
    write("ONE", "two", "ours")
    give("checkout", "-q", "main")
    write("one", "TWO", "theirs")
    assert give("merge", "-q", "-m", "both", "ours") == 0
    book = json.loads((tmp_path / "a.ipynb").read_text(encoding="utf-8"))
    assert [book["cells"][place]["source"] for place in (0, -1)] == [["ONE"], ["TWO"]]


def test_the_settings_name_the_driver() -> None:
    """Notebooks are shown as text and merged by cells in every clone that was told once."""
    lines = (PROJECT / ".gitattributes").read_text(encoding="utf-8").splitlines()
    assert "*.ipynb diff=notebook merge=notebook" in lines
