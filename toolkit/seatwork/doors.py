"""How a room hands out its names: each is loaded when it is first asked for.

What is handed out tells a wrong argument in one sentence (`seatwork.arguments`).

Three methods lead to a room above their own, `Plan.card`, `Plan.inspect` and `Callout.plan`;
each is a `door` that names its target, so that the table of rooms can be held against them.
"""

import warnings
from collections.abc import Callable, Mapping
from importlib import import_module
from typing import Any


def doors(
    package: str,
    names: Mapping[str, str],
    *,
    rooms: str = "",
    former: Mapping[str, str] | None = None,
) -> tuple[list[str], Callable[[str], Any], Callable[[], list[str]]]:
    """Return ``__all__``, ``__getattr__`` and ``__dir__`` of a package that loads names late.

    Parameters
    ----------
    package : str
        The package, its ``__name__``.
    names : mapping of str to str
        The public names of each module, with spaces between them; no public name may be
        that of a module of the package, which would hide it once loaded. A module of a room
        below is named in full, ``seatwork.entries.measures``.
    rooms : str
        Packages inside it that are handed out whole, with spaces between them.
    former : mapping of str to str, optional
        Names that were changed, and the public name that answers for each for one version.

    Examples
    --------
    >>> everything, look_up, listed = doors("seatwork.seats", {"heads": "Head fit"})
    >>> everything, look_up("Head").__name__
    (['Head', 'fit'], 'Head')
    """
    homes = {name: module for module, listed in names.items() for name in listed.split()}
    inner, earlier = frozenset(rooms.split()), former or {}
    public = sorted({*homes, *inner})
    loaded: dict[str, Any] = {}

    def look_up(name: str) -> Any:
        if name in loaded:
            return loaded[name]
        if name in homes:
            from seatwork.arguments import explaining

            found = getattr(import_module(full_name(package, homes[name])), name)
            loaded[name] = explaining(found)
            return loaded[name]
        if name in inner:
            return import_module(f"{package}.{name}")
        if name in earlier:
            return _renamed(package, name, earlier[name], look_up)
        if not name.startswith("_") and _is_module(f"{package}.{name}"):
            return import_module(f"{package}.{name}")  # not listed, and still found by its name
        raise AttributeError(f"module {package!r} has no attribute {name!r}")

    return public, look_up, lambda: public.copy()


def full_name(package: str, module: str) -> str:
    """Return the full name of a module that a package hands names out of."""
    return module if module.startswith("seatwork.") else f"{package}.{module}"


def _is_module(name: str) -> bool:
    """Tell whether a package has a module of that name."""
    from importlib.util import find_spec

    return name.isascii() and find_spec(name) is not None


def _renamed(package: str, name: str, now: str, look_up: Callable[[str], Any]) -> Any:
    text = f"{package}.{name} is called {now} now; the old name goes with the next version"
    warnings.warn(text, DeprecationWarning, stacklevel=3)
    return look_up(now)


def door(target: str) -> Callable[..., Any]:
    """Return a method whose work is done by a function in a room above, loaded when called.

    Parameters
    ----------
    target : str
        Module and function, such as ``"seatwork.cards:job_card"``; the function takes the
        object first.
    """
    module, _, name = target.partition(":")

    def through(self: Any, *given: Any, **named: Any) -> Any:
        return getattr(import_module(module), name)(self, *given, **named)

    through.__doc__ = f"Pass this on to `{module}.{name}`, which says what it takes."
    return through
