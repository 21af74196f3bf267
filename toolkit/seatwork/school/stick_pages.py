"""What a stick shows before anything is installed: lessons, sheets, and how to start."""

from collections.abc import Callable, Iterator
from html import escape
from importlib import resources
from pathlib import Path
from string import Template

from seatwork.cards import Pages
from seatwork.errors import SeatworkError
from seatwork.files import write
from seatwork.opening import source
from seatwork.opening.export import PAGE, POLICY, STYLE, export
from seatwork.school.stick_targets import UNTRIED
from seatwork.takehome.moving import Moving

FIRST, INSTALL = "START.html", "install.py"
FOLDER_OF_PAGES, CARDS = "pages", "cards"
TITLE = "Seatwork without network"


def lessons(folder: Path) -> list[Path]:
    """Write every lesson as a page that needs no network, its main sliders moving.

    Parameters
    ----------
    folder : Path
        The stick.
    """
    found = sorted((source() / "notebooks").glob("*.ipynb"))
    beside = [path.stem for path in found]
    (folder / FOLDER_OF_PAGES).mkdir(parents=True, exist_ok=True)
    return [
        export(path, folder / FOLDER_OF_PAGES / f"{path.stem}.html", beside, Moving())
        for path in found
    ]


def cards(folder: Path) -> list[Path]:
    """Print the sheets for wall and bench.

    Parameters
    ----------
    folder : Path
        The stick.
    """
    (folder / CARDS).mkdir(parents=True, exist_ok=True)
    written = []
    for name, make in _sheets():
        path = folder / CARDS / f"{name}.pdf"
        make().save(path)
        written.append(path)
    return written


def _sheets() -> Iterator[tuple[str, Callable[..., Pages]]]:
    from seatwork.cards import charts, formulas, glossary, station

    yield "drills", charts.drills
    yield "clearance-holes", charts.clearance_holes
    yield "counterbores", charts.counterbores
    yield "formulas", formulas.formula_page
    yield "crib-checklist", station.crib_checklist
    yield "glossary", glossary.glossary_page


def first_page(folder: Path, serves: list[str]) -> Path:
    """Write the page that a stick begins with.

    Parameters
    ----------
    folder : Path
        The stick, its lessons and sheets in place.
    serves : list of str
        Computers and versions that can install from it, such as "linux-3.11".
    """
    words = {
        "title": TITLE,
        "serves": escape(", ".join(serves) or "none"),
        "untried": escape(_untried(serves)),
        "lessons": _links(folder, FOLDER_OF_PAGES, "*.html"),
        "cards": _links(folder, CARDS, "*.pdf"),
    }
    body = Template(_file("first_page.txt")).substitute(words)
    text = PAGE.format(policy=POLICY, title=TITLE, style=STYLE, body=body, blocks="")
    write(folder / FIRST, text)
    write(folder / INSTALL, _file("install.txt"))
    return folder / FIRST


def _untried(serves: list[str]) -> str:
    names = sorted({one.rpartition("-")[0] for one in serves} & set(UNTRIED))
    told = "Not tried yet on a real one: {}. Try it before class."
    return told.format(", ".join(names)) if names else ""


def _links(folder: Path, name: str, pattern: str) -> str:
    found = sorted((folder / name).glob(pattern))
    if not found:
        raise SeatworkError(str(folder / name), "nothing is in it", "make the stick again")
    lines = (f'<li><a href="{name}/{escape(path.name)}">{_title(path)}</a></li>' for path in found)
    return "\n".join(lines)


def _title(path: Path) -> str:
    """Return the title of a page, or the file's name in words."""
    if path.suffix == ".html":
        text = path.read_text(encoding="utf-8")
        title = text.partition("<title>")[2].partition("</title>")[0]
        if title:
            return title
    return escape(path.stem.replace("-", " ").capitalize())


def _file(name: str) -> str:
    return (resources.files("seatwork.school") / "stick_files" / name).read_text(encoding="utf-8")
