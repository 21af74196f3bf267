"""A bench cell under nbval: the words are compared, pictures and live views are not."""

import os
import subprocess
import sys
from pathlib import Path

import nbformat
import pytest
from nbclient import NotebookClient
from nbformat import v4

pytestmark = pytest.mark.slow

HERE = Path(__file__).parent
VIEW = "application/vnd.jupyter.widget-view+json"


@pytest.fixture(scope="module")
def notebook(tmp_path_factory):
    """Run a bench cell in a kernel and store it as a lesson is stored, without its live view."""
    folder = tmp_path_factory.mktemp("nbval")
    (folder / "plug.py").write_text((HERE / "plug.py").read_text(encoding="utf-8"), "utf-8")
    made = v4.new_notebook(metadata={"kernelspec": {"name": "python3", "display_name": "Python"}})
    made.cells = [
        v4.new_code_cell("from plug import PlugBench"),
        v4.new_code_cell("PlugBench(depth='0.200 in')"),
    ]
    NotebookClient(made, resources={"metadata": {"path": str(folder)}}).execute()
    for output in made.cells[1].outputs:
        output.data.pop(VIEW, None)
    path = folder / "bench.ipynb"
    nbformat.write(made, path)
    return path


def nbval(path: Path) -> subprocess.CompletedProcess:
    """Run nbval, strictly, with the project's one file of what is not compared."""
    command = [sys.executable, "-m", "pytest", "--nbval", "--nbval-current-env", "-q"]
    sanitize = HERE.parent / "nbval_sanitize.cfg"
    options = ["-p", "no:cacheprovider", "--nbval-sanitize-with", str(sanitize), path.name]
    environment = os.environ | {"PYTEST_ADDOPTS": ""}
    return subprocess.run(
        command + options, cwd=path.parent, capture_output=True, text=True, env=environment
    )


def test_the_stored_output_is_a_still_with_alt_text(notebook):
    """The output holds an image with its text as alt, and the text itself."""
    outputs = nbformat.read(notebook, 4).cells[1].outputs
    stills = [output.data for output in outputs if output.data]
    assert len(stills) == 1
    assert stills[0]["text/plain"].startswith("Cone 0.200 in (5.08 mm) deep")
    assert stills[0]["text/markdown"].startswith("![Cone 0.200 in")


def test_nbval_passes_a_bench_cell_and_fails_one_wrong_number(notebook, tmp_path):
    """The stored cell passes, other pixels too; one changed number in its words fails."""
    assert nbval(notebook).returncode == 0
    stored = nbformat.read(notebook, 4)
    (tmp_path / "plug.py").write_text((HERE / "plug.py").read_text(encoding="utf-8"), "utf-8")
    other = tmp_path / "bench.ipynb"
    for data in (o.data for o in stored.cells[1].outputs if o.data):
        data["text/markdown"] = data["text/markdown"].replace("base64,iVBOR", "base64,AAAAA")
    nbformat.write(stored, other)
    assert nbval(other).returncode == 0
    for data in (o.data for o in stored.cells[1].outputs if o.data):
        data["text/plain"] = data["text/plain"].replace("0.200 in", "0.201 in")
    nbformat.write(stored, other)
    assert nbval(other).returncode == 1
