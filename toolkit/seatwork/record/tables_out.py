"""The marks of a sheet as CSV and XLSX: written from the record, whole, each time."""

import io
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from sqlalchemy import select

from seatwork import files
from seatwork.marking.results import Data
from seatwork.record.keeping import Record
from seatwork.record.paper_results import HEADS, mark_rows, results
from seatwork.record.tables import form, paper, sheet

WIDTHS = (24, 9, 14, 6, 8, 6, 9, 16, 60)
"""Widths of the columns of the spreadsheet [letters]."""


def marks_place(folder: Path, name: str) -> Path:
    """Return where the marks of a sheet are written."""
    return folder / f"{name}-marks.csv"


def write_marks(record: Record, folder: Path, name: str, day: str) -> Data:
    """Write the marks of a sheet as CSV and XLSX, whole, and return them.

    The lock of the folder is held from reading to writing, so that of two commands the later
    reader is the later writer.

    Parameters
    ----------
    record : Record
        The term record.
    folder : Path
        The instructor's folder.
    name : str
        Name of the sheet.
    day : str
        Year-month-day.
    """
    with files.lock(folder, wait=20):
        found = results(record, name, day)
        rows = mark_rows(found)
        place = marks_place(folder, name)
        files.write_table(place, HEADS, rows, mode=files.PRIVATE, backup=True)
        book = spreadsheet(name, HEADS, rows, WIDTHS)
        files.write(place.with_suffix(".xlsx"), book, mode=files.PRIVATE)
    return found


def write_all_marks(record: Record, folder: Path, day: str) -> list[str]:
    """Write the marks of every sheet that was marked; return the names of the sheets."""
    with record.reading() as connection:
        marked = (
            select(sheet.c.name)
            .join(form, form.c.sheet == sheet.c.fact)
            .join(paper, paper.c.form == form.c.fact)
        )
        names = sorted(set(connection.execute(marked).scalars()))
    for name in names:
        write_marks(record, folder, name, day)
    return names


def spreadsheet(
    title: str, heads: Sequence[str], rows: Sequence[Sequence[Any]], widths: Sequence[int]
) -> bytes:
    """Return a table as an XLSX file: text stays text, headings stay in sight.

    Parameters
    ----------
    title : str
        Name of its sheet.
    heads : sequence of str
        The headings.
    rows : sequence of sequence
        Texts and numbers; None for an empty cell.
    widths : sequence of int
        Widths of the columns [letters].
    """
    import xlsxwriter  # a fifth of a second, and only what writes a spreadsheet needs it

    out = io.BytesIO()
    settings = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False}
    with xlsxwriter.Workbook(out, settings) as book:
        page, bold = book.add_worksheet(title[:31]), book.add_format({"bold": True})
        page.freeze_panes(1, 2)
        page.set_landscape()
        page.fit_to_pages(1, 0)
        page.repeat_rows(0)
        page.write_row(0, 0, heads, bold)
        for column, width in enumerate(widths):
            page.set_column(column, column, width)
        for number, row in enumerate(rows, 1):
            for column, value in enumerate(row):
                if isinstance(value, str):
                    page.write_string(number, column, value)
                elif value is not None:
                    page.write_number(number, column, value)
    return out.getvalue()
