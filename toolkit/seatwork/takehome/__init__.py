"""Taken home: pages that move, take answers and plan without a server."""

from seatwork.doors import doors

NAMES = {
    "calls": "BenchCall bench_call",
    "recording": "Recording record",
    "graded": "Paper graded_page",
    "handed_forms": "papers",
    "runtime": "Runtime",
    "lesson": "lesson_page",
    "python_blocks": "runtime_script",
    "practice": "planner_page practice_page",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
