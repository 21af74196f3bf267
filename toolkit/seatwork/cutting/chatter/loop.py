"""The regenerative loop: one characteristic function for every spindle speed at once.

With w the frequency, b the width of cut and tau_j the time since the lip ahead
passed, all models with equal lips, and the axial one with any lips, have

    D(iw) = D1(iw) + b D2(iw)
    D1 = k - m w^2 + i c w
    D2 = (q/v) i w + K mean_j [1 - exp(-i w tau_j)]

axial    K = z sin^2(a) Kn                       q = z sin^2(a) C
lateral  K = (z/2) cos(a) (Kn cos(a) + i Kt)     q = (z/2) cos(a) (cos(a) + i mu) C

z lips, a half the included angle, v surface speed at the mean diameter. K and q
are real axially; laterally they are complex and frequencies have both signs,
below zero for backward whirl.
"""

from dataclasses import dataclass
from math import cos, pi, sin
from typing import Any

import numpy as np
import numpy.typing as npt

from seatwork.cutting.chatter.parts import Cut, Cutter, Machine
from seatwork.cutting.chatter.search import BELOW

Floats = npt.NDArray[np.floating[Any]]
Ints = npt.NDArray[np.intp]
Complexes = npt.NDArray[np.complexfloating[Any, Any]]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Loop:
    """Cutting and structure at a row of spindle speeds, in SI units.

    Parameters
    ----------
    machine : Machine
        Structure.
    gain : complex
        K [N/m2].
    damping : ndarray
        q/v at each spindle speed [N s/m2].
    delays : ndarray, shape (lips, speeds)
        Time from each lip to the one ahead [s]; one row for equal spacing.
    """

    machine: Machine
    gain: complex
    damping: Complexes
    delays: Floats

    @property
    def roots_each(self) -> int:
        """Roots that cross together: a pair axially, one laterally."""
        return 2 if self.machine.direction == "axial" else 1

    def structure(self, w: Floats) -> Complexes:
        """D1(iw) at frequencies [rad/s]."""
        m = self.machine
        real = m.stiffness - m.mass * w**2
        return real + 1j * (m.damping * w)

    def cutting(self, w: Floats, column: Ints) -> Complexes:
        """D2(iw) at frequencies [rad/s] of the spindle speeds with index `column`."""
        total = (1j * w) * self.damping[column]
        share = self.gain / len(self.delays)
        for delay in self.delays:
            total += share * (1 - np.exp(-1j * (w * delay[column])))
        return total

    def slope(self, w: Floats, column: Ints, width: Floats) -> Complexes:
        """Slope of D by the root s, at s = iw."""
        cutting = self.damping[column].astype(complex)
        share = self.gain / len(self.delays)
        for delay in self.delays:
            cutting += share * delay[column] * np.exp(-1j * (w * delay[column]))
        m = self.machine
        slope: Complexes = m.damping + 2j * m.mass * w + width * cutting
        return slope

    def mismatch(self, w: Floats, column: Ints) -> Floats:
        """Im(D1 conj D2): zero where some real width puts a root on the imaginary axis."""
        m = self.machine
        one, sine = self._versine(w, column)
        q, gain = self.damping[column], self.gain
        if self.machine.direction == "axial":
            real, imaginary = gain.real * one, q.real * w + gain.real * sine
        else:
            real = gain.real * one - gain.imag * sine - q.imag * w
            imaginary = gain.real * sine + gain.imag * one + q.real * w
        result: Floats = (m.damping * w) * real - (m.stiffness - m.mass * w**2) * imaginary
        return result

    def _versine(self, w: Floats, column: Ints) -> tuple[Floats, Floats]:
        phases = [w * delay[column] for delay in self.delays]
        one = sum((1 - np.cos(phase) for phase in phases), np.zeros_like(w))
        sine = sum((np.sin(phase) for phase in phases), np.zeros_like(w))
        return one / len(phases), sine / len(phases)

    def width(self, w: Floats, column: Ints) -> Floats:
        """Width of cut [m] that puts a root at frequency w where `mismatch` is zero."""
        d1, d2 = self.structure(w), self.cutting(w, column)
        result: Floats = -(d1 * d2.conj()).real / np.maximum(np.abs(d2) ** 2, 1e-300)
        return result

    def direction(self, w: Floats, column: Ints, width: Floats) -> Ints:
        """+1 where a root turns unstable as the width grows, -1 where it turns stable."""
        motion = -self.cutting(w, column) / self.slope(w, column, width)
        return np.where(motion.real > 0, 1, -1)

    def bands(self, widest: float) -> list[tuple[Floats, Floats]]:
        """Frequencies between which roots can cross for widths up to `widest` [m].

        The bounds are strict: on the axis |D1| = b |D2|, and the damping term
        outgrows every other part of the imaginary side above some frequency. Axially
        no root crosses below resonance; the band begins a little under it.
        """
        m, size = self.machine, abs(self.gain)
        drag = np.abs(self.damping)
        reach = _largest(m.mass, widest * drag, m.stiffness + 2 * widest * size)
        if m.direction == "axial":
            top = np.minimum(reach, _quotient(size, drag))
            return [(np.full_like(top, BELOW * m.angular_frequency), top)]
        rest = self.damping.real
        forward = np.minimum(reach, _quotient(size - self.gain.imag, rest))
        backward = np.minimum(reach, _quotient(size + self.gain.imag, rest))
        least = np.full_like(reach, 1e-4 * m.angular_frequency)
        return [(least, forward), (-backward, -least)]

    def static(self, widest: float) -> tuple[Ints, Floats, Ints]:
        """No root crosses at zero frequency: there the chip does not change."""
        none = np.zeros(0, dtype=np.intp)
        return none, np.zeros(0), none

    def stationary(self, w: float, column: int, width: float) -> float:
        """Frequency seen by a bystander [rad/s]: the same."""
        return w


def _largest(square: float, linear: Floats, constant: float) -> Floats:
    """Positive root of square w^2 - linear w - constant."""
    return np.asarray((linear + np.sqrt(linear**2 + 4 * square * constant)) / (2 * square))


def _quotient(top: float, bottom: Floats) -> Floats:
    return np.divide(top, bottom, out=np.full_like(bottom, np.inf), where=bottom > 0)


def regenerative_loop(machine: Machine, cutter: Cutter, cut: Cut, spindle_speeds: Floats) -> Loop:
    """Loop of a cut at `spindle_speeds` [rev/min]; axial, or lateral with 3 or more equal lips."""
    a, lips = cutter.half_angle, cutter.flutes
    if machine.direction == "axial":
        share: complex = lips * sin(a) ** 2
        gain = share * cut.normal_coefficient
    else:
        whirl = lips / 2 * cos(a)
        share = whirl * (cos(a) + 1j * cut.friction)
        gain = whirl * (cut.normal_coefficient * cos(a) + 1j * cut.tangential_coefficient)
    speed = pi * cut.mean_diameter / 1000 * spindle_speeds / 60
    shares = cutter.shares[:1] if cutter.equally_spaced else cutter.shares
    return Loop(
        machine=machine,
        gain=complex(gain),
        damping=np.asarray(share * cut.process_damping / speed, dtype=complex),
        delays=np.outer(shares, 60 / spindle_speeds),
    )
