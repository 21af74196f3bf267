"""Questions with drawn numbers that recognize the slips learners make."""

from seatwork.doors import doors

NAMES = {
    "registry": "all_types named own_types",
    "verdicts": "Verdict judge judge_all",
    "question": "NumberQuestion Question Tolerance",
    "chain": "ChainQuestion",
    "slips": "Mistake Slip",
    "checking": "lacks",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
