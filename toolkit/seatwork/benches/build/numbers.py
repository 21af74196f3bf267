"""A number that can be set on a bench: its range, its steps and how it is typed."""

from dataclasses import dataclass
from functools import lru_cache

from seatwork.benches.build.kinds import KINDS, Kind
from seatwork.errors import SeatworkError

SLACK = 1e-9
"""How far beyond its range a value may lie by rounding, in its own unit."""

ROOM = 1.25
"""How far a slider stretches past a value that lies beyond its range [-]."""

Needs = str | tuple[str, str]
"""The switch that must be on for a control to show, or a choice and what must be chosen there."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Number:
    """A number that a hand can move.

    Parameters
    ----------
    name : str
        Name in ``values`` and in ``set``.
    label : str
        Visible name.
    kind : str
        What is measured, by its name in ``KINDS``, such as "length" or "angle"; values are mm,
        deg, m/min, mm/rev, rev/min.
    low, high, start : float
        Range and first value [mm, deg, m/min, mm/rev or rev/min, by kind]; no first value where
        another control brings it.
    least, most : float, optional
        What may be typed [as `low`], where that is more than the slider spans; it then stretches.
    why : str
        Reason for the range, in words that follow "since".
    size : int
        Last places per step [-]: 1 is .001 in, 0.01 mm, 1 deg, 1 rev/min.
    page : int
        Steps per Page key [-].
    folded : bool
        Out of sight until asked for.
    needs : str or (str, str), optional
        Name of the switch that must be on for this control to show, or of a choice and what must
        be chosen there.
    redraws : bool
        Whether a new value needs a new picture, not a move.
    glides : bool
        Whether lines slide to where a new value puts them; they jump where a reader wants less
        motion.
    """

    name: str
    label: str
    kind: str = "length"
    low: float
    high: float
    start: float | None = None
    least: float | None = None
    most: float | None = None
    why: str
    size: int = 1
    page: int = 10
    folded: bool = False
    needs: Needs | None = None
    redraws: bool = False
    glides: bool = False

    kinds, takes = "float or str", float | str

    @property
    def allowed(self) -> str:
        """The range, in words for the help."""
        least, most = self.bounds
        return f", {self.sort.wrap(least)} to {self.sort.wrap(most)}, or shop text"

    @property
    def bounds(self) -> tuple[float, float]:
        """The least and the most that may be typed."""
        least = self.low if self.least is None else self.least
        return least, self.high if self.most is None else self.most

    @property
    def sort(self) -> Kind:
        """How this number is read, shown and stepped."""
        return KINDS[self.kind]

    def read(self, given: object, system: str) -> float:
        """Return a value given as shop text or as a number inside the project.

        Raises
        ------
        SeatworkError
            If the text cannot be read or the value is out of range.
        """
        whole = isinstance(given, int) and not isinstance(given, bool) and abs(given) < 10**15
        exact = whole or isinstance(given, float)
        value = float(given) if exact else self.sort.read(given, system)  # type: ignore[arg-type]
        least, most = self.bounds
        if not least - SLACK <= value <= most + SLACK:
            raise SeatworkError(
                self.sort.wrap(value) if value == value else "nan",
                f"{self.label.lower()} goes from {{low}} to {{high}}, since {self.why}",
                "take one in that range",
                low=self.sort.wrap(least),
                high=self.sort.wrap(most),
            )
        return value

    def at(self, step: int, system: str) -> float:
        """Return the value of a whole step."""
        return self.sort.at(step, self.size, system)

    def step(self, value: float, system: str) -> int:
        """Return the whole step nearest to a value, inside the range of the slider."""
        low, high = self.steps(system, value)
        return min(high, max(low, self.sort.step(value, self.size, system)))

    def steps(self, system: str, value: float | None = None) -> tuple[int, int]:
        """Return the first and the last whole step of the slider, stretched to hold a value."""
        if value is None or self.low <= value <= self.high:
            return _steps(self, system, self.low, self.high)
        least, most = self.bounds
        low, high = min(self.low, value / ROOM), max(self.high, value * ROOM)
        return _steps(self, system, max(low, least), min(high, most))

    def written(self, value: float, system: str) -> str:
        """Return the value as an argument: shop text where that is exact, else a number."""
        text = self.sort.show(value, system)
        try:
            exact = self.kind == "length" and self.sort.read(text, system) == value
        except SeatworkError:
            exact = False
        return repr(text) if exact else f"{value!r}".removesuffix(".0")


@lru_cache(maxsize=256)
def _steps(number: Number, system: str, least: float, most: float) -> tuple[int, int]:
    """Return the first and last whole step that lie inside a range."""
    low = number.sort.step(least, number.size, system)
    high = number.sort.step(most, number.size, system)
    under = number.at(low, system) < least - SLACK
    over = number.at(high, system) > most + SLACK
    return low + under, high - over
