"""A practice sheet, or the planner, as one page with Python in it."""

from html import escape

from seatwork.errors import SeatworkError
from seatwork.live.signs import face
from seatwork.marking.given import practice
from seatwork.marking.sheets import Sheet
from seatwork.questions import all_types
from seatwork.takehome.blocks import json_block, policy, script, style
from seatwork.takehome.graded import PAGE, picture_of
from seatwork.takehome.package_block import practice_files
from seatwork.takehome.python_blocks import NOTE, python_blocks
from seatwork.takehome.runtime import Runtime

STATE = '<p class="state" id="state" role="status">Python is starting; this takes seconds.</p>'
NO_SCRIPT = (
    '<noscript><p class="warn">Scripts are off here, and this page needs them.</p></noscript>'
)
SHEET = """<p class="screen">Practice: check as often as you like. Nothing is kept, nothing counts.
New numbers come without a drawing.</p>
<div id="sheet"></div>"""
PLANNER = """<h2>Plan a note</h2>
<label>Note <input id="note" type="text" value="4X \u2300.201 THRU \u2335 FOR #10-32 FLAT HEAD"
autocapitalize="off" autocomplete="off" spellcheck="false"></label>
<label>Material <select id="material"></select></label>
<label>Machine <select id="machine"></select></label>
<button id="go" type="button" disabled>Plan it</button>
<div id="plan" role="status"></div>
<p>Software clears nobody to run a machine. The machine's manual, your shop's rules and your
instructor come first.</p>"""


def practice_page(sheet: Sheet, made: Runtime, *, planner: bool = False) -> str:
    """Return a practice sheet as one page, judged by the package's own Python.

    Parameters
    ----------
    sheet : Sheet
        One of the sheets of this workbook or of the package.
    made : Runtime
        Python for the page.
    planner : bool
        Whether the planner stands below it.

    Raises
    ------
    SeatworkError
        If the sheet asks a type of an instructor's own, whose file is no part of the page.
    """
    known = all_types()
    own = [item.id for item in sheet.items if item.kind is not known.get(item.kind.id)]
    if own:
        fault = f"{', '.join(own)} is of a type of your own, which the page has not"
        raise SeatworkError(sheet.name, fault, "take a sheet without it")
    seed = practice(sheet.name).seed
    pictures = {name: picture_of(one) for name, one in sheet.draw(seed).items()}
    told = {"sheet": sheet.name, "pictures": pictures}
    return _page(sheet.title, SHEET + (PLANNER if planner else ""), told, made)


def planner_page(made: Runtime) -> str:
    """Return the planner as one page: a note, a material, a machine; sizes, steps, stops.

    Parameters
    ----------
    made : Runtime
        Python for the page.
    """
    return _page("From a print note to a plan", PLANNER, {"sheet": "", "pictures": {}}, made)


def _page(title: str, body: str, told: object, made: Runtime) -> str:
    code = script("unpack.js", "python.js", "practice.js")
    return PAGE.format(
        policy=policy(code, python=True),
        title=escape(title),
        style=face() + style("sheet.css"),
        body="\n".join([f"<h1>{escape(title)}</h1>", STATE, NO_SCRIPT, body, NOTE]),
        blocks="\n".join([json_block("told", told), python_blocks(made, practice_files())]),
        code=code,
    )
