"""Every pair of colors that the package's palettes can put together, and what contrast it needs.

The colors are read from the code: the drawings' palettes, the style sheets of what is live, and
those of pages taken home. Needs are those of WCAG 2.2: letters 4.5:1 (1.4.3), lines, edges and
the ring of the focus 3:1 (1.4.11). A pair without a need does not meet, or is told apart by form.
"""

import itertools
import re
from collections.abc import Iterator, Mapping
from dataclasses import astuple, dataclass, fields
from pathlib import Path

import seatwork
from matplotlib.colors import to_rgb
from seatwork.drawings.strokes.style import PALETTES
from seatwork.opening.export import STYLE

HOME = Path(seatwork.__file__).parent
LETTERS, LINES = 4.5, 3.0
SHEETS = {
    "benches": "live/live.css",
    "answer form": "worksheet/answer.css",
    "sheet taken home": "takehome/page/sheet.css",
}
"""Style sheets with colors of their own; picks and the term take JupyterLab's."""

DRAWN = {
    **{("ink", ground): LETTERS for ground in ("paper", "metal", "screw")},
    ("contact", "paper"): LETTERS,
    **{(line, ground): LINES for line in ("center", "contact") for ground in ("metal", "screw")},
    ("center", "paper"): LINES,
    ("hatch", "metal"): LINES,
}
"""What drawings need; the contact's words stand on paper, its line everywhere."""

WORDS = ("ink", "quiet", "wrong", "right", "trouble")
STYLED = {
    **{(word, "ground"): LETTERS for word in WORDS},
    **{(word, "face"): LETTERS for word in ("ink", "quiet")},
    ("accent", "ground"): LETTERS,
    ("on-accent", "accent"): LETTERS,
    ("warn-ink", "warn"): LETTERS,
    **{("line", ground): LINES for ground in ("ground", "face")},
    ("accent", "face"): LINES,
    ("kept", "ground"): LINES,
}
"""What style sheets need; what is read back of an entry is in the accent's color."""

COLOR = re.compile(r"--(?:seatwork-)?([\w-]+):\s*(#[0-9a-fA-F]{3,6})\b")
STEP = re.compile(r"([^{}]*)([{}])")


@dataclass(frozen=True, kw_only=True)
class Pair:
    """Two colors of one palette, the contrast they have and the contrast they need (0: none)."""

    where: str
    palette: str
    one: str
    other: str
    ratio: float
    need: float


def luminance(color: str) -> float:
    """Give the relative luminance of WCAG 2.2, from its definition."""
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in to_rgb(color)]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    """Give the contrast ratio of WCAG 2.2."""
    high, low = sorted((luminance(one), luminance(other)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def blocks(style: str) -> Iterator[tuple[str, str]]:
    """Yield each block of a style sheet: every selector and condition round it, and its inside."""
    around: list[str] = []
    for text, brace in STEP.findall(style):
        if brace == "{":
            around.append(text.strip())
        else:
            yield " ".join(around), text
            around.pop()


def kind(around: str) -> str:
    """Name the palette that a block of a style sheet belongs to."""
    return next((name for name in ("dark", "print") if name in around), "light")


def palettes(style: str) -> dict[str, dict[str, str]]:
    """Read the named colors of a style sheet, by palette; what dark does not say is as in light."""
    found: dict[str, dict[str, str]] = {}
    for around, inside in blocks(style):
        for name, color in COLOR.findall(inside):
            found.setdefault(kind(around), {})[name] = color
    return {name: found["light"] | colors for name, colors in found.items()}


def every_palette() -> Iterator[
    tuple[str, str, Mapping[str, str], Mapping[tuple[str, str], float]]
]:
    """Yield each palette: where it is, its name, its colors by role, what its pairs need."""
    roles = [one.name for one in fields(PALETTES["light"])]
    for name, drawn in PALETTES.items():
        yield "drawings", name, dict(zip(roles, astuple(drawn), strict=True)), DRAWN
    for where, path in SHEETS.items():
        for name, colors in palettes((HOME / path).read_text("utf-8")).items():
            yield where, name, colors, STYLED
    for name, colors in palettes(STYLE).items():
        yield "lesson taken home", name, colors, STYLED


def pairs() -> Iterator[Pair]:
    """Yield every pair of colors of every palette."""
    for where, palette, colors, needs in every_palette():
        for one, other in itertools.combinations(colors, 2):
            need = needs.get((one, other)) or needs.get((other, one)) or 0.0
            ratio = contrast(colors[one], colors[other])
            yield Pair(where=where, palette=palette, one=one, other=other, ratio=ratio, need=need)
