"""Proof of which-size: right answer and slips, from nothing of the package."""

from typing import Any

# Size asked for -> size picked instead -> slip: along the slope for straight down is M08, down to
# the point for down to the hole's edge (or back) M03, a diameter in it M44, fields swapped.
PICKED = {
    "depth of the cone, face to hole edge": {"apex": "M03", "slant": "M08"},
    "depth to the point of the cone": {"depth": "M03", "slant": "M08"},
    "width of the cone along its slope": {"depth": "M08", "apex": "M08"},
    "diameter at the face": {},
    "diameter of the hole": {},
}

NAMED = dict(zip(PICKED, ("depth", "apex", "slant", "diameter", "hole"), strict=True))


def parts(q: Any) -> list[Any]:
    """Find the letter at the size named."""
    letters = dict(zip(q.order.split(","), "ABCDE", strict=True))
    slips: dict[str, Any] = {}
    for size in sorted(set(letters) - {NAMED[q.wanted]}):
        code = PICKED[q.wanted].get(size, "M44")
        slips[code + "bcd"[: sum(key[:3] == code for key in slips)]] = letters[size]
    return [(letters[NAMED[q.wanted]], slips)]
