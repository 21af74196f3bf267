"""Words laid out as matplotlib lays them out, by plain numbers alone.

The live picture and a page's own Python lay out with the same lines, so that both lay the same.
"""

from collections.abc import Callable, Sequence
from math import cos, radians, sin
from typing import Any, Protocol


class Lettered(Protocol):
    """What is asked of a text."""

    def get_text(self) -> str:
        """Return its words."""

    def get_visible(self) -> bool:
        """Tell whether it is seen."""

    def get_rotation(self) -> float:
        """Return its turn [deg]."""

    def get_rotation_mode(self) -> str | None:
        """Tell whether it is turned before it is placed."""

    def get_position(self) -> tuple[float, float]:
        """Return its anchor."""

    def get_horizontalalignment(self) -> Any:
        """Tell where its anchor is across."""

    def get_verticalalignment(self) -> Any:
        """Tell where its anchor is up and down."""


class TextReader:
    """Reads place and words of one text at every move.

    Parameters
    ----------
    text : Lettered
        The text.
    place : sequence of float
        Map from its anchor to units, see `writing` [-].
    metrics : sequence of float
        Ascent, descent and pitch of a line [1/1000 em].
    pad : float or None
        Room around the words inside their ground [1/1000 em]; None without ground.
    width_of : callable
        Gives the length of a line [1/1000 em].
    """

    def __init__(
        self, text: Lettered, place: Sequence[float], metrics: Sequence[float], pad: float | None,
        width_of: Callable[[str], int],
    ) -> None:  # fmt: skip
        self._text, self._width_of = text, width_of
        self.place, self.metrics, self.pad = place, metrics, pad
        self._laid: tuple[object, dict[str, Any]] | None = None

    def read(self) -> dict[str, Any]:
        """Return where the text stands, its lines, and whether it is seen."""
        text = self._text
        words, angle = text.get_text(), text.get_rotation()
        key = words, angle, text.get_horizontalalignment(), text.get_verticalalignment()
        if self._laid is None or self._laid[0] != key:
            self._laid = key, layout(text, self._width_of, self.metrics, self.pad)
        (x, y), (a, b, c, d, e, f) = text.get_position(), self.place
        at = [round(a * x + b * y + c), round(d * x + e * y + f), round(-angle, 2)]
        shown = "inline" if words and text.get_visible() else "none"
        return {"at": at, "display": shown, **self._laid[1]}


def layout(
    text: Lettered, width_of: Callable[[str], int], metrics: Sequence[float], pad: float | None
) -> dict[str, Any]:
    """Place the lines of a text around its anchor, x to the right and y down along the lines.

    Parameters
    ----------
    text : Lettered
        Gives words, alignment and turn.
    width_of : callable
        Gives the length of a line [1/1000 em].
    metrics : sequence of float
        Ascent, descent and pitch of a line [1/1000 em].
    pad : float or None
        Room around the words inside their ground [1/1000 em]; None without ground.
    """
    ascent, descent, pitch = metrics
    lines = text.get_text().split("\n")
    widths = [width_of(line) for line in lines]
    width, height = max(widths), ascent + descent + pitch * (len(lines) - 1)
    left, top = _anchor(text, width, height, ascent, descent)
    share = {"left": 0.0, "center": 0.5, "right": 1.0}[text.get_horizontalalignment()]
    placed = [
        [line, round(left + share * (width - own)), round(top + ascent + pitch * row)]
        for row, (line, own) in enumerate(zip(lines, widths, strict=True))
    ]
    laid: dict[str, Any] = {"lines": placed}
    if pad is not None:
        sides = left - pad, top - pad, width + 2 * pad, height + 2 * pad
        laid["box"] = [round(side) for side in sides]
    return laid


def _anchor(
    text: Lettered, width: float, height: float, ascent: float, descent: float
) -> tuple[float, float]:
    """Return where the box of a text begins, from its anchor, along its own lines, y down."""
    angle = 0.0 if text.get_rotation_mode() == "anchor" else text.get_rotation()
    left, right, low, high = _bounds(width, height, angle)
    across = {"left": left, "center": (left + right) / 2, "right": right}
    up = {
        "bottom": low,
        "top": high,
        "center": (low + high) / 2,
        "baseline": low + descent,
        "center_baseline": high - (height - descent) / 2,
    }
    at = across[text.get_horizontalalignment()], up[text.get_verticalalignment()]
    x, y = turned(*at, -angle)
    return -x, y


def _bounds(width: float, height: float, angle: float) -> tuple[float, float, float, float]:
    """Return left, right, bottom and top of a box turned about its upper left corner."""
    if angle == 0:
        return 0.0, width, -height, 0.0
    corners = [turned(x, y, angle) for x in (0, width) for y in (0, -height)]
    xs, ys = [x for x, _ in corners], [y for _, y in corners]
    return min(xs), max(xs), min(ys), max(ys)


def turned(x: float, y: float, degrees: float) -> tuple[float, float]:
    """Return a point turned about the origin, counter-clockwise with y upwards."""
    if degrees == 0:
        return x, y
    c, s = cos(radians(degrees)), sin(radians(degrees))
    return x * c - y * s, x * s + y * c
