"""The live view: the widget that shows a live picture, its readouts and its troubles."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import anywidget
import traitlets

from seatwork.live.keys import with_keys
from seatwork.live.signs import with_signs

HERE = Path(__file__).parent
LOOK = HERE / "live.css"
"""One look for live views and the widgets beside them."""

PICTURE = (HERE / "picture.js").read_text(encoding="utf-8")
"""The picture itself, without the widget; pages that are taken home play it, too."""


class LiveView(anywidget.AnyWidget):
    """Shows a picture that follows a scene, the readouts beside it, and a sentence of trouble.

    A new picture travels as state, once; a move travels as one short message, whose effect is
    never stored. A page that joins late says so and is told the state of the moment.

    Parameters
    ----------
    answered : callable
        Called with what the page says: ``hello`` (a page has joined), ``page`` (how it looks:
        ``dark``, ``scale``) and ``settled`` (nothing has moved for a while).
    """

    _esm = PICTURE + with_keys(HERE / "live.js")
    _css = with_signs(LOOK)

    page = traitlets.Dict().tag(sync=True)
    layers = traitlets.List(traitlets.Bytes()).tag(sync=True)
    pixels = traitlets.Bytes().tag(sync=True)

    def __init__(self, answered: Callable[[dict[str, Any]], None]) -> None:
        super().__init__()
        self._answered = answered
        self.on_msg(self._hear)

    def show(self, page: dict[str, Any], layers: list[bytes], pixels: bytes) -> None:
        """Show another picture; `page` as ``LivePicture.page`` gives it, and what is beside."""
        with self.hold_sync():
            self.page, self.layers, self.pixels = page, layers, pixels

    def follow(self, changes: dict[str, Any], pixels: bytes = b"") -> None:
        """Send what changed, and the moving image if it did."""
        self.send(changes, [pixels] if pixels else None)

    def _hear(self, _widget: Any, content: dict[str, Any], _buffers: Any) -> None:
        self._answered(content)
