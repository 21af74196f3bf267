"""The numbers that a pick says and no bench fills in, worked out again in plain geometry.

Sizes are those of the question itself; each formula is plain trigonometry of a cone cut down the
middle, written out here with nothing of the package. Sizes of screws, washers and drills are
those of the published tables that the lessons name.
"""

from math import cos, pi, radians, tan
from types import SimpleNamespace

import pytest
from seatwork.picks.wording import words


def down(diameter: float, hole: float, angle: float) -> float:
    """Work out the depth of a cone: half the difference by the tangent of half the angle."""
    return (diameter - hole) / 2 / tan(radians(angle / 2))


FIGURES = SimpleNamespace(
    whole_difference=(0.507 - 0.266) / tan(radians(41)),
    whole_angle=(0.507 - 0.266) / 2 / tan(radians(82)),
    eight_degrees=down(0.507, 0.266, 82) - down(0.507, 0.266, 90),
    eighteen_degrees=down(0.507, 0.266, 82) - down(0.507, 0.266, 100),
    two_degrees=down(0.507, 0.266, 80) - down(0.507, 0.266, 82),
    wide=2 * 0.005 * tan(radians(41)),
    caliper=(0.507 - 0.477) / 2 / tan(radians(41)),
    on_the_slope=0.266 + 2 * 0.030 * cos(radians(45)),
    steep_tool=0.266 + 2 * 0.030 * tan(radians(41)),
    legs=2 * (1 / 25.4 - 1 / 32),
    spot_90=0.306 / 2 / tan(radians(45)),
    spot_120=0.306 / 2 / tan(radians(60)),
    point=17 / 32 / 2 / tan(radians(59)),
    counted=640 / 60 * 22,
    shortcut=100 * (4 / (12 / pi) - 1),
    bench_card=90 * 12 / pi / 0.5,
    skin=0.500 - 1 / 32,
    left=0.450 - 1 / 32,
    third=349 * 2 / 3,
    of_a_third=349 / 3,
    fillet=(0.415 - 13 / 32) / 2,
    pilot=13 / 32 - 0.002,
    middle=(0.385 + 0.411) / 2,
)


@pytest.mark.parametrize(
    ("pick", "figure", "said"),
    [
        ("depth-halves", FIGURES.whole_difference, ".277"),
        ("depth-halves", FIGURES.whole_angle, ".017"),
        ("angle-eight", FIGURES.eight_degrees, ".018"),
        ("angle-hundred", FIGURES.eighteen_degrees, ".038"),
        ("flush-steep", FIGURES.two_degrees, ".005"),
        ("depth-stop", FIGURES.wide, ".009"),
        ("flush-caliper", FIGURES.caliper, ".017"),
        ("chamfer-two", FIGURES.on_the_slope, ".308"),
        ("chamfer-82tool", FIGURES.steep_tool, ".318"),
        ("chamfer-wider", FIGURES.legs, ".016"),
        ("chamfer-flatspot", FIGURES.spot_90, ".153"),
        ("chamfer-flatspot", FIGURES.spot_120, ".088"),
        ("note-point", FIGURES.point, ".160"),
        ("chatter-count", FIGURES.counted, "235"),
        ("speed-four", FIGURES.shortcut, "4.7"),
        ("speed-bench", FIGURES.bench_card, "688"),
        ("speed-third", FIGURES.third, "233"),
        ("speed-third", FIGURES.of_a_third, "116"),
        ("spot-thin", FIGURES.skin, ".469"),
        ("spot-left", FIGURES.left, ".419"),
        ("bore-fillet", FIGURES.fillet, ".0044"),
        ("bore-pilot", FIGURES.pilot, ".404"),
        ("part-aim", FIGURES.middle, ".398"),
    ],
)
def test_a_number_is_what_the_geometry_gives(pick: str, figure: float, said: str) -> None:
    """It stands in the pick's words, rounded as it is said."""
    asked = words(pick)
    told = " ".join([asked.question, asked.after, *asked.choice.values(), *asked.tempt.values()])
    assert said in told
    places = len(said.partition(".")[2])
    assert f"{figure:.{places}f}".lstrip("0") == said


@pytest.mark.parametrize(
    ("pick", "right"),
    [
        ("seats-length", "c"),  # lengths of flat and other heads: ASME B18.6.3 and B18.3
        ("angle-web", "a"),  # the steeper of two cones between the same diameters is deeper
        ("depth-wall", "b c"),  # both halves are missing
        ("chamfer-order", "b"),  # drill, chamfer, tap: common practice, no source
        ("speed-step", "a"),  # the next step down: common practice, no source
        ("speed-bench", "a"),  # 12 × speed ÷ (π × diameter)
        ("note-fight", "d"),  # ask: common practice, no source
        ("spot-feeler", "c"),  # face it: common practice, no source
        ("bore-pilot", "b"),  # .001 to .003 under the hole: common practice, no source
        ("part-cannot", "c"),  # a reading within its doubt of a limit decides nothing: ISO 14253-1
    ],
)
def test_the_right_bet_is_the_trades(pick: str, right: str) -> None:
    """What counts as right is a fact of the trade or of plane geometry."""
    assert words(pick).right == right
