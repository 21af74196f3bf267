"""The signs of a hole note on every page: ⌀ ⌴ ⌵ ↧ from a font of our own, where none has them.

A browser shows a box for a sign that no font on the computer has, and a box in a note is a
wrong note. The signs stay text, to be copied, searched and read aloud.
"""

import base64
from pathlib import Path

FONT = Path(__file__).parent / "custom" / "signs.woff"
FAMILY = "seatwork signs"
RANGE = "U+2300, U+2334, U+2335, U+21A7"
"""The signs in the font; all else comes from other fonts."""

FACE = """@font-face {{
  font-family: "{family}";
  src: url(data:font/woff;base64,{data}) format("woff");
  unicode-range: {range};
}}
"""


def face() -> str:
    """Return the style that brings the font along, in itself: no page asks a server for it."""
    data = base64.b64encode(FONT.read_bytes()).decode("ascii")
    return FACE.format(family=FAMILY, data=data, range=RANGE)


def with_signs(*styles: Path) -> str:
    """Return the styles of a widget behind the font that they may name."""
    return "\n".join([face(), *(style.read_text(encoding="utf-8") for style in styles)])
