"""Choose a cutter for a seat: what fits, ranked, with the reasons; or what would fit."""

from dataclasses import dataclass

from seatwork.cutting import Step
from seatwork.errors import SeatworkError
from seatwork.seats import Chamfer, Counterbore, Countersink
from seatwork.shop.choosing.fitting import Assembly, Round, Seat, assemblies, misfit, out_of_place
from seatwork.shop.choosing.reasons import Reason, reasons
from seatwork.shop.choosing.situation import Situation
from seatwork.shop.lists.machines import ShopMachine
from seatwork.shop.shop import Shop
from seatwork.units import show_angle, show_both


@dataclass(frozen=True, slots=True, kw_only=True)
class Where:
    """Where and in what a seat is cut.

    Parameters
    ----------
    material : str
        Name in the shop's list of materials.
    machine : str
        Name in the shop's list of machines.
    thickness : float, optional
        Thickness of the sheet [mm]; None for a solid part.
    hole_diameter : float, optional
        Hole under a chamfer [mm]; other seats bring their own.
    bore_diameter : float, optional
        Counterbore in whose floor the seat lies [mm]; the cutter must go in.
    system : {"inch", "metric"}
        Which unit system stands first where sizes are told.
    """

    material: str
    machine: str
    thickness: float | None = None
    hole_diameter: float | None = None
    bore_diameter: float | None = None
    system: str = "inch"


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """A tool that fits, and what to say of it.

    Parameters
    ----------
    tool : Assembly
        Cutter, with its pilot and its holder or stop cage.
    reasons_for, reasons_against : tuple of Reason
        Weightiest first.
    step : Step or None
        Spindle speed by the house rules; None without a cutting speed for the material.
    """

    tool: Assembly
    reasons_for: tuple[Reason, ...]
    reasons_against: tuple[Reason, ...]
    step: Step | None

    @property
    def score(self) -> float:
        """Sum of the weights, for the order only."""
        return sum(reason.weight for reason in (*self.reasons_for, *self.reasons_against))


@dataclass(frozen=True, slots=True, kw_only=True)
class Refusal:
    """A tool that does not fit, and the first thing that keeps it from it.

    Parameters
    ----------
    tool : Assembly
        Cutter, with what goes with it.
    sentence : str
        Why not.
    """

    tool: Assembly
    sentence: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Choices:
    """All the shop's cutters, sorted for a seat.

    Parameters
    ----------
    ranked : tuple of Choice
        What fits, best first; empty if nothing does.
    refused : tuple of Refusal
        What does not.
    would_do : str
        What to look for if nothing fits, or if a second one is wanted.
    """

    ranked: tuple[Choice, ...]
    refused: tuple[Refusal, ...]
    would_do: str

    @property
    def best(self) -> Choice | None:
        """First of the ranked; None if nothing fits."""
        return self.ranked[0] if self.ranked else None


def choose(*, seat: Seat, where: Where, shop: Shop) -> Choices:
    """Choose among the shop's cutters for a seat.

    Parameters
    ----------
    seat : Countersink, Counterbore, Spotface or Chamfer
        What to cut.
    where : Where
        In what, on what.
    shop : Shop
        What there is.

    Returns
    -------
    Choices
        Ranked with reasons, refused with reasons, and what would do.

    Raises
    ------
    SeatworkError
        If the shop does not list the material or machine, or a chamfer has no hole.

    Notes
    -----
    A cone fits by angle (0.5 deg), body over the seat and nose under the hole;
    a counterbore by body (0.002 in under to 0.010 in over) and pilot (up to
    0.005 in under the hole); all by shank. A cross-hole cutter is for burrs and legs up to
    house rule `crosshole.greatest_leg`. The order is a judgement of the
    trade: chatter, chip room, rake, burrs, pilot, state. Common practice, no source.

    Examples
    --------
    >>> seat = Countersink(diameter=12.7, hole_diameter=6.75, included_angle=82.0)
    >>> where = Where(material="1018 steel", machine="bench drill press")
    >>> choose(seat=seat, where=where, shop=Shop.at()).best.tool.name
    'CS82-1'
    """
    wanted = _on_a_hole(seat, where)
    machine, material = shop.machine(where.machine), shop.material(where.material)
    fitting, refused = [], []
    for tool in assemblies(shop, wanted.hole_diameter):
        fault = misfit(tool, wanted, machine, where.system)
        fault = fault or out_of_place(
            tool, wanted, shop.rules, bore=where.bore_diameter, system=where.system
        )
        if fault is not None:
            refused.append(Refusal(tool=tool, sentence=fault))
            continue
        case = Situation(
            tool=tool,
            seat=wanted,
            material=material,
            machine=machine,
            thickness=where.thickness,
            rules=shop.rules,
            system=where.system,
        )
        fitting.append(_choice(case))
    return Choices(
        ranked=tuple(sorted(fitting, key=lambda choice: (-choice.score, choice.tool.name))),
        refused=tuple(refused),
        would_do=_would_do(wanted, machine, shop, where.system),
    )


def _choice(case: Situation) -> Choice:
    found = reasons(case)
    return Choice(
        tool=case.tool,
        reasons_for=tuple(reason for reason in found if reason.weight > 0),
        reasons_against=tuple(reason for reason in found if reason.weight <= 0),
        step=case.step(),
    )


def _on_a_hole(seat: Seat, where: Where) -> Round:
    """Take a chamfer at a hole as a small countersink; leave the others as they are."""
    if not isinstance(seat, Chamfer):
        return seat
    if where.hole_diameter is None:
        raise SeatworkError(
            "chamfer", "no hole is given for it", "give the hole diameter with the job"
        )
    return Countersink(
        diameter=where.hole_diameter + 2 * seat.leg,
        hole_diameter=where.hole_diameter,
        included_angle=seat.included_angle,
    )


def _would_do(seat: Round, machine: ShopMachine, shop: Shop, system: str) -> str:
    """One sentence that a person can take to the tool crib."""
    held = [f"a straight shank up to {show_both(machine.chuck, system)}"] if machine.chuck else []
    if machine.morse_taper is not None:
        held.append(f"a Morse taper {machine.morse_taper} shank")
    shank = " or ".join(held) or "a shank the machine takes"
    if isinstance(seat, Countersink):
        return (
            f"A countersink of {show_angle(seat.included_angle)}, body at least "
            f"{show_both(seat.diameter, system)}, nose under "
            f"{show_both(seat.hole_diameter, system)}, with {shank}, would do."
        )
    name = "counterbore" if isinstance(seat, Counterbore) else "spotface cutter"
    pilot = seat.hole_diameter - shop.rules.number("pilot.clearance")
    return (
        f"A {name} of {show_both(seat.diameter, system)} with a pilot of "
        f"{show_both(pilot, system)} and {shank} would do."
    )
