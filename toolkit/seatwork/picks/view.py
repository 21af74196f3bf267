"""A pick on the page: its form, and below it what the bet opens."""

from typing import Any

import ipywidgets

from seatwork.benches.bench import Bench
from seatwork.benches.page.view import LIVE_ONLY, BenchView
from seatwork.errors import SeatworkError
from seatwork.live.slots import place
from seatwork.marking.pick_file import Bet
from seatwork.picks import bets
from seatwork.picks.bench_of import before, filled, opened
from seatwork.picks.form import PickForm
from seatwork.picks.kept import mine
from seatwork.picks.still import right_one
from seatwork.picks.wording import Words
from seatwork.units import explain

OPEN = "Shown at once, by the house rule display.picks."
DRAWN = "Your bet is drawn dashed."


def show(words: Words, *, room: bool, is_open: bool) -> None:
    """Show a pick below the running cell."""
    from IPython import display as shown

    view = PickView(words, room=room, is_open=is_open)
    place(view)
    display: Any = shown.display
    model = {"version_major": 2, "version_minor": 0, "model_id": view.box.model_id}
    display({LIVE_ONLY: model}, raw=True)


class PickView:
    """Ties a pick to the widgets that show it.

    Parameters
    ----------
    words : Words
        What is asked.
    room : bool
        Whether a class bets by show of hands.
    is_open : bool
        Whether the answer is shown at once.
    """

    def __init__(self, words: Words, *, room: bool, is_open: bool) -> None:
        self.words, self.room, self._is_open = words, room, is_open
        self._benches: list[BenchView] = []
        self._bets = mine()
        self._first: Bet | None = None
        self._dark = False
        self.form = PickForm(self.words, self.heard, room=self.room)
        self.box = ipywidgets.VBox([self.form])
        self.box.add_class("seatwork-pick-box")
        self._begin()

    def _begin(self) -> None:
        """Show the pick as it stands: covered, bet on before, or open for preparing."""
        if self._is_open:
            self._see("", OPEN)
            return
        self._cover()
        if self.room:
            return
        try:
            self._first = self._bets.of(self.words.name)
        except SeatworkError as error:
            self.form.answer = {"trouble": explain(error)}
        if self._first and bets.fits(self.words, self._first.bet):
            self._see(self._first.bet, bets.said(self.words, self._first.bet))

    def heard(self, content: dict[str, Any]) -> None:
        """Hear the page: a bet is locked, taken back, or a class has shown its hands."""
        self._dark = content.get("dark") is True
        if "lock" in content:
            self._lock(content["lock"], content.get("sure"))
        elif "again" in content:
            self._cover()
            self.form.answer = {"first": self._named_first()}
        elif "hands" in content and self.room:
            self._see(bets.NO_IDEA, "Now look.")

    def _lock(self, given: Any, sure: Any) -> None:
        """Lock a bet: keep it, then show what it was about."""
        try:
            bet = bets.NO_IDEA if given == bets.NO_IDEA else bets.read(self.words, _texts(given))
        except SeatworkError as error:
            self.form.answer = {"trouble": explain(error), "first": self._named_first()}
            return
        trouble = self._keep(Bet(bet, sure if isinstance(sure, bool) else None))
        self._see(bet, bets.said(self.words, bet), trouble)

    def _keep(self, bet: Bet) -> str:
        """Keep the first bet; return a sentence where it could not be kept."""
        if self._first is None:
            self._first = bet
            try:
                self._bets.keep(self.words.name, bet)
            except SeatworkError as error:
                return f"Your bet is not kept. {explain(error)}"
        return ""

    def _named_first(self) -> str:
        """Name the first bet, for who bets again."""
        first = self._first
        if first is None or first.bet == bets.NO_IDEA or not bets.fits(self.words, first.bet):
            return ""
        return f"Your first bet was {bets.named(self.words, first.bet)}. It stays."

    def _see(self, bet: str, said: str, trouble: str = "") -> None:
        """Show what follows, and open the bench."""
        bench = opened(self.words, bet, projector=self.room)
        after = filled(self.words, bench)
        why = bets.whys(self.words, bet or bets.NO_IDEA)
        everyone = bet in ("", bets.NO_IDEA) or bets.is_right(self.words, bet)
        self._open(bench)
        self.form.answer = {
            "bet": bet.split(),
            "said": said,
            "right": "" if bets.is_right(self.words, bet) else right_one(self.words),
            "after": after,
            "drawn": DRAWN if bench and bench.comparing else "",
            "heading": ("Why other bets tempt" if everyone else "Why it tempts") if why else "",
            "whys": [[one.bet, one.says] for one in why],
            "trouble": trouble,
            "open": self._is_open,
        }

    def _cover(self) -> None:
        """Hide what answers the bet; show what may be seen before it."""
        seen = before(self.words, projector=self.room)
        self._open(None)
        if seen:
            view = self._shown(seen)
            view.box.children = [view.live]  # the buttons of the bench would answer

    def _open(self, bench: Bench[Any] | None) -> None:
        """Put a bench below the form; what stood there is closed."""
        for view in self._benches:
            view.close()
        self._benches = []
        self.box.children = [self.form]
        if bench:
            self._shown(bench)

    def _shown(self, bench: Bench[Any]) -> BenchView:
        view = BenchView(bench, dark=self._dark)
        self._benches.append(view)
        self.box.children = [self.form, view.box]
        return view

    def close(self) -> None:
        """Let go of the page and of every widget."""
        for view in self._benches:
            view.close()
        self.form.close()
        self.box.close()


def _texts(given: Any) -> list[str]:
    """Take what the page sent as texts; anything else counts as nothing chosen."""
    return [text for text in given if isinstance(text, str)] if isinstance(given, list) else []
