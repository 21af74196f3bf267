"""How finely crossings are looked for, with arrays or without."""

POINTS_PER_TURN = 24
PER_RESONANCE = 240
POLISH = 9
VERTICES = 3
BELOW = 0.95
"""Where an axial band begins, in shares of the natural frequency [-]."""
