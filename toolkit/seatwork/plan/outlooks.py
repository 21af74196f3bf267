"""The chatter outlook of a cut, in words only: the model can bear no more."""

from seatwork.plan.order import Order
from seatwork.seats import Counterbore, Countersink, Spotface
from seatwork.shop.choosing.choosing import Choice
from seatwork.shop.choosing.situation import Situation

QUIET = "Likely quiet at this speed."
SINGS = "May sing: try on scrap. Clamp closer, slow down, feed steadily, then take fewer flutes."
UNKNOWN = "No outlook: the lists say too little of machine, cutter or material. Try on scrap."


def outlook(seat: Countersink | Counterbore | Spotface, best: Choice | None, order: Order) -> str:
    """Say whether a cut is likely quiet.

    Parameters
    ----------
    seat : Countersink, Counterbore or Spotface
        What is cut.
    best : Choice or None
        The tool chosen.
    order : Order
        Material and machine.

    Returns
    -------
    str
        Words, never a number: what the lists say of machines is assumed.
    """
    if best is None:
        return UNKNOWN
    sings = Situation(
        tool=best.tool,
        seat=seat,
        material=order.material,
        machine=order.machine,
        thickness=order.thickness,
        rules=order.shop.rules,
    ).sings()
    return {None: UNKNOWN, True: SINGS, False: QUIET}[sings]
