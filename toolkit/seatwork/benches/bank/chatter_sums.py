"""What the chatter bench works out: limits, the map, traces; kept while nothing else is asked."""

from dataclasses import dataclass, replace
from functools import cached_property, lru_cache

import numpy as np

from seatwork import cutting
from seatwork.cutting import Cut, Cutter, Limit, Machine, Map, Trace
from seatwork.drawings.views.chatter_cones import Cone
from seatwork.drawings.views.chatter_map import SPEEDS, WIDTHS

COLUMNS = 160
RUNAWAY = 2.0
"""Width over limit beyond which a swing is not to be quoted [-]."""

VALID = 0.25
"""Wear land over wave up to which the law of process damping is trusted [-]."""

STEPS, SHORTEST, TURNS = 60, 0.4, 1.25
"""Steps in a wave, least time followed [s], least turns followed [-]."""


@dataclass(frozen=True, kw_only=True)
class Mounted:
    """A cutter mounted in a machine over its metal: everything but speed and width.

    Parameters
    ----------
    machine : Machine
        How it gives along the spindle.
    cutter : Cutter
        All its lips.
    cut : Cut
        The metal.
    feed : float
        Feed [mm/rev].
    wear_land : float
        Wear land on the flank [mm].

    Notes
    -----
    Without slots, since what is worked out is kept.
    """

    machine: Machine
    cutter: Cutter
    cut: Cut
    feed: float
    wear_land: float

    @cached_property
    def lips(self) -> Cutter:
        """The lips that cut at this feed."""
        return self.cutter.in_cut(self.feed)

    @cached_property
    def quiet_below(self) -> float:
        """Critical speed [rev/min]."""
        critical = cutting.critical_speed(machine=self.machine, cutter=self.lips, cut=self.cut)
        return critical.spindle_speed

    def limit(self, spindle_speed: float) -> Limit:
        """Width where chatter begins at a spindle speed [rev/min]."""
        return _limit(self, spindle_speed)

    @cached_property
    def map(self) -> Map:
        """Limits over the whole map."""
        return _map(self)

    @cached_property
    def doubtful_below(self) -> float:
        """Spindle speed [rev/min] under which the wear land is too long for the wave."""
        speeds = self.map.spindle_speeds
        for speed in speeds:
            share = cutting.land_over_wave(
                wear_land=self.wear_land,
                frequency=self.machine.natural_frequency,
                spindle_speed=float(speed),
                mean_diameter=self.cut.mean_diameter,
            )
            if share <= VALID:
                return float(speed)
        return float(speeds[-1])

    def sings(self, spindle_speed: float, width: float) -> bool:
        """Whether the plunge begins to sing before it is `width` [mm] wide."""
        limit = self.limit(spindle_speed).width
        return limit is not None and width > limit

    def followed(self, spindle_speed: float, width: float) -> float:
        """Width [mm] that a trace may have: no more than the model bears."""
        limit = self.limit(spindle_speed).width
        return width if limit is None else min(width, RUNAWAY * limit)

    def trace(self, spindle_speed: float, width: float, duration: float = SHORTEST) -> Trace:
        """Follow the cut for a while [s], at least a turn and a quarter."""
        return _trace(self, spindle_speed, self.followed(spindle_speed, width), duration)

    def cone(self, spindle_speed: float, width: float, *, shown: bool) -> Cone:
        """Give the seat cut at a spindle speed [rev/min] and a width [mm]."""
        trace = self.trace(spindle_speed, width) if shown else None
        whole = trace is not None and not trace.capped
        return Cone(
            spindle_speed=spindle_speed,
            frequency=self.frequency(spindle_speed, width),
            surface=cutting.surface_left(trace) if trace is not None and whole else None,
            width=width,
        )

    def frequency(self, spindle_speed: float, width: float) -> float | None:
        """Chatter frequency [Hz]; None where the cut stays quiet."""
        limit = self.limit(spindle_speed)
        return limit.frequency if self.sings(spindle_speed, width) else None

    def stiffer(self, times: float) -> "Mounted":
        """Give the same on a machine so many times as stiff, ringing at the same pitch."""
        machine = replace(self.machine, stiffness=times * self.machine.stiffness)
        return replace(self, machine=machine)

    def with_one_flute(self) -> "Mounted":
        """Give the same with a single flute."""
        one = Cutter(flutes=1, included_angle=self.cutter.included_angle)
        return replace(self, cutter=one)


@lru_cache(maxsize=64)
def _limit(mounted: Mounted, spindle_speed: float) -> Limit:
    return cutting.width_limit(
        machine=mounted.machine,
        cutter=mounted.lips,
        cut=mounted.cut,
        spindle_speed=spindle_speed,
        widest=WIDTHS[1],
    )


@lru_cache(maxsize=8)
def _map(mounted: Mounted) -> Map:
    return cutting.stability(
        machine=mounted.machine,
        cutter=mounted.lips,
        cut=mounted.cut,
        spindle_speeds=np.geomspace(*SPEEDS, COLUMNS),
        widths=WIDTHS,
    )


@lru_cache(maxsize=3)
def _trace(mounted: Mounted, spindle_speed: float, width: float, duration: float) -> Trace:
    return cutting.trace(
        machine=mounted.machine,
        cutter=mounted.cutter,
        cut=mounted.cut,
        spindle_speed=spindle_speed,
        width=width,
        feed=mounted.feed,
        duration=max(duration, TURNS * 60.0 / spindle_speed),
        steps_per_wave=STEPS,
    )
