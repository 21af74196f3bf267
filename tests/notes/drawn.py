"""Notes drawn from the ways people write each thing, beside the callout they were drawn from.

Abbreviation, order, unit and punctuation are drawn; what is said is drawn too, so that a note
and its reading come from one throw and not from the reader.
"""

from dataclasses import replace
from random import Random

from seatwork import units
from seatwork.notes import (
    Chamfer,
    Counterbore,
    Countersink,
    Feature,
    Head,
    Hole,
    Size,
    Spotface,
    Thread,
)

SIDES = {
    "near": ("NEAR SIDE", "NS", "N.S.", "N/S", "NEARSIDE", "THIS SIDE"),
    "far": ("FAR SIDE", "FS", "F.S.", "F/S", "FARSIDE", "BACK SIDE", "FROM FAR SIDE"),
    "both": ("BOTH SIDES", "EACH SIDE", "NS & FS", "N.S. AND F.S.", "NEAR & FAR SIDE"),
}
THROUGH = ("THRU", "THROUGH", "THRU ALL")
DEEP = ("X {} DP", "X {} DEEP", "↧ {}", "↧{}", "{} DP", "{} DEEP")
SINK = ("CSK", "C'SINK", "CTSK", "COUNTERSINK", "C'SUNK", "⌵", "csk", "C/SINK")
BORE = ("C'BORE", "CBORE", "C/BORE", "COUNTERBORE", "⌴", "c'bore")
FACE = ("S.F.", "SF", "SPOTFACE", "SPOT FACE", "S'FACE", "S/F", "⌴SF")
COUNTS = ("{} PL", "{} PLCS", "{} PLACES", "{} HOLES", "TYP {} PL", "{} OFF", "({}) PLACES")
HOLDS = {
    "after plating": ("AFTER PLATING", "SIZES APPLY AFTER PLATING", "DIMS AFTER PLATE"),
    "before plating": ("BEFORE PLATING", "DIMENSIONS APPLY BEFORE PLATING", "PRIOR TO PLATING"),
}
SAID = (
    "SEE NOTE 3",
    "(SEE NOTE 2)",
    "PER DETAIL A",
    "EQ SP ON 3.00 B.C.",
    "AS SHOWN",
    "ON BOSS",
    "120° APART",
    "⌖ ⌀.010 Ⓜ A B",
    "BOTH PLATES",
)
DRILLS = (("#7", ".201"), ("F", ".257"), ("#25", ".1495"), ("17/64", ".266"), ("13/32", ".406"))
FLATS = ("#10 F.H.M.S.", "1/4-20 F.H. MACH. SCR.", "#10-32 FLAT HEAD", "5/16 F.H. SOC. CAP SCR.")
CAPS = ("1/4 SHCS", "3/8-16 S.H.C.S.", "5/16 SOC HD CAP SCREW", "1/4 HEX HD CAP SCR")


class Drawn:
    """One note: what it says, and how it was written.

    Parameters
    ----------
    seed : int
        Which throw.
    """

    def __init__(self, seed: int) -> None:
        self.rng = Random(seed)
        self.metric = self.rng.random() < 0.2
        self.count = self.rng.choice((1, 1, 2, 4, 6, 12))
        clauses = [self._hole(), *self._seats()]
        self.features = tuple(replace(feature, count=self.count) for feature, _ in clauses)
        self.said: tuple[str, ...] = ()
        self.holds = self._one(("", "", "", "", "after plating", "before plating"))
        self.note = self._joined([text for _, text in clauses])
        if "TYP" in self.note:
            self.features = (*self.features[:-1], replace(self.features[-1], scope="typical"))

    def _joined(self, clauses: list[str]) -> str:
        mark = self.rng.choice((", ", "; ", "\n", ". ", ", "))
        if mark == ". " and any(word in clause for clause in clauses for word in ("FOR", "SUIT")):
            mark = ", "  # a dot behind SCR. is that of the word
        if self.count > 1 and self.rng.random() < 0.5:
            clauses = [f"{self.count}X {clauses[0]}", *clauses[1:]]
        elif self.count > 1:
            clauses = [*clauses, self._one(COUNTS).format(self.count)]
        if self.rng.random() < 0.3:
            self.said = (self._one(SAID),)
            clauses[-1] += f" {self.said[0]}"
        if self.holds:
            clauses = [*clauses, self._one(HOLDS[self.holds])]
        return mark.join(clauses).replace("..", ".")

    def _one(self, ways: tuple[str, ...]) -> str:
        return self.rng.choice(ways)

    # -- sizes ---------------------------------------------------------------------------

    def _mm(self, text: str) -> float:
        return units.length(text.replace(",", "."), "metric" if self.metric else "inch")

    def _size(self, thousandths: int) -> tuple[Size, str]:
        """Return a size about so many thousandths of an inch, and how it is written."""
        unit = "mm" if self.metric else "in"
        text = f"{thousandths * 0.0254:.1f}" if self.metric else f"{thousandths / 1000:.3f}"
        text = text.replace(".", ",") if self.metric else text.removeprefix("0")
        size = Size(value=self._mm(text), unit=unit)
        way = self.rng.random()
        if way < 0.1:
            return replace(size, bound="max"), f"{text} MAX"
        if way < 0.2:
            return replace(size, bound="min"), f"{text} MIN"
        if way < 0.35 and not self.metric:
            return self._limits(thousandths)
        if way < 0.5 and not self.metric:
            off = self._mm(".005")
            ways = {"±.005": (off, -off), " +.005/-.000": (off, 0.0), " +.005/0": (off, 0.0)}
            ways |= {" +.005 -0": (off, 0.0), " +.005 0": (off, 0.0), " 0 -.005": (0.0, -off)}
            ways |= {" -.000 +.005": (off, 0.0), " +0 -.005": (0.0, -off)}
            mark = self._one(tuple(ways))
            return replace(size, upper=ways[mark][0], lower=ways[mark][1]), text + mark
        return size, text

    def _limits(self, thousandths: int) -> tuple[Size, str]:
        ends = [f"{n / 1000:.3f}".removeprefix("0") for n in (thousandths, thousandths + 6)]
        size = Size.limits(least=self._mm(ends[0]), greatest=self._mm(ends[1]), unit="in")
        self.rng.shuffle(ends)
        return size, self._one(("/", "-", " TO ", "–")).join(ends)

    def _diameter(self, thousandths: int) -> tuple[Size, str]:
        size, text = self._size(thousandths)
        bound = f" {size.bound.upper()}" if size.bound else ""
        plain = text.removesuffix(bound) if bound else text
        return size, self._one((f"⌀{text}", f"{text} DIA", f"{plain} DIA{bound}"))

    def _angle(self, degrees: int) -> tuple[Size, str]:
        size = Size(value=float(degrees), unit="deg")
        way = self._one((f"{degrees}°", f"{degrees} DEG", f"{degrees}° INCL", f"{degrees}°±1°"))
        return (replace(size, upper=1.0, lower=-1.0) if "±" in way else size), way

    def _depth(self, thousandths: int) -> tuple[Size, str]:
        size, text = self._size(thousandths)
        return size, self._one(DEEP[:4]).format(text)

    # -- features ------------------------------------------------------------------------

    def _hole(self) -> tuple[Feature, str]:
        if not self.metric and self.rng.random() < 0.25:
            return self._thread()
        hole, text = self._drilled()
        if self.rng.random() < 0.3:
            depth, written = self._depth(750)
            return replace(hole, depth=depth), f"{text} {written}"
        return replace(hole, through=True), f"{text} {self._one(THROUGH)}"

    def _drilled(self) -> tuple[Hole, str]:
        if self.metric or self.rng.random() < 0.4:
            size, text = self._diameter(266)
            if self.rng.random() < 0.5:
                return Hole(diameter=size), f"⌀{text.replace('⌀', '').replace(' DIA', '')}"
            return Hole(diameter=size, process="drill"), f"DRILL {text}"
        name, decimal = self.rng.choice(DRILLS)
        size = Size(value=units.length(name, "inch")) if "/" in name else Size(name=name)
        text, also = name, None
        if self.rng.random() < 0.5:
            text, also = f"{name} ({decimal})", Size(value=self._mm(decimal))
        behind = f"{text} DRILL" if name != "F" else f"LETTER {text} DRILL"
        return Hole(diameter=size, also=also, process="drill"), self._one((f"DRILL {text}", behind))

    def _thread(self) -> tuple[Feature, str]:
        size, per_inch, series = self.rng.choice((("1/4", 20.0, "UNC"), ("3/8", 16.0, "UNC")))
        thread = Thread(size=size, threads_per_inch=per_inch, series=series, thread_class="2B")
        text = self._one((f"{size}-{per_inch:g} UNC-2B", f"{size}-{per_inch:g} UNC - 2B"))
        kind = self._one(("", "", "bottoming", "plug"))
        tap = {"": self._one(("", "TAP ")), "bottoming": "BOTTOM TAP ", "plug": "PLUG TAP "}[kind]
        if self.rng.random() < 0.5:
            return replace(thread, tap=kind, through=True), f"{tap}{text} {self._one(THROUGH)}"
        depth, written = self._depth(500)
        full = self._one(("", " FULL THD")) if "DP" in written else ""
        return replace(thread, tap=kind, depth=depth), f"{tap}{text} {written}{full}"

    def _seats(self) -> list[tuple[Feature, str]]:
        ways = (self._sink, self._bore, self._face, self._sink_for, self._bore_for, self._chamfer)
        seat, text = self.rng.choice(ways)()
        if self.rng.random() < 0.4:
            side = self._one(tuple(SIDES))
            return [(replace(seat, side=side), f"{text} {self._one(SIDES[side])}")]
        return [(seat, text)]

    def _sink(self) -> tuple[Feature, str]:
        (size, wide), (angle, turned) = self._diameter(507), self._angle(82)
        link = self._one((" X ", " × ", " TO ")) if "⌀" not in wide else " X "
        text = self._one((f"{wide} X {turned}", f"{turned}{link}{wide}"))
        return Countersink(diameter=size, angle=angle), f"{self._one(SINK)} {text}"

    def _bore(self) -> tuple[Feature, str]:
        (size, wide), (depth, deep) = self._diameter(625), self._depth(390)
        seat, text = Counterbore(diameter=size, depth=depth), f"{self._one(BORE)} {wide} {deep}"
        if self.rng.random() < 0.3:
            fillet = Size(value=self._mm(".03" if not self.metric else "0.5"), bound="max")
            fillet = replace(fillet, unit="mm" if self.metric else "in")
            number = "0,5" if self.metric else ".03"
            ways = (f", R{number} MAX", f", R {number} MAX", f", CORNER R {number} MAX")
            return replace(seat, fillet=fillet), text + self._one(ways)
        return seat, text

    def _face(self) -> tuple[Feature, str]:
        size, wide = self._diameter(1000)
        seat, text = Spotface(diameter=size), f"{self._one(FACE)} {wide}"
        if size.bound != "min" and self.rng.random() < 0.6:
            seat, text = replace(seat, clean_up=True), f"{text} TO CLEAN UP"
        if self.rng.random() < 0.5 and not self.metric:
            left = Size(value=self._mm(".38"), bound="min")
            ways = (", .38 MIN FLANGE", ", LEAVE .38 MIN", ", FLANGE .38 MIN", ", .38 MIN THK")
            return replace(seat, left=left), text + self._one(ways)
        return seat, text

    def _sink_for(self) -> tuple[Feature, str]:
        screw = self._one(FLATS)
        ways: dict[str, Head | None] = {
            "": None,
            ", HEAD FLUSH": Head(state="flush"),
            ", FLUSH OR BELOW": Head(state="flush or below"),
            ", HEAD AT OR BELOW SURFACE": Head(state="flush or below"),
            ", NEVER PROUD": Head(state="flush or below"),
            ", FLUSH TO .010 BELOW": Head(state="flush to below", amount=self._in(".010")),
            ", .005 BELOW FLUSH": Head(state="below", amount=self._in(".005")),
            ", FLUSH +.002 -.000": Head(
                state="flush", amount=Size(value=0.0, upper=self._in(".002").value, lower=0.0)
            ),
        }
        way = "" if self.metric else self._one(tuple(ways))
        return (
            Countersink(screw=screw, head=ways[way]),
            f"{self._one(SINK)} {self._one(('FOR', 'TO SUIT'))} {screw}{way}",
        )

    def _in(self, text: str) -> Size:
        return Size(value=units.length(text, "inch"))

    def _bore_for(self) -> tuple[Feature, str]:
        screw = self._one(CAPS)
        room = self._one(("", "", " W/ SOCKET CLR"))
        seat = Counterbore(screw=screw, wrench_room=bool(room))
        return seat, f"{self._one(BORE)} FOR {screw}{room}"

    def _chamfer(self) -> tuple[Feature, str]:
        number = "0,8" if self.metric else ".03"
        leg = Size(value=self._mm(number), unit="mm" if self.metric else "in")
        ways = (f"CHAM {number} X 45°", f"{number} X 45° CHAM", f"CSK {number} X 45°")
        ways += (f"CHAMFER 45° X {number}", f"CHFR {number} × 45°")
        return Chamfer(leg=leg, angle=Size(value=90.0, unit="deg")), self._one(ways)
