"""Write the links between lessons, the start page's list and the README's table from one list.

``python tests/contents.py`` writes them; ``--check`` only names what would change. The list is
``shop/defaults/contents.toml``; a page whose file is not there is not linked.
"""

import re
import sys
import tomllib
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import nbformat
from seatwork.shop.folder import package_text

HOME = Path(__file__).resolve().parents[1]
LESSONS = HOME / "notebooks"
ALL = "[All lessons](00_start_here.ipynb#All-lessons)"
LINKS = re.compile(r"^\[(?:←|All lessons\]).*$", re.MULTILINE)
LIST = re.compile(r"(?<=\n## All lessons\n\n).*?(?=\n\n\*\*Worksheets)", re.DOTALL)
TABLE = re.compile(r"(?<=\n\| \| \|\n\|---\|---\|\n).*?(?=\n\| Worksheets \|)", re.DOTALL)
HEADINGS = {
    "lesson": "",
    "your own work": "For your own work",
    "instructor": "For the instructor",
    "look it up": "To look things up",
}
"""For whom a page is, and the heading of such pages on the start page."""


def pages() -> list[dict[str, Any]]:
    """List the pages whose file is there, in the order of the list."""
    listed = tomllib.loads(package_text("contents.toml"))["page"]
    return [page for page in listed if place(page).is_file()]


def place(page: dict[str, Any]) -> Path:
    """Name the notebook of a page."""
    return LESSONS / f"{page['file']}.ipynb"


def link(page: dict[str, Any], before: str = "", after: str = "") -> str:
    """Link a page from another notebook."""
    return f"[{before}{page['title']}{after}]({page['file']}.ipynb)"


def kind(page: dict[str, Any]) -> str:
    """Say for whom a page is: a key of `HEADINGS`."""
    return page.get("for", "lesson")


def links(page: dict[str, Any]) -> str:
    """Write the line under a title: the page before, all lessons, the page after."""
    row = [other for other in pages() if kind(other) == kind(page)]
    here = row.index(page)
    before = [link(row[here - 1], before="← ")] if here else []
    after = [link(row[here + 1], after=" →")] if here + 1 < len(row) else []
    return " · ".join([*before, ALL if before else ALL.replace("[", "[← "), *after])


def start_list() -> str:
    """Write the list of the start page, under a heading for each kind of page."""
    parts = []
    for wanted, heading in HEADINGS.items():
        rows = [
            f"- {numbered(page)}{link(page)}: {page['says']}."
            for page in pages()[1:]
            if kind(page) == wanted
        ]
        if rows:
            parts.append("\n".join([*([f"**{heading}**", ""] if heading else []), *rows]))
    return "\n\n".join(parts)


def numbered(page: dict[str, Any]) -> str:
    """Give a lesson its number in front."""
    return f"{page['file'][:2]} " if kind(page) == "lesson" else ""


def table() -> str:
    """Write the rows of the README's table: titles alone, since the start page says more."""
    rows = []
    for wanted, heading in HEADINGS.items():
        titles = [page for page in pages() if kind(page) == wanted]
        linked = " · ".join(f"[{page['title']}](notebooks/{page['file']}.ipynb)" for page in titles)
        rows.append(f"| {heading or 'Lessons'} | {linked} |")
    return "\n".join(rows)


def written() -> Iterator[tuple[Path, str]]:
    """Give each file that holds something of the list, with the text it should have."""
    for page in pages()[1:]:
        yield place(page), first_cell(place(page), LINKS, links(page))
    start = place(pages()[0])
    yield start, first_cell(start, LIST, start_list())
    readme = HOME / "README.md"
    yield readme, replaced(readme.read_text(encoding="utf-8"), TABLE, table())


def first_cell(path: Path, pattern: re.Pattern[str], text: str) -> str:
    """Put a text in the first Markdown cell that has a place for it; the rest stays."""
    notebook = nbformat.read(path, as_version=4)
    for cell in notebook.cells:
        if cell.cell_type == "markdown" and pattern.search(cell.source):
            cell.source = replaced(cell.source, pattern, text)
            return nbformat.writes(notebook) + "\n"
    raise SystemExit(f"{path.name}: no place for {text[:40]!r}")


def replaced(text: str, pattern: re.Pattern[str], new: str) -> str:
    """Put the new text in the pattern's first place."""
    return pattern.sub(lambda _: new, text, count=1)


def stale() -> list[tuple[Path, str]]:
    """List the files that differ, with the text they should have."""
    return [(path, text) for path, text in written() if path.read_text(encoding="utf-8") != text]


if __name__ == "__main__":
    found = stale()
    for path, text in found:
        sys.stdout.write(f"{path.name}: links or lists differ from shop/defaults/contents.toml\n")
        if "--check" not in sys.argv:
            path.write_text(text, encoding="utf-8")
    sys.exit(1 if found and "--check" in sys.argv else 0)
