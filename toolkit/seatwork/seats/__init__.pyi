from seatwork.seats.bearing import bearing_pressure as bearing_pressure
from seatwork.seats.bolting import bending_stress as bending_stress
from seatwork.seats.chamfers import Chamfer as Chamfer
from seatwork.seats.cleaning import clean_up as clean_up
from seatwork.seats.cones import Countersink as Countersink
from seatwork.seats.counterbores import Counterbore as Counterbore
from seatwork.seats.faults import Allowed as Allowed
from seatwork.seats.faults import CapScrew as CapScrew
from seatwork.seats.faults import Fault as Fault
from seatwork.seats.faults import Standing as Standing
from seatwork.seats.gaging import angle_from_two_balls as angle_from_two_balls
from seatwork.seats.gaging import ball_top as ball_top
from seatwork.seats.gaging import diameter_from_ball as diameter_from_ball
from seatwork.seats.head_gaging import protrusion as protrusion
from seatwork.seats.heads import Fit as Fit
from seatwork.seats.heads import Head as Head
from seatwork.seats.heads import fit as fit
from seatwork.seats.rims import rim as rim
from seatwork.seats.spotfaces import Spotface as Spotface
from seatwork.seats.stack import rss as rss
from seatwork.seats.stack import simulate as simulate
from seatwork.seats.stack import worst_case as worst_case
from seatwork.seats.standing import stands as stands
from seatwork.seats.triangles import Triangle as Triangle

NAMES: dict[str, str]
__all__: list[str]
