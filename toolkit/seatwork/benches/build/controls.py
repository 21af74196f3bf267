"""What can be set on a bench: numbers, choices, switches, lines; said without any widget."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

from seatwork.benches.build.kinds import KINDS, Kind
from seatwork.errors import SeatworkError

SLACK = 1e-9
"""How far beyond its range a value may lie by rounding, in its own unit."""

ROOM = 1.25
"""How far a slider stretches past a value that lies beyond its range [-]."""

Needs = str | tuple[str, str]


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


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """One of several texts.

    Parameters
    ----------
    name, label, folded, needs, redraws
        As for `Number`.
    options : tuple of str
        What can be chosen.
    start : str, optional
        First choice; none where another control brings it.
    """

    name: str
    label: str
    options: tuple[str, ...]
    start: str | None = None
    folded: bool = False
    needs: Needs | None = None
    redraws: bool = False

    kinds, takes = "str", str

    @property
    def allowed(self) -> str:
        """The options, in words for the help."""
        return ": " + ", ".join(f'"{option}"' for option in self.options)

    def read(self, given: object, system: str) -> str:
        """Return the option given.

        Raises
        ------
        SeatworkError
            If there is no such option.
        """
        if given not in self.options:
            raise SeatworkError(
                str(given)[:40],
                f"{self.label.lower()} has no such choice",
                f"take one of {', '.join(self.options)}",
            )
        return str(given)

    def written(self, value: str, system: str) -> str:
        """Return the choice as an argument."""
        return repr(value)


@dataclass(frozen=True, slots=True, kw_only=True)
class Switch:
    """Something that is on or off.

    Parameters
    ----------
    name, label, folded, needs, redraws
        As for `Number`; the label says what switching on does.
    back : str, optional
        What switching off does; the switch is then one button that says what it will do.
    start : bool
        On or off at first.
    """

    name: str
    label: str
    back: str | None = None
    start: bool = False
    folded: bool = False
    needs: Needs | None = None
    redraws: bool = False

    kinds, takes, allowed = "bool", bool, ""

    def read(self, given: object, system: str) -> bool:
        """Return whether it is on.

        Raises
        ------
        SeatworkError
            If anything but True or False was given.
        """
        if not isinstance(given, bool):
            raise SeatworkError(
                str(given)[:40], f"{self.label.lower()} is on or off", "give True or False"
            )
        return given

    def written(self, value: bool, system: str) -> str:
        """Return the switch as an argument."""
        return repr(value)


@dataclass(frozen=True, slots=True, kw_only=True)
class TextLine:
    """Text typed by hand; it is read by the bench and only ever shown as text.

    Parameters
    ----------
    name, label, folded, needs, redraws
        As for `Number`.
    start : str, optional
        First text; none where another control brings it.
    longest : int
        Most characters taken [-].
    rows : int
        Lines the box shows [-]; one line takes no line break.
    """

    name: str
    label: str
    start: str | None = None
    longest: int
    rows: int = 1
    folded: bool = False
    needs: Needs | None = None
    redraws: bool = False

    kinds, takes, allowed = "str", str, ""

    def read(self, given: object, system: str) -> str:
        """Return the text given, its ends trimmed.

        Raises
        ------
        SeatworkError
            If there is none, it is too long, or it has characters that no one can see.
        """
        text = given.strip() if isinstance(given, str) else ""
        sentence = self.label.lower()
        if not text:
            raise SeatworkError("nothing", f"{sentence} wants some text", "type or pick one")
        if len(text) > self.longest:
            fault = f"{sentence} takes {self.longest} characters at most, and here are {len(text)}"
            raise SeatworkError(f"{text[:20]}...", fault, "leave some out")
        breaks = "\n" if self.rows > 1 else ""
        hidden = next((c for c in text if not c.isprintable() and c not in breaks), None)
        if hidden is not None:
            raise SeatworkError(
                f"U+{ord(hidden):04X}",
                f"{sentence} has a character that cannot be seen",
                "type it anew",
            )
        return text

    def written(self, value: str, system: str) -> str:
        """Return the text as an argument."""
        return repr(value)


@dataclass(frozen=True, slots=True, kw_only=True)
class Pick:
    """A name out of one of the shop's lists, or any other that its reader knows.

    Parameters
    ----------
    name, label, folded, needs, redraws
        As for `Number`.
    listed : callable
        Gives the names that the page offers.
    known : callable
        Reads a name; raises `SeatworkError` for one it does not know.
    start : str, optional
        First name, or the first of a shop's own list that has it not; none where another control
        brings it.
    others : str
        What else may be named, such as ``another screw``; blank where the list is all.
    """

    name: str
    label: str
    listed: Callable[[], tuple[str, ...]]
    known: Callable[[str], object]
    start: str | None = None
    others: str = ""
    folded: bool = False
    needs: Needs | None = None
    redraws: bool = False

    kinds, takes = "str", str

    @property
    def allowed(self) -> str:
        """What may be named, in words for the help."""
        return f", of the shop's list{f', or {self.others} by its name' if self.others else ''}"

    @property
    def first(self) -> str | None:
        """The name to begin with; None where another control brings it.

        Raises
        ------
        SeatworkError
            If the shop's list has none at all.
        """
        if self.start is None:
            return None
        names = self.listed()
        if not names:
            fault = f"the shop's list has none for {self.label.lower()}"
            raise SeatworkError(self.start, fault, "write one in the list")
        return self.start if self.start in names else names[0]

    def read(self, given: object, system: str) -> str:
        """Return the name given, its ends trimmed.

        Raises
        ------
        SeatworkError
            If it is no name, or the reader does not know it.
        """
        text = given.strip() if isinstance(given, str) else ""
        if not text:
            raise SeatworkError("nothing", f"{self.label.lower()} wants a name", "pick or type one")
        self.known(text)
        return text

    def written(self, value: str, system: str) -> str:
        """Return the name as an argument."""
        return repr(value)


Control = Number | Choice | Switch | TextLine | Pick
