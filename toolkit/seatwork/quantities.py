"""A length and an angle that know what they are, and what one inch is: the only place for it."""

from decimal import Decimal

INCH = 25.4
"""Millimeters in an inch, exactly, by the agreement of 1959."""

EXACT_INCH = Decimal(repr(INCH))
"""The same as a decimal, where what was typed is to stay exact."""


class Length(float):
    """A length [mm] inside an error, so that it can be shown in the reader's units."""

    def __str__(self) -> str:
        return f"{float(f'{float(self):.4g}'):g} mm"


class Angle(float):
    """An angle [deg] inside an error."""

    def __str__(self) -> str:
        return f"{float(self):.4g}°"
