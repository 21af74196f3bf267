"""Whether the answer and the slips of a question can be told apart: three tolerances lie between.

Drawing a question works out every slip of it in both unit systems, so this is decided in floats;
only where a gap lies next to the limit is it worked out exactly.
"""

from decimal import Decimal
from functools import lru_cache
from itertools import pairwise

from seatwork.entries.measures import Measure, unit_step
from seatwork.questions.type.parts import CLEAR, NumberPart

NEAR = 1e-9
"""Part of a number within which floats do not decide."""


def is_told_apart(part: NumberPart) -> bool:
    """Return whether no two of the answer and the slips are closer than three tolerances."""
    scale, least_shown = _in_floats(part.measure, part.system)
    numbers = [part.value / scale]
    for mistake in part.mistakes():
        if mistake.value is None or mistake.twin_of is not None:
            continue
        amount = mistake.value / scale
        if abs(amount - least_shown) <= NEAR:
            return not too_close(part)
        if amount >= least_shown or not mistake.value:
            numbers.append(amount)
    numbers.sort()
    limit, near = CLEAR * float(part.tolerance), NEAR * (1 + abs(numbers[-1]))
    least = min((b - a for a, b in pairwise(numbers)), default=2 * (limit + near))
    if abs(least - limit) <= near:
        return not too_close(part)
    return least > limit


@lru_cache(maxsize=64)
def _in_floats(measure: Measure, system: str) -> tuple[float, float]:
    """Return the scale of a measure, and the least number one could write down."""
    return float(measure.scale[system]), float(unit_step(measure, system)) / 2


def too_close(part: NumberPart) -> list[tuple[str, str]]:
    """Return the pairs of slip codes, or slip and "answer", that cannot be told apart."""
    numbers = [("answer", part.answer)] + [
        (slip.code, slip.value)
        for slip in part.slips
        if slip.twin_of is None and isinstance(slip.value, Decimal)
    ]
    least = CLEAR * part.tolerance
    return [
        (first, second)
        for place, (first, value) in enumerate(numbers)
        for second, other in numbers[place + 1 :]
        if abs(value - other) < least
    ]
