"""The kinds of screw held here, and which table columns make each of them."""

from collections.abc import Mapping
from dataclasses import dataclass

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware.facts import Fact, fact
from seatwork.hardware.screws import Screw
from seatwork.hardware.threads import Thread


@dataclass(frozen=True, slots=True, kw_only=True)
class Kind:
    """One kind of screw.

    Parameters
    ----------
    title : str
        What it is called.
    system : str
        "inch" or "metric".
    standard : str
        Document that governs the head.
    columns : mapping of str to mapping of str to str
        For each table, which column gives which fact of `Screw`. The first table must hold
        the size; the others add what they have.
    main : str
        Fact that the seat is cut to; where a size lacks it, the edge diameter stands first.
    angles : str, optional
        Row of the table ``head_angles``.
    withdrawn : bool, optional
        Whether the document has been withdrawn.
    """

    title: str
    system: str
    standard: str
    columns: Mapping[str, Mapping[str, str]]
    main: str = "sharp_diameter"
    angles: str | None = None
    withdrawn: bool = False

    def screw(self, name: str, thread: Thread, *, length: float | None = None) -> Screw:
        """Return the screw of this kind and size.

        Raises
        ------
        SeatworkError
            If the kind has no such size.
        """
        facts: dict[str, Fact] = {}
        for table, columns in self.columns.items():
            for key, value in self._facts(table, columns, thread).items():
                facts.setdefault(key, value)
        if self.angles:
            facts |= _angles(self.angles)
        return Screw(
            kind=name,
            title=self.title,
            thread=thread,
            standard=self.standard,
            facts=facts,
            main=self.main if self.main in facts else "edge_diameter",
            withdrawn=self.withdrawn,
            length=length,
        )

    def _facts(self, table: str, columns: Mapping[str, str], thread: Thread) -> Mapping[str, Fact]:
        held = [row for row in tables.rows(table) if row["size"] == thread.size]
        if not held and table == next(iter(self.columns)):
            sizes = ", ".join(str(row["size"]) for row in tables.rows(table))
            raise SeatworkError(
                f"{thread.name} {self.title}", f"the table has no {thread.size}", f"it has {sizes}"
            )
        found = {name: fact(table, row, column) for row in held for name, column in columns.items()}
        return {name: value for name, value in found.items() if value}


def _angles(screws: str) -> dict[str, Fact]:
    row = tables.row("head_angles", screws)
    names = {"least_deg": "least_angle", "greatest_deg": "greatest_angle", "seat_deg": "seat_angle"}
    found = {name: fact("head_angles", row, column) for column, name in names.items()}
    return {name: value for name, value in found.items() if value}


FLAT_1972 = {
    "sharp_diameter": "head_dia_A_max_sharp_in",
    "height": "head_height_H_ref_in",
    "rounded_edge_diameter": "head_dia_A_min_rounded_or_flat_in",
}
FLAT_2013 = {
    "edge_diameter": "head_dia_A_max_in",
    "rounded_edge_diameter": "head_dia_A_min_in",
    "height": "head_height_H_ref_in",
    "gage_diameter": "gauge_dia_G_in",
    "gage_least": "gauge_protrusion_F_min_in",
    "gage_greatest": "gauge_protrusion_F_max_in",
}
HEX = {"across_flats": "across_flats_s_nominal_max_mm", "height": "head_height_k_max_mm"}

KINDS: Mapping[str, Kind] = {
    "flat machine 82": Kind(
        title="flat head machine screw, 82°",
        system="inch",
        standard="ASME B18.6.3",
        angles="inch flat 82°",
        columns={
            "inch_flat82_asme_b18_6_3_2013": FLAT_2013,
            "inch_flat82_ansi_b18_6_3_1972": FLAT_1972,
        },
    ),
    "flat machine 100": Kind(
        title="flat head machine screw, 100°",
        system="inch",
        standard="ASME B18.6.3",
        angles="inch flat 100°",
        columns={
            "inch_flat100_asme_b18_6_3_2013": FLAT_2013,
            "inch_flat100_ansi_1972_ms24693": FLAT_1972,
        },
    ),
    "flat socket inch": Kind(
        title="socket flat head cap screw",
        system="inch",
        standard="ASME B18.3",
        angles="inch flat socket",
        columns={
            "inch_flat_socket_asme_b18_3": {
                "sharp_diameter": "head_dia_A_max_theoretical_sharp_in",
                "rounded_edge_diameter": "head_dia_A_abs_min_in",
                "height": "head_height_H_ref_in",
                "hex_socket": "hex_socket_J_nominal_in",
                "gage_diameter": "gauge_dia_G_max_in",
                "gage_least": "gauge_protrusion_min_in",
                "gage_greatest": "gauge_protrusion_max_in",
            }
        },
    ),
    "flat socket metric": Kind(
        title="socket countersunk head screw",
        system="metric",
        standard="ISO 10642",
        angles="ISO 10642",
        columns={
            "metric_csk_iso_10642": {
                "sharp_diameter": "head_dia_dk_theoretical_max_mm",
                "rounded_edge_diameter": "head_dia_dk_actual_min_mm",
                "height": "head_height_k_max_mm",
                "hex_socket": "hex_socket_s_nominal_mm",
            },
            "metric_csk_iso_10642_flushness": {"flushness": "flushness_F_mm"},
        },
    ),
    "flat machine metric": Kind(
        title="slotted or recessed countersunk head screw",
        system="metric",
        standard="ISO 7721",
        angles="ISO 7721",
        columns={
            "metric_csk_iso_7721_heads": {
                "sharp_diameter": "head_dia_dk_theoretical_max_mm",
                "edge_diameter": "head_dia_dk_actual_max_mm",
                "rounded_edge_diameter": "head_dia_dk_actual_min_mm",
                "height": "head_height_k_max_mm",
            }
        },
    ),
    "din 7991": Kind(
        title="socket countersunk head screw, withdrawn DIN 7991",
        system="metric",
        standard="DIN 7991",
        withdrawn=True,
        main="edge_diameter",
        columns={
            "metric_csk_din_7991": {
                "edge_diameter": "head_dia_dk_edge_max_mm",
                "rounded_edge_diameter": "head_dia_dk_edge_min_mm",
                "height": "head_height_k_max_mm",
                "hex_socket": "hex_socket_s_nominal_mm",
                "seat_angle": "included_angle_deg",
            }
        },
    ),
    "din 963": Kind(
        title="slotted or recessed countersunk head screw, withdrawn DIN 963/965",
        system="metric",
        standard="DIN 963/965",
        angles="DIN 963",
        withdrawn=True,
        main="edge_diameter",
        columns={
            "metric_csk_din_963_965": {
                "edge_diameter": "head_dia_dk_edge_max_mm",
                "height": "head_height_k_max_mm",
            }
        },
    ),
    "socket cap inch": Kind(
        title="socket head cap screw",
        system="inch",
        standard="ASME B18.3",
        main="head_diameter",
        columns={
            "shcs_inch_asme_b18_3": {
                "head_diameter": "head_dia_A_max_in",
                "height": "head_height_H_max_in",
                "hex_socket": "hex_socket_J_nominal_in",
            }
        },
    ),
    "socket cap metric": Kind(
        title="socket head cap screw",
        system="metric",
        standard="ISO 4762",
        main="head_diameter",
        columns={
            "shcs_metric_iso_4762": {
                "head_diameter": "head_dia_dk_max_plain_mm",
                "knurled_diameter": "head_dia_dk_max_knurled_mm",
                "height": "head_height_k_max_mm",
                "hex_socket": "hex_socket_s_nominal_mm",
                "fillet_diameter": "fillet_transition_da_max_mm",
            }
        },
    ),
    "hex inch": Kind(
        title="hex cap screw",
        system="inch",
        standard="ASME B18.2.1",
        main="across_flats",
        columns={
            "hex_cap_screw_asme_b18_2_1": {
                "across_flats": "across_flats_F_max_in",
                "across_corners": "across_corners_G_max_in",
                "height": "head_height_H_max_in",
            }
        },
    ),
    "hex metric": Kind(
        title="hex head screw",
        system="metric",
        standard="ISO 4014/4017",
        main="across_flats",
        columns={
            "hex_head_iso_4014_4017": {
                **HEX,
                "across_flats_old": "across_flats_old_din931_mm",
                "across_corners_least": "across_corners_e_min_mm",
            }
        },
    ),
    "din 931": Kind(
        title="hex head screw, withdrawn DIN 931/933",
        system="metric",
        standard="DIN 931/933",
        withdrawn=True,
        main="across_flats",
        columns={"hex_head_iso_4014_4017": {**HEX, "across_flats": "across_flats_old_din931_mm"}},
    ),
}
