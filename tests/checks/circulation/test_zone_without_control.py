"""Whether something besides thermostatic heads can stop the heat of each zone."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import advice, asked, only, told
from tests.checks.circulation.controlled import (
    PROGRAMMER,
    ROOM,
    STORE,
    behind_exchanger,
    radiators,
    three_port,
    two_pumps,
    two_valves,
)
from tests.checks.houses import pumped

NAME = "zone-without-control"

FIRE = ("heat_source", {"heat": "uncontrolled"})

SOUND: dict[str, Drawing] = {
    "each its valve and thermostat, and a rail left open": two_valves(),
    "a programmer alone": two_valves(controls={"pr": (PROGRAMMER, ("z1", "z2"))}),
    "thermostats act on pumps": two_pumps(),
    "three-port valve": three_port(),
    "radiators on a pump with a thermostat": radiators({"rt": (ROOM, ("pu",))}),
    "the heat source itself obeys a thermostat": pumped(
        "hs.flow hz.flow:return hs.return", controls={"rt": (ROOM, ("hs",))},
        hs=("heat_source", {"built_in": ["pump"]}), hz="heating_zone",
    ),
    "what takes away the heat of a fire": pumped(
        "hs.flow r1.flow:return hs.return", hs=FIRE, r1=("radiator", {"thermostatic": False, "valves": False}),
    ),
    "behind an exchanger whose valve obeys a thermostat": behind_exchanger(),
    "behind an exchanger, its own pump": behind_exchanger({"rt": (ROOM, ("p2",))}),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


FIRES: dict[str, tuple[Drawing, list[str]]] = {
    "heads only": (radiators(), ["r1"]),
    "one with valves, on a fire's water": (pumped(
        "hs.flow r1.flow:return hs.return", hs=FIRE, r1=("radiator", {"thermostatic": False})), ["r1"],
    ),
    "one without, whose heat is switched": (pumped("hs.flow pu.in:out r1.flow:return hs.return",
        r1=("radiator", {"thermostatic": False, "valves": False})), ["r1"],
    ),
    "a zone of heads only": (pumped("hs.flow pu.in:out hz.flow:return hs.return", hz="heating_zone"), ["hz"]),
    "one plain radiator and nothing else": (
        pumped("hs.flow pu.in:out r1.flow:return hs.return", r1=("radiator", {"thermostatic": False})), ["r1"],
    ),
    "its valve obeys the store's thermostat alone": (
        two_valves(controls={"st": (STORE, ("z1", "z2"))}), ["hz"]
    ),
    "a way round its valve": (
        pumped(
            "hs.flow pu.in:out t3.a:b z1.in:out t1.a:b hz.flow:return hs.return", "t3.branch iv.a:b t1.branch",
            controls={"rt": (ROOM, ("z1",))}, z1="zone_valve", iv="isolating_valve", hz="heating_zone",
        ), ["hz"],
    ),
    "the pump of the other zone obeys it": (two_pumps({"rt": (ROOM, ("p2",))}), ["hz"]),
    "a rail with a head beside a controlled zone": (two_valves(rail="radiator"), ["rail"]),
}  # fmt: skip


@pytest.mark.parametrize(("drawing", "subjects"), FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing, subjects: list[str]) -> None:
    assert told(NAME, drawing) == [advice(subject) for subject in subjects]


def test_radiators_are_named_together_without_the_one_left_open() -> None:
    finding = only(NAME, radiators())
    assert finding.components == ("r1", "r2")
    assert "Radiator r1 and radiator r2" in finding.message


def test_not_applicable() -> None:
    store = pumped("hs.flow pu.in:out us.coil_flow:coil_return hs.return", us="unvented_store")
    unjoined = pumped(
        "hs.flow pu.in:out us.coil_flow:coil_return hs.return", us="unvented_store", r1="radiator"
    )
    assert asked(NAME, store).status == "not applicable"
    assert asked(NAME, unjoined).status == "not applicable"
