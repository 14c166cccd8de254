"""Flows and pressures of whole drawings: by hand, by what must balance, and what is named where they can't be told."""

from __future__ import annotations

from dataclasses import replace
from math import sqrt

import pytest

from circuitcheck.circuit.solver.network import kv_quadratic
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.solved import SolvedBody
from circuitcheck.parts.kind import Role
from circuitcheck.shipped import data_path
from circuitcheck.sizing.pipe import GRAVITY_M_S2, pressure_drop
from circuitcheck.sizing.water import density_kg_m3, heat_capacity_j_kgk, viscosity_pa_s
from circuitcheck.storage.reading import read
from tests.checks.flow.driven import driven
from tests.figures.worked.asking import number, one

SAMPLES = sorted(data_path("samples").glob("*.wetcircuit"))
DENSITY = density_kg_m3(67.5)


def body(plant: Plant) -> SolvedBody:
    (only,) = plant.solved.bodies
    return only


def test_a_ring_by_hand() -> None:
    """A pump of 5 m, a zone valve of kv 2 and a zone of 8 kPa at its design flow, on pipes of no length."""
    ring = driven("hs.flow pu.in:out zv.in:out zone.flow:return hs.return", zv={"kv_m3h": 2}, pipe={"length_m": 0},
                  hs={"output_kw": 0})  # fmt: skip
    solved = body(Plant(ring))
    head = 5 * GRAVITY_M_S2 * DENSITY
    design = solved.design_lpm("zone")
    assert design is not None
    assert design / 60 * DENSITY / 1000 == pytest.approx(9 / (4.187 * 15), rel=1e-3)
    resistance = head / (40 / 60_000) ** 2 + kv_quadratic(2) + 8000 / (design / 60_000) ** 2
    run = solved.runs[0]
    assert run.flow_lpm("zone") == pytest.approx(sqrt(head / resistance) * 60_000, rel=1e-5)
    assert run.difference_kpa("zv") == pytest.approx(kv_quadratic(2) * head / resistance / 1000, rel=1e-5)


def test_a_pipe_of_no_length_carries_what_flows() -> None:
    """One that a cure leaves between two parts side by side, with no bend and no tee."""
    drawing = driven("hs.flow pu.in:out zv.in:out zone.flow:return hs.return", pipes={"p3": {"length_m": 0}})
    run = body(Plant(drawing)).runs[0]
    assert run.flow_lpm("p3") == pytest.approx(run.flow_lpm("zone"), rel=1e-6)
    assert run.difference_kpa("p3") == pytest.approx(0, abs=1e-5)


def test_a_pipe_loses_what_the_formula_says() -> None:
    drawing = driven(pipes={"p5": {"length_m": 12, "bends": 3}})
    solved = body(Plant(drawing))
    run = solved.runs[0]
    flow = run.flow_lpm("p5")
    assert flow is not None and solved.bore_mm("p5") == 20.2
    alone = pressure_drop(
        flow / 60, bore_mm=20.2, length_m=12, density_kg_m3=DENSITY, viscosity_pa_s=viscosity_pa_s(67.5),
        loss_factor=3 * 0.75,
    )  # fmt: skip
    assert run.difference_kpa("p5") == pytest.approx(alone.drop_pa / 1000, rel=1e-4)
    assert run.velocity_m_s("p5") == pytest.approx(alone.velocity_m_s, rel=1e-6)


def test_bends_that_are_not_known_count_as_a_quarter_more_pipe() -> None:
    solved = body(Plant(driven(pipes={"p5": {"length_m": 12, "bends": None}})))
    network = solved.network.network
    place = solved.place("p5")
    assert network is not None and place is not None
    assert network.links[place].length_m == 15
    assert any(text.startswith("p5.bends = 25 %") for text in solved.taken)


def test_what_it_rests_on_is_listed_with_its_source() -> None:
    solved = body(Plant(driven()))
    assert solved.taken and all("source" in text or "Engineering" in text for text in solved.taken)
    assert any(text.startswith("us.kv_m3h = 3") for text in solved.taken)
    assert not any("zv" in text for text in solved.taken)


def test_how_far_it_moves_by_the_defaults() -> None:
    solved = body(Plant(driven()))
    halved, doubled = solved.least_and_most
    flows = [each.runs[0].flow_lpm("hs") for each in (halved, solved, doubled)]
    assert all(flow is not None for flow in flows)
    assert flows == sorted(flows, key=lambda flow: -(flow or 0.0)) and flows[0] != flows[2]


@pytest.mark.parametrize(
    ("plant", "missing"),
    [
        (Plant(driven(pu={"shut_off_head_m": None})), {"pu.shut_off_head_m"}),
        # Without the pump's curve nothing further is asked for.
        (Plant(driven(pu={"shut_off_head_m": None}, pipe={"length_m": None})), {"pu.shut_off_head_m"}),
        (Plant(driven(pipes={"p3": {"length_m": None}})), {"p3.length_m"}),
        (Plant(driven(design={"return_temperature_c": None})), {"design.return_temperature_c"}),
        (Plant(driven(zone={"resistance_kpa": None})), {"zone.resistance_kpa"}),
    ],
)
def test_what_is_missing_is_named(plant: Plant, missing: set[str]) -> None:
    assert set(plant.solved.missing) == missing
    assert body(plant).runs == () and not body(plant).is_known


@pytest.mark.parametrize(
    ("plant", "why"),
    [
        (Plant(driven(design={"glycol_percent": 25})), "glycol"),
        (Plant(driven(design={"return_temperature_c": 75})), "hotter"),
        (Plant(driven(design={"flow_temperature_c": 170})), "liquid water"),
        (Plant(driven(pu={"shut_off_head_m": 0})), "a head or a most flow of 0"),
    ],
)
def test_what_cannot_be_computed_is_refused(plant: Plant, why: str) -> None:
    assert why in body(plant).refused and not body(plant).missing


def test_no_pump_no_body() -> None:
    assert Plant(driven("hs.flow zone.flow:return hs.return")).solved.bodies == ()


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.stem)
def test_every_sample_is_solved_and_balances(sample: object) -> None:
    plant = Plant(read(str(sample)))
    assert plant.solved.bodies and not plant.solved.missing
    tees = {id for id, part in plant.drawing.components.items() if part.kind.name == "tee"}
    for solved in plant.solved.bodies:
        for run in solved.runs:
            assert run.failure is None
            net = dict.fromkeys(tees, 0.0)
            for pipe in plant.drawing.pipes.values():
                flow = run.flow_lpm(pipe.id) or 0.0
                for end, sign in zip(pipe.joints, (-1, 1), strict=False):
                    if end.part in net:
                        net[end.part] += sign * flow
            assert max(map(abs, net.values())) < 1e-2


def test_a_heat_source_and_its_pump_in_series_have_one_flow() -> None:
    plant = Plant(read(data_path("samples") / "terrace-as-proposed.wetcircuit"))
    (heat,) = plant.circuit.devices(Role.HEATS)
    solved = plant.solved.at(heat)
    assert solved is not None
    for run in solved.runs:
        assert run.flow_lpm("source") == pytest.approx(run.flow_lpm("pump"), abs=1e-3)


def test_a_heat_source_with_its_pump_and_bypass_built_in_tells_its_flow() -> None:
    """It has several ways inside; the wide one is contracted away and tells nothing."""
    plant = Plant(read(data_path("samples") / "flat-over-workshop.wetcircuit"))
    flows = [
        run.flow_lpm("source") for body in plant.solved.bodies for run in body.runs if run.situation.heat_on
    ]
    assert flows and all(flow is not None and flow > 1 for flow in flows)


@pytest.mark.parametrize(
    ("kind", "data", "nominal_w"),
    [
        ("radiator", {"output_w": 1500}, 1500),
        ("heating_zone", {"output_kw": 9, "resistance_kpa": 8}, 9000),
    ],
)
@pytest.mark.parametrize(("flow_c", "return_c"), [(75, 65), (70, 50), (55, 45), (45, 35)])
def test_an_emitter_is_read_alike_by_its_figure_and_its_flow(
    kind: str, data: dict[str, float], nominal_w: float, flow_c: float, return_c: float
) -> None:
    """What is stated is the output at 50 K; flows carry what that comes to at the design's temperatures."""
    ring = driven(
        "hs.flow pu.in:out emitter.flow:return hs.return",
        parts={"emitter": (kind, data)},
        design={"flow_temperature_c": flow_c, "return_temperature_c": return_c},
    )
    mean = (flow_c + return_c) / 2
    given_w = nominal_w * ((mean - 20) / 50) ** 1.3
    assert number(one("emitter-output", ring), "Output") == pytest.approx(given_w, rel=1e-9)
    carried = given_w / (heat_capacity_j_kgk(mean) * (flow_c - return_c)) / density_kg_m3(mean) * 60_000
    assert body(Plant(ring)).design_lpm("emitter") == pytest.approx(carried, rel=1e-9)


def test_a_floor_that_takes_cooler_water_gives_what_it_states() -> None:
    zone = {"maximum_flow_temperature_c": 45}
    ring = driven("hs.flow pu.in:out zone.flow:return hs.return", zone={"output_kw": 9, **zone})
    carried = 9000 / (heat_capacity_j_kgk(67.5) * 15) / density_kg_m3(67.5) * 60_000
    assert body(Plant(ring)).design_lpm("zone") == pytest.approx(carried, rel=1e-9)


def test_a_room_thermostat_says_how_warm_the_room_is() -> None:
    def flow(set_c: float) -> float:
        ring = driven(
            "hs.flow pu.in:out zone.flow:return hs.return", controls={"rt": ("room_thermostat", ("pu",))}
        )
        control = replace(ring.controls["rt"], set_c=set_c, in_same_room_as=("zone",))
        found = body(Plant(replace(ring, controls={"rt": control}))).design_lpm("zone")
        assert found is not None
        return found

    assert flow(24) / flow(20) == pytest.approx((43.5 / 47.5) ** 1.3, rel=1e-9)
