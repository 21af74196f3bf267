from seatwork.benches.bank.angles_bench import angles as angles
from seatwork.benches.bank.chatter_bench import chatter as chatter
from seatwork.benches.bank.counterbore_bench import counterbore as counterbore
from seatwork.benches.bank.cutters_bench import cutters as cutters
from seatwork.benches.bank.depth_bench import depth as depth
from seatwork.benches.bank.edges_bench import edges as edges
from seatwork.benches.bank.flush_bench import flush as flush
from seatwork.benches.bank.gaging_bench import gaging as gaging
from seatwork.benches.bank.note_bench import note as note
from seatwork.benches.bank.slips_bench import slips as slips
from seatwork.benches.bank.speeds_bench import speeds as speeds
from seatwork.benches.bank.spotface_bench import spotface as spotface
from seatwork.benches.bank.which_seat_bench import which_seat as which_seat

NAMES: dict[str, str]
__all__: list[str]
