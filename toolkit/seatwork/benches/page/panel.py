"""The controls of a bench as widgets: our rows for numbers, ipywidgets for the rest."""

from collections.abc import Callable
from typing import Any

import ipywidgets

from seatwork.benches.build.controls import Control, Number, Pick, Switch, TextLine
from seatwork.benches.build.setup import Setup
from seatwork.benches.page.pick_box import PickBox
from seatwork.benches.page.rows import ControlRow, RowState

Attempt = Callable[[Callable[[], Any]], str]
Ask = Callable[[ControlRow, float | str, str], None]


class Panel:
    """All controls and buttons of one bench.

    Parameters
    ----------
    bench : Setup
        What the controls set.
    attempt : callable
        Does something to the bench; returns a sentence of trouble, or an empty text.
    ask : callable
        Sets the number of a row, and answers the page.
    can_keep : bool
        Whether a state can be kept for comparison.
    """

    def __init__(self, bench: Setup[Any], attempt: Attempt, ask: Ask, *, can_keep: bool) -> None:
        self._bench, self._attempt, self._ask = bench, attempt, ask
        self._laying = False
        self._unfolded = False
        self._controls = {control.name: control for control in bench.controls}
        self.parts = {name: self._part(control) for name, control in self._controls.items()}
        self._system = button("", lambda: bench.use(_other(bench.system)), attempt)
        self._reset = button("Back to start", bench.reset, attempt)
        self._keep = button("", self._keep_or_forget, attempt)
        self._fold = button("", self._fold_or_unfold, attempt)
        self._can_keep = can_keep
        self.box = ipywidgets.VBox(
            [self._turns(), *self._sorted(False), self._tools(), *self._sorted(True)]
        )
        self.lay()

    def lay(self) -> None:
        """Show all values, labels and units as they are now, and what is to be seen."""
        self._laying = True
        for name, control in self._controls.items():
            part, value = self.parts[name], self._bench.values[name]
            if isinstance(part, ControlRow):
                part.lay(value, self._bench.system)
            elif isinstance(part, PickBox):
                part.lay(value)
            elif isinstance(control, Switch) and control.back:
                part.description = control.back if value else control.label
            else:
                part.value = value
            part.layout.display = None if self._seen(control) else "none"
        self._system.description = f"{_other(self._bench.system).capitalize()} first"
        self._keep.description = "Stop comparing" if self._bench.comparing else "Keep to compare"
        self._fold.description = "Fewer settings" if self._unfolded else "More settings"
        self._laying = False

    def follow(self, names: frozenset[str]) -> dict[str, RowState]:
        """Show what is new; return what rows should show, those relieved of a trouble too."""
        rows = {name: part for name, part in self.parts.items() if isinstance(part, ControlRow)}
        if names & {"system", "kept"} or names - rows.keys():
            self.lay()
        return {
            name: row.shown(self._bench.values[name])
            for name, row in rows.items()
            if name in names or row.state["trouble"]
        }

    def greet(self) -> None:
        """Let a page that joins find every row as it is."""
        for part in self.parts.values():
            if isinstance(part, ControlRow):
                part.now = part.state

    def _seen(self, control: Control) -> bool:
        return self._wanted(control) and (self._unfolded or not control.folded)

    def _wanted(self, control: Control) -> bool:
        """Tell whether what a control needs is set, and wanted itself."""
        if control.needs is None:
            return True
        name, value = (control.needs, True) if isinstance(control.needs, str) else control.needs
        return bool(self._bench.values[name] == value) and self._wanted(self._controls[name])

    def _sorted(self, folded: bool) -> list[Any]:
        wanted = (c for c in self._bench.controls if c.folded is folded and not _turns(c))
        return [self.parts[control.name] for control in wanted]

    def _turns(self) -> ipywidgets.HBox:
        """Return the row of switches that are buttons."""
        return ipywidgets.HBox([self.parts[c.name] for c in self._bench.controls if _turns(c)])

    def _tools(self) -> ipywidgets.HBox:
        folds = any(control.folded for control in self._bench.controls)
        wanted = (folds, True, True, self._can_keep)
        tools = (self._fold, self._system, self._reset, self._keep)
        return ipywidgets.HBox([tool for tool, use in zip(tools, wanted, strict=True) if use])

    def _part(self, control: Control) -> Any:
        if isinstance(control, Number):
            return ControlRow(control, self._ask)
        if isinstance(control, Pick):
            return PickBox(control, lambda name: self._attempt_value(control.name, name))
        if isinstance(control, Switch) and control.back:
            return button("", lambda: self._turn(control.name), self._attempt)
        if isinstance(control, Switch):
            part = ipywidgets.Checkbox(description=control.label, indent=False)
        elif isinstance(control, TextLine):
            part = text_box(control)
        else:
            part = ipywidgets.Dropdown(description=control.label, options=control.options)
            part.style.description_width = "initial"
        part.observe(lambda change: self._changed(control.name, change["new"]), "value")
        return part

    def _changed(self, name: str, value: Any) -> None:
        if self._laying:
            return
        trouble = self._attempt_value(name, value)
        if trouble and not isinstance(self._controls[name], TextLine):
            self.lay()  # a text with a fault stays, to be mended

    def _attempt_value(self, name: str, value: Any) -> str:
        return self._attempt(lambda: self._bench.set(**{name: value}))

    def _turn(self, name: str) -> None:
        self._bench.set(**{name: not self._bench.values[name]})

    def _keep_or_forget(self) -> None:
        self._bench.forget() if self._bench.comparing else self._bench.keep()

    def _fold_or_unfold(self) -> None:
        self._unfolded = not self._unfolded
        self.lay()


def button(text: str, pressed: Callable[[], Any], attempt: Attempt) -> ipywidgets.Button:
    """Return a button whose troubles are told, not lost."""
    made = ipywidgets.Button(description=text)
    made.on_click(lambda _: attempt(pressed))
    return made


def text_box(control: TextLine) -> Any:
    """Return a box for text, which tells of it once the hand leaves the box."""
    if control.rows == 1:
        made = ipywidgets.Text(description=control.label, continuous_update=False)
    else:
        made = ipywidgets.Textarea(
            description=control.label, continuous_update=False, rows=control.rows
        )
    made.style.description_width = "initial"
    made.add_class("seatwork-text")
    return made


def _turns(control: Control) -> bool:
    """Tell whether a control is a button that says what it will do."""
    return isinstance(control, Switch) and control.back is not None


def _other(system: str) -> str:
    return "metric" if system == "inch" else "inch"
