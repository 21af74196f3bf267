"""What is read off the plain things of a scene: the attributes that the page sets."""

from collections.abc import Callable
from typing import Any

from seatwork.live.laying import TextReader
from seatwork.live.writing import places, written
from seatwork.takehome.inside.plain_artists import Circle, Line2D, Patch, Text

Attributes = dict[str, Any]
Facts = dict[str, Any]
WidthOf = Callable[[int], Callable[[str], int]]

LONGEST = 400
"""Most vertices of a path: the live picture leaves out what is not seen of a longer one."""


class Followed:
    """The things of one scene that move, and what was last read off them.

    Parameters
    ----------
    things : list of Artist
        In the order they were put on the page.
    told : list
        For each its elements: number and facts, as the live picture told them.
    width_of : callable
        Gives, for the number of a font, what measures a line in it.

    Raises
    ------
    ValueError
        If there are not as many things as were told of.
    """

    def __init__(self, things: list[Any], told: list[Any], width_of: WidthOf) -> None:
        self._readers = [
            (str(number), _reader(thing, facts, width_of))
            for thing, elements in zip(things, told, strict=True)
            for number, facts in elements
        ]
        self.state: dict[str, Attributes] = {}

    def changes(self) -> dict[str, Attributes]:
        """Return what changed since the last reading, by element."""
        found = {}
        for number, read in self._readers:
            now, last = read(), self.state.get(number, {})
            change = {name: value for name, value in now.items() if last.get(name) != value}
            if change:
                found[number] = change
                self.state[number] = now
        return found


def _reader(thing: Any, facts: Facts, width_of: WidthOf) -> Callable[[], Attributes]:
    """Return what reads one element of a thing."""
    kind, place = facts["kind"], facts["place"]
    if kind == "text":
        assert isinstance(thing, Text)
        reader = TextReader(thing, place, facts["metrics"], facts["pad"], width_of(facts["font"]))
        return lambda: {**reader.read(), "fill": _css(thing.get_color(), thing.get_alpha())}
    if kind == "marks":
        return lambda: {"at": places(thing.points, place), **_shown(thing)}
    if kind == "line":
        assert isinstance(thing, Line2D)
        return lambda: {
            "d": written(_short(thing.points), None, place),
            **_shown(thing),
            "stroke": _css(thing.get_color(), thing.get_alpha()),
        }
    assert isinstance(thing, Patch)
    return lambda: _patch(thing, facts)


def _patch(thing: Patch, facts: Facts) -> Attributes:
    """Read an outline; where it has a hatch, its colors are the hatch's."""
    if isinstance(thing, Circle):
        points, codes = facts["round"]
        d = written(points, bytes(codes), _round(thing, facts["place"]))
    else:
        path = thing.path
        d = written(_short(path.vertices.rows), path.written_codes, facts["place"])
    shown = {"d": d, **_shown(thing)}
    if facts["fixed"]:
        return shown
    looks = thing.looks
    fill = _css(looks["facecolor"], looks["alpha"]) if looks["fill"] else "none"
    line = _css(looks["edgecolor"], looks["alpha"]) if looks["wide"] else "none"
    return shown | {"fill": fill, "stroke": line}


def _round(thing: Circle, place: list[float]) -> list[float]:
    """Return the map from the unit circle to units."""
    a, b, c, d, e, f = place
    (x, y), size = thing.center, thing.radius
    return [a * size, b * size, a * x + b * y + c, d * size, e * size, d * x + e * y + f]


def _short(points: Any) -> Any:
    if len(points) > LONGEST:
        raise ValueError(f"a path of {len(points)} vertices is too long for a page")
    return points


def _shown(thing: Any) -> Attributes:
    return {"display": "inline" if thing.looks["visible"] else "none"}


def _css(color: Any, alpha: float | None) -> str:
    """Return a color for the page."""
    if color in (None, "none"):
        return "none"
    if alpha is not None or not (str(color).startswith("#") and len(color) == 7):
        raise ValueError(f"a page takes no color such as {color}, {alpha}")
    return str(color).lower()
