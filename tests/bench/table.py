"""One table of all benchmarks in one run: what it costs here, beside a yardstick of the same run.

    python tests/bench/table.py             # print it
    python tests/bench/table.py --write     # and write toolkit/proof/benchmarks.md
    python tests/bench/table.py --browser   # the benches in a browser too, beside a bare label

Times are this machine's; the ratios and the growth are what another machine can be held to.
"""

import argparse
import asyncio
import datetime
import importlib.util
import json
import os
import platform
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from random import Random
from statistics import median
from types import ModuleType

import numpy as np
from seatwork import notes, plan
from seatwork.shop.shop import Shop

HERE = Path(__file__).resolve().parent
PROJECT = HERE.parents[1]
PAGE = PROJECT / "toolkit" / "proof" / "benchmarks.md"
SIZES = (1, 10, 100)
HAND_INS = (1, 100, 1000)
TICKS = 0.2  # seconds of work at least, since that of other processes is counted in hundredths
FEW = 3  # runs of long work, which is timed as it is
BUSY = 0.5  # processes that want a core, beside the cores there are
TITLE = """# Benchmarks

Written by `python tests/bench/table.py --write`: everything of one run, one after the other. Times
are processor time, that of started processes too, on the machine below, as busy as it was; a busy
machine makes each of them longer all the same. What another machine can be held to is the ratio to
a yardstick that was timed in the same run, and the growth. Nothing here is asserted in a quick
test; `pytest tests/bench -m bench` holds the ratios.
"""


@dataclass(frozen=True, slots=True)
class Timed:
    """What some work took.

    Parameters
    ----------
    what : str
        The work.
    taken : tuple of float
        What each run took [s].
    beside : str
        The yardstick, with the ratio to it; or how it grew.
    """

    what: str
    taken: tuple[float, ...]
    beside: str = ""

    @property
    def middle(self) -> float:
        """The median [s]."""
        return median(self.taken)

    def row(self) -> str:
        """Write the row of the table."""
        ends = (min(self.taken), self.middle, max(self.taken))
        return f"| {self.what} | {' | '.join(map(shown, ends))} | {self.beside} |"


def shown(seconds: float) -> str:
    """Write a time in three digits."""
    for unit, size in (("s", 1.0), ("ms", 1e-3)):
        if seconds >= size:
            return f"{seconds / size:.3g} {unit}"
    return f"{seconds / 1e-6:.3g} µs"


def spent() -> float:
    """Tell the processor time of this process and of those it has waited for [s]."""
    return time.process_time() + sum(os.times()[2:4])


def runs(work: Callable[[], object], times: int = 9) -> tuple[float, ...]:
    """Time some runs, the first not counted; short work many times over [s]."""
    work()
    began = time.perf_counter()
    if times > FEW:
        work()
    again = max(1, min(200, round(TICKS / (time.perf_counter() - began)))) if times > FEW else 1
    taken = []
    for _ in range(times):
        began = spent()
        for _ in range(again):
            work()
        taken.append((spent() - began) / again)
    return tuple(taken)


def beside(ours: Timed, other: Timed) -> str:
    """Write the ratio of two medians."""
    return f"{ours.middle / other.middle:.3g} of {other.what}"


def grown(few: Timed, many: Timed, times: float) -> str:
    """Write how the work grew, beside how much more of it there was."""
    return f"{many.middle / few.middle:.3g} times for {times:g} times as many"


def part(name: str) -> ModuleType:
    """Load a file of this folder."""
    spec = importlib.util.spec_from_file_location(f"bench_{name}", HERE / f"{name}.py")
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    return module


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
        yield Timed("export one lesson by the command", runs(lambda: quiet(asked), 2))


def quiet(asked: list[str]) -> None:
    """Run a command and keep its words to itself."""
    subprocess.run(asked, check=True, capture_output=True)


def of_chatter() -> Iterator[Timed]:
    """Time the map of chatter beside a semi-discretization written from the literature."""
    cutting = part("test_cutting")
    rng = np.random.default_rng(5)
    points = [(rng.choice(cutting.SPEEDS), rng.choice(cutting.WIDTHS)) for _ in range(4)]
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


def of_marking() -> Iterator[Timed]:
    """Time marking of 20 questions beside executing notebooks and reading files as JSON."""
    bench = part("test_marking")
    executed = Timed("execute one worksheet in a kernel", runs(lambda: bench.execute_some(1), 2))
    yield executed
    few = None
    for count in HAND_INS:
        taken = marked(bench, count)
        one = Timed(f"mark {count} hand-ins of 20 questions", taken)
        said = f"1/{executed.middle * count / one.middle:.0f} of executing as many"
        step = count / few[1] if few else 0
        yield Timed(one.what, taken, f"{said}; {grown(few[0], one, step)}" if few else said)
        few = (one, count)


def marked(bench: ModuleType, count: int) -> tuple[float, ...]:
    """Time the marking of so many hand-ins [s]."""
    from seatwork.marking import mark
    from seatwork.record import forms

    with tempfile.TemporaryDirectory() as made:
        home = Path(made)
        sheet = hand_ins(bench, home, count)
        known = forms(home / "course")
        return runs(lambda: mark(known, sheet, home / "in"), 2)


def hand_ins(bench: ModuleType, home: Path, count: int) -> object:
    """Write the answers of a class that was handed out a sheet of 20 questions."""
    from seatwork.marking import Answer, AnswerFile
    from seatwork.record import hand_out

    sheet, rng = bench.write_sheet(home), Random(9)
    (home / "in").mkdir()
    for one in hand_out(home / "course", sheet, [f"L{n:05d}" for n in range(1, count + 1)]):
        answers = {
            name: Answer(parts=(bench.answer(question.parts[0], rng),))
            for name, question in one.questions.items()
        }
        file = AnswerFile(learner=one.given.learner, sheet="long", form=1, answers=answers)
        (home / "in" / file.name).write_bytes(file.content())
    return sheet


def of_pages() -> str:
    """Measure the benches in a browser beside a bare label and plain interact; their own table."""
    live = part("live_picture")
    names = ["label", "interact", *live.BENCHES]
    return live.table(asyncio.run(live.measure_all(names, 1)))


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
        told = "Benches in a browser [ms, median/95th percentile; frames a second apart]:"
        lines += ["", told, "", "```text", pages, "```"]
    return "\n".join([*lines, ""])


def main() -> None:
    """Measure everything, print the table, and write the page where asked."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--write", action="store_true")
    parser.add_argument("--browser", action="store_true")
    given = parser.parse_args()
    began, timed = machine(), []
    for work in (of_starting, of_prints, of_chatter, of_marking, of_export):
        for one in work():
            timed.append(one)
            sys.stderr.write(json.dumps([one.what, one.middle]) + "\n")
    page = written(began, timed, of_pages() if given.browser else "")
    sys.stdout.write(page)
    if given.write:
        PAGE.parent.mkdir(exist_ok=True)
        PAGE.write_text(page, "utf-8")


if __name__ == "__main__":
    main()
