"""Points and rows of numbers as plain lists: what the scenes ask of numpy, where there is none.

Numbers, rows of numbers (n,) and tables of numbers (n, m) are all there is. What the scenes do
not ask for is not here, and asking for it fails.
"""

import math
from collections.abc import Callable, Iterable, Iterator, Sequence
from operator import add, and_, eq, ge, gt, le, lt, mul, ne, sub, truediv
from typing import Any

pi, inf, nan = math.pi, math.inf, math.nan
float64 = float
Row = list[Any]


class Array:
    """A row of numbers, or a table of rows.

    Parameters
    ----------
    rows : list
        Numbers, or lists of numbers of one length; kept, not copied.
    """

    __slots__ = ("rows",)

    def __init__(self, rows: Row) -> None:
        self.rows = rows

    @property
    def flat(self) -> bool:
        """Whether it is one row of numbers."""
        return not self.rows or not isinstance(self.rows[0], list)

    @property
    def shape(self) -> tuple[int, ...]:
        """How many numbers, or rows and columns."""
        return (len(self.rows),) if self.flat else (len(self.rows), len(self.rows[0]))

    @property
    def T(self) -> "Array":  # noqa: N802, numpy's name
        """Columns as rows."""
        return (
            self if self.flat else Array([list(column) for column in zip(*self.rows, strict=True)])
        )

    def tolist(self) -> Row:
        """Return it as lists."""
        return list(self.rows) if self.flat else [list(row) for row in self.rows]

    def reshape(self, rows: int, columns: int) -> "Array":
        """Return a table as it is; only an empty one has no columns yet."""
        assert rows == -1
        assert not self.rows or self.shape[1:] == (columns,)
        return self

    def mean(self, axis: int) -> "Array":
        """Return the mean of every column."""
        assert axis == 0
        return Array([sum(column) / len(column) for column in zip(*self.rows, strict=True)])

    def min(self) -> Any:
        """Return the least number."""
        return min(_numbers(self))

    def max(self) -> Any:
        """Return the greatest number."""
        return max(_numbers(self))

    def all(self) -> bool:
        """Tell whether all are true."""
        return all(_numbers(self))

    def any(self) -> bool:
        """Tell whether any is true."""
        return any(_numbers(self))

    def __len__(self) -> int:
        return len(self.rows)

    def __iter__(self) -> Iterator[Any]:
        return iter(self.rows) if self.flat else map(Array, self.rows)

    def __getitem__(self, key: Any) -> Any:
        if isinstance(key, tuple):
            return self._cell(*key)
        if isinstance(key, Array):
            return Array([row for row, kept in zip(self.rows, key.rows, strict=True) if kept])
        found = self.rows[key]
        return Array(found) if isinstance(found, list) else found

    def _cell(self, row: Any, column: Any) -> Any:
        """Return a number, a column, a row's part, or a table's part."""
        if column is None:
            return Array([[number] for number in self.rows[row]])
        if isinstance(row, slice):
            found = [one[column] for one in self.rows[row]]
            return Array(found)
        found = self.rows[row][column]
        return Array(found) if isinstance(found, list) else found

    def __add__(self, other: Any) -> "Array":
        return _each(add, self, other)

    def __radd__(self, other: Any) -> "Array":
        return _each(add, other, self)

    def __sub__(self, other: Any) -> "Array":
        return _each(sub, self, other)

    def __rsub__(self, other: Any) -> "Array":
        return _each(sub, other, self)

    def __mul__(self, other: Any) -> "Array":
        return _each(mul, self, other)

    def __rmul__(self, other: Any) -> "Array":
        return _each(mul, other, self)

    def __truediv__(self, other: Any) -> "Array":
        return _each(truediv, self, other)

    def __rtruediv__(self, other: Any) -> "Array":
        return _each(truediv, other, self)

    def __neg__(self) -> "Array":
        return _each(mul, self, -1.0)

    def __and__(self, other: Any) -> "Array":
        return _each(and_, self, other)

    def __le__(self, other: Any) -> "Array":
        return _each(le, self, other)

    def __lt__(self, other: Any) -> "Array":
        return _each(lt, self, other)

    def __ge__(self, other: Any) -> "Array":
        return _each(ge, self, other)

    def __gt__(self, other: Any) -> "Array":
        return _each(gt, self, other)

    def __eq__(self, other: object) -> Any:
        return _each(eq, self, other)

    def __ne__(self, other: object) -> Any:
        return _each(ne, self, other)

    __hash__ = None  # type: ignore[assignment]

    def __matmul__(self, other: "Array") -> Any:
        return sum(map(mul, self.rows, other.rows))


def _rows(given: Any) -> Any:
    """Return numbers as lists, or the number given."""
    if isinstance(given, Array):
        return given.rows
    if isinstance(given, list | tuple):
        return [_rows(one) for one in given]
    return given


def _numbers(given: Array) -> list[Any]:
    return given.rows if given.flat else [number for row in given.rows for number in row]


def _each(deed: Callable[[Any, Any], Any], one: Any, other: Any) -> "Array":
    """Do a deed to each pair; what is smaller is used again, as numpy does."""
    return Array(_paired(deed, _rows(one), _rows(other)))


def _paired(deed: Callable[[Any, Any], Any], one: Any, other: Any) -> Any:
    if not isinstance(other, list):
        return _with(one, lambda number: deed(number, other))
    if not isinstance(one, list):
        return _with(other, lambda number: deed(one, number))
    tables = [bool(side) and isinstance(side[0], list) for side in (one, other)]
    if tables == [False, False]:
        return _row(deed, one, other)
    if tables == [True, False]:
        return [_row(deed, row, other) for row in one]
    if tables == [False, True]:
        return [_row(deed, one, row) for row in other]
    if len(other) == 1 != len(one):
        other = other * len(one)
    return [_row(deed, row, by) for row, by in zip(one, other, strict=True)]


def _row(deed: Callable[[Any, Any], Any], one: Row, other: Row) -> Row:
    """Do a deed to each pair of two rows; a row of one number is used again."""
    if len(one) == len(other):
        return list(map(deed, one, other))
    if len(other) == 1:
        return [deed(number, other[0]) for number in one]
    assert len(one) == 1
    return [deed(one[0], number) for number in other]


def _with(given: Any, deed: Callable[[Any], Any]) -> Any:
    """Do a deed to each number of a row or a table, or to the one number given."""
    if not isinstance(given, list):
        return deed(given)
    if given and isinstance(given[0], list):
        return [[deed(number) for number in row] for row in given]
    return [deed(number) for number in given]


def _of(deed: Callable[[float], float]) -> Callable[[Any], Any]:
    """Return a function of one number as one of numbers, rows and tables."""

    def done(given: Any) -> Any:
        rows = _rows(given)
        found = _with(rows, deed)
        return Array(found) if isinstance(found, list) else found

    return done


sin, cos, radians, sqrt = map(_of, (math.sin, math.cos, math.radians, math.sqrt))
isfinite, isnan = map(_of, (math.isfinite, math.isnan))
log = _of(math.log)
abs = _of(abs)


def hypot(one: Any, other: Any) -> Any:
    """Return the length of each pair of legs."""
    if isinstance(one, Array):
        return _each(math.hypot, one, other)
    return math.hypot(one, other)


def array(given: Any, dtype: Any = None) -> Any:
    """Return numbers as an array of its own; a number alone stays a number."""
    del dtype
    rows = _rows(given if isinstance(given, Array | list | tuple) else _listed(given))
    if not isinstance(rows, list):
        return rows
    return Array([list(row) for row in rows] if rows and isinstance(rows[0], list) else list(rows))


def _listed(given: Any) -> Any:
    return list(given) if isinstance(given, Iterable) else given


def asarray(given: Any, dtype: Any = None) -> Any:
    """Return an array as it is, anything else as `array` does."""
    return given if isinstance(given, Array) else array(given, dtype)


def subtract(one: Any, other: Any, dtype: Any = None) -> Array:
    """Return the difference of two rows."""
    del dtype
    return _each(sub, one, other)


def full(shape: int | tuple[int, int], value: float) -> Array:
    """Return a row, or a table, of one number."""
    if isinstance(shape, int):
        return Array([value] * shape)
    rows, columns = shape
    return Array([[value] * columns for _ in range(rows)])


def ones(count: int) -> Array:
    """Return a row of ones."""
    return full(count, 1.0)


def zeros(shape: int | tuple[int, int]) -> Array:
    """Return a row, or a table, of zeros."""
    return full(shape, 0.0)


def full_like(like: Array, value: float) -> Array:
    """Return an array of one number, as large as another."""
    return Array(_with(like.rows, lambda _: value))


def zeros_like(like: Array) -> Array:
    """Return an array of zeros, as large as another."""
    return full_like(like, 0.0)


def concatenate(pieces: Iterable[Any]) -> Array:
    """Return rows one after the other."""
    return Array([row for piece in pieces for row in _rows(piece)])


def vstack(pieces: Iterable[Any]) -> Array:
    """Return rows, or tables of them, one below the other."""
    lists = [_rows(piece) for piece in pieces]
    return Array([row for one in lists for row in (one if isinstance(one[0], list) else [one])])


def column_stack(columns: Sequence[Any]) -> Array:
    """Return columns side by side; a number stands in each row."""
    lists = [_rows(column) for column in columns]
    return Array([list(row) for row in zip(*lists, strict=True)])


def transpose(given: Any) -> Array:
    """Return columns as rows."""
    return Array(_rows(given)).T


def diff(given: Array, axis: int = 0) -> Array:
    """Return each row less the one before."""
    assert axis == 0
    return _each(sub, given.rows[1:], given.rows[:-1])


def linspace(start: float, stop: float, num: int) -> Array:
    """Return numbers evenly apart, both ends among them."""
    step = (stop - start) / (num - 1)
    return Array([*(number * step + start for number in range(num - 1)), stop])


def geomspace(start: float, stop: float, num: int) -> Array:
    """Return numbers evenly apart by their logarithm, both ends among them."""
    powers = linspace(math.log10(start), math.log10(stop), num)
    return Array([start, *(10.0**power for power in powers.rows[1:-1]), stop])


def arange(start: float, stop: float, step: float) -> Array:
    """Return numbers a step apart, the end not among them."""
    count = max(0, math.ceil((stop - start) / step))
    return Array([start + number * step for number in range(count)])


def maximum(one: Any, other: Any) -> Array:
    """Return the greater of each pair."""
    return _each(max, one, other)


def clip(given: Any, low: float, high: float) -> Any:
    """Return each number, no less than the one and no more than the other."""
    return _of(lambda number: number if number != number else min(max(number, low), high))(given)


def where(choose: Array, one: Any, other: Any) -> Array:
    """Return the one where it is true, else the other."""
    firsts = one.rows if isinstance(one, Array) else [one] * len(choose)
    seconds = other.rows if isinstance(other, Array) else [other] * len(choose)
    chosen = zip(choose.rows, firsts, seconds, strict=True)
    return Array([first if yes else second for yes, first, second in chosen])
