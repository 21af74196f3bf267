"""Drawings of seats: sections, views from above and their text twins."""
