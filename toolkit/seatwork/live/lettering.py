"""Moving texts: laid out as matplotlib lays them out, sent as words, drawn as letter shapes.

The page needs no font: a still and a live picture have the same letters on every machine.
"""

from collections.abc import Callable
from math import cos, radians, sin
from typing import Any

from matplotlib.backends.backend_agg import FigureCanvasAgg, RendererAgg
from matplotlib.figure import Figure
from matplotlib.text import Text

from seatwork.live.element import Attributes, Element, clipping, css, named_css, to_units
from seatwork.live.outlines import EM, UNITS_PER_PIXEL, Letters
from seatwork.live.recorder import Stroke

ALWAYS = "0123456789.-+ inm°"


class Lettering:
    """The moving texts of one figure and the letter shapes they need.

    Parameters
    ----------
    figure : matplotlib.figure.Figure
        The figure that the texts belong to.
    """

    def __init__(self, figure: Figure) -> None:
        self._figure = figure
        canvas: Any = FigureCanvasAgg(figure)
        self._renderer: RendererAgg = canvas.get_renderer()
        self._fonts: list[Letters] = []
        self._known: list[set[str]] = []
        self._fresh: list[tuple[int, str]] = []

    def fresh(self) -> list[list[Any]]:
        """Return shapes the page has not had yet: font, letter, outline, advance."""
        fresh, self._fresh = self._fresh, []
        return [self._shape(font, letter) for font, letter in fresh]

    def known(self) -> list[list[Any]]:
        """Return every shape any text has needed so far."""
        self._fresh = []
        return [
            self._shape(font, letter)
            for font, known in enumerate(self._known)
            for letter in sorted(known)
        ]

    def element(self, text: Text, strokes: list[Stroke]) -> Element:
        """Return the element that shows a moving text."""
        font = self._font(text)
        em = float(text.get_fontsize()) * self._figure.dpi / 72
        looks: Attributes = {
            "kind": "text",
            "font": font,
            "scale": round(em * UNITS_PER_PIXEL / EM, 5),
            **clipping(strokes[-1], self._figure),
        }
        if strokes[0].kind == "path":
            looks |= {"ground": css(strokes[0].fill), "edge": css(strokes[0].line)}
            looks["edge-width"] = round(strokes[0].width * EM / em, 1)
        return Element(looks, self._reader(text, font, em))

    def _font(self, text: Text) -> int:
        """Return the number of a text's font, with the letters always at hand."""
        letters = Letters(text.get_fontproperties())
        names = [font.name for font in self._fonts]
        if letters.name in names:
            return names.index(letters.name)
        self._fonts.append(letters)
        self._known.append(set())
        self._need(len(self._fonts) - 1, ALWAYS)
        return len(self._fonts) - 1

    def _need(self, font: int, text: str) -> None:
        """Note letters that the page will need."""
        new = set(text) - self._known[font]
        if new:
            self._known[font] |= new
            self._fresh += [(font, letter) for letter in sorted(new)]

    def _shape(self, font: int, letter: str) -> list[Any]:
        return [font, letter, *self._fonts[font].shape(letter)]

    def _reader(self, text: Text, font: int, em: float) -> Callable[[], Attributes]:
        """Return what reads a text's place, words and color."""
        (a, b, c), (d, e, f) = to_units(text.get_transform(), self._figure)[:2].tolist()
        metrics = line_metrics(text, self._renderer, EM / em)
        pad = _padding(text, EM)
        laid: dict[tuple[Any, ...], Attributes] = {}

        def read() -> Attributes:
            words, angle = text.get_text(), text.get_rotation()
            x, y = text.get_position()
            key = words, angle, text.get_horizontalalignment(), text.get_verticalalignment()
            if key not in laid:
                laid.clear()
                self._need(font, words.replace("\n", ""))
                laid[key] = layout(text, self._fonts[font], metrics, pad)
            at = [round(a * x + b * y + c), round(d * x + e * y + f), round(-angle, 2)]
            fill = named_css(text.get_color(), text.get_alpha())
            shown = "inline" if words and text.get_visible() else "none"
            return {"at": at, "fill": fill, "display": shown, **laid[key]}

        return read


def _padding(text: Text, em: int) -> float | None:
    """Return the room between words and the edge of their ground [1/1000 em]."""
    box = text.get_bbox_patch()
    if box is None:
        return None
    style: Any = box.get_boxstyle()
    if type(style).__name__ != "Square":
        raise TypeError("the ground of a moving text is a square box")
    return float(style.pad) * em


def line_metrics(text: Text, renderer: RendererAgg, scale: float) -> tuple[float, float, float]:
    """Measure ascent, descent and pitch of a text's lines, as matplotlib spaces them.

    Parameters
    ----------
    text : matplotlib.text.Text
        Measured in place and left as it was.
    renderer : RendererAgg
        Measures the font.
    scale : float
        Factor on the pixels measured [1].
    """
    kept = text.get_text(), text.get_rotation(), text.get_verticalalignment(), text.get_visible()
    text.set(text="lp", rotation=0, va="baseline", visible=True)
    foot = text.get_transform().transform(text.get_position())[1]
    one = text.get_window_extent(renderer)
    text.set_text("lp\nlp")
    two = text.get_window_extent(renderer)
    text.set(text=kept[0], rotation=kept[1], va=kept[2], visible=kept[3])
    return (one.y1 - foot) * scale, (foot - one.y0) * scale, (two.height - one.height) * scale


def layout(
    text: Text, letters: Letters, metrics: tuple[float, float, float], pad: float | None
) -> Attributes:
    """Place the lines of a text around its anchor, x to the right and y down along the lines.

    Parameters
    ----------
    text : matplotlib.text.Text
        Gives words, alignment and turn.
    letters : Letters
        Gives widths [1/1000 em].
    metrics : tuple of float
        Ascent, descent and pitch of a line [1/1000 em].
    pad : float or None
        Room around the words inside their ground [1/1000 em]; None without ground.
    """
    ascent, descent, pitch = metrics
    lines = text.get_text().split("\n")
    widths = [letters.width(line) for line in lines]
    width, height = max(widths), ascent + descent + pitch * (len(lines) - 1)
    left, top = _anchor(text, width, height, ascent, descent)
    share = {"left": 0.0, "center": 0.5, "right": 1.0}[text.get_horizontalalignment()]
    placed = [
        [line, round(left + share * (width - own)), round(top + ascent + pitch * row)]
        for row, (line, own) in enumerate(zip(lines, widths, strict=True))
    ]
    laid: Attributes = {"lines": placed}
    if pad is not None:
        sides = left - pad, top - pad, width + 2 * pad, height + 2 * pad
        laid["box"] = [round(side) for side in sides]
    return laid


def _anchor(
    text: Text, width: float, height: float, ascent: float, descent: float
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
