"""Record: what was handed out, marked and decided in a term; facts are added, never changed."""

from seatwork.doors import doors

NAMES = {
    "keeping": "Record",
    "course_record": "open_record writable_record",
    "giving": "hand_out forms",
    "marking_course": "Marking mark",
    "paper_results": "results",
    "class_picture": "Picture picture",
    "deciding": "excuse leave lose sign undo",
    "points_by_hand": "Override override",
    "bringing_back": "bring_back",
    "erasing": "erase",
    "merging": "combine",
    "practical": "keep_parts",
    "behind_cell": "CellFacts cell_facts",
    "learner_report": "Report report",
    "checking": "check",
}
"""The public names of each module; none may be that of a module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
