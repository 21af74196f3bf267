"""A real JupyterLab, started as ``seatwork open`` starts it, and a real Chromium to drive it.

Fixtures: ``lab`` (the server and its workbook, one for all tests of a worker) and ``page`` (a
new 1280x720 window that fails its test on console errors and on requests leaving the machine).
"""

import json
import os
import re
import shutil
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from urllib.parse import quote, urlsplit

import pytest

PROGRAMS = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome")
ARGUMENTS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
READY = re.compile(r"ready: ((http://127\.0\.0\.1:\d+)/\S*\?token=(\w+))")
IDLE = """() => {
  const panel = window.jupyterapp && jupyterapp.shell.currentWidget;
  const session = panel && panel.sessionContext && panel.sessionContext.session;
  const kernel = session && session.kernel;
  return kernel && kernel.connectionStatus === 'connected' && kernel.status === 'idle';
}"""
ALL_RUN = """() => {
  const prompts = [...document.querySelectorAll('.jp-CodeCell .jp-InputArea-prompt')];
  return prompts.length && prompts.every(p => /\\[\\d+\\]/.test(p.textContent));
}"""
CURRENT_IS = """(name) => {
  const panel = window.jupyterapp && jupyterapp.shell.currentWidget;
  return panel && panel.context && panel.context.isReady && panel.context.path === name;
}"""
SAVE = "() => jupyterapp.commands.execute('docmanager:save')"
SHUT_DOWN = """async () => {
  const panel = window.jupyterapp && jupyterapp.shell.currentWidget;
  if (panel && panel.sessionContext) await panel.sessionContext.shutdown();
}"""


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Mark everything beside this file as a browser test."""
    here = Path(__file__).parent
    for item in items:
        if here in item.path.parents:
            item.add_marker("browser")


def chromium_program(managed: str) -> str | None:
    """Find a Chromium on this computer: a named one, an installed one, or playwright's own."""
    named = os.environ.get("SEATWORK_CHROMIUM")
    found = named or next(filter(None, map(shutil.which, PROGRAMS)), None)
    return found or (managed if Path(managed).is_file() else None)


@pytest.fixture(scope="session")
def chromium() -> Iterator[object]:
    """Start Chromium once; without one the tests skip, or fail where browser tests are required."""
    from playwright.sync_api import sync_playwright

    with sync_playwright() as playwright:
        program = chromium_program(playwright.chromium.executable_path)
        if program is None:
            reason = "no Chromium found (install it, or name it in SEATWORK_CHROMIUM)"
            if os.environ.get("SEATWORK_BROWSER") == "required":
                pytest.fail(reason)
            pytest.skip(reason)
        browser = playwright.chromium.launch(executable_path=program, args=ARGUMENTS)
        yield browser
        browser.close()


@dataclass(frozen=True, kw_only=True)
class Lab:
    """A running server: the address it told, its workbook, and the usual moves in its pages."""

    first: str
    url: str
    token: str
    folder: Path
    log: Path

    def address(self, place: str, *, view: str = "doc") -> str:
        """Give the page of a file; `view` is "doc" (one document) or "lab"."""
        return f"{self.url}/{view}/tree/{quote(place)}?token={self.token}&reset"

    def write(self, place: str, cells: list[str]) -> str:
        """Put a notebook of code cells into the workbook and give its place."""
        import nbformat
        from nbformat import v4

        kernel = {"name": "python3", "display_name": "Python 3", "language": "python"}
        notebook = v4.new_notebook(metadata={"kernelspec": kernel})
        notebook.cells = [v4.new_code_cell(source) for source in cells]
        path = self.folder / place
        path.parent.mkdir(parents=True, exist_ok=True)
        nbformat.write(notebook, path)
        return place

    def read(self, place: str) -> dict:
        """Read a notebook of the workbook as it lies on disk."""
        return json.loads((self.folder / place).read_text(encoding="utf-8"))

    def open(self, page, place: str, *, view: str = "doc") -> None:
        """Open a notebook and wait until its cells are shown and its kernel is idle."""
        page.goto(self.address(place, view=view))
        self.wait_for(page, place)
        self.wait_idle(page)

    def wait_for(self, page, place: str) -> None:
        """Wait until the notebook in front is the one at `place`, its cells shown."""
        page.locator("#jupyterlab-splash").wait_for(state="detached", timeout=60_000)
        page.wait_for_function(CURRENT_IS, arg=place, timeout=60_000)
        shown = ".jp-NotebookPanel:not(.lm-mod-hidden) .jp-Notebook .jp-Cell"
        page.locator(shown).first.wait_for(timeout=60_000)

    def wait_idle(self, page) -> None:
        """Wait until the kernel of the notebook in front is connected and idle."""
        page.wait_for_function(IDLE, timeout=60_000)

    def run_all(self, page) -> None:
        """Run all cells by the menu; wait until each is numbered and the kernel is idle."""
        page.get_by_role("menuitem", name="Run", exact=True).click()
        page.get_by_role("menuitem", name="Run All Cells", exact=True).click()
        page.wait_for_function(ALL_RUN, timeout=120_000)
        self.wait_idle(page)

    def save(self, page) -> None:
        """Save the notebook in front and wait until it is on disk."""
        page.evaluate(SAVE)

    def slider(self, page, label: str):
        """Find the handle of an ipywidgets slider by its label."""
        named = page.locator(f".widget-label:text-is('{label}')")
        return page.locator(".widget-slider", has=named).locator(".noUi-handle").first


def private_environment(home: Path) -> dict[str, str]:
    """Keep the user's own Jupyter settings out of the tests, and the tests out of them."""
    config = home / "config"
    config.mkdir(parents=True)
    (config / "jupyter_lab_config.py").write_text(
        "c = get_config()  # noqa: F821\nc.LabApp.expose_app_in_browser = True\n"
    )
    return os.environ | {
        "JUPYTER_CONFIG_DIR": str(config),
        "JUPYTER_DATA_DIR": str(home / "data"),
        "JUPYTER_RUNTIME_DIR": str(home / "runtime"),
        "JUPYTERLAB_SETTINGS_DIR": str(home / "settings"),
        "IPYTHONDIR": str(home / "ipython"),
    }


@contextmanager
def serving(home: Path) -> Iterator[Lab]:
    """Run ``seatwork open --no-browser`` in a new folder until the tests are done."""
    log = home / "server.log"
    command = [sys.executable, "-m", "seatwork.cli", "open", "workbook", "--no-browser"]
    with log.open("w") as errors:
        server = subprocess.Popen(
            command,
            cwd=home,
            env=private_environment(home / "jupyter"),
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=errors,
            text=True,
        )
    try:
        found = next(filter(None, map(READY.search, server.stdout)), None)
        assert found, f"the server did not start: {log.read_text()}"
        first, url, token = found.groups()
        yield Lab(first=first, url=url, token=token, folder=home / "workbook", log=log)
    finally:
        server.terminate()
        try:
            server.wait(15)
        except subprocess.TimeoutExpired:
            server.kill()
            server.wait()


@pytest.fixture(scope="session")
def lab(chromium: object, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Lab]:
    """Serve one workbook for all browser tests of this worker."""
    with serving(tmp_path_factory.mktemp("lab")) as started:
        yield started


SHUTTING_DOWN = ("Canceled future for create_subshell_request message", "Cannot send")
"""JupyterLab's own words when a kernel is shut down while widgets still ask it for something."""


def _is_farewell(told: str) -> bool:
    return any(words in told for words in SHUTTING_DOWN)


@dataclass(kw_only=True)
class Watch:
    """What a page did that no page of ours may do; a test may clear what it caused on purpose."""

    errors: list[str] = field(default_factory=list)
    strays: list[str] = field(default_factory=list)

    def on_console(self, message) -> None:
        """Keep errors written to the console."""
        if message.type == "error" and not _is_farewell(message.text):
            where = (message.location or {}).get("url", "")
            self.errors.append(f"{message.text} [{where}]")

    def on_failure(self, error) -> None:
        """Keep exceptions nobody caught."""
        if not _is_farewell(str(error)):
            self.errors.append(str(error))

    def on_request(self, request) -> None:
        """Keep requests to any other machine."""
        parts = urlsplit(request.url)
        if parts.scheme in ("http", "https", "ws", "wss") and parts.hostname != "127.0.0.1":
            self.strays.append(request.url)


@pytest.fixture
def watch() -> Watch:
    """Keep what the page of this test does wrong."""
    return Watch()


@pytest.fixture(scope="session")
def reader(chromium):
    """Keep one reader's browser: JupyterLab is loaded once and then comes from its cache."""
    context = chromium.new_context(viewport={"width": 1280, "height": 720})
    yield context
    context.close()


@pytest.fixture
def page(reader, lab: Lab, watch: Watch):
    """Give a new 1280x720 window; afterwards it must have kept quiet and stayed on this machine."""
    window = reader.new_page()
    window.set_default_timeout(30_000)
    window.on("console", watch.on_console)
    window.on("pageerror", watch.on_failure)
    window.on("request", watch.on_request)
    window.on("websocket", watch.on_request)
    yield window
    window.evaluate(SHUT_DOWN)
    window.close()
    assert not watch.errors, watch.errors
    assert not watch.strays, watch.strays
