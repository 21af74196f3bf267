"""Writing notes: what is written reads back as the same callout, in every style that can."""

from collections.abc import Callable
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork import units
from seatwork.errors import SeatworkError
from seatwork.notes import (
    Callout,
    Chamfer,
    Counterbore,
    Counterdrill,
    Countersink,
    EdgeBreak,
    Feature,
    Head,
    Hole,
    Size,
    Spotface,
    Thread,
    read,
    write,
)

FLAT_HEADS = ("#10 FHMS", "1/4-20 F.H. MACH. SCR.", "M6 csk socket", "#10-32 x 1/2 FHMS")
FLAT_HEADS += ("1/8 flush rivet", "M8 ISO 10642")
CYLINDERS = ("3/8 SHCS", "1/4 HEX HD CAP SCR", "10-32 S.H.C.S.", "M6x20 SHCS")
FACES = ("", "", "", "bottom", "top", "top plate", "face b")
SAID = ("EQ SP ON 3.00 B.C.", "AS SHOWN", "ON BOSS", "⌖ ⌀.014 Ⓜ A B C", "FOR DOWEL", "120° APART")
IN, MM = "in", "mm"
PER_UNIT = {IN: 1000, MM: 100}
STEP = {IN: 0.0254, MM: 0.01}  # mm


def length(unit: str, least: int = 1, greatest: int = 2500) -> st.SearchStrategy[float]:
    """Lengths [mm] as people write them: thousandths of an inch, hundredths of a millimeter."""
    return st.integers(least, greatest).map(
        lambda n: units.length(f"{n / PER_UNIT[unit]:.4f} {unit}")
    )


def _plus(value: float, steps: int, unit: str) -> float:
    """Return a size so many thousandths of an inch, or hundredths of a millimeter, over."""
    return units.length(f"{(value / STEP[unit] + steps) / PER_UNIT[unit]:.4f} {unit}")


@st.composite
def sizes(draw: st.DrawFn, unit: str, *, bare: bool = False) -> Size:
    """Sizes in one unit, plain or with a tolerance, limits, fit or bound."""
    value = draw(length(unit))
    form = "plain" if bare else draw(st.sampled_from(("plain", "limits", "both", "two", "fit")))
    bound = draw(st.sampled_from(("", "", "", "max", "min", "ref")))
    if form == "limits":
        steps = round(value / STEP[unit])
        apart = draw(st.integers(1, max(1, steps // 12)))  # nearer than a tenth, as limits are
        if steps >= 12:
            return Size.limits(least=value, greatest=_plus(value, apart, unit), unit=unit)
    if form == "both":
        amount = draw(length(unit, 1, 20))
        return Size(value=value, unit=unit, upper=amount, lower=-amount)
    if form == "two":
        upper, lower = draw(length(unit, 0, 20)), draw(length(unit, 0, 20))
        return Size(value=value, unit=unit, upper=upper, lower=0.0 - lower)
    fit = "H13" if form == "fit" and unit == MM else ""
    return Size(value=value, unit=unit, fit=fit, bound=bound)


ANGLES = st.builds(
    Size, value=st.sampled_from((60.0, 82.0, 90.0, 100.0, 120.0, 59.5)), unit=st.just("deg")
)
SIDE_ANGLES = st.builds(Size, value=st.sampled_from((90.0, 60.0, 120.0, 41.0)), unit=st.just("deg"))
COUNTS = st.sampled_from((1, 1, 2, 4, 12, 999))
TWICE = (  # a drill, and its decimal in brackets or none
    (Size(name="#7"), None),
    (Size(name="F"), Size(value=units.length(".257 in"))),
    (Size(name="#30"), Size(value=units.length(".1285 in"))),
    (Size(value=units.length("17/64 in")), Size(value=units.length(".266 in"))),
    (Size(value=units.length(".201 in")), Size(name="#7")),
)


CENTER = {
    "meaning": st.just("center drill"),
    "form": st.sampled_from("ABR"),
    "pilot": st.just(Size(value=4.0, unit="mm")),
    "diameter": st.just(Size(value=8.5, unit="mm")),
}


def maybe(strategy: st.SearchStrategy) -> st.SearchStrategy:
    """Return the value, or None for what a note does not say."""
    return st.none() | strategy


def common(
    count: int, screws: tuple[str, ...] = (*FLAT_HEADS, *CYLINDERS)
) -> dict[str, st.SearchStrategy]:
    """Return what any feature may carry."""
    return {
        "count": st.just(count),
        "side": st.sampled_from(("", "", "near", "far", "both", "other")),
        "scope": st.sampled_from(("", "", "typical", "unless otherwise specified")),
        "screw": st.sampled_from(("", "", *screws)),
        "measured_from": st.sampled_from(FACES),
    }


@st.composite
def heads(draw: st.DrawFn, unit: str) -> Head:
    """Wishes for the head."""
    states = (
        "flush",
        "flush or below",
        "within",
        "flush to below",
        "flush to proud",
        "below",
        "proud",
    )
    state = draw(st.sampled_from(states))
    amount = (
        None if state.startswith("flush") and "to" not in state else draw(sizes(unit, bare=True))
    )
    if state == "within":
        upper, lower = draw(length(unit, 1, 20)), draw(length(unit, 0, 20))
        state, amount = "flush", Size(value=0.0, unit=unit, upper=upper, lower=0.0 - lower)
    bound = amount is not None and amount.bound
    return Head(
        state=f"flush to {state}" if bound == "max" and " " not in state else state, amount=amount
    )


@st.composite
def holes(draw: st.DrawFn, unit: str, count: int) -> Hole:
    """Holes, blind or through."""
    depth = draw(maybe(sizes(unit)))
    blind = depth is not None
    twice = st.sampled_from(TWICE) if unit == IN else st.just((None, None))
    diameter, also = draw(twice | st.tuples(maybe(sizes(unit)), st.none()))
    return draw(
        st.builds(
            Hole,
            **common(count),
            diameter=st.just(diameter),
            also=st.just(also),
            depth=st.just(depth),
            through=st.just(False) if blind else st.booleans(),
            process=st.sampled_from(("", "drill", "ream", "bore", "punch", "tap drill")),
            depth_to=st.sampled_from(("", "full diameter", "point")) if blind else st.just(""),
            bottom=st.sampled_from(("", "U", "V", "W")) if blind else st.just(""),
        )
    )


@st.composite
def seats(draw: st.DrawFn, unit: str, count: int) -> Feature:
    """Seats of every kind."""
    size, shared = maybe(sizes(unit)), common(count)
    head, flag = maybe(heads(unit)), st.booleans()
    flat = {"left": size, "fillet": maybe(sizes(unit, bare=True)), "wrench_room": flag}
    flat |= common(count, CYLINDERS)
    sink = common(count, FLAT_HEADS)
    meaning = st.sampled_from(("counterdrill", "center drill", "ask"))
    kinds = (
        st.builds(Countersink, **sink, diameter=size, angle=maybe(ANGLES), depth=size, head=head),
        st.builds(Counterbore, **flat, diameter=size, depth=size, head=head),
        st.builds(Spotface, **flat, diameter=size, depth=size, clean_up=flag),
        st.builds(Counterdrill, **shared, **CENTER),
        st.builds(
            Counterdrill,
            **shared,
            meaning=meaning,
            diameter=size,
            depth=size,
            angle=maybe(ANGLES),
        ),
    )
    return draw(st.one_of(kinds))


@st.composite
def threads(draw: st.DrawFn, unit: str, count: int) -> Thread:
    """Inch and metric threads."""
    metric = {
        "size": st.sampled_from(("M8", "M10", "M2.5")),
        "pitch": st.sampled_from((None, 0.45, 0.5)),
        "thread_class": st.sampled_from(("", "6H")),
    }
    inch = {
        "size": st.sampled_from(("#10", "1/4", "1-1/4")),
        "threads_per_inch": st.sampled_from((24.0, 20.0, 32.0)),
        "series": st.sampled_from(("", "UNC", "UNF")),
        "thread_class": st.sampled_from(("", "2B")),
    }
    depth = draw(maybe(sizes(unit, bare=True)))
    return draw(
        st.builds(
            Thread,
            **common(count),
            **draw(st.sampled_from((metric, inch))),
            left_hand=st.booleans(),
            depth=st.just(depth),
            through=st.booleans() if depth is None else st.just(False),
            tap=st.sampled_from(("", "", "taper", "plug", "bottoming")),
        )
    )


@st.composite
def loose(draw: st.DrawFn, unit: str) -> Feature:
    """Chamfers and edge breaks."""
    kinds = (
        st.builds(Chamfer, **common(1), leg=maybe(sizes(unit)), angle=maybe(SIDE_ANGLES)),
        st.builds(Chamfer, **common(1), diameter=sizes(unit), angle=maybe(ANGLES)),
        st.builds(EdgeBreak, **common(1), size=maybe(sizes(unit)), burrs=st.booleans()),
    )
    return draw(st.one_of(kinds))


@st.composite
def callouts(draw: st.DrawFn) -> Callout:
    """Whole notes in one unit: holes and threads with their seats, chamfers and edges."""
    unit = draw(st.sampled_from((IN, MM)))
    features: list[Feature] = []
    for _ in range(draw(st.integers(1, 2))):
        count = draw(COUNTS)
        features.append(draw(holes(unit, count) | threads(unit, count) | seats(unit, count)))
        features += draw(st.lists(seats(unit, count), max_size=2))
    features += draw(st.lists(loose(unit), max_size=1))
    said = draw(st.lists(st.sampled_from(SAID), max_size=2, unique=True))
    return Callout(features=tuple(on_floors(features)), said_not_used=tuple(said))


def on_floors(features: list[Feature]) -> list[Feature]:
    """Return the features, a countersink narrower than the counterbore before it on its floor."""
    bore, found = None, []
    for feature in features:
        if isinstance(feature, Hole | Thread):
            bore = None
        elif isinstance(feature, Counterbore):
            bore = feature
        elif isinstance(feature, Countersink) and bore and feature.diameter and bore.diameter:
            narrow = feature.diameter.value < bore.diameter.value
            if narrow and feature.side in ("", bore.side) and not feature.measured_from:
                feature = replace(feature, measured_from="counterbore floor")
        found.append(feature)
    return found


@pytest.mark.slow
@given(callouts())
@settings(max_examples=40, deadline=None)
def test_symbols_read_back_the_same(callout: Callout) -> None:
    """A random callout written in symbols reads back as the same callout."""
    assert read(write(callout, style="symbols")) == callout


@pytest.mark.slow
@given(callouts())
@settings(max_examples=40, deadline=None)
def test_words_read_back_the_same(callout: Callout) -> None:
    """A random callout written in words reads back as the same callout."""
    assert read(write(callout, style="words")) == callout


@pytest.mark.long
@pytest.mark.parametrize("style", ["symbols", "words"])
@given(callout=callouts())
@settings(max_examples=3000, deadline=None)
def test_many_callouts_read_back_the_same(style: str, callout: Callout) -> None:
    """Thousands of random callouts read back as they were, in symbols and in words."""
    assert read(write(callout, style=style)) == callout


@st.composite
def iso_callouts(draw: st.DrawFn) -> Callout:
    """Make notes that the simplified form of ISO 15786 can carry."""
    unit, count = draw(st.sampled_from((IN, MM))), draw(COUNTS)
    size = sizes(unit)
    # bare diameter × angle is a countersink from 60° up, a chamfer up to 45°, asked between
    angle = ANGLES.filter(lambda size: size.value >= 60)
    seat = st.builds(Countersink, count=st.just(count), diameter=size, angle=angle) | st.builds(
        Counterbore, count=st.just(count), diameter=size, depth=size
    )
    depth = draw(maybe(size))
    hole = Hole(count=count, diameter=draw(size), depth=depth, through=depth is None)
    return Callout(features=(hole, *draw(st.lists(seat, max_size=1))))


@pytest.mark.slow
@given(iso_callouts())
@settings(max_examples=40, deadline=None)
def test_iso_form_reads_back_the_same(callout: Callout) -> None:
    """A hole with one seat, written as ISO 15786 lines, reads back as the same callout."""
    assert read(write(callout, style="iso")) == callout


@pytest.mark.slow
def test_corpus_reads_back_the_same(good_notes: list[str]) -> None:
    """Every note of the corpus, written in symbols and in words, says the same as before."""
    for note in good_notes:
        system = None
        try:
            callout = read(note)
        except SeatworkError:
            system = "metric" if ".5 X" in note or "6.6" in note else "inch"
            callout = read(note, system)
        for style in ("symbols", "words"):
            assert read(write(callout, style=style)) == callout, note


@pytest.mark.parametrize(
    ("note", "style", "written"),
    [
        # the order and spacing of ASME Y14.5 hole notes, from memory
        ("4x .201 thru, csk .385 x 82 deg", "symbols", "4X ⌀.201 THRU ⌵ ⌀.385 X 82°"),
        ("⌀.281 THRU ⌴ ⌀.438 ↧.25", "words", "HOLE .281 DIA THRU, C'BORE .438 DIA X .25 DP"),
        ("17/32 DR, 1-1/4 S.F., 3 HOLES", "words", "DRILL 17/32 DIA, S.F. 1.25 DIA, 3 PLACES"),
        ("⌀6.6 THRU ⌵ ⌀13 X 90°", "iso", "13 × 90°\n⌀6.6 THRU"),
        ("M10 X 25 DP, HOLE 30 DP", "iso", "M10 × 25/30"),
        ("⌀.385 +.01 -0. THRU", "symbols", "⌀.385 +.010 -.000 THRU"),
    ],
)
def test_note_is_written_as_shops_write_it(note: str, style: str, written: str) -> None:
    """Counts stand close to their X, inch sizes have no zero before the point."""
    assert write(read(note), style=style) == written


def test_iso_form_says_what_it_cannot_carry() -> None:
    """ISO form refuses a side, and says what would do."""
    with pytest.raises(SeatworkError, match="write the note in symbols or words"):
        write(read("⌀.266 THRU ⌵ ⌀.507 X 82° FAR SIDE"), style="iso")


def test_note_that_would_read_otherwise_is_not_given_out(tell: Callable) -> None:
    """A screw's name that would end the note early cannot be written."""
    callout = Callout(features=(Countersink(screw="#10, THRU 4X"),))
    with pytest.raises(SeatworkError, match="cannot carry"):
        write(callout)


def test_unknown_style_is_named() -> None:
    """A style that is none is refused with the ones there are."""
    with pytest.raises(SeatworkError, match="symbols or words or iso"):
        write(read("⌀.281 THRU"), style="pictures")
