"""What the note leaves open, and the house rule that filled it: each can be changed here."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import ipywidgets

from seatwork.benches.part.blocks import block, refusal_blocks
from seatwork.benches.part.boxes import lay, line, menu, tree
from seatwork.benches.part.desk import PartDesk
from seatwork.benches.part.tables import Tables
from seatwork.rows import Row
from seatwork.shop.house.house_rules import Rule, limits

Attempt = Callable[[Callable[[], object]], str]
HEADING = "Taken where the note says nothing; change it for this part"


@dataclass(slots=True)
class _Line:
    """One assumption on the page: its sentence, its box, what the box was given, what is wrong."""

    said: Tables
    refused: Tables
    box: Any = None
    given: str = ""


class RulesForm:
    """A sentence and a box for every house rule that a plan took for what the note leaves open.

    Parameters
    ----------
    part : PartDesk
        Whose rules.
    attempt : callable
        Does something to the part; returns a sentence of trouble, or an empty text.
    """

    def __init__(self, part: PartDesk, attempt: Attempt) -> None:
        self._part, self._attempt = part, attempt
        self._kinds: tuple[Any, ...] = ()
        self._lines: list[_Line] = []
        self.boxes: dict[str, Any] = {}
        self.box = ipywidgets.VBox([])

    def follow(self) -> None:
        """Show the assumptions of the plan as it is now, in the boxes there are if they fit."""
        plan = self._part.seat.plan
        rows = plan.rows(self._part.system).of("assumed", "read") if plan else ()
        rules = {rule.name: rule for rule in (plan.rules if plan else ())}
        shown = [(row, rules.get(row.label)) for row in rows]
        kinds = tuple((row.label, rule is None) for row, rule in shown)
        if kinds != self._kinds:
            self._kinds = kinds
            self._build(shown)
        for made, (row, rule) in zip(self._lines, shown, strict=True):
            made.said.show([block("", [(row.label, row.text)])])
            if rule is not None:
                self._fill(made, rule)

    def _build(self, shown: list[tuple[Row, Rule | None]]) -> None:
        """Make a line for each assumption, and none of the old ones."""
        for old in self.box.children:
            for widget in tree(old):
                widget.close()
        self.boxes = {}
        self._lines = [self._line(rule) for _, rule in shown]
        heading = Tables()
        heading.show([block(HEADING, [])])
        lines = [
            ipywidgets.VBox([one.said, one.box, one.refused] if one.box else [one.said])
            for one in self._lines
        ]
        self.box.children = [heading, *lines] if lines else []

    def _line(self, rule: Rule | None) -> _Line:
        made = _Line(said=Tables(), refused=Tables(told=True))
        if rule is None:
            return made
        heard = self._set(rule.name, made)
        if rule.kind == "choice":
            made.given = str(rule.value)
            made.box = menu("", limits(rule.name)["choices"], heard, chosen=made.given)
        else:
            made.given = rule.text
            others = " or ".join(dict.fromkeys(one.value for one in rule.alternatives))
            made.box = line("", heard, hint=others, text=made.given)
        self.boxes[rule.name] = made.box
        return made

    def _fill(self, made: _Line, rule: Rule) -> None:
        """Name a box, and give it the rule's value; a refused text stays until that changes."""
        changed = " (changed here)" if rule.name in self._part.state.rules else ""
        made.box.description = f"{rule.name}{changed}"
        value = str(rule.value) if rule.kind == "choice" else rule.text
        if value != made.given:
            made.given = value
            lay(made.box, value)

    def _set(self, name: str, made: _Line) -> Callable[[str], None]:
        def heard(text: str) -> None:
            house = self._part.house_rule(name)
            wanted = "" if text.strip() == house else text.strip()
            same = wanted == self._part.state.rules.get(name, "")
            deed = (lambda: None) if same else (lambda: self._part.change_rule(name, wanted))
            made.refused.show(refusal_blocks(self._attempt(deed)))

        return heard
