"""Gives the tests of this room the second method for chatter."""

import importlib.util
from pathlib import Path
from types import ModuleType

import pytest


@pytest.fixture(scope="session")
def collocation() -> ModuleType:
    """Chebyshev collocation of delay equations, a method the package does not share."""
    path = Path(__file__).with_name("collocation.py")
    spec = importlib.util.spec_from_file_location("collocation_of_delay_equations", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module
