"""One table of all benchmarks in one run: what it costs here, beside a yardstick of the same run.

    python tests/bench/table.py                # print it
    python tests/bench/table.py --write        # and write toolkit/proof/benchmarks.md
    python tests/bench/table.py --no-browser   # without what needs a browser

Times are this machine's; the ratios and the growth are what another machine can be held to.
"""

import argparse
import datetime
import json
import os
import platform
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import numpy as np
from seatwork import notes, plan
from seatwork.shop.shop import Shop

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
sys.path.insert(1, str(Path(__file__).resolve().parents[2]))  # where `tests` is found

from bench.rows_of_a_term import of_marking, of_record
from bench.rows_of_costs import of_costs
from bench.rows_of_pages import of_benches, of_home
from bench.timed import Timed, beside, grown, part, runs

HERE = Path(__file__).resolve().parent
PROJECT = HERE.parents[1]
PAGE = PROJECT / "toolkit" / "proof" / "benchmarks.md"
SIZES = (1, 10, 100)
BUSY = 0.5  # processes that want a core, beside the cores there are
TITLE = """# Benchmarks

Written by `python tests/bench/table.py --write`: everything of one run, one after the other. Times
are processor time, that of started processes too, on the machine below, as busy as it was; a busy
machine makes each of them longer all the same. What a reader of a page waits for is by the clock.
What another machine can be held to is the ratio to a yardstick that was timed in the same run, and
the growth. No quick test asserts any of it; `pytest tests/bench -m bench` holds the ratios.
"""


def of_starting() -> Iterator[Timed]:
    """Time the start of Python with and without the package, and an export of the lessons."""

    def start(statement: str) -> Callable[[], object]:
        return lambda: subprocess.run([sys.executable, "-c", statement], check=True)

    numpy = Timed("a start of Python with `import numpy`", runs(start("import numpy")))
    bare = Timed("a start of Python", runs(start("pass")))
    ours = Timed("a start with `import seatwork`", runs(start("import seatwork")))
    yield bare
    yield numpy
    yield Timed(ours.what, ours.taken, f"{beside(ours, bare)}; {beside(ours, numpy)}")


def of_export() -> Iterator[Timed]:
    """Time the export of one lesson as a page that needs no network."""
    lesson = sorted((PROJECT / "notebooks").glob("01_*.ipynb"))[0]
    with tempfile.TemporaryDirectory() as made:
        source, pages = Path(made) / "lessons", Path(made) / "pages"
        source.mkdir()
        shutil.copy(lesson, source)
        asked = [sys.executable, "-m", "seatwork.cli", "export", str(source), str(pages)]
        asked.append("--replace")
        yield Timed("export one lesson by the command", runs(lambda: quiet(asked), 2))


def quiet(asked: list[str]) -> None:
    """Run a command and keep its words to itself."""
    subprocess.run(asked, check=True, capture_output=True)


def of_chatter() -> Iterator[Timed]:
    """Time the map of chatter beside a semi-discretization written from the literature."""
    cutting = part("test_cutting")
    rng = np.random.default_rng(5)
    points = [(rng.choice(cutting.SPEEDS), rng.choice(cutting.WIDTHS)) for _ in range(2)]
    count = len(cutting.SPEEDS) * len(cutting.WIDTHS)
    other = Timed(
        "one point by semi-discretization (40 steps a wave)",
        tuple(one / len(points) for one in
              runs(lambda: [cutting.semi_discretized(*point) for point in points], 2)),
    )  # fmt: skip
    whole = runs(cutting.one_map)
    each = Timed("one point of the map of chatter", tuple(one / count for one in whole))
    yield other
    yield Timed(f"map of chatter, {count} points", whole)
    yield Timed(each.what, each.taken, f"1/{other.middle / each.middle:.0f} of {other.what}")


def of_prints() -> Iterator[Timed]:
    """Time reading and planning of 1, 10 and 100 notes."""
    read_here, planned_here = part("test_notes"), part("test_plan")
    shop = Shop.at()

    def read_some(count: int) -> Callable[[], object]:
        usual = read_here.USUAL
        return lambda: [notes.read(usual[n % len(usual)]) for n in range(count)]

    def plan_some(count: int) -> Callable[[], object]:
        listed = planned_here.NOTES
        known = {"material": "1018 steel", "machine": "knee mill", "shop": shop}
        return lambda: [plan.make(listed[n % len(listed)], **known) for n in range(count)]

    for words, work in (("read", read_some), ("read and plan", plan_some)):
        few = None
        for count in SIZES:
            one = Timed(f"{words} {count} notes", runs(work(count), 5 if count > 10 else 9))
            yield Timed(one.what, one.taken, grown(few, one, 10) if few else "")
            few = one


def machine() -> str:
    """Describe the machine in general words: no name and no place."""
    gib = os.sysconf("SC_PAGE_SIZE") * os.sysconf("SC_PHYS_PAGES") / 2**30
    cores, load = os.cpu_count() or 1, os.getloadavg()[0]
    words = "busy with other work" if load > cores + BUSY else "with little else to do"
    return (
        f"{cores} cores of {platform.machine()}, {gib:.0f} GiB of memory, {platform.system()}, "
        f"{platform.python_implementation()} {platform.python_version()}, "
        f"numpy {np.__version__}; {words} (about {load:.1f} processes wanted a core at the start)"
    )


def written(began: str, timed: list[Timed], pages: str) -> str:
    """Write the page."""
    day = datetime.datetime.now(tz=datetime.UTC).date()
    lines = [TITLE, f"Measured on {day}: {began}.\n"]
    lines += ["| work | least | median | most | beside |", "|---|---|---|---|---|"]
    lines += [one.row() for one in timed]
    if pages:
        told = (
            "Benches in a browser [ms, median/95th percentile; frames a second apart]. open: from "
            "its address to the first picture [s], with JupyterLab, a new kernel and all cells run;"
            " change, paint: from a key to the first change, and to its frame; work: of the "
            "kernel's thread; late: the last change after the last move of the pointer; bytes: "
            "that come for one key:"
        )
        lines += ["", told, "", "```text", pages, "```"]
    return "\n".join([*lines, ""])


def main() -> None:
    """Measure everything, print the table, and write the page where asked."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--write", action="store_true")
    parser.add_argument("--no-browser", action="store_true")
    given = parser.parse_args()
    began, timed, clock = machine(), [], time.perf_counter()
    works = [of_starting, of_prints, of_chatter, of_marking, of_record, of_export]
    for work in works if given.no_browser else [*works, of_home, of_costs]:
        for one in work():
            timed.append(one)
            sys.stderr.write(json.dumps([one.what, one.middle]) + "\n")
        sys.stderr.write(f"{time.perf_counter() - clock:.0f} s\n")
    page = written(began, timed, "" if given.no_browser else of_benches())
    sys.stderr.write(f"{time.perf_counter() - clock:.0f} s in all\n")
    sys.stdout.write(page)
    if given.write:
        PAGE.parent.mkdir(exist_ok=True)
        PAGE.write_text(page, "utf-8")


if __name__ == "__main__":
    main()
