"""The tables of the term record: one for the heads of facts, one for each kind of fact.

Kind by kind one table, so that any reader of SQLite shows the marks. JSON stands only where
nobody asks inside: drawn sizes, measured values, rules.
"""

from typing import Any

from sqlalchemy import (
    CheckConstraint,
    Column,
    Float,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    String,
    Table,
    Text,
    UniqueConstraint,
)

FORMAT = 1
"""Raised with the layout; a record of a higher one is refused."""
STATES = ("joined", "withdrawn", "excused", "lost", "void", "due", "clear")
CAME = ("screen", "paper", "results")
meta = MetaData()


def _fact() -> Column[Any]:
    return Column("fact", ForeignKey("fact.id", ondelete="CASCADE"), primary_key=True)


def _one_of(column: str, words: tuple[str, ...]) -> CheckConstraint:
    listed = ", ".join(f"'{word}'" for word in words)
    return CheckConstraint(f"{column} IN ({listed})")


def _reasoned() -> CheckConstraint:
    return CheckConstraint("length(trim(reason)) >= 3")


about = Table(
    "about",
    meta,
    Column("name", String(20), primary_key=True),
    Column("value", Text, nullable=False),
)
fact = Table(
    "fact",
    meta,
    Column("id", String(32), primary_key=True),
    Column("kind", String(12), nullable=False),
    Column("subject", String(120), nullable=False),  # what a chain of facts is about
    Column("learner", String(7)),  # none: about no single learner
    Column("day", String(10), nullable=False),  # an argument, never the clock
    Column("author", String(7), nullable=False),  # an instructor's code, such as I1
    Column("follows", String(32)),  # the fact that this one stands in place of
    Column("seal", String(32), nullable=False),  # keyed hash of the id
    CheckConstraint("length(id) = 32 AND length(seal) = 32"),
    CheckConstraint("day LIKE '____-__-__'"),
    Index("fact_subject", "kind", "subject"),
    Index("fact_learner", "learner"),
)
# a sheet as it was when it was handed out: one that is edited later changes no old mark
sheet = Table(
    "sheet",
    meta,
    _fact(),
    Column("name", String(40), nullable=False),
    Column("title", Text, nullable=False),
    Column("pass_mark", Float, nullable=False),
    Column("rules", Text, nullable=False),
    CheckConstraint("pass_mark BETWEEN 0 AND 1"),
)
question = Table(
    "question",
    meta,
    Column("sheet", ForeignKey("sheet.fact", ondelete="CASCADE"), primary_key=True),
    Column("id", String(11), primary_key=True),
    Column("place", Integer, nullable=False),
    Column("type", String(40), nullable=False),
    Column("version", Integer, nullable=False),
    Column("points", Float, nullable=False),
    Column("codes", Text, nullable=False),
    CheckConstraint("points > 0"),
    UniqueConstraint("sheet", "id", "points"),
)
form = Table(
    "form",
    meta,
    _fact(),
    Column("sheet", ForeignKey("sheet.fact"), nullable=False),
    Column("sitting", Integer, nullable=False),
    Column("number", Integer, nullable=False),
    Column("mode", String(8), nullable=False),
    Column("drawn", Text, nullable=False),
    CheckConstraint("sitting BETWEEN 1 AND 99 AND number BETWEEN 1 AND 99"),
)
# an answer file, written as this program writes it: the same answers are the same bytes
paper = Table(
    "paper",
    meta,
    _fact(),
    Column("form", ForeignKey("form.fact"), nullable=False, index=True),
    Column("content", LargeBinary, nullable=False),
    Column("digest", String(64), nullable=False),
    Column("came", String(8), nullable=False),
    _one_of("came", CAME),
)
mark = Table(
    "mark",
    meta,
    _fact(),
    Column("paper", ForeignKey("paper.fact"), nullable=False, index=True),
    Column("points", Float),
    Column("of", Float, nullable=False),
    Column("doubt", Text, nullable=False),
    Column("ask", Text, nullable=False),
    Column("program", String(20), nullable=False),
    CheckConstraint('points IS NULL OR points BETWEEN 0 AND "of"'),
)
answer = Table(
    "answer",
    meta,
    Column("mark", ForeignKey("mark.fact", ondelete="CASCADE"), primary_key=True),
    Column("question", String(11), primary_key=True),
    Column("points", Float),
    Column("of", Float, nullable=False),
    Column("verdicts", Text, nullable=False),
    Column("slips", Text, nullable=False),
    Column("doubt", Text, nullable=False),
    CheckConstraint('points IS NULL OR points BETWEEN 0 AND "of"'),
)
# bounded by the database too: `of` must be what the question of that sheet is worth
override = Table(
    "override",
    meta,
    _fact(),
    Column("form", ForeignKey("form.fact"), nullable=False),
    Column("sheet", String(32), nullable=False),
    Column("question", String(11), nullable=False),
    Column("of", Float, nullable=False),
    Column("points", Float, nullable=False),
    Column("reason", Text, nullable=False),
    ForeignKeyConstraint(
        ["sheet", "question", "of"], ["question.sheet", "question.id", "question.points"]
    ),
    CheckConstraint('points BETWEEN 0 AND "of"'),
    _reasoned(),
)
# which of several papers of a form counts
choice = Table(
    "choice",
    meta,
    _fact(),
    Column("paper", ForeignKey("paper.fact"), nullable=False),
    Column("reason", Text, nullable=False),
    _reasoned(),
)
# what came and cannot be marked: it waits for a person
pile = Table(
    "pile",
    meta,
    _fact(),
    Column("sheet", String(40), nullable=False),
    Column("name", String(60), nullable=False),
    Column("digest", String(64), nullable=False),
    Column("content", LargeBinary),  # none where it is no answer file
    Column("doubt", Text, nullable=False),
)
# what a person says of a learner in the course, of one of their sittings, of a sheet's day
state = Table(
    "state",
    meta,
    _fact(),
    Column("word", String(10), nullable=False),
    Column("value", Text),
    Column("reason", Text, nullable=False),
    _one_of("word", STATES),
)
# practical: a part as inspected
part = Table(
    "part",
    meta,
    _fact(),
    Column("part", String(60), nullable=False),
    Column("feature", String(120), nullable=False),
    Column("codes", Text, nullable=False),
    Column("verdict", String(40), nullable=False),
    Column("values", Text, nullable=False),
    Column("looked_at", Text, nullable=False),
)
# safety: a copy of what stands signed on paper, never worked out
sign_off = Table(
    "sign_off",
    meta,
    _fact(),
    Column("machine", String(60), nullable=False),
    Column("word", String(9), nullable=False),
    Column("paper_at", Text, nullable=False),
    _one_of("word", ("signed", "withdrawn")),
    CheckConstraint("length(trim(paper_at)) >= 3"),
)
undo = Table(
    "undo",
    meta,
    _fact(),
    Column("target", String(32), nullable=False, index=True),
    Column("reason", Text, nullable=False),
    _reasoned(),
)
erased = Table(
    "erased",
    meta,
    Column("who", String(64), primary_key=True),
    Column("day", String(10), nullable=False),
)

KINDS: dict[str, Table] = {
    table.name: table
    for table in (
        sheet, form, paper, mark, override, choice, pile, state, part, sign_off, undo
    )
}  # fmt: skip
"""Table of each kind of fact, those before that others refer to."""
ROWS: dict[str, tuple[Table, str]] = {"sheet": (question, "sheet"), "mark": (answer, "mark")}
"""Kinds of facts that have rows of their own, and the column that names the fact."""
ORDER: tuple[Table, ...] = (fact, sheet, question, form, paper, mark, answer, *(
    table for name, table in KINDS.items() if name not in ("sheet", "form", "paper", "mark")
))  # fmt: skip
"""The tables in the order in which rows go in."""
WORKED_OUT = frozenset({"sheet", "form", "paper", "mark", "pile"})
"""Kinds that the program works out: day and author are no part of what they say."""
