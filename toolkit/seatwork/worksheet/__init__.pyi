from seatwork.worksheet.checking import Outcome as Outcome
from seatwork.worksheet.checking import check as check
from seatwork.worksheet.desk import Desk as Desk
from seatwork.worksheet.desk import from_paper as from_paper
from seatwork.worksheet.desk import model_sheet as model_sheet
from seatwork.worksheet.desk import sheet as sheet
from seatwork.worksheet.finishing import NotYet as NotYet
from seatwork.worksheet.term_desk.week_view import week as week

NAMES: dict[str, str]
__all__: list[str]
