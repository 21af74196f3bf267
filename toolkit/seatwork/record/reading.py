"""Reading the record's tables, all of them or those of one sheet."""

from collections import defaultdict
from dataclasses import dataclass, field
from typing import Any

from sqlalchemy import Connection, Select, select

from seatwork.record.standing import Head, Standing
from seatwork.record.tables import (
    answer,
    choice,
    form,
    mark,
    override,
    paper,
    part,
    pile,
    question,
    sheet,
    sign_off,
    state,
)

Kept = Any
"""A row of the table of a kind."""


@dataclass(slots=True)
class Contents:
    """The rows of a record by the id of their fact, and which of them belong together.

    Parameters
    ----------
    standing : Standing
        The heads of all facts.
    sheets, forms, papers, marks, overrides, choices, piles, states, parts, sign_offs : dict
        Rows by the id of their fact.
    answers : dict
        Of each mark, its answers by question.
    codes : dict
        Codes of the outline by sheet and question.
    papers_of, overrides_of : dict
        Of each form, the heads of its papers and overrides that stand.
    """

    standing: Standing
    sheets: dict[str, Kept] = field(default_factory=dict)
    forms: dict[str, Kept] = field(default_factory=dict)
    papers: dict[str, Kept] = field(default_factory=dict)
    marks: dict[str, Kept] = field(default_factory=dict)
    overrides: dict[str, Kept] = field(default_factory=dict)
    choices: dict[str, Kept] = field(default_factory=dict)
    piles: dict[str, Kept] = field(default_factory=dict)
    states: dict[str, Kept] = field(default_factory=dict)
    parts: dict[str, Kept] = field(default_factory=dict)
    sign_offs: dict[str, Kept] = field(default_factory=dict)
    answers: defaultdict[str, dict[str, Kept]] = field(default_factory=lambda: defaultdict(dict))
    codes: dict[tuple[str, str], list[str]] = field(default_factory=dict)
    papers_of: defaultdict[str, list[Head]] = field(default_factory=lambda: defaultdict(list))
    overrides_of: defaultdict[str, list[Head]] = field(default_factory=lambda: defaultdict(list))

    def __repr__(self) -> str:
        return f"<Contents: {len(self.forms)} forms, {len(self.papers)} papers>"


def read(connection: Connection, only: str | None = None, *, contents: bool = False) -> Contents:
    """Read a record.

    Parameters
    ----------
    connection : Connection
        To the record.
    only : str, optional
        Name of a sheet: its forms, papers, marks and overrides alone.
    contents : bool
        Whether to read what the papers say, too.
    """
    found = Contents(Standing(connection))
    paper_columns = [paper.c.fact, paper.c.form, paper.c.digest, paper.c.came]
    if contents:
        paper_columns.append(paper.c.content)
    queries: dict[str, Select[Any]] = {
        "sheets": select(sheet),
        "forms": select(form.c.fact, form.c.sheet, form.c.sitting, form.c.number, form.c.mode),
        "papers": select(*paper_columns),
        "marks": select(mark),
        "overrides": select(override),
    }
    for name, query in queries.items():
        narrowed = _of_sheet(query, name, only)
        getattr(found, name).update({row.fact: row for row in connection.execute(narrowed)})
    for row in connection.execute(_of_sheet(select(answer), "answers", only)):
        found.answers[row.mark][row.question] = row
    asked = select(question.c.sheet, question.c.id, question.c.codes)
    for row in connection.execute(asked.order_by(question.c.sheet, question.c.place)):
        found.codes[row.sheet, row.id] = row.codes.split()
    plain = {
        "choices": choice,
        "piles": pile,
        "states": state,
        "parts": part,
        "sign_offs": sign_off,
    }
    for name, table in plain.items():
        rows = connection.execute(select(table))
        getattr(found, name).update({row.fact: row for row in rows})
    _put_together(found)
    return found


def _of_sheet(query: Select[Any], name: str, only: str | None) -> Select[Any]:
    """Narrow a question to the rows of one sheet."""
    if only is None:
        return query
    if name == "answers":
        query = query.join(mark, mark.c.fact == answer.c.mark)
    if name in ("answers", "marks"):
        query = query.join(paper, paper.c.fact == mark.c.paper)
    if name in ("answers", "marks", "papers"):
        query = query.join(form, form.c.fact == paper.c.form)
    if name == "overrides":
        query = query.join(form, form.c.fact == override.c.form)
    if name != "sheets":
        query = query.join(sheet, sheet.c.fact == form.c.sheet)
    return query.where(sheet.c.name == only)


def _put_together(found: Contents) -> None:
    heads = found.standing
    for row in heads.of("paper"):
        if row.id in found.papers:
            found.papers_of[found.papers[row.id].form].append(row)
    for row in heads.of("override"):
        if row.id in found.overrides:
            found.overrides_of[found.overrides[row.id].form].append(row)
