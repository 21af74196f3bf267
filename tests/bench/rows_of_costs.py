"""Rows of the table of benchmarks: what pages taken home cost beside a bare start of Python."""

import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from bench.rows_of_pages import SLOWER, until
from bench.timed import Timed, beside, part
from playwright.sync_api import Browser, sync_playwright
from seatwork.errors import SeatworkError

TURNS, VERDICTS, MOVES = 3, 20, 300
ASKING = """
startPython("said").then((ask) => { globalThis.seatwork = { ask }; });
"""
NOTHING = b"call = lambda name, text: 'null'"
STARTED = "globalThis.seatwork && seatwork.ask"
PRESSED = """addEventListener("DOMContentLoaded", () => {
  const state = document.getElementById("state");
  if (!state) return;
  const ready = new MutationObserver(() => {
    const box = document.querySelector("[data-part]");
    if (!box) return;
    ready.disconnect();
    box.value = ".139 in";
    const said = document.querySelector(".said");
    new MutationObserver(() => { globalThis.said = true; }).observe(said, { childList: true });
    box.closest("fieldset").querySelector("button").click();
  });
  ready.observe(state, { childList: true, subtree: true });
})"""
"""Checks an entry as soon as the page says that it is ready."""
AGAIN = """(async () => {
  const id = document.querySelector("[data-part]").dataset.part.slice(0, -2);
  for (let n = 0; n < %d; n++) await seatwork.ask("check", { id, parts: [".139 in"] });
})()"""
MOVING = """(async () => {
  const slider = document.querySelector(".player input[type=range]");
  const [first, last] = [Number(slider.min), Number(slider.max)];
  const took = [];
  for (let n = 0; n < %d; n++) {
    await new Promise(requestAnimationFrame);
    const began = performance.now();
    slider.value = first + (n * 7) %% (last - first + 1);
    slider.dispatchEvent(new Event("input"));
    document.querySelector(".player svg").getBoundingClientRect();
    await new Promise((give) => { const line = new MessageChannel();
      line.port1.onmessage = give; requestAnimationFrame(() => line.port2.postMessage(0)); });
    took.push(performance.now() - began);
  }
  return took;
})()"""
"""Each move from the hand until its frame was drawn [ms]; a frame of its own may be waited for."""
MOVES_NOW = "document.querySelector('.player input[type=range]')"


def of_costs() -> Iterator[Timed]:
    """Time first and further verdicts beside a bare start, and the slider of a lesson."""
    live = part("live_picture").browser_tests()
    with tempfile.TemporaryDirectory() as made, sync_playwright() as playwright:
        program = live.chromium_program(playwright.chromium.executable_path)
        browser = playwright.chromium.launch(executable_path=program, args=live.ARGUMENTS)
        pages = dict(written(Path(made)))
        if "bare" in pages:
            yield from of_verdicts(browser, pages)
        yield from of_sliders(browser, pages["lesson"])
        browser.close()


def written(folder: Path) -> Iterator[tuple[str, Path]]:
    """Write a lesson, and a bare page and a practice sheet where Python for pages is found."""
    from seatwork.marking import sheets
    from seatwork.opening.export import export
    from seatwork.takehome import practice_page
    from seatwork.takehome.moving import Moving
    from seatwork.takehome.runtime import runtime

    lesson = Path(__file__).parents[2] / "notebooks" / "02_angle_standards.ipynb"
    export(lesson, folder / "lesson.html", (), Moving())
    yield "lesson", folder / "lesson.html"
    try:
        made = runtime()
    except SeatworkError:  # told once, where pages are written for their times
        return
    (folder / "bare.html").write_text(bare_page(made), encoding="utf-8")
    yield "bare", folder / "bare.html"
    sheet = practice_page(sheets.load("cones"), made, planner=True)
    (folder / "sheet.html").write_text(sheet, encoding="utf-8")
    yield "sheet", folder / "sheet.html"


def bare_page(made: Any) -> str:
    """Return a page that starts Python and runs nothing in it."""
    from seatwork.takehome.blocks import policy, script
    from seatwork.takehome.graded import PAGE
    from seatwork.takehome.python_blocks import python_blocks

    code = script("unpack.js", "python.js") + ASKING
    return PAGE.format(
        language="en", policy=policy(code, python=True), title="bare", style="", body="",
        code=code, blocks=python_blocks(made, {"./said.py": NOTHING}),
    )  # fmt: skip


def of_verdicts(browser: Browser, pages: dict[str, Path]) -> Iterator[Timed]:
    """Time the first verdict and more of them, by the clock and by the processor."""
    for words, rate in (("", 1), (f", its page {SLOWER} times slower", SLOWER)):
        bare = [started(browser, pages["bare"], STARTED, rate) for _ in range(TURNS)]
        first = [started(browser, pages["sheet"], "globalThis.said", rate) for _ in range(TURNS)]
        for by, n in (("clock", 0), ("processor", 1)):
            alone = Timed(f"bare start of Python in a page{words}: {by}", column(bare, n))
            yield alone
            one = Timed(f"first verdict in a page{words}: {by}", column(first, n))
            yield Timed(one.what, one.taken, beside(one, alone))
    more, size = column(first, 2), max(column(first, 3))
    told = f"the page's process then holds {size:.0f} MB"
    yield Timed("each further verdict in a page: processor", more, told)


def column(rows: list[tuple[float, ...]], n: int) -> tuple[float, ...]:
    """Return one column of what some turns found."""
    return tuple(row[n] for row in rows)


def started(browser: Browser, place: Path, ready: str, rate: int) -> tuple[float, ...]:
    """Open a page until it answers: clock [s], processor [s], a verdict more [s], memory [MB]."""
    context = browser.new_context(offline=True)
    context.add_init_script(PRESSED)
    page = context.new_page()
    if rate > 1:
        context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": rate})
    clock = until(page, place, ready)
    first, more = spent(page), 0.0
    if ready != STARTED:
        page.evaluate(AGAIN % VERDICTS)
        more = (spent(page) - first) / VERDICTS
    found = (clock, first, more, largest(browser))
    context.close()
    return found


def spent(page: Any) -> float:
    """Return the processor time that a page's process has used since it began [s]."""
    session = page.context.new_cdp_session(page)
    session.send("Performance.enable")
    found = session.send("Performance.getMetrics")["metrics"]
    return float(next(one["value"] for one in found if one["name"] == "ProcessTime"))


def largest(browser: Browser) -> float:
    """Return the memory of the largest process that shows a page, shared parts by share [MB]."""
    told = browser.new_browser_cdp_session().send("SystemInfo.getProcessInfo")["processInfo"]
    places = [Path(f"/proc/{one['id']}/smaps_rollup") for one in told if one["type"] == "renderer"]
    sizes = [
        int(line.split()[1])
        for place in places
        if place.exists()
        for line in place.read_text(encoding="ascii").splitlines()
        if line.startswith("Pss:")
    ]
    return max(sizes, default=0) / 1024


def of_sliders(browser: Browser, lesson: Path) -> Iterator[Timed]:
    """Time a lesson until its main slider stands there, and each move of it with its frame."""
    for words, rate in (("", 1), (f", its page {SLOWER} times slower", SLOWER)):
        opened, moved = [], []
        for _ in range(TURNS):
            context = browser.new_context(offline=True)
            page = context.new_page()
            if rate > 1:
                context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": rate})
            opened.append(until(page, lesson, MOVES_NOW))
            moved += page.evaluate(MOVING % MOVES)
            context.close()
        yield Timed(f"lesson taken home, its main slider there{words}", tuple(opened))
        late = sorted(moved)[int(0.99 * len(moved))]
        told = f"99 of 100 within {late:.3g} ms, the wait for a frame included"
        yield Timed(f"a move of it with its frame{words}", tuple(ms / 1e3 for ms in moved), told)
