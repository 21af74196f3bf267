"""The button that hands a sheet in, and what is said beside it."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import ipywidgets as widgets

from seatwork.benches.term.grid import TermLook
from seatwork.errors import SeatworkError
from seatwork.worksheet.answered import Answered
from seatwork.worksheet.boxes import button, status
from seatwork.worksheet.handing_in import hand_in, standing


class HandInForm(widgets.VBox):  # type: ignore[misc]  # ipywidgets has no types
    """A button that hands the answers of a sheet in; as text, what is answered.

    Parameters
    ----------
    desk : Answered
        The sheet.
    place : Path
        Where its answer file goes.
    sentence : callable
        Gives what is said above the button: how much is answered.
    """

    def __init__(self, desk: Answered, place: Path, sentence: Callable[[], str]) -> None:
        self._desk, self._place, self._sentence = desk, place, sentence
        self.press = button(desk.voice.words["form.hand_in_button"], lambda _button: self.hand_in())
        self.said = widgets.HTML()
        self.answered = widgets.HTML()
        lines = [TermLook(), self.answered, self.press, self.said]
        super().__init__(lines, layout=widgets.Layout(align_items="flex-start"))
        self.add_class("seatwork-term")
        self._stand()
        desk.kept.on_change = self._stand

    def __repr__(self, **_kwargs: Any) -> str:
        return self._sentence()

    _repr_keys = None

    def hand_in(self) -> None:
        """Hand in, and say what happened or why it did not."""
        try:
            self._say(hand_in(self._desk))
        except SeatworkError as error:
            self._say(self._desk.voice.explain(error))

    def _stand(self) -> None:
        """Say how much is answered, and how what was handed in stands to that."""
        self.answered.value = status([self._sentence()])
        try:
            self._say(standing(self._desk, self._place))
        except SeatworkError as error:
            self._say(self._desk.voice.explain(error))

    def _say(self, text: str) -> None:
        self.said.value = status([text])
