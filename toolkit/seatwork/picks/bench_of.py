"""The bench that a pick opens, and the words that its numbers fill."""

from collections.abc import Mapping
from typing import Any

from seatwork import benches
from seatwork.benches.bench import Bench
from seatwork.picks.wording import Words


def opened(pick: Words, bet: str = "", *, projector: bool = False) -> Bench[Any] | None:
    """Return the bench that opens after the bet; the bet stays on it dashed where it can be drawn.

    Parameters
    ----------
    pick : Words
        What was asked.
    bet : str
        The bet, for the bench to draw; none if not given.
    projector : bool
        In large type.
    """
    if not pick.opens:
        return None
    drawn = pick.drawn.get(bet)
    if drawn is None:
        return _made(pick.opens, projector)
    bench = _made({**pick.opens, **drawn}, projector)
    if pick.kind == "letter":
        return bench
    bench.keep()
    bench.set(**{name: pick.opens[name] for name in drawn})
    return bench


def before(pick: Words, *, projector: bool = False) -> Bench[Any] | None:
    """Return the bench that is seen before the bet, if any."""
    return _made(pick.shows, projector) if pick.shows else None


def filled(pick: Words, bench: Bench[Any] | None) -> str:
    """Return what is said after the bet, with the readouts of the bench in their places."""
    readouts = {row[0]: row[1] for row in bench.readouts()} if bench else {}
    return pick.after.format_map(readouts)


def _made(state: Mapping[str, Any], projector: bool) -> Bench[Any]:
    values = dict(state)
    made: Bench[Any] = getattr(benches, values.pop("bench"))(projector=projector, **values)
    return made
