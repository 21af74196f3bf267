"""Rehearse a school year: rooms with two instructors each, re-tests, a laptop lost, a copy back.

    python tests/school/rehearse_year.py FOLDER [ROOMS LEARNERS SHEETS]

plays it (3 rooms, 20 learners each, 12 sheets if not said otherwise), prints what each step
took, the pictures of the classes, whether each is the picture of a year without an accident,
and how marking grows from 1 to 10 and 100 rooms. Nothing here is asked of a clock but time.
"""

import shutil
import sys
import time
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from pathlib import Path
from random import Random

from seatwork.marking import AnswerFile, Sheet, form_secret, sheets
from seatwork.marking.course import KEY_FILE
from seatwork.marking.text import right_answer
from seatwork.questions.type.parts import NumberPart
from seatwork.record import (
    Override,
    check,
    forms,
    hand_out,
    mark,
    open_record,
    override,
    picture,
    results,
)
from seatwork.record.bringing_back import bring_back
from seatwork.record.copying import copy_key, copy_to
from seatwork.record.course_record import set_author
from seatwork.record.merging import combine
from seatwork.school import mark_rooms, rooms

FIRST = date(2026, 9, 7)
WEEK = timedelta(days=7)
SLIPS, AWAY, BY_HAND = 0.12, 0.05, 0.05
GROWTH = (1, 10, 100)
LOST_AFTER, DAMAGED_AFTER = 0.5, 0.75
"""Parts of the year after which the laptop is lost, and a record is damaged."""


@dataclass
class RoomOfTwo:
    """One room: two instructors' folders, a stick, what learners handed in, what befell it."""

    place: Path
    learners: list[str]
    befalls: str = ""
    spent: Counter[str] = field(default_factory=Counter)

    @property
    def first(self) -> Path:
        """The folder of the instructor who hands out and keeps."""
        return self.place / "I1" / "course"

    @property
    def second(self) -> Path:
        """The folder of the instructor who marks half of it."""
        return self.place / "I2" / "course"

    @property
    def stick(self) -> Path:
        """Where copies go."""
        return self.place / "stick"

    def timed(self, what: str, deed: Callable[[], object]) -> None:
        """Do something and note how long it took [s]."""
        began = time.perf_counter()
        deed()
        self.spent[what] += time.perf_counter() - began


def begun(place: Path, learners: list[str], befalls: str) -> RoomOfTwo:
    """Lay out a room; the second instructor has the same key and another code."""
    made = RoomOfTwo(place, learners, befalls)
    made.first.mkdir(parents=True)
    made.second.mkdir(parents=True)
    made.stick.mkdir()
    set_author(made.second, "I2")
    return made


def play(made: RoomOfTwo, plans: list[Sheet], *, second: bool = True) -> None:
    """Play a year in one room, sheet after sheet."""
    for number, plan in enumerate(plans):
        day = FIRST + number * WEEK
        one_sheet(made, plan, day, 1, made.learners, second=second)
        again = not_yet(made, plan, day) if number % 3 == 0 else []
        if again:
            one_sheet(made, plan, day + timedelta(days=3), 2, again, second=second)
        accident(made, (number + 1) / len(plans), plan, day)
        made.timed("copy", lambda: to_stick(made))


def one_sheet(
    made: RoomOfTwo, plan: Sheet, day: date, sitting: int, learners: list[str], *, second: bool
) -> None:
    """Hand a sheet out, let it be answered, mark it by one or both, put both together."""
    due = str(day + timedelta(days=2))
    made.timed(
        "hand out",
        lambda: hand_out(made.first, plan, learners, sitting=sitting, due=due, day=str(day)),
    )
    piles = answered(made, plan, sitting, learners)
    other = made.second if second else made.first
    if second:
        made.timed("combine", lambda: fetch(made.first, made.second))
    made.timed("mark", lambda: mark(made.first, plan, piles[0], day=due))
    made.timed("mark", lambda: mark(other, plan, piles[1], day=due))
    made.timed("decide", lambda: decide(other, plan, learners, sitting, due))
    if second:
        made.timed("combine", lambda: fetch(made.second, made.first))


def fetch(source: Path, target: Path) -> None:
    """Put what one instructor's record holds into the other's."""
    if not (target / "course.key").exists():
        shutil.copy(source / "course.key", target / "course.key")
    if not (target / "record.db").exists():
        with_record(source, lambda record: copy_to(record, target / "record.db"))
        return
    with_record(target, lambda record: combine(record, source / "record.db"))


def with_record(folder: Path, deed: Callable[..., object]) -> object:
    """Do something with the record of a folder, and let go of it."""
    record = open_record(folder)
    try:
        return deed(record)
    finally:
        record.close()


def answered(made: RoomOfTwo, plan: Sheet, sitting: int, learners: list[str]) -> tuple[Path, Path]:
    """Answer a sheet as a class does; every second paper goes to the second instructor."""
    handed, key = forms(made.first), bytes.fromhex((made.first / KEY_FILE).read_text("ascii"))
    piles = tuple(made.place / f"in{who}-{plan.name}-{sitting}" for who in (1, 2))
    for place in piles:
        place.mkdir()
    for number, code in enumerate(learners):
        rng = Random(f"{made.place.name}{plan.name}{sitting}{code}")
        if rng.random() < AWAY:
            continue
        given = next(one for one in handed.forms(plan.name, code) if one.sitting == sitting)
        file = AnswerFile(learner=code, sheet=plan.name, form=given.form)
        for question, asked in given.questions(plan).items():
            parts = tuple(
                str(part.slips[0].value)
                if isinstance(part, NumberPart) and part.slips and rng.random() < SLIPS
                else right_answer(part)
                for part in asked.parts
            )
            file = file.changed(question, parts=parts, tries=1)
        secret = form_secret(key, given.form_id)
        replace(file, form_id=given.form_id).sealed(secret).save(piles[number % 2])
    return piles[0], piles[1]


def decide(folder: Path, plan: Sheet, learners: list[str], sitting: int, day: str) -> None:
    """Give points by hand to a few whose paper this instructor marked."""
    rows = with_record(folder, lambda record: results(record, plan.name, day))
    assert isinstance(rows, dict)
    marked = {(one["learner"], one["form"]) for one in rows["files"] if one["questions"]}
    handed = forms(folder)
    for code in learners[1::2]:
        given = next(one for one in handed.forms(plan.name, code) if one.sitting == sitting)
        if (code, given.form) in marked and Random(f"{plan.name}{code}").random() < BY_HAND:
            said = Override(code, plan.name, given.form, plan.items[0].id, 0.5, "said aloud")
            with_record(folder, lambda record, said=said: override(record, said, day))


def not_yet(made: RoomOfTwo, plan: Sheet, day: date) -> list[str]:
    """Return who has not passed a sheet yet."""
    after = str(day + timedelta(days=2))
    rows = with_record(made.first, lambda record: results(record, plan.name, after))
    assert isinstance(rows, dict)
    return sorted(
        one["learner"]
        for one in rows["files"]
        if one["points"] is not None and one["points"] < plan.pass_mark * one["of"] - 1e-9
    )


def to_stick(made: RoomOfTwo) -> None:
    """Copy record and key to the stick."""
    with_record(made.first, lambda record: copy_key(made.first, copy_to(record, made.stick)))


def accident(made: RoomOfTwo, past: float, plan: Sheet, day: date) -> None:
    """Let befall the room what is to befall it, before the week's copy, and make it good.

    The other instructor's record, what is left of the file, the lines beside it, and the pile
    marked once more: all that README says to do.
    """
    piles = sorted(made.place.glob(f"in1-{plan.name}-*"))
    due = str(day + timedelta(days=2))
    if made.befalls == "laptop lost" and past >= LOST_AFTER:
        made.befalls = ""
        shutil.rmtree(made.first)
        made.first.mkdir()
        for name in ("record.db", "course.key"):
            shutil.copy(made.stick / name, made.first / name)
        (made.first / "record.db").chmod(0o600)
        made.timed("lost laptop", lambda: fetch(made.second, made.first))
        made.timed("lost laptop", lambda: mark(made.first, plan, piles, day=due))
    if made.befalls == "record damaged" and past >= DAMAGED_AFTER:
        made.befalls = ""
        place = made.first / "record.db"
        place.write_bytes(place.read_bytes()[: place.stat().st_size // 2])
        made.timed("bring back", lambda: bring_back(made.first, made.stick / "record.db"))
        made.timed("bring back", lambda: fetch(made.second, made.first))
        made.timed("bring back", lambda: mark(made.first, plan, piles, day=due))


def standing(folder: Path, day: str) -> str:
    """Return the picture of a class."""
    return str(with_record(folder, lambda record: picture(record, day)))


def faults(folder: Path) -> list[str]:
    """Return what is wrong with a record."""
    found = with_record(folder, check)
    assert isinstance(found, list)
    return found


def year(folder: Path, count: int, learners: int, many: int) -> Iterator[tuple[RoomOfTwo, bool]]:
    """Play the year in each room, and once more without accident or second instructor.

    Yields
    ------
    room, same : RoomOfTwo, bool
        The room, and whether its picture is that of the year without an accident.
    """
    names = sorted(path.stem for path in sheets.folder().glob("*.toml"))[:many]
    plans = [sheets.load(name) for name in names]
    last = str(FIRST + len(plans) * WEEK + timedelta(days=30))
    for number in range(count):
        codes = [f"{'ABC'[number % 3]}{number}{one:03d}" for one in range(learners)]
        befalls = ("", "laptop lost", "record damaged")[number % 3]
        made = begun(folder / f"room{number + 1}", codes, befalls)
        play(made, plans)
        alone = begun(folder / "alone" / f"room{number + 1}", codes, "")
        alone.first.mkdir(exist_ok=True)
        shutil.copy(made.first / "course.key", alone.first / "course.key")
        play(alone, plans, second=False)
        yield made, standing(made.first, last) == standing(alone.first, last)


def growth(folder: Path) -> Iterator[tuple[int, float]]:
    """Yield how many rooms were marked, and what one of them took [s]."""
    plan, codes = sheets.load("cones"), [f"L{number:02d}" for number in range(1, 21)]
    for count in GROWTH:
        place = folder / f"rooms{count}"
        for number in range(count):
            made = begun(place / f"room{number:03d}", codes, "")
            hand_out(made.first, plan, codes, day=str(FIRST))
            first, _ = answered(made, plan, 1, codes)
            shutil.move(first, made.place / "handed_in")
            shutil.move(made.first, made.place / "course")
        began = time.perf_counter()
        done = list(mark_rooms(rooms(place), plan, day=str(FIRST)))
        assert all(one.marking is not None for one in done)
        yield count, (time.perf_counter() - began) / count


def main(words: list[str]) -> int:
    """Play the year, print it, and return 0 if every picture is as it should be."""
    folder = Path(words[0])
    count, learners, many = (int(word) for word in words[1:4]) if words[1:] else (3, 20, 12)
    well = True
    for made, same in year(folder, count, learners, many):
        spent = ", ".join(f"{what} {took:.1f} s" for what, took in made.spent.items())
        wrong = faults(made.first)
        well = well and same and not wrong
        sys.stdout.write(f"\n{made.place.name}: {spent}\n")
        sys.stdout.write(standing(made.first, "2027-06-30") + "\n")
        sys.stdout.write(f"as in a year without an accident: {same}; check: {wrong or 'well'}\n")
    for rooms_, took in growth(folder):
        sys.stdout.write(f"{rooms_} rooms marked: {took:.2f} s each\n")
    return 0 if well else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
