"""Where roots cross into chatter: found on a ragged frequency grid, all speeds at once."""

from dataclasses import dataclass
from typing import Protocol

import numpy as np

from seatwork.cutting.chatter.loop import Floats, Ints

POINTS_PER_TURN = 24
LEAST_POINTS = 600
_POLISH = 5


class Crossable(Protocol):
    """What the search asks of a model."""

    @property
    def delays(self) -> Floats:
        """Delays [s], one column per spindle speed."""

    @property
    def roots_each(self) -> int:
        """Number of roots that cross together."""

    def bands(self, widest: float) -> list[tuple[Floats, Floats]]:
        """Lowest and highest frequency [rad/s] at each spindle speed."""

    def mismatch(self, w: Floats, column: Ints) -> Floats:
        """Real function of frequency, zero at a crossing."""

    def width(self, w: Floats, column: Ints) -> Floats:
        """Width of cut [m] at a crossing."""

    def direction(self, w: Floats, column: Ints, width: Floats) -> Ints:
        """+1 into chatter, -1 out of it."""

    def static(self, widest: float) -> tuple[Ints, Floats, Ints]:
        """Column, width [m] and change of roots that cross at zero frequency."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Crossings:
    """Every crossing found, in one flat list.

    Parameters
    ----------
    column : ndarray of int
        Index of the spindle speed.
    frequency : ndarray
        Frequency of the root on the axis [rad/s].
    width : ndarray
        Width of cut [m].
    change : ndarray of int
        Roots gained, or lost where below zero, as the width grows past it.
    """

    column: Ints
    frequency: Floats
    width: Floats
    change: Ints


def find_crossings(
    model: Crossable, widest: float, *, per_turn: int = POINTS_PER_TURN, least: int = LEAST_POINTS
) -> Crossings:
    """Find all crossings with widths up to `widest` [m].

    `per_turn` points stand on each turn of the phase, at least `least` on each spindle speed.
    """
    found = [_in_band(model, *band, per_turn, least) for band in model.bands(widest)]
    column = np.concatenate([part[0] for part in found])
    w = np.concatenate([part[1] for part in found])
    width = model.width(w, column)
    keep = (width > 0) & (width <= widest)
    column, w, width = column[keep], w[keep], width[keep]
    change = model.roots_each * model.direction(w, column, width)
    still, at, still_change = model.static(widest)
    return Crossings(
        column=np.concatenate([column, still]),
        frequency=np.concatenate([w, np.zeros(len(still))]),
        width=np.concatenate([width, at]),
        change=np.concatenate([change, still_change]),
    )


def _in_band(
    model: Crossable, low: Floats, high: Floats, per_turn: int, least: int
) -> tuple[Ints, Floats]:
    """Columns and polished frequencies of the sign changes between `low` and `high`."""
    column, w = _grid(low, high, model.delays.max(axis=0), per_turn, least)
    value = model.mismatch(w, column)
    turns = np.signbit(value[1:]) != np.signbit(value[:-1])
    at = np.flatnonzero(turns & (column[1:] == column[:-1]))
    return column[at], _polish(model, column[at], (w[at], w[at + 1]), (value[at], value[at + 1]))


def _grid(
    low: Floats, high: Floats, delay: Floats, per_turn: int, least: int
) -> tuple[Ints, Floats]:
    span = np.maximum(high - low, 0)
    points = np.ceil(span * delay / (2 * np.pi) * per_turn)
    points = np.where(span > 0, np.maximum(points, least), 0).astype(np.intp) + (span > 0)
    column = np.repeat(np.arange(len(low)), points)
    start = np.repeat(np.cumsum(points) - points, points)
    step = span / np.maximum(points - 1, 1)
    return column, low[column] + (np.arange(len(column)) - start) * step[column]


def _polish(
    model: Crossable,
    column: Ints,
    ends: tuple[Floats, Floats],
    values: tuple[Floats, Floats],
) -> Floats:
    """Close brackets by the Illinois rule, all at once."""
    (a, b), (fa, fb) = ends, values
    for _ in range(_POLISH):
        span = fb - fa
        c = b - fb * (b - a) / np.where(span == 0, 1, span)
        fc = model.mismatch(c, column)
        other = np.signbit(fc) != np.signbit(fb)
        a, fa = np.where(other, b, a), np.where(other, fb, fa / 2)
        b, fb = c, fc
    return b
