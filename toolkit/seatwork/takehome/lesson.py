"""A lesson as one page, its benches worked by the package's own Python in the page."""

from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.live.view import PICTURE
from seatwork.opening.export import export
from seatwork.takehome.blocks import json_block, policy, script, style
from seatwork.takehome.calls import bench_call
from seatwork.takehome.live_told import letters, live_told
from seatwork.takehome.moving import Moving
from seatwork.takehome.package_block import live_files
from seatwork.takehome.python_blocks import NOTE, python_blocks
from seatwork.takehome.runtime import Runtime

ROW = Path(__file__).parents[1] / "benches" / "page" / "row.js"
"""The control row of the notebook's benches; the page has the same."""


class Living(Moving):
    """What `opening.export` asks for the benches of a page that has Python in it.

    Parameters
    ----------
    made : Runtime
        Python for the page.
    beside : bool
        Whether the runtime is a file beside the page.
    """

    def __init__(self, made: Runtime, *, beside: bool = False) -> None:
        super().__init__()
        self._made, self._beside = made, beside
        self.live: list[str] = []

    def place(self, source: str, still: str) -> str:
        """Return the name of a bench's block; its live one stands beside it where it has one."""
        name = super().place(source, still)
        call = bench_call(source) if name else None
        told = live_told(call) if call else None
        if told is None:
            return name
        if not self.live:
            self.blocks.append(self._python())
        self.live.append(name)
        self.blocks.append(json_block(name.replace("bench", "live"), told))
        return name

    def _python(self) -> str:
        """Return what all live benches of a page share."""
        blocks = [json_block("letters", letters())]
        blocks.append(python_blocks(self._made, live_files(), beside=self._beside))
        return "\n".join([f"<footer>{NOTE}</footer>", *blocks])

    @property
    def code(self) -> str:
        """The script of the page; empty where nothing moves."""
        if not self.live:
            return super().code
        before = f"{PICTURE}\n{_row()}"
        return script("unpack.js", "player.js", "python.js", "benches.js", before=before)

    @property
    def style(self) -> str:
        """The style of what moves."""
        return style("player.css", "benches.css") if self.live else super().style

    @property
    def policy(self) -> str:
        """What the page may do."""
        if not self.live:
            return super().policy
        return policy(self.code, python=True, beside=self._beside)


def lesson_page(
    notebook: Path, target: Path, made: Runtime | None, *, beside: bool = False
) -> tuple[str, ...]:
    """Write a lesson as one page.

    Parameters
    ----------
    notebook : Path
        The lesson as it was last saved; no cell of it is run.
    target : Path
        Where to write.
    made : Runtime or None
        Python for the page; without it the main slider of each bench plays, and no more.
    beside : bool
        Whether the runtime is a file beside the page.

    Returns
    -------
    tuple of str
        What is to be told of benches that stay still.

    Raises
    ------
    SeatworkError
        If the notebook cannot be read or the page cannot be written.
    """
    if not target.name:
        raise SeatworkError(target, "a page needs a file name", "write such as lesson.html")
    moving = Moving() if made is None else Living(made, beside=beside)
    target.parent.mkdir(parents=True, exist_ok=True)
    there = [page.stem for page in target.parent.glob("*.html")]
    export(notebook, target, {*there, notebook.stem}, moving)
    return tuple(moving.doubts)


def _row() -> str:
    """Return the control row as a part of the page's script, its names its own."""
    code = ROW.read_text(encoding="utf-8")
    assert code.count("export default { render };") == 1
    return f"const rowView = (() => {{\n{code.replace('export default', 'return')}\n}})();"
