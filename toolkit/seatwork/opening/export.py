"""A notebook as one web page that needs no network and no kernel."""

import os
import re
from collections.abc import Collection, Iterator
from html import escape
from pathlib import Path
from typing import Any, Protocol

from seatwork.deferred import put_off_grammars
from seatwork.errors import SeatworkError
from seatwork.live.signs import face

LIVE_ONLY = "application/vnd.jupyter.widget-view+json"
POLICY = "default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'"
STYLE = """
:root { color-scheme: light dark; --ink: #1a1a1a; --ground: #ffffff; --line: #5f5f5f;
  --face: #f5f5f5; --quiet: #4a4a4a; --accent: #005a9c;
  --trouble: #a30000; }
body { max-width: 56rem; margin: 1rem auto; padding: 0 1rem; color: var(--ink);
  background: var(--ground); font: 1rem/1.5 sans-serif, "seatwork signs"; }
a { color: var(--accent); }
img { max-width: 100%; height: auto; background: #fff; }
table { border-collapse: collapse; display: block; max-width: 100%; overflow-x: auto; }
main { overflow-wrap: anywhere; }
th, td { overflow-wrap: normal; }
th, td { padding: .2rem .6rem; border: 1px solid var(--line); text-align: left; }
blockquote { margin: 1rem 0; padding: .2rem 1rem; border-left: .3rem solid var(--line); }
pre, code { font-family: monospace, "seatwork signs"; }
pre { overflow-x: auto; padding: .4rem .6rem; white-space: pre-wrap; }
.input { border-left: .2rem solid var(--line); background: var(--face); }
.prompt, .fold { display: none; }
details { margin: .4rem 0; padding: .2rem .6rem; border: 1px solid var(--line); }
summary { min-height: 44px; padding: .6rem 0; box-sizing: border-box; cursor: pointer; }
.box { display: block; min-height: 3.2rem; margin: .4rem 0; padding: .2rem .6rem;
  border: 1px solid var(--line); color: var(--quiet); }
@media (prefers-color-scheme: dark) {
  :root { --ink: #f2f2f2; --ground: #16181b; --line: #a8a8a8; --face: #2d3136;
    --quiet: #c8c8c8; --accent: #7cc4ff; --trouble: #ff9c94; }
}
@media print { body { color: #000; background: #fff; }
  .input, pre, img, table, blockquote { break-inside: avoid; }
  h2, h3 { break-after: avoid; }
  details { display: none; }
  .fold { display: block; break-before: page; } }
"""
PAGE = """<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="{policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>{title}</title>
<style>{style}</style>
</head>
<body>
<main>
{body}
</main>
{blocks}</body>
</html>
"""


class Benches(Protocol):
    """What plays the benches of a page; see `takehome.moving`."""

    blocks: list[str]

    @property
    def code(self) -> str:
        """The script of the page; empty where nothing moves."""

    @property
    def style(self) -> str:
        """The style of what moves."""

    @property
    def policy(self) -> str:
        """What the page may do, in the words of a content security policy."""

    def place(self, source: str, still: str) -> str:
        """Return the name of a bench's block; empty where a cell keeps its still."""


FOLD = re.compile(r"<details[^>]*>\s*<summary>.*?</summary>(.*?)</details>", re.DOTALL)
MARKS = {
    "⟦fold⟧": "<details>\n<summary>Bet first, then open</summary>",
    "⟦end of fold⟧": "</details>",
    "⟦last page⟧": '<section class="fold">',
    "⟦end of last page⟧": "</section>",
}
"""What stands in Markdown for tags that would be closed at once there, and the tags."""

FORM = re.compile(r"Form for (\w+): run this cell to answer here\.")
BOX = "Answer to {name}, on paper:"
BENCH = re.compile(r"<p>⟦(bench-\d+)⟧</p>")
BENCH_END = "⟦end of bench⟧"
PICTURE = re.compile(r"!\[[^\]]*\]\([^)]*\)\s*")
LINK = re.compile(r"(?<!!)\[([^\]]*)\]\(([^)\s#]+)\.ipynb(#[^)\s]*)?\)")


def export(
    notebook_path: str | os.PathLike[str],
    html_path: str | os.PathLike[str],
    beside: Collection[str] = (),
    benches: Benches | None = None,
) -> Path:
    """Write a notebook, as it was last saved, as one HTML file.

    Live views are left out, their stills and texts stay; pictures are put into the file. The
    page forbids itself every request, and every script but the one that plays its benches.

    Parameters
    ----------
    notebook_path : path
        The notebook [file].
    html_path : path
        Where to write [file]; an older file is replaced only when the new one is whole.
    beside : collection of str
        Names, without ending, of notebooks whose pages stand in the same folder: links lead
        to those; links to other notebooks become plain words.
    benches : Benches, optional
        What plays the benches; without it their stills are all.

    Returns
    -------
    Path
        The file written.

    Raises
    ------
    SeatworkError
        If the notebook cannot be read or the page cannot be written.
    """
    source, target = Path(notebook_path), Path(html_path)
    notebook = _read(source)
    _drop_live(notebook)
    _lead_links(notebook, beside)
    _fold(notebook)
    _give_boxes(notebook)
    moves = benches is not None and _mark_benches(notebook, benches)
    page = PAGE.format(
        policy=benches.policy if moves and benches else POLICY,
        title=escape(_title(notebook, source.stem)),
        style=face() + STYLE + (benches.style if moves and benches else ""),
        body=_body(notebook, source.parent),
        blocks=_blocks(benches) if moves and benches else "",
    )
    _write(target, page)
    return target


def _read(source: Path) -> Any:
    put_off_grammars()
    import nbformat

    read: Any = nbformat.read
    try:
        return read(source, as_version=4)
    except FileNotFoundError:
        raise SeatworkError(str(source), "there is no such notebook", "check the name") from None
    except OSError as error:
        raise SeatworkError(
            str(source), f"it cannot be read ({error.strerror})", "check the file"
        ) from None
    except (ValueError, nbformat.ValidationError, nbformat.reader.NotJSONError):
        raise SeatworkError(
            str(source), "that is not a notebook", "give a file that ends in .ipynb"
        ) from None


def _drop_live(notebook: Any) -> None:
    """Take live views and their stored state out, and outputs that were nothing else."""
    notebook.metadata.pop("widgets", None)
    for cell in notebook.cells:
        for output in cell.get("outputs", ()):
            output.get("data", {}).pop(LIVE_ONLY, None)
        if "outputs" in cell:
            cell.outputs = [o for o in cell.outputs if "data" not in o or o.data]


def _lead_links(notebook: Any, beside: Collection[str]) -> None:
    """Lead links between notebooks to their pages, and unlink what has no page."""

    def led(link: re.Match[str]) -> str:
        words, name, place = link.groups()
        return f"[{words}]({name}.html{place or ''})" if name in beside else words

    for cell in notebook.cells:
        if cell.cell_type == "markdown":
            cell.source = LINK.sub(led, cell.source)


def _fold(notebook: Any) -> None:
    """Mark the closed folds, and append what they say: on paper, a last page to fold back."""
    from nbformat import v4

    fold, end, page, page_end = MARKS
    answers = [answer for cell in notebook.cells for answer in _folded(cell)]
    for cell in notebook.cells:
        for output in cell.get("outputs", ()):
            data = output.get("data", {})
            if "text/markdown" in data:
                shown = FOLD.sub(rf"{fold}\n\n\1\n\n{end}", data["text/markdown"])
                data["text/markdown"] = shown
    if answers:
        made: Any = v4.new_markdown_cell
        told = "\n\n".join([page, "## Fold here", *answers, page_end])
        notebook.cells.append(made(told))


def _give_boxes(notebook: Any) -> None:
    """Put a box to write in where a question's form stands in the notebook."""
    for cell in notebook.cells:
        for output in cell.get("outputs", ()):
            data = output.get("data", {})
            asked = FORM.fullmatch(str(data.get("text/plain", "")).strip())
            if asked and "text/html" not in data:
                box = f'<span class="box">{BOX.format(name=escape(asked[1]))}</span>'
                data["text/html"] = box


def _mark_benches(notebook: Any, benches: Benches) -> bool:
    """Mark where benches stand; tell whether any of them is played."""
    for cell in notebook.cells:
        for output in cell.get("outputs", ()) if cell.cell_type == "code" else ():
            data = output.get("data", {})
            if "text/markdown" not in data:
                continue
            name = benches.place(str(cell.source), str(data.get("text/plain", "")))
            if name:
                shown = data["text/markdown"]
                data["text/markdown"] = f"⟦{name}⟧\n\n{shown}\n\n{BENCH_END}"
    return bool(benches.blocks)


def _blocks(benches: Benches) -> str:
    """Return what stands behind the page: the recordings, then the script that plays them."""
    return "\n".join([*benches.blocks, f'<script type="module">{benches.code}</script>', ""])


def _folded(cell: Any) -> Iterator[str]:
    """Yield each question of a cell that has a fold, and what the fold says of it."""
    for output in cell.get("outputs", ()):
        shown = output.get("data", {}).get("text/markdown", "")
        for fold in FOLD.finditer(shown):
            question = shown.split("\n", 1)[0]
            told = PICTURE.sub("", fold[1]).strip().split("\n\n")[0]
            yield f"{question}  \n{told}"


def _title(notebook: Any, name: str) -> str:
    """Return the first heading, or the file's name."""
    for cell in notebook.cells:
        for line in str(cell.source).splitlines() if cell.cell_type == "markdown" else ():
            if line.startswith("# "):
                return line[2:].strip()
    return name


def _body(notebook: Any, folder: Path) -> str:
    from nbconvert import HTMLExporter

    exporter: Any = HTMLExporter(  # type: ignore[no-untyped-call]
        template_name="basic", embed_images=True, exclude_anchor_links=True
    )
    body, _ = exporter.from_notebook_node(notebook, {"metadata": {"path": str(folder)}})
    for mark, tag in MARKS.items():
        body = str(body).replace(f"<p>{mark}</p>", tag)
    body = BENCH.sub(r'<div class="bench" data-bench="\1">', str(body))
    return body.replace(f"<p>{BENCH_END}</p>", "</div>")


def _write(target: Path, page: str) -> None:
    """Write beside the target, then put it in place."""
    beside = target.with_name(target.name + ".part")
    try:
        beside.write_text(page, encoding="utf-8")
        beside.replace(target)
    except OSError as error:
        beside.unlink(missing_ok=True)
        raise SeatworkError(
            str(target), f"it cannot be written ({error.strerror})", "choose another place"
        ) from None
