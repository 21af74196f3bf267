"""One right call of every function that a room hands out, by name; what hostile calls vary."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from decimal import Decimal
from functools import cache
from importlib import import_module
from inspect import isclass
from pathlib import Path
from random import Random
from typing import Any

import numpy as np
from seatwork import (
    benches,
    cutting,
    drawings,
    entries,
    hardware,
    inspection,
    marking,
    notes,
    opening,
    questions,
    seats,
    shop,
    tables,
    takehome,
)
from seatwork import record as term
from seatwork.entries.asked import MEASURES
from seatwork.errors import SeatworkError
from seatwork.marking import examples
from seatwork.plan import make_plan
from seatwork.plan.rows import Row
from seatwork.record import copying
from seatwork.seats.stack import Term
from seatwork.seats.surfaces import Flat, Tilted
from seatwork.shop import rules

ROOMS = (
    "benches", "cards", "cutting", "drawings", "entries", "hardware", "inspection", "marking",
    "notes", "opening", "picks", "plan", "questions", "record", "seats", "shop", "show", "tables",
    "takehome", "units", "worksheet",
)  # fmt: skip

SEAT = seats.Countersink(diameter=12, hole_diameter=6, included_angle=90)
HEAD = seats.Head(sharp_diameter=12.5, included_angle=82, edge_diameter=12, height=3.8)
WITH_SCREW = drawings.CutSeat(screw=HEAD, seat=SEAT, thickness=10)
BALLS = {"ball_diameter": 12, "ball_top": 6, "included_angle": 90}
MACHINE = cutting.Machine(stiffness=1e7, natural_frequency=120, damping_ratio=0.04)
CUTTER = cutting.Cutter(flutes=3, included_angle=82)
CUT = cutting.Cut(normal_coefficient=8e8, tangential_coefficient=2e9, mean_diameter=9)
CHATTER = {"machine": MACHINE, "cutter": CUTTER, "cut": CUT}
TERMS = [Term(nominal=1, tolerance=0.1, direction=1), Term(nominal=2, tolerance=0.1, direction=-1)]
NOTE = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"


@dataclass(frozen=True)
class Ground:
    """What a right call may use: a folder of its own, and things made of it once."""

    folder: Path

    @property
    def course(self) -> Path:
        """Name a folder for the instructor, made if need be."""
        place = self.folder / "course"
        place.mkdir(exist_ok=True)
        return place

    @property
    def handed_in(self) -> Path:
        """Name a folder of answer files, made if need be."""
        place = self.folder / "in"
        place.mkdir(exist_ok=True)
        return place

    @property
    def notes(self) -> Path:
        """Write a part of one feature."""
        place = self.folder / "plate.csv"
        place.write_text(f"feature,note\nA,{NOTE}\n", encoding="utf-8")
        return place

    @property
    def measured(self) -> Path:
        """Write a sheet of one measured part."""
        place = self.folder / "measured.csv"
        place.write_text("part,diameter\nP1,.385 in\n", encoding="utf-8")
        return place


@cache
def plan() -> Any:
    """Plan the note that the calls share."""
    return make_plan(notes.read(NOTE), material="6061 aluminum", machine="bench drill press")


@cache
def trace() -> cutting.Trace:
    """Cut for a few hundredths of a second."""
    return cutting.trace(**CHATTER, spindle_speed=300, width=0.5, feed=0.1, duration=0.4)


def number_part() -> Any:
    """Draw a question and take its first part."""
    return question().parts[0]


def question() -> questions.Question:
    """Draw a question."""
    return questions.named("seat-depth").draw(Random(1))


def sheet() -> marking.Sheet:
    """Load a sheet and keep two of its questions, since many calls draw them all."""
    from seatwork.marking import sheets

    whole = sheets.load("counterbores")
    return replace(whole, items=tuple(i for i in whole.items if i.id in ("b1", "b3")))


def judged() -> inspection.Inspection:
    """Judge one measured part."""
    return inspection.inspect([inspection.Measured(part="P1", diameter=9.8)], {"": plan()})


def inspected() -> inspection.Inspection:
    """Judge a learner's part."""
    return inspection.inspect([inspection.Measured(part="L07-1", diameter=9.8)], {"": plan()})


def parts() -> Any:
    """Return the part that was judged."""
    return judged().parts


def handout(ground: Ground) -> marking.Handout:
    """Give a sheet to one learner."""
    return term.hand_out(ground.course, sheet(), ["L07"])[0]


def said(ground: Ground) -> Any:
    """Return what a learner is told of an empty paper."""
    from seatwork.marking.learner_words import feedback

    return feedback(**told_of(ground))


def handed_out(ground: Ground) -> Any:
    """Hand a sheet out, and read the record of it."""
    term.hand_out(ground.course, sheet(), ["L07"])
    return term.forms(ground.course)


def given_course(ground: Ground) -> Path:
    """Hand a sheet out, and return the course folder."""
    handed_out(ground)
    return ground.course


def damaged_course(ground: Ground) -> Path:
    """Hand a sheet out in a course of its own, damage the record, and return the folder."""
    place = ground.folder / "damaged"
    if not place.exists():
        place.mkdir()
        term.hand_out(place, sheet(), ["L07"])
    (place / "record.db").write_bytes(b"no record")
    return place


def graded_course(ground: Ground) -> Path:
    """Hand a sheet out graded in a course of its own, and return its folder."""
    place = ground.folder / "graded"
    place.mkdir(exist_ok=True)
    term.hand_out(place, sheet(), ["L07"], mode="graded")
    return place


EMPTY_ZIP = b"PK\5\6" + bytes(18)
RUNTIME = takehome.Runtime(loader=b"", asm=b"", wasm=b"", library=EMPTY_ZIP)
"""Stands for Python in a page; no page with it is opened here."""


def given_paper(ground: Ground) -> takehome.Paper:
    """Hand a graded sheet out, and return the paper of it."""
    (paper,) = takehome.papers(graded_course(ground), sheet())
    return paper


def term_record(ground: Ground) -> term.Record:
    """Hand a sheet out, and open the record of it."""
    return term.open_record(given_course(ground))


def lost_paper(ground: Ground) -> str:
    """Say once that a paper was lost, and give the id of that."""
    kept = term_record(ground)
    facts = term.cell_facts(kept, "L07", "counterbores", "2026-09-21").history
    said = [line.id for line in facts if line.text.startswith("paper lost")]
    return said[0] if said else term.lose(kept, "counterbores", "L07", "in the shop", "2026-09-21")


def marked_record(ground: Ground) -> term.Record:
    """Hand a sheet out, mark an empty paper of it, and open the record."""
    term.hand_out(ground.course, sheet(), ["L07"])
    marking.AnswerFile(learner="L07", sheet="counterbores", form=1).save(ground.handed_in)
    term.mark(ground.course, sheet(), ground.handed_in)
    return term.open_record(ground.course)


def told_of(ground: Ground) -> dict[str, Any]:
    """Return what feedback on an empty paper takes."""
    plan, kept = sheet(), handed_out(ground)
    form = kept.form(plan.name, "L07", 1)
    paper = marking.AnswerFile(learner="L07", sheet=plan.name, form=1)
    from seatwork.marking.submissions import Submission

    marked = marking.Marker(plan, kept).mark([Submission("L07.json", paper)])[0]
    return {
        "sheet": plan,
        "form": form,
        "marked": marked,
        "words": shop.wording(),
        "language": "en",
    }


Call = Callable[[Ground], dict[str, Any]]


def always(**given: Any) -> Call:
    """Give the same arguments on any ground."""
    return lambda ground: dict(given)


CALLS: dict[str, Call] = {
    "units.angle": always(value="82°"),
    "units.cutting_speed": always(value="90 sfm", system="inch"),
    "units.explain": always(error=SeatworkError("a", "b", "c"), system="inch"),
    "units.feed": always(value=".004 ipr", system="inch"),
    "units.length": always(value="1/4 in", system="inch"),
    "units.number": always(value="688"),
    "units.rounded": always(value=1.25, places=1),
    "units.rounded_length": always(mm=12.7, system="inch", places=3),
    "units.show_angle": always(degrees=82.0, places=1),
    "units.show_both": always(mm=12.7, system="inch", places=3),
    "units.show_feed": always(mm_per_rev=0.1, system="inch"),
    "units.show_length": always(mm=12.7, system="inch", places=3),
    "units.show_note": always(mm=12.7, system="inch", places=3),
    "units.show_number": always(value=1.25, places=2, least=1),
    "units.show_speed": always(metres_per_minute=27.4, system="inch"),
    "units.show_spindle": always(rev_per_minute=688.0),
    "show.bend": always(
        slope="", gap=".015 in", across="3/4 in", bolt="1/2 in", grip="1-1/2 in"
    ),
    "show.chamfer": always(hole=".266 in", deep=".03 in", tool=82.0),
    "show.clean_up": always(diameter="1-1/4 in", draft=3.0, boss="", skin=True),
    "show.clearance_lists": always(screw="#10"),
    "show.counterbore": always(screw="3/8-16 SHCS", washer="3/8 narrow"),
    "show.depth": always(diameter=".283 in", hole=".159 in", angle=100.0, sheet=".064 in"),
    "show.depth_factor": always(angle=82.0),
    "show.depths": always(diameter="12 mm", hole="6 mm", angles=(82.0, 90.0)),
    "show.diameters": always(screw="1/4 flat head"),
    "show.edge_limits": always(leg="1 mm"),
    "show.fillet": always(screw="3/8-16 SHCS", ring=False),
    "show.fit": always(head=".507 in, 82°", seat=".507 in, 90°", hole=".266 in"),
    "show.flange_left": always(thickness=".500 in", skin=True),
    "show.gage_spread": always(screw="1/4 flat head"),
    "show.head_height": always(screw="#10 socket flat head"),
    "show.holes": always(thread="3/8-16"),
    "show.least_below": always(screw="M8 csk socket"),
    "show.least_sheet": always(rivet="5/32"),
    "show.leg": always(mouth=".385 in", hole=".201 in"),
    "show.longest_screw": always(thread="1/4-20", through=".250 in", into=".437 in"),
    "show.measured": always(what="lid"),
    "show.mouth": always(hole=".266 in", leg=".015 in"),
    "show.note_of_marks": always(marks=22.0, rev=640.0),
    "show.on_gage": always(screw="1/4 flat head", angle=80.0),
    "show.pilot": always(screw="3/8"),
    "show.pin": always(diameter=".375 in", below=".076 in", angle=82.0),
    "show.plan": always(
        note=NOTE, material="6061 aluminum", machine="bench drill press", screw="",
        plate="1/4 in", edge="1/2 in", slope=None,
    ),
    "show.power": always(torque="559 lb·in", rev=350.0),
    "show.rake_saving": always(rake=15.0),
    "show.read": always(note="4X ⌀.201 THRU ⌵ ⌀.385"),
    "show.rule": always(about="flush"),
    "show.shortcut": always(constant=4.0),
    "show.size": always(text="17/64"),
    "show.speed": always(surface="25 m/min", diameter="12 mm"),
    "show.spot": always(mouth=".306 in", tools=(90.0, 120.0)),
    "show.step": always(turns=500.0, machine="bench drill press"),
    "show.stop_error": always(error="1/6 turn of 1/2-20", angle=82.0, head=True),
    "show.thread_chamfer": always(thread="3/8-16"),
    "show.three_ways": always(note="⌀6.6 THRU ⌴ ⌀11 ↧ 6.4"),
    "show.time": always(travel=".139 in", rev=300.0, feed=".003 ipr"),
    "show.torque": always(
        tool="22 mm counterbore", feed="0.15 mm/rev", force=2200.0, hole="M10", rev=233.0
    ),
    "show.travel": always(diameter=".507 in", hole=".266 in", angle=82.0, nose=".060 in"),
    "show.triangle": always(diameter=".507 in", hole=".266 in", angle=82.0),
    "show.wrench_room": always(screw="3/8-16 hex cap"),
    "tables.about": always(name=tables.names()[0]),
    "tables.confirmed": always(name=tables.names()[0], entry=tables.rows(tables.names()[0])[0]),
    "tables.listing": always(from_memory=True, full=False),
    "tables.load": always(name=tables.names()[0]),
    "tables.names": always(),
    "tables.row": always(name="metric_csk_iso_10642", key="M6"),
    "tables.rows": always(name=tables.names()[0]),
    "tables.sources": always(full=True),
    "shop.cautions": always(operations=["counterbore"], folder=None),
    "shop.closing": lambda ground: {"folder": ground.folder},
    "shop.cutters": lambda ground: {"folder": ground.folder},
    "shop.glossary": lambda ground: {"folder": ground.folder},
    "shop.machines": lambda ground: {"folder": ground.folder},
    "shop.materials": lambda ground: {"folder": ground.folder},
    "shop.find": lambda ground: {"start": ground.folder},
    "shop.rules": lambda ground: {"folder": ground.folder},
    "shop.wording": lambda ground: {"folder": ground.folder},
    "seats.Chamfer": always(leg=1, included_angle=90),
    "seats.Counterbore": always(diameter=11, depth=6, hole_diameter=6.6),
    "seats.Countersink": always(diameter=12, hole_diameter=6, included_angle=90),
    "seats.Head": always(sharp_diameter=12, included_angle=82, edge_diameter=11, height=3),
    "seats.Spotface": always(diameter=20, hole_diameter=7),
    "seats.angle_from_two_balls": always(
        small_diameter=8, large_diameter=12, small_top=0, large_top=9
    ),
    "seats.ball_top": always(ball_diameter=12, seat=SEAT),
    "seats.bearing_pressure": always(force=1000, outside_diameter=12, hole_diameter=7),
    "seats.bending_stress": always(tilt=1, diameter=10, grip=40, modulus=2e5),
    "seats.clean_up": always(
        spotface=seats.Spotface(diameter=20, hole_diameter=7), face=Tilted(tilt=2)
    ),
    "seats.diameter_from_ball": always(**BALLS),
    "seats.fit": always(head=HEAD, seat=SEAT),
    "seats.protrusion": always(sharp_diameter=12, gage_diameter=10, included_angle=82),
    "seats.Allowed": always(below=0.4, sunk=1.5, loose=1.25, share=0.6, floor=1.0),
    "seats.CapScrew": always(head_diameter=10, head_height=6, diameter=6),
    "seats.stands": always(
        screw=HEAD, seat=SEAT, thickness=10, depth=0.0, clean=0.0, hole_diameter=0.0, allowed=None
    ),
    "drawings.CutSeat": always(screw=HEAD, seat=SEAT, thickness=10),
    "drawings.SeatWithScrew": always(parts=(WITH_SCREW,), look=None, title="as cut"),
    "drawings.seat_with_screw": always(part=WITH_SCREW, beside=None, look=None, title="as cut"),
    "seats.Triangle": always(wide=12, narrow=6, included_angle=90),
    "drawings.triangle": always(
        diameter=12, hole_diameter=6, included_angle=90, step=3, slips=(), holds="nothing",
        held=None, find="down", beside=None, look=None,
    ),
    "seats.rim": always(seat=SEAT, surface=Flat(), points=8),
    "seats.rss": always(terms=TERMS),
    "seats.simulate": always(terms=TERMS, rng=np.random.default_rng(1), count=10),
    "seats.worst_case": always(terms=TERMS),
    "cutting.Cut": always(
        normal_coefficient=8e8, tangential_coefficient=2e9, mean_diameter=9, process_damping=0.0,
        friction=0.3,
    ),
    "cutting.Cutter": always(flutes=2, included_angle=82, spacing=(170.0, 190.0), runout=0.0),
    "cutting.Machine": always(
        stiffness=1e7, natural_frequency=120, damping_ratio=0.04, direction="axial"
    ),
    "cutting.SpeedRange": always(slowest=60, fastest=3000),
    "cutting.chatter_band": always(**CHATTER, surface_speed=20),
    "cutting.critical_speed": always(**CHATTER),
    "cutting.cutting_speed": always(spindle_speed=300, diameter=12),
    "cutting.depth_of_cut": always(width=1, included_angle=82),
    "cutting.feed_per_tooth": always(feed=0.1, flutes=2),
    "cutting.feed_rate": always(spindle_speed=300, feed=0.1),
    "cutting.frequency_from_marks": always(marks=7.5, spindle_speed=300, direction="axial"),
    "cutting.geared_steps": always(steps=(300.0, 600.0), ratio=0.2),
    "cutting.land_damping": always(indentation=4e13, wear_land=0.05),
    "cutting.land_over_wave": always(
        wear_land=0.05, frequency=120, spindle_speed=300, mean_diameter=9
    ),
    "cutting.lip_in_cut": always(diameter=12, hole_diameter=6, included_angle=82),
    "cutting.marks_per_turn": always(frequency=120, spindle_speed=300, direction="axial"),
    "cutting.mean_diameter": always(diameter=12, hole_diameter=6),
    "cutting.operation_speed": always(drill_speed=900, ratio=0.33, cap=300),
    "cutting.pick_step": always(
        spindle_speed=500, steps=(250.0, 410.0), caps={"cap": 300.0}, nearest=True
    ),
    "cutting.power": always(torque=1, spindle_speed=300),
    "cutting.pulley_steps": always(
        motor_speed=1725, motor_pulleys=(50.0, 75.0), spindle_pulleys=(150.0, 100.0)
    ),
    "cutting.ring": always(frequency=120, spindle_speed=300, height=0.1, points=16),
    "cutting.shear_plane": always(shear_stress=300, friction_angle=30, rake=5),
    "cutting.sound": lambda ground: {"trace": trace(), "rate": 8000, "full_scale": 100},
    "cutting.specific_force": always(main_value=1500, exponent=0.25, chip_thickness=0.1, rake=5),
    "cutting.spindle_speed": always(cutting_speed=25, diameter=12),
    "cutting.stability": always(**CHATTER, spindle_speeds=(300.0, 600.0), widths=(0.5, 1.0)),
    "cutting.stall": always(
        plain_torque=1, chip_thickness=0.1, motor_power=500, spindle_speed=300, exponent=0.25,
        reference_thickness=0.4, wear_factor=1.3, efficiency=0.8,
    ),
    "cutting.surface_left": lambda ground: {"trace": trace()},
    "cutting.thrust": always(
        normal_coefficient=800, feed=0.1, diameter=12, hole_diameter=6, included_angle=82
    ),
    "cutting.time_in_cut": always(travel=3, spindle_speed=300, feed=0.1, dwell_turns=2),
    "cutting.torque": always(
        tangential_coefficient=2000, feed=0.1, diameter=12, hole_diameter=6
    ),
    "cutting.trace": always(
        **CHATTER, spindle_speed=300, width=0.5, feed=0.1, duration=0.01, kick=0.01, cap=1.0,
        steps_per_wave=60,
    ),
    "cutting.width_limit": always(**CHATTER, spindle_speed=300, widest=5.0),
    "hardware.across_corners": always(across_flats=19),
    "hardware.center_drill": always(text="#3"),
    "hardware.clearance_hole": always(size="#10", fit="normal", standard=None),
    "hardware.listed_counterbore": always(
        text="M8 socket head cap screw", standard=None, series=1, room_for="socket wrench",
        fit="close", washer_thickness=0.0,
    ),
    "hardware.listed_countersink": always(text="M8 socket flat head", standard=None),
    "hardware.drill": always(text="#7"),
    "hardware.drills": always(system="inch"),
    "hardware.edge_distances": always(diameter=4.0, what="edge distance"),
    "hardware.edge_tolerance": always(leg=1.0, tolerance_class="m"),
    "hardware.hole_limits": always(diameter=8.0, grade="H13"),
    "hardware.least_thickness": always(countersink_depth=1.0, head_height=1.5, rivet=None),
    "hardware.next_drill": always(diameter=5.0, direction="up", system="inch"),
    "hardware.rivet": always(text="1/8"),
    "hardware.screw": always(text="#10 flat head"),
    "hardware.size": always(text="#7", system="inch"),
    "hardware.tap_drill": always(text="1/4-20"),
    "hardware.fillet_clearance": lambda ground: {"screw": hardware.screw("1/4 SHCS")},
    "hardware.share_of_thread": lambda ground: {
        "found": hardware.thread("1/4-20"), "hole_diameter": 5.1,
    },
    "hardware.tap_room": lambda ground: {"room": 8.0, "pitch": 1.25, "rules": rules()},
    "hardware.tapped_hole_chamfer": always(text="1/4-20"),
    "hardware.thread": always(text="1/4-20"),
    "hardware.washer": always(text="1/4 narrow"),
    "hardware.wrench_socket": always(text="3/8 hex cap", outside_diameter=20.0),
    "hardware.job": lambda ground: {"name": hardware.jobs()[0]},
    "hardware.jobs": always(fit=None),
    "questions.pick": lambda ground: {"rng": Random(1), "items": ["a", "b"]},
    "questions.shuffled": lambda ground: {"rng": Random(1), "items": ["a", "b"]},
    "questions.slip": always(code="M01", value=1.0, sentence="a slip of the pen", twin_of=None),
    "questions.step_between": lambda ground: {
        "rng": Random(1), "low": 1.0, "high": 2.0, "step": 0.1,
    },
    "notes.read": always(text=NOTE, system="inch", rules=rules()),
    "notes.write": lambda ground: {"callout": notes.read(NOTE), "style": "symbols"},
    "picks.pick": always(name="angle-eight", room=False),
    "plan.show_power": always(watts=500.0, system="inch"),
    "plan.show_torque": always(newton_meters=2.0, system="inch"),
    "plan.example_readings": always(),
    "plan.example_parts": always(),
    "plan.parts": lambda ground: {
        "paths": [ground.notes], "material": "6061 aluminum", "machine": "bench drill press",
    },
    "plan.make": lambda ground: {
        "callout": notes.read(NOTE), "material": "6061 aluminum", "machine": "bench drill press",
    },
    "plan.make_plan": lambda ground: {
        "callout": notes.read(NOTE), "screw": None, "material": "6061 aluminum",
        "machine": "bench drill press", "thickness": 6.35, "edge": 12.0, "engagement": None,
    },
    "inspection.Measured": always(part="P1", diameter=9.8),
    "inspection.inspect": lambda ground: {
        "measured": [inspection.Measured(part="P1", diameter=9.8)], "plans": {"": plan()},
    },
    "inspection.write_blank": lambda ground: {
        "plans": {"A": plan()}, "path": ground.folder / "blank.csv", "replace": True,
    },
    "inspection.histogram": always(values=[9.8, 9.9, 9.85], width=0.05),
    "inspection.inspect_parts": lambda ground: {
        "plan": plan(), "measured": [inspection.Measured(part="P1", diameter=9.8)],
    },
    "inspection.run_chart": lambda ground: {"parts": parts(), "key": "diameter"},
    "inspection.inspect_file": lambda ground: {"path": ground.measured, "plans": {"": plan()}},
    "inspection.read_typed": always(parts=[{"part": "P1", "diameter": "9.8 mm"}], features=("",)),
    "inspection.read_readings": lambda ground: {"path": ground.measured, "features": None},
    "questions.Mistake": always(code="M01", value=1.0, sentence="a slip", twin_of=None),
    "questions.WorkedStep": always(
        label="the depth",
        sum="{diameter} ÷ 2",
        value=1.0,
        measure=questions.LENGTH,
        how="halve it",
        code="M59",
        part=-1,
    ),
    "questions.Tolerance": always(inch="0.002", metric="0.05", reason="a scale shows it"),
    "questions.Slip": always(code="M01", value="1.0", sentence="a slip", twin_of=None),
    "questions.all_types": always(),
    "questions.judge": lambda ground: {"part": number_part(), "text": "1.5"},
    "questions.judge_all": lambda ground: {"question": question(), "typed": ["1.5"]},
    "questions.named": always(name="seat-depth", own=None),
    "questions.own_types": lambda ground: {"folder": ground.folder},
    "questions.lacks": always(kind=questions.named("seat-depth"), draws=1),
    "marking.counted": always(results={"slips": [], "files": [], "unknown": []}),
    "marking.reasons": lambda ground: {
        "handed_out": handed_out(ground), "sheet": sheet(), "learner": "L07", "question": "b3",
        "text": "0.5",
    },
    "marking.coverage": lambda ground: {"folder": ground.folder},
    "marking.evening_course": lambda ground: {"form": "four", "folder": None},
    "marking.feedback": lambda ground: told_of(ground),
    "marking.form_id": always(
        key=bytes(32), learner="L07", sheet="cones", form=1, sizes={"c1": {"diameter": 9.1}}
    ),
    "marking.form_secret": always(key=bytes(32), form="K7QM-4XRD"),
    "marking.seal_of": always(content={"format": 3}, secret=bytes(32)),
    "marking.words_in": always(language="es"),
    "marking.Answer": always(parts=("1",), attempt=1, tries=0, hints=0, sure=False),
    "marking.AnswerFile": always(learner="L07", sheet="cones", form=1),
    "marking.Marker": lambda ground: {
        "sheet": sheet(), "handed_out": handed_out(ground), "extra": None,
    },
    "marking.hand_out": lambda ground: {
        "key": examples.KEY, "handed_out": handed_out(ground), "sheet": sheet(),
        "learners": ["L07"], "sitting": 2, "mode": None,
    },
    "marking.mark": lambda ground: {
        "handed_out": handed_out(ground), "sheet": sheet(), "answers": ground.handed_in,
        "progress": None,
    },
    "record.Record": lambda ground: {
        "place": ground.folder / "record.db", "key": examples.KEY, "author": "I1",
    },
    "record.picture": lambda ground: {
        "record": term_record(ground), "day": "2026-09-21", "counting": None,
    },
    "record.report": lambda ground: {
        "record": term_record(ground), "learner": "L07", "day": "2026-09-21", "counting": None,
    },
    "record.cell_facts": lambda ground: {
        "record": marked_record(ground), "learner": "L07", "sheet": "counterbores",
        "day": "2026-09-21",
    },
    "record.excuse": lambda ground: {
        "record": term_record(ground), "name": "counterbores", "learner": "L07",
        "reason": "court date", "day": "2026-09-21", "sitting": 1,
    },
    "record.lose": lambda ground: {
        "record": term_record(ground), "name": "counterbores", "learner": "L07",
        "reason": "lost in the shop", "day": "2026-09-21", "sitting": 1,
    },
    "record.leave": lambda ground: {
        "record": term_record(ground), "learner": "L07", "reason": "moved away",
        "day": "2026-09-21",
    },
    "record.sign": lambda ground: {
        "record": term_record(ground), "learner": "L07", "machine": "bench drill press",
        "paper_at": "binder, sheet 4", "day": "2026-09-21", "withdrawn": False,
    },
    "record.undo": lambda ground: {
        "record": term_record(ground), "day": "2026-09-21", "reason": "talked it over",
        "target": lost_paper(ground),
    },
    "record.combine": lambda ground: {
        "record": (kept := term_record(ground)),
        "other": copying.copy(kept, ground.folder / "other.db"),
    },
    "record.bring_back": lambda ground: {"folder": damaged_course(ground), "copy": None},
    "record.erase": lambda ground: {
        "record": term_record(ground), "folder": ground.course, "learner": "L07",
        "day": "2026-09-21",
    },
    "record.keep_parts": lambda ground: {
        "record": term_record(ground), "found": inspected(), "day": "2026-09-21",
        "codes": ("S5",),
    },
    "record.check": lambda ground: {"record": term_record(ground)},
    "record.forms": lambda ground: {"folder": given_course(ground)},
    "record.hand_out": lambda ground: {
        "folder": ground.course, "sheet": sheet(), "learners": ["L07"], "sitting": 1,
        "mode": None, "target": None, "due": "2026-09-21", "day": "2026-09-14",
    },
    "record.mark": lambda ground: {
        "folder": given_course(ground), "sheet": sheet(), "given": ground.handed_in,
        "day": "2026-09-21", "handed_in": "", "progress": None,
    },
    "record.open_record": lambda ground: {"folder": given_course(ground)},
    "record.Override": always(
        learner="L07", sheet="counterbores", form=1, question="b3", points=0.5, reason="aloud",
    ),
    "record.override": lambda ground: {
        "record": marked_record(ground), "day": "2026-09-21",
        "given": term.Override("L07", "counterbores", 1, "b3", 0.5, "aloud"),
    },
    "record.results": lambda ground: {
        "record": term_record(ground), "name": "counterbores", "day": "2026-09-21",
        "counting": None,
    },
    "record.writable_record": lambda ground: {"folder": ground.course, "day": "2026-09-21"},
    "cards.Pages": always(paper="letter", foot="seatwork"),
    "cards.evening_pages": always(evening=1, form="eight", paper="letter", date="2026-03-02"),
    "cards.bench_sheets": always(evening=4, form="eight", paper="a4", date="2026-03-02"),
    "cards.job_card": lambda ground: {
        "plan": plan(), "paper": "letter", "date": "2026-03-02", "name": "hopper plate",
    },
    "cards.part_card": lambda ground: {
        "name": "hopper plate", "plans": {"seat": plan()}, "paper": "letter",
        "date": "2026-03-02", "left_out": (), "progress": None,
    },
    "cards.inspection_page": lambda ground: {
        "inspection": judged(), "feature": "", "quantity": "diameter",
        "paper": "letter", "date": "2026-03-02",
    },
    "cards.formula_page": always(paper="letter"),
    "cards.gage_page": lambda ground: {"plans": plan(), "paper": "a4", "date": "2026-03-02"},
    "cards.glossary_page": always(paper="letter"),
    "cards.learner_pages": lambda ground: {
        "path": ground.folder / "L07.pdf", "sheet": sheet(), "handout": handout(ground),
        "paper": "letter",
    },
    "cards.print_class": lambda ground: {
        "sheet": sheet(),
        "handouts": [handout(ground)],
        "to": ground.folder / "given",
        "keep": ground.course,
        "which": "2",
        "paper": "a4",
    },
    "cards.on_paper": lambda ground: {"sheet": sheet(), "handout": handout(ground), "paper": "a4"},
    "cards.answer_key": lambda ground: {
        "path": ground.folder / "key.pdf", "sheet": sheet(), "handouts": (handout(ground),),
        "paper": "letter",
    },
    "cards.feedback_page": lambda ground: {
        "path": ground.folder / "said.pdf", "feedback": said(ground), "paper": "letter",
    },
    "cards.seat_profile": lambda ground: {"plan": plan(), "paper": "letter"},
    "cards.coupon_set": always(paper="letter", date="2026-03-02", shop=None),
    "cards.demonstration": lambda ground: {
        "plan": plan(), "paper": "letter", "date": "2026-03-02",
    },
    "cards.told": always(rows=[Row(label="a", text="b")]),
    "worksheet.check": lambda ground: {"pages": [ground.folder / "no_page.ipynb"]},
    "worksheet.from_paper": lambda ground: {"sheet": "cones", "course": ground.course},
    "worksheet.model_sheet": always(name="cones"),
    "worksheet.sheet": always(name="cones"),
    "worksheet.week": lambda ground: {"folder": ground.course, "day": "2026-09-21"},
    "entries.AskedChoice": always(options=("the pilot", "the stop")),
    "entries.AskedNumber": always(measure="LENGTH", system="inch"),
    "entries.AskedOrder": always(count=4),
    "entries.Typed": always(value=Decimal("0.139"), place=Decimal("0.001"), unit_said=True),
    "entries.echo": always(text=".139 in", asked=entries.AskedNumber("LENGTH", "inch")),
    "entries.read": always(text=".139 in", measure=MEASURES["LENGTH"], system="inch"),
    "takehome.bench_call": always(source="sw.benches.angles(cutter_angle=90)"),
    "takehome.graded_page": lambda ground: {"paper": given_paper(ground), "made": RUNTIME},
    "takehome.lesson_page": lambda ground: {
        "notebook": opening.source() / "notebooks" / "02_angle_standards.ipynb",
        "target": ground.folder / "lesson.html",
        "made": None,
    },
    "takehome.papers": lambda ground: {
        "folder": graded_course(ground), "plan": sheet(), "sitting": 1, "only": ["L07"],
    },
    "takehome.planner_page": always(made=RUNTIME),
    "takehome.practice_page": lambda ground: {
        "sheet": sheet(), "made": RUNTIME, "planner": False,
    },
    "takehome.runtime_script": always(made=RUNTIME),
    "takehome.record": lambda ground: {"bench": benches.triangle()},
    "opening.deliver": lambda ground: {"folder": ground.folder / "workbook"},
    "opening.shop_defaults": lambda ground: {"package": ground.folder},
    "opening.source": lambda ground: {"package": ground.folder},
    "benches.angles": always(cutter_angle=82.0, screw="M6 socket flat 90° (hopper plate)"),
    "benches.chatter": always(speed=1000, flutes=6, width=0.5, runout=0.0),
    "benches.class_picture": lambda ground: {
        "folder": given_course(ground), "day": "2026-09-21",
    },
    "benches.counterbore": always(way="cut for the head", washer=False, measured=False),
    "benches.cutters": always(pick="A", opened=True, material="gray iron"),
    "benches.depth": always(cut=False, new_nose=2.0, stop_error=0.0),
    "benches.edges": always(all_round=False, place="crank shaft, oil hole", width=0.5),
    "benches.flush": always(diameter=12.9, tolerance=0.1, hole=6.8),
    "benches.gaging": always(shown=False, way="one ball", rise=None),
    "benches.my_part": always(note=NOTE, material="1018 steel", machine="knee mill"),
    "benches.note": always(note=NOTE, opened=False, system="inch"),
    "benches.on_the_hole": always(shown=True, off_center=0.1, out_of_square=1.0),
    "benches.slips": always(pick="depth of a countersink", answer=None, learner=7),
    "benches.speeds": always(operation=None, diameter=None, machine=None),
    "benches.spotface": always(depth=0.0, tilt=3, roughness=0.15),
    "benches.which_seat": always(opened=False, system="inch", palette=None),
}  # fmt: skip


def public() -> Iterator[tuple[str, Any]]:
    """Yield everything callable that a room hands out, with its name."""
    for room in ROOMS:
        home = import_module(f"seatwork.{room}")
        for name in getattr(home, "__all__", None) or dir(home):
            if not name.startswith("_") and callable(found := getattr(home, name)):
                yield f"{room}.{name}", found


def functions() -> list[str]:
    """Name the public functions; classes are walked where the table calls them."""
    return [name for name, found in public() if not isclass(found)]
