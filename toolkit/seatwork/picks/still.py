"""The still of a pick: the question in the file and on paper, its answer in a closed fold."""

from typing import Any

from seatwork.benches.bench import Bench
from seatwork.marking.speaking import Speaker
from seatwork.picks.bench_of import filled
from seatwork.picks.bets import NO_IDEA, named, whys
from seatwork.picks.wording import Words
from seatwork.rows import plain

SCALE = 0.6
"""Of a bench's own picture: the fold is read, not worked on."""

RIGHT = "Right: {right}."
FOLD = "Bet first, then open"
LINE = "I bet ______ because ____________________________"


def told(pick: Words) -> str:
    """Return the question with its choices in plain text; nothing that answers it."""
    choices = "; ".join(f"{letter}) {text}" for letter, text in pick.choices)
    asked = "; ".join(f"{ask.label}: ___" for ask in pick.ask)
    return f"Your pick. {pick.question} {choices or asked}."


def markdown(
    pick: Words, bench: Bench[Any] | None, seen: Bench[Any] | None, *, opened: bool
) -> str:
    """Return the still.

    Parameters
    ----------
    pick : Words
        What is asked.
    bench : Bench or None
        What opens after the bet; its picture stands in the fold.
    seen : Bench or None
        What is seen before the bet.
    opened : bool
        Whether the fold stands open.
    """
    before = [seen.drawing.markdown(SCALE)] if seen else []
    picture = [bench.drawing.markdown(SCALE)] if bench else []
    fold = f"<details{' open' if opened else ''}><summary>{FOLD}</summary>"
    parts = [f"**Your pick.** {plain(pick.question)}", *before, _choices(pick), LINE]
    inside = [plain(line) for line in answer_lines(pick, bench)]
    return "\n\n".join([*parts, fold, *inside, *picture, "</details>"])


def answer_lines(pick: Words, bench: Bench[Any] | None) -> list[str]:
    """Return what the fold says: what is right, what follows, and why other bets tempt."""
    why = [f"{one.bet}: {one.says}" for one in whys(pick, NO_IDEA)]
    return [f"{right_one(pick)} {filled(pick, bench)}", *why]


def right_one(pick: Words, say: Speaker = str) -> str:
    """Say what counts as right."""
    right = say(RIGHT)
    if pick.kind != "number":
        return right.format(right=named(pick, pick.right, say))
    bands = [_band(*ask.right, say) for ask in pick.ask]
    if len(bands) == 1:
        return right.format(right=bands[0])
    told = (f"{ask.label}: {band}" for ask, band in zip(pick.ask, bands, strict=True))
    return right.format(right="; ".join(told))


def _band(low: float, high: float, say: Speaker) -> str:
    if low == high:
        return f"{low:g}"
    return say("{low} to {high}").format(low=f"{low:g}", high=f"{high:g}")


def _choices(pick: Words) -> str:
    """Return a box on paper for each choice, or a line for each number."""
    if pick.kind == "number":
        return "\n".join(f"- {plain(ask.label)}: ________" for ask in pick.ask)
    if pick.kind == "letter":
        return "  ".join(f"☐ {plain(text)}" for _, text in pick.choices)
    return "\n".join(f"- ☐ **{letter}** {plain(text)}" for letter, text in pick.choices)
