"""Chatter: open check values, each at its own tolerance.

Rows H, B, M and F check the tests' own collocation, by which the package is checked.
"""

import importlib.util
from math import atan, cos, pi, sin, sqrt
from pathlib import Path
from types import ModuleType

import numpy as np
import pytest
from scipy.optimize import brentq
from scipy.special import lambertw
from seatwork import cutting

DATA = "chatter"


@pytest.fixture(scope="module")
def collocation() -> ModuleType:
    """Chebyshev collocation of delay equations, a method the package does not share."""
    path = Path(__file__).parents[1] / "cutting" / "collocation.py"
    spec = importlib.util.spec_from_file_location("collocation_of_delay_equations", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def parts(inputs: dict) -> dict:
    """Machine, cutter and cut of a row."""
    spacing = inputs.get("spacing")
    return {
        "machine": cutting.Machine(
            stiffness=inputs["stiffness"],
            natural_frequency=inputs["natural_frequency"],
            damping_ratio=inputs["damping_ratio"],
            direction=inputs.get("direction", "axial"),
        ),
        "cutter": cutting.Cutter(
            flutes=inputs["flutes"], included_angle=inputs["included_angle"], spacing=spacing
        ),
        "cut": cutting.Cut(
            normal_coefficient=inputs["normal"],
            tangential_coefficient=inputs["tangential"],
            mean_diameter=inputs["mean_diameter"],
            process_damping=inputs.get("process_damping", 0.0),
            friction=inputs.get("friction", 0.3),
        ),
    }


@pytest.mark.outside("closed form", "cutting.lip_in_cut")
def test_lips_in_cut(lip_check) -> None:
    """The lip in cut has its closed length."""
    assert lip_check.agrees(cutting.lip_in_cut(**lip_check.inputs))


@pytest.mark.outside("closed form", "cutting.depth_of_cut")
def test_depths_of_cut(depth_check) -> None:
    """The depth past first touch belongs to the lip in cut."""
    angle = depth_check.inputs["included_angle"]
    width = cutting.lip_in_cut(**depth_check.inputs)
    assert depth_check.agrees(cutting.depth_of_cut(width=width, included_angle=angle))


def test_torques(torque_check) -> None:
    """The torque of a countersink is the force summed along its lip."""
    assert torque_check.agrees(cutting.torque(**torque_check.inputs))


@pytest.mark.outside("published example", "cutting.shear_plane")
def test_shear_planes(shear_plane_check) -> None:
    """The shear plane gives both coefficients."""
    inputs = dict(shear_plane_check.inputs)
    take = inputs.pop("take")
    assert shear_plane_check.agrees(getattr(cutting.shear_plane(**inputs), take))


@pytest.mark.outside("published example", "cutting.specific_force")
def test_thin_chips(kienzle_check) -> None:
    """The specific force rises for a thin chip and falls with rake."""
    assert kienzle_check.agrees(cutting.specific_force(**kienzle_check.inputs))


def test_spindle_speeds(spindle_check) -> None:
    """A published spindle speed comes out."""
    assert spindle_check.agrees(cutting.spindle_speed(**spindle_check.inputs))


def test_ratios(ratio_check) -> None:
    """A maker's ratios to the drill speed come out."""
    inputs = dict(ratio_check.inputs)
    ratio = inputs.pop("ratio")
    drill = cutting.spindle_speed(**inputs)
    assert ratio_check.agrees(cutting.operation_speed(drill_speed=drill, ratio=ratio))


def test_the_second_method_on_the_lambert_root(lambert_check, collocation) -> None:
    """Collocation, and Lambert's function, give the rightmost root of x' = -x(t-1)."""
    take = lambert_check.inputs["take"]
    (root, *_) = collocation.roots(np.zeros((1, 1)), [(1.0, -np.eye(1))], 24)
    assert lambert_check.agrees(abs(getattr(root, take)) * np.sign(lambert_check.value))
    assert lambert_check.agrees(getattr(complex(lambertw(-1)), take))


def test_the_second_method_on_hayes(hayes_check, collocation) -> None:
    """At Hayes' boundary the rightmost root of collocation lies on the axis."""
    a = hayes_check.inputs["a"]

    def rightmost(b: float) -> complex:
        return collocation.roots(a * np.eye(1), [(1.0, b * np.eye(1))], 24)[0]

    b = brentq(lambda b: rightmost(b).real, -2.6, -1.2, xtol=1e-12)
    found = {"b": b, "frequency": abs(rightmost(b).imag)}
    assert hayes_check.agrees(found[hayes_check.inputs["take"]])


def test_the_second_method_on_triangles(triangle_check, collocation) -> None:
    """Collocation finds the edge of a Hsu-Bhatt triangle, where undamped motion begins to grow."""
    inputs = triangle_check.inputs
    now = np.array([[0.0, 1.0], [-inputs["delta"], 0.0]])

    def growth(b: float) -> float:
        delayed = np.array([[0.0, 0.0], [b, 0.0]])
        return collocation.roots(now, [(2 * pi, delayed)], 40)[0].real - 1e-7

    assert growth(inputs["inside"]) < 0 < growth(inputs["outside"])
    edge = brentq(growth, inputs["inside"], inputs["outside"], xtol=1e-9)
    assert triangle_check.agrees(edge)


def test_the_second_method_on_mathieu(mathieu_check, collocation) -> None:
    """Collocation over a period finds the limit of the delayed Mathieu equation."""
    delta, size = mathieu_check.inputs["delta"], mathieu_check.inputs["size"]

    def excess(b: float) -> float:
        now = lambda t: np.array([[0, 1], [-(delta + size * cos(t)), 0]])  # noqa: E731
        back = lambda t: np.array([[0.0, 0.0], [b, 0.0]])  # noqa: E731
        return collocation.multiplier(now, back, 2 * pi, 40) - 1

    assert mathieu_check.agrees(brentq(excess, -0.30, -0.20, xtol=1e-9))


def test_the_second_method_on_milling(milling_check, collocation) -> None:
    """Collocation over a tooth period gives the converged multiplier of slot milling."""
    inputs = milling_check.inputs
    w = 2 * pi * inputs["natural_frequency"]
    period = 60 / inputs["spindle_speed"] / 2

    def push(t: float) -> float:
        angle = pi * t / period
        cutting_force = inputs["tangential"] * cos(angle) + inputs["normal"] * sin(angle)
        return inputs["width"] / 1000 * sin(angle) * cutting_force / inputs["mass"]

    def now(t: float) -> np.ndarray:
        return np.array([[0, 1], [-(w**2) - push(t), -2 * inputs["damping_ratio"] * w]])

    def back(t: float) -> np.ndarray:
        return np.array([[0.0, 0.0], [push(t), 0.0]])

    assert milling_check.agrees(collocation.multiplier(now, back, period, 50))


@pytest.mark.outside("published example", "cutting.width_limit")
def test_absolute_limits(absolute_check) -> None:
    """The lowest point of the fourth lobe is the published closed form, at its frequency.

    There the wave of one turn meets the next at pi + 2 atan(sqrt(1 + 2 zeta)): Tlusty, from memory.
    """
    inputs = absolute_check.inputs
    r = sqrt(1 + 2 * inputs["damping_ratio"])
    turns = 3 + (pi + 2 * atan(r)) / (2 * pi)
    speed = 60 * r * inputs["natural_frequency"] / inputs["flutes"] / turns
    limit = cutting.width_limit(**parts(inputs), spindle_speed=speed)
    assert absolute_check.agrees(getattr(limit, absolute_check.inputs["take"]))


@pytest.mark.outside("second method", "cutting.width_limit")
def test_limits(limit_check) -> None:
    """Width and signed frequency at the limit of a spindle speed."""
    inputs = limit_check.inputs
    limit = cutting.width_limit(**parts(inputs), spindle_speed=inputs["spindle_speed"])
    assert limit_check.agrees(getattr(limit, inputs["take"]))


@pytest.mark.outside("second method", "cutting.critical_speed")
def test_critical_speeds(critical_check) -> None:
    """The surface speed under which every width is quiet."""
    found = cutting.critical_speed(**parts(critical_check.inputs))
    assert critical_check.agrees(found.surface_speed / 60)


@pytest.mark.outside("second method", "cutting.chatter_band")
def test_bands(band_check) -> None:
    """Both ends of the band of widths that can chatter at a surface speed."""
    inputs = band_check.inputs
    band = cutting.chatter_band(**parts(inputs), surface_speed=60 * inputs["surface_speed"])
    assert band_check.agrees(getattr(band, inputs["take"]))


@pytest.mark.outside("second method", "cutting.trace", "cutting.Trace.swing")
def test_saturated_chatter(saturated_check) -> None:
    """Grown-up chatter has the published height over feed, at every feed."""
    inputs = saturated_check.inputs
    place = {**parts(inputs), "spindle_speed": inputs["spindle_speed"]}
    width = 1.5 * cutting.width_limit(**place).width
    for feed in inputs["feeds"]:
        trace = cutting.trace(**place, width=width, feed=feed, duration=1.5)
        assert saturated_check.agrees(trace.swing() / feed), feed


@pytest.mark.outside("closed form", "cutting.marks_per_turn")
def test_marks(marks_check) -> None:
    """Marks round the cone follow from frequency, spindle speed and direction."""
    assert marks_check.agrees(cutting.marks_per_turn(**marks_check.inputs))
