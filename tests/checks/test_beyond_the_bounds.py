"""Where a plant is too large to prove, each check says so, names what it asked of, and how bad it could be."""

from __future__ import annotations

from typing import Any, NoReturn

import pytest

from circuitcheck.circuit import isolation, positions, regions
from circuitcheck.circuit.gravity import GravityRound
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.rounds import Body
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Grade, Witness
from tests.checks.asking import asked, only
from tests.checks.houses import pumped, sealed
from tests.made import Part

ZONED = pumped(
    "hs.flow pu.in:out zv.in:out hz.flow:return hs.return",
    zv="zone_valve", hz=("heating_zone", {"maximum_flow_temperature_c": 45}), design={"flow_temperature_c": 70},
)  # fmt: skip
VALVED = sealed(vessel="t2.branch iv.a:b ev.connection", iv="isolating_valve")


def store(kind: str) -> Drawing:
    part: Part = (kind, {"volume_l": 150, "energy_cut_out": "zv"} if kind == "unvented_store" else {})
    return pumped(
        "hs.flow pu.in:out zv.in:out us.coil_flow:coil_return hs.return",
        zv="zone_valve", us=part, controls={"st": ("store_thermostat", ("zv",))},
    )  # fmt: skip


CASES: dict[str, tuple[Drawing, str, Grade]] = {
    "cut-out-drives-no-valve": (store("unvented_store"), "us", Grade.DANGER),
    "emitter-not-in-a-loop": (ZONED, "hz", Grade.FAULT),
    "fitted-backwards": (pumped("hs.flow pu.out:in rad.flow:return hs.return", rad="radiator"), "pu", Grade.FAULT),
    "floor-heating-unlimited": (ZONED, "hz", Grade.FAULT),
    "heat-leak-absent": (
        pumped("hs.flow rad.flow:return hs.return", hs=("heat_source", {"heat": "uncontrolled"}), rad="radiator"),
        "hs", Grade.DANGER,
    ),
    "no-way-round-when-zones-shut": (ZONED, "hs", Grade.FAULT),
    "pump-against-shut-valves": (ZONED, "pu", Grade.FAULT),
    "store-thermostat-absent": (store("unvented_store"), "us", Grade.DANGER),
    "vessel-can-be-cut-off": (VALVED, "hs", Grade.DANGER),
    "vessel-too-small": (VALVED, "hs", Grade.FAULT),
}  # fmt: skip


def beyond(*_: Any) -> NoReturn:
    raise TooLargeError


@pytest.fixture
def nothing_can_be_proved(monkeypatch: pytest.MonkeyPatch) -> None:
    for module, bound in ((positions, "LOOP_BOUND"), (positions, "BRANCH_BOUND"), (regions, "REGION_BOUND")):
        monkeypatch.setattr(module, bound, 0)
    monkeypatch.setattr(isolation, "SEARCH_BOUND", -1)
    # Small plants are proved at once, without a search that could reach its bound.
    monkeypatch.setattr(Body, "loop_through", staticmethod(beyond))
    monkeypatch.setattr(Body, "fed_in", beyond)
    monkeypatch.setattr(Body, "fed", property(beyond))
    monkeypatch.setattr(GravityRound, "never_shut", property(beyond))


@pytest.mark.usefixtures("nothing_can_be_proved")
@pytest.mark.parametrize(
    ("name", "drawing", "part", "would_be"),
    [
        *((name, *case) for name, case in CASES.items()),
        ("store-thermostat-absent", store("vented_store"), "us", Grade.FAULT),
    ],
)
def test_what_cannot_be_proved_is_unanswered(name: str, drawing: Drawing, part: str, would_be: Grade) -> None:
    finding = only(name, drawing)
    assert (finding.grade, finding.would_be) == (Grade.UNANSWERED, would_be)
    assert (finding.components, finding.witness, finding.missing) == ((part,), Witness(), ())
    assert "too many to prove" in finding.message
    assert asked(name, drawing).status == "not judged"


def test_a_heat_leak_is_denied_though_no_smallest_set_of_valves_is_found(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    drawing = pumped(
        "hs.flow zv.in:out rad.flow:return hs.return",
        hs=("heat_source", {"heat": "uncontrolled"}), zv="zone_valve", rad="radiator",
    )  # fmt: skip
    assert only("heat-leak-absent", drawing).witness == Witness(("rad",), ("rad", "zv"), ("rad",))
    monkeypatch.setattr(positions, "LOOP_BOUND", 0)
    finding = only("heat-leak-absent", drawing)
    assert (finding.grade, finding.witness) == (Grade.DANGER, Witness())
    assert finding.message.startswith("Every loop by which heat source hs's heat could rise")
