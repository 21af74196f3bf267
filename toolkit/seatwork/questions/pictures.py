"""The drawings that belong to questions; matplotlib is loaded when the first one is drawn."""

from collections.abc import Mapping
from typing import Protocol

from seatwork.seats import Countersink, Head


class Drawing(Protocol):
    """What a question needs of a drawing: its text, and its picture as Markdown."""

    @property
    def text(self) -> str:
        """All numbers of the picture, in one or two sentences."""

    def markdown(self, scale: float = 1.0) -> str:
        """Return the picture as a Markdown image, then its text."""

    def png(self, scale: float = 1.0) -> bytes:
        """Return the picture as a PNG file."""


def seat_picture(seat: Countersink, system: str, asked: str | None = None) -> Drawing:
    """Return a seat in section, with a question mark at the size `asked`."""
    from seatwork.drawings import holes
    from seatwork.drawings.scene import Look

    return holes.countersink(seat, Look(system=system), asked=asked)


def head_picture(head: Head, seat: Countersink, system: str) -> Drawing:
    """Return a head above its seat, not yet let down."""
    from seatwork.drawings.apart import head_over_seat
    from seatwork.drawings.scene import Look
    from seatwork.drawings.seat_view import SeatedHead

    return head_over_seat(SeatedHead(head=head, seat=seat), Look(system=system))


def lettered_picture(seat: Countersink, letters: Mapping[str, str]) -> Drawing:
    """Return a seat in section with a letter at each size, which has no number there."""
    from seatwork.drawings.lettered import lettered_seat

    return lettered_seat(seat, letters)
