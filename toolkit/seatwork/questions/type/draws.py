"""Draws that are the same on every machine: ``Random.random()`` and a pick, nothing else."""

from collections.abc import Sequence
from random import Random
from typing import TypeVar

from seatwork.errors import SeatworkError

Item = TypeVar("Item")
MOST_STEPS = 1_000_000


def generator(seed: bytes) -> Random:
    """Return a generator for a seed of any length.

    Examples
    --------
    >>> generator(b"cones").random() == generator(b"cones").random()
    True
    """
    return Random(int.from_bytes(seed, "big"))


def pick(rng: Random, items: Sequence[Item]) -> Item:
    """Return one of `items`, by one call of ``rng.random()``.

    Examples
    --------
    >>> pick(generator(b"cones"), ["60", "82", "100"]) in ("60", "82", "100")
    True
    """
    if not len(items):
        raise SeatworkError("", "there is nothing to pick from", "give at least one")
    return items[int(rng.random() * len(items))]


def step_between(rng: Random, low: float, high: float, step: float) -> float:
    """Return `low`, or `low` plus whole steps, up to `high`.

    Examples
    --------
    >>> 0.5 <= step_between(generator(b"cones"), 0.5, 1.5, 0.25) <= 1.5
    True
    """
    if not (step > 0 and 0 <= (high - low) / step <= MOST_STEPS):
        raise SeatworkError(step, "it does not part the range in whole steps", "take a larger step")
    count = round((high - low) / step) + 1
    return low + step * int(rng.random() * count)


def shuffled(rng: Random, items: Sequence[Item]) -> tuple[Item, ...]:
    """Return `items` in a drawn order.

    Examples
    --------
    >>> sorted(shuffled(generator(b"cones"), "abc"))
    ['a', 'b', 'c']
    """
    left = list(items)
    return tuple(left.pop(int(rng.random() * len(left))) for _ in range(len(left)))
