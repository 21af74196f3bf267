"""The form of a pick on the page: choices, "How sure?", two buttons, and the answer."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import anywidget
import traitlets

from seatwork.live.keys import with_keys
from seatwork.live.signs import with_signs
from seatwork.live.view import LOOK
from seatwork.marking.languages import NAMES, languages
from seatwork.marking.speaking import Voice
from seatwork.picks.wording import Words, place_of

HERE = Path(__file__).parent
STYLE = with_signs(LOOK, HERE / "pick.css")


class PickForm(anywidget.AnyWidget):
    """Asks, and shows the answer once the kernel gives it; before that it does not have it.

    Parameters
    ----------
    words : Words
        What is asked, in the language of `voice`.
    voice : Voice
        The language of the form's own words.
    heard : callable
        Called with what the page says: ``lock`` with ``sure``, ``again``, ``hands``, or
        ``speak`` with a language.
    room : bool
        Whether hands are counted.
    """

    _esm = with_keys(HERE / "pick.js")
    _css = STYLE

    asked = traitlets.Dict().tag(sync=True)
    answer = traitlets.Dict().tag(sync=True)

    def __init__(
        self, words: Words, voice: Voice, heard: Callable[[dict[str, Any]], None], *, room: bool
    ) -> None:
        self._heard, self._room = heard, room
        super().__init__(asked=self._asked(words, voice))
        self.on_msg(self._hear)

    def ask(self, words: Words, voice: Voice) -> None:
        """Ask the same in another language."""
        self.asked = self._asked(words, voice)

    def _asked(self, words: Words, voice: Voice) -> dict[str, Any]:
        number, count = place_of(words.name)
        say = voice.say
        return {
            "language": voice.language,
            "languages": [[code, NAMES[code]] for code in languages()],
            "title": say("Your pick"),
            "place": say(PLACE).format(number=number, count=count),
            "kind": words.kind,
            "question": words.question,
            "choices": [list(choice) for choice in words.choices],
            "asks": [ask.label for ask in words.ask],
            "cover": "" if words.shows or not words.opens else say(COVER),
            "room": self._room,
            "words": {name: say(text) for name, text in WORDS.items()},
        }

    def _hear(self, _widget: Any, content: dict[str, Any], _buffers: Any) -> None:
        self._heard(content)


COVER = "The picture comes when you have bet."
PLACE = "({number} of {count} on this page)"
WORDS = {
    "sure": "How sure?",
    "guessing": "guessing",
    "fairly": "fairly sure",
    "lock": "Lock my bet",
    "show": "Show",
    "idea": "No idea, show me",
    "again": "Bet again",
    "less": "one hand less",
    "more": "one hand more",
    "hands": "hands",
}
"""What stands on the form beside the pick's own words."""
