"""The small scene that has every kind of artist, and its bench."""

import importlib.util
import sys
from pathlib import Path
from types import ModuleType

import pytest


@pytest.fixture(scope="session")
def plug() -> ModuleType:
    """Load the plug, which the tests of benches move too."""
    place = Path(__file__).parents[1] / "benches" / "plug.py"
    spec = importlib.util.spec_from_file_location("plug", place)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["plug"] = module
    spec.loader.exec_module(module)
    return module
