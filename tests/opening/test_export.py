"""Export: one page, nothing run, nothing asked for, nothing of a live view."""

import re

import nbformat
import pytest
from nbformat import v4
from seatwork.errors import SeatworkError
from seatwork.opening.export import LIVE_ONLY, export

DOT = "iVBORw0KGgo="


@pytest.fixture
def notebook(tmp_path):
    """Store a notebook as a page may have left it, live view and widget state included."""
    live = v4.new_output("display_data", {LIVE_ONLY: {"model_id": "secretmodel"}})
    picture = f"![A plug](data:image/png;base64,{DOT})\n\nA plug"
    still = v4.new_output("display_data", {"text/plain": "A plug", "text/markdown": picture})
    made = v4.new_notebook(metadata={"widgets": {"state": "secretstate"}})
    made.cells = [
        v4.new_markdown_cell("# Plugs & <cones>\n\n<script>alert(1)</script>"),
        v4.new_code_cell("benches.plug()", outputs=[live, still]),
    ]
    path = tmp_path / "lesson.ipynb"
    nbformat.write(made, path)
    return path


@pytest.mark.slow
def test_the_page_holds_still_and_text_alone(notebook, tmp_path):
    """The still with its alt text is in; live view and stored state are out."""
    page = export(notebook, tmp_path / "lesson.html").read_text(encoding="utf-8")
    assert f'alt="A plug" src="data:image/png;base64,{DOT}"' in page
    assert "secret" not in page
    assert "<title>Plugs &amp; &lt;cones&gt;</title>" in page


def test_the_page_asks_for_nothing(notebook, tmp_path):
    """No address is loaded from but the page itself; a policy forbids all else and every script."""
    page = export(notebook, tmp_path / "lesson.html").read_text(encoding="utf-8")
    assert not re.search(r"""(src|href)=["']?https?:|@import|url\((?!data:)""", page)
    policy = "default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'"
    assert f'http-equiv="Content-Security-Policy" content="{policy}"' in page
    assert page.index("Content-Security-Policy") < page.index("<body>")


@pytest.mark.parametrize("name", ["missing.ipynb", "broken.ipynb"])
def test_what_is_no_notebook_is_refused(tmp_path, name):
    """A missing file and a file of something else get a sentence; nothing is written."""
    (tmp_path / "broken.ipynb").write_text("no notebook", encoding="utf-8")
    with pytest.raises(SeatworkError, match=name):
        export(tmp_path / name, tmp_path / "out.html")
    assert not (tmp_path / "out.html").exists()


@pytest.mark.slow
def test_an_older_page_stays_if_the_new_one_cannot_be_written(notebook, tmp_path):
    """A folder in the way gets a sentence and stays."""
    (tmp_path / "out.html").mkdir()
    with pytest.raises(SeatworkError, match="cannot be written"):
        export(notebook, tmp_path / "out.html")
    assert [path.name for path in tmp_path.glob("out*")] == ["out.html"]


class OneBench:
    """Stands for what plays benches: the one cell of the fixture is played."""

    code, style, policy = "played();", ".played {}", "default-src 'none'; script-src 'sha256-x'"

    def __init__(self) -> None:
        self.blocks: list[str] = []
        self.seen: list[tuple[str, str]] = []

    def place(self, source, still):
        """Give the one block there is."""
        self.seen.append((source, still))
        self.blocks.append('<script type="text/plain" id="bench-1">data</script>')
        return "bench-1"


@pytest.mark.slow
def test_a_bench_that_is_played_stands_round_its_still(notebook, tmp_path):
    """The still stays inside its place; block and script stand behind the page, by its policy."""
    benches = OneBench()
    page = export(notebook, tmp_path / "lesson.html", (), benches).read_text(encoding="utf-8")
    assert benches.seen == [("benches.plug()", "A plug")]
    place = page.index('<div class="bench" data-bench="bench-1">')
    assert (
        place
        < page.index('alt="A plug"')
        < page.index('id="bench-1">data')
        < page.index("played();")
    )
    assert f'content="{benches.policy}"' in page
