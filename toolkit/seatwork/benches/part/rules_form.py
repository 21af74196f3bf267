"""What the note leaves open, and the house rule that filled it: each can be changed here."""

from collections.abc import Callable
from typing import Any

import ipywidgets

from seatwork.benches.part.boxes import line, menu
from seatwork.benches.part.desk import PartDesk
from seatwork.benches.part.tables import Tables
from seatwork.rows import Row
from seatwork.shop.house.house_rules import Rule, limits

Attempt = Callable[[Callable[[], object]], str]
HEADING = "Taken where the note says nothing; change it for this part"


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
        self._shown: tuple[Any, ...] = ()
        self.boxes: dict[str, Any] = {}
        self._rest = Tables()
        self.box = ipywidgets.VBox([])

    def follow(self) -> None:
        """Show the assumptions of the plan as it is now; the same ones stay as they are."""
        plan = self._part.seat.plan
        rows = plan.rows(self._part.system).of("assumed", "read") if plan else ()
        rules = {rule.name: rule for rule in (plan.rules if plan else ())}
        shown = tuple((row, rules.get(row.label)) for row in rows)
        if [row for row, _ in shown] == [row for row, _ in self._shown]:
            return
        self._shown = shown
        for old in self.box.children:
            old.close()
        self.boxes = {}
        self.box.children = [self._heading(), *(self._line(*one) for one in shown)] if shown else []

    def _heading(self) -> Any:
        made = Tables()
        made.show([{"heading": HEADING, "heads": [], "rows": [], "kind": "", "folded": False}])
        return made

    def _line(self, row: Row, rule: Rule | None) -> Any:
        said = Tables()
        cells = [[row.label, row.text]]
        said.show([{"heading": "", "heads": [], "rows": cells, "kind": "", "folded": False}])
        if rule is None:
            return said
        facts = limits(rule.name)
        label = f"{rule.name}{' (changed here)' if rule.name in self._part.state.rules else ''}"
        if rule.kind == "choice":
            box = menu(label, facts["choices"], self._set(rule.name), chosen=str(rule.value))
        else:
            others = " or ".join(dict.fromkeys(one.value for one in rule.alternatives))
            box = line(label, self._set(rule.name), hint=others, text=rule.text)
        self.boxes[rule.name] = box
        return ipywidgets.VBox([said, box])

    def _set(self, name: str) -> Callable[[str], None]:
        def heard(text: str) -> None:
            house = self._part.house_rule(name)
            wanted = "" if text.strip() == house else text.strip()
            if wanted != self._part.state.rules.get(name, ""):
                self._attempt(lambda: self._part.change_rule(name, wanted))

        return heard
