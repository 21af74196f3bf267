"""What the scenes ask of matplotlib, where there is none: things that are put somewhere, and said.

Nothing is drawn here. The page has each thing that moves as it was drawn when the page was
written; a scene that is drawn on these puts its things in the same order, and a move sets them.
"""

from typing import Any

from seatwork.takehome.inside.plain_arrays import Array, asarray
from seatwork.takehome.inside.plain_paths import Path

SAID_ONCE = [
    "zorder",
    "linestyle",
    "linewidth",
    "hatch",
    "clip_path",
    "capstyle",
    "solid_capstyle",
    "joinstyle",
    "fontsize",
    "fontfamily",
    "family",
    "fontweight",
    "fontstyle",
    "parse_math",
    "marker",
    "markersize",
    "markerfacecolor",
    "markeredgecolor",
    "markeredgewidth",
    "aspect",
    "axis_off",
    "dpi",
    "xlim",
    "ylim",
    "figsize",
    "closed",
    "bbox",
    "linespacing",
]
"""Looks that no move changes: the page has them."""

OTHER_NAMES = {
    "ha": "horizontalalignment", "va": "verticalalignment", "lw": "linewidth", "ls": "linestyle",
    "fc": "facecolor", "ec": "edgecolor", "c": "color",
}  # fmt: skip


class Artist:
    """A thing of a picture.

    Parameters
    ----------
    **looks
        As matplotlib names them.
    """

    looks: dict[str, Any]

    def __init__(self, **looks: Any) -> None:
        self.looks = {"visible": True, "animated": False, "alpha": None, **self.begin()}
        self.set(**looks)

    def begin(self) -> dict[str, Any]:
        """Return the looks it has where nothing is said."""
        return {}

    def set(self, **looks: Any) -> None:
        """Set some looks."""
        for name, value in looks.items():
            getattr(self, f"set_{OTHER_NAMES.get(name, name)}")(value)

    def __getattr__(self, name: str) -> Any:
        """Return what sets or tells a look; matplotlib has a function for each."""
        deed, _, look = name.partition("_")
        if deed == "set" and look in SAID_ONCE:
            return lambda *_, **__: None
        if deed in ("set", "get") and look in self.looks:
            if deed == "get":
                return lambda: self.looks[look]
            return lambda value: self.looks.__setitem__(look, value)
        raise AttributeError(f"{type(self).__name__} has no {name} here")


class Line2D(Artist):
    """A line, or marks."""

    def __init__(self, x: Any, y: Any, **looks: Any) -> None:
        self.set_data(x, y)
        super().__init__(**looks)

    def begin(self) -> dict[str, Any]:
        """Return the looks it has where nothing is said."""
        return {"color": "#1f77b4"}

    def set_data(self, x: Any, y: Any) -> None:
        """Lay it through other points."""
        self.points = list(zip(_listed(x), _listed(y), strict=True))


class Patch(Artist):
    """Something with an outline."""

    def begin(self) -> dict[str, Any]:
        """Return the looks it has where nothing is said."""
        return {"facecolor": "#1f77b4", "edgecolor": "none", "fill": True, "wide": True}

    def set_linewidth(self, width: float) -> None:
        """Say whether it has a line round it."""
        self.looks["wide"] = width > 0


class PathPatch(Patch):
    """A path with its fill."""

    def __init__(self, path: Path, **looks: Any) -> None:
        self.path = path
        super().__init__(**looks)

    def set_path(self, path: Path) -> None:
        """Give it another path."""
        self.path = path


class Polygon(Patch):
    """A closed line with its fill."""

    def __init__(self, corners: Any, **looks: Any) -> None:
        self.set_xy(corners)
        super().__init__(**looks)

    def set_xy(self, corners: Any) -> None:
        """Give it other corners."""
        rows = asarray(corners).tolist()
        if rows and rows[0] != rows[-1]:
            rows.append(list(rows[0]))
        self.path = Path(Array(rows), closed=True)


class Circle(Patch):
    """A circle."""

    def __init__(self, center: Any, radius: float, **looks: Any) -> None:
        self.center, self.radius = center, radius
        super().__init__(**looks)

    def set_center(self, center: Any) -> None:
        """Put it elsewhere."""
        self.center = center

    def set_radius(self, radius: float) -> None:
        """Give it another size."""
        self.radius = radius


class Rectangle(Patch):
    """A box; the scenes draw it once."""

    def __init__(self, corner: Any, width: float, height: float, **looks: Any) -> None:
        self.box = corner, width, height
        super().__init__(**looks)


class Text(Artist):
    """Some words."""

    def __init__(self, x: float, y: float, text: str, **looks: Any) -> None:
        super().__init__(x=x, y=y, text=text, **looks)

    def begin(self) -> dict[str, Any]:
        """Return the looks it has where nothing is said."""
        return {
            "x": 0.0, "y": 0.0, "text": "", "color": "#000000", "rotation": 0.0,
            "rotation_mode": None, "horizontalalignment": "left", "verticalalignment": "baseline",
        }  # fmt: skip

    def set_position(self, place: tuple[float, float]) -> None:
        """Put it elsewhere."""
        self.looks["x"], self.looks["y"] = place

    def get_position(self) -> tuple[float, float]:
        """Return where it stands."""
        return self.looks["x"], self.looks["y"]


class Axes(Artist):
    """The page of a picture: what is put there, in its order."""

    def __init__(self, **looks: Any) -> None:
        self.things: list[Artist] = []
        super().__init__(**looks)

    def add_artist(self, thing: Any) -> Any:
        """Put a thing there."""
        self.things.append(thing)
        return thing

    add_patch = add_line = add_artist

    def text(self, x: float, y: float, text: str, **looks: Any) -> Text:
        """Put words there."""
        made = Text(x, y, text, **looks)
        self.things.append(made)
        return made

    @property
    def moving(self) -> list[Artist]:
        """What moves, in the order it was put there."""
        return [thing for thing in self.things if thing.looks["animated"]]


class Figure(Artist):
    """A picture."""

    def __init__(self, **_looks: Any) -> None:
        super().__init__()
        self.axes: list[Axes] = []

    def add_axes(self, _place: Any, **looks: Any) -> Axes:
        """Put a page there."""
        self.axes.append(Axes(**looks))
        return self.axes[-1]


class Missing:
    """What no scene asks for in a page; it can be named, and not used."""

    Image: Any = None

    def __init__(self, *_given: Any, **_looks: Any) -> None:
        raise NotImplementedError("the page has no such thing")


def canvas(_figure: Figure) -> None:
    """Take the figure that matplotlib would draw on."""


def _listed(numbers: Any) -> list[Any]:
    return numbers.rows if isinstance(numbers, Array) else list(numbers)
