"""Seats that are inspected: by what name a sheet calls them, and which readings they take."""

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from difflib import get_close_matches

from seatwork.errors import SeatworkError
from seatwork.inspection.measured import QUANTITIES, Quantity
from seatwork.plan import Plan, SeatPlan
from seatwork.plan.records import Given
from seatwork.seats import Counterbore, Countersink

NO_CUT = ("hole", "edge")
ACROSS = (
    "diameter at the face",
    "counterbore diameter",
    "spotface diameter",
    "mouth of the center hole",
)
DEEP = ("depth from the face", "depth of the cone")


@dataclass(frozen=True, slots=True, kw_only=True)
class Cut:
    """A seat that is inspected.

    Parameters
    ----------
    seat : SeatPlan
        What it should be.
    system : {"inch", "metric"}
        System of its print.
    """

    seat: SeatPlan
    system: str


def cuts_of(plans: Mapping[str, Plan]) -> dict[str, Cut]:
    """Return the seats of all plans by the name that a sheet gives them.

    Parameters
    ----------
    plans : mapping of str to Plan
        The plan of each feature by its name.

    Returns
    -------
    dict of str to Cut
        Under the feature's name; where a feature has several seats, with the kind of the seat
        behind it, and a number where two are of one kind.

    Examples
    --------
    >>> from seatwork import notes, plan
    >>> made = plan.make(notes.read("⌀.531 THRU ⌴ ⌀.81 ↧.5 ⌵ ⌀.9 X 90°"),
    ...                  material="1018 steel", machine="knee mill")
    >>> list(cuts_of({"cap": made}))
    ['cap, counterbore', 'cap, countersink']
    """
    return {
        name: Cut(seat=seat, system=one.callout.system)
        for feature, one in plans.items()
        for name, seat in _named(feature, one)
    }


def _named(feature: str, plan: Plan) -> Iterator[tuple[str, SeatPlan]]:
    seats = [seat for seat in plan.seats if seat.kind not in NO_CUT and readings_of(seat)]
    if len(seats) == 1:
        yield feature, seats[0]
        return
    kinds, met = Counter(seat.kind for seat in seats), Counter[str]()
    for seat in seats:
        met[seat.kind] += 1
        number = f" {met[seat.kind]}" if kinds[seat.kind] > 1 else ""
        yield f"{feature}, {seat.kind}{number}".removeprefix(", "), seat


def size_of(key: str, seat: SeatPlan) -> Given | None:
    """Return the size of the plan that a reading is held against; None where it has none."""
    names = {"diameter": ACROSS, "depth": DEEP, "angle": ("included angle",)}[key]
    return next((size for name in names if (size := seat.size(name))), None)


def readings_of(seat: SeatPlan) -> tuple[Quantity, ...]:
    """Return the readings that a seat takes, in the order of the one list of them."""
    taken = {key for key in ("diameter", "depth", "angle") if size_of(key, seat)}
    if isinstance(seat.shape, Countersink) and "diameter" in taken:
        taken |= {"ball", "ball_top"}
    if seat.screw is not None:
        stands = any(one.quantity == "stand" for one in seat.readings)
        taken |= {"tried", "screw"} | ({"stand"} if stands else set())
        taken |= {"protrusion"} if stands and seat.screw.gage else set()
    taken |= {"stand"} if stands_in_bore(seat) else set()
    taken |= _hole_readings(seat) if taken else set()
    taken |= {"cleaned"} if seat.kind == "spotface" else set()
    taken |= {"touch"} if seat.stops else set()
    taken |= {"burr"} if taken else set()
    return tuple(one for key, one in QUANTITIES.items() if key in taken)


def stands_in_bore(seat: SeatPlan) -> bool:
    """Tell whether the head of a seat's screw has a height that its counterbore must take."""
    return (
        isinstance(seat.shape, Counterbore)
        and seat.screw is not None
        and seat.screw.head_height is not None
    )


def _hole_readings(seat: SeatPlan) -> set[str]:
    """Return what is tried of the hole itself: its thread, or the limits the print gives it."""
    hole = seat.size("hole")
    limited = hole is not None and hole.noted and hole.smallest != hole.largest
    thread = any(one.kind == "turns" for one in seat.readings)
    return ({"go", "not_go"} if thread else set()) | ({"hole"} if limited else set())


def feature_named(text: str, features: Sequence[str]) -> str:
    """Return the feature that a cell names, in any case.

    Parameters
    ----------
    text : str
        As written; it may be blank where there is one feature only.
    features : sequence of str
        The names there are.

    Raises
    ------
    SeatworkError
        If none is meant, or it cannot be told which; with the names there are.
    """
    if text in features:
        return text
    if not text and len(features) == 1:
        return features[0]
    plain = " ".join(text.casefold().split())
    same = [name for name in features if " ".join(name.casefold().split()) == plain]
    if len(same) == 1:
        return same[0]
    near = get_close_matches(text, features, n=1) if text else []
    guess = f"{near[0]}? There are " if near else ""
    fault = "no part given here has that feature" if text else "it is not said which feature it is"
    remedy = f"write {guess}{', '.join(features)}" if any(features) else "leave the cell empty"
    raise SeatworkError(text or "a blank", fault, remedy)
