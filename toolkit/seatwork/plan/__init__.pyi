from seatwork.plan.examples import example_parts as example_parts
from seatwork.plan.examples import example_readings as example_readings
from seatwork.plan.making import make as make
from seatwork.plan.making import make_plan as make_plan
from seatwork.plan.part_files import Part as Part
from seatwork.plan.part_files import parts as parts
from seatwork.plan.plans import Plan as Plan
from seatwork.plan.plans import SeatPlan as SeatPlan
from seatwork.plan.records import Assumed as Assumed
from seatwork.plan.records import Check as Check
from seatwork.plan.records import Given as Given
from seatwork.plan.records import Operation as Operation
from seatwork.plan.records import Reading as Reading
from seatwork.plan.records import Setup as Setup
from seatwork.plan.records import Stop as Stop
from seatwork.plan.rows import LB_IN as LB_IN
from seatwork.plan.rows import Row as Row
from seatwork.plan.rows import Rows as Rows
from seatwork.plan.rows import show_power as show_power
from seatwork.plan.rows import show_torque as show_torque

NAMES: dict[str, str]
__all__: list[str]
