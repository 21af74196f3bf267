"""A graded sheet as a page: what is asked and how it is read, nothing of what is right."""

import hashlib
import json
from base64 import b64encode
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from html import escape
from typing import Any

from seatwork.drawings.scene import Drawing, Look, looking
from seatwork.entries.asked import AskedNumber, as_data, sayings
from seatwork.errors import SeatworkError
from seatwork.live.signs import face
from seatwork.marking.sheets import Sheet
from seatwork.marking.speaking import speaker, templates
from seatwork.questions import Question
from seatwork.takehome.blocks import json_block, policy, script, style
from seatwork.takehome.package_block import reader_files
from seatwork.takehome.python_blocks import NOTE, python_blocks
from seatwork.takehome.runtime import Runtime
from seatwork.takehome.shapes import shapes_of
from seatwork.takehome.spoken import OTHER, both, language_buttons, other_texts
from seatwork.worksheet.telling import example

SCALE = 0.7
"""Pixels of a picture per pixel of its figure [1]: letters of 14 px, a page under 0.3 MB."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Paper:
    """One learner's form of a graded sheet.

    Parameters
    ----------
    learner : str
        Learner code.
    sheet : Sheet
        The sheet as it was handed out.
    form : int
        Number of the form.
    questions : dict of str to Question
        The questions with the learner's numbers.
    form_id : str
        The form's id; empty for a form of a time when there were none.
    secret : bytes
        What its answers are sealed with; empty without an id.
    """

    learner: str
    sheet: Sheet
    form: int
    questions: Mapping[str, Question]
    form_id: str = ""
    secret: bytes = field(default=b"", repr=False)

    def __repr__(self) -> str:
        return f"<Paper {self.learner}, {self.sheet.name}, form {self.form}>"

    @property
    def heading(self) -> str:
        """Title, learner and form with its id, as they head the page."""
        named = f"{self.sheet.title}, {self.learner}, form {self.form}"
        return f"{named}, {self.form_id}" if self.form_id else named

    def told(self) -> dict[str, Any]:
        """Return what the page holds, as JSON data."""
        items = [
            _item(item.id, item.points, self.questions[item.id])
            for item in self.sheet.items
            if item.id in self.questions
        ]
        asked = json.dumps([[one["id"], one["ask"]] for one in items])
        return {
            "learner": self.learner,
            "sheet": self.sheet.name,
            "form": self.form,
            "form_id": self.form_id,
            "secret": self.secret.hex(),
            "asked": hashlib.sha256(asked.encode()).hexdigest()[:12],
            "items": items,
            "shapes": shapes_of(part for one in items for part in one["parts"]),
            "said": other_texts(_texts(items)),
        }


def _texts(items: list[dict[str, Any]]) -> Iterator[str]:
    """Yield the texts of a page that have another language."""
    for item in items:
        yield item["ask"]
        yield item["alt"]
        for part in item["parts"]:
            yield part["such"]
            yield from part.get("options", ())


def _in_spanish(paper: Paper) -> str:
    title, rest = paper.sheet.title, paper.heading.removeprefix(paper.sheet.title)
    return speaker(OTHER)(title) + rest.replace(", form ", ", formulario ")


def _item(name: str, points: float, question: Question) -> dict[str, Any]:
    return {
        "id": name,
        "points": points if points % 1 else int(points),
        "ask": question.ask(),
        "parts": [_part(part) for part in question.parts],
    } | picture_of(question)


def picture_of(question: Question) -> dict[str, str]:
    """Return the drawing as letters, and its words; empty without one.

    A picture that has words stands there in the other language, too, as `spoken`.
    """
    with looking(Look()):
        drawing: Any = question.drawing()
    if drawing is None:
        return {"picture": "", "alt": ""}
    shown = {"picture": _letters(drawing), "alt": drawing.text}
    if isinstance(drawing, Drawing) and any(other_texts(drawing.words())):
        shown["spoken"] = _letters(drawing.spoken(speaker(OTHER)))
    return shown


def _letters(drawing: Any) -> str:
    try:
        return b64encode(bytes(drawing.trimmed_png(SCALE))).decode("ascii")
    except SeatworkError:  # an own drawing that fails says so in its text
        return ""


def _part(part: Any) -> dict[str, Any]:
    told = as_data(part.asked)
    if isinstance(part.asked, AskedNumber):
        told["unit"] = part.unit
    return told | {"such": example(part)}


PAGE = """<!DOCTYPE html>
<html lang="{language}"><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="{policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>{title}</title>
<style>{style}</style></head>
<body>
<main>
{body}
</main>
{blocks}
<script type="module">{code}</script>
</body></html>
"""

KEPT = both(
    "Graded. What you type is kept in this browser, on this device. When you are done, save the "
    "answer file and hand it in, or copy the answers into a message, or print this page and write "
    "on it.",
    "Con nota. Lo que escribe se guarda en este navegador, en este aparato. Cuando termine, guarde "
    "el archivo de respuestas y entréguelo, o copie las respuestas en un mensaje, o imprima esta "
    "página y escriba en ella.",
)
NO_SCRIPT = both(
    "Scripts are off here, so that nothing can be typed: print this page and write on it.",
    "Aquí los programas de la página están apagados y no se puede escribir: imprima esta página y "
    "escriba en ella.",
)
SAVE, COPY = (
    both("Save the answer file", "Guardar el archivo de respuestas"),
    both("Copy the answers as text", "Copiar las respuestas como texto"),
)
CLEAR = both("Clear this sheet", "Borrar esta hoja")
SHARED = both(
    "On a shared machine press <b>Clear this sheet</b> once the file is saved: the next person who "
    "opens it would see your answers.",
    "En una máquina compartida pulse <b>Borrar esta hoja</b> cuando el archivo esté guardado: "
    "quien la abra después vería sus respuestas.",
)
FORM = f"""{{buttons}}<h1>{{heading}}</h1>
<p class="screen">{KEPT} {{reader}}</p>
<p id="warn" class="warn" role="alert" hidden></p>
<noscript><p class="warn">{NO_SCRIPT}</p></noscript>
<form id="form" autocomplete="off"></form>
<p><button id="save" type="button">{SAVE}</button>
<button id="copy" type="button">{COPY}</button>
<button id="print" type="button">{both("Print", "Imprimir")}</button>
<button id="clear" type="button">{CLEAR}</button></p>
<p id="done" role="status"></p>
<textarea id="text" rows="4" readonly hidden aria-label="The answers as text"></textarea>
<p class="screen">{SHARED}</p>"""
PLAIN = both(
    "Into a box goes one number, with its unit if you like, and no other words. What nobody could "
    "read is told below its box; that nothing is told there does not make an answer right.",
    "En un recuadro va un solo número, con su unidad si quiere, y ninguna otra palabra. Lo que "
    "nadie podría leer se dice bajo su recuadro; que no se diga nada no hace correcta una "
    "respuesta.",
)
READS = both(
    "Below each number the page says how it is read, never whether it is right.",
    "Bajo cada número la página dice cómo se lee, nunca si está bien.",
)
STARTING = both("The reader is starting.", "El lector está arrancando.")
STATE = f'\n<p class="state" id="state" role="status">{STARTING}</p>\n'


def graded_page(
    paper: Paper, made: Runtime | None = None, language: str = "en", *, beside: bool = False
) -> str:
    """Return a graded sheet as one page: form, storage, file, print.

    Parameters
    ----------
    paper : Paper
        One learner's form.
    made : Runtime, optional
        Python for the page, which then says how an entry is read; without it the page is plain.
    language : {"en", "es"}
        What is seen first; both are in the page, and two buttons choose.
    beside : bool
        Whether the runtime is a file beside the page, see `runtime_script`.

    Returns
    -------
    str
        The page; it holds no size as a field, no seed, no question type, no right answer, no
        tolerance, no slip and no hint.

    Raises
    ------
    SeatworkError
        If the sheet has a question that no page can ask.
    """
    if not paper.questions:
        raise SeatworkError(paper.sheet.name, "it has no question to take home", "name another")
    names = ("unpack.js", "storage.js", "sealing.js", "shapes.js", "graded.js")
    first = ("languages.js", *names)
    code = script(*first) if made is None else script(*first, "python.js", "reading.js")
    body = FORM.format(
        buttons=language_buttons(language),
        heading=both(escape(paper.heading), escape(_in_spanish(paper))),
        reader=READS if made else PLAIN,
    )
    told = paper.told()
    if made is not None:
        told["reads"] = templates(sayings(), OTHER)
        body += STATE + NOTE
    blocks = [json_block("sheet", told)]
    if made is not None:
        blocks.append(python_blocks(made, reader_files(), reads=True, beside=beside))
    return PAGE.format(
        language=language,
        policy=policy(code, python=made is not None, beside=beside and made is not None),
        title=escape(_in_spanish(paper) if language == OTHER else paper.heading),
        style=face() + style("sheet.css"),
        body=body,
        blocks="\n".join(blocks),
        code=code,
    )
