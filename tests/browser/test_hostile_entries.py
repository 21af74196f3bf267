"""Hostile entries in boxes and in storage, thousands in one loaded page: all of it stays text."""

import json
import random
from pathlib import Path

import pytest
from seatwork.marking import examples, sheets
from seatwork.marking.answers import parse
from seatwork.record import hand_out
from seatwork.takehome import graded_page, papers

from tests.browser.pages import opened

FEW, MANY, AT_ONCE = 300, 10_000, 500
PIECES = (
    "</script><img src=x onerror=alert(1)>", "<!--", "<svg/onload=alert(1)>", "\ud800half",
    "half\udfff", "\u0000", "'\"`${1}", "=1+1", "../../x", "9" * 500, "\u202egnol", "\u2028", "%00",
    "{{7*7}}", "]]>", "&lt;b&gt;", "<iframe srcdoc='<script>alert(1)</script>'>", "javascript:1",
    "<base href=//x.invalid>", "<form action=//x.invalid><input name=q>", "url(//x.invalid/a)",
    "<style>*{background:url(//x.invalid)}</style>", "__proto__", "constructor", "toString",
    "@import '//x.invalid'", "\U0001f9ff" * 150, "e\u0301" * 120, "\ufeff", "\t\r\n", "0x1F", "--",
    "1e999", "NaN", "null", "/" * 300, "1/0", ",,,,", "\u0663\u0664", "\\" * 201, '"' * 201,
)  # fmt: skip

TYPED = """async ([entries, wait]) => {
  const boxes = [...document.querySelectorAll("input[type=text]")];
  const others = () => [...document.querySelectorAll("*")]
    .filter((one) => !one.matches("p.read > .say, #done > .say")).length;
  const before = others();
  const found = [];
  for (const [n, text] of entries.entries()) {
    const box = boxes[n % boxes.length];
    box.value = text;
    box.dispatchEvent(new Event("input", { bubbles: true }));
    box.dispatchEvent(new Event("change", { bubbles: true }));
    if (wait && n % 10 === 9) await new Promise((go) => setTimeout(go, 0));
    if (others() !== before) throw new Error("markup came of " + JSON.stringify(text));
    const kept = JSON.parse(localStorage.getItem(seatwork.kept.key)).answers;
    if (JSON.stringify(kept) !== JSON.stringify(seatwork.kept.answers))
      throw new Error("not kept: " + JSON.stringify(text));
    found.push(seatwork.content());
  }
  return found;
}"""
STORED = """(texts) => {
  const { key, constructor: Kept } = seatwork.kept;
  const held = new Set(Object.keys(seatwork.kept.answers));
  const count = { whole: 0, aside: 0 };
  for (const raw of texts) {
    localStorage.clear();
    localStorage.setItem(key, raw);
    let told = "";
    const kept = new Kept(seatwork.sheet, (text) => { told = text; });
    const names = Object.keys(kept.answers);
    if (names.length !== held.size || names.some((name) => !held.has(name)))
      throw new Error("other questions: " + raw);
    for (const { parts, sure } of Object.values(kept.answers))
      if (typeof sure !== "boolean" || parts.some((one) => typeof one !== "string" ||
          [...one].length > 200 || !one.isWellFormed())) throw new Error("taken over: " + raw);
    const whole = told === "";
    if (!whole && (!told.includes("set aside") || localStorage.getItem(key) !== null ||
        Object.values(localStorage).join() !== raw)) throw new Error("lost: " + raw);
    if (whole && localStorage.getItem(key) !== raw) throw new Error("changed: " + raw);
    count[whole ? "whole" : "aside"] += 1;
  }
  if (({}).parts !== undefined) throw new Error("every object was changed");
  localStorage.clear();
  return count;
}"""


@pytest.fixture(scope="module")
def sheet(tmp_path_factory) -> Path:
    """Write one learner's page of a sheet with boxes, choices and an order."""
    folder = examples.make_course(tmp_path_factory.mktemp("hostile") / "course")
    hand_out(folder, "mixed_test", ["L01"], mode="graded", day="2026-09-07")
    (paper,) = papers(folder, sheets.load("mixed_test"))
    path = folder.parent / "sheet.html"
    path.write_text(graded_page(paper), encoding="utf-8")
    return path


def hostile(rng: random.Random) -> str:
    """Make an entry: pieces that have broken other pages, and signs of every kind."""
    pieces = [rng.choice(PIECES) for _ in range(rng.randrange(1, 4))]
    if rng.random() < 0.3:
        pieces.append("".join(chr(rng.randrange(0x110000)) for _ in range(rng.randrange(30))))
    return "".join(pieces)


def stored(rng: random.Random, held: dict[str, object]) -> str:
    """Make what may stand in the storage: spoiled, cut, of other kinds, or whole and hostile."""
    told = json.loads(json.dumps(held))
    name = rng.choice(list(told["answers"]))
    odd = rng.choice((None, 1, 1e308, "x", [], {}, [1], [None], {"parts": 1}, True, [["x"]]))
    way = rng.randrange(7)
    if way == 0:
        told["answers"][name] = odd
    elif way == 1:
        told["answers"][name]["parts"] = odd
    elif way == 2:
        told[rng.choice(("stamp", "answers", "__proto__"))] = odd
    elif way == 3:
        told["answers"][name]["parts"][0] = hostile(rng)
    elif way == 4:
        return hostile(rng)
    elif way == 5:
        told["answers"] = {key: {"parts": ["x"]} for key in ("__proto__", name)}
    text = json.dumps(told)
    return text if rng.random() < 0.7 else text[: rng.randrange(len(text))] + hostile(rng)[:5]


def halves(text: str) -> list[str]:
    """Return the halves of signs that stand alone in a text."""
    return [sign for sign in text if "\ud800" <= sign <= "\udfff"]


@pytest.mark.slow
@pytest.mark.parametrize("count", [FEW, pytest.param(MANY, marks=pytest.mark.long)])
def test_hostile_entries_stay_text(chromium, sheet, count: int) -> None:
    """None becomes markup, asks for anything or is lost; every file reads back as written."""
    rng = random.Random(9)
    with opened(chromium, sheet) as page:
        dialogs: list[str] = []
        page.on("dialog", lambda one: (dialogs.append(one.message), one.dismiss()))
        page.locator("input[type=text]").first.wait_for()
        for _ in range(0, count, AT_ONCE):
            entries = [hostile(rng) for _ in range(min(AT_ONCE, count))]
            for content in page.evaluate(TYPED, [entries, True]):
                raw = content.encode("utf-8")
                assert parse(raw, "x").content() == raw
                assert halves(content) == []
        assert dialogs == []
        page.reload()
        page.locator("input[type=text]").first.wait_for()
        assert page.evaluate("seatwork.content()") == content


@pytest.mark.slow
@pytest.mark.parametrize("count", [FEW, pytest.param(MANY, marks=pytest.mark.long)])
def test_hostile_storage_is_taken_whole_or_set_aside(chromium, sheet, count: int) -> None:
    """What is not the page's own is kept aside as it was; no object is changed by a name in it."""
    rng = random.Random(10)
    with opened(chromium, sheet) as page:
        page.locator("input[type=text]").first.wait_for()
        held = {"stamp": "1", "answers": page.evaluate("seatwork.kept.answers")}
        told = {"whole": 0, "aside": 0}
        for _ in range(0, count, AT_ONCE):
            texts = [stored(rng, held) for _ in range(min(AT_ONCE, count))]
            found = page.evaluate(STORED, texts)
            told = {name: told[name] + found[name] for name in told}
        assert sum(told.values()) == count
        assert min(told.values()) > count // 50
