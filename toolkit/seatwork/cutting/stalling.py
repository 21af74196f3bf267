"""Whether a machine may stall in a cut: a warning that errs high and says by what."""

from dataclasses import dataclass
from math import pi

from seatwork import checks
from seatwork.errors import SeatworkError


@dataclass(frozen=True, slots=True, kw_only=True)
class Stall:
    """Whether a machine may stall in a cut, erring high.

    Parameters
    ----------
    torque : float
        Torque to reckon with [N m].
    plain_torque : float
        The same from the thick-chip coefficient, which errs low [N m].
    available : float
        Torque the machine has at that spindle speed [N m].
    size_factor : float
        What thin chips add [-], 1 or more.
    wear_factor : float
        What a worn lip adds [-], 1 or more.
    overload : float
        What the motor pulls for the length of a cut, as a share of its plate [-], 1 or more.
    """

    torque: float
    plain_torque: float
    available: float
    size_factor: float
    wear_factor: float
    overload: float = 1.0

    def __repr__(self) -> str:
        outcome = "may stall" if self.may_stall else "should carry it"
        return f"<Stall {self.torque:.2f} of {self.available:.2f} N·m: {outcome}>"

    @property
    def may_stall(self) -> bool:
        """Whether the torque to reckon with is above what the motor pulls for a cut."""
        return self.torque > self.available * self.overload

    @property
    def over_plate(self) -> bool:
        """Whether it is above what the motor's plate says, which it pulls for a short while."""
        return self.torque > self.available

    @property
    def sentence(self) -> str:
        """What to say: the torque, what it errs high by, and the verdict."""
        verdict = (
            "may stall: take a lighter cut or a stronger machine"
            if self.may_stall
            else "should carry it"
        )
        return (
            f"Reckon with {self.torque:.2f} N m of {self.available:.2f} N m at the spindle "
            f"({verdict}). Thin chips are in it with x {self.size_factor:.2f}, and a worn lip "
            f"with x {self.wear_factor:.2f}, which errs high on purpose."
        )


def stall(
    *,
    plain_torque: float,
    chip_thickness: float,
    motor_power: float,
    spindle_speed: float,
    exponent: float = 0.25,
    reference_thickness: float = 0.4,
    wear_factor: float = 1.3,
    efficiency: float = 0.8,
    overload: float = 1.0,
) -> Stall:
    """Compare the torque of a cut with what the machine has, erring high.

    Parameters
    ----------
    plain_torque : float
        Torque from a coefficient measured on thick chips [N m].
    chip_thickness : float
        Chip thickness of this cut [mm].
    motor_power : float
        Power on the motor's plate [W].
    spindle_speed : float
        Spindle speed [rev/min].
    exponent : float
        Rise of the specific force with thinner chips [-].
    reference_thickness : float
        Chip thickness the coefficient belongs to [mm].
    wear_factor : float
        Allowance for a worn lip [-].
    efficiency : float
        Share of the motor's power that reaches the spindle [-].
    overload : float
        What the motor pulls for the length of a cut, as a share of its plate [-], 1 or more.

    Returns
    -------
    Stall
        Torque to reckon with, torque there is, and by what the first errs high.

    Raises
    ------
    SeatworkError
        If a value lies outside its range.

    Notes
    -----
    The size factor is (reference/thickness)^exponent and never below 1.
    Defaults from memory: 1.3 for a worn tool and 0.8 for the drive as in Machinery's
    Handbook, 0.25 for steel as in Kienzle's tables.
    """
    checks.quantity(plain_torque, "torque", "N m")
    checks.length(chip_thickness, "chip thickness")
    checks.quantity(motor_power, "motor power", "W")
    checks.quantity(spindle_speed, "spindle speed", "rev/min")
    checks.length(reference_thickness, "reference thickness")
    checks.not_below(wear_factor, 1, "wear factor")
    checks.not_below(overload, 1, "overload of the motor")
    if not checks.between(exponent, 0, 1):
        raise SeatworkError(exponent, "the exponent lies from 0 to 1", "take 0.25 for steel")
    if not 0 < efficiency <= 1:
        raise SeatworkError(
            f"{efficiency:g}",
            "an efficiency lies above 0 and goes up to 1",
            "a belt drive has about 0.8",
        )
    size_factor: float = max(1.0, (reference_thickness / chip_thickness) ** exponent)
    return Stall(
        torque=plain_torque * size_factor * wear_factor,
        plain_torque=plain_torque,
        available=motor_power * efficiency * 60 / (2 * pi * spindle_speed),
        size_factor=size_factor,
        wear_factor=wear_factor,
        overload=overload,
    )
