"""The surface the lips leave, remembered step by step along the turn.

Depths are metres along the spindle. Two ways to remember: all lips alike share
one pitch of surface; unlike lips keep the whole turn.
"""

from math import ceil, floor, sin
from typing import Protocol

from seatwork.cutting.chatter.parts import Cutter


class Surface(Protocol):
    """What a trace asks of the surface."""

    step: float
    """Time of one step [s]."""
    lips_as_one: int
    """Number of lips that each remembered lip stands for."""

    def settle(self, level: float) -> None:
        """Lay the surface that steady cutting at displacement `level` leaves."""

    def meet(self, z: float) -> tuple[int, float]:
        """Lips in contact and their summed depth of chip, with the tool at `z`."""

    def leave(self, z: float) -> tuple[float, float]:
        """Cut with the tool at `z`, go on one step; depth of chip and surface at the first lip."""


class SharedSurface:
    """One pitch of surface, for lips that are all alike; the feed is taken out.

    Parameters
    ----------
    steps : int
        Steps from one lip to the next [-].
    step : float
        Time of one step [s].
    pitch_feed : float
        Feed from one lip to the next [m].
    lips : int
        Number of lips [-].
    """

    def __init__(self, *, steps: int, step: float, pitch_feed: float, lips: int) -> None:
        self.step = step
        self.lips_as_one = lips
        self.steps, self.feed = steps, pitch_feed
        self._left = [0.0] * steps
        self._at = 0

    def settle(self, level: float) -> None:
        """Lay a flat surface."""
        self._left = [level] * len(self._left)

    def meet(self, z: float) -> tuple[int, float]:
        """One for all the lips, or none."""
        depth = z + self.feed - self._left[self._at]
        return (1, depth) if depth > 0 else (0, 0.0)

    def leave(self, z: float) -> tuple[float, float]:
        """Where the lips miss, the old surface falls behind by the feed."""
        at = self._at
        behind = self._left[at] - self.feed
        depth, left = (z - behind, z) if z > behind else (0.0, behind)
        self._left[at] = left
        self._at = at + 1 if at + 1 < len(self._left) else 0
        return depth, left


class TurnedSurface:
    """A whole turn of surface, for lips of unequal spacing or height.

    Parameters
    ----------
    steps : int
        Steps in one turn [-].
    step : float
        Time of one step [s].
    feed : float
        Feed of one turn [m].
    places : sequence of int
        Step at which each lip stands ahead of the first [-].
    proud : float
        How far the first lip stands proud, along the spindle [m].
    """

    def __init__(
        self, *, steps: int, step: float, feed: float, places: list[int], proud: float
    ) -> None:
        self.step = step
        self.lips_as_one = 1
        self._feed = feed
        self._places = places
        self._lips = [(place, proud if lip == 0 else 0.0) for lip, place in enumerate(places)]
        self._left = [0.0] * steps
        self._at = 0

    def settle(self, level: float) -> None:
        """Lay at each place what the last lip to pass there has left."""
        steps = len(self._left)
        for spot in range(steps):
            passed = [
                height - self._feed * (((place - spot - 1) % steps) + 1) / steps
                for place, height in self._lips
            ]
            self._left[spot] = level + max(passed)

    def meet(self, z: float) -> tuple[int, float]:
        """Count and sum over the lips."""
        at, left, steps = self._at, self._left, len(self._left)
        base = z + self._feed * at / steps
        contact, total = 0, 0.0
        for place, height in self._lips:
            depth = base + height - left[(at + place) % steps]
            if depth > 0:
                contact += 1
                total += depth
        return contact, total

    def leave(self, z: float) -> tuple[float, float]:
        """Each lip leaves its own mark at its own place."""
        at, left, steps = self._at, self._left, len(self._left)
        ramp = self._feed * at / steps
        first = left[at % steps]
        for place, height in self._lips:
            spot, reached = (at + place) % steps, z + ramp + height
            if reached > left[spot]:
                left[spot] = reached
        self._at = at + 1
        return max(0.0, z + ramp + self._lips[0][1] - first), left[at % steps] - ramp


def shared_surface(
    cutter: Cutter, spindle_speed: float, feed: float, per_turn: float
) -> SharedSurface:
    """Surface for lips all alike, with at least `per_turn` steps in a turn; `feed` [mm/rev]."""
    lips = cutter.flutes
    steps = ceil(per_turn / lips)
    return SharedSurface(
        steps=steps,
        step=60 / (spindle_speed * lips * steps),
        pitch_feed=feed / 1000 / lips,
        lips=lips,
    )


def turned_surface(
    cutter: Cutter, spindle_speed: float, feed: float, per_turn: float
) -> TurnedSurface:
    """Surface for unlike lips, with at least `per_turn` steps in a turn; `feed` [mm/rev]."""
    least = ceil(per_turn)
    steps = min(range(least, floor(1.5 * least) + 1), key=lambda n: (_miss(cutter, n), n))
    return TurnedSurface(
        steps=steps,
        step=60 / (spindle_speed * steps),
        feed=feed / 1000,
        places=[round(steps * place) for place in cutter.places],
        proud=cutter.runout / 1000 / sin(cutter.half_angle),
    )


def _miss(cutter: Cutter, steps: int) -> float:
    """How far, in shares of a turn, the worst lip falls beside a whole step."""
    worst = max(abs(steps * place - round(steps * place)) for place in cutter.places)
    return round(worst / steps, 9)
