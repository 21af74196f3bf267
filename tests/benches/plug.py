"""A small bench for tests: a taper plug let down into a bored plate, with every kind of artist.

The slope of the plug is 1:1, so that every size can be told without a formula.
"""

from dataclasses import dataclass

import numpy as np
from matplotlib.figure import Figure
from matplotlib.patches import Circle, PathPatch, Polygon
from matplotlib.path import Path
from seatwork.benches.bench import Bench
from seatwork.benches.build.controls import Choice, Number, Switch
from seatwork.benches.build.measures import Measure
from seatwork.drawings.scene import Drawing, Look
from seatwork.errors import SeatworkError
from seatwork.quantities import Length
from seatwork.units import show_both

BORE, PLATE, HEAD = 3.3, 14.0, 6.6  # bore radius, plate thickness, plug radius [mm]
INK = {"light": ("#1a1a1a", "#ffffff"), "dark": ("#f2f2f2", "#16181b"), "print": ("k", "w")}


@dataclass(frozen=True, slots=True, kw_only=True)
class Plug:
    """A plug that stands at a height over a cone cut to a depth [mm]."""

    depth: float
    greased: bool = False

    @property
    def height(self) -> float:
        """Height of the plug's top over the face [mm]."""
        return HEAD - BORE - self.depth

    @property
    def state(self) -> str:
        """How the plug lies."""
        return "proud" if self.height > 0 else "below"

    def text(self, system: str) -> str:
        """All numbers of the picture."""
        deep = f"Cone {show_both(self.depth, system)} deep"
        return f"{deep}; plug {show_both(abs(self.height), system)} {self.state}."


class PlugScene:
    """Half of the artists still, half of them moving, some still ones above moving ones."""

    def __init__(self, plug: Plug, look: Look) -> None:
        self.plug, self.look = plug, look

    def draw(self) -> Drawing:
        """Make the figure."""
        ink, ground = INK[self.look.palette]
        self.figure = Figure(figsize=(7.2, 4.5), dpi=100, facecolor=ground)
        axes = self.figure.add_axes((0, 0, 1, 1), xlim=(-24, 24), ylim=(-19, 11))
        axes.set_axis_off()
        size = 18 if self.look.projector else 10
        for side in (-1, 1):
            corners = [(BORE, 0), (22, 0), (22, -PLATE), (BORE, -PLATE)]
            corners = [(side * x, y) for x, y in corners]
            axes.add_patch(Polygon(corners, fc="#c8d4e0", ec="k", hatch="//", lw=1.2))
        axes.text(-20, -17, "plate", color=ink, size=size)
        axes.text(0, 10, "face", color=ink, size=size, ha="center", zorder=5)
        self._move_these(axes, ink, ground, size)
        return Drawing(self.figure, self.move(self.plug))

    def _move_these(self, axes, ink: str, ground: str, size: float) -> None:
        kept = {"animated": True}
        self.cone = axes.add_patch(Polygon(np.zeros((4, 2)), fc=ground, ec=ink, lw=1.2, **kept))
        body = Path(np.zeros((7, 2)), closed=True)
        self.body = axes.add_patch(PathPatch(body, fc="#d9bd6a", ec=ink, hatch="xx", **kept))
        self.lines = [
            axes.plot([0], [0], color=ink, lw=1.5, ls=ls, **kept)[0] for ls in ("-", "--")
        ]
        (self.corner,) = axes.plot([0], [0], "s", color="#0072b2", ms=8, **kept)
        self.marks = axes.scatter([0], [0], s=40, marker="^", color="#0072b2", **kept)
        self.ball = axes.add_patch(Circle((16, 6), 2, fc="#d9bd6a", ec=ink, **kept))
        self.image = axes.imshow(
            np.zeros((2, 2)), extent=(-22, -14, 4, 9), vmin=0, vmax=1, cmap="gray", **kept
        )
        axes.set(xlim=(-24, 24), ylim=(-19, 11))
        label = {"size": size, "color": ink, "va": "center", "ha": "center", **kept}
        box = {"boxstyle": "square,pad=0.2", "fc": ground, "ec": "none"}
        self.deep = axes.text(14, 0, "", rotation=90, bbox=box, **label)
        self.wide = axes.text(0, 7, "", bbox=box, **label)

    @property
    def ghosts(self):
        """The plug and the cone may stay behind."""
        return [self.cone, self.body]

    def move(self, plug: Plug) -> str:
        """Set the data."""
        deep, top, wide = plug.depth, plug.height, BORE + plug.depth
        self.cone.set_xy([(-wide, 0), (-BORE, -deep), (BORE, -deep), (wide, 0)])
        stem = BORE - 0.2
        half = [(HEAD, top), (stem, top - HEAD + stem), (stem, -16)]
        corners = half + [(-x, y) for x, y in reversed(half)]
        self.body.set_path(Path([*corners, corners[0]], closed=True))
        self.lines[0].set_data([-wide, wide, np.nan, wide, wide], [5, 5, np.nan, 0, 5])
        self.lines[1].set_data([-22, 22], [top, top])
        self.corner.set_data([HEAD], [top])
        self.marks.set_offsets([(-wide, -0.6), (wide, -0.6)])
        self.ball.set_center((16, 6 + top / 4))
        self.image.set_data([[0, deep / 10], [deep / 10, 1]])
        self.deep.set_text(show_both(deep, self.look.system))
        self.deep.set_position((14, -deep / 2))
        self.wide.set_text(show_both(2 * wide, self.look.system))
        return plug.text(self.look.system)


class PlugBench(Bench[Plug]):
    """The bench of the plug."""

    name = "plug"
    title = "A plug in a bored plate"
    controls = (
        Number(
            name="depth",
            label="Depth of the cone",
            low=0.254,
            high=10.16,
            start=3.81,
            why="the plate would be cut through",
        ),
        Choice(name="metal", label="Metal", options=("iron", "steel"), start="iron", folded=True),
        Switch(name="greased", label="Greased", folded=True),
        Switch(name="closer", label="Look closer", back="Step back", redraws=True),
        Number(
            name="angle",
            label="Cutter angle",
            kind="angle",
            low=60,
            high=120,
            start=90,
            why="cutters are ground so",
            needs="closer",
        ),
    )

    def work_out(self, **values) -> Plug:
        """Refuse a cone that would come out below."""
        if values["depth"] > 8.89:
            raise SeatworkError(
                Length(values["depth"]), "that leaves too thin a floor", "cut less deep"
            )
        return Plug(depth=values["depth"], greased=values["greased"])

    def scene(self, result: Plug, look: Look) -> PlugScene:
        """Show the plug."""
        return PlugScene(result, look)

    def measures(self, result: Plug) -> tuple[Measure, ...]:
        """Height and state."""
        return (
            Measure("Plug over the face", abs(result.height), note=result.state),
            Measure("Lies", result.state, "word"),
        )
