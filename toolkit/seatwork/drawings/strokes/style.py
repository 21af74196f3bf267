"""Colors, line weights and type of every drawing: three palettes, two sizes.

A page is 1280 by 720 units, one unit to a pixel, origin at the lower left, so nothing is
stretched and a size on the page is a size on the screen.

Notes
-----
Color is never the only cue. Cut metal is hatched, the screw is plain with a heavy outline, the
contact has a ring of its own and a label, and every state is a word.
"""

from dataclasses import dataclass

from matplotlib.axes import Axes
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure

from seatwork.drawings.scene import Look

WIDTH, HEIGHT = 1280.0, 720.0
DOTS_PER_INCH = 100.0
POINTS = 72.0 / DOTS_PER_INCH
FONT = "DejaVu Sans"
CENTER_DASHES = (0, (9.0, 2.0, 2.0, 2.0))
HIDDEN_DASHES = (0, (4.0, 2.0))


@dataclass(frozen=True, slots=True, kw_only=True)
class Palette:
    """The colors of a drawing, by role; "#rrggbb".

    Parameters
    ----------
    paper : str
        Ground of the figure.
    ink : str
        Text, visible edges, dimensions.
    metal, hatch : str
        Cut metal and the lines across it.
    screw : str
        The uncut screw.
    center : str
        Centerlines.
    contact : str
        Where head and seat touch, and the words that say so.
    """

    paper: str
    ink: str
    metal: str
    hatch: str
    screw: str
    center: str
    contact: str


PALETTES = {
    "light": Palette(
        paper="#ffffff",
        ink="#1a1a1a",
        metal="#eeece6",
        hatch="#6f6b63",
        screw="#cfe2f3",
        center="#00579e",
        contact="#b03000",
    ),
    "dark": Palette(
        paper="#14171a",
        ink="#f4f4f4",
        metal="#2b3036",
        hatch="#9ba3ab",
        screw="#1f4668",
        center="#8cc6ff",
        contact="#ffb27a",
    ),
    "print": Palette(
        paper="#ffffff",
        ink="#000000",
        metal="#ffffff",
        hatch="#555555",
        screw="#ffffff",
        center="#000000",
        contact="#000000",
    ),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Sizes:
    """Type and line weights.

    Parameters
    ----------
    text, large : float
        Type of ordinary words and of the one figure that matters most [pt].
    edge, thin, contact : float
        Weights of visible edges, of every other line, and of the contact [page units].
    arrow : float
        Length of an arrowhead, three times its width [page units].
    hatch : float
        Distance between hatch lines [page units].
    """

    text: float
    large: float
    edge: float
    thin: float
    contact: float
    arrow: float
    hatch: float


DESK = Sizes(text=18.0, large=22.0, edge=4.2, thin=2.2, contact=5.4, arrow=19.0, hatch=20.0)
PROJECTOR = Sizes(text=18.0, large=22.0, edge=5.4, thin=3.0, contact=6.5, arrow=21.0, hatch=24.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Style:
    """Everything a drawing asks before it draws: colors and sizes for one look."""

    colors: Palette
    sizes: Sizes

    @property
    def line_height(self) -> float:
        """Distance from one line of text to the next [page units]."""
        return 1.45 * self.sizes.text / POINTS


def style(look: Look) -> Style:
    """Return the style for `look`.

    Examples
    --------
    >>> style(Look(projector=True)).sizes.text
    18.0
    """
    return Style(colors=PALETTES[look.palette], sizes=PROJECTOR if look.projector else DESK)


def page(colors: Palette, *, height: float = HEIGHT) -> tuple[Figure, Axes]:
    """Make an empty page: a figure with one axes in page units.

    Parameters
    ----------
    colors : Palette
        Colors of the drawing; the ground is opaque.
    height : float
        Height of the page [page units]; its width is always 1280.
    """
    size = (WIDTH / DOTS_PER_INCH, height / DOTS_PER_INCH)
    figure = Figure(figsize=size, dpi=DOTS_PER_INCH, facecolor=colors.paper)
    FigureCanvasAgg(figure)
    axes = figure.add_axes((0.0, 0.0, 1.0, 1.0), xlim=(0.0, WIDTH), ylim=(0.0, height))
    axes.set_aspect("equal")
    axes.set_axis_off()
    return figure, axes
