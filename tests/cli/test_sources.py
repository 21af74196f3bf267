"""``seatwork sources`` as typed in a terminal."""

import pytest
from seatwork import tables
from seatwork.cli import program
from typer.testing import CliRunner

RUNNER = CliRunner()


@pytest.mark.slow
def test_every_source_is_told() -> None:
    """Each table's title and each source stand in the list, with the total at the end."""
    done = RUNNER.invoke(program.app, ["sources"])
    assert done.exit_code == 0
    for name in tables.names():
        assert tables.about(name).title in done.output
        assert all(row["source"] in done.output for row in tables.rows(name))
    assert done.output.rstrip().endswith("before you rely on them.")


def test_from_memory_leaves_the_rest_out() -> None:
    """With --from-memory only what is from memory is told."""
    done = RUNNER.invoke(program.app, ["sources", "--from-memory"])
    assert "[FROM MEMORY, " in done.output
    assert "[two sources, " not in done.output
    assert "[one source, " not in done.output


def test_withdrawn_documents_are_called_so() -> None:
    """The heading of DIN 7991 says that it is withdrawn."""
    done = RUNNER.invoke(program.app, ["sources"])
    assert "DIN 7991, 1986, WITHDRAWN" in done.output
