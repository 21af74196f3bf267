"""What can be set on a bench: numbers, choices, switches, lines; said without any widget."""

from collections.abc import Callable
from dataclasses import dataclass

from seatwork.benches.build.numbers import Needs
from seatwork.benches.build.numbers import Number as Number
from seatwork.errors import SeatworkError


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
