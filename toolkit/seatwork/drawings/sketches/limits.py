"""A sketch of the limits of a size and of a reading with its doubt, for questions."""

from collections.abc import Mapping

from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.page import Asked, Page

LOW, HIGH, LEVEL, TALL = 330.0, 950.0, 215.0, 60.0
"""Ends of the band of good sizes, its lower side and its height, as drawn."""

LIMITS = {
    "least": "least",
    "greatest": "greatest",
    "reading": "the gage reads",
    "doubt": "the gage is sure to",
    "pass": "lowest reading that passes",
}


def limits_band(labels: Mapping[str, str]) -> Drawing:
    """Draw the band of good sizes; what is read and asked stands apart, so that no place tells.

    Parameters
    ----------
    labels : mapping of str to str
        Sizes to show by the names of ``LIMITS``, as they are said; "?" for the one asked for.

    Raises
    ------
    SeatworkError
        If there is no size of that name.
    """
    page = Page(Asked(title="A band of good sizes", names=LIMITS, labels=labels))
    top = LEVEL + TALL
    page.sketch.metal([(LOW, LEVEL), (HIGH, LEVEL), (HIGH, top), (LOW, top)])
    page.sketch.edge([(LOW, LEVEL), (LOW, top)], [(HIGH, LEVEL), (HIGH, top)])
    page.sketch.thin([(150.0, LEVEL), (1130.0, LEVEL)])
    for name, place in (("least", LOW), ("greatest", HIGH)):
        page.sketch.write(place, LEVEL - 24.0, name, ha="center")
        page.write(name, (place, LEVEL - 54.0), "center")
    page.sketch.write(212.0, LEVEL + TALL / 2, "too small", ha="center")
    page.sketch.write(1068.0, LEVEL + TALL / 2, "too large", ha="center")
    page.sketch.write(640.0, top + 60.0, "lowest reading that passes", ha="center")
    page.write("pass", (880.0, top + 60.0), "center")
    told = page.shown.labels
    page.sketch.write(
        640.0, 70.0, f"the gage reads {told['reading']}, sure to {told['doubt']}", ha="center"
    )
    return page.finish()
