"""What a note was read as: features, and beside them what was assumed and what is in doubt."""

from collections.abc import Callable
from dataclasses import dataclass, field

from seatwork.doors import door
from seatwork.errors import SeatworkError
from seatwork.notes.features import Feature, kind_of, stated_of
from seatwork.notes.grouping import grouped, part_of
from seatwork.rows import Blocks, Row, Shown, short


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Assumption(Shown):
    """Something the note leaves open, and the house rule that fills it.

    Parameters
    ----------
    feature : int
        Index into the callout's features.
    field : str
        The field of that feature, or ``"hole"`` where a hole is not in the note at all.
    value : float or str
        Length [mm], angle [deg] or word.
    rule : str
        Name of the house rule.
    sentence : str
        The same for people.
    """

    feature: int
    field: str
    value: float | str
    rule: str
    sentence: str

    def _line(self) -> str:
        return self.sentence

    def _blocks(self) -> Blocks:
        yield "", (Row(label="house rule", text=self.rule),)


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class NoteWarning(Shown):
    """Something to ask about before cutting.

    Parameters
    ----------
    code : str
        Short name, such as ``angle-missing``.
    sentence : str
        What is in doubt and what to ask.
    feature : int or None
        Index into the callout's features, where one is meant.
    """

    code: str
    sentence: str
    feature: int | None = None

    def _line(self) -> str:
        return self.sentence

    def _blocks(self) -> Blocks:
        yield "", (Row(label="code", text=self.code),)


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Callout(Shown):
    """A note as read.

    Two callouts are equal when they say the same: assumptions, warnings, the text and the
    system it was taken in do not count.

    Parameters
    ----------
    features : tuple of Feature
        What was said, a hole before the seats at its mouth.
    said_not_used : tuple of str
        What else was said, word by word: frames of tolerance, EQ SP ON 3.00 B.C., AS SHOWN.
        It does not bear on cutting the seat, and is shown as said and not used.
    sizes_hold : str
        Whether the sizes hold before or after the part gets a finish: "after plating"; empty
        where the note does not say.
    assumptions : tuple of Assumption
        What the note leaves open, by house rule.
    warnings : tuple of NoteWarning
        What to ask about.
    system : {"inch", "metric"}
        What bare numbers were read in.
    text : str
        The note as typed.
    """

    features: tuple[Feature, ...]
    said_not_used: tuple[str, ...] = ()
    sizes_hold: str = ""
    assumptions: tuple[Assumption, ...] = field(default=(), compare=False)
    warnings: tuple[NoteWarning, ...] = field(default=(), compare=False)
    system: str = field(default="inch", compare=False)
    text: str = field(default="", compare=False)

    plan = door("seatwork.plan:make_plan")

    def _line(self) -> str:
        counts = f"{len(self.features)} features, {len(self.assumptions)} assumed"
        return f"{short(self.text, 64)}: {counts}, {len(self.warnings)} to ask"

    def _blocks(self) -> Blocks:
        yield (
            "",
            tuple(
                Row(label=kind_of(one), text="; ".join(stated_of(one)) or "no size")
                for one in self.features
            ),
        )
        if self.sizes_hold:
            yield "", (Row(label="sizes hold", text=self.sizes_hold),)
        yield "", tuple(Row(label="said, not used", text=one) for one in self.said_not_used)
        yield "", tuple(Row(label="assumed", text=one.sentence) for one in self.assumptions)
        yield "", tuple(Row(label="ask", text=one.sentence) for one in self.warnings)

    def groups(self) -> tuple[tuple[Feature, ...], ...]:
        """Return the features hole by hole: each hole with its thread and its seats."""
        groups = grouped([part_of(feature) for feature in self.features])
        return tuple(tuple(self.features[place] for place in group) for group in groups)

    def screws(self) -> tuple[str, ...]:
        """Return the screws the note names, each once, as the note says them."""
        named = (feature.screw for feature in self.features if feature.screw)
        return tuple(dict.fromkeys(named))

    def assumed(self, feature: int, name: str) -> float | str | None:
        """Return what was assumed for a field of a feature, or None [mm, deg or a word]."""
        for assumption in self.assumptions:
            if (assumption.feature, assumption.field) == (feature, name):
                return assumption.value
        return None


class NoteError(SeatworkError):
    """A note that cannot be read: the exact place, and what was understood before it.

    Parameters
    ----------
    text : str
        The note.
    start, end : int
        Where in the text, as characters from 0.
    fault, remedy : str
        What is wrong there, and what would do.
    understood : tuple of Feature
        What was read before the place; ``understood_text`` is the same as a note.
    options : tuple of str
        What would each do at the place, where the sentence asks.
    """

    def __init__(
        self,
        text: str,
        *,
        start: int,
        end: int,
        fault: str,
        remedy: str,
        understood: tuple[Feature, ...] = (),
        options: tuple[str, ...] = (),
    ) -> None:
        self.text = text
        self.start = start
        self.end = end
        self.line = text.count("\n", 0, start) + 1
        self.column = start - (text.rfind("\n", 0, start) + 1) + 1
        self.understood = understood
        self.understood_text = ""
        super().__init__(self._place(), fault, remedy, options=options)

    def sentence(self, show: Callable[[object], str], say: Callable[[str], str] = str) -> str:
        """Tell the fault, and what was understood before it."""
        text = super().sentence(show, say)
        if not self.understood_text:
            return text
        return f"{text} {say('Understood before it')}: {self.understood_text}."

    def _place(self) -> str:
        at_end = self.start >= len(self.text.rstrip())
        unseen = "the end of the note" if at_end else "a sign that does not show"
        shown = " ".join(self.text[self.start : self.end].split())[:40] or unseen
        where = f"line {self.line}, " if "\n" in self.text.strip() else ""
        return f"{shown} ({where}character {self.column})"
