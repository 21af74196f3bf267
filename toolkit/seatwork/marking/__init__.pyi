from seatwork.marking.answers import Answer as Answer
from seatwork.marking.answers import AnswerFile as AnswerFile
from seatwork.marking.evening_filling import evening_course as evening_course
from seatwork.marking.evenings import Evening as Evening
from seatwork.marking.evenings import EveningCourse as EveningCourse
from seatwork.marking.handing_out import Handout as Handout
from seatwork.marking.handing_out import hand_out as hand_out
from seatwork.marking.languages import words_in as words_in
from seatwork.marking.learner_words import feedback as feedback
from seatwork.marking.marker import Marked as Marked
from seatwork.marking.marker import Marker as Marker
from seatwork.marking.marker import mark as mark
from seatwork.marking.outline import coverage as coverage
from seatwork.marking.sealing import form_id as form_id
from seatwork.marking.sealing import form_secret as form_secret
from seatwork.marking.sealing import seal_of as seal_of
from seatwork.marking.sheets import Item as Item
from seatwork.marking.sheets import Sheet as Sheet
from seatwork.marking.slip_count import SlipCount as SlipCount
from seatwork.marking.slip_count import counted as counted
from seatwork.marking.why import reasons as reasons

NAMES: dict[str, str]
__all__: list[str]
