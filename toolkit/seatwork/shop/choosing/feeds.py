"""Feeds: the published range for drills, and the share of it that seats and reamers take."""

from dataclasses import dataclass

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.quantities import Length
from seatwork.shop.house.house_rules import HouseRules
from seatwork.units import feed, length

TABLE = "drill_feeds"
RULE = "feeds.seat_share"
REAM_RULE = "feeds.ream_share"
DRILLS = ("drill", "center drill")


@dataclass(frozen=True, slots=True, kw_only=True)
class Feed:
    """A feed per turn and where it comes from.

    Parameters
    ----------
    value : float
        Feed [mm/rev].
    source, confirmed : str
        Table, house rule, and how well they are confirmed.
    """

    value: float
    source: str
    confirmed: str


def feed_for(operation: str, *, diameter: float, rules: HouseRules) -> Feed:
    """Return the feed of an operation: the slow end of the drill range, or a share of it.

    Parameters
    ----------
    operation : str
        ``drill``, ``center drill`` or ``ream``; any other is a seat.
    diameter : float
        Largest diameter that cuts [mm].
    rules : HouseRules
        The rules in force.

    Raises
    ------
    SeatworkError
        If the diameter is not above zero.

    Notes
    -----
    The first published range that takes in the diameter is used, at its slow end.
    """
    if not 0 < diameter < float("inf"):
        raise SeatworkError(Length(diameter), "that is no cutting diameter", "give one above zero")
    row = next(row for row in tables.rows(TABLE) if _takes_in(row, diameter))
    drill = feed(row["feed_min_in_per_rev"], "inch")
    source, confirmed = str(row["source"]), str(row["confirmed"])
    if operation in DRILLS:
        return Feed(value=drill, source=source, confirmed=confirmed)
    rule = REAM_RULE if operation == "ream" else RULE
    return Feed(
        value=drill * rules.number(rule),
        source=f"house rule {rule} of the drill feed: {source}",
        confirmed=rules[rule].confirmed,
    )


def _takes_in(row: dict[str, tables.reading.Cell], diameter: float) -> bool:
    low, high = row["over_dia_in"], row["up_to_dia_in"]
    return (low is None or _mm(low) < diameter) and (high is None or diameter <= _mm(high))


def _mm(inches: object) -> float:
    return length(inches, "inch")
