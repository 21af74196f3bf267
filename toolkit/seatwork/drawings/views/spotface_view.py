"""A bolt on the rough pad, the pad from above, and the pad under the cutter, side by side."""

from dataclasses import dataclass
from math import floor, log10

from seatwork.drawings.parts.spotface_joint import Bolt, Joint
from seatwork.drawings.parts.spotface_pad import Pad, Relief, percent
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes.linework import Linework, linework_patches
from seatwork.drawings.strokes.page_words import FOOT, SECOND, heading, word
from seatwork.drawings.strokes.style import page
from seatwork.drawings.view import View
from seatwork.units import rounded, show_angle, show_both, show_length

FACE, NAMES = 500.0, 100.0
ROUGH, FACED = 192.0, 1076.0
"""Where the two bolts stand [page units]."""

RELIEF = (368.0, 176.0, 364.0)
WIDE, DEEP = 316.0, 372.0
KSI = 6.894757
"""MPa in one thousand pounds per square inch."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Facing:
    """The same bolt before and after facing.

    Parameters
    ----------
    rough, faced : Pad
        The pad untouched, and as far as it is faced.
    before, after : Bolt
        The bolt on each.
    shown : bool
        Whether the bolt is tightened.
    proof : float
        Proof load of a bolt, to compare with [MPa].
    grade : str
        Grade or class of that bolt.
    """

    rough: Pad
    faced: Pad
    before: Bolt
    after: Bolt
    shown: bool
    proof: float
    grade: str


class SpotfaceView(View[Facing]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : Facing
        What to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        self._rough, self._faced = (Joint(axes, self.style, x, FACE) for x in (ROUGH, FACED))
        self._stands: tuple[object, ...] = ()
        self._relief = Relief(axes, self.style, RELIEF)
        self._lines, self._heads = linework_patches(axes, self.style, animated=True)
        self._heading = heading(axes, self.style)
        self._second = word(axes, self.style, 640.0, SECOND)
        self._foot = word(axes, self.style, 640.0, FOOT)
        self._left = word(axes, self.style, 0.0, 0.0, va="center", ha="right")
        middle = RELIEF[0] + RELIEF[2] / 2
        self._names = [
            [word(axes, self.style, x, NAMES - row * self.style.line_height) for row in range(2)]
            for x in (ROUGH, middle, FACED)
        ]
        for names in self._names:
            names[0].set_fontweight("bold")
        return Drawing(figure, self.move(self.part))

    def move(self, part: Facing) -> str:
        """Show another state; return the text."""
        scale = min(WIDE / part.rough.size, DEEP / part.before.reach)
        rough = part.rough, part.before, scale, part.shown
        if rough != self._stands:
            self._rough.show_bolt(part.rough, part.before, scale, tight=part.shown)
            self._stands = rough
        if part.faced.whole:
            self._faced.show_bolt(part.faced, part.after, scale, tight=True)
        else:
            self._faced.show_cutter(part.faced, part.after, scale)
        self._relief.move(part.faced)
        self._dimension(part.faced, scale)
        self._write(part)
        return text_of(part, self.look.system)

    def _dimension(self, pad: Pad, scale: float) -> None:
        """Dimension what is left at the low side."""
        work, edge = Linework(self.style.sizes), FACED - scale * pad.size / 2
        x, low = edge - 34.0, FACE + scale * pad.underside
        high = low + scale * pad.left
        for y in (low, high):
            work.line((edge - 6.0, y), (x - 8.0, y))
        work.dimension((x, low), (x, high))
        self._lines.set_path(work.lines)
        self._heads.set_path(work.heads)
        self._left.set_text(show_length(pad.left, self.look.system))
        self._left.set(x=x - 16.0, y=(low + high) / 2)

    def _write(self, part: Facing) -> None:
        """Set every word."""
        system, bolt, pad = self.look.system, part.before, part.faced
        self._heading.set_text(_heading(part))
        sizes = (show_both(size, system) for size in (bolt.diameter, bolt.grip))
        bent = part.shown and bool(bolt.tilt)
        side = "; heavy line: its stretched side" if bent else f", on the {pad.face}"
        self._second.set_text("bolt {}, grip {}".format(*sizes) + side)
        high = "its crown runs up and down" if bolt.tilt is None else "high side at the right"
        lines = [_rough(part, system), (f"{percent(pad.share)} clean", high), _faced(part, system)]
        for names, shown in zip(self._names, lines, strict=True):
            for text, line in zip(names, shown, strict=True):
                text.set_text(line)
        proof = stress(part.proof, system)
        self._foot.set_text(
            f"Bending: a teaching estimate. Proof load, {part.grade} bolt: {proof}, from memory."
            if bent
            else ""
        )


def stress(mpa: float, system: str) -> str:
    """Show a stress [MPa] to two figures, as far as such an estimate goes, in both systems.

    Examples
    --------
    >>> stress(596.4, "inch"), stress(596.4, "metric")
    ('87 ksi (600 MPa)', '600 MPa (87 ksi)')
    """
    shown = [f"{_two_figures(mpa / KSI)} ksi", f"{_two_figures(mpa)} MPa"]
    first, second = shown if system == "inch" else shown[::-1]
    return f"{first} ({second})"


def _two_figures(value: float) -> str:
    places = 1 - floor(log10(value)) if value > 0 else 0
    return f"{rounded(value, places):,.{max(places, 0)}f}"


def _heading(part: Facing) -> str:
    if not part.shown:
        return "Tightened on the rough pad: what happens to the bolt?"
    if part.before.tilt is None:
        does = "The head rocks on the crown"
    elif part.before.tilt == 0:
        does = "Square to the hole but for the scale"
    else:
        does = "The rough pad bends the bolt"
    return f"{does}; on the clean ring it lies square" if part.faced.whole else does


def _rough(part: Facing, system: str) -> tuple[str, str]:
    bolt = part.before
    if not part.shown:
        return "As cast, not tight yet", "?"
    if bolt.tilt is None:
        return "As cast", "rocks: no number"
    if bolt.tilt == 0:
        return "As cast, not tilted", "bears on high spots"
    return (
        f"As cast, tilted {show_angle(bolt.tilt)}",
        f"at most {stress(bolt.bending or 0, system)}",
    )


def _faced(part: Facing, system: str) -> tuple[str, str]:
    pad = part.faced
    if pad.whole:
        return "Faced: square to the hole", "no bending from the seat"
    if pad.depth == 0:
        return "Cutter at first touch", "on the high side only"
    depth, full = (show_length(size, system) for size in (pad.depth, pad.full_depth))
    return f"Cutter {depth} down", f"clean all round at {full}"


def text_of(part: Facing, system: str) -> str:
    """Tell the bolt on both pads, with all the numbers."""
    bolt, pad = part.before, part.faced
    size, head, grip, hole, spot, depth, full, left, thick = (
        show_both(length, system)
        for length in (bolt.diameter, bolt.across, bolt.grip, pad.hole_diameter, pad.diameter,
                       pad.depth, pad.full_depth, pad.left, pad.thickness)
    )  # fmt: skip
    rough = _text_of(bolt, system) if part.shown else "What happens to it when it is tightened?"
    clean = (
        "The bolt then lies square to the hole and the seat does not bend it."
        if pad.whole
        else f"{full} cleans up all round."
    )
    return (
        f"A bolt of {size}, head {head} across, grip {grip}, through a hole of {hole} on the rough "
        f"{pad.face}. {rough} Beside it the pad from above and cut open: a spotface of "
        f"{spot}, {depth} below first touch, {percent(pad.share)} clean, {left} left of {thick} "
        f"at the low side. {clean}{_compared(part, system)}"
    )


def _text_of(bolt: Bolt, system: str) -> str:
    if bolt.tilt is None:
        return "The head touches along the crown only and rocks either way."
    if bolt.tilt == 0:
        return "The pad is not tilted, but rough: the head bears on its high spots."
    return (
        f"The seat is tilted {show_angle(bolt.tilt)} and bends the bolt by at most "
        f"{stress(bolt.bending or 0.0, system)}."
    )


def _compared(part: Facing, system: str) -> str:
    if not part.shown or part.before.tilt is None:
        return ""
    proof = stress(part.proof, system)
    return (
        " The bending is an upper bound, a teaching estimate; the proof load of a "
        f"{part.grade} bolt is {proof}, from memory."
    )
