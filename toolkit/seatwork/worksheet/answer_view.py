"""The widget under a question: what it asks, what is typed, and what is said of it."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import anywidget
import traitlets

from seatwork.live.keys import with_keys
from seatwork.live.signs import with_signs

HERE = Path(__file__).parent


class AnswerView(anywidget.AnyWidget):
    """The question with its picture, boxes and buttons; as text, one line that never changes.

    Parameters
    ----------
    heard : callable
        Called with what the page says: ``press`` (a button, with the ``texts`` in the boxes),
        ``sure`` (the mark was set or taken away) and ``page`` (how it looks: ``dark``, ``scale``).
    typed : callable
        Called with the texts in the boxes when they change.
    name : str
        The question's place on the sheet.

    Notes
    -----
    ``asked`` changes with new numbers alone, ``now`` with every answer; what was typed and not
    yet sent waits on the page, and only the latest of it is sent. Everything said is shown as
    text, never as markup.
    """

    _esm = with_keys(HERE / "answer.js")
    _css = with_signs(HERE / "answer.css")

    asked = traitlets.Dict().tag(sync=True)
    now = traitlets.Dict().tag(sync=True)
    typed = traitlets.List(traitlets.Unicode()).tag(sync=True)
    picture = traitlets.Bytes().tag(sync=True)
    figures = traitlets.List(traitlets.Bytes()).tag(sync=True)

    def __init__(
        self,
        heard: Callable[[dict[str, Any]], None],
        typed: Callable[[tuple[str, ...]], None],
        name: str,
    ) -> None:
        super().__init__()
        self._name, self._told = name, heard
        self.on_msg(self._hear)
        self.observe(lambda change: typed(tuple(change["new"])), names="typed")

    def __repr__(self) -> str:
        return f"Form for {self._name}: run this cell to answer here."

    def _hear(self, _widget: Any, content: dict[str, Any], _buffers: Any) -> None:
        self._told(content)
