"""What the whole room keeps: no formula of its own, no pyplot."""

import ast
import subprocess
import sys
from pathlib import Path

import pytest
import seatwork.drawings

MODULES = sorted(Path(seatwork.drawings.__file__).parent.rglob("*.py"))


def names(path):
    """Give every name and attribute that a module uses or imports."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Name):
            yield node.id
        elif isinstance(node, ast.Attribute):
            yield node.attr
        elif isinstance(node, ast.alias):
            yield node.name


def test_no_tangent_in_a_drawing():
    """Seat geometry comes from the seats room: no drawing takes a tangent or uses one.

    The words of the triangle print the tangent that the seats room gives, and the heads that are
    drawn side by side have its slope as their own.
    """
    assert len(MODULES) > 8
    used = {path.name: {"tan", "arctan", "tangent", "half_tangent"} & set(names(path))
            for path in MODULES}  # fmt: skip
    printed = {"triangle_words.py": {"tangent"}, "beside_heads.py": {"half_tangent"}}
    assert {name: found for name, found in used.items() if found} == printed


@pytest.mark.slow
def test_no_pyplot():
    """Drawing loads neither pyplot, which keeps figures for ever, nor pandas nor scipy."""
    code = (
        "import sys\n"
        "from seatwork.drawings import section\n"
        "from seatwork.drawings.parts import apart, holes\n"
        "from seatwork.drawings.views import two_heads\n"
        "from seatwork.seats import Chamfer\n"
        "holes.chamfer(Chamfer(leg=1.0), 6.6).png(0.25)\n"
        "print([m for m in ('matplotlib.pyplot', 'pandas', 'scipy', 'ipywidgets')"
        " if m in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"
