"""Who marks a hand-in: a marker for each way in which its sheet was handed out."""

from collections.abc import Sequence

from sqlalchemy import Connection

from seatwork.marking.marker import Marked, Marker
from seatwork.marking.sheets import Sheet
from seatwork.marking.submissions import Submission
from seatwork.record.deciding import extra_tries
from seatwork.record.formed import Given, pinned_sheets, read_forms


class Takers:
    """The markers of a sheet, one for each way in which it was handed out.

    Parameters
    ----------
    connection : Connection
        To the record.
    plan : Sheet
        The worksheet as it is now.
    key : bytes
        The course key, which tells whether a paper's seal fits.
    """

    def __init__(self, connection: Connection, plan: Sheet, key: bytes) -> None:
        self.plan = plan
        self.given: Given = read_forms(connection, plan.name)
        extra = extra_tries(connection)
        self._markers = {
            pinned: Marker(sheet, self.given.forms, extra, key)
            for pinned, sheet in pinned_sheets(connection, plan).items()
        }
        self._now = Marker(plan, self.given.forms, extra, key)

    def __repr__(self) -> str:
        return f"<Takers of {self.plan.name}>"

    def sheet(self, form: str) -> Sheet:
        """Return the sheet as it was when a form was handed out."""
        return self._markers.get(self.given.pins.get(form, ""), self._now).sheet

    def form(self, one: Submission | Marked) -> str | None:
        """Return the id of the form that a hand-in answers; None if there is none."""
        if one.file is None:
            return None
        return self.given.ids.get((one.file.sheet, one.file.learner, one.file.form))

    def mark(self, one: Submission) -> Marked:
        """Mark one hand-in by the sheet as its form was handed out."""
        form = self.form(one)
        marker = self._markers.get(self.given.pins.get(form or "", ""), self._now)
        return marker.mark([one])[0]


class Judged(Takers):
    """The markers of a sheet whose hand-ins were marked before, in the order they are taken in.

    Parameters
    ----------
    connection : Connection
        To the record.
    plan : Sheet
        The worksheet as it is now.
    key : bytes
        The course key.
    marked : sequence of Marked
        What came of each hand-in.
    """

    def __init__(
        self, connection: Connection, plan: Sheet, key: bytes, marked: Sequence[Marked]
    ) -> None:
        super().__init__(connection, plan, key)
        self._judged = iter(marked)

    def mark(self, one: Submission) -> Marked:
        """Return what came of the next hand-in; it is the one asked for, or a fault of ours."""
        found = next(self._judged)
        assert (found.name, found.file) == (one.name, one.file), "judged in another order"
        return found
