"""What a question asks for: a number, a choice, or an order of steps."""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from decimal import ROUND_CEILING, ROUND_FLOOR, Decimal

from seatwork.entries.asked import AskedChoice, AskedNumber, AskedOrder, measure_name
from seatwork.entries.letters import LETTERS, option_meant, order_meant
from seatwork.entries.measures import Measure, unit_step
from seatwork.questions.type.slips import Mistake, Slip
from seatwork.units.showing import rounded

CLEAR = 3  # tolerances between the right answer, every slip, and one another


@dataclass(frozen=True, slots=True, kw_only=True)
class NumberPart:
    """A number asked for, with what is accepted and which slips are known.

    Parameters
    ----------
    measure : Measure
        What is measured.
    system : {"inch", "metric"}
        Unit system the answer is asked in.
    value : float
        The right answer [mm, deg, rev/min or mm/rev].
    tolerance : Decimal
        Accepted either way of the rounded answer, in the unit asked for.
    mistakes : callable
        Gives the known slips; not called before a wrong answer is looked into.
    prompt : str
        What is asked, where a question has several parts.
    reason : str
        Why just this much is accepted.
    is_listed : bool
        Whether the answer is a size from a list, which nobody rounds.
    is_least : bool
        Whether the least size is asked for: it is rounded up, and accepted upward only.
    more : callable
        Gives the slips that are not the type's own, see `common_slips`; takes the part and,
        where only the ways to one number are wanted, what was typed.
    """

    measure: Measure
    system: str
    value: float
    tolerance: Decimal
    mistakes: Callable[[], Iterable[Mistake]] = tuple
    prompt: str = ""
    reason: str = ""
    is_listed: bool = False
    is_least: bool = False
    more: Callable[..., tuple[Slip, ...]] = lambda part, typed=None: ()

    @property
    def asked(self) -> AskedNumber:
        """What a reader of entries must know of it."""
        return AskedNumber(measure_name(self.measure), self.system)

    @property
    def answer(self) -> Decimal:
        """The right answer in the unit asked for, not rounded."""
        return self.measure.amount(self.value, self.system)

    @property
    def rounded(self) -> Decimal:
        """The right answer rounded to the places asked for; the least size up, as it must be."""
        if self.is_least:
            return self._finely().quantize(self.step, rounding=ROUND_CEILING)
        return rounded(self.answer, self.measure.places[self.system])

    @property
    def unit(self) -> str:
        """Unit asked for."""
        return self.measure.unit[self.system]

    @property
    def band(self) -> tuple[Decimal, Decimal]:
        """Least and greatest number accepted, both included."""
        middle = self.rounded
        if self.is_least:
            return self._finely(), middle + 2 * self.tolerance
        return middle - self.tolerance, middle + self.tolerance

    def _finely(self) -> Decimal:
        """Return the right answer to one place finer than asked for."""
        exact = self.answer.quantize(self.step / 10**6)  # what a float has beyond is no size
        return exact.quantize(self.step / 10, rounding=ROUND_FLOOR)

    @property
    def step(self) -> Decimal:
        """One unit in the last place asked for."""
        return unit_step(self.measure, self.system)

    @property
    def slips(self) -> tuple[Slip, ...]:
        """Known slips that give a number someone could write down."""
        return tuple(_slip(mistake, value) for mistake, value in self._valued(self.mistakes()))

    def matching(self, value: Decimal, place: Decimal) -> tuple[Slip, ...]:
        """Return the slips within half of `place` of a number typed, nearest first; no twins."""
        scale = float(self.measure.scale[self.system])
        typed, reach = float(value) * scale, 0.51 * float(place) * scale
        near = [
            mistake
            for mistake in self.mistakes()
            if mistake[1] is not None and -reach <= mistake[1] - typed <= reach and not mistake[3]
        ]
        if not near:
            return ()
        found = [
            (abs(amount - value), number, _slip(mistake, amount))
            for number, (mistake, amount) in enumerate(self._valued(near))
            if abs(amount - value) <= place / 2
        ]
        return tuple(slip for _, _, slip in sorted(found, key=lambda item: item[:2]))

    def twins(self, slip: Slip) -> tuple[Slip, ...]:
        """Return the slips that always give the same number as `slip`."""
        return tuple(other for other in self.slips if other.twin_of == slip.code)

    def _valued(self, mistakes: Iterable[Mistake]) -> Iterator[tuple[Mistake, Decimal]]:
        """Yield the slips whose number is no less than one could write down, or is zero."""
        least = unit_step(self.measure, self.system) / 2
        for mistake in mistakes:
            if mistake.value is not None:
                amount = self.measure.amount(mistake.value, self.system)
                if amount >= least or not amount:
                    yield mistake, amount

    @property
    def request(self) -> str:
        """How the answer is to be written."""
        if not self.unit:
            return "Answer with a whole number."
        unit = UNIT_WORDS.get(self.unit, self.unit)
        if not self.measure.places[self.system]:
            return f"Answer in {unit}, to the whole number."
        step = self.measure.write(unit_step(self.measure, self.system), self.system)
        return f"Answer in {unit}, to {step}."


UNIT_WORDS = {"in": "inches", "mm": "millimeters", "°": "degrees", "s": "seconds"}


def _slip(mistake: Mistake, value: Decimal) -> Slip:
    return Slip(code=mistake.code, value=value, sentence=mistake.sentence, twin_of=mistake.twin_of)


@dataclass(frozen=True, slots=True, kw_only=True)
class ChoicePart:
    """One of several options, answered by its letter or its word.

    Parameters
    ----------
    options : tuple of (str, str)
        Word and text of each option; letters a, b, c follow their order.
    right : str
        Word of the right option.
    wrong : dict of str to (str, str)
        Slip code and sentence for options that show a known slip.
    prompt : str
        What is asked, where a question has several parts.
    """

    options: tuple[tuple[str, str], ...]
    right: str
    wrong: dict[str, tuple[str, str]]
    prompt: str = ""

    @property
    def asked(self) -> AskedChoice:
        """What a reader of entries must know of it."""
        return AskedChoice(tuple(text for _, text in self.options))

    @property
    def answer(self) -> str:
        """Word of the right option."""
        return self.right

    @property
    def slips(self) -> tuple[Slip, ...]:
        """The wrong options that show a known slip."""
        return tuple(
            Slip(code=code, value=word, sentence=sentence)
            for word, (code, sentence) in self.wrong.items()
        )

    @property
    def request(self) -> str:
        """The options, with their letters."""
        options = zip(LETTERS, self.options, strict=False)
        lines = [f"{letter}) {text}" for letter, (_, text) in options]
        if self.is_on_drawing:
            return f"Answer with a letter from {self.options[0][1]} to {self.options[-1][1]}."
        return "Answer with the letter. " + "; ".join(lines) + "."

    @property
    def is_on_drawing(self) -> bool:
        """Whether the options are letters on a drawing, with no words of their own."""
        return all(
            text == letter.upper() for letter, (_, text) in zip(LETTERS, self.options, strict=False)
        )

    def chosen(self, text: str) -> str | None:
        """Return the word of the option meant by `text`, None if no option is."""
        place = option_meant(text, self.options)
        return None if place is None else self.options[place][0]


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderPart:
    """Steps to be put in order, answered by their letters.

    Parameters
    ----------
    steps : tuple of str
        The steps as shown; letters A, B, C follow their order.
    right : str
        Letters in the right order.
    wrong : tuple of (str, str, str, str)
        First letter, letter that must follow it, slip code and sentence if it does not.
    prompt : str
        What is asked, where a question has several parts.
    """

    steps: tuple[str, ...]
    right: str
    wrong: tuple[tuple[str, str, str, str], ...]
    prompt: str = ""

    @property
    def asked(self) -> AskedOrder:
        """What a reader of entries must know of it."""
        return AskedOrder(len(self.steps))

    @property
    def answer(self) -> str:
        """Letters in the right order."""
        return self.right

    @property
    def slips(self) -> tuple[Slip, ...]:
        """The known slips; the value names the pair that must keep its order."""
        return tuple(
            Slip(code=code, value=first + then, sentence=sentence)
            for first, then, code, sentence in self.wrong
        )

    @property
    def request(self) -> str:
        """The steps, with their letters."""
        lines = [f"{letter}) {text}" for letter, text in zip(LETTERS, self.steps, strict=False)]
        return "Answer with the letters in order. " + "; ".join(lines) + "."

    def chosen(self, text: str) -> str | None:
        """Return the letters in the order typed, None unless each stands there once."""
        return order_meant(text, len(self.right))


Part = NumberPart | ChoicePart | OrderPart
