"""What the metal asks for: force per area of chip, from rake and chip thickness."""

from dataclasses import dataclass
from math import radians, tan

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Angle


@dataclass(frozen=True, slots=True, kw_only=True)
class Coefficients:
    """Force per area of chip.

    Parameters
    ----------
    tangential : float
        Against the cutting motion [MPa].
    normal : float
        Along the normal of the lip, away from the work [MPa].
    """

    tangential: float
    normal: float


def shear_plane(*, shear_stress: float, friction_angle: float, rake: float) -> Coefficients:
    """Cutting coefficients from a shear plane, to show what rake does.

    Parameters
    ----------
    shear_stress : float
        Shear stress of the metal in the cut [MPa].
    friction_angle : float
        Friction angle between chip and lip [deg].
    rake : float
        Rake, positive when the lip is sharper [deg].

    Returns
    -------
    Coefficients
        Tangential and normal [MPa].

    Raises
    ------
    SeatworkError
        If friction angle less rake does not lie between 0 and 90 deg.

    Notes
    -----
    Shear plane at 45 deg - (friction - rake)/2. A trend, not data: real metals
    fall less with rake, some 10 % for 10 deg by handbook rules. With -15 to 15 deg
    of rake on 35 deg of friction it stays sensible.

    Examples
    --------
    >>> shear_plane(shear_stress=500.0, friction_angle=35.0, rake=0.0)
    Coefficients(tangential=1920.98, normal=1345.09)

    References
    ----------
    Merchant 1945, shear-plane model (check K1).
    """
    checks.quantity(shear_stress, "shear stress", "MPa")
    pull = friction_angle - rake
    if not 0 < pull < 90:
        raise SeatworkError(
            Angle(rake),
            "friction angle less rake must lie between 0° and 90°",
            "take a smaller rake",
        )
    tangential = 2 * shear_stress * tan(radians(45 + pull / 2))
    return Coefficients(tangential=tangential, normal=tangential * tan(radians(pull)))


def specific_force(
    *, main_value: float, exponent: float, chip_thickness: float, rake: float = 0.0
) -> float:
    """Specific cutting force: thin chips cut harder.

    Parameters
    ----------
    main_value : float
        Specific force of a chip 1 mm thick at zero rake [MPa].
    exponent : float
        Rise with thinner chips [-], 0 to 1.
    chip_thickness : float
        Chip thickness along the normal of the lip [mm].
    rake : float
        Rake; each degree takes 1 % off [deg], -30 to 30.

    Returns
    -------
    float
        Specific cutting force [MPa].

    Raises
    ------
    SeatworkError
        If a value lies outside its range.

    Examples
    --------
    >>> specific_force(main_value=1500.0, exponent=0.25, chip_thickness=0.1, rake=10.0)
    2400.7

    References
    ----------
    Kienzle 1952, with the usual 1 % per degree for rake (check K3).
    """
    checks.quantity(main_value, "specific cutting force", "MPa")
    checks.length(chip_thickness, "chip thickness")
    if not 0 <= exponent < 1:
        raise SeatworkError(
            f"{exponent:g}", "the exponent lies from 0 to below 1", "steels have about 0.25"
        )
    if not -30 <= rake <= 30:
        raise SeatworkError(
            Angle(rake), "the rule holds for -30° to 30° of rake", "take a rake in that range"
        )
    rise: float = chip_thickness**-exponent
    return main_value * rise * (1 - rake / 100)
