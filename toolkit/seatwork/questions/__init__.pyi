from seatwork.entries.measures import ANGLE as ANGLE
from seatwork.entries.measures import COUNT as COUNT
from seatwork.entries.measures import FEED as FEED
from seatwork.entries.measures import FINE_LENGTH as FINE_LENGTH
from seatwork.entries.measures import FREQUENCY as FREQUENCY
from seatwork.entries.measures import LENGTH as LENGTH
from seatwork.entries.measures import RATIO as RATIO
from seatwork.entries.measures import SECONDS as SECONDS
from seatwork.entries.measures import SPINDLE_SPEED as SPINDLE_SPEED
from seatwork.entries.measures import SURFACE_SPEED as SURFACE_SPEED
from seatwork.entries.measures import Measure as Measure
from seatwork.questions.checking.contract import lacks as lacks
from seatwork.questions.registry import all_types as all_types
from seatwork.questions.registry import named as named
from seatwork.questions.registry import own_types as own_types
from seatwork.questions.type.chain import ChainQuestion as ChainQuestion
from seatwork.questions.type.chain import Step as Step
from seatwork.questions.type.draws import pick as pick
from seatwork.questions.type.draws import shuffled as shuffled
from seatwork.questions.type.draws import step_between as step_between
from seatwork.questions.type.question import NumberQuestion as NumberQuestion
from seatwork.questions.type.question import Question as Question
from seatwork.questions.type.question import Tolerance as Tolerance
from seatwork.questions.type.slips import Mistake as Mistake
from seatwork.questions.type.slips import Slip as Slip
from seatwork.questions.type.slips import slip as slip
from seatwork.questions.type.verdicts import Verdict as Verdict
from seatwork.questions.type.verdicts import judge as judge
from seatwork.questions.type.verdicts import judge_all as judge_all
from seatwork.questions.type.working import WorkedStep as WorkedStep

NAMES: dict[str, str]
__all__: list[str]
