"""The formula page: what the bench needs to reckon by hand, with this shop's constants."""

from seatwork import shop
from seatwork.cards.blocks import caption, heading
from seatwork.cards.pages import Pages
from seatwork.drawings import Look, triangle
from seatwork.quantities import INCH
from seatwork.seats.cones import half_tangent
from seatwork.units import show_angle, show_number

TRIANGLE, SEAT = 2.55, (0.507 * INCH, 0.266 * INCH, 82.0)
"""Height of the picture of the triangle [in], and the seat it shows: the frame's [mm, deg]."""

ANGLES = (60.0, 82.0, 90.0, 100.0, 118.0, 120.0)
LETTERS = (
    "A included angle · D diameter at the face · d hole · Dh theoretical sharp diameter of the "
    "head · T = 2 tan(A/2), from the table below · V cutting speed"
)
FORMULAS = (
    (
        "Countersink",
        (
            "depth from the face = (D - d) / T",
            "D = d + T x depth",
            "travel after the lips touch the hole edge = depth",
            "travel after the nose touches a solid face = (D - nose diameter) / T",
            "a stop error e changes D by T x e",
        ),
    ),
    (
        "Head in a seat of its own angle",
        (
            "above the face = (Dh - D) / T; minus is below",
            "steeper head: rides the hole edge; flatter head: rides the rim",
        ),
    ),
    (
        "Gaging",
        (
            "top of a ball of radius r above the face = r / sin(A/2) + r - D / T",
            "two balls, R and r: sin(A/2) = (R - r) / (difference of the tops - (R - r))",
            "head over a gage hole G: stands (Dh - G) / T above it",
        ),
    ),
    (
        "Counterbore, spotface, chamfer",
        (
            "counterbore depth = greatest head height + how far below the face",
            "spotface on a face tilted by t: depth from first touch = D x tan(t)",
            "chamfer leg along the face = depth x T / 2; a hole grows by two legs",
        ),
    ),
    (
        "Speed and feed",
        (
            "rev/min = 12 x V / (3.1416 x D), V in ft/min, D in inches (12/3.1416 = 3.82)",
            "rev/min = 1000 x V / (3.1416 x D), V in m/min, D in mm (1000/3.1416 = 318)",
            "feed per minute = rev/min x feed per turn",
            "a third slower is x 2/3, not x 1/3; then the next step down, never above a cap",
        ),
    ),
)
SECTIONS = (
    "speeds",
    "feeds",
    "flush",
    "countersink",
    "counterbore",
    "spotface",
    "pilot",
    "hole",
    "tapped_hole",
    "chamfer",
    "edge",
)


def formula_page(*, paper: str = "") -> Pages:
    """Set the formulas, then every rule of the house with its value and source.

    Parameters
    ----------
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    """
    pages = Pages(paper, foot="Formula sheet")
    heading(pages, "Formula sheet", LETTERS)
    for title, lines in FORMULAS:
        caption(pages, title)
        for line in lines:
            pages.text(line, indent=0.15)
    caption(pages, "T = 2 tan(A/2)")
    shown = (f"{show_angle(a)}: {show_number(2 * half_tangent(a), 4, least=4)}" for a in ANGLES)
    pages.text("; ".join(shown), indent=0.15)
    _triangle(pages)
    pages.new_page()
    _constants(pages)
    return pages


def _triangle(pages: Pages) -> None:
    """Set the triangle of one seat, as everywhere in the course."""
    caption(pages, "The triangle: down = across ÷ tangent of half the angle", needs=TRIANGLE)
    looks = Look(system=shop.rules().word("display.system"), palette="print")
    pages.picture(triangle(*SEAT, look=looks).png(2.0), height=TRIANGLE)


def _constants(pages: Pages) -> None:
    rules = shop.rules()
    heading(pages, "The constants of this shop", "House rules in force, each with its source.")
    head = ("rule", "value", "where it comes from")
    rows = [
        (rule.about, rule.shown, rule.source)
        for rule in rules.values()
        if rule.name.partition(".")[0] in SECTIONS
    ]
    pages.table([head, *rows], [share * pages.room for share in (0.42, 0.22, 0.36)])
