"""The columns of a sheet of readings: lines of the printed sheet, columns of the file."""

from dataclasses import dataclass

from seatwork.inspection.measured import QUANTITIES

PART, FEATURE, UNIT, REMARK = "part", "feature", "unit", "remark"
WITH = " with"
UNITS = {"inch": "in", "metric": "mm"}
WRITTEN = {"answer": "yes or no", "place": "face or hole edge", "signed": "proud or below"}
LENGTHS = ("length", "signed", "height")


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """A line of the printed sheet and a column of the file.

    Parameters
    ----------
    name : str
        Its name, such as ``ball top`` or ``angle with``.
    about : str
        What to write there.
    kind : str
        Kind of its `Quantity`; ``words`` for the others.
    """

    name: str
    about: str
    kind: str = "words"

    def heading(self, system: str | None = None) -> str:
        """Return its name, with the unit of its lengths where there is one system.

        Examples
        --------
        >>> COLUMNS["ball top"].heading("inch"), COLUMNS["touch"].heading("inch")
        ('ball top [in]', 'touch')
        """
        if self.kind not in LENGTHS or system is None:
            return self.name
        return f"{self.name} [{UNITS[system]}]"


def _either(names: tuple[str, ...]) -> str:
    return f"{', '.join(names[:-1])} or {names[-1]}"


def _columns() -> tuple[Column, ...]:
    found = [
        Column(name=PART, about="its mark, such as L07-1, never a name"),
        Column(name=FEATURE, about="feature of the part; may be left out where there is one"),
        Column(name=UNIT, about="in or mm, for lengths of the row that have no unit"),
    ]
    for one in QUANTITIES.values():
        written = WRITTEN.get(one.kind)
        about = f"{one.about}: {written}" if written else one.about
        found.append(Column(name=one.column, about=about, kind=one.kind))
        if one.instruments:
            found.append(Column(name=one.column + WITH, about=_either(one.instruments)))
    return (*found, Column(name=REMARK, about="anything else, not judged"))


COLUMNS = {one.name: one for one in _columns()}
"""Every column that a sheet of readings may have, in the order of the blank."""

MEASURED = tuple(one.name for one in COLUMNS.values() if one.kind in LENGTHS)
"""Columns whose heading may carry a unit."""
