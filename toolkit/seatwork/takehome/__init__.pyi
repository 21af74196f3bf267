from seatwork.takehome.calls import BenchCall as BenchCall
from seatwork.takehome.calls import bench_call as bench_call
from seatwork.takehome.graded import Paper as Paper
from seatwork.takehome.graded import graded_page as graded_page
from seatwork.takehome.handed_forms import papers as papers
from seatwork.takehome.lesson import lesson_page as lesson_page
from seatwork.takehome.practice import planner_page as planner_page
from seatwork.takehome.practice import practice_page as practice_page
from seatwork.takehome.python_blocks import runtime_script as runtime_script
from seatwork.takehome.recording import Recording as Recording
from seatwork.takehome.recording import record as record
from seatwork.takehome.runtime import Runtime as Runtime

NAMES: dict[str, str]
__all__: list[str]
