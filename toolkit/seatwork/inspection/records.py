"""A measured value held against its limits, and what may be said of it."""

from dataclasses import dataclass

ACCEPT, REJECT, UNKNOWN = "accept", "reject", "cannot tell with this instrument"
MARKS = {ACCEPT: "OK", REJECT: "X", UNKNOWN: "?"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Judged:
    """One measured value against its limits.

    Parameters
    ----------
    key : str
        Which quantity, a key of `QUANTITIES`.
    about : str
        The same in words.
    value : float or None
        As measured [mm or deg]; None for an answer of yes or no.
    least, greatest : float or None
        Limits [mm or deg].
    uncertainty : float
        Expanded uncertainty of the measurement [mm or deg].
    instrument : str
        What it was measured with.
    source : str
        Who sets the limits.
    aim : float or None
        What the plan aims at [mm or deg]; None where it does not say.
    verdict : {"accept", "reject", "cannot tell with this instrument"}
        What may be said.
    """

    key: str
    about: str
    value: float | None
    least: float | None = None
    greatest: float | None = None
    uncertainty: float = 0.0
    instrument: str = ""
    source: str = ""
    aim: float | None = None
    verdict: str

    def __repr__(self) -> str:
        return f"<Judged {self.about}: {self.verdict}>"

    @property
    def mark(self) -> str:
        """A sign beside the word, so that neither color nor reading is needed."""
        return MARKS[self.verdict]
