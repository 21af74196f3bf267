from seatwork.cards.coupons import coupon_set as coupon_set
from seatwork.cards.evening_cuts import bench_sheets as bench_sheets
from seatwork.cards.evening_sheet import evening_pages as evening_pages
from seatwork.cards.feedback import feedback_page as feedback_page
from seatwork.cards.formulas import formula_page as formula_page
from seatwork.cards.gages import gage_page as gage_page
from seatwork.cards.glossary import glossary_page as glossary_page
from seatwork.cards.inspected import inspection_page as inspection_page
from seatwork.cards.job import job_card as job_card
from seatwork.cards.pages import Pages as Pages
from seatwork.cards.paper import answer_key as answer_key
from seatwork.cards.paper import learner_pages as learner_pages
from seatwork.cards.paper import on_paper as on_paper
from seatwork.cards.paper import print_class as print_class
from seatwork.cards.part import part_card as part_card
from seatwork.cards.profile import seat_profile as seat_profile
from seatwork.cards.row_table import told as told
from seatwork.cards.station import demonstration as demonstration

NAMES: dict[str, str]
__all__: list[str]
