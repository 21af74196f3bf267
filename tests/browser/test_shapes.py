"""What a page without Python says nobody could read, held against the reader of entries itself."""

import random
import string

import pytest
from seatwork.entries.asked import MEASURES, AskedNumber, AskedOrder, as_data, echo
from seatwork.entries.letters import LETTERS
from seatwork.entries.spelled import AFTER, BEFORE
from seatwork.takehome.blocks import HERE
from seatwork.takehome.shapes import KNOWN, shape, shape_name

FEW, MANY = 6_000, 100_000
NUMBERS = (
    "0", "5", ".139", "0.139", "12", "3,53", "1,234", "1.234,5", "17/64", "1/3", "1 1/4", "1-1/4",
    "1 - 1/4", "\u00bd", "1\u00bd", "2 \u00be", "5.", ",5", "1e3", "0x1F", "7 / 8", "1\u20444",
    "999999999999", "12 34", "0,0", "\u0663", "3/0", "1/128", "007",
)  # fmt: skip
WORDS = (
    *(word for words in (*KNOWN, BEFORE, AFTER) for word in words),
    "about half", "approx", "and", "or", "half", "zwei", "seis", "=", "-", "+", "\u2212", "\u2013",
    "x", "X", "#", "M", "no.", "''", "\u2033", "\u201d", "'", "\u00ba", "\u00b0", "%", ",", ";",
    ".", "/", "\t", "\n", "\u00a0", "  ", "\u2028", "\u0000", "\ufffd", "\u0130", "\u212a",
    "\u017f", "\U0001f600", "</script>", "<!--", "rev/min", "1/min", "a", "b", "c", "CAB", "E", "?",
)  # fmt: skip
UNREAD = (
    "about half", "2 + 3", "2+3", ".139 .140", "5 and 6", ".139 in or so", "twelve", "proud",
    ".1 to .2", "?", "1/3 in", "5 5", "a", "</script>", "#7", "M6", "1,234 mm", "-.5 in", "1 m",
)  # fmt: skip
READ = (
    ".139", ".139 in", "0.139", '1/8"', "1 1/4", "1-1/4 in", "3.53 mm", "3,53 mm", "\u00bd",
    "proud .012", ".012 proud", ".012 in deep", "= .5", ".5,", "12 pulg", "3,5 mm de profundidad",
)  # fmt: skip
ASK = """([entries, shapes]) => { %s
  return entries.map(([text, part]) => unreadable(text, part, shapes)); }"""


@pytest.fixture(scope="module")
def says_unread(chromium):
    """Give what asks the page's script about many entries at once."""
    page = chromium.new_page()
    code = ASK % (HERE / "shapes.js").read_text(encoding="utf-8")
    shapes = {
        shape_name(measure, system): shape(measure, system)
        for measure in MEASURES
        for system in ("inch", "metric")
    }

    def ask(entries: list[tuple[str, AskedNumber | AskedOrder]]) -> list[bool]:
        given = [[text, as_data(asked)] for text, asked in entries]
        found: list[bool] = page.evaluate(code, [given, shapes])
        return found

    yield ask
    page.close()


def is_read(text: str, asked: AskedNumber | AskedOrder) -> bool:
    """Tell whether the reader of entries reads an entry."""
    return echo(text, asked).startswith("read as ")


def made_up(rng: random.Random) -> str:
    """Make an entry of numbers, units, words and signs, in order or out of it."""
    pieces = []
    for _ in range(rng.choice((1, 2, 2, 2, 3, 3, 4, 6))):
        pick = rng.random()
        if pick < 0.5:
            pieces.append(rng.choice(NUMBERS))
        elif pick < 0.95:
            pieces.append(rng.choice(WORDS))
        else:
            pieces.append("".join(rng.choices(string.printable, k=rng.randrange(1, 80))))
    text = rng.choice(("", " ", " ", "  ")).join(pieces).strip()
    return rng.choice((str.lower, str.upper, str))(text)[:200]


@pytest.mark.slow
@pytest.mark.parametrize("count", [FEW, pytest.param(MANY, marks=pytest.mark.long)])
def test_what_is_said_to_be_unread_is_never_read(says_unread, count: int) -> None:
    """Of made-up entries for every measure and order, and both kinds are many."""
    rng = random.Random(23)
    asked = [AskedNumber(name, system) for name in MEASURES for system in ("inch", "metric")]
    asked += [AskedOrder(number) for number in (2, 3, 6)] * 2
    entries = [(made_up(rng), rng.choice(asked)) for _ in range(count)]
    entries += [("".join(rng.sample(LETTERS[:3], 3)), AskedOrder(3)) for _ in range(count // 50)]
    entries = [(text, one) for text, one in entries if text.strip()]
    read = [is_read(text, one) for text, one in entries]
    unread = says_unread(entries)
    pairs = zip(entries, read, unread, strict=True)
    assert [entry for entry, good, no in pairs if good and no] == []
    told = sum(unread)
    assert sum(read) > count // 20
    assert told > 0.9 * (len(read) - sum(read))


@pytest.mark.parametrize(("texts", "wanted"), [(UNREAD, True), (READ, False)])
def test_words_sums_and_two_numbers_are_seen(says_unread, texts, wanted: bool) -> None:
    """For a length; what an answer usually looks like is let alone."""
    asked = AskedNumber("LENGTH", "inch")
    assert [is_read(text, asked) for text in texts] == [not wanted] * len(texts)
    assert says_unread([(text, asked) for text in texts]) == [wanted] * len(texts)


def test_an_order_wants_each_letter_once(says_unread) -> None:
    """Letters apart or together, large or small; fewer, twice, or words are seen."""
    asked = AskedOrder(3)
    texts = ("cab", "C, A, B", "c-a-b", "ca", "aab", "first c", "cabd", "")
    found = says_unread([(text, asked) for text in texts])
    assert found == [False, False, False, True, True, True, True, False]
