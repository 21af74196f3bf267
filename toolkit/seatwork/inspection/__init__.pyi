from seatwork.inspection.blank import write_blank as write_blank
from seatwork.inspection.findings import Inspection as Inspection
from seatwork.inspection.findings import PartVerdict as PartVerdict
from seatwork.inspection.inspecting import inspect as inspect
from seatwork.inspection.inspecting import inspect_file as inspect_file
from seatwork.inspection.inspecting import inspect_parts as inspect_parts
from seatwork.inspection.measured import Measured as Measured
from seatwork.inspection.readings import Readings as Readings
from seatwork.inspection.readings import read_readings as read_readings
from seatwork.inspection.readings import read_typed as read_typed
from seatwork.inspection.records import Judged as Judged
from seatwork.inspection.series import histogram as histogram
from seatwork.inspection.series import run_chart as run_chart

NAMES: dict[str, str]
__all__: list[str]
