"""Run notebooks from top to bottom and store what they show, as a reader first meets it.

Give the notebooks, or none for all: ``python tests/store.py notebooks/02_angle_standards.ipynb``.
Worked sheets are stored too; a worksheet is stored as it is handed out, asked and not worked;
one without outputs, such as the placement sheet, which would end with a route, keeps none.
Also draws the picture of the README.
"""

import sys
from pathlib import Path
from runpy import run_path

import nbformat
from nbconvert.preprocessors import ExecutePreprocessor
from seatwork import opening, seats, units
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.scene import Look
from seatwork.drawings.section import Section
from seatwork.live.server import drop_views

KERNEL = {"name": "python3", "display_name": "Python 3", "language": "python"}
HOME = opening.source()
stale = run_path(str(Path(__file__).with_name("contents.py")))["stale"]


def everything() -> list[Path]:
    """List lessons, worksheets and worked sheets."""
    places = ("notebooks", "exercises", "exercises/worked")
    return [path for place in places for path in sorted((HOME / place).glob("*.ipynb"))]


def store(path: Path) -> None:
    """Run a notebook in its own folder and write it back without live views."""
    notebook = nbformat.read(path, as_version=4)
    unworked = path.parent.name == "exercises"  # its last cell says what is left
    if not unworked or any(cell.get("outputs") for cell in notebook.cells):
        runner = ExecutePreprocessor(timeout=120, store_widget_state=False, allow_errors=unworked)
        runner.preprocess(notebook, {"metadata": {"path": str(path.parent)}})
    clean(notebook)
    drop_views(model={"type": "notebook", "content": notebook})
    nbformat.write(notebook, path)
    for place, text in stale():
        if place == path.resolve():
            path.write_text(text, encoding="utf-8")


def clean(notebook: nbformat.NotebookNode) -> None:
    """Leave the kernel's plain name as the only thing said of the machine it ran on."""
    notebook.metadata = nbformat.from_dict({"kernelspec": KERNEL})
    for cell in notebook.cells:
        cell.metadata = {
            key: cell.metadata[key] for key in ("tags", "asked") if key in cell.metadata
        }


def picture(path: Path) -> None:
    """Draw the README's picture: an inch head in a seat cut with a 90° cutter."""
    sharp, hole = units.length(".507 in"), units.length(".266 in")
    head = seats.Head(
        sharp_diameter=sharp, included_angle=82, edge_diameter=units.length(".477 in")
    )
    seat = seats.Countersink(diameter=sharp, hole_diameter=hole, included_angle=90)
    path.parent.mkdir(exist_ok=True)
    path.write_bytes(Section(SeatedHead(head=head, seat=seat), Look()).draw().png(1))


if __name__ == "__main__":
    for wanted in [Path(name) for name in sys.argv[1:]] or everything():
        store(wanted)
        sys.stdout.write(f"{wanted.name}\n")
    picture(HOME / "notebooks" / "images" / "wrong_angle.png")
