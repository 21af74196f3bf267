"""The part that the server of ``seatwork open`` loads."""

import copy
import os
import subprocess
import sys
from pathlib import Path

import nbformat
import pytest
from nbformat import v4
from seatwork.live.server import CHANNELS, VIEW, drop_views

PROBE = """
import socket, sys
from pathlib import Path
from tornado.httpclient import AsyncHTTPClient, HTTPRequest
from tornado.websocket import websocket_connect
from seatwork.opening import lab
from jupyter_server.services.kernels.connection.channels import ZMQChannelsWebsocketConnection

if sys.argv[2] == "stock":
    whole = lab.options
    lab.options = lambda *a, **k: [o for o in whole(*a, **k) if "kernel_websocket" not in o]
server = lab.prepare(Path(sys.argv[1]), browser=False)
token = server.identity_provider.token
opened = []
first = ZMQChannelsWebsocketConnection.__init__
def keep(self, **facts):
    first(self, **facts)
    opened.append(self)
ZMQChannelsWebsocketConnection.__init__ = keep

async def probe():
    home = f"127.0.0.1:{server.port}/api/kernels"
    ask = HTTPRequest(f"http://{home}", method="POST", body="{}",
                      headers={"Authorization": f"token {token}"})
    answer = await AsyncHTTPClient().fetch(ask)
    kernel = __import__("json").loads(answer.body)["id"]
    page = await websocket_connect(f"ws://{home}/{kernel}/channels?token={token}&session_id=s")
    stream = opened[0].websocket_handler.ws_connection.stream
    print("delay off:", stream.socket.getsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY))
    page.close()
    await server.kernel_manager.shutdown_all()
    server.stop()

server.io_loop.add_callback(probe)
server.start()
"""


def run_probe(folder: Path, kind: str) -> subprocess.CompletedProcess[str]:
    """Start a server in a process of its own, open a kernel's websocket and look at the socket."""
    private = {
        name: str(folder / name)
        for name in ("JUPYTER_CONFIG_DIR", "JUPYTER_RUNTIME_DIR", "JUPYTER_DATA_DIR", "IPYTHONDIR")
    }
    return subprocess.run(
        [sys.executable, "-c", PROBE, str(folder), kind],
        env=os.environ | private,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        timeout=120,
        check=True,
    )


@pytest.mark.slow
def test_kernel_messages_are_sent_without_delay(tmp_path: Path) -> None:
    """On the installed jupyter_server the kernel's websocket has TCP_NODELAY on, no warning."""
    told = run_probe(tmp_path, "ours")
    assert "delay off: 1" in told.stdout
    assert "sliders will lag" not in told.stderr


@pytest.mark.slow
def test_a_server_that_refuses_our_part_warns(tmp_path: Path) -> None:
    """With the stock websocket the delay stays on, and one plain warning says so."""
    told = run_probe(tmp_path, "stock")
    assert "delay off: 0" in told.stdout
    assert told.stderr.count("sliders will lag while dragged") == 1


def test_the_server_part_is_not_installed_for_other_servers() -> None:
    """No configuration file of the package switches the part on for every Jupyter."""
    from importlib.metadata import files

    assert not [path for path in files("seatwork") or () if "jupyter_server_config.d" in str(path)]


def bench_cell() -> nbformat.NotebookNode:
    """Build the two outputs of a bench: the live view, and the still with its text."""
    view = {VIEW: {"model_id": "a1", "version_major": 2}, "text/plain": "angles: 82° seat"}
    still = {"text/markdown": "![seat](attachment)", "text/plain": "angles: 82° seat"}
    outputs = [v4.new_output("display_data", data=data) for data in (view, still)]
    return v4.new_code_cell("angles()", outputs=outputs, execution_count=1)


def test_saving_drops_live_views_and_keeps_text_and_still() -> None:
    """A saved notebook holds no widget view and no widget state; all else is as it was."""
    notebook = v4.new_notebook(cells=[v4.new_markdown_cell("# Seats"), bench_cell()])
    notebook.metadata["widgets"] = {"state": {}}
    before = copy.deepcopy(notebook)
    drop_views(model={"type": "notebook", "content": notebook}, path="a", contents_manager=None)
    assert VIEW not in nbformat.writes(notebook)
    del before.metadata["widgets"]
    del before.cells[1].outputs[0].data[VIEW]
    assert notebook == before
    nbformat.validate(notebook)


def test_other_files_are_saved_as_they_are() -> None:
    """A text file that talks about widget views keeps its words."""
    model = {"type": "file", "content": VIEW}
    drop_views(model=model, path="a.txt", contents_manager=None)
    assert model == {"type": "file", "content": VIEW}


def test_the_option_names_the_class_that_is_there() -> None:
    """The name given to the server leads to the class."""
    module, _, name = CHANNELS.rpartition(".")
    assert isinstance(getattr(sys.modules[module], name), type)
