"""What the drawings of questions share: sizes as they are said, one of them to be found.

They are sketches, not to scale: what they show is from where to where a size runs, so that
nothing can be measured off them. A size stands at its place with its label; the one that is
asked for has the label "?".
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from seatwork.drawings.scene import Drawing, present_look
from seatwork.drawings.strokes.linework import Point
from seatwork.drawings.strokes.sketch import Sketch
from seatwork.errors import SeatworkError

ASKED = "?"
GAP = 14.0
"""Between a dimension line and its label [page units]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """A sketch with the labels of its sizes.

    Parameters
    ----------
    title : str
        What is shown, as a sentence begins.
    names : mapping of str to str
        What each size of this sketch is called.
    labels : mapping of str to str
        The sizes to show, as they are said; "?" for the one asked for, or in its label.
    """

    title: str
    names: Mapping[str, str]
    labels: Mapping[str, str]

    def __post_init__(self) -> None:
        for name in self.labels:
            if name not in self.names:
                fault = "this sketch has no such size"
                raise SeatworkError(name, fault, f"take one of {', '.join(self.names)}")

    def __contains__(self, name: str) -> bool:
        return name in self.labels

    @property
    def text(self) -> str:
        """All sizes in one sentence."""
        lines = (
            f"{self.names[name]} {label.replace(ASKED, 'to be found')}"
            for name, label in self.labels.items()
        )
        listed = "; ".join(lines)
        return f"{self.title}, not to scale{': ' if listed else ''}{listed}."


class Page:
    """A sketch being drawn, which puts dimensions where their labels are known.

    Parameters
    ----------
    shown : Asked
        The sizes.
    """

    def __init__(self, shown: Asked) -> None:
        self.shown = shown
        self.sketch = Sketch({}, present_look())

    def across(
        self,
        name: str,
        ends: tuple[float, float],
        level: float,
        start: float,
        *,
        sign: str = "⌀ ",
    ) -> None:
        """Dimension a width above or below the part, from `start` out to `level`."""
        if name not in self.shown:
            return
        for x in ends:
            self.sketch.work.extension((x, start), (x, level))
        self.inside(name, ends, level, 20.0 if level > start else -20.0, sign=sign)

    def inside(
        self, name: str, ends: tuple[float, float], level: float, above: float, *, sign: str = "⌀ "
    ) -> None:
        """Dimension a width where it lies, its label so far above the line."""
        if name not in self.shown:
            return
        self.sketch.work.dimension((ends[0], level), (ends[1], level))
        self.write(name, (sum(ends) / 2, level + above), "center", sign)

    def down(self, name: str, levels: tuple[float, float], x: float, *starts: float) -> None:
        """Dimension a height at `x`; its label stands on the far side of where it starts.

        `starts` are the places of the part from which the two extension lines run.
        """
        if name not in self.shown:
            return
        for level, start in zip(levels, starts, strict=True):
            if start != x:
                self.sketch.work.extension((start, level), (x, level))
        low, high = sorted(levels)
        self.sketch.work.dimension((x, low), (x, high))
        right = x > starts[0]
        self.write(
            name, (x + (GAP if right else -GAP), (low + high) / 2), "left" if right else "right"
        )

    def write(self, name: str, place: Point, align: str, sign: str = "", after: str = "") -> None:
        """Write the label of a size, words before and after it, on paper of its own."""
        looks: dict[str, Any] = {"facecolor": self.sketch.colors.paper, "linewidth": 0, "pad": 1.5}
        asked = ASKED in self.shown.labels[name]
        weight: dict[str, Any] = {"fontweight": "bold", "fontsize": 24.0} if asked else {}
        words = f"{sign}{self.shown.labels[name]}{after}"
        self.sketch.write(*place, words, ha=align, bbox=looks, **weight)

    def angle(self, name: str, place: Point, tip: Point) -> None:
        """Write an included angle beside the part, with a leader to its slope."""
        if name not in self.shown:
            return
        self.sketch.work.leader((place[0] + 8.0, place[1]), tip)
        weight = "bold" if ASKED in self.shown.labels[name] else "normal"
        words = f"{self.shown.labels[name]} included"
        self.sketch.write(*place, words, ha="right", fontweight=weight)

    def finish(self) -> Drawing:
        """Return the drawing with its sentence."""
        self.sketch.finish()
        return Drawing(self.sketch.figure, self.shown.text)
