"""What a bench takes, told once by its controls: signature, first values, words of the help."""

from collections.abc import Sequence
from inspect import Parameter, Signature
from textwrap import fill
from typing import Any

from seatwork.benches.build.controls import Control, Pick

COMMON: dict[str, tuple[Any, Any, str, str]] = {
    "system": (
        None,
        str | None,
        '{"inch", "metric"}',
        "Unit system named first; the house rule's if not given.",
    ),
    "palette": (
        None,
        str | None,
        '{"light", "dark", "print"}',
        "Colors; those of the page if not given.",
    ),
    "projector": (False, bool, "bool", "Large type and heavy lines."),
}
"""What every bench takes besides its controls: start, type, and the words of the help."""


def signature(controls: Sequence[Control]) -> Signature:
    """Return the call of a bench: its controls at their start, then what all benches take."""
    taken = [(one.name, one.start, one.takes) for one in controls]
    taken += [(name, start, kind) for name, (start, kind, _, _) in COMMON.items()]
    return Signature([
        Parameter(name, Parameter.KEYWORD_ONLY, default=start, annotation=_annotation(start, kind))
        for name, start, kind in taken
    ])  # fmt: skip


def _annotation(start: Any, kind: Any) -> Any:
    return kind if start is not None else kind | None


def starts(controls: Sequence[Control]) -> dict[str, Any]:
    """Return what the controls begin with; a value that another brings is left out."""
    begin = {one.name: one.first if isinstance(one, Pick) else one.start for one in controls}
    return {name: value for name, value in begin.items() if value is not None}


def documented(text: str, controls: Sequence[Control]) -> str:
    """Return a bench's docstring with a line for every parameter, put before its examples."""
    rows = [(one.name, one.kinds, f"{one.label}{one.allowed}.") for one in controls]
    rows += [(name, kind, about) for name, (_, _, kind, about) in COMMON.items()]
    lines = [f"{name} : {kind}\n{fill(about, 96, initial_indent='    ', subsequent_indent='    ')}"
             for name, kind, about in rows]  # fmt: skip
    head, mark, rest = text.partition("Examples\n--------")
    return f"{head.rstrip()}\n\nParameters\n----------\n" + "\n".join(lines) + f"\n\n{mark}{rest}"
