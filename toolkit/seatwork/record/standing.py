"""What stands: no standing undo names it; and which fact of a chain is the last that stands."""

from collections import defaultdict
from collections.abc import Iterable
from typing import Any

from sqlalchemy import Connection, select

from seatwork.record.tables import fact, undo

Head = Any
"""A row of the table of facts."""


class Standing:
    """The heads of facts, and which of them stand.

    No clock decides: a fact names the one it follows. Two heads of one chain mean that two
    instructors said different things, and a person decides.

    Parameters
    ----------
    connection : Connection
        To the record.
    subjects : iterable of str, optional
        Only facts about these, and the undos of them; all if not given.
    kind : str, optional
        Only facts of this kind; all if not given.
    """

    def __init__(
        self,
        connection: Connection,
        subjects: Iterable[str] | None = None,
        *,
        kind: str | None = None,
    ) -> None:
        self._undone_by: defaultdict[str, list[str]] = defaultdict(list)
        for row in connection.execute(select(undo.c.fact, undo.c.target)):
            self._undone_by[row.target].append(row.fact)
        query = select(fact)
        if subjects is not None:
            query = query.where(fact.c.subject.in_(list(subjects)))
        if kind is not None:
            query = query.where(fact.c.kind == kind)
        self.all: dict[str, Head] = {row.id: row for row in connection.execute(query)}
        self._followers: defaultdict[str, list[str]] = defaultdict(list)
        self._by: defaultdict[tuple[str, str], list[str]] = defaultdict(list)
        for row in self.all.values():
            if row.follows:
                self._followers[row.follows].append(row.id)
            self._by[row.kind, row.subject].append(row.id)

    def __repr__(self) -> str:
        return f"<Standing: {len(self.all)} facts>"

    def stands(self, found: str) -> bool:
        """Whether no undo of a fact stands."""
        return not any(self.stands(one) for one in self._undone_by.get(found, ()))

    def heads(self, kind: str, subject: str) -> list[str]:
        """Return the facts that stand and that no standing fact follows, however far behind."""
        return [
            one
            for one in self._by.get((kind, subject), ())
            if self.stands(one) and not self._is_followed(one)
        ]

    def head(self, kind: str, subject: str) -> str | None:
        """Return the one head of a chain; None if there is none, or there are several."""
        found = self.heads(kind, subject)
        return found[0] if len(found) == 1 else None

    def last(self, kind: str, subject: str) -> str | None:
        """Return what a new fact of a chain is to follow: the first of its heads by id, or none.

        Of two heads one is followed; the other is still there, and is followed next.
        """
        return min(self.heads(kind, subject), default=None)

    def chain(self, kind: str, subject: str) -> list[str]:
        """Return the standing facts of a chain, in the order in which they follow."""
        standing = [one for one in self._by.get((kind, subject), ()) if self.stands(one)]
        return sorted(standing, key=lambda one: (self._depth(one), one))

    def of(self, kind: str) -> list[Head]:
        """Return all facts of a kind that stand."""
        return [row for row in self.all.values() if row.kind == kind and self.stands(row.id)]

    def about(self, learner: str) -> list[Head]:
        """Return all facts about a learner, undone ones too, those before that others follow."""
        own = [row for row in self.all.values() if row.learner == learner]
        return sorted(own, key=lambda row: (row.day, row.subject, self._depth(row.id), row.id))

    def _is_followed(self, found: str) -> bool:
        """Whether a standing fact follows one, also by way of facts that were undone."""
        return any(
            self.stands(one) or self._is_followed(one) for one in self._followers.get(found, ())
        )

    def _depth(self, found: str | None) -> int:
        depth = 0
        while found in self.all:
            found, depth = self.all[found].follows, depth + 1
        return depth
