"""Words that a person gives: a reason, and what can be printed at all."""

from seatwork.errors import SeatworkError

LONGEST = 290
"""Letters of a reason."""


def reason_of(text: str) -> str:
    """Return a reason; refuse one that says nothing, or far too much."""
    text = in_print(text)
    if not 3 <= len(text) <= LONGEST:
        fault = f"{len(text)} letters are no reason" if len(text) < 3 else "that is too long"
        raise SeatworkError(text[:40] or "reason", fault, "say why in a few words")
    return text


def in_print(text: str) -> str:
    """Return words with single spaces; refuse signs that no printer prints.

    A database may take the first of them for the end of the text.
    """
    found = " ".join(text.split())
    if not found.isprintable():
        remedy = "write letters, digits and signs alone"
        raise SeatworkError(
            ascii(found[:40])[1:-1], "it holds a sign that cannot be printed", remedy
        )
    return found
