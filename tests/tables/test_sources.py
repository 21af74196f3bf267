"""What is shown as a source: document, edition and page, never a shop's name or an address."""

import json
import re

import pytest
from seatwork import benches, opening, plan, shop, tables
from seatwork.cards import job_card
from seatwork.cards.charts import clearance_holes
from seatwork.tables import listing
from seatwork.tables.reading import read_in

HOME = opening.source()
ADDRESS = re.compile(
    r"https?:|www\.|blogspot|github|scribd|tpub|"
    r"\w\.(?:com|org|net|edu|gov|info|cn|de|au|uk|fr|it)\b(?!\w)",
    re.IGNORECASE,
)
"""Shapes of a web address."""
KEPT = ("warehouse", "CAD data", "CAD program", "Pixelators", "Klein", "CircuitousRoot", "openwa")
"""Words of places that only the full list tells."""
NOTES = (
    "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD MACHINE SCREW",
    "2X ⌀13/32 THRU ⌴ FOR 3/8 SHCS",
    "17/32 DRILL THRU, SPOTFACE 1-1/4 DIA TO CLEAN UP, .38 MIN FLANGE",
    "2X M8X1.25-6H ↧16 / ⌀6.8 ↧20 ⌵ ⌀8.4 X 90°",
    "⌀9 THRU ⌵ FOR M8 ISO 10642, 4 PL",
    "DRILL #11 (.191), CSK 100° X .356/.350 DIA FOR 3/16 FLUSH RIVET",
    "DRILL 15/64, REAM .2500 +.0005/-.0000 THRU, CSK 82° X .507 DIA NS",
    "CENTER DRILL #3 BOTH ENDS",
)
PLACES = {
    place
    for name in tables.names()
    for place, row in zip(read_in(name), tables.rows(name), strict=True)
    if place != row["source"]
}


def strayed(text: str) -> list[str]:
    """List what stands in a text that only the full list of sources may tell."""
    found = [match[0] for match in ADDRESS.finditer(text)]
    return [*found, *(word for word in (*KEPT, *PLACES) if word in text)]


def test_an_address_is_seen() -> None:
    """The shapes find addresses and leave pages, sections and abbreviations alone."""
    assert strayed("tables of altak.cn and www.example, see http://x, a.com/y, and b.com.au")
    assert not strayed("ASME B18.3-2012, as a Handbook 31st ed. p. 1816 gives it; TC 9-524 ch. 4.")


@pytest.mark.parametrize("name", tables.names())
def test_a_row_says_its_document_and_the_file_where_it_was_read(name: str) -> None:
    """No cell that is handed out tells an address or a shop; the file keeps a place for each."""
    rows = tables.rows(name)
    assert len(read_in(name)) == len(rows)
    for row in rows:
        assert "read_in" not in row
        assert not strayed(" ".join(map(str, row.values())))
        assert len(str(row["source"])) <= 130
    told = tables.about(name)
    assert not strayed(" ".join([told.title, told.standard, told.edition, told.note]))


def test_house_rules_name_no_shop() -> None:
    """Each rule's source and those of its alternatives are documents or common practice."""
    for rule in map(shop.rules().__getitem__, shop.rules()):
        assert not strayed(rule.source)
        assert not [one.source for one in rule.alternatives if strayed(one.source)]


def test_only_the_full_list_tells_where_a_table_was_read() -> None:
    """`sources` and its listing tell it when asked in full, and not before."""
    assert not strayed(listing())
    assert "read_in" not in tables.sources()
    full = listing(full=True)
    assert all(f"read in: {place}" in full for place in PLACES)
    assert set(tables.sources(full=True)["read_in"]) >= PLACES


@pytest.mark.slow
@pytest.mark.parametrize("note", NOTES)
def test_plan_and_card_name_documents(note: str) -> None:
    """Neither a plan's rows, nor its print, nor its card tells an address or a shop."""
    machine = "lathe" if "CENTER" in note else "knee mill"
    planned = plan.make(note, material="1018 steel", machine=machine, thickness=25.4)
    shown = [f"{row.label} {row.text} {row.source}" for row in planned.rows()]
    pages = job_card(planned)
    card = [line for page in pages.words for line in page]
    assert not strayed("\n".join([*planned.sources(), *shown, str(planned), *card]))


@pytest.mark.slow
def test_wall_charts_name_documents() -> None:
    """The foot of the chart of clearance holes tells no address and no shop."""
    words = [line for page in clearance_holes().words for line in page]
    assert any("ISO 273:1979" in line for line in words)
    assert not strayed("\n".join(words))


@pytest.mark.slow
@pytest.mark.parametrize("name", sorted(set(benches.__all__) - {"my_part", "class_picture"}))
def test_benches_name_documents(name: str) -> None:
    """What stands below a bench as its sources tells no address and no shop."""
    bench = getattr(benches, name)()
    assert not strayed("\n".join(bench.sources(bench.result)))


@pytest.mark.slow
@pytest.mark.parametrize("folder", ["notebooks", "exercises", "exercises/worked"])
def test_stored_pages_name_documents(folder: str) -> None:
    """No page stores an address or a shop in its prose or in what its cells printed."""
    for path in sorted((HOME / folder).glob("*.ipynb")):
        for cell in json.loads(path.read_text(encoding="utf-8"))["cells"]:
            assert not strayed(_printed(cell)), path.name


def _printed(cell: dict) -> str:
    """Join the words of a cell, without its pictures, whose letters may spell anything."""
    said = [*cell["source"]]
    for out in cell.get("outputs", ()):
        said += out.get("text", ())
        data = out.get("data", {}).items()
        said += [line for kind, text in data if kind.startswith("text/") for line in text]
    words = "".join(line for line in said if len(line) < 5_000)
    return re.sub(r"(?<![\w/+])[\w/+]{50,}={0,2}", "", words)
