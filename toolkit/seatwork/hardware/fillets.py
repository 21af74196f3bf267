"""The diameter that the fillet under a screw's head needs."""

from seatwork import tables
from seatwork.hardware.facts import Fact, fact
from seatwork.hardware.screws import Screw

APPENDIX, COLUMN = "counterbore_inch_asme_b18_3_appendix", "fillet_countersink_dia_C_in"


def fillet_clearance(screw: Screw) -> Fact | None:
    """Find the diameter that clears the fillet under a head.

    Parameters
    ----------
    screw : Screw
        The screw.

    Returns
    -------
    Fact or None
        Diameter [mm] with its source; None where no list held here gives one: it is so of
        every screw but socket head cap screws.

    Examples
    --------
    >>> from seatwork.hardware import screw
    >>> fillet_clearance(screw("M6 SHCS")).value
    6.8
    """
    if "fillet_diameter" in screw.facts:
        return screw.facts["fillet_diameter"]
    if screw.kind != "socket cap inch":
        return None
    row = next((one for one in tables.rows(APPENDIX) if one["size"] == screw.thread.size), None)
    return fact(APPENDIX, row, COLUMN) if row else None
