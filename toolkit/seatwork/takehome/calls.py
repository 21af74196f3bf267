"""Which bench a cell calls: read from its text, never run."""

import ast
from dataclasses import dataclass
from typing import Any

from seatwork import benches
from seatwork.benches.build.setup import Setup
from seatwork.rows import short

PLAIN = (str, int, float, bool, type(None))
BENCHES = ("benches", "sw.benches", "seatwork.benches")
"""How a lesson names the room of benches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class BenchCall:
    """A bench that a cell shows, with what it is given.

    Parameters
    ----------
    name : str
        Name of the bench.
    values : dict
        What is given by name: texts, numbers, true or false.
    """

    name: str
    values: dict[str, Any]

    def __repr__(self) -> str:
        given = ", ".join(f"{name}={value!r}" for name, value in self.values.items())
        return f"<BenchCall {self.name}({short(given, 80)})>"

    def bench(self) -> Setup[Any]:
        """Make the bench.

        Raises
        ------
        SeatworkError
            If a value cannot be read, or the values do not go together.
        """
        made: Setup[Any] = getattr(benches, self.name)(**self.values)
        return made


def bench_call(source: str) -> BenchCall | None:
    """Return the bench that the last line of a cell calls; None if it does more than that.

    Parameters
    ----------
    source : str
        The text of a cell; it is parsed and never run.

    Returns
    -------
    BenchCall or None
        Only where every argument has a name and is a plain text, number, true or false.

    Examples
    --------
    >>> bench_call('sw.benches.angles(cutter_angle=90)')
    <BenchCall angles(cutter_angle=90)>
    >>> bench_call("sw.benches.angles(cutter_angle=my_angle)")
    """
    try:
        lines = ast.parse(source).body
    except (SyntaxError, ValueError, RecursionError, MemoryError):
        return None
    if not lines or not isinstance(lines[-1], ast.Expr) or not all(map(_is_import, lines[:-1])):
        return None
    call = lines[-1].value
    if not isinstance(call, ast.Call) or call.args or not isinstance(call.func, ast.Attribute):
        return None
    if ast.unparse(call.func.value) not in BENCHES or not _is_bench(call.func.attr):
        return None
    values: dict[str, Any] = {}
    for word in call.keywords:
        if word.arg is None or not _is_plain(word.value):
            return None
        values[word.arg] = ast.literal_eval(word.value)
    return BenchCall(name=call.func.attr, values=values)


def _is_import(line: ast.stmt) -> bool:
    return isinstance(line, ast.Import | ast.ImportFrom)


def _is_bench(name: str) -> bool:
    """Tell whether a name is a bench of one picture, as all but the whole part are."""
    found = getattr(benches, name, None) if name in benches.__all__ else None
    return isinstance(found, type) and issubclass(found, Setup)


def _is_plain(node: ast.expr) -> bool:
    """Tell whether an argument is written out: a text, a number, perhaps with a minus."""
    if isinstance(node, ast.UnaryOp) and isinstance(node.op, ast.USub):
        node = node.operand
    return isinstance(node, ast.Constant) and isinstance(node.value, PLAIN)
