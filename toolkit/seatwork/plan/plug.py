"""The plug gage of a hole with limits, bored or reamed."""

from seatwork.plan.records import Given, Reading


def plug_readings(hole: Given, operation: str, named: str) -> tuple[Reading, ...]:
    """Return the plug gage of a hole: GO its low limit, NOT GO its high one; none without limits.

    Parameters
    ----------
    hole : Given
        The hole with its limits [mm].
    operation : str
        What brings it to size.
    named : str
        The hole in words.
    """
    if hole.least is None or hole.greatest is None:
        return ()
    return (
        Reading(
            instrument="plug gage",
            about=f"{named}; GO is the low limit, NOT GO the high one",
            value=hole.value,
            least=hole.least,
            greatest=hole.greatest,
            operation=operation,
            short="plug GO, NOT GO",
        ),
    )
