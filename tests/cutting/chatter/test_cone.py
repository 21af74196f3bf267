"""What chatter leaves on the cone, and how it sounds."""

import numpy as np
import pytest
from seatwork import cutting
from seatwork.errors import SeatworkError


@pytest.fixture(scope="module")
def chattering(axial_set, steel, lips) -> cutting.Trace:
    """Set Ax, three lips, 1000 rev/min, half as wide again as the limit."""
    return cutting.trace(
        machine=axial_set,
        cutter=lips(3),
        cut=steel(),
        spindle_speed=1000,
        width=1.0,
        feed=0.1,
    )


def test_the_marks_tell_the_frequency(chattering) -> None:
    """Marks counted on the cone, times turns a second, are the pitch found in the sound."""
    surface = cutting.surface_left(chattering)
    (told,) = cutting.frequency_from_marks(
        marks=surface.marks, spindle_speed=1000, direction="axial"
    )
    sound = cutting.sound(trace=chattering)
    half = sound.samples[len(sound.samples) // 2 :]
    spectrum = np.abs(np.fft.rfft(half * np.hanning(len(half))))
    heard = np.fft.rfftfreq(len(half), 1 / sound.rate)[spectrum.argmax()]
    assert told == pytest.approx(heard, abs=6)


def test_the_cone_shows_less_than_the_swing(chattering) -> None:
    """The surface is never deeper than the tool swings, seen along its normal."""
    surface = cutting.surface_left(chattering)
    assert 0 < surface.swing <= chattering.swing() * np.sin(np.radians(41)) * (1 + 1e-9)
    assert surface.height.mean() == pytest.approx(0, abs=1e-12)
    assert surface.angle[0] == 0
    assert 359 < surface.angle[-1] < 360


def test_a_quiet_cut_leaves_a_smooth_cone(axial_set, steel, lips) -> None:
    """Steady cutting leaves no marks to count."""
    trace = cutting.trace(
        machine=axial_set,
        cutter=lips(3),
        cut=steel(),
        spindle_speed=1000,
        width=0.3,
        feed=0.1,
        kick=0.0,
        duration=0.1,
    )
    surface = cutting.surface_left(trace)
    assert surface.swing == pytest.approx(0, abs=1e-9)
    assert np.isnan(surface.marks)


def test_less_than_a_turn_is_no_cone(axial_set, steel, lips) -> None:
    """A trace shorter than a turn is refused."""
    trace = cutting.trace(
        machine=axial_set,
        cutter=lips(3),
        cut=steel(),
        spindle_speed=60,
        width=0.3,
        feed=0.1,
        duration=0.5,
    )
    with pytest.raises(SeatworkError, match="shorter than one turn"):
        cutting.surface_left(trace)


@pytest.mark.outside("sum worked by hand", "cutting.ring")
def test_a_whirl_of_six_lips_leaves_a_hexagon() -> None:
    """-27 Hz at 300 rev/min is 6.4 marks round the cone (27/5 + 1)."""
    ring = cutting.ring(frequency=-27, spindle_speed=300, height=0.04)
    assert ring.marks == pytest.approx(6.4)
    assert ring.swing == pytest.approx(0.04, rel=1e-3)


@pytest.mark.parametrize("direction", ["axial", "lateral"])
@pytest.mark.parametrize("frequency", [-373.3, -57.0, 280.0, 359.0])
def test_marks_and_frequencies_go_both_ways(direction, frequency) -> None:
    """Of the frequencies a count of marks tells, one is the frequency that left it."""
    place = {"spindle_speed": 900.0, "direction": direction}
    marks = cutting.marks_per_turn(frequency=frequency, **place)
    told = cutting.frequency_from_marks(marks=marks, **place)
    gaps = [abs(found - (abs(frequency) if direction == "axial" else frequency)) for found in told]
    assert min(gaps) < 1e-9


def test_sound_keeps_its_pitch_and_length(chattering) -> None:
    """Samples last as long as the trace, stay within 1 and say they are at true pitch."""
    sound = cutting.sound(trace=chattering, rate=22050)
    assert len(sound.samples) / 22050 == pytest.approx(0.5, abs=1e-3)
    assert sound.samples.dtype == np.float32
    assert 0.1 < np.abs(sound.samples).max() < 1
    assert sound.sentence.startswith("At its true pitch")
    assert sound.sentence.endswith("Start at low volume.")


def test_a_quiet_cut_sounds_quiet(chattering, axial_set, steel, lips) -> None:
    """Every trace is played on the same scale, so a quiet one is quiet."""
    quiet = cutting.trace(
        machine=axial_set, cutter=lips(3), cut=steel(), spindle_speed=1000, width=0.3, feed=0.1
    )
    loud, soft = (
        float(np.sqrt(np.mean(cutting.sound(trace=trace).samples[-8000:] ** 2)))
        for trace in (chattering, quiet)
    )
    assert soft < loud / 100
