"""What is said of papers that came beside others: of their form, or with the same numbers."""

from seatwork.marking.alike import alike
from seatwork.marking.results import Data
from seatwork.record.class_now import MISFIT
from seatwork.record.deciding import SHORT
from seatwork.record.taking_in import Came, Taken
from seatwork.record.which_paper import DECIDED, LATER, SECOND

STANDS = {
    DECIDED: "that came after it was decided which counts; the one decided for stands",
    MISFIT: "without a seal that fits; the one that has it stands",
    LATER: "that came after the day; the first stands",
    SECOND: "that came later; the first stands",
}
"""By what a cell says, why another paper stands."""
OTHER = "with other answers; another one stands"


def notes(taken: Taken, after: Data) -> list[str]:
    """Say of each other paper of a form which one counts, and who typed the same numbers.

    These sentences are said when a pile is marked; the record and what is printed hold none.

    Parameters
    ----------
    taken : Taken
        What taking a pile in came to.
    after : dict
        The marks of the sheet now, as `seatwork.record.results` gives them.
    """
    told = []
    rows = {(one["learner"], one["form"]): one for one in after["files"]}
    for came in dict.fromkeys(taken.another):
        row = rows.get((came.learner, came.form), {})
        said = _of_another(came, row.get("note", ""), is_it=row.get("id") == came.paper)
        told.append(f"{came.learner}, form {came.form} {said}")
    told = [*dict.fromkeys(told), *map(_of_taken_back, taken.taken_back)]
    marked = {(one["learner"], one["form"]) for one in after["files"] if one["questions"]}
    for one in taken.marked:
        if one.file is not None and one.doubt and not one.scored:
            place = one.file.learner, one.file.form
            if place in marked and "other answers" not in one.doubt:
                told.append(f"{place[0]}, form {place[1]} was marked before and stays as it was")
    who = sorted({one.file.learner for one in taken.marked if one.file is not None})
    return [*told, *map(str, alike(after["files"], who))]


def _of_another(came: Came, note: str, *, is_it: bool) -> str:
    """Say of another paper of a form which of them counts, and what lets this one count."""
    if "came at once" in note:
        choose = f"with the ID that seatwork history {came.learner} shows"
        said = "has two papers with other answers in one pile; say which"
        return f'{said}: seatwork count-paper ID "why", {choose}'
    if is_it:
        typed = ", typed from paper," if came.how == "paper" else ""
        said = f"has other answers{typed} than the paper marked before; these count now, "
        by_hand = ", and so are points given by hand before: look whether they still fit"
        return f"{said}both are kept{by_hand if 'points by hand on' in note else ''}"
    it = "answers typed from paper" if came.how == "paper" else "a paper"
    why = next((words for said, words in STANDS.items() if said in note), OTHER)
    return (
        f"has {it} {why}, both are kept; to count this one: "
        f'seatwork count-paper {came.paper[:SHORT]} "why"'
    )


def _of_taken_back(came: Came) -> str:
    """Say of a paper that came again after it was taken back that it stays so."""
    return (
        f"{came.learner}, form {came.form}: this paper was taken back before, and stays so; "
        f"seatwork history {came.learner} shows what took it back, to be undone"
    )
