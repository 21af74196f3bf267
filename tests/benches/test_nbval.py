"""A bench cell under nbval: the words are compared, pictures and live views are not."""

import os
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

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


def passed(folder: Path) -> set[str]:
    """Run nbval once, strictly, on a folder of notebooks; name those whose every cell passes."""
    report = folder / "report.xml"
    command = [sys.executable, "-m", "pytest", "--nbval", "--nbval-current-env", "-q"]
    sanitize = HERE.parent / "nbval_sanitize.cfg"
    options = ["-p", "no:cacheprovider", "--nbval-sanitize-with", str(sanitize)]
    environment = os.environ | {"PYTEST_ADDOPTS": ""}
    words = [*command, *options, f"--junitxml={report}", "."]
    subprocess.run(words, cwd=folder, capture_output=True, env=environment, timeout=300)
    cells = [
        (str(case.get("classname")).split(".")[0], len(case) == 0)
        for case in ElementTree.parse(report).iter("testcase")
    ]
    return {name for name, _ in cells} - {name for name, right in cells if not right}


def test_the_stored_output_is_a_still_with_alt_text(notebook):
    """The output holds an image with its text as alt, and the text itself."""
    outputs = nbformat.read(notebook, 4).cells[1].outputs
    stills = [output.data for output in outputs if output.data]
    assert len(stills) == 1
    assert stills[0]["text/plain"].startswith("Cone 0.200 in (5.08 mm) deep")
    assert stills[0]["text/markdown"].startswith("![Cone 0.200 in")


def test_nbval_passes_a_bench_cell_and_fails_one_wrong_number(notebook, tmp_path):
    """The stored cell passes, other pixels too; one changed number in its words fails."""
    (tmp_path / "plug.py").write_text((HERE / "plug.py").read_text(encoding="utf-8"), "utf-8")
    (tmp_path / "stored.ipynb").write_bytes(notebook.read_bytes())
    changes = {
        "pixels": ("text/markdown", "base64,iVBOR", "base64,AAAAA"),
        "number": ("text/plain", "0.200 in", "0.201 in"),
    }
    for name, (kind, old, new) in changes.items():
        changed = nbformat.read(notebook, 4)
        shown = next(output.data for output in changed.cells[1].outputs if output.data)
        assert old in shown[kind]
        shown[kind] = shown[kind].replace(old, new)
        nbformat.write(changed, tmp_path / f"{name}.ipynb")
    assert passed(tmp_path) == {"stored", "pixels"}
