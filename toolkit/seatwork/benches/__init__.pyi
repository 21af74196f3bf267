from seatwork.benches.angles_bench import angles as angles
from seatwork.benches.chatter_bench import chatter as chatter
from seatwork.benches.counterbore_bench import counterbore as counterbore
from seatwork.benches.cutters_bench import cutters as cutters
from seatwork.benches.depth_bench import depth as depth
from seatwork.benches.edges_bench import edges as edges
from seatwork.benches.flush_bench import flush as flush
from seatwork.benches.gaging_bench import gaging as gaging
from seatwork.benches.note_bench import note as note
from seatwork.benches.slips_bench import slips as slips
from seatwork.benches.speeds_bench import speeds as speeds
from seatwork.benches.spotface_bench import spotface as spotface
from seatwork.benches.which_seat_bench import which_seat as which_seat

NAMES: dict[str, str]
__all__: list[str]
