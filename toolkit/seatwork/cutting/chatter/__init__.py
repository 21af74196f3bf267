"""Chatter: where it begins, how it grows, what it leaves on the cone, how it sounds.

What the model is
-----------------
One machine mode under steady cutting by every lip, with the wave left by the
lip ahead (regeneration), a lip that may leave the cut, and rubbing of the worn
flank that grows as the surface speed falls (process damping).

What it backs, with the parameter sets of the tests
---------------------------------------------------
Slow is quiet, because of rubbing; one flute carries more width than six;
positive rake helps the ringing chatter; stiffer helps; unequal spacing helps;
faster is not always worse, there are quiet lobes.

What it does not back
---------------------
A light feed: the linear limit ignores feed (the case for a firm feed is an
argument about thin chips and a loaded flank). Odd better than even: only the
number of lips matters from three on. Always sharper: a fresh lip with too much
relief rubs less. Positive rake against slow whirl: it does not help there.
Brass, bronze, acrylic and thin sheet, where positive rake grabs, are not in it.

Left out: torsion, coupling of axial and lateral motion, unequal stiffness
sideways, wear during the cut, walls of the hole. Stiffness, damping and cutting
coefficients of a bench machine are assumptions until it is tap tested. So every
result is an illustration, not a prediction for your machine.
"""
