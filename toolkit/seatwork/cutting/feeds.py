"""Feeds: per tooth, per turn, per minute, and the time a cut takes."""

from seatwork import checks


def feed_per_tooth(*, feed: float, flutes: int) -> float:
    """Feed of one lip [mm/tooth], from `feed` [mm/rev] and the number of `flutes` [-].

    Notes
    -----
    By definition: the lips share the feed of one turn evenly.

    Raises
    ------
    SeatworkError
        If a value is not above zero, or there is no flute.

    Examples
    --------
    >>> feed_per_tooth(feed=0.15, flutes=3)
    0.05
    """
    checks.quantity(feed, "feed", "mm/rev")
    checks.flutes(flutes)
    return feed / flutes


def feed_rate(*, spindle_speed: float, feed: float) -> float:
    """Feed of one minute.

    Parameters
    ----------
    spindle_speed : float
        Spindle speed [rev/min].
    feed : float
        Feed [mm/rev].

    Returns
    -------
    float
        Feed rate [mm/min].

    Raises
    ------
    SeatworkError
        If a value is not above zero.

    Examples
    --------
    >>> feed_rate(spindle_speed=1350.0, feed=0.2)
    270.0

    References
    ----------
    Worked example of 270 mm/min at a tool maker's page (check SPD-05).
    """
    checks.quantity(spindle_speed, "spindle speed", "rev/min")
    checks.quantity(feed, "feed", "mm/rev")
    return spindle_speed * feed


def time_in_cut(
    *, travel: float, spindle_speed: float, feed: float, dwell_turns: float = 0.0
) -> float:
    """Time from first touch to the stop.

    Parameters
    ----------
    travel : float
        Travel of the tool while it cuts [mm].
    spindle_speed : float
        Spindle speed [rev/min].
    feed : float
        Feed [mm/rev].
    dwell_turns : float
        Turns left at the stop to clean up the seat [rev].

    Returns
    -------
    float
        Time in cut [s].

    Raises
    ------
    SeatworkError
        If a value is not above zero, or the dwell is below zero.

    Examples
    --------
    >>> time_in_cut(travel=30.0, spindle_speed=1061.0, feed=0.15)
    11.3

    References
    ----------
    Worked example of 11.3 s at a tool maker's page (check SPD-06).
    """
    checks.length(travel, "travel")
    checks.not_below(dwell_turns, 0, "dwell", "rev")
    rate = feed_rate(spindle_speed=spindle_speed, feed=feed)
    return 60 * (travel / rate + dwell_turns / spindle_speed)
