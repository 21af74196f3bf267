"""Spindle speed of an operation on the shop's machine: rule, diameter, raw speed, cap, step."""

from dataclasses import dataclass

from seatwork import cutting
from seatwork.shop.house.house_rules import HouseRules
from seatwork.shop.lists.machines import ShopMachine
from seatwork.shop.lists.materials import Material

RATIO_RULES = {
    "countersink": "speeds.countersink_ratio",
    "chamfer": "speeds.countersink_ratio",
    "center drill": "",
    "counterbore": "speeds.counterbore_ratio",
    "spotface": "speeds.spotface_ratio",
    "drill": "",
    "ream": "speeds.ream_ratio",
}
CAPPED = ("countersink", "chamfer")
TOOL_RULES = {"carbide": "speeds.carbide_ratio", "carbon steel": "speeds.carbon_steel_ratio"}
RANGE_END = {"slow end": 0.0, "middle": 0.5, "fast end": 1.0}


@dataclass(frozen=True, slots=True, kw_only=True)
class Spindle:
    """How a spindle speed was come by, in the order it is worked out.

    Parameters
    ----------
    rule : str
        Name of the house rule that gives the ratio; empty for drilling.
    ratio : float
        Share of the drill speed [-].
    surface_speed : float
        Drilling surface speed taken [m/min].
    source, confirmed : str
        Where the surface speed comes from.
    diameter : float
        Diameter it is reckoned at [mm].
    raw : float
        Spindle speed before steps and caps [rev/min].
    step : cutting.Step
        What to set.
    """

    rule: str
    ratio: float
    surface_speed: float
    source: str
    confirmed: str
    diameter: float
    raw: float
    step: cutting.Step


def spindle_for(
    operation: str,
    *,
    diameter: float,
    hole_diameter: float,
    material: Material,
    machine: ShopMachine,
    rules: HouseRules,
    tool_material: str = "hss",
) -> Spindle:
    """Work out a spindle speed from surface speed, house rule, caps and the machine's steps.

    Parameters
    ----------
    operation : str
        A key of `RATIO_RULES`.
    diameter : float
        Largest diameter that cuts [mm].
    hole_diameter : float
        Smallest one [mm]; 0 for a cut from solid.
    material : Material
        What is cut.
    machine : ShopMachine
        What turns.
    rules : HouseRules
        The rules in force.
    tool_material : {"hss", "carbide", "carbon steel"}
        What the lips are made of.

    Raises
    ------
    SeatworkError
        If the material's list has no speed.
    """
    rule = RATIO_RULES[operation]
    ratio = rules.number(rule) if rule else 1.0
    at = _diameter(operation, diameter, hole_diameter, rules)
    surface_speed = _surface_speed(material, rules) * _tool_ratio(tool_material, rules)
    raw = ratio * _reckoned(surface_speed, at, rules)
    step = cutting.pick_step(
        spindle_speed=raw,
        steps=machine.speeds,
        caps=_caps(operation, rules),
        nearest=rules.word("speeds.step") == "nearest",
        may_be_over=rules.number("speeds.step_over"),
    )
    return Spindle(
        rule=rule,
        ratio=ratio,
        surface_speed=surface_speed,
        source=material.speed_source,
        confirmed=material.speed_confirmed,
        diameter=at,
        raw=raw,
        step=step,
    )


def _reckoned(surface_speed: float, diameter: float, rules: HouseRules) -> float:
    """Reckon rev/min with the exact constant, or with the short one of the house rule."""
    constant = rules.word("speeds.constant")
    if constant in cutting.SHORTCUTS:
        short = cutting.SHORTCUTS[constant]
        return short.spindle_speed(cutting_speed=surface_speed, diameter=diameter)
    return cutting.spindle_speed(cutting_speed=surface_speed, diameter=diameter)


def _diameter(operation: str, diameter: float, hole_diameter: float, rules: HouseRules) -> float:
    mean = rules.word("speeds.countersink_diameter") == "mean"
    if operation in CAPPED and mean and hole_diameter > 0:
        return cutting.mean_diameter(diameter=diameter, hole_diameter=hole_diameter)
    return diameter


def _surface_speed(material: Material, rules: HouseRules) -> float:
    slow, fast = material.drill_speeds
    return slow + RANGE_END[rules.word("speeds.range_end")] * (fast - slow)


def _tool_ratio(tool_material: str, rules: HouseRules) -> float:
    rule = TOOL_RULES.get(tool_material)
    return rules.number(rule) if rule else 1.0


def _caps(operation: str, rules: HouseRules) -> dict[str, float]:
    if operation not in CAPPED:
        return {}
    return {"house rule speeds.countersink_cap": rules.number("speeds.countersink_cap")}
