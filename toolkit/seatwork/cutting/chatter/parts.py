"""The machine, the cutter and the cut, as the chatter model sees them.

Stiffness is N/m, frequency Hz, cutting coefficients N/m2, process damping N/m,
diameters and runout millimetres, spindle speed rev/min.

Notes
-----
One mass on one spring with one damper: mass k / w^2 and damping 2 zeta sqrt(k m), from stiffness,
natural frequency and damping ratio, which is the definition of the three.
"""

from dataclasses import dataclass
from math import pi, radians, sin
from typing import Literal

from seatwork import checks
from seatwork.errors import SeatworkError

NOTE = "illustration, not a prediction for your machine"

Direction = Literal["axial", "lateral"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Machine:
    """One way a machine gives under the cut.

    Parameters
    ----------
    stiffness : float
        Force per deflection at the cutter [N/m].
    natural_frequency : float
        Frequency at which it rings when tapped [Hz].
    damping_ratio : float
        Share of critical damping [-], above 0 and below 1.
    direction : {"axial", "lateral"}
        Along the spindle (quill, rack, table, column), or sideways (spindle,
        chuck), equally soft all round.

    Raises
    ------
    SeatworkError
        If a value lies outside its range.

    Notes
    -----
    Bench machines are rarely tap tested: every number here is an assumption
    until somebody taps the machine in the room.
    """

    stiffness: float
    natural_frequency: float
    damping_ratio: float
    direction: Direction = "axial"

    def __post_init__(self) -> None:
        checks.quantity(self.stiffness, "stiffness", "N/m")
        checks.quantity(self.natural_frequency, "natural frequency", "Hz")
        if not 0 < self.damping_ratio < 1:
            raise SeatworkError(
                f"{self.damping_ratio:g}",
                "a damping ratio lies between 0 and 1",
                "machine tools have about 0.01 to 0.06",
            )
        if self.direction not in ("axial", "lateral"):
            raise SeatworkError(
                self.direction, "a machine gives axially or laterally", "write axial or lateral"
            )

    @property
    def angular_frequency(self) -> float:
        """Natural frequency [rad/s]."""
        return 2 * pi * self.natural_frequency

    @property
    def mass(self) -> float:
        """Mass that moves [kg]."""
        return self.stiffness / self.angular_frequency**2

    @property
    def damping(self) -> float:
        """Viscous damping [N s/m]."""
        return 2 * self.damping_ratio * self.stiffness / self.angular_frequency


@dataclass(frozen=True, slots=True, kw_only=True)
class Cutter:
    """A seat cutter as chatter sees it.

    Parameters
    ----------
    flutes : int
        Number of lips [-], 1 or more; a cross-hole cutter has one.
    included_angle : float
        Full angle between opposite lips [deg], above 0 and up to 180.
    spacing : sequence of float, optional
        Angle from each lip to the one ahead of it, lips counted in the
        direction of turning; together one turn [deg]. None for equal spacing.
    runout : float
        How far the first lip stands proud of the others, along the normal of
        the lip [mm].

    Raises
    ------
    SeatworkError
        If a value lies outside its range, or the spacing is not one turn.
    """

    flutes: int
    included_angle: float
    spacing: tuple[float, ...] | None = None
    runout: float = 0.0

    def __post_init__(self) -> None:
        checks.flutes(self.flutes)
        checks.cutter_angle(self.included_angle)
        checks.not_below(self.runout, 0, "runout", "mm")
        if self.spacing is not None:
            object.__setattr__(self, "spacing", tuple(float(angle) for angle in self.spacing))
            self._check_spacing(self.spacing)

    def _check_spacing(self, spacing: tuple[float, ...]) -> None:
        if len(spacing) != self.flutes or not all(0 < angle <= 360 for angle in spacing):
            raise SeatworkError(
                f"{len(spacing)} spacings",
                f"each of the {self.flutes} lips needs an angle above 0° to the lip ahead",
                "list one angle for each lip",
            )
        if not abs(sum(spacing) - 360) < 1e-6:
            raise SeatworkError(
                f"{sum(spacing):g}°",
                "they do not add up to one turn",
                "make their sum 360°",
            )

    @property
    def half_angle(self) -> float:
        """Half the included angle [rad], for formulas."""
        return radians(self.included_angle / 2)

    @property
    def shares(self) -> tuple[float, ...]:
        """Share of a turn from each lip to the one ahead [-]."""
        if self.spacing is None:
            return (1 / self.flutes,) * self.flutes
        return tuple(angle / 360 for angle in self.spacing)

    @property
    def places(self) -> tuple[float, ...]:
        """How far each lip stands ahead of the first, as a share of a turn [-]."""
        return tuple(sum(self.shares[:lip]) for lip in range(self.flutes))

    @property
    def equally_spaced(self) -> bool:
        """Whether all lips follow each other at the same angle."""
        return max(self.shares) - min(self.shares) < 1e-12

    def in_cut(self, feed: float) -> "Cutter":
        """Leave the lips that cut at a feed, when the first stands proud.

        Parameters
        ----------
        feed : float
            Feed [mm/rev].

        Returns
        -------
        Cutter
            The same cutter without the lips that only follow in the proud lip's
            track, and without runout: runout that leaves a lip in cut changes
            its mean chip but not where chatter starts.

        Raises
        ------
        SeatworkError
            If the feed is not above zero.

        Examples
        --------
        >>> Cutter(flutes=6, included_angle=82.0, runout=0.05).in_cut(0.06).flutes
        1
        """
        checks.quantity(feed, "feed", "mm/rev")
        missed = self.runout / (feed * sin(self.half_angle))
        kept = [place for place in self.places if place == 0 or 1 - place > missed]
        ahead = [b - a for a, b in zip(kept, [*kept[1:], 1.0], strict=True)]
        return Cutter(
            flutes=len(kept),
            included_angle=self.included_angle,
            spacing=None if self.spacing is None and not missed else tuple(360 * a for a in ahead),
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Cut:
    """What the metal does to the lip.

    Parameters
    ----------
    normal_coefficient : float
        Force along the normal of the lip per area of chip [N/m2].
    tangential_coefficient : float
        Force against the cutting motion per area of chip [N/m2].
    mean_diameter : float
        Diameter midway along the lip in cut [mm].
    process_damping : float
        Rubbing of the worn flank, C [N/m]; 0 for an ideally sharp lip.
    friction : float
        Friction of the flank on the work [-].

    Raises
    ------
    SeatworkError
        If a value lies outside its range.

    Notes
    -----
    1 MPa is 1e6 N/m2. `process_damping` is half the indentation constant times
    the wear land squared; see `land_damping`.
    """

    normal_coefficient: float
    tangential_coefficient: float
    mean_diameter: float
    process_damping: float = 0.0
    friction: float = 0.3

    def __post_init__(self) -> None:
        checks.quantity(self.normal_coefficient, "normal coefficient", "N/m2")
        checks.quantity(self.tangential_coefficient, "tangential coefficient", "N/m2")
        checks.length(self.mean_diameter, "mean diameter")
        checks.not_below(self.process_damping, 0, "process damping", "N/m")
        checks.not_below(self.friction, 0, "friction")
