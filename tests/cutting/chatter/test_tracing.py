"""The trace in time against roots, scaling laws and a general delay solver."""

import shutil

import numpy as np
import pytest
from seatwork import cutting
from seatwork.errors import SeatworkError

PLACE = {"spindle_speed": 1000.0}


def growth(time: np.ndarray, swing: np.ndarray, after: float) -> float:
    """Growth rate [1/s] fitted to the peaks after a time."""
    middle = swing[1:-1]
    peak = (middle > swing[:-2]) & (middle >= swing[2:]) & (middle > 0) & (time[1:-1] > after)
    at = np.flatnonzero(peak) + 1
    before, here, behind = swing[at - 1], swing[at], swing[at + 1]
    height = here - (before - behind) ** 2 / 8 / (before - 2 * here + behind)
    return float(np.polyfit(time[at], np.log(height), 1)[0])


def place(axial_set, steel, lips, flutes: int, rub: float = 0.0) -> dict:
    """Set Ax at 1000 rev/min with that many lips."""
    return {"machine": axial_set, "cutter": lips(flutes), "cut": steel(0, rub), **PLACE}


@pytest.mark.outside("second method", "cutting.trace")
@pytest.mark.slow
@pytest.mark.parametrize(
    ("flutes", "rub", "after", "until"), [(3, 0.0, 0.4, 0.8), (6, 1e5, 0.4, 0.8), (1, 0.0, 1.5, 3)]
)
@pytest.mark.parametrize("share", [0.8, 0.9, 1.1, 1.2])
def test_growth_rates(
    flutes, rub, after, until, share, axial_set, steel, lips, collocation
) -> None:
    """While no cut is missed the trace grows, or dies, as the rightmost root says, to 1 %."""
    here = place(axial_set, steel, lips, flutes, rub)
    width = share * cutting.width_limit(**here).width
    trace = cutting.trace(**here, width=width, feed=1.0, kick=1e-5, duration=until)
    pull = flutes * np.sin(np.radians(41)) ** 2 * width / 1000
    speed = np.pi * 9e-3 * PLACE["spindle_speed"] / 60
    cut = here["cut"]
    (rightmost, *_) = collocation.axial(
        stiffness=8e6,
        frequency=250,
        damping=0.04,
        gain=pull * cut.normal_coefficient,
        rub=pull * rub / speed,
        shares=[1 / flutes],
        turn=60 / PLACE["spindle_speed"],
        count=80,
    )
    rest = -cut.normal_coefficient * np.sin(np.radians(41)) ** 2 * width * 1.0 / 1e6 / 8e6
    found = growth(trace.time, trace.displacement - 1000 * rest, after)
    assert found == pytest.approx(rightmost.real, rel=0.01)


@pytest.mark.outside("second method", "cutting.trace")
@pytest.mark.long
@pytest.mark.parametrize("share", [0.9, 1.0, 1.1])
def test_a_general_delay_solver_agrees(
    share, axial_set, steel, lips, tmp_path, monkeypatch
) -> None:
    """A general solver of delay equations grows at the rate of the trace."""
    jitcdde = pytest.importorskip("jitcdde", reason="jitcdde is not installed (test extra)")
    if not (shutil.which("cc") or shutil.which("gcc") or shutil.which("clang")):
        pytest.skip("jitcdde needs a C compiler, and none is found")
    here = place(axial_set, steel, lips, 3)
    width = share * cutting.width_limit(**here).width
    machine, cut = here["machine"], here["cut"]
    pull = 3 * np.sin(np.radians(41)) ** 2 * width / 1000 * cut.normal_coefficient
    w, m, period = machine.angular_frequency, machine.mass, 60 / 1000 / 3
    y, t = jitcdde.y, jitcdde.t
    equations = [
        y(1),
        (-machine.damping * y(1) - machine.stiffness * y(0) - pull * (y(0) - y(0, t - period))) / m,
    ]
    solver = jitcdde.jitcdde(equations, max_delay=period, verbose=False)
    monkeypatch.chdir(tmp_path)  # its build reads a pyproject.toml where it stands
    solver.compile_C(verbose=False)
    solver.set_integration_parameters(rtol=1e-9, atol=1e-14, max_step=1 / (20 * w))
    solver.constant_past([1e-3, 0.0])
    solver.adjust_diff()
    times = np.arange(0.01, 0.8, 1 / (30 * machine.natural_frequency))
    swing = np.array([solver.integrate(moment)[0] for moment in times])
    expected = growth(times, swing, after=0.25)
    fine = {"feed": 1.0, "kick": 0.0005, "duration": 0.8, "steps_per_wave": 240}
    trace = cutting.trace(**here, width=width, **fine)
    rest = -pull / 3 * 1e-3 / machine.stiffness
    found = growth(trace.time, trace.displacement - 1000 * rest, after=0.25)
    assert found == pytest.approx(expected, rel=0.01, abs=0.02)


@pytest.mark.slow
def test_height_over_feed_knows_no_feed(axial_set, steel, lips) -> None:
    """From the same scaled start every motion scales with feed, missed cuts and all."""
    here = place(axial_set, steel, lips, 3)
    light, heavy = (
        cutting.trace(**here, width=1.2, feed=feed).displacement / feed for feed in (0.02, 0.2)
    )
    assert light == pytest.approx(heavy, abs=1e-9)


def test_steady_cutting_rests_on_its_force(axial_set, steel, lips) -> None:
    """Without a kick from steady cutting the tool stays where force over stiffness puts it."""
    here = place(axial_set, steel, lips, 3)
    trace = cutting.trace(**here, width=0.4, feed=0.1, kick=0.0, duration=0.2)
    force = here["cut"].normal_coefficient / 1e6 * np.sin(np.radians(41)) ** 2 * 0.4 * 0.1
    assert trace.displacement == pytest.approx(-force / 8e3, abs=1e-9)
    assert trace.chip_thickness == pytest.approx(0.1 / 3 * np.sin(np.radians(41)), abs=1e-9)
    assert trace.missed == 0


@pytest.mark.parametrize("spacing", [None, (110, 120, 130), (40, 200, 120)])
def test_each_turn_removes_the_feed(spacing, axial_set, steel, lips) -> None:
    """In steady cutting the chips of a turn add up to the feed, whatever the spacing."""
    cutter = lips(3, spacing=spacing, runout=1e-3)
    here = {**place(axial_set, steel, lips, 3), "cutter": cutter}
    trace = cutting.trace(**here, width=0.2, feed=0.1, kick=0.0, duration=0.5)
    first = trace.chip_thickness[-1] / np.sin(np.radians(41))
    ahead = 120 if spacing is None else spacing[0]
    # the first lip takes its share of the feed and its runout besides
    assert first == pytest.approx(0.1 * ahead / 360 + 1e-3 / np.sin(np.radians(41)), rel=2e-3)


@pytest.mark.slow
def test_two_memories_of_the_surface_agree(axial_set, steel, lips) -> None:
    """Equal lips on a shared pitch, and lip by lip on the whole turn, move alike."""
    here = place(axial_set, steel, lips, 3, 1e5)
    nearly = lips(3, runout=1e-12)
    shared = cutting.trace(**here, width=1.5, feed=0.1)
    turned = cutting.trace(**{**here, "cutter": nearly}, width=1.5, feed=0.1)
    assert len(shared.time) == len(turned.time)
    assert shared.displacement == pytest.approx(turned.displacement, abs=1e-7)


def test_a_very_proud_lip_is_a_one_flute_cutter(axial_set, steel, lips) -> None:
    """Six lips, one proud by more than a turn's feed: only it cuts, and the cut goes quiet."""
    here = place(axial_set, steel, lips, 6)
    proud, even = (
        cutting.trace(**{**here, "cutter": lips(6, runout=runout)}, width=1.0, feed=0.06)
        for runout in (0.05, 0.0)
    )
    turn = proud.time > proud.time[-1] - 0.06
    assert set(proud.lips_in_cut[turn]) == {1}
    assert proud.swing() < 0.05 * even.swing()
    limit = cutting.width_limit(**{**here, "cutter": lips(6, runout=0.05).in_cut(0.06)})
    assert limit.width > 1.0


def test_chatter_leaves_the_cut(axial_set, steel, lips) -> None:
    """At one and a half times the limit the lips miss, and the chip never goes below zero."""
    here = place(axial_set, steel, lips, 3)
    trace = cutting.trace(**here, width=1.0, feed=0.1)
    assert 0.05 < trace.missed < 0.5
    assert trace.chip_thickness.min() == 0
    assert np.all((trace.lips_in_cut == 0) | (trace.lips_in_cut == 3))


def test_a_swing_beyond_the_model_is_stopped_and_said(axial_set, steel, lips) -> None:
    """Far above the limit the trace is capped and says so."""
    here = place(axial_set, steel, lips, 6)
    trace = cutting.trace(**here, width=4.0, feed=0.2, cap=0.1)
    assert trace.capped
    assert trace.time[-1] < 0.5
    assert abs(trace.displacement[-1]) > 0.1


def test_a_step_is_of_second_order(axial_set, steel, lips) -> None:
    """Half the step quarters the difference to a very fine trace."""
    here = place(axial_set, steel, lips, 3)
    end = [
        cutting.trace(
            **here, width=0.6, feed=10, kick=0.01, duration=0.02, steps_per_wave=steps
        ).displacement[-1]
        for steps in (60, 120, 1920)
    ]
    assert abs(end[0] - end[2]) / abs(end[1] - end[2]) == pytest.approx(4, rel=0.15)


def test_sideways_motion_is_not_traced(lateral_set, steel, lips) -> None:
    """A lateral machine is refused, with what to use instead."""
    with pytest.raises(SeatworkError, match="marks_per_turn"):
        cutting.trace(machine=lateral_set, cutter=lips(3), cut=steel(), width=1, feed=0.1, **PLACE)
