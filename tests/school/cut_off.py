"""Install from a stick and work, where there is no network: ``cut_off.py STICK HOME [PICTURES]``.

Run in a namespace without interfaces (``unshare -rn``); ends with an error if anything fails.
"""

import fcntl
import os
import re
import shutil
import socket
import struct
import subprocess
import sys
from pathlib import Path

from playwright.sync_api import expect, sync_playwright

# read here, and harmless where another program's words stand there
stick, home, pictures = (*map(Path, sys.argv[1:4]), None, None, None)[:3]
READY = re.compile(r"ready: (http://127\.0\.0\.1:\d+/\S*)")
RUN_ALL = """() => jupyterapp.commands.execute('notebook:run-all-cells')"""


def only_loopback() -> None:
    """Switch the loopback on, which a new namespace has off; nothing else must be there."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as one:
        wanted = struct.pack("16sh", b"lo", 1 | 64)  # up, running
        fcntl.ioctl(one, 0x8914, wanted)
    assert [name for _, name in socket.if_nameindex()] == ["lo"]


def run(*command: object, folder: Path) -> str:
    """Run a program with nothing of this Python's settings and return what it says."""
    own = {name: os.environ[name] for name in ("PATH", "LANG") if name in os.environ}
    environment = own | {"HOME": str(home), "TMPDIR": str(home)}
    done = subprocess.run(
        list(map(str, command)), cwd=folder, env=environment, capture_output=True, text=True
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def shown(page, name: str) -> None:
    """Keep a picture of the page."""
    if pictures:
        page.screenshot(path=str(pictures / f"stick_{name}.png"))


def walk(browser, address: str) -> None:
    """Open the first page of the stick and a lesson from it, then the workbook, and run it."""
    page = browser.new_page(viewport={"width": 1280, "height": 720})
    page.goto((stick / "START.html").as_uri())
    expect(page.get_by_role("heading", name="Seatwork without network")).to_be_visible()
    shown(page, "first")
    page.get_by_role("link", name="Which angle?").click()
    expect(page.get_by_role("heading", name="Which angle?").first).to_be_visible()
    shown(page, "lesson")
    page.goto(address)
    page.locator("#jupyterlab-splash").wait_for(state="detached", timeout=120_000)
    page.locator(".jp-Notebook .jp-Cell").first.wait_for(timeout=120_000)
    page.get_by_text("Python 3 (ipykernel) | Idle").wait_for(timeout=120_000)
    page.get_by_role("menuitem", name="Run", exact=True).click()
    page.get_by_role("menuitem", name="Run All Cells", exact=True).click()
    page.locator(".seatwork-form").first.wait_for(timeout=180_000)
    assert page.locator(".jp-RenderedText[data-mime-type*=error]").count() == 0
    shown(page, "workbook")


def main() -> None:
    """Install, look over, open, walk."""
    only_loopback()
    place = home / "ma machine" / "é seatwork"
    run(sys.executable, "-I", stick / "install.py", place, folder=home)
    assert list(stick.rglob("__pycache__")) == []
    program = place / "bin" / "seatwork"
    workbook = home / "mon cahier à moi"
    assert "All is well." in run(program, "doctor", workbook, folder=home)
    assert "All is well." in run(program, "doctor", "--stick", stick, folder=home)
    assert run(program, "plan", "⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD", "--material",
               "6061 aluminum", "--machine", "bench drill press", folder=home)  # fmt: skip
    server = subprocess.Popen(
        [str(program), "open", str(workbook), "--no-browser"],
        cwd=home, env={"HOME": str(home), "PATH": os.environ["PATH"]}, text=True,
        stdout=subprocess.PIPE, stderr=(home / "server.log").open("w"),
    )  # fmt: skip
    try:
        address = next(filter(None, map(READY.search, server.stdout)))[1]
        with sync_playwright() as playwright:
            chromium = shutil.which("chromium") or playwright.chromium.executable_path
            arguments = ["--no-sandbox", "--disable-gpu"]
            browser = playwright.chromium.launch(executable_path=chromium, args=arguments)
            walk(browser, address)
            browser.close()
    finally:
        server.terminate()
        server.wait(20)


if __name__ == "__main__":
    main()
