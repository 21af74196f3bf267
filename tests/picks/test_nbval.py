"""A page with picks under nbval: it passes before any bet, and with bets kept."""

import shutil
import subprocess
import sys
from pathlib import Path

import nbformat
import pytest
from nbformat import v4
from seatwork.marking.pick_file import Bet, PickFile

pytestmark = pytest.mark.slow

SANITIZE = Path(__file__).parents[1] / "nbval_sanitize.cfg"
CELLS = ["import seatwork as sw", 'sw.pick("angle-eight")', 'sw.pick("flush-box")']
BETS = {"angle-eight": Bet("a", True), "flush-box": Bet("90 0")}


def run(folder: Path) -> tuple[int, str]:
    """Run nbval on the page of a workbook; return how it ended and its last line."""
    command = [sys.executable, "-m", "pytest", "--nbval", "--nbval-current-env", "-q", "-rA"]
    options = ["-p", "no:cacheprovider", "--nbval-sanitize-with", str(SANITIZE)]
    done = subprocess.run(
        [*command, *options, "page.ipynb"],
        cwd=folder / "notebooks", capture_output=True, text=True, timeout=300, check=False,
    )  # fmt: skip
    return done.returncode, done.stdout


@pytest.fixture(scope="module")
def workbook(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Make a workbook with a page of two picks, stored as lessons are: without live views."""
    from nbclient import NotebookClient
    from seatwork.live.server import drop_views
    from seatwork.opening.workbook import deliver

    folder = tmp_path_factory.mktemp("lab") / "workbook"
    deliver(folder)
    kernel = {"name": "python3", "display_name": "Python 3", "language": "python"}
    page = v4.new_notebook(metadata={"kernelspec": kernel})
    page.cells = [v4.new_code_cell(source) for source in CELLS]
    NotebookClient(page, resources={"metadata": {"path": str(folder / "notebooks")}}).execute()
    drop_views(model={"type": "notebook", "content": page})
    nbformat.write(page, folder / "notebooks" / "page.ipynb")
    return folder


@pytest.mark.parametrize("bets", [{}, BETS], ids=["no bets", "bets kept"])
def test_run_all_passes(workbook: Path, bets: dict[str, Bet]) -> None:
    """The bet changes the living form alone, never what is stored."""
    shutil.rmtree(workbook / "answers", ignore_errors=True)
    if bets:
        PickFile("L00", bets).save(workbook / "answers")
    code, told = run(workbook)
    assert code == 0, told


def test_a_damaged_file_of_bets_stops_no_page(workbook: Path) -> None:
    """The form says so; the page runs and passes, and the file stays as it was."""
    path = workbook / "answers" / "L00-picks.json"
    path.parent.mkdir(exist_ok=True)
    path.write_text("{")
    code, told = run(workbook)
    assert code == 0, told
    assert path.read_text() == "{"
