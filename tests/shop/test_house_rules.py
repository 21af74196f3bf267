"""House rules: defaults with their sources, changes by the instructor, errors with their line."""

from pathlib import Path

import pytest
from seatwork import shop
from seatwork.errors import SeatworkError
from seatwork.shop.house import house_rules

IN = 25.4


@pytest.fixture
def workbook(tmp_path: Path) -> Path:
    """Make an empty workbook folder."""
    (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    (tmp_path / "shop").mkdir()
    return tmp_path


def put(workbook: Path, text: str) -> None:
    """Write the rule file of a workbook folder."""
    (workbook / "shop" / "house_rules.toml").write_text(text, encoding="utf-8")


@pytest.mark.parametrize(
    ("name", "value"),
    [
        # US Army TC 9-524 ch. 4
        ("speeds.countersink_ratio", 0.5),
        # common practice, no source: the rows below
        ("speeds.countersink_cap", 300),
        ("speeds.counterbore_ratio", 2 / 3),
        ("speeds.spotface_ratio", 2 / 3),
        ("flush.greatest_below", 0.015 * IN),
        ("flush.greatest_proud", 0),
        ("chamfer.included_angle", 90),
        ("chamfer.inch_leg", IN / 32),
        ("chamfer.inch_greatest", IN / 16),
        ("chamfer.metric_leg", 1),
        ("chamfer.metric_greatest", 2),
        ("pilot.clearance", 0.002 * IN),
        ("counterbore.inch_below_face", 0.010 * IN),
        ("countersink.inch_angle", 82),
        ("countersink.metric_angle", 90),
        ("countersink.aircraft_angle", 100),
        ("countersink.center_angle", 60),
        ("tapped_hole.chamfer_angle", 90),
        ("tapped_hole.chamfer_over", 0.020 * IN),
        # from memory
        ("countersink.sheet_share", 2 / 3),
    ],
)
def test_default_is_the_decided_value(name: str, value: float) -> None:
    """Each disputed rule has its decided default [mm, deg, rev/min or none]."""
    assert house_rules.defaults().number(name) == pytest.approx(value, rel=1e-12)


@pytest.mark.parametrize(
    ("name", "word"),
    [
        ("speeds.constant", "exact"),
        ("speeds.step", "next down"),
        ("counterbore.metric_depth", "DIN 974-1"),
        ("display.system", "inch"),
        ("display.paper", "letter"),
    ],
)
def test_default_word(name: str, word: str) -> None:
    """Rules that are a choice have their decided word."""
    assert house_rules.defaults().word(name) == word


def test_every_rule_has_its_papers() -> None:
    """Every rule says what it settles, where it comes from, and how far that is confirmed."""
    for rule in house_rules.defaults().values():
        assert rule.about, rule.name
        assert rule.source, rule.name
        assert rule.confirmed in ("two-source", "one-source", "memory"), rule.name
        assert all(other.value and other.source for other in rule.alternatives), rule.name


def test_every_alternative_can_be_put_in_force() -> None:
    """What others do can be written into the rule file as it stands beside the rule."""
    for rule in house_rules.defaults().values():
        section, _, key = rule.name.partition(".")
        for other in rule.alternatives:
            found = house_rules.apply(f'[{section}]\n{key} = "{other.value}"', "rules")
            assert found[rule.name].text == other.value


def test_no_workbook_folder_gives_defaults_and_writes_nothing(tmp_path: Path) -> None:
    """Without a workbook folder the package's defaults hold, and no file appears."""
    assert shop.find(tmp_path) is None
    assert "no workbook folder" in house_rules.defaults().origin
    assert list(tmp_path.iterdir()) == []


def test_workbook_folder_is_found_from_below(workbook: Path) -> None:
    """The marker is looked for from the working folder upward."""
    below = workbook / "notebooks" / "deep"
    below.mkdir(parents=True)
    assert shop.find(below) == workbook.resolve()


def test_marker_of_another_format_is_refused(workbook: Path) -> None:
    """A workbook folder of a later format is named, not guessed at."""
    (workbook / "workbook.toml").write_text("format = 9\n", encoding="utf-8")
    with pytest.raises(SeatworkError, match=r"workbook\.toml: its format is 9"):
        shop.find(workbook)


def test_changed_rule_is_in_force_with_its_file_and_line(workbook: Path) -> None:
    """A change tells file, line and source; the old value moves to the alternatives."""
    put(workbook, '# ours\n[speeds]\ncountersink_ratio = { value = "1/3", source = "our book" }\n')
    rule = shop.rules(workbook)["speeds.countersink_ratio"]
    assert rule.value == pytest.approx(1 / 3)
    assert rule.source == "our book"
    assert rule.changed_in.endswith("house_rules.toml, line 3")
    assert rule.alternatives[0].value == "1/2"
    assert rule.default == "1/2"


def test_saved_file_is_read_again(workbook: Path) -> None:
    """A rule file that was saved again is in force at once."""
    put(workbook, '[display]\nsystem = "metric"\n')
    assert shop.rules(workbook).word("display.system") == "metric"
    put(workbook, '[display]\n# back again\nsystem = "inch"\n')
    assert shop.rules(workbook).word("display.system") == "inch"


@pytest.mark.parametrize(
    ("text", "line", "says"),
    [
        ('[speeds]\ncountersink_rato = "1/3"', 2, "speeds.countersink_ratio may be meant"),
        ('[sped]\ncountersink_ratio = "1/3"', 1, "speeds may be meant"),
        ('[speeds]\n\n# slow\ncountersink_cap = "300"', 4, "300 rev/min"),
        ('[speeds]\ncountersink_cap = "300 mm"', 2, "spindle speed is in rev/min"),
        ('[flush]\ngreatest_below = "0.5"', 2, "in or mm?"),
        ('[flush]\ngreatest_below = "1 in"', 2, "from 0 in to 0.125 in"),
        ('[flush]\ngreatest_below = "15 mil"', 2, "mil"),
        ('[countersink]\ninch_angle = "41°"', 2, "from 60° to 130°"),
        ('[display]\nsystem = "imperial"', 2, "inch or metric"),
        ("[display]\nsystem = true", 2, "the value is not text"),
        ("[display]\ninch_places = 3.5", 2, "whole number"),
        ('[speeds]\ncountersink_ratio = "1/0"', 2, "a ratio, such as 1/2"),
        ('[speeds]\ncountersink_ratio = "nan"', 2, "a ratio, such as 1/2"),
        ('speeds = "fast"', 1, "a heading, not a rule"),
        ("[speeds]\ncountersink_ratio =", 2, "cannot be read"),
        ("format = 2", 1, "format 2 is not known"),
        ('[speeds]\ncountersink_ratio = { vale = "1/3" }', 2, "value and source"),
        ('[speeds]\ncountersink_ratio = """\n1/3\n9"""', 2, "a ratio"),
        ('[speeds]\nstep="nearest"\nspeeds.x.y = 1', 3, "no house rule"),
    ],
)
def test_bad_rule_gives_file_line_and_remedy(
    workbook: Path, text: str, line: int, says: str
) -> None:
    """A rule that cannot stand is told with file, line, and what would do."""
    put(workbook, text)
    with pytest.raises(SeatworkError) as caught:
        shop.rules(workbook)
    assert f"house_rules.toml, line {line}: " in str(caught.value)
    assert says in str(caught.value)


def test_file_that_is_no_text_is_told(workbook: Path) -> None:
    """A rule file saved in another encoding is told with its line."""
    path = workbook / "shop" / "house_rules.toml"
    path.write_bytes(b'[display]\n# gr\xf6\xdfe\nsystem = "inch"\n')
    with pytest.raises(SeatworkError, match="line 2: that is not UTF-8"):
        shop.rules(workbook)


def test_template_holds_every_rule_and_changes_none() -> None:
    """The rule file handed out shows every rule, all switched off."""
    text = house_rules.template()
    found = house_rules.apply(text, "template")
    assert found == dict(house_rules.defaults())
    for rule in found.values():
        assert f'# {rule.name.partition(".")[2]} = "{rule.text}"' in text


def test_template_can_be_switched_on_line_by_line() -> None:
    """With the # taken off, every line of the template is a rule that can stand."""
    lines = house_rules.template().splitlines()
    on = [line[2:] if line.startswith("# ") and ' = "' in line else line for line in lines]
    found = house_rules.apply("\n".join(on), "template")
    assert {rule.value for rule in found.values() if not rule.changed_in} == set()


def test_table_shows_lengths_in_both_systems() -> None:
    """The page of rules shows each rule with source and alternatives."""
    rows = {row["rule"]: row for row in house_rules.defaults().table()}
    assert rows["flush.greatest_below"]["value"] == "0.015 in (0.38 mm)"
    assert rows["speeds.countersink_cap"]["value"] == "300 rev/min"
    assert "1/3" in rows["speeds.countersink_ratio"]["alternatives"]


def test_unknown_name_is_refused_with_the_nearest() -> None:
    """Code that asks for a rule that is none is told the nearest."""
    with pytest.raises(SeatworkError, match=r"flush\.greatest_below may be meant"):
        house_rules.defaults()["flush.greatest_belw"]


def test_word_and_number_are_not_mixed_up() -> None:
    """A choice has no number, a number no word."""
    with pytest.raises(SeatworkError, match="a word, not a number"):
        house_rules.defaults().number("display.system")
    with pytest.raises(SeatworkError, match="a number, not a word"):
        house_rules.defaults().word("flush.greatest_below")
