"""What a page is told of a bench that its own Python works: its pictures, and how each is read."""

import json
import string
from base64 import b64encode
from collections.abc import Iterator
from functools import cache
from itertools import product
from pathlib import Path
from typing import Any

from seatwork.benches.build.controls import Choice, Pick, Switch, TextLine
from seatwork.benches.build.setup import Setup
from seatwork.drawings.strokes.spacing import alone, closer
from seatwork.drawings.strokes.style import FONT
from seatwork.errors import SeatworkError
from seatwork.live.outlines import Letters
from seatwork.live.picture import LivePicture
from seatwork.takehome.calls import BenchCall
from seatwork.takehome.inside.stand_ins import BOX

LIVE = ("angles", "counterbore", "depth", "gaging", "speeds", "triangle")
"""Benches whose scenes draw on plain things, setting for setting as the live ones."""
SCALE = 1.5
"""Pixels of the still ground per pixel of the figure [1]."""
MOST = 24
"""Pictures of one bench that a page carries; a bench of more stays recorded."""
SPACED = string.ascii_letters + string.digits + string.punctuation + " °×−±\ufb00"
"""Letters that may stand in a line with signs; pairs of them have a distance of their own."""
SIGNS = SPACED + "⌀–≤≥½¼¾·µ²³…’“”áéíóúüñÁÉÍÓÚÑ¿¡äöÄÖß√π⅛⅜⅝⅞→←" + BOX
"""Letters that a page can show and lay out; any other becomes a box."""


def live_told(call: BenchCall) -> dict[str, Any] | None:
    """Return what the page's Python and script need, as JSON data; None where it stays recorded.

    Parameters
    ----------
    call : BenchCall
        The bench as the lesson calls it.
    """
    if call.name not in LIVE:
        return None
    bench = call.bench()
    redraws = [one for one in bench.controls if one.redraws]
    if any(isinstance(one, TextLine) for one in redraws):
        return None
    keys, found = {}, []
    turns = [one for one in redraws if not isinstance(one, Pick) or _turns(bench, one)]
    for key, told in _pictures(bench, turns):
        if told not in found:
            found.append(told)
        keys[key] = found.index(told)
        if len(found) > MOST:
            return None
    return {
        "name": call.name, "values": call.values, "redraws": [one.name for one in redraws],
        "turns": [one.name for one in turns], "keys": keys, "pictures": found,
    }  # fmt: skip


def _turns(bench: Setup[Any], pick: Pick) -> bool:
    """Tell whether another name gives another ground, not the same one with things moved."""
    grounds = [told for _, told in _pictures(bench, [pick])]
    return any(one != grounds[0] for one in grounds)


def _pictures(bench: Setup[Any], turns: list[Any]) -> Iterator[tuple[str, dict[str, Any]]]:
    """Yield each picture that the bench can be turned to, by what turns it."""
    bench.reset()
    start = bench.values
    listed = [dict.fromkeys([start[one.name], *_values(one)]) for one in turns]
    for values in product(*listed):
        turned = dict(zip((one.name for one in turns), values, strict=True))
        try:
            bench.reset().set(**turned)
        except SeatworkError:
            continue  # no such pair
        if all(bench.values[name] == value for name, value in turned.items()):
            yield json.dumps(list(values)), _told(bench)
    bench.reset()


def _values(control: Any) -> tuple[Any, ...]:
    if isinstance(control, Switch):
        return (False, True)
    if isinstance(control, Choice):
        return control.options
    assert isinstance(control, Pick)
    return control.listed()


def _told(bench: Setup[Any]) -> dict[str, Any]:
    """Return the picture of the moment: ground, looks, and how each element is read."""
    with bench.as_read:
        picture = LivePicture(bench.scene(bench.result, bench.look()), scale=SCALE)
    reads = picture.told()
    if reads is None:
        raise ValueError(f"{bench.name} has a moving thing that no page can read")
    page = picture.page()
    return {
        "width": page["width"], "height": page["height"], "units": page["units"],
        "order": page["order"], "looks": page["looks"], "reads": reads,
        "fonts": [Path(one).stem for one in picture.fonts],
        "layers": [b64encode(png).decode() for png in picture.layers],
    }  # fmt: skip


@cache
def letters() -> dict[str, Any]:
    """Return, once for a page, the letters of its fonts.

    Returns
    -------
    dict
        ``shapes``, by font and letter, are for the page's script; ``told`` is for its Python:
        widths by font, and how letters of a line with signs are spaced.
    """
    fonts = [Letters.of(FONT, weight) for weight in ("normal", "bold")]
    known = {Path(font.name).stem: {sign: font.shape(sign) for sign in SIGNS} for font in fonts}
    pairs = {f"{one}{two}": _whole(closer((one, two))) for one, two in product(SPACED, repeat=2)}
    return {
        "shapes": known,
        "told": {
            "letters": {
                font: {sign: wide for sign, (_, wide) in shapes.items()}
                for font, shapes in known.items()
            },
            "widths": {sign: _whole(alone(sign)) for sign in SIGNS},
            "pairs": {pair: shift for pair, shift in pairs.items() if shift},
        },
    }


def _whole(width: float) -> int:
    """Return a width of the type size 1 in the font's own whole steps [1/6400]."""
    return round(width * 6400)
