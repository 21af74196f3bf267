"""What the chatter bench can be set to: seats of the cider mill, metals, machines, spacings."""

from dataclasses import dataclass
from functools import cache

from seatwork import cutting
from seatwork.benches.sourced import fact_line
from seatwork.cutting import Cut, Machine
from seatwork.hardware import clearance_hole, drill, screw
from seatwork.shop.choosing.situation import CHIP, FRICTION_ANGLE
from seatwork.shop.shop import Shop

FRAME, CRANK, HOPPER = (
    "1/4 flat head, frame (gray iron)",
    "1/4 flat head, crank arm (1018 steel)",
    "M6 socket flat, hopper plate (6061 aluminum)",
)
PRESS, MILL, LATHE = "bench drill press", "knee mill", "lathe"

INDENTATION = {"gray iron": 3.3e13, "1018 steel": 4.1e13, "6061 aluminum": 1.5e13}
"""Indentation constants [N/m3], from memory, sources spread tenfold; gray iron assumed between.
A wear land of 0.11 mm gives the process damping of the shop's material list."""

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
class SeatJob:
    """A seat of the cider mill and the metal it is cut in.

    Parameters
    ----------
    seat : str
        In words.
    material : str
        Name in the shop's list.
    diameter, hole_diameter : float
        At the face, and the hole [mm].
    included_angle : float
        Of the cutter [deg].
    source, confirmed : str
        Of the diameter.
    """

    seat: str
    material: str
    diameter: float
    hole_diameter: float
    included_angle: float
    source: str
    confirmed: str

    @property
    def full_width(self) -> float:
        """Lip in cut when the seat is done [mm]."""
        return cutting.lip_in_cut(
            diameter=self.diameter,
            hole_diameter=self.hole_diameter,
            included_angle=self.included_angle,
        )


@cache
def jobs() -> dict[str, SeatJob]:
    """Give the seats that can be chosen, sizes from the lists."""
    quarter, six = screw("1/4 flat head machine screw"), screw("M6 socket flat head")
    hole = drill("H").diameter
    return {
        FRAME: _job(quarter, "the frame, gray iron", "gray iron", hole),
        CRANK: _job(quarter, "the crank arm, 1018 steel", "1018 steel", hole),
        HOPPER: _job(
            six, "the hopper plate, 6061 aluminum", "6061 aluminum", clearance_hole("M6").diameter
        ),
    }


def _job(part: object, seat: str, material: str, hole: float) -> SeatJob:
    found = part.head  # type: ignore[attr-defined]
    return SeatJob(
        seat=seat,
        material=material,
        diameter=found.sharp_diameter,
        hole_diameter=hole,
        included_angle=part.seat_angle,  # type: ignore[attr-defined]
        source=part.source,  # type: ignore[attr-defined]
        confirmed=part.confirmed,  # type: ignore[attr-defined]
    )


@cache
def machines() -> dict[str, Machine]:
    """Give how each machine gives along its spindle, from the shop's list."""
    shop = Shop.at()
    found = {name: shop.machine(name).axial for name in (PRESS, MILL, LATHE)}
    return {name: axial for name, axial in found.items() if axial is not None}


def metal(job: SeatJob, *, rake: float, wear_land: float) -> Cut:
    """Give what the metal does to a lip of a rake [deg] and a wear land [mm]."""
    material = Shop.at().material(job.material)
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
        mean_diameter=cutting.mean_diameter(diameter=job.diameter, hole_diameter=job.hole_diameter),
        process_damping=_damping(job.material, wear_land),
    )


def _damping(material: str, wear_land: float) -> float:
    if wear_land == 0:
        return 0.0
    return cutting.land_damping(indentation=INDENTATION[material], wear_land=wear_land)


def sources(job: SeatJob, machine: str) -> tuple[str, ...]:
    """Tell where stiffness, metal and damping come from."""
    given = machines()[machine]
    stiffness = f"{given.stiffness / 1e6:g} N/µm, {given.natural_frequency:g} Hz"
    return (
        f"An {cutting.NOTE}: the map shows why the shop's rules work.",
        fact_line(f"{job.seat}: diameter at the face", job.source, job.confirmed),
        f"{machine}: {stiffness}, damping ratio {given.damping_ratio:g} along the spindle. "
        "Source: assumed, no tap test.",
        f"{job.material}: cutting force by the shop's material list (from memory) at a chip of "
        f"{CHIP:g} mm; rake by the shear plane (Merchant 1945), a trend, not data.",
        f"Rubbing of the wear land: indentation constant {INDENTATION[job.material]:.2g} N/m³, "
        "from memory, sources spread tenfold; not to be trusted where the land is longer than a "
        "quarter of the wave (hatched).",
        "Limit, frequency, critical speed: worked out from the delay equation of one mode along "
        "the spindle, with the mean diameter of the finished seat.",
        "About 300 rev/min or less for countersinks: common practice, no source.",
        "Uneven spacings are examples; feed does not move the limit, only which lips cut.",
    )
