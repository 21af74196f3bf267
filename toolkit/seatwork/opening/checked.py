"""One thing that was looked at, and how to mend it."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Check:
    """One thing looked at.

    Parameters
    ----------
    name : str
        What was looked at.
    found : str
        What was found.
    fix : str
        What to do about it; empty when all is well.
    """

    name: str
    found: str
    fix: str = ""

    @property
    def passed(self) -> bool:
        """Whether there is nothing to mend."""
        return not self.fix
