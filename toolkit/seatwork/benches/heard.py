"""A bench on the page with its hearing box below."""

from seatwork.benches.chatter_bench import Chatter
from seatwork.benches.hearing import Hearing
from seatwork.benches.slots import place
from seatwork.benches.view import BenchView


class HeardView(BenchView):
    """The view of a bench, and the box that lets it be heard."""

    def __init__(self, bench: Chatter) -> None:
        super().__init__(bench)
        self.hearing = Hearing(bench.heard)
        turns = self.panel.box.children[0]
        turns.children = [*turns.children, self.hearing]
        bench.attach(self.hearing)

    def close(self) -> None:
        """Let go of the bench, the page and every widget."""
        self.bench.detach(self.hearing)
        super().close()


def show_with_sound(bench: Chatter) -> None:
    """Show a bench below the running cell, with its hearing box."""
    view = HeardView(bench)
    place(view)
    view.display()
