"""Still sections of a counterbore, a spotface, a chamfer and an empty countersink.

Each can leave one size to be found, for a question: the picture then shows a question mark
there, and no print note, which would give it away.
"""

from seatwork.drawings.parts import words
from seatwork.drawings.parts.hole_plate import Hole, draw_hole
from seatwork.drawings.scene import Drawing, Look
from seatwork.drawings.strokes import profiles
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.units import show_angle, show_both, show_note


def countersink(
    seat: Countersink, look: Look | None = None, *, asked: str | None = None
) -> Drawing:
    """Draw an empty countersink in section.

    Parameters
    ----------
    seat : Countersink
        Sizes [mm] and [deg].
    look : Look, optional
        Units, palette, size.
    asked : str, optional
        Size to be found, by name: "diameter", "depth", "hole_diameter", "included_angle".

    Returns
    -------
    Drawing
        Diameter at the face, depth from the face and included angle dimensioned.

    Raises
    ------
    SeatworkError
        If `asked` names no size of this drawing.
    """
    system = (look or Look()).system
    hole = Hole(
        title="Countersink",
        diameter=seat.diameter,
        hole_diameter=seat.hole_diameter,
        depth=seat.depth,
        wall=profiles.countersink_wall(seat, -4 * seat.depth),
        sizes={
            "diameter": ("diameter at the face", show_both(seat.diameter, system)),
            "depth": ("depth, face to hole edge", show_both(seat.depth, system)),
            "hole_diameter": ("hole", show_both(seat.hole_diameter, system)),
            "included_angle": ("included angle", show_angle(seat.included_angle)),
        },
        note=words.seat_note(seat, system),
        asked=asked,
        cone=seat,
    )
    return draw_hole(hole, look or Look())


def counterbore(
    seat: Counterbore, look: Look | None = None, *, asked: str | None = None
) -> Drawing:
    """Draw an empty counterbore in section.

    Parameters
    ----------
    seat : Counterbore
        Sizes [mm].
    look : Look, optional
        Units, palette, size.
    asked : str, optional
        Size to be found, by name: "diameter", "depth", "hole_diameter".

    Returns
    -------
    Drawing
        Diameter and depth from the face dimensioned.

    Raises
    ------
    SeatworkError
        If `asked` names no size of this drawing.
    """
    system = (look or Look()).system
    bore, small, deep = (
        show_note(size, system) for size in (seat.diameter, seat.hole_diameter, seat.depth)
    )
    hole = Hole(
        title="Counterbore",
        diameter=seat.diameter,
        hole_diameter=seat.hole_diameter,
        depth=seat.depth,
        wall=profiles.counterbore_wall(seat, -4 * seat.depth),
        sizes={
            "diameter": ("diameter of the bore", show_both(seat.diameter, system)),
            "depth": ("depth, face to floor", show_both(seat.depth, system)),
            "hole_diameter": ("hole", show_both(seat.hole_diameter, system)),
        },
        note=f"⌀{small} THRU ⌴ ⌀{bore} ↧{deep}",
        asked=asked,
    )
    return draw_hole(hole, look or Look())


def spotface(
    seat: Spotface, depth: float, look: Look | None = None, *, asked: str | None = None
) -> Drawing:
    """Draw a spotface on a rough casting in section.

    Parameters
    ----------
    seat : Spotface
        Sizes [mm].
    depth : float
        Depth from the highest spot of the rough face [mm], above zero.
    look : Look, optional
        Units, palette, size.
    asked : str, optional
        Size to be found, by name: "diameter", "depth", "hole_diameter".

    Returns
    -------
    Drawing
        Diameter, and depth from the highest spot, dimensioned.

    Raises
    ------
    SeatworkError
        If `asked` names no size of this drawing.
    """
    system = (look or Look()).system
    wide, small = (show_note(size, system) for size in (seat.diameter, seat.hole_diameter))
    hole = Hole(
        title="Spotface",
        diameter=seat.diameter,
        hole_diameter=seat.hole_diameter,
        depth=depth,
        wall=profiles.spotface_wall(seat, depth, -2 * seat.diameter),
        sizes={
            "diameter": ("diameter of the spotface", show_both(seat.diameter, system)),
            "depth": ("depth from highest spot", show_both(depth, system)),
            "hole_diameter": ("hole", show_both(seat.hole_diameter, system)),
        },
        note=f"⌀{small} THRU, SPOTFACE ⌀{wide}",
        asked=asked,
        rough=True,
    )
    return draw_hole(hole, look or Look())


def chamfer(
    bevel: Chamfer, hole_diameter: float, look: Look | None = None, *, asked: str | None = None
) -> Drawing:
    """Draw the chamfer at the mouth of a hole in section.

    Parameters
    ----------
    bevel : Chamfer
        Leg along the face [mm] and included angle [deg].
    hole_diameter : float
        Diameter of the hole [mm].
    look : Look, optional
        Units, palette, size.
    asked : str, optional
        Size to be found, by name: "leg", "depth", "diameter", "hole_diameter",
        "included_angle".

    Returns
    -------
    Drawing
        Diameter at the face, depth and included angle dimensioned; the leg in words.

    Raises
    ------
    SeatworkError
        If `asked` names no size of this drawing.
    """
    system = (look or Look()).system
    seat = bevel.at_hole(hole_diameter)
    hole = Hole(
        title="Chamfer at a hole",
        diameter=seat.diameter,
        hole_diameter=hole_diameter,
        depth=seat.depth,
        wall=profiles.chamfer_wall(bevel, hole_diameter, -2 * seat.diameter),
        sizes={
            "leg": ("leg along the face", show_both(bevel.leg, system)),
            "depth": ("depth below the face", show_both(bevel.depth, system)),
            "diameter": ("diameter at the face", show_both(seat.diameter, system)),
            "hole_diameter": ("hole", show_both(hole_diameter, system)),
            "included_angle": ("included angle", show_angle(bevel.included_angle)),
        },
        note=words.seat_note(seat, system),
        asked=asked,
        cone=seat,
    )
    return draw_hole(hole, look or Look())
