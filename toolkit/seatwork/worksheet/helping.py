"""What helps under a question: hints, the worked answer, and which way gave a number."""

import re
from collections.abc import Mapping, Sequence
from typing import Any

from seatwork.drawings.scene import Look
from seatwork.marking.speaking import Speaker
from seatwork.questions.cuts.cone_triangle import LAST, has_triangle, step_of_hint
from seatwork.questions.cuts.finding import can_cut, own_cut, right_cut
from seatwork.questions.type.parts import NumberPart
from seatwork.questions.type.slips import Slip
from seatwork.questions.type.verdicts import Verdict
from seatwork.rows import short
from seatwork.worksheet.cutting_room import (
    Figure,
    own_figures,
    right_figures,
    triangle_figure,
)
from seatwork.worksheet.entry import Entry

CUT = ("slip", "several slips", "asks back", "wrong")
"""Verdicts on a number that is cut; the others are the right number, or none."""

SO_FAR = "Good so far: "
FRAME = "Good so far: you have {label}. Now {how}."
MINE = {"you are": "I am", "you were": "I was", "you": "I", "your": "my"}
PERSON = re.compile(r"\b(?:you are|you were|you|your)\b", re.IGNORECASE)
LONGEST_LABEL = 60
"""Letters on a button."""

MOST_WAYS = 3
"""Ways to a number that get a button each."""


class Help:
    """The help that one question has given so far.

    Parameters
    ----------
    entry : Entry
        The question on the desk.
    """

    def __init__(self, entry: Entry) -> None:
        self.entry = entry
        self.opened = ""
        self._is_worked = False
        self._cut: tuple[int, str] | None = None
        self._step = 0
        self._ways: tuple[Slip, ...] = ()
        self._asks = False

    @property
    def hints(self) -> tuple[str, ...]:
        """The hints of the question."""
        return tuple(map(self.entry.say, self.entry.question.hints))

    @property
    def read(self) -> int:
        """How many hints have been read."""
        return min(self.entry.desk.answers.of(self.entry.name).hints, len(self.hints))

    @property
    def can_cut(self) -> bool:
        """Whether the answer can be shown as it would be cut."""
        return can_cut(self.entry.question)

    def button(self, words: Mapping[str, str]) -> dict[str, Any]:
        """Return the button for the next hint."""
        if self.read == len(self.hints):
            return {"press": "hint", "label": words["form.no_more_hints"], "shut": True}
        label = self._name(self.read)
        cost = self.entry.desk.plan.hint_cost
        if cost:
            label = words["form.hint_cost"].format(hint=label, cost=f"{cost:.0%}")
        return {"press": "hint", "label": label, "shut": False}

    def judged(self, verdicts: Sequence[Verdict], typed: Sequence[str]) -> None:
        """Take in a verdict: where nothing is known of the answer, the first hint opens."""
        self.opened = ""
        self._step, self._cut, self._ways, self._asks = 0, None, (), False
        wrong = [number for number, verdict in enumerate(verdicts) if verdict.kind in CUT]
        cut = [n for n in wrong if own_cut(self.entry.question, n, typed[n]) is not None]
        if cut:
            self._cut = (cut[0], typed[cut[0]])
        for number in (cut or wrong)[:1]:
            self._ways = self._ways_to(number, verdicts[number])
            self._asks = verdicts[number].kind != "wrong" and bool(self._ways)
        unknown = any(verdict.kind == "wrong" for verdict in verdicts)
        if unknown and not self.read and self.hints and not self.entry.desk.plan.hint_cost:
            self.entry.desk.count(self.entry.name, "hints")
            self.opened = f"{self._name(0)}: {self.hints[0]}"

    def more(self) -> None:
        """Open the next hint."""
        self._step = step_of_hint(min(self.read, len(self.hints) - 1), len(self.hints))
        if self.read < len(self.hints):
            self.entry.desk.count(self.entry.name, "hints")

    def something_else(self) -> None:
        """Open the first hint: the learner did none of the ways that were named."""
        self._ways, self._asks = (), False
        if not self.read:
            self.more()

    def work(self) -> None:
        """Open the worked answer."""
        self._is_worked, self._step = True, LAST

    def cut_right(self) -> None:
        """Show the right answer as it is cut: of the last part that can be."""
        parts = range(len(self.entry.question.parts))
        cut = [n for n in parts if right_cut(self.entry.question, n) is not None]
        self._cut = (cut[-1], "") if cut else None
        self._step = 0

    def which(self, number: int) -> str:
        """Return what is said of the way that the learner says it was; the others go."""
        if number >= len(self._ways):
            return ""
        self._ways = (self._ways[number],)
        return self._ways[0].told(self.entry.say)

    def choices(self, words: Mapping[str, str]) -> list[dict[str, Any]]:
        """Return the buttons that ask which way it was."""
        if not self._asks:
            return []
        if len(self._ways) == 1:
            return [{"press": "other", "label": words["marking.not_what_i_did"]}]
        ways = [
            {"press": f"which{number}", "label": self._done(way)}
            for number, way in enumerate(self._ways[:MOST_WAYS])
        ]
        return [*ways, {"press": "other", "label": words["form.other"]}]

    def _ways_to(self, number: int, verdict: Verdict) -> tuple[Slip, ...]:
        """Return every way to a number: the slips it matches, and their twins."""
        part = self.entry.question.parts[number]
        if not isinstance(part, NumberPart):
            return ()
        ways = {way.code: way for way in verdict.slips}
        for slip in verdict.slips:
            ways |= {twin.code: twin for twin in part.twins(slip) if twin.code not in ways}
        return tuple(ways.values())

    def blocks(self) -> list[dict[str, Any]]:
        """Return hints and worked answer as they are open now; a hint once read stays."""
        found: list[dict[str, Any]] = [
            {"kind": "hint", "heading": self._name(number), "lines": [self.hints[number]]}
            for number in range(1 if self.opened else 0, self.read)
        ]
        if self._is_worked and self.entry.worked():
            words = self.entry.words
            found.append(
                {
                    "kind": "worked",
                    "heading": words["form.worked"],
                    "lines": list(self.entry.steps()),
                    "after": words["form.worked_end"],
                }
            )
        return found

    def _done(self, way: Slip) -> str:
        """Return what a way is, in a few words: as the learner says it, or as a question."""
        told, say = way.told(self.entry.say), self.entry.say
        return _first(told) if self.entry.desk.voice.language == "en" else _was_it(told, say)

    def figures(self, *, dark: bool) -> list[Figure]:
        """Return the pictures beside the words: the triangle of a hint, else the own cut."""
        question = self.entry.question
        if not self.entry.desk.is_practice:
            return []
        look = Look(palette="dark" if dark else "light", system=question.system)
        voice = self.entry.desk.voice
        if self._step and has_triangle(question):
            return triangle_figure(question, self._step, look, voice)
        if self._cut is None:
            return []
        part, typed = self._cut
        return (
            own_figures(question, part, typed, look, voice)
            if typed
            else right_figures(question, part, look, voice)
        )

    def _name(self, number: int) -> str:
        return self.entry.words["form.hint"].format(number=number + 1, count=len(self.hints))


def _first(sentence: str) -> str:
    """Return what was done, in a few words and as the learner says it: "I used 90°"."""
    first = sentence.split(". ")[0].rstrip(".")
    done = first.split(": ", 1)[1] if first.startswith(SO_FAR) else first
    mine = PERSON.sub(lambda found: MINE[found[0].lower()], done)
    return short(f"{mine[:1].upper()}{mine[1:]}", LONGEST_LABEL)


def _was_it(sentence: str, say: Speaker) -> str:
    """Return what was done as a question in Spanish: "¿Usó 90°?"."""
    so_far = say(FRAME).partition(": ")[0] + ": "
    done = sentence.split(". ")[0].rstrip(".").removeprefix(so_far)
    return f"¿{short(f'{done[:1].upper()}{done[1:]}', LONGEST_LABEL)}?"
