from seatwork.benches.bank.angles_bench import Angles as Angles
from seatwork.benches.bank.chatter_bench import Chatter as Chatter
from seatwork.benches.bank.counterbore_bench import Counterbore as Counterbore
from seatwork.benches.bank.cutters_bench import Cutters as Cutters
from seatwork.benches.bank.depth_bench import Depth as Depth
from seatwork.benches.bank.edges_bench import Edges as Edges
from seatwork.benches.bank.flush_bench import Flush as Flush
from seatwork.benches.bank.gaging_bench import Gaging as Gaging
from seatwork.benches.bank.note_bench import Note as Note
from seatwork.benches.bank.on_the_hole_bench import OnTheHole as OnTheHole
from seatwork.benches.bank.slips_bench import Slips as Slips
from seatwork.benches.bank.speeds_bench import Speeds as Speeds
from seatwork.benches.bank.spotface_bench import Spotface as Spotface
from seatwork.benches.bank.triangle_bench import Triangle as Triangle
from seatwork.benches.bank.which_seat_bench import WhichSeat as WhichSeat
from seatwork.benches.part.my_part import my_part as my_part
from seatwork.benches.term.class_bench import class_picture as class_picture

def angles(
    *,
    cut_open: bool = ...,
    measure: bool = ...,
    cutter_angle: float | str = ...,
    screw: str = ...,
    diameter: float | str | None = ...,
    hole: float | str | None = ...,
    thickness: float | str | None = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Angles: ...
def chatter(
    *,
    shown: bool = ...,
    on_map: bool = ...,
    in_time: bool = ...,
    cures: bool = ...,
    speed: float | str = ...,
    flutes: float | str = ...,
    width: float | str = ...,
    job: str = ...,
    material: str | None = ...,
    machine: str = ...,
    thickness: float | str | None = ...,
    other_speed: float | str = ...,
    uneven: bool = ...,
    runout: float | str = ...,
    rake: float | str = ...,
    stiffness: float | str = ...,
    wear_land: float | str = ...,
    feed: float | str = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Chatter: ...
def counterbore(
    *,
    way: str = ...,
    depth: float | str | None = ...,
    screw: str = ...,
    measured: bool = ...,
    socket: float | str | None = ...,
    washer: bool = ...,
    thickness: float | str | None = ...,
    edge: float | str | None = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Counterbore: ...
def cutters(
    *,
    opened: bool = ...,
    pick: str = ...,
    job: str = ...,
    machine: str | None = ...,
    material: str | None = ...,
    thickness: float | str | None = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Cutters: ...
def depth(
    *,
    cut: bool = ...,
    touch: str = ...,
    new_nose: float | str = ...,
    stop_error: float | str = ...,
    stop_way: str = ...,
    screw: str = ...,
    diameter: float | str | None = ...,
    angle: float | str | None = ...,
    hole: float | str | None = ...,
    thickness: float | str | None = ...,
    nose: float | str = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Depth: ...
def edges(
    *,
    all_round: bool = ...,
    place: str = ...,
    note: str = ...,
    width: float | str = ...,
    screw: str = ...,
    hole: float | str | None = ...,
    thickness: float | str | None = ...,
    angle: float | str = ...,
    tilt: float | str = ...,
    round_diameter: float | str = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Edges: ...
def flush(
    *,
    diameter: float | str | None = ...,
    tolerance: float | str = ...,
    screw: str = ...,
    heads: str = ...,
    hole: float | str | None = ...,
    thickness: float | str | None = ...,
    angle: float | str | None = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Flush: ...
def gaging(
    *,
    shown: bool = ...,
    way: str = ...,
    rise: float | str | None = ...,
    stand: float | str | None = ...,
    side: str | None = ...,
    top: float | str | None = ...,
    rim: float | str | None = ...,
    over: float | str | None = ...,
    job: str = ...,
    thickness: float | str | None = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Gaging: ...
def note(
    *,
    opened: bool = ...,
    pick: str = ...,
    note: str = ...,
    material: str = ...,
    machine: str = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Note: ...
def on_the_hole(
    *,
    shown: bool = ...,
    guide: str = ...,
    off_center: float | str = ...,
    pilot_under: float | str = ...,
    out_of_square: float | str = ...,
    free: bool = ...,
    job: str = ...,
    thickness: float | str | None = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> OnTheHole: ...
def slips(
    *,
    opened: bool = ...,
    pick: str = ...,
    answer: str | None = ...,
    learner: float | str = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Slips: ...
def speeds(
    *,
    operation: str | None = ...,
    diameter: float | str | None = ...,
    machine: str | None = ...,
    job: str = ...,
    material: str | None = ...,
    tool: str = ...,
    hole: float | str = ...,
    constant: str = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Speeds: ...
def spotface(
    *,
    shown: bool = ...,
    depth: float | str = ...,
    tilt: float | str = ...,
    face: str = ...,
    roughness: float | str = ...,
    bolt: str = ...,
    diameter: float | str | None = ...,
    thickness: float | str | None = ...,
    grip: float | str | None = ...,
    boss: float | str = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Spotface: ...
def triangle(
    *,
    step: float | str = ...,
    diameter: float | str | None = ...,
    hole: float | str | None = ...,
    angle: float | str | None = ...,
    whole_difference: bool = ...,
    whole_angle: bool = ...,
    to_the_point: bool = ...,
    screw: str = ...,
    beside: str = ...,
    holds: str = ...,
    held: float | str | None = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> Triangle: ...
def which_seat(
    *,
    opened: bool = ...,
    screw: str = ...,
    face: str = ...,
    wish: str = ...,
    system: str | None = ...,
    palette: str | None = ...,
    projector: bool = ...,
) -> WhichSeat: ...

NAMES: dict[str, str]
__all__: list[str]
