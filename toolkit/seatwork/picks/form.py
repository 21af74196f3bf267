"""The form of a pick on the page: choices, "How sure?", two buttons, and the answer."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import anywidget
import traitlets

from seatwork.live.keys import with_keys
from seatwork.live.signs import with_signs
from seatwork.live.view import LOOK
from seatwork.picks.wording import Words, place_of

HERE = Path(__file__).parent
STYLE = with_signs(LOOK, HERE / "pick.css")


class PickForm(anywidget.AnyWidget):
    """Asks, and shows the answer once the kernel gives it; before that it does not have it.

    Parameters
    ----------
    words : Words
        What is asked.
    heard : callable
        Called with what the page says: ``lock`` with ``sure``, ``again``, or ``hands``.
    room : bool
        Whether hands are counted.
    """

    _esm = with_keys(HERE / "pick.js")
    _css = STYLE

    asked = traitlets.Dict().tag(sync=True)
    answer = traitlets.Dict().tag(sync=True)

    def __init__(
        self, words: Words, heard: Callable[[dict[str, Any]], None], *, room: bool
    ) -> None:
        number, count = place_of(words.name)
        self._heard = heard
        super().__init__(
            asked={
                "title": "Your pick",
                "place": f"({number} of {count} on this page)",
                "kind": words.kind,
                "question": words.question,
                "choices": [list(choice) for choice in words.choices],
                "asks": [ask.label for ask in words.ask],
                "cover": "" if words.shows or not words.opens else COVER,
                "room": room,
            }
        )
        self.on_msg(self._hear)

    def _hear(self, _widget: Any, content: dict[str, Any], _buffers: Any) -> None:
        self._heard(content)


COVER = "The picture comes when you have bet."
