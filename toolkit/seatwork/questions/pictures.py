"""The drawings that belong to questions; matplotlib is loaded when the first one is drawn."""

from collections.abc import Collection, Mapping
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


def pad_picture(labels: Mapping[str, str], *, cut: bool = True) -> Drawing:
    """Return a sloped pad with its spotface; labels as in `asked_castings.sloped_pad`."""
    from seatwork.drawings.asked_castings import sloped_pad

    return sloped_pad(labels, cut=cut)


def boss_picture(labels: Mapping[str, str]) -> Drawing:
    """Return a round boss with its flat; labels as in `asked_castings.round_boss`."""
    from seatwork.drawings.asked_castings import round_boss

    return round_boss(labels)


def edge_picture(labels: Mapping[str, str]) -> Drawing:
    """Return the broken edge of a hole; labels as in `asked_edges.broken_edge`."""
    from seatwork.drawings.asked_edges import broken_edge

    return broken_edge(labels)


def bore_picture(labels: Mapping[str, str], parts: Collection[str] = ("screw",)) -> Drawing:
    """Return a counterbore and what lies in it; labels as in `asked_bores.screw_in_bore`."""
    from seatwork.drawings.asked_bores import screw_in_bore

    return screw_in_bore(labels, parts)


def cone_picture(labels: Mapping[str, str], shape: str = "seat", *, head: bool = False) -> Drawing:
    """Return a cone cut into a plate; labels as in `asked_cones.cone_cut`."""
    from seatwork.drawings.asked_cones import cone_cut

    return cone_cut(labels, shape, head=head)


def ball_picture(labels: Mapping[str, str]) -> Drawing:
    """Return gage balls in a seat; labels as in `asked_balls.gage_balls`."""
    from seatwork.drawings.asked_balls import gage_balls

    return gage_balls(labels)


def screw_picture(labels: Mapping[str, str]) -> Drawing:
    """Return a flat head screw in guard and frame; labels as in `asked_screws.screw_in_frame`."""
    from seatwork.drawings.asked_screws import screw_in_frame

    return screw_in_frame(labels)


def chamfer_picture(labels: Mapping[str, str]) -> Drawing:
    """Return the chamfer of a hole to be tapped; labels as in `asked_edges.thread_chamfer`."""
    from seatwork.drawings.asked_edges import thread_chamfer

    return thread_chamfer(labels)


def flat_head_picture(labels: Mapping[str, str]) -> Drawing:
    """Return a flat head over its seat; labels as in `asked_heads.head_over_seat`."""
    from seatwork.drawings.asked_heads import head_over_seat

    return head_over_seat(labels)


def beside_picture(labels: Mapping[str, str]) -> Drawing:
    """Return a seat beside its axis; labels as in `asked_heads.seat_beside_axis`."""
    from seatwork.drawings.asked_heads import seat_beside_axis

    return seat_beside_axis(labels)


def note_picture(note: str) -> Drawing:
    """Return a countersunk hole from above with its note on a leader."""
    from seatwork.drawings.asked_notes import note_on_leader

    return note_on_leader(note)


def pilot_picture(labels: Mapping[str, str]) -> Drawing:
    """Return a piloted counterbore in a hole; labels as in `asked_bores.pilot_in_hole`."""
    from seatwork.drawings.asked_bores import pilot_in_hole

    return pilot_in_hole(labels)
