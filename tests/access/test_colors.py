"""Every color keeps its contrast where it meets another, and no style sheet hides or moves."""

import re

import pytest

from tests.access.colors import (
    HOME,
    LETTERS,
    STYLE,
    blocks,
    contrast,
    every_palette,
    pairs,
    palettes,
)

SHEETS = {path.name: path.read_text("utf-8") for path in sorted(HOME.rglob("*.css"))}


@pytest.mark.parametrize(
    ("one", "other", "ratio"),
    [("#000000", "#ffffff", 21.0), ("#0072b2", "#ffffff", 5.2), ("#e69f00", "#ffffff", 2.3)],
)
def test_the_yardstick_itself(one, other, ratio):
    """The contrast formula gives the ratios published for black and for two common colors.

    Source: WCAG 2.2 (21:1 for black on white); ratios of the two colors on white to one decimal
    from a survey of color-blind-safe palettes.
    """
    assert contrast(one, other) == pytest.approx(ratio, abs=0.06)


def test_every_pair_that_meets_has_its_contrast():
    """Letters stand 4.5:1, lines and the ring of the focus 3:1 (WCAG 2.2, 1.4.3 and 1.4.11)."""
    assert [one for one in pairs() if one.ratio < one.need] == []


def test_no_color_is_forgotten():
    """Each color of each palette is in a pair that needs contrast; both themes are there."""
    seen = set()
    for where, name, colors, needs in every_palette():
        seen.add((where, name))
        met = {role for pair in needs if set(pair) <= set(colors) for role in pair}
        assert set(colors) == met, (where, name)
    homes = {where for where, _ in seen}
    assert len(homes) == 5
    assert {(where, theme) for where in homes for theme in ("light", "dark")} <= seen


def test_no_color_stands_beside_the_named_ones():
    """Outside what is printed, a style sheet names a color once, as a property of its palette."""
    loose = [
        (name, found)
        for name, style in {**SHEETS, "export": STYLE}.items()
        for around, inside in blocks(style)
        if "print" not in around
        for found in re.findall(r"^\s*(?!--)[\w-]+:[^;]*#[0-9a-fA-F]{3,6}", inside, re.MULTILINE)
        if not re.search(r"var\(|#fff\b", found)
    ]
    assert loose == []


def test_a_palette_is_read_as_the_browser_reads_it():
    """Dark is what its own block says over what is said for both."""
    style = ":root { --ink: #000; --line: #555; } @media (x: dark) { :root { --ink: #fff; } }"
    told = {"light": {"ink": "#000", "line": "#555"}, "dark": {"ink": "#fff", "line": "#555"}}
    assert palettes(style) == told
    assert contrast("#fff", "#000") > LETTERS


@pytest.mark.parametrize("name", sorted(SHEETS))
def test_nothing_moves_where_less_motion_is_wanted(name):
    """Transitions and animations stand under the reader's leave, and no focus loses its ring."""
    for around, inside in blocks(SHEETS[name]):
        moves = re.search(r"\b(transition|animation)\s*:", inside)
        assert not moves or "prefers-reduced-motion: no-preference" in around
        assert not re.search(r"outline\s*:\s*(none|0)", inside)
