"""The counterbore bench: a head below the face, the wrench socket, the ways out, the pilot."""

import itertools
import json
from statistics import median

import pytest
from seatwork import benches
from seatwork.benches.bank.counterbore_sums import BORE, BOSS, HEAD, KEY, held, hexagons
from seatwork.drawings.scene import GhostScene, Look, Scene
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture

INCH = 25.4
RULES_CHANGED = """format = 1

[counterbore.inch_below_face]
value = "0.020 in"
source = "a shop of this test"

[counterbore.wrench_clearance]
value = "1/16 in"
source = "a shop of this test"
"""
THREE, QUARTER, HALF, M6, M8 = (
    "3/8 hex cap (bearing cap)",
    "1/4 hex cap (guard bracket)",
    "1/2 hex cap (frame foot)",
    "M6 hex (guard bracket)",
    "M8 hex (bearing cap)",
)
WAYS = (HEAD, BORE, KEY, BOSS)
SCREWS = (THREE, QUARTER, HALF, M6, M8)


def test_it_opens_on_a_question(words):
    """A hex cap screw in a counterbore cut for its head: the socket holds nothing of it."""
    bench = benches.counterbore()
    assert "The wrench socket does not go in. How will you tighten it?" in words(bench)
    assert bench.result.lies.hold == 0
    assert bench.result.state == "below"
    shown = [c.name for c in bench.controls if not c.folded and c.needs is None]
    assert shown == ["way", "depth", "measured"]


def test_the_counterbore_cut_for_the_head():
    """Corners .650 and 1/32 of room is .681; height .243 and .010 below the face is .253.

    Sources: ASME B18.2.1, 3/8 hex cap screw: across corners .650, height .243; the .031 and .010
    are house rules (common practice, no source).
    """
    seat = benches.counterbore().result.seat
    assert seat.diameter / INCH == pytest.approx(0.650 + 0.03125)
    assert seat.depth / INCH == pytest.approx(0.243 + 0.010)


def test_the_start_is_what_the_first_screw_brings():
    """The sizes the sliders begin with are those of the screw and the way chosen first."""
    start = benches.counterbore()
    assert start.values == pytest.approx(benches.counterbore(screw=THREE, way=HEAD).values)
    assert start.set(screw=HALF).set(screw=THREE).values == pytest.approx(start.reset().values)


def test_a_larger_counterbore_lets_the_socket_in(words):
    """DIN 974-2 row 1 gives 28 mm for 16 mm across flats, the next above 9/16 in; a stand-in."""
    bench = benches.counterbore(way=BORE)
    assert bench.result.seat.diameter == pytest.approx(28.0)
    assert bench.result.lies.goes_in
    assert bench.result.lies.hold == pytest.approx(0.243 * INCH)
    assert "measure yours" in words(bench)
    assert "stands in: measure yours" in " ".join(bench.sources(bench.result))


def test_a_larger_counterbore_on_a_small_hole_wants_an_interchangeable_pilot():
    """The pilot for 28 mm on 13/32 is interchangeable, .002 under the hole (common practice)."""
    found = benches.counterbore(way=BORE).result.pilot
    assert found.kind == "removable"
    assert found.diameter / INCH == pytest.approx(13 / 32 - 0.002)


def test_a_fixed_pilot_where_the_shop_has_the_tool(words):
    """The shop's list has 11 mm with a fixed 6.55 pilot: the M6 socket head screw's tool.

    DIN 974-1, series 1: 11 mm, depth 6 + 0.4; ISO 273 medium: 6.6.
    """
    bench = benches.counterbore(screw=M6, way=KEY)
    assert bench.result.seat.diameter == pytest.approx(11.0)
    assert bench.result.seat.depth == pytest.approx(6.4)
    assert bench.result.pilot.kind == "solid"
    assert bench.result.pilot.diameter == pytest.approx(6.55)
    assert "fixed pilot" in words(bench)


def test_a_socket_head_screw_needs_no_room_for_a_wrench():
    """The 3/8 socket head screw takes 5/8 by .385, and a 5/16 key.

    Sources: ASME B18.3 appendix (5/8, from memory); head .375 and .010 by the house rule.
    """
    bench = benches.counterbore(way=KEY)
    assert bench.result.seat.diameter / INCH == pytest.approx(0.625)
    assert bench.result.seat.depth / INCH == pytest.approx(0.385)
    assert bench.result.socket is None
    assert "Key 0.313 in (7.94 mm) across flats" in bench.text


def test_a_boss_lengthens_the_grip(words):
    """On a boss cast 1/4 high, spotfaced .031: .219 stays, and .253 of pocket is not cut."""
    bench = benches.counterbore(way=BOSS)
    assert bench.result.boss.grip_gain / INCH == pytest.approx(0.25 - 0.03125 + 0.253, abs=1e-6)
    assert bench.result.floor_left / INCH == pytest.approx(1.25 - 0.03125)
    assert bench.result.state == "proud"
    assert "nothing is in the socket's way" in words(bench)


def test_your_own_socket(words):
    """A socket of .780 measured wants .811: by the house rule, not by the list."""
    bench = benches.counterbore(way=BORE, measured=True, socket="0.780 in")
    assert bench.result.seat.diameter / INCH == pytest.approx(0.780 + 0.03125)
    assert bench.result.lies.goes_in
    assert "socket as measured" in words(bench)
    assert "measure yours" not in words(bench)


def test_floor_and_web():
    """Depth .500 in a plate 1 in thick leaves .500; 28 mm at 1 in from the edge leaves 11.4 mm."""
    result = benches.counterbore(way=BORE, depth="0.500 in").result
    assert result.floor_left / INCH == pytest.approx(0.5)
    assert result.web == pytest.approx(25.4 - 14.0)


def test_cut_too_shallow_the_socket_holds_what_is_proud(words):
    """Cut .100 deep for a head .243 high: .143 proud, and no more than that is held."""
    bench = benches.counterbore(depth="0.100 in")
    assert bench.result.lies.hold / INCH == pytest.approx(0.143, abs=1e-6)
    assert "holds only 0.143 in (3.63 mm) of the head" in words(bench)
    assert bench.readouts()[0] == ["Head", "0.143 in (3.63 mm) proud"]


def test_a_washer_makes_it_wider_and_deeper():
    """A 3/8 narrow washer, .812 by .065, makes the counterbore .843 by .318.

    Source of the washer: ASME B18.21.1 type A.
    """
    seat = benches.counterbore(washer=True).result.seat
    assert seat.diameter / INCH == pytest.approx(0.812 + 0.03125)
    assert seat.depth / INCH == pytest.approx(0.253 + 0.065, abs=1e-4)


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ({"depth": "1.100 in", "thickness": "1 in"}, "depth"),
        ({"edge": "8 mm"}, "radius of the counterbore must be smaller"),
        ({"depth": "9 in"}, "goes from"),
        ({"depth": "nan"}, "nan"),
        ({"way": "hammer"}, "no such choice"),
        ({"measured": True, "socket": "0.500 in"}, "wider than the head it turns"),
        ({"way": BOSS, "depth": "0.300 in"}, "takes the whole boss"),
        ({"screw": "<b>"}, "no such job"),
        ({"screw": "M6 socket flat head"}, "wants a countersink"),
        ({"screw": "M6"}, "which head"),
        ({"depth": "-0.1 in"}, "no sign"),
    ],
)
def test_errors_are_sentences_and_change_nothing(given, sentence):
    """What cannot be is told in a sentence; the bench stays as it was."""
    bench = benches.counterbore()
    before = bench.values, bench.text
    with pytest.raises(SeatworkError) as refused:
        bench.set(**given)
    assert sentence in str(refused.value) or sentence in refused.value.value
    assert (bench.values, bench.text) == before


@pytest.mark.slow
@pytest.mark.parametrize("way", WAYS)
def test_the_text_carries_every_number(way):
    """Every number that stands on the picture stands in the text, in both systems."""
    bench = benches.counterbore(way=way, washer=True)
    one = bench.result
    for size in (one.seat.diameter, one.seat.depth, one.seat.hole_diameter, one.floor_left,
                 one.web, one.pilot.diameter, one.pilot.clearance):  # fmt: skip
        assert f"{size / INCH:.3f} in ({size:.2f} mm)" in bench.text
    assert "0.812 in (20.62 mm)" in bench.text
    metric = benches.counterbore(way=way, system="metric")
    assert f"{metric.result.floor_left:.2f} mm" in metric.text


@pytest.mark.parametrize("way", WAYS)
def test_every_number_has_its_source(way):
    """The sources name the head's document, the hole's, the pilot rule, and what is an example."""
    bench = benches.counterbore(way=way)
    told = " ".join(bench.sources(bench.result))
    for piece in ("B18.2.8", "pilot.clearance", "examples, no source", "B18.3" if way == KEY
                  else "B18.2.1"):  # fmt: skip
        assert piece in told
    assert ("DIN 974-2" in told) == (way != KEY)


@pytest.mark.parametrize(("screw", "way"), list(itertools.product(SCREWS, WAYS)))
def test_code_rebuilds_it(screw, way):
    """The line that code() gives makes a bench with the same values, brought ones or not."""
    bench = benches.counterbore(screw=screw, way=way)
    start = benches.counterbore().values["depth"]
    for depth in (bench.values["depth"], start if way != BOSS else 1.0):
        bench.set(depth=depth).use("metric")
        again = eval(bench.code(), {"benches": benches})
        assert again.values == bench.values
        assert again.text == bench.text


@pytest.mark.slow
@pytest.mark.parametrize("look", [Look(), Look(system="metric", projector=True)])
def test_nothing_overlaps_or_leaves_the_page(look, drawing_faults):
    """Over screws, ways out, washers, shallow and deep cuts all words stand clear and whole."""
    bench = benches.counterbore()
    scene = bench.scene(bench.result, look)
    drawing, found = scene.draw(), []
    for screw, way, washer in itertools.product(SCREWS, WAYS, (False, True)):
        bench.set(screw=screw, way=way, washer=washer)
        deepest = 6.0 if way == BOSS else min(30.0, bench.values["thickness"] - 1.0)
        for depth in (0.3, deepest):
            scene.move(bench.set(depth=depth).drawn)
            found += [f"{screw}, {way}, {depth}: {fault}" for fault in drawing_faults(drawing)]
    assert found == []


@pytest.mark.slow
def test_nothing_overlaps_at_the_ends_of_the_ranges(drawing_faults):
    """Thick and thin plates, near and far edges, small and wide sockets keep the words clear."""
    bench = benches.counterbore(way=BORE, measured=True)
    scene = bench.scene(bench.result, Look())
    drawing, found = scene.draw(), []
    for thick, edge, socket in itertools.product((8.0, 60.0), (25.0, 60.0), (17.0, 48.0)):
        scene.move(bench.set(thickness=thick, edge=edge, socket=socket).drawn)
        found += [f"{thick}, {edge}, {socket}: {fault}" for fault in drawing_faults(drawing)]
    assert found == []


@pytest.mark.slow
def test_moved_is_fresh():
    """A moved scene shows, to the pixel, what a fresh one shows; a wall may stay as a ghost."""
    bench = benches.counterbore(washer=True)
    scene = bench.scene(bench.result, bench.look())
    drawing = scene.draw()
    assert isinstance(scene, Scene)
    assert isinstance(scene, GhostScene)
    assert len(scene.ghosts) == 1
    for way in (KEY, BOSS, BORE):
        bench.set(way=way, washer=way == KEY)
        assert scene.move(bench.drawn) == bench.text
        assert drawing.png(0.5) == bench.drawing.png(0.5)


@pytest.mark.slow
def test_a_move_is_short_on_the_wire():
    """A step of the slider sends less than 2 kB once the page has the letters."""
    bench = benches.counterbore()
    picture = LivePicture(bench.scene(bench.result, bench.look()))
    sizes = []
    for hundredth in (*range(600, 700), *range(600, 700)):
        _, changes = picture.move(bench.set(depth=hundredth / 100).drawn)
        sizes.append(len(json.dumps(changes, separators=(",", ":"))))
    assert median(sizes[100:]) < 2000


def test_the_lists_have_every_screw():
    """Every screw of the list has its socket head twin on the same thread, hole and washer."""
    for at in map(held, hexagons()):
        assert at.hexagon.thread.diameter == at.cylinder.thread.diameter
        assert at.ring.thickness
        assert at.hole.diameter > at.hexagon.thread.diameter
    assert hexagons() == (*SCREWS, "3/8 socket head (bearing cap)")


def test_any_hex_cap_screw_goes_on_the_bench():
    """A 5/16 hex cap screw has corners of .577 and a head .211 high. Source: ASME B18.2.1."""
    bench = benches.counterbore(screw="5/16-18 hex cap")
    assert bench.result.seat.diameter / INCH == pytest.approx(0.577 + 0.03125)
    assert bench.result.seat.depth / INCH == pytest.approx(0.211 + 0.010)
    assert bench.code() == "benches.counterbore(screw='5/16-18 hex cap')"


def test_metric_and_inch_depths_name_their_own_rule():
    """A metric counterbore names the metric depth rule and ISO 273's medium fit; none is twice."""
    for screw, rule, fit in ((M8, "metric_depth", "medium"), (THREE, "inch_below_face", "normal")):
        bench = benches.counterbore(screw=screw)
        told = bench.sources(bench.result)
        assert any(f"House rule counterbore.{rule}" in line for line in told)
        assert any(f"{fit} fit" in line for line in told)
        assert len(set(told)) == len(told)


def test_house_rules_of_a_workbook_hold(tmp_path, monkeypatch):
    """A shop that wants heads .020 below the face and 1/16 of room gets both."""
    folder = tmp_path / "shop"
    folder.mkdir()
    (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    (folder / "house_rules.toml").write_text(RULES_CHANGED, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    seat = benches.counterbore().result.seat
    assert seat.depth / INCH == pytest.approx(0.243 + 0.020)
    assert seat.diameter / INCH == pytest.approx(0.650 + 0.0625)
