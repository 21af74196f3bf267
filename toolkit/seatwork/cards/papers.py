"""Sizes of paper, and which the house prints on."""

from seatwork.errors import SeatworkError
from seatwork.shop import rules

PAPER = "display.paper"
PAPERS = {"letter": (8.5, 11.0), "a4": (8.27, 11.69)}


def page_size(paper: str) -> tuple[float, float]:
    """Return width and height of a paper [in].

    Parameters
    ----------
    paper : {"letter", "a4", ""}
        Which; an empty one is that of house rule ``display.paper``.

    Raises
    ------
    SeatworkError
        If the paper is not known.
    """
    name = rules().word(PAPER) if paper == "" else paper
    if not isinstance(name, str) or name.casefold() not in PAPERS:
        raise SeatworkError(paper, "that paper is not known", f"write {' or '.join(PAPERS)}")
    return PAPERS[name.casefold()]
