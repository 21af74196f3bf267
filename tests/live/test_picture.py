"""The live picture: what is read off a scene, and that it is what matplotlib would draw."""

import json
import re

import numpy as np
import pytest
from matplotlib.figure import Figure
from matplotlib.patches import FancyArrowPatch, PathPatch, Rectangle
from matplotlib.path import Path
from seatwork.drawings.scene import Drawing, Look
from seatwork.live.outlines import path_data, relative_data
from seatwork.live.picture import LivePicture

KINDS = ["path", "path", "path", "path", "marks", "marks", "path", "image", "text", "text"]


class Fixed:
    """A scene of whatever artists a test puts into an axes of 100 by 50 pixels."""

    def __init__(self, put):
        self.put = put

    def draw(self):
        """Make a figure whose data coordinates are its pixels."""
        figure = Figure(figsize=(1, 0.5), dpi=100)
        axes = figure.add_axes((0, 0, 1, 1), xlim=(0, 100), ylim=(0, 50))
        axes.set_axis_off()
        self.artist = self.put(axes)
        axes.set(xlim=(1, 100), ylim=(1, 50)) if axes.get_xscale() == "log" else None
        return Drawing(figure, "fixed")

    def move(self, change):
        """Let the test change the artist."""
        change(self.artist)
        return "moved"


def line(axes):
    """Put in a moving line from corner to corner."""
    return axes.plot([0, 100], [0, 50], color="k", lw=1.44, ls="--", animated=True)[0]


@pytest.fixture
def picture(plug):
    """Take the plug's picture."""
    return LivePicture(plug.PlugScene(plug.Plug(depth=3.81), Look()))


def test_each_kind_of_artist_has_its_element(picture):
    """Lines, patches, markers, scatter, image and texts become elements, in drawing order."""
    found = [looks["kind"] for looks in picture.page()["looks"]]
    assert sorted(found) == sorted(KINDS)


def test_drawing_order_is_kept(picture):
    """Still and moving artists alternate as matplotlib would draw them; nothing is lost."""
    order = picture.page()["order"]
    assert [n for moves, n in order if moves] == list(range(10))
    assert [n for moves, n in order if not moves] == list(range(len(picture.layers)))
    assert order[0] == [0, 0]
    assert order[-1] == [0, len(picture.layers) - 1]


def test_a_line_lies_where_its_data_lie():
    """Data coordinates become tenths of a pixel, y downwards; dashes and width in the same."""
    page = LivePicture(Fixed(line)).page()
    assert page["state"][0]["d"] == "M0 500 1000 0"
    assert page["looks"][0]["stroke-width"] == 20.0
    assert page["looks"][0]["stroke-dasharray"].split()[0] == "74"


def test_only_what_changed_is_sent():
    """A second move to the same place says nothing; another place says its data alone."""
    picture = LivePicture(Fixed(line))
    for expected in ({"0": {"d": "M0 0 1000 500"}}, {}):
        _, changes = picture.move(lambda artist: artist.set_data([0, 100], [50, 0]))
        assert changes["move"] == expected


def test_visibility_and_color_follow():
    """An artist that is hidden or takes another color is so on the page."""
    picture = LivePicture(Fixed(line))
    _, changes = picture.move(lambda artist: artist.set(visible=False, color="#ff0000"))
    assert changes["move"] == {"0": {"display": "none", "stroke": "#ff0000"}}


def test_a_gap_breaks_a_line():
    """NaN ends a stroke and begins the next."""
    path = Path([(0, 0), (1, 1), (np.nan, np.nan), (2, 2), (3, 3)])
    assert path_data(path, np.eye(3)) == "M0 0L1 1M2 2L3 3"


def test_a_path_without_a_finite_vertex_is_empty():
    """Nothing to draw is no data, not an error."""
    assert path_data(Path([(np.nan, 0)]), np.eye(3)) == ""


def test_curves_and_closing_are_kept():
    """Curves stay curves and a closed path closes."""
    codes = [Path.MOVETO, Path.CURVE3, Path.CURVE3, Path.CURVE4, Path.CURVE4, Path.CURVE4]
    path = Path([(n, n) for n in range(7)], [*codes, Path.CLOSEPOLY])
    assert path_data(path, np.eye(3)) == "M0 0Q1 1 2 2C3 3 4 4 5 5Z"
    assert relative_data(path, 1.0) == "m0 0q1 -1 2 -2c1 -1 2 -2 3 -3z"


def test_a_long_line_is_thinned_to_what_can_be_seen():
    """Ten thousand points on a straight line are not sent one by one."""
    path = Path(np.column_stack([np.linspace(0, 100, 10_000), np.zeros(10_000)]))
    assert len(path_data(path, np.diag([10.0, 10.0, 1.0]))) < 1000


def test_clipping_is_kept():
    """Artists are bounded by their axes, or by a path of their own."""

    def put(axes):
        artist = line(axes)
        artist.set_clip_path(Path([(10, 10), (20, 10), (20, 20)]), axes.transData)
        return artist

    assert LivePicture(Fixed(line)).page()["looks"][0]["clip"] == "M0 500 0 0 1000 0 1000 500Z"
    assert LivePicture(Fixed(put)).page()["looks"][0]["clip"] == "M100 400 200 400 200 300"


def test_texts_travel_as_words_with_the_letters_they_need():
    """A letter's shape is sent once; the words, as soon as they change."""
    picture = LivePicture(Fixed(lambda axes: axes.text(50, 25, "07", animated=True)))
    known = {letter for _, letter, *_ in picture.page()["letters"]}
    assert set("07") <= known
    assert "Q" not in known
    _, changes = picture.move(lambda artist: artist.set_text("0Q"))
    assert changes["move"]["0"]["lines"][0][0] == "0Q"
    assert [letter for _, letter, *_ in changes["letters"]] == ["Q"]
    assert "letters" not in picture.move(lambda artist: artist.set_text("Q0"))[1]


@pytest.mark.parametrize("va", ["top", "center", "baseline", "bottom", "center_baseline"])
@pytest.mark.parametrize("ha", ["left", "center", "right"])
@pytest.mark.parametrize("rotation", [0, 30, 90])
def test_texts_lie_where_matplotlib_lays_them(ha, va, rotation):
    """The box of a text is matplotlib's, but for hinting, which widens letters to whole pixels."""
    style = {"ha": ha, "va": va, "rotation": rotation, "size": 12}

    def put(axes):
        ground = {"boxstyle": "square,pad=0", "fc": "w"}
        return axes.text(50, 25, "0.507 in", bbox=ground, animated=True, **style)

    scene = Fixed(put)
    page = LivePicture(scene).page()
    state, scale = page["state"][0], page["looks"][0]["scale"]
    x, y, width, height = (scale * side / 10 for side in state["box"])
    corners = np.array([(x, y), (x + width, y), (x, y + height), (x + width, y + height)])
    turn = np.radians(state["at"][2])
    rotated = corners @ [[np.cos(turn), np.sin(turn)], [-np.sin(turn), np.cos(turn)]]
    placed = rotated + np.array(state["at"][:2]) / 10
    theirs = scene.artist.get_window_extent()
    ours = [*placed.min(axis=0), *placed.max(axis=0)]
    expected = [theirs.x0, 50 - theirs.y1, theirs.x1, 50 - theirs.y0]
    assert ours == pytest.approx(expected, abs=2)


@pytest.mark.parametrize(
    "put",
    [
        lambda axes: axes.text(0, 0, "$x$", animated=True),
        lambda axes: axes.add_patch(FancyArrowPatch((0, 0), (1, 1), animated=True)),
        lambda axes: axes.scatter([1, 2], [1, 2], s=[1, 9], animated=True),
        lambda axes: axes.set(xscale="log") and axes.plot([1, 2], [1, 2], animated=True),
    ],
    ids=["mathtext", "arrow", "many sizes", "log axes"],
)
def test_what_cannot_be_carried_is_refused_at_once(put):
    """A scene with an artist of another kind fails when it is built, not when it moves."""
    with pytest.raises(TypeError):
        LivePicture(Fixed(put))


def test_a_move_is_about_a_kilobyte(plug, picture):
    """Ten elements with texts take well under a kilobyte; twenty are allowed about one."""
    picture.page()
    _, changes = picture.move(plug.Plug(depth=5.0))
    assert len(json.dumps(changes)) < 1000


@pytest.mark.slow
def test_still_layers_leave_out_what_moves(plug, picture):
    """The ground of the figure is the same for two parts whose pictures differ."""
    other = LivePicture(plug.PlugScene(plug.Plug(depth=8.0), Look()))
    assert other.layers == picture.layers
    assert other.drawing.png() != picture.drawing.png()


@pytest.mark.slow
def test_a_sharper_ground_has_more_pixels(picture):
    """Twice the scale is twice the width, from the same figure, which stays as it was."""
    size = picture.drawing.figure.get_size_inches() * picture.drawing.figure.dpi
    widths = [int.from_bytes(picture.still(scale)[0][16:20]) for scale in (1, 2)]
    assert widths == [720, 1440]
    assert list(picture.drawing.figure.get_size_inches() * 100) == list(size)


def test_outlines_that_stay_behind_are_those_asked_for(picture):
    """Cone and plug leave their outlines, lines and texts do not."""
    assert len(picture.ghost()) == 2
    assert all(re.match(r"M\d", outline) for outline in picture.ghost())


def test_a_patch_with_a_place_of_its_own_follows():
    """A rectangle that is moved by its corner lies there on the page."""
    put = lambda axes: axes.add_patch(Rectangle((0, 0), 10, 10, animated=True))  # noqa: E731
    picture = LivePicture(Fixed(put))
    _, changes = picture.move(lambda artist: artist.set_xy((50, 10)))
    assert changes["move"]["0"]["d"] == "M500 400L600 400L600 300L500 300Z"


def test_an_outline_follows_every_path_it_is_given():
    """A patch follows its second new path as its first, though none makes it stale."""
    square = Path([(0, 0), (10, 0), (10, 10), (0, 10)])
    put = lambda axes: axes.add_patch(PathPatch(square, animated=True))  # noqa: E731
    picture = LivePicture(Fixed(put))
    for size in (20, 30, 20):
        path = Path(square.vertices * size / 10)
        _, changes = picture.move(lambda artist, path=path: artist.set_path(path))
        assert changes["move"]["0"]["d"].startswith(f"M0 500 {size * 10} 500 ")
    _, changes = picture.move(lambda artist: None)
    assert changes["move"] == {}
