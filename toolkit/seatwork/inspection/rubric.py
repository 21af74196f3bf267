"""The practical: what an instructor looks at and signs; software signs nothing."""

from dataclasses import dataclass

from seatwork.inspection.findings import PartVerdict
from seatwork.inspection.records import ACCEPT

MEASURED = (("diameter", "Diameter"), ("depth", "Depth"), ("stand", "Head: proud, flush, below"))
LOOKED_AT = {
    "Finish": "No chatter marks; the cone or floor is even all round.",
    "Burrs": "None on the face, none on the far side; felt with a cotton bud, not a finger.",
    "Safety": "Glasses, clamping, chuck key, speed checked, depth set on scrap: every time.",
}
SIGNATURE = "Instructor's signature: ______________________   Date: ____________"
NOT_CLEARED = "This sheet clears nobody to run a machine; the instructor does."


@dataclass(frozen=True, slots=True, kw_only=True)
class RubricLine:
    """One line of the rubric.

    Parameters
    ----------
    name : str
        What is looked at.
    asked : str
        What a good part shows.
    found : str
        What the measurement says, in words with its mark; empty where a person must look.
    """

    name: str
    asked: str
    found: str = ""


def rubric(part: PartVerdict | None = None) -> tuple[RubricLine, ...]:
    """Return the rubric: diameter, depth, stand, finish, burrs, safety.

    Parameters
    ----------
    part : PartVerdict, optional
        A measured part, to fill in what was measured; blank without.

    Returns
    -------
    tuple of RubricLine
        What a person must judge is left open; the signature line is always blank.
    """
    measured = tuple(
        RubricLine(name=name, asked="within its limits", found=_found(part, key))
        for key, name in MEASURED
    )
    looked = tuple(RubricLine(name=name, asked=asked) for name, asked in LOOKED_AT.items())
    return (*measured, *looked)


def _found(part: PartVerdict | None, key: str) -> str:
    one = part.value_of(key) if part else None
    if one is None:
        return "" if part is None else "not measured"
    return one.mark if one.verdict == ACCEPT else f"{one.mark} {one.verdict}"
