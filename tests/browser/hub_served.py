"""A running hub: its pages, its processes, its beginning and its end."""

import os
import re
import shutil
import signal
import socket
import subprocess
import sys
import time
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path
from urllib.request import urlopen

import pytest
from playwright.sync_api import expect

psutil = pytest.importorskip("psutil", reason="psutil is not installed")
LOOSE = 180_000
ALL_RUN = """() => {
  const prompts = [...document.querySelectorAll('.jp-CodeCell .jp-InputArea-prompt')];
  return prompts.length && prompts.every(p => /\\[\\d+\\]/.test(p.textContent));
}"""


@dataclass(kw_only=True)
class Hub:
    """A running hub and its folders."""

    url: str
    home: Path
    password: str
    process: subprocess.Popen
    ready: float = 0.0
    told: list[str] = field(default_factory=list)

    @property
    def box(self) -> Path:
        """Where answers are handed in."""
        return self.home / "in"

    def tell(self, text: str) -> None:
        """Keep a figure, to be printed at the end."""
        self.told.append(text)

    def log_in(self, page, name: str, password: str = "") -> None:
        """Log in and wait for the own server."""
        page.goto(f"{self.url}/hub/login?next=/hub/spawn")
        page.fill("input[name=username]", name)
        page.fill("input[name=password]", password or self.password)
        page.click("#login_submit")
        page.wait_for_url(re.compile(rf".*/user/{name.lower()}/.*"), timeout=LOOSE)

    def open_sheet(self, page, name: str) -> None:
        """Open the sheet on cones and run all of its cells."""
        page.goto(f"{self.url}/user/{name.lower()}/doc/tree/exercises/cones.ipynb?reset")
        page.locator("#jupyterlab-splash").wait_for(state="detached", timeout=LOOSE)
        page.locator(".jp-Notebook .jp-Cell").first.wait_for(timeout=LOOSE)
        page.get_by_text("Python 3 (ipykernel) | Idle").wait_for(timeout=LOOSE)
        page.get_by_role("menuitem", name="Run", exact=True).click()
        page.get_by_role("menuitem", name="Run All Cells", exact=True).click()
        page.wait_for_function(ALL_RUN, timeout=LOOSE)
        expect(page.get_by_role("button", name="Hand in", exact=True)).to_be_visible(timeout=LOOSE)

    def children(self, kind: str, name: str = "") -> list:
        """List processes under the hub whose command line has a word, of one learner or all."""
        found = []
        for one in psutil.Process(self.process.pid).children(recursive=True):
            with suppress(psutil.Error):
                of = one.environ().get("JUPYTERHUB_USER", "")
                if kind in " ".join(one.cmdline()) and name.lower() in ("", of):
                    found.append(one)
        return found

    def memory(self, kind: str, name: str = "") -> float:
        """Sum the proportional memory of such processes [MB]."""
        return sum(one.memory_full_info().pss for one in self.children(kind, name)) / 2**20


def free_port() -> int:
    """Find a port of this machine that nobody uses."""
    with socket.socket() as trial:
        trial.bind(("127.0.0.1", 0))
        return trial.getsockname()[1]


def proxy_program() -> str:
    """Find the proxy: a named one, one on the path, or the Python one beside this Python."""
    beside = Path(sys.executable).with_name("configurable-http-proxy")
    named = os.environ.get("SEATWORK_PROXY")
    found = named or shutil.which("configurable-http-proxy") or (beside.is_file() and str(beside))
    if not found:
        pytest.skip("no configurable-http-proxy (npm's or pip's) was found")
    return str(found)


def wait_for(hub: Hub) -> None:
    """Wait until the hub answers."""
    began = time.monotonic()
    while time.monotonic() < began + 180 and hub.process.poll() is None:
        with suppress(OSError):
            urlopen(f"{hub.url}/hub/health", timeout=2).read()
            hub.ready = time.monotonic() - began
            return
        time.sleep(0.3)
    pytest.fail(f"the hub did not start: {(hub.home / 'hub.log').read_text()[-3000:]}")


def stop(hub: Hub) -> None:
    """End the hub and all that it started."""
    started = psutil.Process(hub.process.pid).children(recursive=True)
    hub.process.send_signal(signal.SIGTERM)
    with suppress(subprocess.TimeoutExpired):
        hub.process.wait(30)
    for one in (
        [*started, psutil.Process(hub.process.pid)] if hub.process.poll() is None else started
    ):
        with suppress(psutil.Error):
            one.kill()
    hub.process.wait(10)
