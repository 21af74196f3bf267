"""Sentences about edges: chamfers, edge breaks, thin sheet, and the shop's rules for them."""

from difflib import get_close_matches

from seatwork import checks, hardware, seats, units
from seatwork.errors import SeatworkError
from seatwork.shop import Rule, rules
from seatwork.show.said import Said, quoted, said, typed
from seatwork.show.sizes_said import diameter_of, system_of
from seatwork.units import show_angle, show_both

RULES = {
    "chamfer without a size": (
        ("chamfer.inch_leg", "chamfer.inch_greatest"),
        ("chamfer.metric_leg", "chamfer.metric_greatest"),
    ),
    "countersink in thin sheet": (("countersink.sheet_share",),),
    "cross-hole cutter": (("crosshole.greatest_leg",),),
    "counterbore speed": (("speeds.counterbore_ratio",),),
    "countersink speed": (("speeds.countersink_ratio",), ("speeds.countersink_cap",)),
    "casting skin": (("spotface.scale_allowance",),),
    "flush": (("flush.greatest_below",), ("flush.greatest_proud",)),
    "pilot": (("pilot.clearance",),),
}
"""The rules a lesson speaks of, by the words a learner uses: names of one, or of two ends."""


def rule(about: str) -> Said:
    """Say a rule of the shop.

    Parameters
    ----------
    about : str
        What it is about: ``chamfer without a size``, ``countersink in thin sheet``,
        ``cross-hole cutter``, ``counterbore speed``, ``countersink speed``, ``casting skin``,
        ``flush`` or ``pilot``.

    Returns
    -------
    Said
        What the rule settles, its value in force and where it comes from.

    Raises
    ------
    SeatworkError
        If no rule is known by these words.

    Examples
    --------
    >>> print(rule("countersink in thin sheet"))
    Deepest countersink as a part of the sheet thickness: 2/3 (from memory)
    """
    if about not in RULES:
        near = get_close_matches(str(about), RULES, 3, 0.3) or list(RULES)
        raise SeatworkError(
            str(about)[:60],
            "no rule here is called that",
            f"write {' or '.join(near)}",
            options=tuple(near),
        )
    told = [_told([rules()[name] for name in ends]) for ends in RULES[about]]
    names = [name for ends in RULES[about] for name in ends]
    return said(*told, code=[f'print(sw.rules()["{name}"])' for name in names])


def _told(ends: list[Rule]) -> tuple[str, str]:
    """Say one rule, or the two ends of one."""
    first = ends[0]
    amount = " to ".join(one.shown for one in ends)
    return first.about, f"{amount} ({first.source})"


def edge_limits(leg: str) -> Said:
    """Say how far a chamfer without limits may be off: general tolerances, class m.

    Parameters
    ----------
    leg : str
        The leg of the chamfer.

    Returns
    -------
    Said
        Plus or minus, by ISO 2768-1 class m.

    Raises
    ------
    SeatworkError
        If the leg is no size.

    Examples
    --------
    >>> print(edge_limits("1 mm"))
    chamfer 1.00 mm (0.039 in), class m: plus or minus 0.20 mm (0.008 in)
    """
    size, system = units.length(leg), system_of(leg)
    allowed = hardware.edge_tolerance(size).value
    return said(
        (
            f"chamfer {show_both(size, system)}, class m",
            f"plus or minus {show_both(allowed, system)}",
        ),
        code=(
            f"allowed = sw.hardware.edge_tolerance({typed(leg)})",
            f'print(sw.units.show_both(allowed.value, "{system}"))',
        ),
    )


def mouth(*, hole: str, leg: str) -> Said:
    """Say how wide a hole's mouth is with a 45° chamfer of some leg.

    Parameters
    ----------
    hole : str
        The hole: a size or a drill.
    leg : str
        The leg, on each side.

    Returns
    -------
    Said
        Diameter at the face.

    Raises
    ------
    SeatworkError
        If a size cannot be read.

    Examples
    --------
    >>> print(mouth(hole=".266 in", leg=".015 in"))
    the mouth: 0.296 in (7.52 mm), the hole and two legs
    """
    through, code = diameter_of(hole)
    system = system_of(hole, leg)
    wide = seats.Chamfer(leg=units.length(leg)).diameter_at(through)
    return said(
        ("the mouth", f"{show_both(wide, system)}, the hole and two legs"),
        code=(
            f"mouth = sw.Chamfer(leg={typed(leg)}).diameter_at({code})",
            f'print(sw.units.show_both(mouth, "{system}"))',
        ),
    )


def leg(*, mouth: str, hole: str) -> Said:
    """Say the leg of a cone: half the difference of its mouth and its hole.

    Parameters
    ----------
    mouth : str
        Diameter at the face.
    hole : str
        The hole: a size or a drill.

    Returns
    -------
    Said
        The leg, across on one side.

    Raises
    ------
    SeatworkError
        If a size cannot be read, or the mouth is not wider than the hole.

    Examples
    --------
    >>> print(leg(mouth=".385 in", hole=".201 in"))
    the leg: 0.092 in (2.34 mm), half the difference
    """
    wide, (through, code) = units.length(mouth), diameter_of(hole)
    checks.smaller(through, "hole", wide, "mouth")
    system = system_of(mouth, hole)
    return said(
        ("the leg", f"{show_both((wide - through) / 2, system)}, half the difference"),
        code=(
            f"leg = ({typed(mouth)} - {code}) / 2",
            f'print(sw.units.show_both(leg, "{system}"))',
        ),
    )


def chamfer(*, hole: str, deep: str, tool: float) -> Said:
    """Say what a tool makes of a chamfer that was to be 45°, at the depth of the print's leg.

    Parameters
    ----------
    hole : str
        The hole: a size or a drill.
    deep : str
        Depth of the cut, from the face.
    tool : float
        Included angle of the tool [deg].

    Returns
    -------
    Said
        Leg and mouth, and the mouth that a 90° tool makes.

    Raises
    ------
    SeatworkError
        If a size cannot be read, or the angle makes no cone.

    Examples
    --------
    >>> print(chamfer(hole=".266 in", deep=".03 in", tool=82))
    the leg: 0.026 in (0.66 mm)
    the mouth: 0.318 in (8.08 mm)
    with a 90° tool: 0.326 in (8.28 mm)
    """
    through, code = diameter_of(hole)
    depth, system = units.length(deep), system_of(hole, deep)
    made = seats.Chamfer.from_depth(depth=depth, included_angle=tool)
    told = [
        ("the leg", show_both(made.leg, system)),
        ("the mouth", show_both(made.diameter_at(through), system)),
    ]
    if tool != 90:
        right = seats.Chamfer.from_depth(depth=depth, included_angle=90)
        told.append(("with a 90° tool", show_both(right.diameter_at(through), system)))
    return said(
        *told,
        code=(
            f"made = sw.Chamfer.from_depth(depth={typed(deep)}, included_angle={tool:g})",
            f'print(sw.units.show_both(made.leg, "{system}"))',
            f'print(sw.units.show_both(made.diameter_at({code}), "{system}"))',
        ),
    )


def least_sheet(*, rivet: str) -> Said:
    """Say the thinnest sheet for a flush rivet's countersink, by the rules that disagree most.

    Parameters
    ----------
    rivet : str
        Shank of the rivet, such as ``5/32``.

    Returns
    -------
    Said
        Depth of the countersink for the head, then the thinnest and the thickest answer, each
        with who says so.

    Raises
    ------
    SeatworkError
        If no list has the rivet.

    Examples
    --------
    >>> len(least_sheet(rivet="5/32").rows)
    3
    """
    found = hardware.rivet(rivet)
    head, hole = found.head, found.drill.diameter
    cone = seats.Countersink(
        diameter=head.sharp_diameter, hole_diameter=hole, included_angle=head.included_angle
    )
    high = head.height if head.height is not None else cone.depth
    ruled = hardware.least_thickness(
        countersink_depth=cone.depth, head_height=high, rivet=found.name
    )
    return said(
        ("countersink", f"{show_both(cone.depth)} deep at {show_angle(head.included_angle)}"),
        ("thinnest", f"{show_both(ruled[0].length)}, {ruled[0].rule}"),
        ("thickest", f"{show_both(ruled[-1].length)}, {ruled[-1].rule}"),
        code=(
            f"rivet = sw.hardware.rivet({quoted(rivet)})",
            "cone = sw.Countersink(",
            "    diameter=rivet.head.sharp_diameter,",
            "    hole_diameter=rivet.drill.diameter,",
            "    included_angle=rivet.head.included_angle,",
            ")",
            "found = sw.hardware.least_thickness(",
            "    countersink_depth=cone.depth, head_height=rivet.head.height, rivet=rivet.name",
            ")",
            "print(*(sw.units.show_both(one.length) for one in found))",
        ),
    )
