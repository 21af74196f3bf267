"""The sound of a cut, at the frequency it would have."""

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from seatwork import checks
from seatwork.cutting.chatter.loop import Floats
from seatwork.cutting.chatter.parts import NOTE
from seatwork.cutting.chatter.tracing import Trace

RATE = 44100
FULL_SCALE = 100.0
_FADE = 0.01

MOST_SAMPLES = 10_000_000
"""Samples at once: nearly four minutes at the usual rate."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Sound:
    """Samples ready to play.

    Parameters
    ----------
    samples : ndarray of float32
        One channel [-], -1 to 1.
    rate : int
        Samples in a second [1/s].
    note : str
        What the sound is not.
    """

    samples: npt.NDArray[np.float32]
    rate: int
    note: str = NOTE

    def __repr__(self) -> str:
        return f"<Sound {len(self.samples) / self.rate:.3g} s; illustration>"

    @property
    def sentence(self) -> str:
        """That the pitch is the true one, and what the sound is not."""
        return f"At its true pitch; {self.note}. Start at low volume."


def sound(*, trace: Trace, rate: int = RATE, full_scale: float = FULL_SCALE) -> Sound:
    """Velocity of the tool as sound, at true frequency.

    Parameters
    ----------
    trace : Trace
        The cut.
    rate : int
        Samples in a second [1/s].
    full_scale : float
        Tool velocity that plays at full volume, for every trace the same, so
        that a quiet cut is quiet [mm/s]; above it the sound bends, never clips.

    Returns
    -------
    Sound
        As long as the trace, at true pitch.

    Raises
    ------
    SeatworkError
        If a value is not above zero.

    Notes
    -----
    The scale is chosen for listening, no source: no loudness of a shop is meant.
    """
    checks.quantity(rate, "sample rate", "1/s")
    checks.quantity(full_scale, "full scale velocity", "mm/s")
    checks.not_too_many(trace.time[-1] * rate, MOST_SAMPLES, "samples")
    moments = np.arange(0, trace.time[-1], 1 / rate)
    velocity = np.interp(moments, trace.time, trace.velocity)
    return _faded(np.tanh(velocity / full_scale), rate)


def _faded(samples: Floats, rate: int) -> Sound:
    """Take the click off both ends."""
    fade = min(int(_FADE * rate), len(samples) // 2)
    ramp = np.linspace(0, 1, fade)
    window = np.ones(len(samples))
    window[:fade], window[len(samples) - fade :] = ramp, ramp[::-1]
    return Sound(samples=(samples * window).astype(np.float32), rate=rate)
