"""The part that the server started by ``seatwork open`` loads; no other server does.

It sends kernel messages without delay: a stock server leaves the system's send delay on
(no TCP_NODELAY), which holds each small message back until the browser acknowledges the
last one, so that a dragged slider makes about 20 updates a second. And it drops the live
views from notebooks as they are saved, so that a reopened one shows its still pictures.
And it gives each page the signs of a hole note, which hardly a computer's fonts have.
"""

import socket
from pathlib import Path
from typing import Any

from jupyter_server.services.kernels.connection.channels import ZMQChannelsWebsocketConnection

NAME = "seatwork.live.server"
CUSTOM = Path(__file__).parent / "custom"
CHANNELS = f"{NAME}.PromptChannels"
VIEW = "application/vnd.jupyter.widget-view+json"
SLOW = (
    "Kernel messages are delayed on this server: sliders will lag while dragged. "
    "Everything else works. `seatwork doctor` says which versions are installed."
)


class PromptChannels(ZMQChannelsWebsocketConnection):
    """The kernel's websocket, with the system's send delay switched off."""

    def connect(self) -> Any:
        """Switch the delay off, say so when that fails, and connect."""
        try:
            self.websocket_handler.set_nodelay(True)
            prompt = sends_at_once(self.websocket_handler)
        except (AttributeError, OSError):
            prompt = False
        if not prompt:
            self.log.warning(SLOW)
        return super().connect()


def sends_at_once(handler: Any) -> bool:
    """Ask the system whether the websocket of a handler sends without delay."""
    stream = handler.ws_connection.stream
    return bool(stream.socket.getsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY))


def drop_views(*, model: dict[str, Any], **_: Any) -> None:
    """Take live views out of a notebook about to be saved; text and stills stay."""
    if model.get("type") != "notebook" or not model.get("content"):
        return
    notebook = model["content"]
    notebook.get("metadata", {}).pop("widgets", None)
    for cell in notebook.get("cells", ()):
        for output in cell.get("outputs", ()):
            output.get("data", {}).pop(VIEW, None)


def _jupyter_server_extension_points() -> list[dict[str, str]]:
    return [{"module": NAME}]


def _load_jupyter_server_extension(serverapp: Any) -> None:
    serverapp.contents_manager.register_pre_save_hook(drop_views)
    bring_signs(serverapp)


def bring_signs(serverapp: Any) -> None:
    """Let every page of this server bring the signs of a hole note along, run or not."""
    serverapp.web_app.settings["static_custom_path"].insert(0, str(CUSTOM))
    chosen = serverapp.web_app.settings.get("kernel_websocket_connection_class")
    if not (isinstance(chosen, type) and issubclass(chosen, PromptChannels)):
        serverapp.log.warning(SLOW)
