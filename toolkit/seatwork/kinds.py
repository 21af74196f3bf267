"""Whether a value is of the kind that a signature asks for, and that kind in words."""

import collections.abc as abc
import inspect
import types
import typing
from collections.abc import Callable
from math import isfinite
from pathlib import Path
from typing import Any

LARGEST = 1e18
"""Numbers above it are no size, speed, force or count of a shop."""

LONGEST = 100_000
"""Letters of a text above which nobody typed it."""

WORDS: dict[Any, str] = {
    float: "a number within reason",
    int: "a whole number within reason",
    bool: "True or False",
    str: "text that can be printed",
    Path: "a path",
}


def misfit(
    function: Callable[..., Any], given: tuple[Any, ...], named: dict[str, Any]
) -> tuple[Any, str, str] | None:
    """Find the first argument that is not of its kind.

    Returns
    -------
    tuple or None
        The value, the fault and what would do; None where every argument fits, or where the
        call itself has too many or too few.
    """
    try:
        bound = inspect.signature(function).bind(*given, **named).arguments
    except TypeError:
        return None
    hints = hints_of(function)
    for name, value in bound.items():
        hint = hints.get(name, Any)
        if not fits(value, hint) and not _all_fit(function, name, value, hint):
            kind = words(hint)
            return value, f"the {name.replace('_', ' ')} is not {kind}", f"give {kind}"
    return None


def _all_fit(function: Callable[..., Any], name: str, value: Any, hint: Any) -> bool:
    """Tell whether every value of a starred parameter fits."""
    kind = inspect.signature(function).parameters[name].kind
    return kind is inspect.Parameter.VAR_POSITIONAL and all(fits(one, hint) for one in value)


def hints_of(function: Callable[..., Any]) -> dict[str, Any]:
    """Return what a function's parameters are; one whose kind is not loaded may be anything."""
    try:
        return typing.get_type_hints(function)
    except NameError:
        raw = function.__annotations__
        return {name: hint for name, hint in raw.items() if not isinstance(hint, str)}


def fits(value: Any, hint: Any) -> bool:
    """Tell whether `value` is of the kind `hint`."""
    origin, inner = typing.get_origin(hint), typing.get_args(hint)
    if hint is None or hint is type(None):
        return value is None
    if hint in SIMPLE:
        return SIMPLE[hint](value)
    if origin in (typing.Union, types.UnionType):
        return any(fits(value, one) for one in inner)
    if origin is typing.Literal:
        return isinstance(value, str | int) and value in inner
    if isinstance(origin, type):
        return (
            isinstance(value, origin) and not isinstance(value, str | bytes) and _held(value, inner)
        )
    return not isinstance(hint, type) or _is_one(value, hint)


def _held(value: Any, inner: tuple[Any, ...]) -> bool:
    """Tell whether a list, tuple or mapping holds what it should."""
    if isinstance(value, abc.Mapping):
        return all(fits(k, inner[0]) and fits(v, inner[1]) for k, v in value.items())
    if isinstance(value, tuple | list | abc.Set) and inner:
        return all(fits(one, inner[0]) for one in value)
    return True


def _is_one(value: Any, kind: type) -> bool:
    """Tell whether a value is of a class; a protocol that cannot be asked is let through."""
    try:
        return isinstance(value, kind)
    except TypeError:
        return True


def _number(value: Any) -> bool:
    real = hasattr(value, "__float__") and not isinstance(value, bool | str)
    try:
        return real and isfinite(value) and abs(value) <= LARGEST
    except (TypeError, ArithmeticError):
        return False


def _text(value: Any) -> bool:
    plain = isinstance(value, str) and len(value) <= LONGEST
    return plain and value.replace("\n", "").replace("\t", "").isprintable()


SIMPLE: dict[Any, Callable[[Any], bool]] = {
    Any: lambda value: True,
    object: lambda value: True,
    float: _number,
    int: lambda value: isinstance(value, int) and _number(value),
    bool: lambda value: isinstance(value, bool),
    str: _text,
    Path: lambda value: isinstance(value, Path) and _text(str(value)),
}


def words(hint: Any) -> str:
    """Say a kind in words.

    Examples
    --------
    >>> words(float), words(str | None), words(typing.Literal["up", "down"])
    ('a number within reason', 'text that can be printed', 'one of up, down')
    """
    origin, inner = typing.get_origin(hint), typing.get_args(hint)
    if hint in WORDS:
        return WORDS[hint]
    if origin in (typing.Union, types.UnionType):
        return " or ".join(words(one) for one in inner if one is not type(None))
    if origin is typing.Literal:
        return f"one of {', '.join(map(str, inner))}"
    if isinstance(origin, type) and issubclass(origin, abc.Mapping):
        return "a dict of the right things"
    if isinstance(origin, type) and issubclass(origin, abc.Iterable):
        return "a list of the right things"
    name = getattr(origin or hint, "__name__", "of the right kind")
    return f"{'an' if name[:1] in 'AEIOU' else 'a'} {name}"
