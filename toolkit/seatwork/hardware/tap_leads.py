"""Taps for a blind hole: which kind reaches deep enough with the room its lead has."""

from dataclasses import dataclass

from seatwork import checks
from seatwork.shop import HouseRules

PLUG, PLUG_FIRST, BOTTOMING, NONE = "plug", "plug, then bottoming", "bottoming after plug", ""
LEAD_PLUG, LEAD_BOTTOMING = "thread.lead_plug", "thread.lead_bottoming"
CHIPS = "thread.chip_room"


@dataclass(frozen=True, slots=True, kw_only=True)
class TapRoom:
    """The room below the full thread of a blind hole, and the tap that it allows.

    Parameters
    ----------
    room : float
        Depth at full diameter less the depth of full thread [mm].
    pitches : float
        The same in pitches [-].
    tap : {"plug", "plug, then bottoming", "bottoming after plug", ""}
        Kind of tap; empty where none cuts the thread that deep.
    verdict : {"holds", "look", "stop"}
        Whether there is room for lead and chips.
    chips : bool
        Whether there is room for chips beyond the lead.
    """

    room: float
    pitches: float
    tap: str
    verdict: str
    chips: bool

    def __repr__(self) -> str:
        return f"<TapRoom {self.pitches:.1f} pitches: {self.tap or 'no tap'}, {self.verdict}>"


def tap_room(*, room: float, pitch: float, rules: HouseRules) -> TapRoom:
    """Tell which tap a blind hole has room for.

    Parameters
    ----------
    room : float
        Depth at full diameter less the depth of full thread [mm]; may be below zero.
    pitch : float
        Pitch of the thread [mm].
    rules : HouseRules
        The rules in force: the leads of the taps, and the room for chips.

    Returns
    -------
    TapRoom
        A lead of 5 pitches and 1 for chips want 6 with a plug tap alone; a bottoming tap
        after it does with 2, and with less wants a look. Under 1 nothing cuts it.

    Notes
    -----
    Common practice, no source, on leads of ASME B94.9 from memory.
    """
    checks.length(pitch, "pitch")
    pitches, plug, least = room / pitch, rules.number(LEAD_PLUG), rules.number(LEAD_BOTTOMING)
    near = 1e-6  # pitches; a room written on a print is meant as written
    if pitches + near >= plug:
        tap, verdict = PLUG, "holds"
    elif pitches + near >= least:
        tap, verdict = PLUG_FIRST, "holds"
    elif pitches + near >= 1:
        tap, verdict = BOTTOMING, "look"
    else:
        tap, verdict = NONE, "stop"
    chips = pitches + near >= plug + rules.number(CHIPS)
    return TapRoom(room=room, pitches=pitches, tap=tap, verdict=verdict, chips=chips)
