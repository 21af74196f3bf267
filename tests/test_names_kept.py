"""Names that other people's code may use: each can still be called or imported.

The list is the project's promise, not what it happens to hold today.
"""

import inspect
import warnings
from importlib import import_module
from typing import Any

import pytest

pytestmark = pytest.mark.slow

KEPT = {
    "units": (
        "length angle cutting_speed feed show_length show_both show_angle show_speed show_feed"
    ),
    "tables": "rows load names sources",
    "hardware": (
        "size screw clearance_hole drill next_drill washer wrench_socket center_drill tap_drill"
    ),
    "seats": (
        "Head Countersink fit Counterbore Spotface Chamfer ball_top diameter_from_ball "
        "angle_from_two_balls protrusion rim clean_up bending_stress bearing_pressure worst_case "
        "rss simulate"
    ),
    "cutting": (
        "spindle_speed cutting_speed pick_step torque thrust power feed_rate time_in_cut Machine "
        "Cutter Cut width_limit stability critical_speed trace marks_per_turn"
    ),
    "notes": "read write",
    "plan": "make",
    "questions": "all_types Question",
    "marking": "hand_out mark Sheet AnswerFile",
    "worksheet": "sheet",
}
"""Names by the room that hands them out."""

HANGING = {
    "seats.Countersink": (
        "depth apex_depth slant_width volume bearing_area diameter_at travel_from_face "
        "travel_from_hole_edge from_depth"
    ),
    "seats.Fit": "amount state contact",
    "cutting.Limit": "width frequency",
    "cutting.CriticalSpeed": "surface_speed spindle_speed",
    "notes.Callout": "features assumptions warnings",
    "hardware.Screw": "head",
    "questions.Question": "draw ask answer unit tolerance slips said",
    "worksheet.Desk": "ask finish",
    "benches.depth": "set values result drawing text code",
}
"""Attributes and methods, by what they hang on."""

TAKEN = {
    "units.length": "system",
    "units.show_length": "mm system places",
    "seats.Head": "sharp_diameter included_angle edge_diameter height",
    "seats.Countersink": "diameter hole_diameter included_angle",
    "seats.Countersink.from_depth": "depth hole_diameter included_angle",
    "seats.fit": "head seat",
    "seats.Counterbore": "diameter depth hole_diameter",
    "seats.Spotface": "diameter hole_diameter",
    "seats.Chamfer": "leg included_angle",
    "seats.ball_top": "ball_diameter seat",
    "seats.diameter_from_ball": "ball_diameter ball_top included_angle",
    "seats.angle_from_two_balls": "small_diameter large_diameter small_top large_top",
    "seats.protrusion": "sharp_diameter gage_diameter included_angle",
    "cutting.spindle_speed": "cutting_speed diameter",
    "cutting.cutting_speed": "spindle_speed diameter",
    "cutting.Machine": "stiffness natural_frequency damping_ratio direction",
    "cutting.Cutter": "flutes included_angle spacing runout",
    "cutting.Cut": (
        "normal_coefficient tangential_coefficient mean_diameter process_damping friction"
    ),
    "cutting.width_limit": "machine cutter cut spindle_speed",
    "cutting.stability": "machine cutter cut spindle_speeds widths",
    "cutting.critical_speed": "machine cutter cut",
    "cutting.marks_per_turn": "frequency spindle_speed direction",
    "notes.read": "text system",
    "notes.write": "callout style",
    "plan.make": "callout screw material machine shop",
    "worksheet.sheet": "name",
    "worksheet.Desk.ask": "answer",
}
"""Arguments by their names, as calls written before give them."""

FORMER = {
    "hardware": "counterbore countersink least_sheet",
    "inspection": "Sheet read_sheet",
    "plan": "plan_parts",
    "cards": "inspection_sheet formula_sheet gage_sheet glossary_sheet feedback_sheet",
}
"""Names of version 0.1 that answer for one version, with a warning."""

OWN_TYPES = {
    "draws": "pick shuffled step_between",
    "measures": "LENGTH Measure",
    "question": "NumberQuestion Question Tolerance",
    "slips": "Mistake Slip slip",
}
"""What an instructor's own question types import, by the module they import it from."""


def found(name: str) -> Any:
    """Follow a dotted name from its room."""
    room, *parts = name.split(".")
    held = import_module(f"seatwork.{room}")
    for part in parts:
        held = getattr(held, part)
    return held


def has(held: Any, name: str) -> bool:
    """Tell whether objects of a class have an attribute, fields without a default among them."""
    return hasattr(held, name) or name in getattr(held, "__annotations__", {})


@pytest.mark.parametrize("room", KEPT)
def test_names_are_handed_out(room: str) -> None:
    """Each name of the list can be called, without a warning."""
    with warnings.catch_warnings():
        warnings.simplefilter("error", DeprecationWarning)
        assert all(callable(found(f"{room}.{name}")) for name in KEPT[room].split())


@pytest.mark.parametrize("owner", HANGING)
def test_what_hangs_on_them_is_there(owner: str) -> None:
    """Each attribute of the list is there, a question's former ``said`` too."""
    held = found(owner)
    assert [name for name in HANGING[owner].split() if not has(held, name)] == []


@pytest.mark.parametrize("call", TAKEN)
def test_arguments_keep_their_names(call: str) -> None:
    """Each argument of the list is taken by its name."""
    taken = inspect.signature(found(call)).parameters
    assert [name for name in TAKEN[call].split() if name not in taken] == []


@pytest.mark.parametrize("room", FORMER)
def test_former_names_answer_and_warn(room: str) -> None:
    """A former name gives what has its place, and says the new name."""
    for name in FORMER[room].split():
        with pytest.warns(DeprecationWarning, match="is called"):
            assert callable(found(f"{room}.{name}"))


@pytest.mark.parametrize("module", OWN_TYPES)
def test_own_question_types_find_what_they_import(module: str) -> None:
    """The four modules that a workbook's own question types import keep their paths."""
    held = import_module(f"seatwork.questions.{module}")
    assert all(hasattr(held, name) for name in OWN_TYPES[module].split())
