"""Jobs: the shop's own list, any screw by its name, and what is refused."""

import pytest
from seatwork.errors import SeatworkError
from seatwork.hardware.job_list import FORMER, SEATS, flat_job, flat_jobs, job, jobs
from seatwork.shop.shop import Shop

HEADS = "job,seat,screw,hole,diameter,material,machine,thickness,edge_distance,note\n"


@pytest.fixture
def own_list(tmp_path, monkeypatch):
    """Write a workbook's own list of jobs."""

    def write(rows: str) -> None:
        (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
        (tmp_path / "shop").mkdir(exist_ok=True)
        (tmp_path / "shop" / "jobs.csv").write_text(HEADS + rows, encoding="utf-8")
        monkeypatch.chdir(tmp_path)

    return write


def test_every_job_of_the_list_can_be_cut_in_this_shop() -> None:
    """Material and machine stand in the shop's own lists, and the hole clears the screw."""
    shop = Shop.at()
    for name in jobs():
        found = job(name)
        assert found.seat in SEATS
        assert shop.material(found.material)
        assert shop.machine(found.machine)
        assert found.fastener is None or found.hole.diameter > found.screw.thread.diameter


def test_a_screw_in_no_list_is_a_job_too() -> None:
    """An M8 socket flat head goes in a medium hole of 9 mm. Source: ISO 273, by the table."""
    found = job("M8 socket flat head")
    assert found.hole.diameter == 9.0
    assert found.flat
    assert found.seat == "countersink"
    assert job("1/2-13 hex cap").seat == "counterbore"


def test_which_screw_is_meant_is_asked() -> None:
    """M6 flat head may be slotted, recessed or socket: nothing is taken for granted."""
    with pytest.raises(SeatworkError, match="slotted, recessed or socket"):
        job("M6 flat head")
    with pytest.raises(SeatworkError, match="cannot read 'fram'"):
        job("1/4 flat head 82° (fram)")


def test_a_head_without_a_cone_is_no_flat_job() -> None:
    """A hex cap has no countersink, and the guard's edges have no screw at all."""
    with pytest.raises(SeatworkError, match="no cone"):
        flat_job("3/8 hex cap")
    with pytest.raises(SeatworkError, match="no cone"):
        flat_job("edges of the holes (guard)")
    with pytest.raises(SeatworkError, match="names no screw"):
        _ = job("edges of the holes (guard)").screw


def test_the_names_of_the_last_version_still_answer() -> None:
    """A learner's notebook of version 0.1 finds its jobs."""
    assert {job(name).name for name in FORMER} == set(FORMER.values())
    assert set(FORMER.values()) <= set(jobs())


def test_the_shop_s_own_list_takes_its_place_at_once(own_list) -> None:
    """Names are found in any case; a row saved later is seen without a restart."""
    own_list("our own,,M5 socket flat head,,,brass,lathe,4 mm,,\n")
    assert flat_jobs() == ("our own",)
    assert job("OUR OWN").material == "brass"
    own_list("our own,,M5 socket flat head,,,brass,lathe,4 mm,,\nand more,,1/4-20 hex,,,,,,,\n")
    assert jobs() == ("our own", "and more")


@pytest.mark.parametrize(
    ("row", "says"),
    [
        ("pad,spotface,1/2-13 hex cap,,,,,,,", "row 2, column diameter: nothing says how wide"),
        ("edge,chamfer,,,,,,,,", "row 2, column hole: the row has no screw and no hole"),
        ("x,counterbore,M6 socket flat head,,,,,,,", "row 2, column seat: a counterbore does not"),
        ("x,groove,M6 hex,,,,,,,", "row 2, column seat"),
        ("x,,M6 flat head,,,,,,,", "row 2, column screw: M6 flat head cannot be read"),
        ("x,,M6 hex,,,,,thick,,", "row 2, column thickness: thick cannot be read"),
    ],
)
def test_a_row_that_makes_no_job_is_refused(own_list, row, says) -> None:
    """File, row and column are named."""
    own_list(row + "\n")
    with pytest.raises(SeatworkError, match=says):
        jobs()
