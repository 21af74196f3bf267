"""What one inch is: the only place with that number."""

from decimal import Decimal

INCH = 25.4
"""Millimeters in an inch, exactly, by the agreement of 1959."""

EXACT_INCH = Decimal(repr(INCH))
"""The same as a decimal, where what was typed is to stay exact."""
