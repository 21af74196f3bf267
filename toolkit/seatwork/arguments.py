"""What a room hands out tells a wrong argument in one sentence, whatever its kind.

A formula or a reader refuses sizes and texts itself. What it was never written for (a list in
place of a number, None in place of a screw) ends somewhere inside as a TypeError that says
nothing to a reader. When what a room hands out fails in such a way, the arguments are held
against its signature, and the first that does not fit is named. Where all of them fit, the
failure is a fault of the package and goes on as it is.
"""

from collections.abc import Callable
from functools import _lru_cache_wrapper, cache, wraps
from types import FunctionType
from typing import Any, TypeVar, cast

from seatwork.errors import SeatworkError

F = TypeVar("F", bound=Callable[..., Any])
FOREIGN = (TypeError, AttributeError, ValueError, LookupError, ArithmeticError, RecursionError)
"""Failures that a wrong argument ends in."""


def explaining(found: Any) -> Any:
    """Return a function or class that tells wrong arguments plainly; anything else as it is.

    Parameters
    ----------
    found : object
        What a room hands out. A class stays the same; how it is made, and its public methods,
        are wrapped.
    """
    if isinstance(found, FunctionType | _lru_cache_wrapper):
        return _explained_once(found)
    if isinstance(found, type) and not issubclass(found, BaseException):
        _explain_in_class(found)  # type: ignore[arg-type]
    return found


@cache
def _explained_once(function: Callable[..., Any]) -> Callable[..., Any]:
    return explained(function)


@cache
def _explain_in_class(kind: Any) -> None:
    """Wrap how a class is made, and its public methods."""
    for name, held in list(vars(kind).items()):
        if name.startswith("_") and name != "__init__":
            continue
        if isinstance(held, FunctionType):
            setattr(kind, name, explained(held))
        elif isinstance(held, classmethod):
            setattr(kind, name, classmethod(explained(held.__func__)))


def explained(function: F) -> F:
    """Wrap a function: a wrong argument, or a place on the disk that fails, is one sentence.

    Parameters
    ----------
    function : callable
        Any function with annotations; its name, signature and docstring stay.
    """
    plainly = _plainly

    def wrapper(*given: Any, **named: Any) -> Any:
        try:
            return function(*given, **named)
        except Exception as error:
            plain = plainly(error, function, given, named)
            if plain is None:
                raise
            raise plain from error

    # the wrapper belongs to the module of what it wraps, so that its examples are still run
    home = getattr(function, "__wrapped__", function).__globals__
    at_home = FunctionType(wrapper.__code__, home, function.__name__, None, wrapper.__closure__)
    return cast(F, wraps(function)(at_home))


def _plainly(
    error: Exception, function: Callable[..., Any], given: tuple[Any, ...], named: dict[str, Any]
) -> SeatworkError | None:
    """Return the sentence for a failure, or None where it goes on as it is."""
    if isinstance(error, OSError):
        return place_refused(error)
    if isinstance(error, SeatworkError) or not isinstance(error, FOREIGN):
        return None
    from seatwork.kinds import misfit

    found = misfit(function, given, named)
    return SeatworkError(*found) if found else None


def place_refused(error: OSError) -> SeatworkError:
    """Turn the system's error about a file or a folder into a plain sentence."""
    from seatwork.files import refusal

    return refusal(str(error.filename or "a file or folder"), error)
