"""Proof of print-signs: right answer and slips, from nothing of the package."""

from typing import Any

MEANINGS = {
    "⌀": "diameter",
    "R": "radius",
    "□": "square section",
    "⌵": "a cone at the mouth",
    "⌴": "a bore with a flat floor",
    "⌴SF": "only until it is clean",
    "↧": "depth",
}
ALIKE = (
    ("a cone at the mouth", "a bore with a flat floor"),
    ("depth", "a cone at the mouth"),
    ("only until it is clean", "a bore with a flat floor"),
    ("diameter", "radius"),
    ("diameter", "square section"),
)


def parts(q: Any) -> list[Any]:
    """Name each sign; a mixed-up pair swaps its two words."""
    words = [MEANINGS[sign] for sign in q.signs.split()]
    slips = {}
    for number, (one, other) in enumerate(ALIKE):
        if one in words and other in words:
            swapped = {one: other, other: one}
            slips[f"M62{'abcde'[number]}"] = [swapped.get(word, word) for word in words]
    return [(words, slips)]
