"""The reader of entries in a page that holds no question: what was typed in, a sentence out."""

import json

from seatwork.entries.asked import echo, from_data


def call(name: str, text: str) -> str:
    """Answer what the page asks: how each part is read."""
    del name  # it asks this alone
    given = json.loads(text)
    pairs = zip(given["typed"], given["parts"], strict=True)
    return json.dumps([echo(typed, from_data(_told(part))) for typed, part in pairs])


def _told(part: dict[str, object]) -> dict[str, object]:
    return {name: value for name, value in part.items() if name not in ("unit", "such")}
