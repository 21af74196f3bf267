"""A pick on the page: its form, and below it what the bet opens."""

from typing import Any
from weakref import WeakSet

import ipywidgets

from seatwork.benches.bench import Bench
from seatwork.benches.page.view import LIVE_ONLY, BenchView
from seatwork.errors import SeatworkError
from seatwork.live.slots import place
from seatwork.marking.languages import languages
from seatwork.marking.pick_file import Bet
from seatwork.marking.speaking import Voice, voice_at
from seatwork.picks import bets
from seatwork.picks.bench_of import before, filled, opened
from seatwork.picks.form import PickForm
from seatwork.picks.kept import mine
from seatwork.picks.still import right_one
from seatwork.picks.wording import Words, spoken

OPEN = "Shown at once, by the house rule display.picks."
DRAWN = "Your bet is drawn dashed."
WHY, WHY_OTHERS = "Why it tempts", "Why other bets tempt"
NOT_KEPT = "Your bet is not kept."
FIRST = "Your first bet was {bet}. It stays."

VIEWS: "WeakSet[PickView]" = WeakSet()
"""The picks that are shown: a language goes for all of them."""


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
        self._english, self.room, self._is_open = words, room, is_open
        self.voice = voice_at()
        self.words = spoken(words, self.voice.say)
        self._seen: tuple[str, str] | None = None
        self._bench: Bench[Any] | None = None
        self._benches: list[BenchView] = []
        self._bets = mine()
        self._first: Bet | None = None
        self._dark = False
        self.form = PickForm(self.words, self.voice, self.heard, room=self.room)
        self.box = ipywidgets.VBox([self.form])
        self.box.add_class("seatwork-pick-box")
        VIEWS.add(self)
        self._begin()

    def _begin(self) -> None:
        """Show the pick as it stands: covered, bet on before, or open for preparing."""
        if self._is_open:
            self._see("")
            return
        self._cover()
        if self.room:
            return
        try:
            self._first = self._bets.of(self.words.name)
        except SeatworkError as error:
            self.form.answer = {"trouble": self.voice.explain(error)}
        if self._first and bets.fits(self.words, self._first.bet):
            self._see(self._first.bet)

    def heard(self, content: dict[str, Any]) -> None:
        """Hear the page: a bet is locked, taken back, or a class has shown its hands."""
        self._dark = content.get("dark") is True
        if "lock" in content:
            self._lock(content["lock"], content.get("sure"))
        elif "again" in content:
            self._cover()
            self.form.answer = {"first": self._named_first()}
        elif "hands" in content and self.room:
            self._see(bets.NO_IDEA)
        elif content.get("speak") in languages():
            for view in tuple(VIEWS):
                view.speak(content["speak"])

    def speak(self, language: str) -> None:
        """Ask and tell everything in another language; the bet stays."""
        self.voice = Voice(language)
        self.words = spoken(self._english, self.voice.say)
        with self.form.hold_sync():
            self.form.ask(self.words, self.voice)
            if self._seen is None:
                self.form.answer = {"first": self._named_first()}
            else:
                self._tell(*self._seen)

    def _lock(self, given: Any, sure: Any) -> None:
        """Lock a bet: keep it, then show what it was about."""
        try:
            bet = bets.NO_IDEA if given == bets.NO_IDEA else bets.read(self.words, _texts(given))
        except SeatworkError as error:
            self.form.answer = {"trouble": self.voice.explain(error), "first": self._named_first()}
            return
        trouble = self._keep(Bet(bet, sure if isinstance(sure, bool) else None))
        self._see(bet, trouble)

    def _keep(self, bet: Bet) -> str:
        """Keep the first bet; return a sentence where it could not be kept."""
        if self._first is None:
            self._first = bet
            try:
                self._bets.keep(self.words.name, bet)
            except SeatworkError as error:
                return f"{self.voice.say(NOT_KEPT)} {self.voice.explain(error)}"
        return ""

    def _named_first(self) -> str:
        """Name the first bet, for who bets again."""
        first = self._first
        if first is None or first.bet == bets.NO_IDEA or not bets.fits(self.words, first.bet):
            return ""
        return self.voice.say(FIRST).format(bet=bets.named(self.words, first.bet, self.voice.say))

    def _see(self, bet: str, trouble: str = "") -> None:
        """Show what follows, and open the bench."""
        self._bench = opened(self.words, bet, projector=self.room)
        self._open(self._bench)
        self._seen = bet, trouble
        self._tell(bet, trouble)

    def _tell(self, bet: str, trouble: str) -> None:
        """Say what follows, in the language chosen."""
        say, bench = self.voice.say, self._bench
        why = bets.whys(self.words, bet or bets.NO_IDEA)
        everyone = bet in ("", bets.NO_IDEA) or bets.is_right(self.words, bet)
        heading = WHY_OTHERS if everyone else WHY
        self.form.answer = {
            "bet": bet.split(),
            "said": bets.said(self.words, bet, say) if bet else say(OPEN),
            "right": "" if bets.is_right(self.words, bet) else right_one(self.words, say),
            "after": say(filled(self.words, bench)),
            "drawn": say(DRAWN) if bench and bench.comparing else "",
            "heading": say(heading) if why else "",
            "whys": [[one.bet, one.says] for one in why],
            "trouble": trouble,
            "open": self._is_open,
        }

    def _cover(self) -> None:
        """Hide what answers the bet; show what may be seen before it."""
        self._seen = None
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
        VIEWS.discard(self)
        for view in self._benches:
            view.close()
        self.form.close()
        self.box.close()


def _texts(given: Any) -> list[str]:
    """Take what the page sent as texts; anything else counts as nothing chosen."""
    return [text for text in given if isinstance(text, str)] if isinstance(given, list) else []
