"""A valve stops a coil only if no loop through it is left, proved against listing every loop."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.stopping import stops
from circuitcheck.drawing.value import Drawing
from tests.checks.houses import pumped
from tests.circuit.brute_rounds import rings
from tests.circuit.random_circuits import circuits, plants

COIL = "us.coil_flow:coil_return"
STORE = {"us": "unvented_store", "zv": "zone_valve", "rad": "radiator"}
CASES = {
    "in the coil's flow": (("hs.flow pu.in:out t1.a:b rad.flow:return t2.a:b hs.return",
                            f"t1.branch zv.in:out {COIL} t2.branch"), True),
    "in the coil's return": (("hs.flow pu.in:out t1.a:b rad.flow:return t2.a:b hs.return",
                              f"t1.branch {COIL} zv.in:out t2.branch"), True),
    "in the radiator's": (("hs.flow pu.in:out t1.a:b zv.in:out rad.flow:return t2.a:b hs.return",
                           f"t1.branch {COIL} t2.branch"), False),
    "a hand valve round it": (("hs.flow pu.in:out t1.a:b rad.flow:return t2.a:b hs.return",
                               f"t1.branch t3.a:b zv.in:out t4.a:b {COIL} t2.branch",
                               "t3.branch iv.a:b t4.branch"), False),
    "only the coil's own dead end round it": (("hs.flow pu.in:out t1.a:b rad.flow:return t2.a:b hs.return",
                                 f"t1.branch t3.a:b zv.in:out {COIL} t2.branch", "t3.branch ca.connection"), True),
    "by gravity, past the pump's valve": (("hs.flow t1.a:b pu.in:out zv.in:out rad.flow:return t2.a:b hs.return",
                                           f"t1.branch {COIL} t2.branch"), False),
    "joined to nothing": (("hs.flow pu.in:out zv.in:out rad.flow:return hs.return",), True),
}  # fmt: skip


@pytest.mark.parametrize(("ways", "expected"), CASES.values(), ids=CASES.keys())
def test_stops(ways: tuple[str, ...], expected: bool) -> None:
    more = {"iv": "isolating_valve"} if "iv." in " ".join(ways) else {}
    more |= {"ca": "cap"} if "ca." in " ".join(ways) else {}
    assert stops(Circuit(pumped(*ways, **{**STORE, **more})), "zv", "us") is expected  # type: ignore[arg-type]  # no part is called as a parameter is


def test_a_three_port_valve_stops_nothing() -> None:
    drawing = pumped(
        "hs.flow pu.in:out tp.ab:a rad.flow:return t1.a:b hs.return", f"tp.b {COIL} t1.branch",
        tp="three_port_valve", rad="radiator", us="unvented_store",
    )  # fmt: skip
    assert not stops(Circuit(drawing), "tp", "us")


@given(st.one_of(circuits(), plants()))
def test_against_every_loop(drawing: Drawing) -> None:
    circuit = Circuit(drawing)
    all_rings = rings(drawing)
    kinds = {id: part.kind.name for id, part in drawing.components.items()}
    for valve in (id for id, kind in kinds.items() if kind == "zone_valve"):
        for coil in (id for id, kind in kinds.items() if kind == "vented_store"):
            left = [ring for ring in all_rings if coil in ring.emitters and valve not in ring.parts]
            assert stops(circuit, valve, coil) == (not any(ring.pumps | ring.heats for ring in left))
