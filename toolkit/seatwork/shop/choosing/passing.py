"""Why the cutter that looks nearer was passed over, and what to grind where none fits.

What looks near is a judgement of the trade, common practice, no source: a hand in the drawer
goes by angle and width first.
"""

from collections.abc import Iterator
from math import inf, log

from seatwork.seats import Countersink
from seatwork.shop.choosing.choosing import Choice, Choices, Refusal
from seatwork.shop.choosing.fitting import Assembly, Round, pilot_misfit, shape_misfit
from seatwork.shop.house.house_rules import HouseRules
from seatwork.shop.lists.cutters import CONES, FLAT
from seatwork.units import show_angle, show_both

MOST = 2
ANGLE = 20.0  # deg that weigh as much as a body e times as wide
WIDER, PILOT, BARE = 0.5, 2.0, 0.2
ALIKE = 0.5
REGROUND = 10.0  # deg a one-flute countersink is reground at most
DOWN = 1.25  # times as wide, ground down at most


def passed_over(choices: Choices, seat: Round) -> tuple[Refusal, ...]:
    """Return the cutters that look at least as near as the one chosen, and why not they.

    Parameters
    ----------
    choices : Choices
        The shop's cutters, sorted for the seat.
    seat : Countersink, Counterbore or Spotface
        The seat.

    Returns
    -------
    tuple of Refusal
        The nearest first, two at most; where nothing fits, those that are much alike.
    """
    best = choices.best
    within = _apart(best.tool, seat) if best else ALIKE
    others = (Refusal(tool=one.tool, sentence=_behind(one, best)) for one in choices.ranked[1:])
    near = [(_apart(one.tool, seat), one) for one in (*choices.refused, *others)]
    near = [(apart, one) for apart, one in near if apart <= within + 1e-9]
    found: dict[str, Refusal] = {}
    for _, one in sorted(near, key=lambda pair: (pair[0], pair[1].tool.name)):
        found.setdefault(one.tool.cutter.name, one)
    chosen = best.tool.cutter.name if best else ""
    return tuple(one for name, one in found.items() if name != chosen)[:MOST]


def to_grind(choices: Choices, seat: Round, rules: HouseRules, system: str = "inch") -> str:
    """Say what can be ground or turned where nothing fits; empty where nothing is near.

    Parameters
    ----------
    choices : Choices
        The shop's cutters, sorted for the seat.
    seat : Countersink, Counterbore or Spotface
        The seat.
    rules : HouseRules
        The house rules in force.
    system : {"inch", "metric"}
        Which unit system stands first.
    """
    ways = _cone_ways if isinstance(seat, Countersink) else _flat_ways
    near = sorted(choices.refused, key=lambda one: _apart(one.tool, seat))
    return next((way for one in near for way in ways(one.tool, seat, rules, system)), "")


def _behind(other: Choice, best: Choice | None) -> str:
    """Say what puts one that fits behind the best: what weighs most against it."""
    if other.reasons_against:
        return min(other.reasons_against, key=lambda one: one.weight).sentence
    ahead = f": {best.reasons_for[0].sentence}" if best and best.reasons_for else ""
    return f"it fits too; {best.tool.name if best else 'the other'} goes first{ahead}"


def _apart(tool: Assembly, seat: Round) -> float:
    """Return how unlike a tool and a seat look, by angle and width; infinite for another kind."""
    cutter, body = tool.cutter, tool.cutter.body_diameter
    cone = isinstance(seat, Countersink)
    if cutter.kind not in (CONES if cone else FLAT) or not body:
        return inf
    apart = abs(log(body / seat.diameter))
    if isinstance(seat, Countersink):
        apart *= 1 if body < seat.diameter else WIDER
        return apart + abs((cutter.included_angle or 0.0) - seat.included_angle) / ANGLE
    pilot = tool.pilot_diameter
    return apart + (PILOT * abs(log(pilot / seat.hole_diameter)) if pilot else BARE)


def _cone_ways(tool: Assembly, seat: Round, rules: HouseRules, system: str) -> Iterator[str]:
    cutter, angle = tool.cutter, tool.cutter.included_angle
    if not isinstance(seat, Countersink) or cutter.flutes != 1 or angle is None:
        return
    wide = (cutter.body_diameter or 0.0) >= seat.diameter
    goes_in = cutter.nose_diameter < seat.hole_diameter
    near = 0 < abs(angle - seat.included_angle) <= REGROUND
    if wide and goes_in and near and cutter.material == "hss":
        yield f"have {cutter.name} ground to {show_angle(seat.included_angle)}"


def _flat_ways(tool: Assembly, seat: Round, rules: HouseRules, system: str) -> Iterator[str]:
    cutter, body = tool.cutter, tool.cutter.body_diameter or 0.0
    if cutter.pilot == "none":
        return
    pilot = show_both(seat.hole_diameter - rules.number("pilot.clearance"), system)
    if shape_misfit(tool, seat) is None:
        if cutter.pilot == "removable":
            yield f"turn a pilot of {pilot} for {cutter.name}"
        elif (tool.pilot_diameter or 0.0) > seat.hole_diameter:
            yield f"have the pilot of {cutter.name} ground to {pilot}"
    elif seat.diameter < body <= DOWN * seat.diameter and pilot_misfit(tool, seat) is None:
        yield f"have {cutter.name} ground down to {show_both(seat.diameter, system)}"
