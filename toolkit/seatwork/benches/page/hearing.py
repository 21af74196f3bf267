"""A box that asks before it plays: the cut as a sound, quiet at first."""

import io
import wave
from collections.abc import Callable
from pathlib import Path
from typing import Any

import anywidget
import numpy as np
import traitlets

from seatwork.cutting import Sound
from seatwork.live.view import LOOK

HERE = Path(__file__).parent
LOUDEST = 32767


class Hearing(anywidget.AnyWidget):
    """A button that asks first, then a player that does not start by itself.

    Parameters
    ----------
    heard : callable
        Gives the sound of the moment and what is to be said of it.
    """

    _esm = HERE / "hearing.js"
    _css = LOOK

    wav = traitlets.Bytes(b"").tag(sync=True)
    caption = traitlets.Unicode("").tag(sync=True)

    def __init__(self, heard: Callable[[], tuple[Sound, str]]) -> None:
        self._heard = heard
        super().__init__()
        self.on_msg(self._asked)

    def follow(self, names: frozenset[str]) -> None:
        """Take back a sound that is no longer that of the bench."""
        if self.wav and names:
            self.caption, self.wav = "", b""

    def _asked(self, _widget: Any, content: dict[str, Any], _buffers: Any) -> None:
        """Make the sound when the page asks for it."""
        if content.get("wanted"):
            sound, self.caption = self._heard()
            self.wav = wav(sound)


def wav(sound: Sound) -> bytes:
    """Write a sound as a WAV file: one channel, 16 bits, at its own rate."""
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(sound.rate)
        file.writeframes(np.rint(LOUDEST * sound.samples).astype("<i2").tobytes())
    return out.getvalue()
