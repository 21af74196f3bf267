"""The reader of entries in a page that holds no question: what was typed in, a sentence out.

The sentence comes in both languages of the page, which brings the other one's templates.
"""

import json

from seatwork.entries.asked import echo, from_data
from seatwork.entries.sentences import pieces


def call(name: str, text: str) -> str:
    """Answer what the page asks: how each part is read, in English and in the other language."""
    del name  # it asks this alone
    given = json.loads(text)
    told: dict[str, str] = given["said"]

    def say(text: str) -> str:
        return told.get(text) or "".join(pieces(text, lambda one: told.get(one, ""), []))

    pairs = zip(given["typed"], (from_data(_told(part)) for part in given["parts"]), strict=True)
    return json.dumps([[echo(typed, asked, how) for how in (str, say)] for typed, asked in pairs])


def _told(part: dict[str, object]) -> dict[str, object]:
    return {name: value for name, value in part.items() if name not in ("unit", "such")}
