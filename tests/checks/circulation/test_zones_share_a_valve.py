"""Whether each zone has a motor valve of its own."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import advice, asked, only, told
from tests.checks.circulation.controlled import ROOM, three_port, two_pumps, two_valves
from tests.checks.houses import pumped
from tests.made import Part

NAME = "zones-share-a-valve"
ZONE: Part = "heating_zone"


def behind_one_valve(
    *ways: str, controls: dict[str, tuple[str, tuple[str, ...]]] | None = None, **parts: Part
) -> Drawing:
    """Two rungs behind one zone valve; the first has a heating zone."""
    return pumped(
        "hs.flow pu.in:out zv.in:out t1.a:b hz.flow:return t2.a:b hs.return", *ways, controls=controls,
        **{"zv": "zone_valve", "hz": ZONE, **parts},  # type: ignore[arg-type]  # no part is called as a parameter is
    )  # fmt: skip


SOUND: dict[str, Drawing] = {
    "each its valve": two_valves(),
    "three-port valve": three_port(),
    "a main valve before two others": behind_one_valve(
        "t1.branch z2.in:out h2.flow:return t2.branch", z2="zone_valve", h2=ZONE
    ),
    "a zone and a radiator": behind_one_valve("t1.branch r2.flow:return t2.branch", r2="radiator"),
    "a pump with its thermostat for the second": behind_one_valve(
        "t1.branch p2.in:out h2.flow:return t2.branch", p2="pump", h2=ZONE, controls={"rt": (ROOM, ("p2",))}
    ),
    "two zones on one pump, and a valve for the store alone": pumped(
        "hs.flow t1.a:b pu.in:out hz.flow:return h2.flow:return t2.a:b hs.return",
        "t1.branch p2.in:out zv.in:out us.coil_flow:coil_return t2.branch",
        p2="pump", zv="zone_valve", hz=ZONE, h2=ZONE, us="unvented_store", controls={"rt": (ROOM, ("pu",))},
    ),
    "one room thermostat": behind_one_valve(controls={"rt": (ROOM, ("zv",))}),
}  # fmt: skip

FIRES: dict[str, tuple[Drawing, tuple[str, ...]]] = {
    "two zones": (behind_one_valve("t1.branch h2.flow:return t2.branch", h2=ZONE), ("zv", "hz", "h2")),
    "in the return they share": (
        pumped(
            "hs.flow pu.in:out t1.a:b hz.flow:return t2.a:b zv.in:out hs.return", "t1.branch h2.flow:return t2.branch",
            zv="zone_valve", hz=ZONE, h2=ZONE,
        ), ("zv", "hz", "h2"),
    ),
    "heating and hot water": (
        behind_one_valve("t1.branch us.coil_flow:coil_return t2.branch", us="unvented_store"), ("zv", "hz", "us"),
    ),
    "two stores": (
        pumped(
            "hs.flow pu.in:out zv.in:out us.coil_flow:coil_return vs.coil_flow:coil_return hs.return",
            zv="zone_valve", us="unvented_store", vs="vented_store",
        ), ("zv", "us", "vs"),
    ),
    "two zones on one leg": (
        pumped(
            "hs.flow pu.in:out tp.ab:a hz.flow:return h2.flow:return t1.a:b hs.return",
            "tp.b us.coil_flow:coil_return t1.branch", tp="three_port_valve", hz=ZONE, h2=ZONE, us="unvented_store",
        ), ("tp", "hz", "h2"),
    ),
    "two room thermostats": (
        behind_one_valve(controls={"rt": (ROOM, ("zv",)), "r2": (ROOM, ("zv",))}), ("zv", "hz"),
    ),
    "an uncontrolled pump for the second does not help": (
        behind_one_valve("t1.branch p2.in:out h2.flow:return t2.branch", p2="pump", h2=ZONE), ("zv", "hz", "h2"),
    ),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "components"), FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing, components: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert told(NAME, drawing) == [advice(components[0])]
    assert finding.components == components


def test_not_applicable_without_a_motor_valve() -> None:
    assert asked(NAME, two_pumps()).status == "not applicable"
