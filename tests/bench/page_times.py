"""How long a learner waits for a page: opened until its kernel is idle, then all cells run.

    python tests/bench/page_times.py [PAGE ...]

prints seconds per page on this computer, every lesson or those named, twice, in a JupyterLab
started by ``seatwork open`` and a real Chromium; the first page of all also loads JupyterLab.
The second column of each is the time beside that of a page with one empty cell in the same run.
"""

import importlib.util
import statistics
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from types import ModuleType

from playwright.sync_api import Page, sync_playwright

TESTS = Path(__file__).parents[1]
ROUNDS = 2
BARE = "notebooks/bare.ipynb"


def browser_helpers() -> ModuleType:
    """Load the browser tests' own way to serve and drive a workbook."""
    spec = importlib.util.spec_from_file_location("lab", TESTS / "browser" / "conftest.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["lab"] = module
    spec.loader.exec_module(module)
    return module


def seconds(deed: Callable[[], None]) -> float:
    """Tell how long a deed takes [s]."""
    began = time.perf_counter()
    deed()
    return time.perf_counter() - began


@contextmanager
def window(lab: ModuleType) -> Iterator[Page]:
    """Open a projector's window of a reader who was here before."""
    with sync_playwright() as playwright:
        program = lab.chromium_program(playwright.chromium.executable_path)
        browser = playwright.chromium.launch(executable_path=program, args=lab.ARGUMENTS)
        yield browser.new_page(viewport={"width": 1280, "height": 720})
        browser.close()


def measured(lab: ModuleType, served: object, page: Page, place: str) -> tuple[float, float]:
    """Time one page: open until idle, and all cells run [s]."""
    opened = seconds(lambda: served.open(page, place))
    ran = seconds(lambda: served.run_all(page))
    page.evaluate(lab.SHUT_DOWN)
    return opened, ran


def main(named: list[str]) -> None:
    """Measure in turns and print the table."""
    lab = browser_helpers()
    with (
        tempfile.TemporaryDirectory() as home,
        lab.serving(Path(home)) as served,
        window(lab) as page,
    ):
        lessons = sorted(path.name for path in served.folder.glob("notebooks/[01]*.ipynb"))
        places = [BARE, *(f"notebooks/{name}" for name in named or lessons)]
        served.write(BARE, ["0"])
        found: dict[str, list[tuple[float, float]]] = {place: [] for place in places}
        for _ in range(ROUNDS):
            for place in places:
                found[place].append(measured(lab, served, page, place))
        shown(found)


def shown(found: dict[str, list[tuple[float, float]]]) -> None:
    """Print the medians."""
    bare = [statistics.median(times) for times in zip(*found[BARE], strict=True)]
    sys.stdout.write(f"{'page':44}{'open s':>8}{'/bare':>7}{'run s':>8}{'/bare':>7}\n")
    for place, times in found.items():
        opened, ran = (statistics.median(one) for one in zip(*times, strict=True))
        row = f"{opened:8.1f}{opened / bare[0]:7.1f}{ran:8.1f}{ran / bare[1]:7.1f}"
        sys.stdout.write(f"{Path(place).name:44}{row}\n")


if __name__ == "__main__":
    main(sys.argv[1:])
