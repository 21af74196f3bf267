"""One page from the print note to the measured part, for one's own part or a whole class job."""

from seatwork.benches.part.desk import PartDesk


class MyPart(PartDesk):
    """Take one's own print note to a plan, a section, a card, readings and a verdict.

    Called without anything it opens on what was kept in the workbook folder, at first on a
    demonstration; whatever is changed is kept there again. Called with a note it begins with
    that, and keeps it only under a name that is given.

    Parameters
    ----------
    note : str, optional
        The print note.
    material, machine : str, optional
        Names in the shop's lists.
    screw, thickness, edge, engagement, slope : str
        What the print says elsewhere: the screw; lengths such as ``".25 in"``; the slope of a raw
        pad, an angle.
    seats : sequence of dict, optional
        Several notes of one part, each with its ``name`` and any of the words above.
    rules : dict of str to str, optional
        House rules that hold otherwise for this part, as a rule file writes them.
    readings : sequence of dict, optional
        What was measured: ``feature``, ``part``, and ``cells`` by the columns of the blank sheet.
    name : str
        Name of the part.
    keep : str, optional
        What it is kept under in the workbook's ``my_part`` folder: small letters and digits.
    system : {"inch", "metric"}, optional
        Unit system named first; the house rule ``display.system`` if not given.
    palette : {"light", "dark", "print"}, optional
        Colors; the page's if not given.
    projector : bool
        Large type and heavy lines.

    Raises
    ------
    SeatworkError
        If something given is not what it should be. A note that cannot be read or planned says
        so on the page.

    Examples
    --------
    >>> part = MyPart("⌀6.6 THRU ⌴ ⌀11 ↧6.5", material="1018 steel", machine="knee mill")
    >>> [seat.title for seat in part.plan.seats]
    ['counterbore']
    """

    def _ipython_display_(self) -> None:
        from seatwork.benches.part.page import show

        show(self)


my_part = MyPart
