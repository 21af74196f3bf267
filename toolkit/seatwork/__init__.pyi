from seatwork import benches as benches
from seatwork import cards as cards
from seatwork import cutting as cutting
from seatwork import drawings as drawings
from seatwork import entries as entries
from seatwork import hardware as hardware
from seatwork import inspection as inspection
from seatwork import marking as marking
from seatwork import notes as notes
from seatwork import picks as picks
from seatwork import plan as plan
from seatwork import questions as questions
from seatwork import record as record
from seatwork import seats as seats
from seatwork import shop as shop
from seatwork import show as show
from seatwork import tables as tables
from seatwork import takehome as takehome
from seatwork import units as units
from seatwork import worksheet as worksheet
from seatwork.cards import job_card as job_card
from seatwork.errors import SeatworkError as SeatworkError
from seatwork.hardware import clearance_hole as clearance_hole
from seatwork.hardware import drill as drill
from seatwork.hardware import screw as screw
from seatwork.hardware import washer as washer
from seatwork.inspection import inspect as inspect
from seatwork.notes import read as read
from seatwork.notes import write as write
from seatwork.picks import pick as pick
from seatwork.plan import make_plan as make_plan
from seatwork.seats import Chamfer as Chamfer
from seatwork.seats import Counterbore as Counterbore
from seatwork.seats import Countersink as Countersink
from seatwork.seats import Head as Head
from seatwork.seats import Spotface as Spotface
from seatwork.seats import fit as fit
from seatwork.shop import rules as rules
from seatwork.worksheet import sheet as sheet

NAMES: dict[str, str]
__all__: list[str]
__version__: str
ROOMS: str
