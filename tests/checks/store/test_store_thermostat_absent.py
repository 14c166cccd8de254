"""Whether a store thermostat stops the coil."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import vented
from tests.checks.store.fed import CONTROLS, HEAT, SOUND, fed, store
from tests.made import Part

NAME = "store-thermostat-absent"

Controls = dict[str, tuple[str, tuple[str, ...]]]

BESIDE: dict[str, Any] = {
    "heat": "hs.flow t3.a:b pu.in:out t7.a:b zv.in:out us.coil_flow:coil_return t8.a:b t4.a:b hs.return",
    "z2": "zone_valve",
    "rad": "radiator",
}
ZONE = "t7.branch z2.in:out rad.flow:return t8.branch"
DIVERT: dict[str, Any] = {
    "heat": "hs.flow t3.a:b pu.in:out zv.ab:a us.coil_flow:coil_return t8.a:b t4.a:b hs.return",
    "zv": "three_port_valve",
    "rad": "radiator",
}
OTHER_LEG = "zv.b rad.flow:return t8.branch"


def acts_on(*parts: str) -> Controls:
    return {"st": ("store_thermostat", parts)}


FIRES: dict[str, Drawing] = {
    "no control at all": fed(controls={}),
    "a room thermostat": fed(controls={"rt": ("room_thermostat", ("zv",))}),
    "a programmer": fed(controls={"pr": ("programmer", ("zv",))}),
    "a store thermostat that acts on nothing": fed(controls=acts_on()),
    "on the wrong valve": fed(ZONE, controls=acts_on("z2"), **BESIDE),
    "on a valve with a way round it": fed(
        "t7.branch iv.a:b t8.branch",
        heat=HEAT.replace("zv.in:out", "t7.a:b zv.in:out t8.a:b"),
        iv="isolating_valve",
    ),
    "on one of two pumps": fed(
        "t7.branch p2.in:out t8.branch",
        heat=HEAT.replace("pu.in:out", "t7.a:b pu.in:out t8.a:b"),
        p2="pump",
        controls=acts_on("pu"),
    ),
}


@pytest.mark.parametrize("drawing", FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("danger", ("us",))


SILENT: dict[str, Drawing] = {
    "on the valve": fed(),
    "on the pump": fed(controls=acts_on("pu")),
    "on the heat source": fed(controls=acts_on("hs")),
    "on both": fed(controls=acts_on("zv", "pu")),
    "on a three-port valve": fed(OTHER_LEG, **DIVERT),
    "on a valve beside a zone": fed(ZONE, **BESIDE),
    "on both of two pumps": fed(
        "t7.branch p2.in:out t8.branch",
        heat=HEAT.replace("pu.in:out", "t7.a:b pu.in:out t8.a:b"),
        p2="pump",
        controls=acts_on("pu", "p2"),
    ),
    "one of two thermostats": fed(controls={"s0": ("store_thermostat", ()), **CONTROLS}),
}


@pytest.mark.parametrize("drawing", SILENT.values(), ids=SILENT.keys())
def test_silent(drawing: Drawing) -> None:
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


def test_a_three_port_valve_with_both_legs_to_the_coil_never_stops_it() -> None:
    both = fed(
        "zv.b t9.branch",
        heat="hs.flow t3.a:b pu.in:out zv.ab:a t9.a:b us.coil_flow:coil_return t4.a:b hs.return",
        zv="three_port_valve",
    )
    assert only(NAME, both).grade.value == "danger"


def gravity(hs: Part = "heat_source") -> Drawing:
    return vented(
        ring="hs.flow t1.a:b us.coil_flow:coil_return t2.a:b hs.return",
        us="vented_store",
        hs=hs,
    )


def test_a_vented_store_is_a_fault() -> None:
    assert only(NAME, gravity()).grade.value == "fault"
    solid_fuel = gravity(hs=("heat_source", {"heat": "uncontrolled"}))
    assert asked(NAME, solid_fuel).status == "not applicable"
    unsure = only(NAME, gravity(hs=("heat_source", {"heat": None})))
    assert (unsure.grade.value, unsure.missing) == ("unanswered", ("hs.heat",))
    assert unsure.would_be is not None and unsure.would_be.value == "fault"


def test_each_store_by_itself() -> None:
    two = fed(
        "t7.branch u2.coil_flow:coil_return t8.branch",
        heat=HEAT.replace("zv.in:out", "t7.a:b zv.in:out").replace("t4.a:b", "t8.a:b t4.a:b"),
        u2=store(),
    )
    assert only(NAME, two).components == ("u2",)


def test_not_applicable_where_nothing_heats_the_coil() -> None:
    assert asked(NAME, SOUND["heated by the immersion alone"]).status == "not applicable"
