"""The plug's bench and scene, for all tests of this folder."""

import importlib.util
import sys
from pathlib import Path
from types import ModuleType

import pytest


@pytest.fixture(scope="session")
def plug() -> ModuleType:
    """Load the small bench that the tests move."""
    spec = importlib.util.spec_from_file_location("plug", Path(__file__).parent / "plug.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["plug"] = module
    spec.loader.exec_module(module)
    return module
