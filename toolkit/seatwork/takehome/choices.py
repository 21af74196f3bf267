"""A bench of choices: one picture a choice, with its words, and what its button reveals."""

from base64 import b64encode
from collections.abc import Iterator
from typing import Any

from seatwork.benches.build.controls import Choice, Pick, Switch
from seatwork.benches.build.setup import Setup
from seatwork.errors import SeatworkError

MOST = 12
"""Choices that a page shows; a longer list is for the notebook."""
SCALE, COLORS = 0.6, 32


def pictures(bench: Setup[Any]) -> dict[str, Any] | None:
    """Return a still for each choice of a bench that no slider moves, as JSON data.

    Parameters
    ----------
    bench : Setup
        It is set to and fro, and left at its start.

    Returns
    -------
    dict or None
        None for a bench that has nothing in sight to choose from.
    """
    start = bench.values
    chosen = _first_choice(bench)
    if chosen is None:
        return None
    button = next((one for one in bench.controls if isinstance(one, Switch) and one.back), None)
    try:
        told = {
            "title": bench.title,
            "label": chosen.label,
            "opens": button.label if button else "",
            "closes": button.back if button else "",
            "opened": bool(button and start[button.name]),
            "start": start[chosen.name],
            "choices": list(_stills(bench, chosen, button)),
        }
    finally:
        bench.set(**start)
    others = [one.label for one in bench.controls if one not in (chosen, button)]
    return told | {"others": others}


def _first_choice(bench: Setup[Any]) -> Choice | Pick | None:
    """Return the first choice in sight that says what is looked at, not which answer is picked."""
    for control in bench.controls:
        is_choice = isinstance(control, Choice | Pick) and not control.folded
        if is_choice and control.needs is None and control.start != "none":
            assert isinstance(control, Choice | Pick)
            return control
    return None


def _stills(
    bench: Setup[Any], chosen: Choice | Pick, button: Switch | None
) -> Iterator[dict[str, Any]]:
    """Yield each choice with its picture, before the button and after it."""
    start = bench.values
    listed = chosen.options if isinstance(chosen, Choice) else chosen.listed()
    names = list(dict.fromkeys([start[chosen.name], *listed]))[:MOST]
    seen: set[str] = set()
    for name in sorted(names, key=[*listed, start[chosen.name]].index):
        try:
            shown = [_still(bench, {chosen.name: name, **on}) for on in _turns(button)]
        except SeatworkError:
            continue  # such as "one that I type", which wants a note
        finally:
            bench.set(**start)
        words = " ".join(still["text"] for still in shown)
        if words not in seen:  # "as typed below" shows nothing of its own
            seen.add(words)
            yield {"name": name, "shown": shown}


def _turns(button: Switch | None) -> list[dict[str, bool]]:
    return [{button.name: False}, {button.name: True}] if button else [{}]


def _still(bench: Setup[Any], values: dict[str, Any]) -> dict[str, Any]:
    bench.set(**values)
    drawing = bench.drawing
    png = drawing.small_png(SCALE, COLORS)
    return {
        "png": b64encode(png).decode("ascii"),
        "text": drawing.text,
        "rows": bench.readouts(),
    }
