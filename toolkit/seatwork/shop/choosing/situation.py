"""A tool that fits, and what it is to do: its spindle speed and its chatter outlook."""

from dataclasses import dataclass
from math import radians, tan

from seatwork import cutting
from seatwork.cutting.chatter.plain_floats import axial_limit
from seatwork.shop.choosing.fitting import Assembly, Round
from seatwork.shop.choosing.spindles import spindle_for
from seatwork.shop.house.house_rules import HouseRules
from seatwork.shop.lists.machines import ShopMachine
from seatwork.shop.lists.materials import Material

THIN = 3.2
# Assumed for the chatter outlook only: friction of chip on lip [deg] and chip thickness [mm].
FRICTION_ANGLE = 35.0
CHIP = 0.1


@dataclass(frozen=True, slots=True, kw_only=True)
class Situation:
    """A fitting tool, and what it is to do.

    Parameters
    ----------
    tool : Assembly
        Cutter with pilot and holder.
    seat : Countersink, Counterbore or Spotface
        What to cut.
    material : Material
        In what.
    machine : ShopMachine
        On what.
    thickness : float or None
        Thickness of the sheet [mm]; None for a solid part.
    rules : HouseRules
        The house rules in force.
    system : {"inch", "metric"}
        Which unit system stands first where sizes are told.
    """

    tool: Assembly
    seat: Round
    material: Material
    machine: ShopMachine
    thickness: float | None
    rules: HouseRules
    system: str = "inch"

    @property
    def thin(self) -> bool:
        """Whether the work is thin sheet."""
        return self.thickness is not None and self.thickness <= THIN

    def step(self) -> cutting.Step | None:
        """Spindle speed to set by the house rules; None without a value for the material."""
        if self.material.drill_speed_low is None:
            return None
        return spindle_for(
            type(self.seat).__name__.lower(),
            diameter=self.seat.diameter,
            hole_diameter=self.seat.hole_diameter,
            material=self.material,
            machine=self.machine,
            rules=self.rules,
            tool_material=self.tool.cutter.material,
        ).step

    def coefficients(self) -> cutting.Coefficients | None:
        """Cutting coefficients [MPa] for the chatter model; None without a value for the metal."""
        material = self.material
        if material.main_value is None or material.exponent is None:
            return None
        plain = cutting.specific_force(
            main_value=material.main_value, exponent=material.exponent, chip_thickness=CHIP
        )
        shear = plain / (2 * tan(radians(45 + FRICTION_ANGLE / 2)))
        return cutting.shear_plane(
            shear_stress=shear, friction_angle=FRICTION_ANGLE, rake=self.tool.cutter.rake
        )

    def sings(self) -> bool | None:
        """Whether the chatter model lets this cut sing; None where it has no numbers for it."""
        step, metal, axial = self.step(), self.coefficients(), self.machine.axial
        if step is None or step.spindle_speed is None or metal is None or axial is None:
            return None
        lips = self.tool.cutter.for_chatter()
        size = {"diameter": self.seat.diameter, "hole_diameter": self.seat.hole_diameter}
        width = cutting.lip_in_cut(included_angle=lips.included_angle, **size)
        limit = axial_limit(
            machine=axial,
            cutter=lips,
            cut=cutting.Cut(
                normal_coefficient=1e6 * metal.normal,
                tangential_coefficient=1e6 * metal.tangential,
                mean_diameter=cutting.mean_diameter(**size),
                process_damping=self.material.process_damping or 0.0,
            ),
            spindle_speed=step.spindle_speed,
            widest=width,
        )
        return limit is not None and limit[0] < width
