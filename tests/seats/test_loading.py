"""What the room loads, and what it gives."""

import subprocess
import sys

import pytest
from seatwork import seats

HEAVY = ("numpy", "scipy", "pandas", "matplotlib", "pint", "ipywidgets")


def loaded_after(code: str) -> set[str]:
    """Run a line in a fresh Python and tell which heavy or own modules it loaded."""
    script = f"import sys\n{code}\nprint(*sorted(sys.modules))"
    found = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=True, timeout=60
    )
    return set(found.stdout.split())


def test_cones_and_heads_load_no_numpy() -> None:
    """Importing the room, and seating a head, loads nothing heavy and nothing of other rooms."""
    seated = (
        "from seatwork.seats import Head, Countersink, fit\n"
        "fit(Head(sharp_diameter=12, included_angle=82),"
        " Countersink(diameter=12, hole_diameter=6, included_angle=90))\n"
        "from seatwork.seats import ball_top, bending_stress, worst_case"
    )
    loaded = loaded_after(seated)
    assert not loaded & set(HEAVY)
    rooms = {name.split(".")[1] for name in loaded if name.startswith("seatwork.")}
    assert rooms == {"arguments", "checks", "doors", "errors", "quantities", "seats"}


@pytest.mark.slow
def test_rims_and_castings_load_numpy_when_asked() -> None:
    """Array work loads numpy, and of the heavy ones only numpy."""
    loaded = loaded_after(
        "from seatwork.seats import rim, Countersink\n"
        "from seatwork.seats.surfaces import Flat\n"
        "rim(Countersink(diameter=12, hole_diameter=6, included_angle=90), Flat())"
    )
    assert loaded & set(HEAVY) == {"numpy"}


@pytest.mark.parametrize("name", seats.__all__)
def test_every_promised_name_is_there(name: str) -> None:
    """Each name the room promises can be taken from it and says what it is."""
    assert getattr(seats, name).__doc__


def test_another_name_is_missing_in_the_usual_way() -> None:
    """A name the room does not have raises AttributeError, so that hasattr works."""
    assert not hasattr(seats, "standout")
