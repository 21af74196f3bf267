"""Any scene, live in a page: the contract between a scene, the kernel and the page.

1. *Scene* (``drawings.scene.Scene``): ``draw()`` once; ``move(part)`` sets data of artists marked
   animated and nothing else: no new artist, limit, width, dash, hatch, font or order. What
   ``move(a)`` shows after ``draw(b)`` equals ``draw(a)`` to the pixel. ``ghosts`` names outlines
   that may stay for comparison.
2. *Text twin*: ``Drawing.text`` has every number of the picture. It is the label, the alternative
   text, the print, and what notebooks are compared by.
3. *Two outputs* per cell, in this order: the live view (the widget alone, ``role="img"``, its label
   the text, no text/plain), then the still (a Markdown image with its text) under a display id of
   its own. The still is hidden while the live view lives and renewed on settle, when nothing has
   moved for 300 ms; it is what a reopened, printed or exported page shows.
4. *Wire*: a picture travels once, as state; a move is one message of changed attributes, under
   2.5 kB in the median. A page asks one question at a time and keeps only the latest of what waits;
   every question is answered, a refused one with a sentence.
5. *Dark and scale* are facts of the page; the kernel redraws at most once for each.
6. *Cells*: running a cell again closes what it showed before (``slots``); closing lets go of every
   model.
7. *Server part* (``live.server``): only in the server that ``seatwork open`` starts; it switches
   the send delay off and drops live views at save. Without it everything works, a drag makes about
   20 updates a second, and the server's log says so.
8. *Order* on settle and answer: picture, readouts and row values in one message; a page that joins
   late is told the state of the moment.
"""

from seatwork.doors import doors

NAMES = {"picture": "LivePicture", "view": "LiveView"}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
