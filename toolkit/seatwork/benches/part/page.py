"""The page of a part: note, picture, plan, card, readings and verdict, one below the other."""

from collections.abc import Callable
from typing import Any

import ipywidgets
from IPython.display import display

from seatwork.benches.build.controls import Pick
from seatwork.benches.build.listed import machine, machines, material, materials
from seatwork.benches.page.pick_box import PickBox
from seatwork.benches.part import blocks
from seatwork.benches.part.boxes import area, button, lay, line, menu, tree
from seatwork.benches.part.desk import PartDesk
from seatwork.benches.part.picture_view import PartPicture
from seatwork.benches.part.readings_form import ReadingsForm
from seatwork.benches.part.rules_form import RulesForm
from seatwork.benches.part.still import still
from seatwork.benches.part.tables import Tables
from seatwork.errors import SeatworkError
from seatwork.live.slots import place
from seatwork.units import explain

LIVE_ONLY = "application/vnd.jupyter.widget-view+json"
ELSEWHERE = {
    "screw": ("Screw, if the note names none", "#10 flat head"),
    "thickness": ("Thickness at the hole", ".250 in"),
    "edge": ("Hole to the nearest edge", ".500 in"),
    "engagement": ("Thread to engage", ".375 in"),
    "slope": ("Slope of a raw pad", "3 deg"),
}
"""What the print says elsewhere: labels of the boxes, and what one would type there."""


def show(part: PartDesk) -> None:
    """Show a part below the running cell: its page, then the still of the demonstration."""
    page = PartPage(part)
    place(page)
    view = {"version_major": 2, "version_minor": 0, "model_id": page.box.model_id}
    display({LIVE_ONLY: view}, raw=True)  # type: ignore[no-untyped-call,unused-ignore]
    display(still(part.palette))  # type: ignore[no-untyped-call,unused-ignore]


class PartPage:
    """Ties a part to the widgets that show and change it.

    Parameters
    ----------
    part : PartDesk
        Followed until `close`.
    """

    def __init__(self, part: PartDesk) -> None:
        self.part = part
        self._laying = self._unfolded = False
        self._carded: tuple[Any, ...] | None = None
        self.picture = PartPicture(part)
        self.rules = RulesForm(part, self.attempt)
        self.readings = ReadingsForm(part, self.attempt)
        self.asked, self.steps, self.cautions = Tables(told=True), Tables(), Tables()
        self.read, self.why, self.verdicts = Tables(told=True), Tables(), Tables(told=True)
        self.box = ipywidgets.VBox([self.picture.live, self._panel(), self._below()])
        self.box.add_class("seatwork-bench")
        self.box.add_class("seatwork-part")
        part.attach(self.follow)
        self.follow()

    def follow(self) -> None:
        """Show what the part has come to."""
        part, plan = self.part, self.part.seat.plan
        self.picture.follow()
        self._lay()
        self.read.show(blocks.read_blocks(part.seat, part.system))
        self.asked.show(blocks.asked_blocks(plan))
        self.steps.show(blocks.set_blocks(plan))
        self.why.show(blocks.why_blocks(plan))
        self.cautions.show(blocks.caution_blocks(plan))
        self.rules.follow()
        self._forget_card()
        self.readings.follow()
        self.verdicts.show(blocks.verdict_blocks(part.found, part.system))

    def attempt(self, deed: Callable[[], object]) -> str:
        """Do something to the part; return, and show, one sentence if it cannot be."""
        try:
            deed()
        except SeatworkError as error:
            trouble = explain(error, self.part.system)
            self.picture.live.follow({"trouble": trouble, "quiet": True})
            return trouble
        self.picture.live.follow({"trouble": self.part.trouble, "quiet": True})
        return ""

    def close(self) -> None:
        """Let go of the part and of every widget."""
        self.part.detach(self.follow)
        for widget in tree(self.box):
            widget.close()

    def _panel(self) -> ipywidgets.VBox:
        """Return what is set: which note, its words, material and machine, and the rest."""
        self.notes = menu("Note", [self.part.state.seat.name], self._go_to, chosen=self._name)
        self.note = area("Print note", self._set("note"), rows=3)
        self.picks = {
            "material": PickBox(_pick("material", materials, material), self._picked("material")),
            "machine": PickBox(_pick("machine", machines, machine), self._picked("machine")),
        }
        self.elsewhere = {
            word: line(label, self._set(word), hint=hint)
            for word, (label, hint) in ELSEWHERE.items()
        }
        self.name = line("Name of this note", self._set("name"))
        self.system = button("", self._other_system)
        self.take_out = button("Take this note out", lambda: self.attempt(self.part.take_out))
        tools = [
            self.system,
            button("Another note of this part", self._add),
            self.take_out,
        ]
        self.fold = button("", self._fold_or_unfold)
        rows = [self.notes, self.note, *self.picks.values(), self.elsewhere["thickness"]]
        self.more = [box for word, box in self.elsewhere.items() if word != "thickness"]
        self.more.append(self.name)
        panel = ipywidgets.VBox([*rows, self.fold, *self.more, ipywidgets.HBox(tools)])
        panel.add_class("seatwork-panel")
        return panel

    def _below(self) -> ipywidgets.VBox:
        """Return the rest of the page, in the order of the work."""
        self.card_said = Tables(told=True)
        self.card_picture = ipywidgets.Image(format="png", layout={"display": "none"})
        card = ipywidgets.HBox(
            [
                button("Save the card as a PDF", lambda: self._card(self._save_card)),
                button("See the card", lambda: self._card(self._see_card)),
            ]
        )
        card_heading = Tables()
        card_heading.show([blocks.block("The card", [])])
        below = ipywidgets.VBox(
            [
                self.asked,
                self.read,
                self.rules.box,
                self.steps,
                self.why,
                self.cautions,
                card_heading,
                card,
                self.card_said,
                self.card_picture,
                self.readings.box,
                self.verdicts,
            ]
        )
        below.add_class("seatwork-below")
        return below

    @property
    def _name(self) -> str:
        return self.part.state.seat.name

    def _lay(self) -> None:
        """Show every box as the part has it; a text that is being typed stays."""
        seat = self.part.state.seat
        names = [one.name for one in self.part.state.seats]
        self._laying = True
        self.notes.options = names
        self.notes.value = seat.name
        for widget in (self.notes, self.take_out):
            widget.layout.display = None if len(names) > 1 else "none"
        lay(self.note, seat.note)
        lay(self.name, seat.name)
        for word, box in self.elsewhere.items():
            lay(box, getattr(seat, word))
        for word, pick in self.picks.items():
            pick.lay(getattr(seat, word))
        for box in self.more:
            box.layout.display = None if self._unfolded else "none"
        self.fold.description = "Fewer boxes" if self._unfolded else "More of what the print says"
        other = "metric" if self.part.system == "inch" else "inch"
        self.system.description = f"{other.capitalize()} first"
        self._laying = False

    def _set(self, word: str) -> Callable[[str], None]:
        def heard(text: str) -> None:
            if not self._laying:
                same = getattr(self.part.state.seat, word) == text.strip()
                self.attempt(lambda: None if same else self.part.set(**{word: text}))

        return heard

    def _picked(self, word: str) -> Callable[[str], str]:
        return lambda name: self.attempt(lambda: self.part.set(**{word: name}))

    def _go_to(self, name: str) -> None:
        if not self._laying and name and name != self._name:
            self.attempt(lambda: self.part.go_to(name))

    def _add(self) -> None:
        taken = {seat.name for seat in self.part.state.seats}
        number = next(n for n in range(2, len(taken) + 3) if f"note {n}" not in taken)
        self.attempt(lambda: self.part.add(f"note {number}"))

    def _fold_or_unfold(self) -> None:
        self._unfolded = not self._unfolded
        self._lay()

    def _other_system(self) -> None:
        self.part.use("metric" if self.part.system == "inch" else "inch")

    def _card(self, deed: Callable[[], None]) -> None:
        """Save or show the card; why it cannot be is told beside the button."""
        trouble = self.attempt(deed)
        if trouble:
            self._hide_card(blocks.refusal_blocks(trouble))
        self._carded = self._on_card()

    def _on_card(self) -> tuple[Any, ...]:
        state = self.part.state
        return state.seats, state.rules

    def _hide_card(self, said: list[blocks.Block]) -> None:
        self.card_picture.layout.display = "none"
        self.card_said.show(said)

    def _forget_card(self) -> None:
        """Take away a card, or a word of it, that is not of the part as it is now."""
        if self._carded is not None and self._carded != self._on_card():
            self._carded = None
            words = "the part has changed since; see it or save it again"
            self._hide_card([blocks.block("", [("the card", words)])])

    def _save_card(self) -> None:
        path = self.part.save_card()
        self.card_said.show([blocks.block("", [("card written", str(path))])])

    def _see_card(self) -> None:
        """Show the first page of the card as it will be printed."""
        pages = self.part.card()
        self.card_picture.value = pages.png(0)
        self.card_picture.layout.display = None
        count = len(pages.figures)
        said = "1 page" if count == 1 else f"page 1 of {count}; the PDF has them all"
        self.card_said.show([blocks.block("", [("the card", said)])])


def _pick(name: str, listed: Any, known: Any) -> Pick:
    return Pick(name=name, label=name.capitalize(), listed=listed, known=known)
