"""What is asked for, as far as a reader of entries must know it, and how an entry is read back."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import asdict, dataclass
from typing import Any

from seatwork.entries import measures
from seatwork.entries.letters import LETTERS, NO_ORDER, no_option, option_meant, order_meant
from seatwork.entries.measures import Measure
from seatwork.entries.typed import read
from seatwork.errors import SeatworkError
from seatwork.units.showing import explain, show_number

MEASURES: dict[str, Measure] = {
    name: one for name, one in vars(measures).items() if isinstance(one, Measure)
}
"""Every measure by the name of its constant."""
NAMES_OF = {one: name for name, one in MEASURES.items()}
READ_AS = "read as {value}"
Say = Callable[[str], str]
"""Says a text in the reader's language; ``str`` in English."""
OTHER = {"inch": "metric", "metric": "inch"}


def measure_name(measure: Measure) -> str:
    """Return the name of a measure; an own type may have made one that has none.

    Raises
    ------
    SeatworkError
        If it is none of `MEASURES`.
    """
    if measure not in NAMES_OF:
        remedy = "ask for it on a page of the notebook, or on paper"
        raise SeatworkError(measure.name, "no reader of entries knows this measure", remedy)
    return NAMES_OF[measure]


@dataclass(frozen=True, slots=True)
class AskedNumber:
    """A number that is asked for: its measure, by name, and the unit system.

    Parameters
    ----------
    measure : str
        One of `MEASURES`, such as ``"LENGTH"``.
    system : {"inch", "metric"}
        Unit system the answer is asked in.
    """

    measure: str
    system: str

    @property
    def unit(self) -> str:
        """Unit asked for; empty for a bare number."""
        return MEASURES[self.measure].unit[self.system]

    def echo(self, text: str, say: Say = str) -> str:
        """Say how a number is read, in the unit asked for and in the other system's."""
        measure, other = MEASURES[self.measure], OTHER[self.system]
        try:
            value = read(text, measure, self.system).value
        except SeatworkError as error:
            return explain(error, self.system, say)
        places = measure.places[self.system]
        number = show_number(float(value), places + 1, places)
        shown = f"{number}{'' if self.unit == '°' else ' '}{self.unit}".rstrip()
        if measure.unit[other] != self.unit:
            shown += f" ({measure.show(measure.inside(value, self.system), other)})"
        return _read_as(shown, say)


@dataclass(frozen=True, slots=True)
class AskedChoice:
    """Options to choose from.

    Parameters
    ----------
    options : tuple of str
        Text of each option; letters a, b, c follow their order.
    """

    options: tuple[str, ...]

    def echo(self, text: str, say: Say = str) -> str:
        """Say which option is meant."""
        place = option_meant(text, [(option,) for option in self.options])
        if place is None:
            return say(no_option(len(self.options)))
        return _read_as(f"{LETTERS[place]}) {say(self.options[place])}", say)


@dataclass(frozen=True, slots=True)
class AskedOrder:
    """Steps to be put in order.

    Parameters
    ----------
    count : int
        How many; letters a, b, c follow their order as shown.
    """

    count: int

    def echo(self, text: str, say: Say = str) -> str:
        """Say in which order the letters are read."""
        letters = order_meant(text, self.count)
        if letters is None:
            return say(NO_ORDER)
        return _read_as(letters.upper(), say)


REFUSED = (
    *("x", "1 2", "-1", "5 mil", "1/3", "1/2 mm", "#7", "1,234", "5 ells", "9" * 61, "\x07"),
    *("400°", "1/2", "-5 rpm", "0"),
)
"""An entry of each kind that some number is not; a page holds what is said of each."""


Asked = AskedNumber | AskedChoice | AskedOrder
KINDS: dict[str, type[Any]] = {
    "number": AskedNumber, "choice": AskedChoice, "order": AskedOrder,
}  # fmt: skip


def _read_as(value: str, say: Say) -> str:
    return say(READ_AS).format(value=value)


def echo(text: str, asked: Asked, say: Say = str) -> str:
    """Say how an entry is read, never whether it is right; empty for an empty entry.

    Parameters
    ----------
    text : str
        What was typed.
    asked : AskedNumber, AskedChoice or AskedOrder
        What was asked for.
    say : callable
        Says the words in the reader's language; what was typed stays.

    Returns
    -------
    str
        One sentence; for what cannot be read, the sentence that says why. Never raises.

    Examples
    --------
    >>> echo(".139", AskedNumber("LENGTH", "inch"))
    'read as 0.139 in (3.53 mm)'
    """
    return asked.echo(text, say) if text.strip() else ""


def sayings() -> Iterator[str]:
    """Yield what a reader says of entries, one text of each kind, for its other languages."""
    texts: list[str] = []

    def heard(text: str) -> str:
        texts.append(text)
        return text

    for measure in MEASURES:
        for system in OTHER:
            for text in REFUSED:
                AskedNumber(measure, system).echo(text, heard)
    AskedChoice(("one", "two")).echo("x", heard)
    AskedOrder(2).echo("x", heard)
    yield from dict.fromkeys(texts)


def as_data(asked: Asked) -> dict[str, Any]:
    """Return what is asked for as data that a page can hold."""
    kind = next(name for name, one in KINDS.items() if isinstance(asked, one))
    return {"kind": kind} | asdict(asked)


def from_data(told: Mapping[str, Any]) -> Asked:
    """Return what `as_data` wrote."""
    given = {name: value for name, value in told.items() if name != "kind"}
    if "options" in given:
        given["options"] = tuple(given["options"])
    made: Asked = KINDS[told["kind"]](**given)
    return made
