"""Seats on the near and the far side of one hole: each for itself, and what both leave."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from seatwork import notes
from seatwork.notes.features import FLOOR
from seatwork.plan.floors import AT_FLOOR, FROM_FLOOR
from seatwork.plan.order import Order
from seatwork.plan.place import Place
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Check, Given, Stop
from seatwork.quantities import Length
from seatwork.seats import Chamfer, Counterbore, Countersink
from seatwork.seats.both_sides import BothSides

NEAR, FAR, BACK = "near", "far", "back"
BOTTOM = "bottom"
FAR_WORDS = (BOTTOM, "far side", "fs", "f.s.", "back", "back face", "far face")
ONE_SIDED = ("knife edge", "floor")
SHARE, FLOOR_RULE = "both_sides.share", "both_sides.least_floor"
LAND, BETWEEN = "straight land", "floor between"
EVEN = 1e-6  # mm; what a sum may be off by in its last digits
ANEW = "on the far face, touched off anew"


FLANGE = Check(
    name="flange between",
    verdict="look",
    sentence="Both faces are cut: flange left = thickness less what both take. Measure after each.",
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Cut:
    """A seat planned as if it were alone, and the side of the part it lies on.

    Parameters
    ----------
    seat : SeatPlan
        The seat, with its own operations alone.
    side : {"", "near", "far", "back"}
        Its side; empty where the note does not say, which is the near one; back where the
        far one is cut from the near one.
    takes : float
        What a spotface takes off its face at most [mm].
    leaves : float
        What the note wants left between both faces [mm]; 0 where it says nothing.
    """

    seat: SeatPlan
    side: str
    takes: float = 0.0
    leaves: float = 0.0

    @property
    def far(self) -> bool:
        """Whether the part is turned over for it."""
        return self.side == FAR

    @property
    def opposite(self) -> bool:
        """Whether it lies on the far face, however it is cut."""
        return self.side in (FAR, BACK)


def by_side(features: Sequence[notes.Feature]) -> Iterator[notes.Feature]:
    """Yield the features with one side each: what is asked for on both becomes two.

    Parameters
    ----------
    features : sequence of Feature
        The features of one hole.
    """
    for one in features:
        if one.side == "both" and not isinstance(one, notes.Hole | notes.Thread):
            yield replace(one, side=NEAR)
            yield replace(one, side=FAR)
        elif one.measured_from in FAR_WORDS and not one.side and not _floor_or_depth(one):
            yield replace(one, side=FAR)
        else:
            yield one


def on_side(note: notes.Feature, seat: SeatPlan) -> SeatPlan:
    """Say in the title, at the stop and in the checks on which side of the part a seat lies."""
    changed = replace(seat, checks=(*_which(note), *seat.checks))
    if not note.side:
        return changed
    title = f"{seat.title}, {note.side} side{'s' * (note.side == 'both')}"
    changed = replace(changed, title=title, side=note.side)
    if note.side != FAR:
        return changed
    return replace(changed, stops=tuple(_anew(stop) for stop in seat.stops))


def _floor_or_depth(note: notes.Feature) -> bool:
    """Tell whether a depth from the bottom may be the height of a floor over it."""
    flat = isinstance(note, notes.Counterbore | notes.Spotface)
    return flat and note.measured_from == BOTTOM and getattr(note, "depth", None) is not None


def _anew(stop: Stop) -> Stop:
    return replace(stop, touch=f"{stop.touch}, {ANEW}")


def _which(note: notes.Feature) -> Iterator[Check]:
    """Ask where a side or a face is named that can be two things."""
    if note.side == "other":
        asks = "Other side than which?"
        yield Check(name="side", verdict="stop", sentence=asks, question=asks)
    if _floor_or_depth(note):
        asks = "From the bottom: depth, or height of the floor?"
        yield Check(name="measured from", verdict="stop", sentence=asks, question=asks)
    elif note.measured_from not in ("", FLOOR, *FAR_WORDS):
        sentence = f"Starts from the {note.measured_from}: touch off there."
        yield Check(name="measured from", verdict="look", sentence=sentence)


def opposed(cuts: Sequence[Cut], place: Place, order: Order) -> list[Cut]:
    """Look at seats on both sides of one hole together, and no longer at either alone.

    Parameters
    ----------
    cuts : sequence of Cut
        The seats of one hole.
    place : Place
        The hole.
    order : Order
        With the thickness of the part [mm], where it is known.

    Returns
    -------
    list of Cut
        The same; the first bears what was looked at, and the straight land left.
    """
    near, far = _deepest(cuts, far=False), _deepest(cuts, far=True)
    planned = [_asked_if_blind(cut, place) for cut in cuts]
    if _faced(cuts, far=False) and _faced(cuts, far=True):
        planned = [_without_flange(cut) for cut in planned]
        return [_with_check(planned[0], _between_faces(cuts, order)), *planned[1:]]
    if near is None or far is None or not _share_holes(cuts, place):
        return planned
    planned = [_without_one_sided(cut) for cut in planned]
    check, sizes = _both(near, far, place, order)
    first = planned[0].seat
    planned[0] = replace(
        planned[0],
        seat=replace(first, checks=(check, *first.checks), sizes=(*first.sizes, *sizes)),
    )
    return planned


def _between_faces(cuts: Sequence[Cut], order: Order) -> Check:
    """Hold what both faces take against the thickness, and what the note wants left."""
    wanted = max(cut.leaves for cut in cuts)
    if order.thickness is None:
        return FLANGE
    taken = sum(max(c.takes for c in cuts if c.opposite is side) for side in (False, True))
    left, show = order.thickness - taken, order.show_length
    text = f"Both faces are cut: they take {show(taken)} together and leave {show(max(left, 0.0))}"
    if left > 0 and left >= wanted - EVEN:
        over = f"; the note wants {show(wanted)}" if wanted else ""
        sentence = f"{text}{over}. Measure after each."
        return replace(FLANGE, verdict="holds" if wanted else "look", sentence=sentence)
    sentence = f"{text}; the note wants {show(wanted)}." if left > 0 else f"{text}: nothing."
    asks = f"{sentence} May it be less, or does one face stay as it is?"
    return replace(FLANGE, verdict="stop", sentence=sentence, question=asks)


def _without_flange(cut: Cut) -> Cut:
    """Drop what was looked at as if the other face were not cut."""
    kept = tuple(check for check in cut.seat.checks if check.name != "least flange")
    return replace(cut, seat=replace(cut.seat, checks=kept))


def _share_holes(cuts: Sequence[Cut], place: Place) -> bool:
    """Tell whether some hole has a seat on both sides: 2 NS & 2 FS on four holes have none."""
    near, far = (max(c.seat.count for c in cuts if c.opposite is side) for side in (False, True))
    return near + far > place.count


def _asked_if_blind(cut: Cut, place: Place) -> Cut:
    if not cut.opposite or place.through:
        return cut
    asks = "The hole does not go through: a seat on its far side?"
    return _with_check(cut, Check(name="side", verdict="stop", sentence=asks, question=asks))


def _faced(cuts: Sequence[Cut], *, far: bool) -> bool:
    return any(cut.seat.kind == "spotface" and cut.opposite is far for cut in cuts)


def _with_check(cut: Cut, check: Check) -> Cut:
    return replace(cut, seat=replace(cut.seat, checks=(check, *cut.seat.checks)))


def _without_one_sided(cut: Cut) -> Cut:
    kept = tuple(check for check in cut.seat.checks if check.name not in ONE_SIDED)
    return replace(cut, seat=replace(cut.seat, checks=kept))


def _deepest(cuts: Sequence[Cut], *, far: bool) -> Countersink | Counterbore | None:
    """Return the deepest seat of a side as it looks from its face."""
    found = [shape for cut in cuts if cut.opposite is far and (shape := _shape(cut.seat))]
    return max(found, key=lambda shape: shape.depth, default=None)


def _shape(seat: SeatPlan) -> Countersink | Counterbore | None:
    shape, hole = seat.shape, seat.size("hole")
    if isinstance(shape, Chamfer) and hole is not None:
        shape = shape.at_hole(hole.value)
    if isinstance(shape, Countersink) and seat.size(AT_FLOOR):
        deep, own = seat.size("depth from the face"), seat.size(FROM_FLOOR)
        floor = deep.value - own.value if deep and own else 0.0
        # the same cone, carried up to the face
        return replace(shape, diameter=shape.diameter + 2 * shape.tangent * floor)
    return shape if isinstance(shape, Countersink | Counterbore) else None


def _both(
    near: Countersink | Counterbore, far: Countersink | Counterbore, place: Place, order: Order
) -> tuple[Check, tuple[Given, ...]]:
    flats = isinstance(near, Counterbore) and isinstance(far, Counterbore)
    name = BETWEEN if flats else LAND
    together = order.show_length(near.depth + far.depth)
    if order.thickness is None:
        what = "floor" if flats else "land"
        sentence = f"Not looked at: the thickness is not known. {what} = thickness - {together}."
        return Check(name=name, verdict="look", sentence=sentence), ()
    found = BothSides(first=near, second=far, thickness=order.thickness)
    if found.meet:
        return _meeting(found, name, order), ()
    sizes = [Given(about=name, value=found.land, source="worked out: thickness less both depths")]
    if place.thread is not None and place.through:
        about = "full thread between the mouths"
        sizes.append(Given(about=about, value=found.land, source="worked out: the same"))
    check = _floor(found, place, order) if flats else _land(found, order)
    return check, tuple(sizes)


def _meeting(found: BothSides, name: str, order: Order) -> Check:
    over = order.show(Length(-found.land))
    throat = found.throat
    wide = f" with a throat of {order.show(Length(throat))}, a knife edge" if throat else ""
    sentence = f"The two seats meet{wide}: they are {over} deeper together than the part is thick."
    asks = f"{sentence} Other screw, thicker plate, or is one side meant?"
    return Check(name=name, verdict="stop", sentence=sentence, question=asks)


def _land(found: BothSides, order: Order) -> Check:
    share = order.shop.rules.number(SHARE)
    holds = found.share <= share
    text = f"Straight hole left between the two seats: {order.show(Length(found.land))}; they take"
    taken = f"{text} {found.share:.2f} of the thickness"
    why = f", within house rule {SHARE}." if holds else f", over house rule {SHARE}: ask."
    return Check(name=LAND, verdict="holds" if holds else "look", sentence=f"{taken}{why}")


def _floor(found: BothSides, place: Place, order: Order) -> Check:
    text = f"Floor left between the two counterbores: {order.show(Length(found.land))}"
    if place.screw is None:
        sentence = f"{text}. How thick is enough is the designer's: ask."
        return Check(name=BETWEEN, verdict="look", sentence=sentence)
    least = order.shop.rules.number(FLOOR_RULE) * place.screw.thread.diameter
    holds = found.land >= least
    why = "." if holds else f", under house rule {FLOOR_RULE}: ask."
    return Check(name=BETWEEN, verdict="holds" if holds else "look", sentence=f"{text}{why}")
