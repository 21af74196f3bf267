"""What a plan says and why, kept in one place, and how its sentences write their sizes."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager

from seatwork.errors import SeatworkError
from seatwork.quantities import Angle, Length
from seatwork.units import show_angle, show_both

Show = Callable[[object], str]

DRILL = "The hole comes first: it guides the cutter, and the seat is only as true as its hole."
TAP_DRILL = "Tap drill as listed: the thread needs the metal that a clearance hole takes away."
COUNTERSINK = "After the hole, so that the cone is round it; before the screw is tried."
CHAMFER_FIRST = "Before the tap: it starts the tap square and keeps the first thread from rising."
UNDER_REAMER = "Under size, for the reamer to clean up."
UNDER_BORE = "Under size, for the bore to clean up."
TO_SIZE = "To size after the drill, whose hole is neither true nor to size."
BORE = f"{TO_SIZE} A light last cut; chips out and spindle stopped to measure."
LEAD_DRILL = "About as wide as the web of the drill that follows, which then cuts with less push."
REAM = "Last in the clamping of the drill, so that it follows the hole and leaves no burr."
REAMER = "turn forward only, in and out; never stop it in the hole, never back it up"
TAP = "Last of all cuts in this hole, by hand; no power tapping without a reversing head."
TAP_WRENCH = "Tap wrench, guided by a spring center; machine unplugged or locked out."
TAP_CHUCK = (
    "Tap wrench under a spring center, or tap in the chuck turned by hand; machine unplugged or "
    "locked out, gears in neutral, chuck key out, quill free to follow."
)
TAP_OIL = "Half a turn on, a quarter back; its fluid."
TAP_DRY = "Half a turn on, a quarter back; dry."
TAP_BLIND = "Mark the depth on the tap, stop short of the bottom, back out and clear; never air."
TAP_POINT = "A tap this small has a point that wants its own room; a bottoming tap's is ground off."
LEADS = {
    ("plug", True): "plug tap, with room for its lead and for chips.",
    ("plug", False): "plug tap; little chip room: clear the hole before the last turns.",
    ("plug, then bottoming", False): "plug tap, then bottoming tap; clear the chips between.",
    ("bottoming after plug", False): "bottoming tap after a plug tap, with no room for chips: "
    "flush with fluid from a syringe or lift steel chips with a magnet, never air. "
    "Ask for a deeper drill.",
}
DEBUR_FAR = "The drill left a burr where it came out; the screw or its nut must seat flat there."
COUNTERBORE = "After the hole: the pilot runs in it. The floor comes out square to the hole."
FACE_FIRST = "Before the hole: no pilot, so the rigid tool needs solid metal under all its lips."
FACE_AFTER = "After the hole: its pilot runs in the hole and carries the first one-sided touch."
BREAK_EDGE = "A sharp edge cuts hands and keeps parts from lying flat."
TURN = {
    "mill": "Same edge on the fixed jaw, turned end for end, the work stop at the same end of the "
    "part: only that coordinate changes its sign. Spindle stopped, tool raised, edges broken.",
    "drill press": "Same edge on the fixed jaw, turned end for end. Spindle stopped, tool raised, "
    "edges broken; wipe jaws and parallels. The finished seat lies over the gap of the parallels.",
    "lathe": "End for end in the chuck, spindle stopped, edges broken.",
    "hand drill": "Edges broken; the finished seat lies free of the bench.",
}
FACE_END = "Face the second end to length before its center hole: it is deep from that face."
FIND = {
    "mill": "Indicate the hole with a dial in the spindle, turned by hand, or pick up the edges "
    "again. Touch off anew: the first side's stop does not hold here.",
    "drill press": "Work left free, spindle stopped: bring pilot or cone into the hole by hand, "
    "clamp, raise, try again. Touch off anew: the first side's stop does not hold here.",
    "lathe": "Indicate, then touch off anew: both ends alike.",
    "hand drill": "Pilot into the hole by hand; set the cage anew on scrap.",
}
MIRROR = "Laid out on the far face the pattern is a mirror image: check it before the punch."
BACK = (
    "Spindle stopped and locked out while the cutter goes on its bar, and again before it comes "
    "off. Quill locked; the knee is lowered by its dial, or the quill raised by hand."
)
BACK_TOOL = "a back spotfacing cutter on a bar of {bar}, held by a drawbar or a cross pin"
BACK_DEPTH = (
    "Back spotfacing has no stop: depth counts from the far face upward. Measure what is left "
    "with a micrometer, spindle stopped."
)
CENTER = "A 60° hole for the lathe center, in line with the shaft."
FLOOR_EDGE = (
    "{edge} Break the edge of the hole at the floor too, to {across}, 90°, {leg} deep from the "
    "floor: the fillet under the head must not ride on it."
)
EDGE_CHAMFER = "To the note, or to the shop's rule where the note gives no size."

SCRAP = "Set the stop on scrap, {by}; then cut the part."
SCRAP_FIRST = "Nothing stops the cut: try it on scrap first, {by}; then cut the part."
OWN, BY_SIZE = "with the job's own {tried}", "by the diameter at the face"
NO_DEPTH = "The note gives no depth: stop at the first cut that is clean all round, no deeper."
SCALE = "On a rough casting reckon with {skin} of scale (house rule {rule}) besides the tilt."
FLAT_LENGTH = "Screw length: a flat head is measured overall, head and all."
OTHER_LENGTH = "Screw length: measured under the head."
NO_EDGE_MARK = "A dimensioned chamfer, or the word SHARP, stands over this note."

NOT_LISTED = "no value in the shop's list"
CENTER_PILOT = (
    "The pilot is what snaps: feed gently, withdraw once to clear the chips. The lathe's center "
    "rides on the cone and never bottoms; both mouths alike, or the centers sit unequally."
)
CENTER_BODY = "Stop before the body of the center drill rubs: the mouth must stay a cone."


def shower(system: str) -> Show:
    """Return a function that writes a ``Length`` or an ``Angle`` for people.

    Examples
    --------
    >>> shower("inch")(Length(12.7)), shower("metric")(Angle(82))
    ('0.500 in (12.70 mm)', '82°')
    """

    def show(size: object) -> str:
        if isinstance(size, Length):
            return show_both(size, system)
        return show_angle(size) if isinstance(size, Angle) else str(size)

    return show


@contextmanager
def told_in(system: str) -> Iterator[None]:
    """Let an error that is raised inside tell its sizes as a note of this system has them."""
    try:
        yield
    except SeatworkError as error:
        error.show = shower(system)
        raise
