"""Write the font of the hole signs, from the same outlines as the drawings'.

Hardly a computer has a font with ⌴ and ⌵, and a browser shows a box for what it lacks. This one
holds the four signs of a hole note alone, and every page of ours brings it along. Run
``python tests/signs_font.py`` after changing an outline.
"""

import numpy as np
from fontTools.fontBuilder import FontBuilder
from fontTools.pens.ttGlyphPen import TTGlyphPen
from seatwork.drawings.strokes.symbols import CAPITAL, DRAWN, GAP
from seatwork.live.signs import FONT

UNITS = 1000
BELOW = -250
VERSION = 0.1
EPOCH = 2_082_844_800  # 1970 by the clock of such files, which begins in 1904 [s]
SIGNS = {f"uni{ord(sign):04X}": sign for sign in DRAWN if len(sign) == 1}
"""By its name in the font, each sign that is one character."""


def drawn(sign: str):
    """Return the outline of a sign as a glyph, its contours without curves."""
    pen = TTGlyphPen(None)
    for corners in DRAWN[sign]().to_polygons(closed_only=False):
        points = np.rint((corners + np.array([GAP, 0.0])) * UNITS).astype(int).tolist()
        points = points[:-1] if points[0] == points[-1] else points
        pen.moveTo(tuple(points[0]))
        for point in points[1:]:
            pen.lineTo(tuple(point))
        pen.closePath()
    return pen.glyph()


def width(sign: str) -> int:
    """Return the width of a sign with the gaps beside it."""
    return round((DRAWN[sign]().get_extents().x1 + 2 * GAP) * UNITS)


def font() -> FontBuilder:
    """Build the font: the four signs and an empty glyph."""
    names = [".notdef", *SIGNS]
    made = FontBuilder(UNITS, isTTF=True)
    made.setupGlyphOrder(names)
    made.setupCharacterMap({ord(sign): name for name, sign in SIGNS.items()})
    glyphs = {name: drawn(sign) for name, sign in SIGNS.items()}
    made.setupGlyf({".notdef": TTGlyphPen(None).glyph(), **glyphs})
    wide = {name: (width(sign), 0) for name, sign in SIGNS.items()}
    made.setupHorizontalMetrics({".notdef": (UNITS // 2, 0), **wide})
    made.setupHorizontalHeader(ascent=round(CAPITAL * UNITS) + 120, descent=BELOW)
    made.setupNameTable({"familyName": "seatwork signs", "styleName": "Regular"})
    made.setupOS2(sTypoAscender=round(CAPITAL * UNITS), sTypoDescender=BELOW)
    made.setupPost()
    made.updateHead(created=EPOCH, modified=EPOCH, fontRevision=VERSION)
    made.font.recalcTimestamp = False
    return made


if __name__ == "__main__":
    made = font()
    made.font.flavor = "woff"
    made.save(FONT)
