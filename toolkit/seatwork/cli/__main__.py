"""``python -m seatwork.cli``: the same commands where no ``seatwork`` program can be started."""

from seatwork.cli.program import main

main()
