"""An import put off until it is needed: the grammars of international web addresses.

``nbformat`` and the server check notebooks and events with ``jsonschema``, which imports
``rfc3987_syntax``, which builds some forty grammars as it is imported. That is about three
seconds of every ``open``, ``check``, ``export`` and test run, for a format (``iri``) that no
notebook uses. So a stand-in takes the module's name. The first question put to it loads the
real module, which answers that question and every later one.
"""

import sys
from importlib import import_module
from importlib.util import find_spec
from types import ModuleType
from typing import Any

NAME = "rfc3987_syntax"


class Deferred(ModuleType):
    """Stands for the module until it is asked."""

    def is_valid_syntax(self, *asked: Any, **named: Any) -> Any:
        """Let the real module answer: whether a text is a web address of a kind."""
        return real().is_valid_syntax(*asked, **named)

    def __getattr__(self, name: str) -> Any:
        """Take everything else from the real module; the import system's own marks are unset."""
        if name.startswith("__"):
            raise AttributeError(f"module {NAME!r} has no attribute {name!r}")
        return getattr(real(), name)


def real() -> Any:
    """Load the real module, in the stand-in's place."""
    if isinstance(sys.modules.get(NAME), Deferred):
        del sys.modules[NAME]
    return import_module(NAME)


def put_off_grammars() -> None:
    """Put the stand-in in place, before ``nbformat`` or the server is imported.

    Does nothing where the module is loaded already, or is not installed.
    """
    if NAME not in sys.modules and find_spec(NAME) is not None:
        sys.modules[NAME] = Deferred(NAME)


def pytest_addoption() -> None:
    """Put the stand-in in place where pytest is started with ``-p seatwork.deferred``.

    pytest calls this as soon as it has read that option, which is before it loads nbval.
    """
    put_off_grammars()
