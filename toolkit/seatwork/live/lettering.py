"""Moving texts: laid out as matplotlib lays them out, sent as words, drawn as letter shapes.

The page needs no font: a still and a live picture have the same letters on every machine.
"""

from collections.abc import Callable
from typing import Any

from matplotlib.backends.backend_agg import FigureCanvasAgg, RendererAgg
from matplotlib.figure import Figure
from matplotlib.text import Text

from seatwork.live.element import Attributes, Element, clipping, css, named_css, to_units
from seatwork.live.laying import TextReader
from seatwork.live.outlines import EM, UNITS_PER_PIXEL, Letters, flat
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

    @property
    def fonts(self) -> list[str]:
        """The names of the fonts, by their numbers."""
        return [font.name for font in self._fonts]

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
        reader = self._reader(text, font, em)
        facts = {"kind": "text", "font": font, "place": reader.place, "metrics": reader.metrics}
        return Element(
            looks,
            lambda: {**reader.read(), "fill": named_css(text.get_color(), text.get_alpha())},
            facts | {"pad": reader.pad},
        )

    def _font(self, text: Text) -> int:
        """Return the number of a text's font, with the letters always at hand."""
        letters = Letters(text.get_fontproperties())
        if letters.name in self.fonts:
            return self.fonts.index(letters.name)
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

    def _reader(self, text: Text, font: int, em: float) -> TextReader:
        """Return what reads a text's place, words and color."""
        place = flat(to_units(text.get_transform(), self._figure))
        metrics = line_metrics(text, self._renderer, EM / em)
        return TextReader(text, place, metrics, _padding(text, EM), self._width_of(font))

    def _width_of(self, font: int) -> Callable[[str], int]:
        """Return what measures a line in a font, and notes the letters it will need."""

        def width(line: str) -> int:
            self._need(font, line)
            return self._fonts[font].width(line)

        return width


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
