"""The plug's bench and scene, and what finds faults of lettering, for all tests of this folder."""

import importlib.util
import sys
from collections.abc import Callable
from pathlib import Path
from types import ModuleType

import pytest
from seatwork.benches.bench import Bench
from seatwork.drawings.scene import Drawing


@pytest.fixture(scope="session")
def plug() -> ModuleType:
    """Load the small bench that the tests move."""
    return _loaded("plug", Path(__file__).parent / "plug.py")


@pytest.fixture(scope="session")
def drawing_faults() -> Callable[[Drawing], list[str]]:
    """Return what finds lettering that is cut off, overlapped or crossed, as for all drawings."""
    folder = Path(__file__).parents[1] / "drawings"
    module = _loaded("lettering_faults", folder / "conftest.py")
    return lambda drawing: list(module._faults(drawing))


@pytest.fixture(scope="session")
def words() -> Callable[[Bench], str]:
    """Return what gives all words on the page of a bench in one string."""
    return lambda bench: " | ".join(t.get_text() for t in bench.drawing.figure.axes[0].texts)


def _loaded(name: str, place: Path) -> ModuleType:
    """Load a module that is no part of a package."""
    spec = importlib.util.spec_from_file_location(name, place)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules[name] = module
    spec.loader.exec_module(module)
    return module
