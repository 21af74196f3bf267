"""The cut told in time: the lip follows its own wave, leaves the cut, comes back.

One step at a time the tool moves under the cutting force and the surface it
leaves is remembered, so regeneration, missed cuts and runout come by
themselves. Between steps the force is a straight line, and the oscillator is
carried exactly; the force at the end of a step is solved for, not guessed.

Notes
-----
Own stepping of the regenerative equation with loss of contact, as in ``loop``; peaks and shares
are read off the trace.
"""

from dataclasses import dataclass
from math import ceil, cos, exp, pi, sin, sqrt

import numpy as np

from seatwork import checks
from seatwork.cutting.chatter.loop import Floats, Ints
from seatwork.cutting.chatter.parts import NOTE, Cut, Cutter, Machine
from seatwork.cutting.chatter.surfaces import (
    SharedSurface,
    Surface,
    shared_surface,
    turned_surface,
)
from seatwork.errors import SeatworkError

STEPS_PER_WAVE = 120

MOST_STEPS = 1_000_000
"""Steps of one trace: some 30 s at 250 Hz, and a few seconds of work."""

Four = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Trace:
    """Motion of the tool along the spindle while it cuts.

    Parameters
    ----------
    time : ndarray
        Since the start [s].
    displacement : ndarray
        Of the tool from where it stands unloaded, above zero into the work [mm].
    velocity : ndarray
        Of the tool [mm/s].
    chip_thickness : ndarray
        At the first lip, along its normal [mm]; 0 where it misses.
    left : ndarray
        Surface under the first lip, along the spindle, with the feed taken out [mm].
    lips_in_cut : ndarray of int
        How many lips cut.
    spindle_speed : float
        Spindle speed [rev/min].
    cutter : Cutter
        The cutter.
    capped : bool
        Whether the trace was stopped because the swing outgrew the model.
    note : str
        What the trace is not.
    """

    time: Floats
    displacement: Floats
    velocity: Floats
    chip_thickness: Floats
    left: Floats
    lips_in_cut: Ints
    spindle_speed: float
    cutter: Cutter
    capped: bool
    note: str = NOTE

    def __repr__(self) -> str:
        lasts = float(self.time[-1] - self.time[0])
        return f"<Trace {lasts:.3g} s at {self.spindle_speed:.0f} rev/min; illustration>"

    @property
    def missed(self) -> float:
        """Share of the time in which no lip cuts [-]."""
        return float(np.mean(self.lips_in_cut == 0))

    def swing(self, turns: float = 1.0) -> float:
        """Peak-to-peak displacement [mm] over the last `turns` [rev]."""
        checks.quantity(turns, "number of turns")
        start = self.time[-1] - 60 * turns / self.spindle_speed
        return float(np.ptp(self.displacement[self.time >= start]))


def trace(
    *,
    machine: Machine,
    cutter: Cutter,
    cut: Cut,
    spindle_speed: float,
    width: float,
    feed: float,
    duration: float = 0.5,
    kick: float | None = None,
    cap: float = 1.0,
    steps_per_wave: int = STEPS_PER_WAVE,
) -> Trace:
    """Follow a cut of constant width in time, along the spindle.

    Parameters
    ----------
    machine : Machine
        How the machine gives, axially.
    cutter : Cutter
        Lips, angle, spacing and runout.
    cut : Cut
        Cutting coefficients, mean diameter, process damping.
    spindle_speed : float
        Spindle speed [rev/min].
    width : float
        Width of cut [mm].
    feed : float
        Feed [mm/rev].
    duration : float
        Time to follow [s].
    kick : float, optional
        Start from steady cutting, displaced by this much [mm]; without it the
        unloaded tool enters a cut already under way.
    cap : float
        Displacement that ends the trace [mm].
    steps_per_wave : int
        Steps in one wave of the natural frequency [-].

    Returns
    -------
    Trace
        Displacement, velocity, chip, and the surface left.

    Raises
    ------
    SeatworkError
        If the machine gives laterally, or a value is not above zero.

    Notes
    -----
    Saturated chatter is to be quoted up to about twice the limit width; far
    above it the swing grows on, as the model has no wall to hit: the trace is
    then stopped and says so in `capped`. Process damping acts on lips in cut.
    Illustration, not a prediction for your machine.

    Examples
    --------
    >>> bench = Machine(stiffness=8e6, natural_frequency=250.0, damping_ratio=0.04)
    >>> steel = Cut(normal_coefficient=1345.08e6, tangential_coefficient=1921e6, mean_diameter=9.0)
    >>> three = Cutter(flutes=3, included_angle=82.0)
    >>> cut = {"machine": bench, "cutter": three, "cut": steel, "spindle_speed": 1000.0}
    >>> trace(width=0.9972, feed=0.1, duration=1.5, **cut).swing() / 0.1
    0.667

    References
    ----------
    Regeneration with the tool leaving the cut; own stepping (check A7).
    """
    _check(machine, spindle_speed, width, feed, duration, cap)
    _check_steps(machine, spindle_speed, duration, steps_per_wave)
    surface = _surface(machine, cutter, cut, spindle_speed, feed, steps_per_wave)
    stepper = _stepper(machine, cutter, cut, surface, spindle_speed, width)
    rest = -cut.normal_coefficient * sin(cutter.half_angle) ** 2 * width * feed / 1e6
    deflection = rest / machine.stiffness  # [m]
    start = (0.0, 0.0) if kick is None else (deflection, deflection + kick / 1000)
    rows, capped = stepper.run(surface, start, ceil(duration / surface.step), cap / 1000)
    return _text_of(rows, surface, cutter, spindle_speed, capped)


def _check(
    machine: Machine, spindle_speed: float, width: float, feed: float, duration: float, cap: float
) -> None:
    if machine.direction != "axial":
        raise SeatworkError(
            machine.direction,
            "a trace follows motion along the spindle only",
            "use width_limit and marks_per_turn for sideways chatter, or an axial machine",
        )
    checks.quantity(spindle_speed, "spindle speed", "rev/min")
    checks.length(width, "width of cut")
    checks.quantity(feed, "feed", "mm/rev")
    checks.quantity(duration, "duration", "s")
    checks.length(cap, "cap")


def _check_steps(
    machine: Machine, spindle_speed: float, duration: float, steps_per_wave: int
) -> None:
    checks.count(steps_per_wave, "number of steps in a wave")
    rate = steps_per_wave * machine.natural_frequency
    checks.not_too_many(duration * rate, MOST_STEPS, "steps of the trace")
    checks.not_too_many(60 / spindle_speed * rate, MOST_STEPS, "steps in one turn")


def _surface(
    machine: Machine,
    cutter: Cutter,
    cut: Cut,
    spindle_speed: float,
    feed: float,
    steps_per_wave: int,
) -> Surface:
    per_turn = steps_per_wave * machine.natural_frequency * 60 / spindle_speed
    if cutter.equally_spaced and not cutter.runout:
        return shared_surface(cutter, spindle_speed, feed, per_turn)
    return turned_surface(cutter, spindle_speed, feed, per_turn)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Stepper:
    """Exact step of the oscillator under a force that runs straight from one end to the other.

    z' = zz z + zv v + z0 F + z1 F';  v' = vz z + vv v + v0 F + v1 F'   (F' at the end)
    """

    position: Four
    velocity: Four
    chip_force: float  # of one lip, per depth along the spindle [N/m]
    rub_force: float  # of one lip, per speed along the spindle [N s/m]

    def run(
        self, surface: Surface, start: tuple[float, float], steps: int, cap: float
    ) -> tuple[Floats, bool]:
        """Rows of displacement, velocity, depth of chip, surface left and lips in cut."""
        if isinstance(surface, SharedSurface):
            return self._run_alike(surface, start, steps, cap)
        (zz, zv, z0, z1), (vz, vv, v0, v1) = self.position, self.velocity
        chip, rub = self.chip_force, self.rub_force
        stiffening = chip * z1 + rub * v1
        level, z = start
        surface.settle(level)
        v, force = 0.0, -chip * surface.meet(z)[1]
        surface.leave(z)
        rows: list[tuple[float, float, float, float, int]] = []
        capped = False
        for _ in range(steps):
            free, drift = zz * z + zv * v + z0 * force, vz * z + vv * v + v0 * force
            contact, depth = surface.meet(free)
            force = -(chip * depth + rub * contact * drift) / (1 + contact * stiffening)
            z, v = free + z1 * force, drift + v1 * force
            first, left = surface.leave(z)
            rows.append((z, v, first, left, contact))
            capped = not -cap < z < cap
            if capped:
                break
        return np.array(rows).T, capped

    def _run_alike(
        self, surface: SharedSurface, start: tuple[float, float], steps: int, cap: float
    ) -> tuple[Floats, bool]:
        """Do as `run` does where all lips are alike: its calls written out, for a picture waits.

        The surface is one list, a pitch longer than the trace: what the lip before left is a
        pitch back in it.
        """
        (zz, zv, z0, z1), (vz, vv, v0, v1) = self.position, self.velocity
        chip, rub, feed, pitch = self.chip_force, self.rub_force, surface.feed, surface.steps
        stiffening, (level, z) = 1 + chip * z1 + rub * v1, start
        left = [level] * (pitch + 1) + [0.0] * steps
        left[pitch] = max(z, level - feed)
        v, force = 0.0, -chip * max(z + feed - level, 0.0)
        place, speed, depth, contact = ([0.0] * steps for _ in range(4))
        step, capped = -1, False
        while step + 1 < steps and not capped:
            step += 1
            old = left[step + 1]
            free, drift = zz * z + zv * v + z0 * force, vz * z + vv * v + v0 * force
            chip_depth = free + feed - old
            force = 0.0
            if chip_depth > 0:
                contact[step] = 1
                force = -(chip * chip_depth + rub * drift) / stiffening
            place[step], speed[step] = z, v = free + z1 * force, drift + v1 * force
            behind = old - feed
            if z > behind:
                depth[step], left[pitch + 1 + step] = z - behind, z
            else:
                left[pitch + 1 + step] = behind
            capped = not -cap < z < cap
        end = step + 1
        rows = place[:end], speed[:end], depth[:end], left[pitch + 1 : pitch + 1 + end]
        return np.array([*rows, contact[:end]]), capped


def _stepper(
    machine: Machine,
    cutter: Cutter,
    cut: Cut,
    surface: Surface,
    spindle_speed: float,
    width: float,
) -> _Stepper:
    share = surface.lips_as_one * sin(cutter.half_angle) ** 2 * width / 1000
    speed = pi * cut.mean_diameter / 1000 * spindle_speed / 60
    position, velocity = _carry(machine, surface.step)
    return _Stepper(
        position=position,
        velocity=velocity,
        chip_force=share * cut.normal_coefficient,
        rub_force=share * cut.process_damping / speed,
    )


def _carry(machine: Machine, step: float) -> tuple[Four, Four]:
    """Coefficients of one step: free motion, then force at its start and at its end."""
    zeta, wn, k = machine.damping_ratio, machine.angular_frequency, machine.stiffness
    wd, decay = wn * sqrt(1 - zeta**2), exp(-zeta * wn * step)
    c, s = decay * cos(wd * step), decay * sin(wd * step) / wd
    zz, zv = c + zeta * wn * s, s
    vz, vv = -(wn**2) * s, c - zeta * wn * s
    # A force rising by one over the step: (t - lag)/(k step) plus the free motion that starts it.
    lag = 2 * zeta / wn
    z1 = (step - lag + lag * zz - zv) / (k * step)
    v1 = (1 + lag * vz - vv) / (k * step)
    z0, v0 = (1 - zz) / k - z1, -vz / k - v1
    return (zz, zv, z0, z1), (vz, vv, v0, v1)


def _text_of(
    rows: Floats,
    surface: Surface,
    cutter: Cutter,
    spindle_speed: float,
    capped: bool,
) -> Trace:
    z, v, depth, left, contact = rows
    return Trace(
        time=surface.step * np.arange(1, len(z) + 1),
        displacement=1000 * z,
        velocity=1000 * v,
        chip_thickness=1000 * sin(cutter.half_angle) * depth,
        left=1000 * left,
        lips_in_cut=(surface.lips_as_one * contact).astype(np.intp),
        spindle_speed=spindle_speed,
        cutter=cutter,
        capped=capped,
    )
