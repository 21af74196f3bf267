"""The sound of a cut, at the frequency it would have."""

from dataclasses import dataclass
from math import inf

import numpy as np
import numpy.typing as npt

from seatwork import checks
from seatwork.cutting.chatter.loop import Floats
from seatwork.cutting.chatter.parts import NOTE
from seatwork.cutting.chatter.tracing import Trace
from seatwork.errors import SeatworkError

RATE = 44100
FULL_SCALE = 100.0
AUDIBLE = 80.0
SHIFT = 4
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
    pitch_factor : int
        How many times higher it plays than it would sound [-]; 1 is true pitch.
    note : str
        What the sound is not.
    """

    samples: npt.NDArray[np.float32]
    rate: int
    pitch_factor: int = 1
    note: str = NOTE

    def __repr__(self) -> str:
        return f"<Sound {len(self.samples) / self.rate:.3g} s; illustration>"

    @property
    def sentence(self) -> str:
        """Whether the pitch is the true one, and what the sound is not."""
        pitch = (
            "At its true pitch"
            if self.pitch_factor == 1
            else f"Played {self.pitch_factor} times higher, too low to hear at its true pitch"
        )
        return f"{pitch}; {self.note}. Start at low volume."


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
    """
    checks.quantity(rate, "sample rate", "1/s")
    checks.quantity(full_scale, "full scale velocity", "mm/s")
    checks.not_too_many(trace.time[-1] * rate, MOST_SAMPLES, "samples")
    moments = np.arange(0, trace.time[-1], 1 / rate)
    velocity = np.interp(moments, trace.time, trace.velocity)
    return _faded(np.tanh(velocity / full_scale), rate, 1)


def tone(
    *,
    frequency: float,
    duration: float = 1.0,
    growth: float = 0.0,
    level: float = 0.3,
    rate: int = RATE,
) -> Sound:
    """Plain tone of a chatter frequency, for sideways chatter, which has no trace.

    Parameters
    ----------
    frequency : float
        Chatter frequency; its sign does not sound [Hz].
    duration : float
        Length [s].
    growth : float
        Growth of the swing, below zero where it dies away [1/s].
    level : float
        Loudest sample [-], above 0 and up to 1.
    rate : int
        Samples in a second [1/s].

    Returns
    -------
    Sound
        True pitch from 80 Hz up; below, four times higher, as `pitch_factor` says.

    Raises
    ------
    SeatworkError
        If a value lies outside its range.

    Examples
    --------
    >>> tone(frequency=-57.0).pitch_factor
    4
    """
    checks.quantity(duration, "duration", "s")
    checks.quantity(rate, "sample rate", "1/s")
    if not 0 < abs(frequency) < inf or not abs(growth) < inf:
        raise SeatworkError(f"{frequency:g} Hz", "no such tone sounds", "give a frequency above 0")
    if not 0 < level <= 1:
        raise SeatworkError(f"{level:g}", "the level lies above 0 and goes up to 1", "take 0.3")
    checks.not_too_many(duration * rate, MOST_SAMPLES, "samples")
    factor = 1 if abs(frequency) >= AUDIBLE else SHIFT
    moments = np.arange(0, duration, 1 / rate)
    # Only the shape of growth sounds: the loudest end is brought to `level`.
    envelope = np.exp(np.clip(growth * (moments - (duration if growth > 0 else 0)), -60, 0))
    wave = np.sin(2 * np.pi * factor * abs(frequency) * moments)
    return _faded(level * envelope * wave, rate, factor)


def _faded(samples: Floats, rate: int, factor: int) -> Sound:
    """Take the click off both ends."""
    fade = min(int(_FADE * rate), len(samples) // 2)
    ramp = np.linspace(0, 1, fade)
    window = np.ones(len(samples))
    window[:fade], window[len(samples) - fade :] = ramp, ramp[::-1]
    return Sound(samples=(samples * window).astype(np.float32), rate=rate, pitch_factor=factor)
