from seatwork.questions.chain import ChainQuestion as ChainQuestion
from seatwork.questions.checking import lacks as lacks
from seatwork.questions.question import NumberQuestion as NumberQuestion
from seatwork.questions.question import Question as Question
from seatwork.questions.question import Tolerance as Tolerance
from seatwork.questions.registry import all_types as all_types
from seatwork.questions.registry import named as named
from seatwork.questions.registry import own_types as own_types
from seatwork.questions.slips import Mistake as Mistake
from seatwork.questions.slips import Slip as Slip
from seatwork.questions.verdicts import Verdict as Verdict
from seatwork.questions.verdicts import judge as judge
from seatwork.questions.verdicts import judge_all as judge_all

NAMES: dict[str, str]
__all__: list[str]
