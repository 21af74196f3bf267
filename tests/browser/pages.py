"""A page opened from a file in a Chromium that has no network."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

PHONE, SMALL, WIDE = (390, 844), (320, 640), (1366, 768)


@contextmanager
def opened(chromium: Any, path: Path, size: tuple[int, int] = WIDE, **more: Any) -> Iterator[Any]:
    """Open a file; afterwards hold that it asked for nothing, and told the console nothing."""
    window = {"width": size[0], "height": size[1]}
    context = chromium.new_context(viewport=window, offline=True, **more)
    page = context.new_page()
    said: list[str] = []
    asked: list[str] = []
    page.on("console", lambda message: said.append(message.text))
    page.on("pageerror", lambda error: said.append(str(error)))
    page.on("request", lambda one: one.is_navigation_request() or asked.append(one.url))
    page.goto(path.as_uri())
    yield page
    beyond = [url for url in asked if not url.startswith(("blob:", "data:"))]
    context.close()
    assert beyond == []
    assert said == []


def sideways(page: Any) -> int:
    """Return how far the page can be scrolled sideways [px]."""
    return page.evaluate(
        "document.documentElement.scrollWidth - document.documentElement.clientWidth"
    )


SMALL_THINGS = """([button, letter]) => {
  const shown = (one) => one.checkVisibility() && one.getClientRects().length;
  const pressed = document.querySelectorAll("button, summary, select, textarea, .option, .sure, " +
    "input:not([type=radio], [type=checkbox], [type=hidden])");
  const low = [...pressed].filter((one) => shown(one) &&
    one.getBoundingClientRect().height < button);
  const read = [...document.querySelectorAll("body *")].filter((one) => shown(one) &&
    !one.closest("svg") && [...one.childNodes].some((n) => n.nodeType === 3 && n.data.trim()));
  const fine = read.filter((one) => parseFloat(getComputedStyle(one).fontSize) < letter);
  return [...low, ...fine].map((one) => one.outerHTML.slice(0, 90));
}"""


def too_small(page: Any) -> list[str]:
    """Return what is lower than a finger needs, 44 px, or lettered smaller than 11 px."""
    found: list[str] = page.evaluate(SMALL_THINGS, [44, 11])
    return found
