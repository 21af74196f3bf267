"""A slow line to the server: a relay that holds back what passes through it, once switched on."""

import asyncio
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass

CHUNK = 4096


@dataclass
class Line:
    """What the line does to traffic: delay each way [s] and rate each way [bit/s]."""

    port: int = 0
    delay: float = 0.0
    rate: float = 1e9


async def _pump(reader: asyncio.StreamReader, writer: asyncio.StreamWriter, line: Line) -> None:
    """Pass bytes on in order: each chunk waits for the line to be free, then for the delay."""
    waiting: asyncio.Queue[tuple[float, bytes]] = asyncio.Queue()
    loop, free = asyncio.get_running_loop(), 0.0

    async def deliver() -> None:
        while True:
            due, chunk = await waiting.get()
            await asyncio.sleep(max(0.0, due - loop.time()))
            if not chunk:
                writer.close()
                return
            writer.write(chunk)
            await writer.drain()

    carrier = asyncio.create_task(deliver())
    while True:
        chunk = await reader.read(CHUNK)
        free = max(free, loop.time()) + 8 * len(chunk) / line.rate
        waiting.put_nowait((free + line.delay, chunk))
        if not chunk:
            break
    await carrier


async def _relay(line: Line, server_port: int, ready: threading.Event, stop: asyncio.Event) -> None:
    async def join(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        onward_reader, onward_writer = await asyncio.open_connection("127.0.0.1", server_port)
        pumps = _pump(reader, onward_writer, line), _pump(onward_reader, writer, line)
        await asyncio.gather(*pumps, return_exceptions=True)

    server = await asyncio.start_server(join, "127.0.0.1", 0)
    line.port = server.sockets[0].getsockname()[1]
    ready.set()
    await stop.wait()
    server.close()
    others = asyncio.all_tasks() - {asyncio.current_task()}
    for task in others:
        task.cancel()
    await asyncio.gather(*others, return_exceptions=True)


@contextmanager
def relay(server_port: int) -> Iterator[Line]:
    """Relay a port of this machine to the server until the tests are done."""
    line, ready = Line(), threading.Event()
    loop, stop = asyncio.new_event_loop(), asyncio.Event()
    thread = threading.Thread(
        target=lambda: loop.run_until_complete(_relay(line, server_port, ready, stop)), daemon=True
    )
    thread.start()
    ready.wait(10)
    try:
        yield line
    finally:
        loop.call_soon_threadsafe(stop.set)
        thread.join(10)
