"""Harmless spellings are read as they are meant; what can mean two things stays asked."""

from decimal import Decimal

import pytest
from seatwork.entries.measures import (
    ANGLE,
    FEED,
    LENGTH,
    SECONDS,
    SPINDLE_SPEED,
    SURFACE_SPEED,
    Measure,
)
from seatwork.entries.typed import read
from seatwork.errors import SeatworkError


@pytest.mark.parametrize(
    ("text", "value", "place", "said"),
    [  # worked by hand: 25.4 mm to the inch, a thousandth is .001 in
        ("0.135''", "0.135", "0.001", ""),
        ("= .135", "0.135", "0.001", ""),
        (".135 in,", "0.135", "0.001", ""),
        ("2.54 m.m.", "0.1", "0.0003937", ""),
        ("3 /8", "0.375", "0.001", ""),
        ("9⁄64", "0.140625", "0.001", ""),
        ("½", "0.5", "0.001", ""),
        ("1½ in", "1.5", "0.001", ""),
        (".012 proud", "0.012", "0.001", "proud"),
        ("proud .012", "0.012", "0.001", "proud"),
        ("0.012 sobresale", "0.012", "0.001", "proud"),
        (".055 in proud", "0.055", "0.001", "proud"),
        (".012 below the face", "0.012", "0.001", "below"),
        ("0.012 pulg por debajo", "0.012", "0.001", "below"),
        (".146 in deep", "0.146", "0.001", "deep"),
        ("1/8 wide", "0.125", "0.001", "wide"),
        ("0.120 pulgadas", "0.120", "0.001", ""),
        ("12 milésimas", "0.012", "0.001", ""),
        ("2,54 milímetros", "0.1", "0.0003937", ""),
    ],
)  # fmt: skip
def test_a_length_is_read_however_it_is_spelled(
    text: str, value: str, place: str, said: str
) -> None:
    """Value, last place, and the word beside it."""
    typed = read(text, LENGTH, "inch")
    assert float(typed.value) == pytest.approx(float(value))
    assert float(typed.place) == pytest.approx(float(place), rel=1e-3)
    assert typed.said == said


@pytest.mark.parametrize(
    ("text", "measure", "value"),
    [
        ("349 r.p.m.", SPINDLE_SPEED, "349"),
        ("349 vueltas/min", SPINDLE_SPEED, "349"),
        ("82 grados", ANGLE, "82"),
        (".004 pulg/vuelta", FEED, "0.004"),
        ("90 pies/min", SURFACE_SPEED, "90"),
        ("12.5 segundos", SECONDS, "12.5"),
    ],
)
def test_a_unit_is_read_in_spanish_too(text: str, measure: Measure, value: str) -> None:
    """Speeds, feeds, angles and times."""
    assert read(text, measure, "inch").value == pytest.approx(Decimal(value))


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (". 135", "cannot be read"),
        ("below .012", "cannot be read"),  # less than that, or under the face?
        ("-.012", "proud or below"),
        ("1,875", "1875 or 1.875"),
        ("135 mil", "thou"),
        ("3 1/2 mm", "read in inches"),
        ("=1+1", "cannot be read"),
        ("5/8/26", "inches"),
        (".5 in proud below", "not known"),
        ("6 pies", "not known"),
        ("1'", "not known"),
    ],
)
def test_what_can_mean_two_things_stays_asked(text: str, says: str) -> None:
    """The refusal names what was typed, as it was typed."""
    with pytest.raises(SeatworkError, match=says) as refused:
        read(text, LENGTH, "inch")
    assert refused.value.value == text


def test_thousandths_are_asked_about_where_millimeters_are_wanted() -> None:
    """They may be of an inch or of a millimeter."""
    with pytest.raises(SeatworkError):
        read("12 milésimas", LENGTH, "metric")
    assert read("10 milésimas de pulgada", LENGTH, "metric").value == pytest.approx(
        Decimal("0.254")
    )


def test_a_fraction_sign_counts_as_a_fraction() -> None:
    """½ and 1/2 are one thing."""
    for sign, drawn in (("½", "1/2"), ("⅛", "1/8"), ("¾ in", "3/4 in"), ("1⅞", "1 7/8")):
        assert read(sign, LENGTH, "inch") == read(drawn, LENGTH, "inch")
        assert read(sign, LENGTH, "inch").is_fraction
