"""Rows of the table of benchmarks: what a reader of a page waits for, by the clock."""

import asyncio
import sys
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from bench.timed import Timed, beside, part
from playwright.sync_api import Browser, sync_playwright
from seatwork.errors import SeatworkError

TURNS = 2
PHONE, SLOWER = {"width": 390, "height": 844}, 4
LONGEST = 120.0
PRESSES, DRAG_SECONDS = 10, 1.5
READY = {
    "graded, plain": "document.querySelector('input[type=text]')",
    "graded": "globalThis.seatwork && seatwork.reader",
    "practice and planner": "globalThis.seatwork && seatwork.ready",
}
"""When a page taken home answers what is typed."""


def of_home() -> Iterator[Timed]:
    """Time pages taken home until they answer: cold, warm, and as on a phone.

    The browser slows the page alone; Python, which runs beside it, stays as fast as it is.
    """
    live = part("live_picture").browser_tests()
    with tempfile.TemporaryDirectory() as made, sync_playwright() as playwright:
        program = live.chromium_program(playwright.chromium.executable_path)
        browser = playwright.chromium.launch(executable_path=program, args=live.ARGUMENTS)
        plain = None
        for name, place in written(Path(made)):
            cold, warm, slow = opened(browser, place, READY[name])
            size = f"{place.stat().st_size / 1e6:.2f} MB"
            first = Timed(f"taken home, {name}: cold", cold)
            plain = plain or first
            said = size if plain is first else f"{size}; {beside(first, plain)}"
            yield Timed(first.what, cold, said)
            as_phone = f"small window, its page {SLOWER} times slower, cold"
            for words, taken in (("warm", warm), (as_phone, slow)):
                one = Timed(f"taken home, {name}: {words}", taken)
                yield Timed(one.what, taken, beside(one, first))
        browser.close()


def written(folder: Path) -> Iterator[tuple[str, Path]]:
    """Write the pages; those with Python are left out where it cannot be fetched."""
    from seatwork.marking import examples, sheets
    from seatwork.record import hand_out
    from seatwork.takehome import graded_page, papers, practice_page
    from seatwork.takehome.runtime import runtime

    course, cones = examples.make_course(folder / "course"), sheets.load("cones")
    hand_out(course, cones, ["L01"], mode="graded", day="2026-09-07")
    (paper,) = papers(course, cones)
    texts = {"graded, plain": graded_page(paper)}
    try:
        made = runtime()
        texts["graded"] = graded_page(paper, made)
        texts["practice and planner"] = practice_page(cones, made, planner=True)
    except SeatworkError as error:
        sys.stderr.write(f"pages with Python are left out: {error}\n")
    for number, (name, text) in enumerate(texts.items()):
        place = folder / f"{number}.html"
        place.write_text(text, encoding="utf-8")
        yield name, place


def opened(browser: Browser, place: Path, ready: str) -> tuple[tuple[float, ...], ...]:
    """Open a page some times: in a new window, again in the same, and in a slow small one [s]."""
    cold, warm, slow = [], [], []
    for _ in range(TURNS):
        context = browser.new_context(offline=True)
        page = context.new_page()
        cold.append(until(page, place, ready))
        warm.append(until(page, place, ready))
        context.close()
        context = browser.new_context(offline=True, viewport=PHONE)
        page = context.new_page()
        session = context.new_cdp_session(page)
        session.send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
        slow.append(until(page, place, ready))
        context.close()
    return tuple(cold), tuple(warm), tuple(slow)


def until(page: Any, place: Path, ready: str) -> float:
    """Open a page and wait until something is so [s]; its policy forbids the usual waiting."""
    began = time.perf_counter()
    page.goto(place.as_uri())
    while not page.evaluate(f"!!({ready})"):
        if time.perf_counter() - began > LONGEST:
            raise TimeoutError(f"{place.name} did not answer in {LONGEST:.0f} s")
        time.sleep(0.02)
    return time.perf_counter() - began


def of_benches() -> str:
    """Measure the benches in a browser beside a bare label and plain interact; their own table."""
    live = part("live_picture")
    live.PRESSES, live.DRAG_SECONDS = PRESSES, DRAG_SECONDS
    names = ["label", "interact", *live.BENCHES]
    return live.table(asyncio.run(live.measure_all(names, 1)))
