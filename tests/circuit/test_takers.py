"""What each emitter, coil and exchanger serves: heating or hot water."""

from __future__ import annotations

from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.takers import BOTH_SERVICES, HEATING, HOT_WATER, Takers
from tests.checks.houses import pumped
from tests.made import Part

HX: Part = "heat_exchanger"
BESIDE_A_RADIATOR = (
    "hs.flow pu.in:out t1.a:b rad.flow:return t2.a:b hs.return",
    "t1.branch hx.primary_in:primary_out t2.branch",
)


def services(*ways: str, **parts: Part) -> dict[str, frozenset[str]]:
    """What each part that takes heat serves, by its id."""
    drawing = pumped(*BESIDE_A_RADIATOR, *ways, controls=None, design=None, rad="radiator", hx=HX, **parts)
    takers = Takers(Circuit(drawing))
    return {part: takers.service(part) for part in drawing.components if takers.service(part)}


def test_an_exchanger_serves_what_is_behind_it_and_not_what_stands_beside_it() -> None:
    heating, hot_water = frozenset({HEATING}), frozenset({HOT_WATER})
    main = "cm.outlet hx.secondary_in", "hx.secondary_out sh.hot"
    assert services(*main, cm="cold_main", sh="outlet") == {"rad": heating, "hx": hot_water}
    floor = "hx.secondary_out p2.in:out hz.flow:return hx.secondary_in"
    assert services(floor, p2="pump", hz="heating_zone") == {"rad": heating, "hx": heating, "hz": heating}


def test_an_exchanger_before_another_serves_what_the_last_of_them_serves() -> None:
    found = services(
        "hx.secondary_out p2.in:out t3.a:b us.coil_flow:coil_return t4.a:b hx.secondary_in",
        "t3.branch h2.primary_in:primary_out t4.branch",
        "h2.secondary_out p3.in:out r2.flow:return h2.secondary_in",
        p2="pump", p3="pump", us="unvented_store", h2=HX, r2="radiator",
    )  # fmt: skip
    assert found["us"] == {HOT_WATER} and found["h2"] == {HEATING}
    assert found["hx"] == BOTH_SERVICES
