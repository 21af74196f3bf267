"""The play of a pilot in its hole."""

from collections.abc import Iterator

from seatwork.plan.order import Order
from seatwork.plan.records import Check
from seatwork.shop.choosing.choosing import Choice

GREATEST = "pilot.greatest_play"
EVEN = 1e-6  # mm; what a sum may be off by in its last digits


def check_play(best: Choice | None, hole: float, order: Order) -> Iterator[Check]:
    """Look at how loose the pilot of a countersink is in its hole [mm]."""
    pilot = best.tool.pilot_diameter if best else None
    if pilot is None:
        return
    play, greatest = hole - pilot, order.shop.rules.number(GREATEST)
    holds = play <= greatest + EVEN
    text = f"The pilot, {order.show_length(pilot)}, is {order.show_length(play)} under its hole"
    if not holds:
        text += f", over house rule {GREATEST}: the cone may lie off the hole by half of it"
    yield Check(name="play of the pilot", verdict="holds" if holds else "look", sentence=f"{text}.")
