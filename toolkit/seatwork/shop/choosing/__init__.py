"""Choosing for a cut: which cutter, which feed, which spindle step, each with its reason."""
