"""The box of a name: a menu of the shop's list and, where others may be named, a line to type."""

from collections.abc import Callable

import ipywidgets

from seatwork.benches.build.controls import Pick
from seatwork.errors import SeatworkError

LONG = 30
"""Letters that a menu holds in large type; a longer name gets smaller type [-]."""


class PickBox(ipywidgets.VBox):  # type: ignore[misc]  # ipywidgets has no types
    """A menu; its last entry opens a line for a name that is not in it.

    Parameters
    ----------
    control : Pick
        What is picked.
    asked : callable
        Takes a name; returns a sentence of trouble, or an empty text.
    """

    def __init__(self, control: Pick, asked: Callable[[str], str]) -> None:
        self._control, self._asked = control, asked
        self._held, self._laying = "", True
        self.menu = ipywidgets.Dropdown(description=control.label)
        self.line = ipywidgets.Text(
            placeholder=f"{control.others}, then Enter", continuous_update=False
        )
        for part in (self.menu, self.line):
            part.style.description_width = "initial"
        self.line.add_class("seatwork-text")
        self.offers = ipywidgets.HBox()
        self.offers.add_class("seatwork-offers")
        typed = [self.line, self.offers] if control.others else []
        super().__init__(children=[self.menu, *typed])
        self.add_class("seatwork-pick")
        self.menu.observe(lambda change: self._picked(change["new"]), "value")
        self.line.observe(lambda change: self._typed(change["new"]), "value")

    def lay(self, value: str) -> None:
        """Show the name that holds."""
        self._held = value
        self._show((value,), value)
        self._open(False)

    def _show(self, own: tuple[str, ...], value: str) -> None:
        """Fill the menu: the list's names, `own` ones, and the entry that opens the line."""
        self._laying = True
        names = dict.fromkeys((*self._control.listed(), *own))
        more = [(f"{self._control.others} ...", "")] if self._control.others else []
        (self.add_class if len(value) > LONG else self.remove_class)("seatwork-long")
        self.menu.options = [*((name, name) for name in names), *more]
        self.menu.value = value
        self._laying = False

    def _open(self, wanted: bool) -> None:
        """Show the line or hide it, without a name."""
        self.line.layout.display = None if wanted else "none"
        self.line.value = ""
        self._offer(())

    def _picked(self, name: str) -> None:
        if self._laying:
            return
        if not name:
            self._open(True)
        elif self._asked(name):
            self.lay(self._held)

    def _typed(self, text: str) -> None:
        """Take a name typed; where several are meant, offer each on a button and in the menu."""
        if self._laying or not text.strip():
            return
        if self._asked(text):
            meant = _meant(self._control, text)
            self._show((self._held, *meant), "")
            self._offer(meant)

    def _offer(self, names: tuple[str, ...]) -> None:
        """Show a button for each name, which types it; none where there are none."""
        former = self.offers.children
        self.offers.children = [self._button(name) for name in names]
        for button in former:
            button.close()

    def _button(self, name: str) -> ipywidgets.Button:
        made = ipywidgets.Button(description=name)
        made.on_click(lambda _: setattr(self.line, "value", name))
        return made


def _meant(control: Pick, text: str) -> tuple[str, ...]:
    """Return the names that an asking error gives to choose from."""
    try:
        control.known(text)
    except SeatworkError as error:
        return error.options
    return ()
