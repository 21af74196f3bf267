"""A bench without a browser: values, errors, readouts, comparison and the line that rebuilds it."""

from types import SimpleNamespace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork.errors import SeatworkError


@pytest.fixture
def bench(plug):
    """Make a new bench."""
    return plug.PlugBench()


def test_shop_text_and_numbers_set_the_same_value(bench):
    """A quarter inch is 6.35 mm, as a fraction, a decimal or a number in mm."""
    values = [bench.set(depth=given).values["depth"] for given in ("1/4", ".250 in", 6.35)]
    assert values == [6.35] * 3


def test_a_result_follows_its_values(bench):
    """The result is that of the values of the moment."""
    assert bench.set(depth=3.0).result.depth == 3.0
    assert bench.result.height == pytest.approx(0.3)


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"depth": ".9 in"}, "goes from"),
        ({"depth": float("nan")}, "goes from"),
        ({"depth": ""}, "no value was typed"),
        ({"depth": True}, "not text"),
        ({"depth": 9.5}, "too thin a floor"),
        ({"metal": "wood"}, "no such choice"),
        ({"greased": "yes"}, "on or off"),
        ({"dept": 3}, "perhaps depth is meant"),
    ],
)
def test_a_refused_value_changes_nothing(bench, change, says):
    """Bad input gets one sentence; values and result stay, also of what came with it."""
    before = bench.values, bench.result
    with pytest.raises(SeatworkError, match=says):
        bench.set(**{"greased": True} | change)
    assert (bench.values, bench.result) == before


def test_out_of_range_says_range_and_why(bench):
    """The sentence names both ends and the reason."""
    with pytest.raises(SeatworkError) as error:
        bench.set(depth="20 mm")
    assert "0.254 mm to 10.16 mm, since the plate would be cut through" in str(error.value)


def test_switching_units_keeps_the_part(bench):
    """Inch to metric and back a hundred times leaves the value as it was, to the last bit."""
    bench.set(depth="0.1499 in")
    before = bench.values
    for system in ("metric", "inch") * 50:
        bench.use(system)
    assert bench.values == before
    assert bench.use("metric").text.startswith("Cone 3.81 mm (0.150 in) deep")


def test_reset_goes_back_to_where_the_bench_began(plug):
    """The start is what the caller gave, not what the class holds."""
    bench = plug.PlugBench(depth=5.0)
    assert bench.set(depth=6.0).reset().values["depth"] == 5.0


@pytest.mark.slow
@given(depth=st.floats(0.254, 8.89), metric=st.booleans(), greased=st.booleans())
def test_code_rebuilds_the_bench(plug, depth, metric, greased):
    """The line, run, gives a bench with the same values, exact to the last bit."""
    bench = plug.PlugBench(depth=depth, greased=greased, system="metric" if metric else None)
    again = eval(bench.code(), {"benches": SimpleNamespace(plug=plug.PlugBench)})
    assert (again.values, again.system) == (bench.values, bench.system)


def test_code_writes_shop_text_where_it_is_exact(bench):
    """A value typed as text comes back as text; untouched controls are left out."""
    assert bench.set(depth="17/64").code() == "benches.plug(depth=6.746875)"
    assert bench.set(depth=".250").code() == "benches.plug(depth='0.250 in')"


def test_readouts_compare_with_the_state_kept(bench):
    """While comparing, each row also holds the kept readout and the change."""
    bench.set(depth=2.0).keep().set(depth=4.0)
    assert bench.readouts() == [
        ["Plug over the face", "0.028 in (0.70 mm) below", "0.051 in (1.30 mm) proud",
         "0.079 in (2.00 mm) lower"],
        ["Lies", "below", "proud", "changed"],
    ]  # fmt: skip
    assert all(len(row) == 2 for row in bench.forget().readouts())


def test_the_text_is_the_picture_in_words(bench):
    """Text, drawing and repr say the same."""
    assert repr(bench) == bench.text == bench.drawing.text


def test_a_follower_that_fails_leaves_the_bench_as_it_was(bench):
    """If a picture cannot be drawn for a state, the bench does not take the state on."""

    class Stubborn:
        def follow(self, names):
            if bench.values["depth"] == 5.0:
                raise SeatworkError("5", "cannot be shown", "take another")

    bench.attach(Stubborn())
    before = bench.values
    with pytest.raises(SeatworkError, match="cannot be shown"):
        bench.set(depth=5.0)
    assert bench.values == before


def test_an_unknown_system_or_palette_is_refused(plug):
    """A word that is none of the known ones gets a sentence."""
    with pytest.raises(SeatworkError, match="unit system"):
        plug.PlugBench(system="cubit")
    with pytest.raises(SeatworkError, match="palette"):
        plug.PlugBench(palette="pink")
