"""Questions with drawn numbers that recognize the slips learners make."""

from seatwork.doors import doors

NAMES = {
    "registry": "all_types named own_types",
    "type.verdicts": "Verdict judge judge_all",
    "type.question": "NumberQuestion Question Tolerance",
    "type.chain": "ChainQuestion Step",
    "type.slips": "Mistake Slip slip",
    "type.draws": "pick shuffled step_between",
    "seatwork.entries.measures": "ANGLE COUNT FEED FINE_LENGTH FREQUENCY LENGTH RATIO SECONDS "
    "SPINDLE_SPEED SURFACE_SPEED Measure",
    "type.working": "WorkedStep",
    "checking.contract": "lacks",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
