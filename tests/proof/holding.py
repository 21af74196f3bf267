"""Counts what is held against the outside: each value once, with its source.

A test takes the fixture ``outside`` and says ``assert outside(name, found, expected, ...)``. What
was held travels with the test's report, so that ``tests/outside_checks.py`` can count it, and
nothing is counted that did not run.
"""

from collections.abc import Callable, Mapping
from dataclasses import asdict, dataclass
from typing import Any

HELD = "held against the outside"
"""The name under which a report carries what its test held."""

PUBLISHED, LISTS, BY_HAND = "published value", "one list against another", "sum worked by hand"
FLOOR = 1e-9  # a tolerance of 0 means the same number but for the last bits


@dataclass(frozen=True, slots=True, kw_only=True)
class Held:
    """One found value beside the expected one.

    Parameters
    ----------
    name : str
        Names the value; two tests that hold one value give it one name, and it counts once.
    found, expected : float or str
        In the row's own unit; words are held to be equal.
    within : float
        The difference that the printed value allows.
    unit, source : str
        The unit, and who says so.
    confirmed : str
        ``two-source``, ``one-source`` or ``memory``.
    kind : str
        `PUBLISHED`, `LISTS` or `BY_HAND`.
    """

    name: str
    found: float | str
    expected: float | str
    within: float
    unit: str
    source: str
    confirmed: str = "one-source"
    kind: str = PUBLISHED

    @property
    def difference(self) -> float:
        """How far the found value lies from the expected one; 0 for words that are the same."""
        if isinstance(self.found, str) or isinstance(self.expected, str):
            return 0.0 if self.found == self.expected else float("inf")
        return abs(self.found - self.expected)

    @property
    def agrees(self) -> bool:
        """Whether the difference is one that the printed value allows."""
        return self.difference <= max(self.within, FLOOR)


class Outside:
    """Holds values against the outside, and writes each into the test's report."""

    def __init__(self, record: Callable[[str, object], None]) -> None:
        self._record = record

    def __call__(
        self,
        name: str,
        found: float | str,
        expected: float | str,
        *,
        within: float,
        unit: str,
        source: str,
        **said: str,
    ) -> bool:
        """Tell whether a value agrees with the outside, and count it."""
        if not isinstance(found, str):
            found, expected = float(found), float(expected)
        held = Held(name=name, found=found, expected=expected, within=within, unit=unit,
                    source=source, **said)  # fmt: skip
        self._record(HELD, asdict(held))
        return held.agrees

    def row(self, row: Mapping[str, Any], found: float, name: str = "") -> bool:
        """Hold a found value against a row of a file of published values."""
        return self(
            name or row["id"],
            found,
            row["expected"],
            within=float(row["tolerance"]),
            unit=row["unit"],
            source=row["source"],
            confirmed=row["confirmed"],
        )
