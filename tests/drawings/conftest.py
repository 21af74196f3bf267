"""What stands on a page, measured as matplotlib will draw it."""

from collections.abc import Callable, Iterator
from itertools import combinations

import pytest
from matplotlib.backends.backend_agg import RendererAgg
from matplotlib.patches import PathPatch
from matplotlib.path import Path
from matplotlib.text import Text
from matplotlib.transforms import Bbox
from seatwork.drawings.scene import Drawing

RENDERER = RendererAgg(1280, 720, 100)


def _boxes(drawing: Drawing) -> list[tuple[str, Bbox]]:
    """Give every visible piece of lettering with its box [pixels]; signs count as lettering."""
    axes = drawing.figure.axes[0]
    boxes = [
        (text.get_text(), text.get_window_extent(RENDERER))
        for text in axes.findobj(Text)
        if text.get_text() and text.get_visible()
    ]
    for patch in axes.findobj(PathPatch):
        if patch.get_zorder() == 5.2 and len(patch.get_path()) > 1:
            shapes = patch.get_path().to_polygons(closed_only=False)
            boxes += [("a sign", Bbox([s.min(axis=0), s.max(axis=0)])) for s in shapes]
    return boxes


def _faults(drawing: Drawing) -> Iterator[str]:
    boxes = _boxes(drawing)
    for name, box in boxes:
        if not (box.x0 >= 4 and box.x1 <= 1276 and box.y0 >= 4 and box.y1 <= 716):
            yield f"{name!r} leaves the page: {box}"
    for (name, box), (other, its) in combinations(boxes, 2):
        both_signs = name == other == "a sign"
        if not both_signs and box.padded(-1).overlaps(its.padded(-1)):
            yield f"{name!r} overlaps {other!r}"
    lines, screws = _thin_lines(drawing), _screws(drawing)
    for name, box in boxes:
        core = box.padded(-2)
        if any(line.intersects_bbox(core, filled=False) for line in lines):
            yield f"a line crosses {name!r}"
        if any(screw.intersects_bbox(core, filled=True) for screw in screws):
            yield f"{name!r} lies on the screw"


def _thin_lines(drawing: Drawing) -> list[Path]:
    """Give dimension lines, extension lines, leaders and arcs, each by itself [pixels]."""
    patches = drawing.figure.axes[0].findobj(PathPatch)
    lines = [patch.get_path() for patch in patches if patch.get_zorder() == 5.0]
    return [Path(piece) for line in lines for piece in line.to_polygons(closed_only=False)]


def _screws(drawing: Drawing) -> list[Path]:
    """Give the screws that are drawn whole, not those cut off by the border of a detail."""
    patches = drawing.figure.axes[0].findobj(PathPatch)
    return [p.get_path() for p in patches if p.get_zorder() == 3.0 and p.get_clip_path() is None]


@pytest.fixture(scope="session")
def faults() -> Callable[[Drawing], list[str]]:
    """Return what finds lettering that is cut off, overlapped or crossed by a line."""
    return lambda drawing: list(_faults(drawing))
