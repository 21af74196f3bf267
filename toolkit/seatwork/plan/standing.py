"""Where the note or the house wants the head: the window, and what to aim for in it."""

from dataclasses import dataclass

from seatwork.errors import SeatworkError
from seatwork.notes import Head
from seatwork.plan.aims import MIDDLE, aim_between
from seatwork.plan.bounds import TITLE_BLOCK
from seatwork.plan.resolving import NOTE
from seatwork.shop import HouseRules

BELOW, PROUD, AIM = "flush.greatest_below", "flush.greatest_proud", "flush.aim"


@dataclass(frozen=True, slots=True, kw_only=True)
class Stand:
    """Where a head may stand over the face, below it negative.

    Parameters
    ----------
    lowest, aim, highest : float
        Places of the greatest head [mm].
    source : str
        Who says so, in words that follow "the greatest head".
    stated : bool
        Whether the note gives the numbers; the house rules do otherwise.
    never_proud : bool
        Whether the note itself says FLUSH OR BELOW, whatever the house lets stand proud.
    """

    lowest: float
    aim: float
    highest: float
    source: str
    stated: bool
    never_proud: bool = False

    def top(self, rules: HouseRules) -> float:
        """Return how far a head may stand over the face: by the note, else by the house [mm]."""
        return self.highest if self.stated or self.never_proud else rules.number(PROUD)


def stand_of(head: Head | None, *, system: str, rules: HouseRules) -> Stand:
    """Return where a head may stand: as the note says, else by the house rules.

    Parameters
    ----------
    head : Head or None
        What the note says of the head.
    system : {"inch", "metric"}
        System of the print, whose title block widens a single number.
    rules : HouseRules
        The rules in force.

    Raises
    ------
    SeatworkError
        If the note wants the head proud and does not say how far.

    Notes
    -----
    Numbers of the print stand over the house rule of never proud. One number alone, ``.010
    BELOW``, has the usual title block either way, but never past the face to its other side.
    """
    window = head.window if head else None
    if window is not None:
        return _stated(*_widened(*window, rules.number(TITLE_BLOCK[system])), rules)
    if head is not None and head.state == "proud":
        raise SeatworkError(
            "PROUD", "the note does not say how far", "ask how far the head may stand proud"
        )
    deep = -rules.number(BELOW)
    middle = rules.word(AIM) == MIDDLE
    capped = head is not None and head.state == "flush or below"
    start = f"{'mid-way ' if middle else ''}from flush down"
    return Stand(
        lowest=deep,
        aim=deep / 2 if middle else 0.0,
        highest=0.0,
        source=f"{start}{f' as the {NOTE} says' if capped else ''}, to house rule {BELOW}, "
        f"aimed at by house rule {AIM}",
        stated=False,
        never_proud=capped,
    )


def _stated(lowest: float, highest: float, rules: HouseRules) -> Stand:
    # a wider seat lets the head down, so the band runs from the highest place to the lowest
    return Stand(
        lowest=lowest,
        aim=aim_between(highest, lowest, rules, cone=True),
        highest=highest,
        source=f"by house rule limits.aim between its limits, as the {NOTE} says",
        stated=True,
    )


def _widened(lowest: float, highest: float, over: float) -> tuple[float, float]:
    if lowest < highest:
        return lowest, highest
    if lowest == 0:
        return -over, 0.0
    least, most = lowest - over, highest + over
    return (least, min(most, 0.0)) if lowest < 0 else (max(least, 0.0), most)
