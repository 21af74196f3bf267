"""What is looked at on the machine: slowest speed, torque and shank."""

from collections.abc import Iterator

from seatwork.plan.order import Order
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Check, Operation


def check_machine(seat: SeatPlan, order: Order) -> tuple[Check, ...]:
    """Look at every operation of a seat on the machine it is planned for."""
    found: list[Check] = []
    for step in seat.operations:
        found += [*_speed(step, order), *_torque(step, seat), *_shank(step, seat, order)]
    return tuple(found)


def _speed(step: Operation, order: Order) -> Iterator[Check]:
    if step.spindle is None or not step.spindle.step.too_fast:
        return
    slowest, wanted = order.machine.slowest, step.spindle.step.allowed
    yield Check(
        name="spindle speed",
        verdict="stop",
        sentence=f"The {order.machine.name} is too fast for the {step.name} at its slowest. "
        f"{step.spindle.step.advice}",
        question=f"The {step.name} wants {wanted:.0f} rev/min and the {order.machine.name} turns "
        f"no slower than {slowest:.0f}: which machine, or which tool, instead?",
    )


def _torque(step: Operation, seat: SeatPlan) -> Iterator[Check]:
    if step.load is None or not step.load.may_stall:
        return
    lead = any(one.name == "lead drill" for one in seat.operations)
    remedy = (
        "drill a smaller lead hole first, or take a stronger machine"
        if step.name == "drill" and not lead
        else "take a lighter feed, a slower step or a stronger machine; clamp the part"
    )
    yield Check(
        name=f"torque of the {step.name}",
        verdict="look",
        sentence=f"The machine may stall: {remedy}.",
    )


def _shank(step: Operation, seat: SeatPlan, order: Order) -> Iterator[Check]:
    under = seat.size("drill under the bore") or seat.size("drill under the reamer")
    hole, chuck = under or seat.size("hole"), order.machine.chuck
    if step.name != "drill" or hole is None or chuck is None or not hole.value > chuck:
        return
    yield Check(
        name="shank of the drill",
        verdict="look",
        sentence=f"The chuck holds {order.show_length(chuck)}, the drill is "
        f"{order.show_length(hole.value)}: take one with a reduced or a taper shank.",
    )
