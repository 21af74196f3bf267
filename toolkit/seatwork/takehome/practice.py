"""A practice sheet, or the planner, as one page with Python in it."""

from html import escape

from seatwork.errors import SeatworkError
from seatwork.live.signs import face
from seatwork.marking.given import practice
from seatwork.marking.sheets import Sheet
from seatwork.marking.speaking import speaker
from seatwork.questions.registry import is_ours
from seatwork.takehome.blocks import json_block, policy, script, style
from seatwork.takehome.graded import PAGE, picture_of
from seatwork.takehome.package_block import practice_files
from seatwork.takehome.python_blocks import NOTE, python_blocks
from seatwork.takehome.runtime import Runtime
from seatwork.takehome.spoken import both, both_said, language_buttons, other_texts

STARTING = both(
    "Python is starting; this takes seconds.", "Python está arrancando; tarda unos segundos."
)
STATE = f'<p class="state" id="state" role="status">{STARTING}</p>'
OFF = both(
    "Scripts are off here, and this page needs them.",
    "Aquí los programas de la página están apagados, y esta página los necesita.",
)
NO_SCRIPT = f'<noscript><p class="warn">{OFF}</p></noscript>'
FREELY = both(
    "Practice: check as often as you like. Nothing is kept, nothing counts. New numbers come "
    "without a drawing.",
    "Práctica: compruebe cuantas veces quiera. No se guarda nada, nada cuenta. Los números nuevos "
    "vienen sin dibujo.",
)
SHEET = f"""<p class="screen">{FREELY}</p>
<div id="sheet"></div>"""
CLEARS = both(
    "Software clears nobody to run a machine. The machine's manual, your shop's rules and your "
    "instructor come first.",
    "Ningún programa autoriza a nadie a usar una máquina. Mandan el manual de la máquina, las "
    "reglas de su taller y su instructor.",
)
LISTS = both(
    "Plans here go by the cutters, machines and house rules that come with seatwork. Your own "
    "shop's lists are read in the workbook and by seatwork plan.",
    "Aquí se planea con los avellanadores, las máquinas y las reglas que trae seatwork. Las listas "
    "de su propio taller se leen en el cuaderno de trabajo y con seatwork plan.",
)
PLANNER = f"""<h2>{both("Plan a note", "Planear una nota")}</h2>
<p>{LISTS}</p>
<label>{both("Note", "Nota")} <input id="note" type="text"
value="4X \u2300.201 THRU \u2335 FOR #10-32 FLAT HEAD"
autocapitalize="off" autocomplete="off" spellcheck="false"></label>
<label>{both("Material", "Material")} <select id="material"></select></label>
<label>{both("Machine", "Máquina")} <select id="machine"></select></label>
<button id="go" type="button" disabled>{both("Plan it", "Planear")}</button>
<div id="plan" role="status" lang="en"></div>
<p>{CLEARS}</p>"""


def practice_page(
    sheet: Sheet,
    made: Runtime,
    *,
    planner: bool = False,
    language: str = "en",
    beside: bool = False,
) -> str:
    """Return a practice sheet as one page, judged by the package's own Python.

    Parameters
    ----------
    sheet : Sheet
        One of the sheets of this workbook or of the package.
    made : Runtime
        Python for the page.
    planner : bool
        Whether the planner stands below it.
    language : {"en", "es"}
        What is seen first; two buttons choose.
    beside : bool
        Whether the runtime is a file beside the page, see `runtime_script`.

    Raises
    ------
    SeatworkError
        If the sheet asks a type of an instructor's own, whose file is no part of the page.
    """
    own = [item.id for item in sheet.items if not is_ours(item.kind.id)]
    if own:
        fault = f"{', '.join(own)} is of a type of your own, which the page has not"
        raise SeatworkError(sheet.name, fault, "take a sheet without it")
    seed = practice(sheet.name).seed
    pictures = {name: picture_of(one) for name, one in sheet.draw(seed).items()}
    said = other_texts(one["alt"] for one in pictures.values())
    told = {"sheet": sheet.name, "pictures": pictures, "said": said}
    return _page(sheet.title, SHEET + (PLANNER if planner else ""), told, made, language, beside)


def planner_page(made: Runtime, language: str = "en", *, beside: bool = False) -> str:
    """Return the planner as one page: a note, a material, a machine; sizes, steps, stops.

    Parameters
    ----------
    made : Runtime
        Python for the page.
    language : {"en", "es"}
        What is seen first of the page's own words; the plan itself is English.
    beside : bool
        Whether the runtime is a file beside the page, see `runtime_script`.
    """
    told = {"sheet": "", "pictures": {}, "said": {}}
    return _page("From a print note to a plan", PLANNER, told, made, language, beside)


def _page(title: str, body: str, told: object, made: Runtime, language: str, beside: bool) -> str:
    code = script("unpack.js", "languages.js", "python.js", "practice.js")
    heading = f"{language_buttons(language)}<h1>{both_said(title)}</h1>"
    return PAGE.format(
        language=language,
        policy=policy(code, python=True, beside=beside),
        title=escape(speaker(language)(title)),
        style=face() + style("sheet.css"),
        body="\n".join([heading, STATE, NO_SCRIPT, body, NOTE]),
        blocks="\n".join(
            [json_block("told", told), python_blocks(made, practice_files(), beside=beside)]
        ),
        code=code,
    )
