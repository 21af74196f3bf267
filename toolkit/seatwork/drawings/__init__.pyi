from seatwork.drawings.scene import Drawing as Drawing
from seatwork.drawings.scene import Look as Look
from seatwork.drawings.scene import Scene as Scene
from seatwork.drawings.section import Section as Section
from seatwork.drawings.views.cut_seat import SeatWithScrew as SeatWithScrew
from seatwork.drawings.views.cut_seat import seat_with_screw as seat_with_screw
from seatwork.drawings.views.cut_shapes import CutSeat as CutSeat
from seatwork.drawings.views.triangle_view import triangle as triangle

NAMES: dict[str, str]
__all__: list[str]
