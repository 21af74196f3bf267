"""The same task for each of many rooms: by Dask's workers where there are any, else in turn."""

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from importlib.util import find_spec
from typing import Any, TypeVar

from seatwork.errors import SeatworkError

Found = TypeVar("Found")
AGAIN = 3
"""How often a task is given anew when its worker is gone."""
WITHOUT = (
    "distributed is not installed, so the rooms are done one after the other:"
    ' pip install "seatwork[school]" brings it'
)


def has_workers() -> bool:
    """Whether the library that runs workers is installed."""
    return find_spec("distributed") is not None


def each(
    task: Callable[..., Found], given: Sequence[tuple[Any, ...]], *, workers: int, scheduler: str
) -> Iterator[tuple[int, Found | SeatworkError]]:
    """Do a task for each of many, and yield what came of it with its place, in any order.

    A task takes data and gives data and writes nothing, so that one whose worker died is done
    again by another. What a task refuses is yielded; it stops no other.

    Parameters
    ----------
    task : callable
        A function of a module, which every worker can import.
    given : sequence of tuple
        Its arguments, one tuple for each task.
    workers : int
        Processes on this computer; under 2 all is done here, in turn.
    scheduler : str
        Address of a Dask scheduler to use instead, such as ``tcp://10.0.0.5:8786``.

    Raises
    ------
    SeatworkError
        If the scheduler does not answer.
    """
    if (workers < 2 and not scheduler) or not has_workers():
        for place, arguments in enumerate(given):
            yield place, _refused_or_found(task, arguments)
        return
    with _client(workers, scheduler) as client:
        yield from _by(client, task, given)


def _refused_or_found(
    task: Callable[..., Found], arguments: tuple[Any, ...]
) -> Found | SeatworkError:
    try:
        return task(*arguments)
    except SeatworkError as error:
        return error
    except Exception as error:  # a fault of ours in one room stops no other
        return _failed(error)


def _failed(error: Exception) -> SeatworkError:
    fault = f"doing it failed ({type(error).__name__})"
    return SeatworkError("this room", fault, "do this room alone, without --rooms")


def _by(
    client: Any, task: Callable[..., Found], given: Sequence[tuple[Any, ...]]
) -> Iterator[tuple[int, Found | SeatworkError]]:
    from distributed import as_completed

    jobs = [client.submit(_refused_or_found, task, one, pure=False, retries=AGAIN) for one in given]
    places = {job.key: place for place, job in enumerate(jobs)}
    waiting = as_completed(jobs)
    jobs.clear()
    for job in waiting:
        try:
            found = job.result()
        except Exception as error:  # its worker died again and again, or could not read the task
            found = _failed(error)
        place = places[job.key]
        job.release()  # else what a dead worker had finished is done again
        yield place, found


@contextmanager
def _client(workers: int, scheduler: str) -> Iterator[Any]:
    """Give a way to the scheduler named, or to workers of this computer that end with it."""
    from distributed import Client, LocalCluster

    if scheduler:
        try:
            client = Client(scheduler, timeout="10s")
        except (OSError, ValueError, TimeoutError) as error:
            remedy = "look at its address, such as tcp://10.0.0.5:8786, and whether it runs"
            raise SeatworkError(scheduler, "no scheduler answers there", remedy) from error
        with client:
            yield client
        return
    with (
        LocalCluster(
            n_workers=workers,
            threads_per_worker=1,
            processes=True,
            dashboard_address=None,
            host="127.0.0.1",
        ) as cluster,
        Client(cluster) as client,
    ):
        yield client
