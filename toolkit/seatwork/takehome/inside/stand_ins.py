"""Let the scenes be loaded where numpy, matplotlib and the fonts are not: plain ones stand in."""

import sys
from collections.abc import Mapping
from types import ModuleType
from typing import Any

from seatwork.takehome.inside import plain_arrays, plain_artists, plain_paths
from seatwork.takehome.inside.plain_artists import Missing

SPACING = "seatwork.drawings.strokes.spacing"
BOX = "□"
"""Stands for a letter that the page has no shape of."""


class _Typing:
    """Stands for a type of arrays, whatever they hold."""

    def __class_getitem__(cls, _of: Any) -> Any:
        return plain_arrays.Array


def stand_in(widths: Mapping[str, int], pairs: Mapping[str, int]) -> None:
    """Put plain modules where the scenes look for numpy, matplotlib, PIL and the font's spacing.

    Parameters
    ----------
    widths : mapping of str to int
        Width of each letter of the font [1/6400 of the type size].
    pairs : mapping of str to int
        How much farther apart two letters stand, where it is not 0 [1/6400 of the type size].
    """
    sys.modules["numpy"] = plain_arrays
    _put("numpy.typing", NDArray=_Typing, ArrayLike=Any)
    modules: dict[str, dict[str, Any]] = {
        "matplotlib": {},
        "matplotlib.artist": {"Artist": plain_artists.Artist},
        "matplotlib.axes": {"Axes": plain_artists.Axes},
        "matplotlib.backends": {},
        "matplotlib.backends.backend_agg": {"FigureCanvasAgg": plain_artists.canvas},
        "matplotlib.figure": {"Figure": plain_artists.Figure},
        "matplotlib.font_manager": {"FontProperties": Missing},
        "matplotlib.lines": {"Line2D": plain_artists.Line2D},
        "matplotlib.patches": {
            "Circle": plain_artists.Circle,
            "Patch": plain_artists.Patch,
            "PathPatch": plain_artists.PathPatch,
            "Polygon": plain_artists.Polygon,
            "Rectangle": plain_artists.Rectangle,
        },
        "matplotlib.path": {"Path": plain_paths.Path},
        "matplotlib.text": {"Text": plain_artists.Text},
        "matplotlib.textpath": {"TextPath": Missing},
        "PIL": {"Image": Missing, "ImageChops": Missing},
    }
    for name, things in modules.items():
        _put(name, **things)
    _put(SPACING, **_spacing(widths, pairs))


def _spacing(widths: Mapping[str, int], pairs: Mapping[str, int]) -> dict[str, Any]:
    """Return what stands for the module that measures the font."""
    box = widths[BOX]
    return {
        "alone": lambda letter: widths.get(letter, box) / 6400,
        "closer": lambda pair: pairs.get("".join(pair), 0) / 6400,
        "characters": lambda: frozenset(map(ord, widths)),
    }


def _put(name: str, **things: Any) -> None:
    """Put a module with some things in it where an import finds it."""
    made = ModuleType(name)
    made.__dict__.update(things)
    sys.modules[name] = made
