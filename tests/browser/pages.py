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
