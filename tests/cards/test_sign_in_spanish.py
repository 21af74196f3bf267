"""The sign of a machine in Spanish: every caution has its text, and every number stands."""

import re

import pytest
from seatwork import notes
from seatwork.cards import job_card, station
from seatwork.cards.blocks import VERIFY
from seatwork.errors import SeatworkError
from seatwork.marking.speaking import speaker, unsaid
from seatwork.plan import make
from seatwork.shop.house.cautions import cautions, closing
from seatwork.shop.shop import Shop


def test_every_caution_has_its_spanish() -> None:
    """Titles, hazards, habits, numbers, the line on a plan, and the closing one."""
    said = [closing(), "Countersinks: at most", *(one.name for one in Shop.at().machines)]
    for box in cautions():
        said += [box.title, box.hazard, box.short, *box.do, *filter(None, [box.number])]
    assert len(said) > 60
    assert [text for text in said if unsaid(text, "es")] == []
    for text in said:
        assert re.findall(r"\d[\d.]*", text) == re.findall(r"\d[\d.]*", speaker("es")(text))


def test_a_sign_in_a_language_that_is_not_there_is_refused() -> None:
    """It is said, and no sign is made."""
    assert len(station.station_sign("lathe", language="es").figures) >= 1
    with pytest.raises(SeatworkError, match="no catalog"):
        station.station_sign("lathe", language="tlh")


@pytest.mark.slow
def test_a_job_card_takes_care_and_is_signed_in_spanish() -> None:
    """Each caution of the plan, what to sign and how the part is held; the note stays."""
    note = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
    plan = make(notes.read(note), material="6061 aluminum", machine="bench drill press")
    said = str(job_card(plan, language="es"))
    say = speaker("es")
    assert note in said
    assert f"{say(VERIFY)} {say(closing())}" in said
    assert say(plan.setups[0].held) in said
    for row in plan.rows().of("caution"):
        assert f"{say(row.label)}: {say(row.text)}" in said
        assert say(row.text) != row.text
