"""What helps under a question: hints, the worked answer, and which way gave a number."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from seatwork.questions.type.verdicts import Verdict
from seatwork.shop import wording
from seatwork.worksheet.entry import Entry


@dataclass(frozen=True, slots=True, kw_only=True)
class Figure:
    """A picture beside the words: a PNG file, and what the page knows of it."""

    png: bytes
    kind: str
    alt: str
    caption: str

    @property
    def shown(self) -> dict[str, str]:
        """What travels beside the picture."""
        return {"kind": self.kind, "alt": self.alt, "caption": self.caption}


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

    @property
    def hints(self) -> tuple[str, ...]:
        """The hints of the question."""
        return self.entry.question.hints

    @property
    def read(self) -> int:
        """How many hints have been read."""
        return min(self.entry.desk.answers.of(self.entry.name).hints, len(self.hints))

    @property
    def can_cut(self) -> bool:
        """Whether the answer can be shown as it would be cut."""
        return False

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
        del typed
        self.opened = ""
        unknown = any(verdict.kind == "wrong" for verdict in verdicts)
        if unknown and not self.read and self.hints and not self.entry.desk.plan.hint_cost:
            self.entry.desk.count(self.entry.name, "hints")
            self.opened = f"{self._name(0)}: {self.hints[0]}"

    def more(self) -> None:
        """Open the next hint."""
        if self.read < len(self.hints):
            self.entry.desk.count(self.entry.name, "hints")

    def something_else(self) -> None:
        """Open the first hint: the learner did none of the ways that were named."""
        if not self.read:
            self.more()

    def work(self) -> None:
        """Open the worked answer."""
        self._is_worked = True

    def cut_right(self) -> None:
        """Show the right answer as it is cut."""

    def which(self, number: int) -> str:
        """Return what is said of the way that the learner says it was."""
        del number
        return ""

    def choices(self, words: Mapping[str, str]) -> list[dict[str, Any]]:
        """Return the buttons that ask which way it was."""
        del words
        return []

    def blocks(self) -> list[dict[str, Any]]:
        """Return hints and worked answer as they are open now; a hint once read stays."""
        found = [
            {"kind": "hint", "heading": self._name(number), "lines": [self.hints[number]]}
            for number in range(1 if self.opened else 0, self.read)
        ]
        if self._is_worked and self.entry.worked():
            words = wording()
            lines = [self.entry.worked()]
            found.append({"kind": "worked", "heading": words["form.worked"], "lines": lines})
        return found

    def figures(self, *, dark: bool) -> list[Figure]:
        """Return the pictures beside the words."""
        del dark
        return []

    def _name(self, number: int) -> str:
        return wording()["form.hint"].format(number=number + 1, count=len(self.hints))
