"""What holds for every bench: told once by its controls, and rebuilt by its own line of code."""

import inspect
import random
from collections.abc import Iterator
from contextlib import suppress
from typing import Any

import pytest
from IPython.core import completer
from seatwork import benches
from seatwork.benches.bench import Bench
from seatwork.benches.build.controls import Choice, Number, Pick, Switch, TextLine
from seatwork.benches.build.signature import COMMON
from seatwork.errors import SeatworkError

STATES = 50
TEXTS = {
    "note": ["4X ⌀.201 THRU ⌵ ⌀.385 X 82°", "BREAK ALL SHARP EDGES .005-.015", "no note at all"],
    "answer": ["0.169 in", ".25", "12.5 mm", "400"],
}
SCREWS = [
    *("M8 socket flat head", "5/16-18 flat head machine screw", "M6 csk socket", "#4 flat head"),
    *("M20 socket flat", "3/4 flat head machine screw", "#12 flat head", "M3 socket flat head"),
    *("M10 hex", "M8 SHCS", "#8 hex", "M3 hex", "7/8 hex cap", "M18 hex", "#2 SHCS"),
]
"""Names that no list of the shop has: usual ones, the smallest, the largest, odd ones."""

PLATES = ["3 mm", "1/8 in", "0.5 mm", "40 mm"]
NAMES = [name for name in benches.__all__ if issubclass(getattr(benches, name), Bench)]
"""Every bench with a picture and controls; the page of one's own part has tests of its own."""


def value_of(control: Any, rng: random.Random) -> Any:
    """Draw a value a hand could set: on a step or between two, listed or typed."""
    if isinstance(control, Number):
        if control.name == "thickness" and rng.random() < 0.5:
            return rng.choice(PLATES)
        low, high = control.steps("inch")
        between = rng.uniform(control.low, control.high)
        return between if rng.random() < 0.2 else control.at(rng.randint(low, high), "inch")
    if isinstance(control, Choice):
        return rng.choice(control.options)
    if isinstance(control, Switch):
        return rng.random() < 0.6
    if isinstance(control, TextLine):
        return rng.choice(TEXTS[control.name])
    return rng.choice([*control.listed(), *(SCREWS if control.others else [])])


def states(name: str) -> Iterator[Bench[Any]]:
    """Yield benches in states that hands came to, refused moves among the way."""
    rng = random.Random(name)
    for _ in range(STATES):
        bench = getattr(benches, name)()
        for control in [c for c in bench.controls if isinstance(c, Pick) and c.others]:
            with suppress(SeatworkError):
                bench.set(**{control.name: value_of(control, rng)})
        for _ in range(rng.randint(0, 6)):
            control = rng.choice(bench.controls)
            try:
                bench.set(**{control.name: value_of(control, rng)})
            except SeatworkError:
                continue
        if rng.random() < 0.3:
            bench.use("metric")
        yield bench


@pytest.mark.slow
@pytest.mark.parametrize("name", NAMES)
def test_code_rebuilds_every_state(name: str) -> None:
    """Over 50 random states the line of code() makes a bench that tells the same."""
    for bench in states(name):
        again = eval(bench.code(), {"benches": benches})
        assert again.text == bench.text, bench.code()
        assert again.values == bench.values, bench.code()


@pytest.mark.parametrize("name", NAMES)
def test_every_control_can_be_given_at_its_start(name: str) -> None:
    """A bench called with all it begins with is the bench as it opens, and its code is bare."""
    bench = getattr(benches, name)()
    assert bench.code() == f"benches.{name}()"
    assert getattr(benches, name)(**bench.values).values == bench.values
    starts = {control.name: control.start for control in bench.controls}
    assert getattr(benches, name)(**starts).values == bench.values


@pytest.mark.parametrize("name", NAMES)
def test_the_sum_takes_what_the_controls_give(name: str) -> None:
    """``work_out`` has a keyword for each control, typed as the control reads, and no other."""
    bench = getattr(benches, name)
    taken = inspect.signature(bench.work_out).parameters
    kinds = {Number: "float", Switch: "bool", Choice: "str", Pick: "str", TextLine: "str"}
    wanted = {control.name: kinds[type(control)] for control in bench.controls}
    found = {n: getattr(p.annotation, "__name__", p.annotation) for n, p in taken.items()}
    assert {n: kind for n, kind in found.items() if n != "self"} == wanted


@pytest.mark.parametrize("name", NAMES)
def test_signature_and_help_come_from_the_controls(name: str) -> None:
    """Each control is a keyword with its start, and a line of the help with its unit or range."""
    bench = getattr(benches, name)
    parameters = inspect.signature(bench).parameters
    assert list(parameters) == [control.name for control in bench.controls] + list(COMMON)
    for control in bench.controls:
        assert parameters[control.name].default == control.start
        assert f"{control.name} : " in bench.__doc__
        assert control.label in " ".join(bench.__doc__.split())
    assert bench.name == name


@pytest.mark.parametrize("name", NAMES)
def test_a_misspelt_control_is_asked_about(name: str) -> None:
    """A keyword that no control has gets the name that is near it."""
    bench = getattr(benches, name)
    given = bench.controls[0].name
    with pytest.raises(SeatworkError, match=f"perhaps {given} is meant"):
        bench(**{f"{given}s": True})


def test_completion_offers_the_controls() -> None:
    """The kernel's completer, which runs no learner's code, offers the keywords of a bench."""
    shell = completer.IPCompleter(namespace={"benches": benches}, use_jedi=False)
    line = "benches.depth(new_"
    with completer.provisionalcompleter():
        offered = {one.text for one in shell.completions(line, len(line))}
    assert "new_nose=" in offered


FLAT_HEADS = ("angles", "chatter", "depth", "flush", "gaging", "on_the_hole")
FLAT_BELOW = ("counterbore", "spotface")
EVERY_HEAD = ("cutters", "speeds")
OWN = {
    **dict.fromkeys(
        (*FLAT_HEADS, "triangle"),
        ("M6 csk socket", "3/4-10 flat head", "#10-32 FHMS", "m8 SOCKET flat"),
    ),
    **dict.fromkeys(FLAT_BELOW, ("M6 SHCS", "7/8 hex cap", "M18 hex", "M3 hex", "1/4-20 hex cap")),
    **dict.fromkeys(EVERY_HEAD, ("M6 csk socket", "M6 SHCS", "3/8-16 hex cap", "#12 flat head")),
}
"""By bench screws as people write them, none of them in the shop's list."""


THROUGH = {("angles", "m8 SOCKET flat"), ("depth", "3/4-10 flat head")}
"""Heads that fall through what 1.5 mm sheet leaves of the seat the bench opens with."""


def pick_of(bench: Bench[Any]) -> str:
    """Name the control that takes a screw."""
    return next(c.name for c in bench.controls if isinstance(c, Pick) and "screw" in c.others)


@pytest.mark.parametrize(("name", "screw"), [(n, s) for n in OWN for s in OWN[n]])
def test_a_bench_takes_any_screw_and_its_plate(name: str, screw: str) -> None:
    """A screw by the counter's name brings all its sizes, and a sheet or a slab may be typed."""
    bench = getattr(benches, name)()
    bench.set(**{pick_of(bench): screw})
    assert f"{pick_of(bench)}={screw!r}" in bench.code()
    assert bench.text
    assert bench.sources(bench.result)
    if "thickness" in bench.values:
        assert bench.set(thickness="60 mm").values["thickness"] == 60.0
        if name == "counterbore":
            with pytest.raises(SeatworkError, match="thickness of the part"):
                bench.set(thickness="0.5 mm")
        elif (name, screw) in THROUGH:
            with pytest.raises(SeatworkError, match="drops through"):
                bench.set(thickness="1.5 mm")
        else:
            assert bench.set(thickness="1.5 mm").values["thickness"] == 1.5


@pytest.mark.parametrize("name", FLAT_HEADS)
def test_a_thin_plate_is_told_where_the_cone_breaks_through(name: str) -> None:
    """The cone of an M6, 3.4 mm deep, does not stay in 3 mm: (13.44 - 6.6) / 2, ISO 10642."""
    bench = getattr(benches, name)()
    bench.set(**{pick_of(bench): "M6 socket flat", "thickness": "3 mm"})
    for switch in ("measure", "cut", "shown"):
        if switch in bench.values:
            bench.set(**{switch: True})
    if name == "chatter":
        assert bench.result.seat.full_width == pytest.approx(3.0 * 2**0.5)
        assert bench.set(thickness="8 mm").result.seat.full_width == pytest.approx(3.42 * 2**0.5)
        return
    assert "knife edge" in str(bench.readouts())
    assert "knife edge" not in str(bench.set(thickness="8 mm").readouts())


@pytest.mark.parametrize("name", [*FLAT_HEADS, "triangle", *FLAT_BELOW, *EVERY_HEAD])
def test_a_refused_screw_is_named_by_what_was_typed(name: str) -> None:
    """A name that could be two asks with the names to choose from; the bench stays as it was."""
    bench = getattr(benches, name)()
    text = bench.text
    with pytest.raises(SeatworkError, match="slotted, recessed or socket") as refused:
        bench.set(**{pick_of(bench): "M6 flat head"})
    assert refused.value.options
    with pytest.raises(SeatworkError, match="which head"):
        bench.set(**{pick_of(bench): "M6"})
    assert bench.text == text
