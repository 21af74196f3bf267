from seatwork.record.behind_cell import CellFacts as CellFacts
from seatwork.record.behind_cell import cell_facts as cell_facts
from seatwork.record.bringing_back import bring_back as bring_back
from seatwork.record.checking import check as check
from seatwork.record.class_picture import Picture as Picture
from seatwork.record.class_picture import picture as picture
from seatwork.record.course_record import open_record as open_record
from seatwork.record.course_record import writable_record as writable_record
from seatwork.record.deciding import excuse as excuse
from seatwork.record.deciding import leave as leave
from seatwork.record.deciding import lose as lose
from seatwork.record.deciding import sign as sign
from seatwork.record.deciding import undo as undo
from seatwork.record.erasing import erase as erase
from seatwork.record.giving import forms as forms
from seatwork.record.giving import hand_out as hand_out
from seatwork.record.keeping import Record as Record
from seatwork.record.learner_report import Report as Report
from seatwork.record.learner_report import report as report
from seatwork.record.marking_course import Marking as Marking
from seatwork.record.marking_course import mark as mark
from seatwork.record.merging import combine as combine
from seatwork.record.paper_results import results as results
from seatwork.record.points_by_hand import Override as Override
from seatwork.record.points_by_hand import override as override
from seatwork.record.practical import keep_parts as keep_parts

NAMES: dict[str, str]
__all__: list[str]
