"""What the chatter bench cuts in and on: a seat in its metal, machines that give, spacings."""

from dataclasses import dataclass

from seatwork import cutting
from seatwork.benches.build.listed import shop
from seatwork.benches.build.part_sizes import plate_line
from seatwork.benches.build.sourced import fact_line
from seatwork.cutting import Cut, Machine
from seatwork.cutting.chatter.parts import NOTE
from seatwork.errors import SeatworkError
from seatwork.hardware.job_list import Job
from seatwork.seats import Countersink
from seatwork.seats.sheet_metal import InSheetMetal
from seatwork.shop.choosing.situation import CHIP, FRICTION_ANGLE

INDENTATION = {"gray iron": 3.3e13, "1018 steel": 4.1e13, "6061 aluminum": 1.5e13}
"""Indentation constants [N/m3], from memory, sources spread tenfold; gray iron assumed between.
A wear land of 0.11 mm gives the process damping of the shop's material list; other metals of that
list get the constant that does so."""

LISTED_LAND = 0.11
"""Wear land [mm] for which the material list gives process damping."""

UNEVEN = {
    2: (170.0, 190.0),
    3: (110.0, 120.0, 130.0),
    4: (80.0, 95.0, 85.0, 100.0),
    5: (64.0, 76.0, 68.0, 80.0, 72.0),
    6: (50.0, 65.0, 55.0, 70.0, 60.0, 60.0),
}
"""Uneven spacings by number of flutes [deg], as examples."""

COUNTED = {1: "One flute", 2: "Two flutes", 3: "Three flutes", 4: "Four flutes", 5: "Five flutes",
           6: "Six flutes"}  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class CutSeat:
    """A countersink and the metal it is cut in.

    Parameters
    ----------
    job : Job
        Its screw and hole.
    material : str
        Name in the shop's list.
    thickness : float
        Of the plate [mm].
    """

    job: Job
    material: str
    thickness: float

    @property
    def name(self) -> str:
        """Where it is, in words, and in which metal."""
        part = self.job.part
        return f"{f'the {part}' if part else self.job.screw.name}, {self.material}"

    @property
    def diameter(self) -> float:
        """Diameter at the face [mm]."""
        return self.job.screw.head.sharp_diameter

    @property
    def hole_diameter(self) -> float:
        """Where the cone ends: the hole, or the far side of a plate that it breaks through [mm]."""
        cone = Countersink(
            diameter=self.diameter,
            hole_diameter=self.job.hole.diameter,
            included_angle=self.included_angle,
        )
        found = InSheetMetal(seat=cone, thickness=self.thickness)
        return found.far_diameter if found.knife_edge else cone.hole_diameter

    @property
    def included_angle(self) -> float:
        """Included angle of the cutter [deg]."""
        return self.job.screw.facts["seat_angle"].value

    @property
    def full_width(self) -> float:
        """Lip in cut when the seat is done [mm]."""
        return cutting.lip_in_cut(
            diameter=self.diameter,
            hole_diameter=self.hole_diameter,
            included_angle=self.included_angle,
        )


def stand_in(name: str) -> str:
    """Name the machine whose stiffness is taken: itself, or one of its kind where it has none.

    Raises
    ------
    SeatworkError
        If the list has no such machine, or none of its kind says how stiff it is.
    """
    asked = shop().machine(name)
    if asked.axial is not None:
        return asked.name
    for one in shop().machines:
        if one.kind == asked.kind and one.axial is not None:
            return one.name
    fault = f"the shop's list does not say how stiff it or any other {asked.kind} is"
    raise SeatworkError(name, fault, "write its stiffness there")


def axial(name: str) -> Machine:
    """Return how a machine, or the one that stands in for it, gives along its spindle.

    Raises
    ------
    SeatworkError
        As `stand_in` does.
    """
    found = shop().machine(stand_in(name)).axial
    assert found is not None
    return found


def other_machine(name: str) -> str:
    """Name the stiffest other machine that the list has; blank where none is stiffer."""
    own = axial(name).stiffness
    stiffer = [
        one for one in shop().machines if one.axial is not None and one.axial.stiffness > own
    ]
    best = max(stiffer, key=lambda one: one.axial.stiffness if one.axial else 0.0, default=None)
    return best.name if best else ""


def metals() -> tuple[str, ...]:
    """Name the shop's materials of which the list has force and damping."""
    return tuple(m.name for m in shop().materials if m.main_value and m.process_damping)


def known_metal(name: str) -> float:
    """Return the indentation constant of a material [N/m3].

    Raises
    ------
    SeatworkError
        If the list has no such material, or no cutting force or process damping for it.
    """
    found = shop().material(name)
    if not (found.main_value and found.process_damping):
        raise SeatworkError(
            name, "the shop's list has no cutting force or no process damping for it",
            "write both in the list, or take another material",
        )  # fmt: skip
    unit = cutting.land_damping(indentation=1.0, wear_land=LISTED_LAND)
    return INDENTATION.get(found.name, found.process_damping / unit)


def metal(seat: CutSeat, *, rake: float, wear_land: float) -> Cut:
    """Give what the metal does to a lip of a rake [deg] and a wear land [mm]."""
    material = shop().material(seat.material)
    plain = cutting.specific_force(
        main_value=material.main_value or 0.0,
        exponent=material.exponent or 0.0,
        chip_thickness=CHIP,
    )
    unit = cutting.shear_plane(shear_stress=1.0, friction_angle=FRICTION_ANGLE, rake=0.0)
    found = cutting.shear_plane(
        shear_stress=plain / unit.tangential, friction_angle=FRICTION_ANGLE, rake=rake
    )
    return Cut(
        normal_coefficient=1e6 * found.normal,
        tangential_coefficient=1e6 * found.tangential,
        mean_diameter=cutting.mean_diameter(
            diameter=seat.diameter, hole_diameter=seat.hole_diameter
        ),
        process_damping=_damping(seat.material, wear_land),
    )


def _damping(material: str, wear_land: float) -> float:
    if wear_land == 0:
        return 0.0
    return cutting.land_damping(indentation=known_metal(material), wear_land=wear_land)


def sources(seat: CutSeat, machine: str) -> tuple[str, ...]:
    """Tell where stiffness, metal and damping come from."""
    given, part = axial(machine), seat.job.screw
    stiffness = f"{given.stiffness / 1e6:g} N/µm, {given.natural_frequency:g} Hz"
    taken = stand_in(machine)
    if taken != machine:
        stiffness = f"no stiffness in the shop's list, that of {taken} stands in: {stiffness}"
    return (
        f"An {NOTE}: the map shows why the shop's rules work.",
        fact_line(f"{seat.name}: diameter at the face", part.source, part.confirmed),
        f"{machine}: {stiffness}, damping ratio {given.damping_ratio:g} along the spindle. "
        "Source: assumed, no tap test.",
        plate_line(seat.job),
        f"{seat.material}: cutting force by the shop's material list (from memory) at a chip of "
        f"{CHIP:g} mm; rake by the shear plane (Merchant 1945), a trend, not data.",
        f"Rubbing of the wear land: indentation constant {known_metal(seat.material):.2g} N/m³, "
        "from memory, sources spread tenfold; not to be trusted where the land is longer than a "
        "quarter of the wave (hatched).",
        "Limit, frequency, critical speed: worked out from the delay equation of one mode along "
        "the spindle, with the mean diameter of the finished seat.",
        "About 300 rev/min or less for countersinks: common practice, no source.",
        "Uneven spacings are examples; feed does not move the limit, only which lips cut.",
    )
