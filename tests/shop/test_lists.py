"""The shop's lists: read from spreadsheets, and every fault told with its place."""

from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.shop.folder import package_text
from seatwork.shop.lists.cutters import COLUMNS, cutters
from seatwork.shop.lists.machines import machines, power
from seatwork.shop.lists.materials import materials
from seatwork.shop.shop import Shop


def workbook(folder: Path, **lists: str) -> Path:
    """Make a workbook folder with lists of its own."""
    (folder / "shop").mkdir()
    (folder / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    for name, text in lists.items():
        (folder / "shop" / f"{name}.csv").write_text(text, encoding="utf-8")
    return folder


CUTTER = "cutter,kind,angle,flutes,body_diameter,nose_diameter,shank\n"


@pytest.mark.parametrize(
    ("row", "place", "remedy"),
    [
        ("C1,countersink,82,3,1/2,,straight 1/4 in", "", ""),
        ("C1,countersink,82,3,.5,,", "row 2, column body_diameter", "write .5 in or .5 mm"),
        ("C1,countersnik,82,3,1/2 in,,", "row 2, column kind", "write one of countersink"),
        ("C1,countersink,,3,1/2 in,,", "row 2, column angle", "such as 82°"),
        ("C1,countersink,82,,1/2 in,,", "row 2, column flutes", "count the lips"),
        ("C1,countersink,82,2.5,1/2 in,,", "row 2, column flutes", "count the lips"),
        ("C1,countersink,82,3,1/2 in,5/8 in,", "row 2, column nose_diameter", "check both"),
        ("C1,countersink,82,3,1/2 in,,Morse taper two", "row 2, column shank", "Morse taper 2"),
        ("C1,countersink,82,3,1/2 in,,straight wide", "row 2, column shank", "write"),
        ("C1,countersink,82,3,1/2 in,,,,,extra", "row 2", "put quotes round"),
        (",countersink,82,3,1/2 in,,", "row 2, column cutter", "write a value"),
    ],
)
def test_a_bad_cutter_is_told_with_its_place(tmp_path, row, place, remedy) -> None:
    """File, row and column of a fault are named, and what would do; a fraction is inches."""
    folder = workbook(tmp_path, cutters=CUTTER + row + "\n")
    if not place:
        assert cutters(folder)[0].body_diameter == pytest.approx(12.7)
        return
    with pytest.raises(SeatworkError) as caught:
        cutters(folder)
    assert "cutters.csv" in str(caught.value)
    assert place in str(caught.value)
    assert remedy in str(caught.value)


def test_a_name_stands_once(tmp_path: Path) -> None:
    """Two cutters of one name are refused, whatever their case, with the first row named."""
    rows = "C1,countersink,82,3,1/2 in,,\nc1,countersink,90,3,1/2 in,,\n"
    with pytest.raises(SeatworkError, match="row 3, column cutter: c1 stands in row 2 too"):
        cutters(workbook(tmp_path, cutters=CUTTER + rows))


@pytest.mark.parametrize(
    ("headings", "told"),
    [
        ("cutter,kind", "column body_diameter: the heading is missing"),
        ("cutter,kind,body_diameter,colour", "column colour: the heading is not known"),
        ("cutter,kind,kind,body_diameter", "column kind: the heading stands there twice"),
        ("", "column cutter: the heading is missing"),
    ],
)
def test_bad_headings_are_told(tmp_path: Path, headings: str, told: str) -> None:
    """Missing, unknown and doubled headings are named, in row 1."""
    with pytest.raises(SeatworkError, match=told):
        cutters(workbook(tmp_path, cutters=headings + "\n"))


def test_semicolons_and_a_byte_order_mark_are_read(tmp_path: Path) -> None:
    """What a spreadsheet saves in another language reads the same."""
    text = "\ufeff" + (CUTTER + "C1,countersink,82,3,1/2 in,,\n").replace(",", ";")
    assert cutters(workbook(tmp_path, cutters=text))[0].name == "C1"


def test_a_material_without_speed_has_no_value(tmp_path: Path) -> None:
    """A blank speed is no guess: asking for it says so and what would do."""
    text = "material,cutting_oil\nbronze,dry\n"
    (bronze,) = materials(workbook(tmp_path, materials=text))
    assert bronze.drill_speed_low is None
    with pytest.raises(SeatworkError, match="no value for its cutting speed"):
        _ = bronze.drill_speeds


@pytest.mark.parametrize(
    ("row", "place"),
    [
        ("bronze,dry,200 sfm,,a book", "column drill_speed_high"),
        ("bronze,dry,300 sfm,200 sfm,a book", "column drill_speed_high"),
        ("bronze,dry,200 sfm,300 sfm,", "column speed_source"),
        ("bronze,dry,200,300,a book", "column drill_speed_low"),
        ("bronze,,200 sfm,300 sfm,a book", "column cutting_oil"),
    ],
)
def test_a_bad_material_is_told_with_its_place(tmp_path: Path, row: str, place: str) -> None:
    """A range needs both ends in order, units and a source."""
    head = "material,cutting_oil,drill_speed_low,drill_speed_high,speed_source\n"
    with pytest.raises(SeatworkError, match=f"materials.csv, row 2, {place}"):
        materials(workbook(tmp_path, materials=head + row + "\n"))


def test_machines_by_steps_pulleys_gears_and_range(tmp_path: Path) -> None:
    """Speeds come as a list, from pulleys, with a gear in, or as a range."""
    text = (
        "machine,kind,speeds,motor_speed,motor_pulleys_mm,spindle_pulleys_mm,gear_ratio\n"
        "steps,drill press,550 250/410,,,,\n"
        "belt,drill press,,1700,50 100,100 100,\n"
        "geared,mill,80 160,,,,0.1\n"
        "drive,mill,60 to 4200,,,,\n"
    )
    steps, belt, geared, drive = machines(workbook(tmp_path, machines=text))
    assert steps.speeds == (250, 410, 550)
    assert belt.speeds == (850, 1700)
    assert geared.speeds == pytest.approx((8, 16, 80, 160))
    assert (drive.speeds.slowest, drive.speeds.fastest) == (60, 4200)
    assert [one.slowest for one in (steps, drive)] == [250, 60]


@pytest.mark.parametrize(
    ("row", "place"),
    [
        ("m,drill press,,,", "column speeds"),
        ("m,drill press,250 fast,,", "column speeds"),
        ("m,drill press,900 to 100,,", "column speeds"),
        ("m,press,250,,", "column kind"),
        ("m,drill press,250,many hp,", "column motor_power"),
        ("m,drill press,250,,8", "column natural_frequency_hz"),
    ],
)
def test_a_bad_machine_is_told_with_its_place(tmp_path: Path, row: str, place: str) -> None:
    """A machine needs speeds, a known kind, a power with unit, stiffness whole or not at all."""
    head = "machine,kind,speeds,motor_power,stiffness_n_per_um\n"
    with pytest.raises(SeatworkError, match=f"machines.csv, row 2, {place}"):
        machines(workbook(tmp_path, machines=head + row + "\n"))


@pytest.mark.parametrize(("text", "watts"), [("1/3 hp", 248.6), ("1.5 kW", 1500), ("250w", 250)])
def test_power_is_read_with_its_unit(text: str, watts: float) -> None:
    """A horsepower is 745.7 W."""
    assert power(text) == pytest.approx(watts, abs=0.05)


@pytest.mark.parametrize("text", ["0 hp", "1/0 hp", "hp", "-1 hp", "1e9 W", "5"])
def test_no_power_without_size_and_unit(text: str) -> None:
    """Zero, unitless and odd powers are refused."""
    with pytest.raises(SeatworkError, match="that is no power"):
        power(text)


def test_the_demo_shop_is_the_cider_mill_class() -> None:
    """The package's own lists hold the class's machines, metals and every kind of cutter."""
    shop = Shop.at()
    assert {"bench drill press", "knee mill", "lathe"} <= {one.name for one in shop.machines}
    metals = {"gray iron", "1018 steel", "6061 aluminum", "sheet steel"}
    assert metals <= {one.name for one in shop.materials}
    kinds = {"countersink", "cross-hole countersink", "counterbore", "stop cage", "pilot"}
    assert kinds <= {one.kind for one in shop.cutters}
    for material in shop.materials:
        assert material.speed_source
        assert material.drill_speeds[0] <= material.drill_speeds[1]
    assert shop.material("gray iron").dry
    assert not shop.material("1018 steel").dry


def test_headings_of_the_demo_list_are_all_known() -> None:
    """The list that a workbook gets shows every heading there is."""
    assert package_text("cutters.csv").splitlines()[0].split(",") == list(COLUMNS)


def test_an_unknown_name_is_answered_with_the_names_there_are() -> None:
    """Asking for a machine the shop has not tells which ones it has."""
    with pytest.raises(SeatworkError, match="it lists bench drill press, knee mill"):
        Shop.at().machine("jig borer")
    with pytest.raises(
        SeatworkError, match=r"machines\.csv.*: which of its lines is meant .* bench drill"
    ):
        Shop.at().machine(" ")
    assert Shop.at().machine(" Knee Mill ").name == "knee mill"
