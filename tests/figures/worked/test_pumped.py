"""The figures of solved flows: by hand, by setting what they say and solving again, and on every sample."""

from __future__ import annotations

from math import sqrt
from typing import Any

import pytest

from circuitcheck.circuit.solver.network import kv_quadratic
from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.catalogue import figures, worked
from circuitcheck.figures.design_flows import design_flows
from circuitcheck.figures.figure import Figure
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.solved import SolvedBody
from circuitcheck.shipped import data_path
from circuitcheck.sizing.pipe import GRAVITY_M_S2
from circuitcheck.sizing.water import density_kg_m3
from circuitcheck.storage.reading import read
from tests.checks.flow.driven import driven
from tests.figures.worked.asking import number, one, told, values

FLOW_FIGURES = (
    "flows",
    "noise",
    "pump-duty",
    "index-circuit",
    "source-flow-at-run-on",
    "bypass-setting",
    "balancing",
)
SAMPLES = sorted(data_path("samples").glob("*.wetcircuit"))
HEATING, TOGETHER, RUN_ON = "heating only", "heating and hot water together", "pump run-on"
RING = "hs.flow pu.in:out zv.in:out zone.flow:return hs.return"
DENSITY = density_kg_m3(67.5)


def solved(drawing: Drawing) -> SolvedBody:
    (only,) = Plant(drawing).solved.bodies
    return only


def ring(**changes: Any) -> Drawing:
    """A pump of 5 m, a zone valve of kv 2 and a zone of 8 kPa at 9 kW, on pipes of no length."""
    told = {"zv": {"kv_m3h": 2}, "pipe": {"length_m": 0}, "hs": {"output_kw": 0}, **changes}
    return driven(RING, **told)


def test_duty_of_a_ring_by_hand() -> None:
    drawing = ring()
    figure = one("pump-duty", drawing)
    flow = solved(drawing).design_lpm("zone")
    assert flow is not None
    metre = GRAVITY_M_S2 * DENSITY
    needed = kv_quadratic(2) * (flow / 60_000) ** 2 + 8000
    assert number(figure, f"{HEATING}: flow needed") == pytest.approx(flow, rel=3e-4)
    assert number(figure, f"{HEATING}: head needed") == pytest.approx(needed / metre, rel=3e-4)
    spare = 5 * (1 - (flow / 40) ** 2) - needed / metre
    assert number(figure, f"{HEATING}: head to spare") == pytest.approx(spare, rel=3e-4)
    resistance = 5 * metre / (40 / 60_000) ** 2 + needed / (flow / 60_000) ** 2
    works = sqrt(5 * metre / resistance) * 60_000
    assert number(figure, f"{HEATING}: flow") == pytest.approx(works, rel=3e-4)
    assert number(figure, f"{HEATING}: head") == pytest.approx(5 * (1 - (works / 40) ** 2), rel=3e-4)


def test_index_circuit_of_a_ring_by_hand() -> None:
    drawing = ring()
    results = values(one("index-circuit", drawing))
    flow = solved(drawing).design_lpm("zone") or 0.0
    valve = next(float(value) for name, value in results.items() if name.startswith("zone valve zv"))
    zone = next(float(value) for name, value in results.items() if name.startswith("heating zone zone,"))
    assert valve == pytest.approx(kv_quadratic(2) * (flow / 60_000) ** 2 / 1000, rel=3e-4)
    assert zone == pytest.approx(8, rel=3e-4)
    assert results["All losses together"] == pytest.approx(valve + zone, rel=3e-4)


def losses(figure: Figure) -> float:
    return sum(float(each.value) for each in figure.results[4:] if not each.name.startswith("Next"))


def test_the_index_circuit_adds_up_and_names_the_longer_way() -> None:
    near = one("index-circuit", driven(design={"return_temperature_c": 55}))
    assert losses(near) == pytest.approx(number(near, "All losses together"), rel=1e-6)
    far = one("index-circuit", driven(pipes={"p5": {"length_m": 60}}))
    assert str(values(far)["Decides"]).startswith("heating zone zone")
    assert number(far, "All losses together") > number(near, "All losses together")


def test_a_pump_with_just_the_head_that_is_needed_serves() -> None:
    """The curve is moved until it passes through the needed point: the zone then gets its design flow."""
    figure = one("pump-duty", ring())
    flow, head = (number(figure, f"{HEATING}: {what} needed") for what in ("flow", "head"))
    just = ring(pu={"shut_off_head_m": head / (1 - (flow / 40) ** 2)})
    assert number(one("flows", just), f"{HEATING}: heating zone zone") == pytest.approx(flow, rel=1e-5)
    weak = ring(pu={"shut_off_head_m": 0.5 * head})
    assert f"{HEATING}: head short by" in values(one("pump-duty", weak))


def test_valves_set_as_balancing_says_give_design_flows() -> None:
    """Each kv that the figure tells is drawn as a valve in series; solved again, all get their design."""
    ways = (
        "hs.flow pu.in:out t3.a:b {}zone.flow:return t4.a:b hs.return",
        "t3.branch {}far.flow:return t4.branch",
    )
    parts: dict[str, Any] = {"far": ("heating_zone", {"output_kw": 4, "resistance_kpa": 3})}
    bare = driven(*(way.format("") for way in ways), parts=parts)
    results = values(one("balancing", bare))
    settings = {
        part: results[f"heating zone {part}: kv of a valve in series with it"] for part in ("zone", "far")
    }
    set_to = {
        f"b{part}": ("balancing_valve", {"kv_m3h": kv})
        for part, kv in settings.items()
        if isinstance(kv, float)
    }
    assert len(set_to) == 2
    balanced = driven(ways[0].format("bzone.a:b "), ways[1].format("bfar.a:b "), parts={**parts, **set_to})
    body = solved(balanced)
    (run,) = [run for run in body.runs if run.situation.name == HEATING]
    for part in ("zone", "far"):
        # Two short pipes more than in the bare drawing, at each valve.
        assert run.flow_lpm(part) == pytest.approx(body.design_lpm(part), rel=0.02)


@pytest.mark.parametrize("head", [4, 5, 6])
def test_a_bypass_set_between_the_bounds_serves_both(head: float) -> None:
    pump = {"shut_off_head_m": head, "maximum_flow_lpm": 40}
    figure = one("bypass-setting", driven(pu=pump))
    results = values(figure)
    low = next(float(value) for name, value in results.items() if name.startswith("Across it"))
    high = next(float(value) for name, value in results.items() if name.startswith("For the least flow"))
    assert low < high and number(figure, "In the middle") == pytest.approx((low + high) / 2)

    def flow(set_kpa: float, situation: str, part: str) -> float:
        body = solved(driven(pu=pump, bv={"set_difference_kpa": set_kpa}))
        return min(run.flow_lpm(part) or 0.0 for run in body.runs if run.situation.name == situation)

    assert flow(low * 1.01, HEATING, "bv") == 0
    assert flow(low * 0.95, HEATING, "bv") > 0
    assert flow(high, RUN_ON, "hs") == pytest.approx(5, rel=0.01)
    assert flow(high * 1.03, RUN_ON, "hs") < 5 < flow(high * 0.97, RUN_ON, "hs")


def test_where_no_setting_serves_it_says_so() -> None:
    steep = driven(pu={"shut_off_head_m": 5, "maximum_flow_lpm": 40}, hs={"minimum_flow_lpm": 22})
    assert values(one("bypass-setting", steep))["Set difference that serves both"] == "none does"
    beyond = driven(hs={"minimum_flow_lpm": 60})
    results = values(one("bypass-setting", beyond))
    assert "too little" in str(results["At run-on"])
    assert results["Set difference that serves both"] == "none does"


def test_a_bypass_where_no_pump_runs_on_or_the_source_has_its_own() -> None:
    for source in ({"pump_overrun_min": 0}, {"built_in": ["bypass"]}):
        results = values(one("bypass-setting", driven(hs=source)))
        assert "any setting" in str(results["At run-on"])


def test_flow_at_run_on() -> None:
    figure = one("source-flow-at-run-on", driven())
    flow = number(figure, f"{RUN_ON}: flow")
    assert flow == pytest.approx(number(figure, f"{RUN_ON}: of it through bypass valve bv"), abs=1e-6)
    assert number(figure, f"{RUN_ON}: to spare") == pytest.approx(flow - 5)
    shut = one("source-flow-at-run-on", driven(bv={"set_difference_kpa": 90}))
    assert number(shut, f"{RUN_ON}: flow") == 0 and number(shut, f"{RUN_ON}: short by") == 5
    assert told("source-flow-at-run-on", driven(hs={"pump_overrun_min": 0})) == ()
    own = one("source-flow-at-run-on", driven(hs={"built_in": ["bypass"]}, bv={"set_difference_kpa": 90}))
    assert "of its own is built in" in own.limits and not any("short by" in name for name in values(own))


def test_velocity_and_the_bore_that_is_quiet() -> None:
    drawing = driven(pipes={"p5": {"size_mm": 15}})
    figure = one("noise", drawing)
    body = solved(drawing)
    fastest = max(run.velocity_m_s("p5") or 0.0 for run in body.runs)
    assert number(figure, "Fastest of all") == pytest.approx(fastest)
    too_fast = [each for each in figure.results if each.name.startswith("Too fast")]
    assert fastest > 1.5 and float(too_fast[0].value) == pytest.approx(13.6 * sqrt(fastest / 1.5))
    assert not any(each.name.startswith("Too fast") for each in one("noise", ring(pipe={})).results)


def test_flows_name_the_laws_of_friction() -> None:
    slow = one("flows", driven(pu={"shut_off_head_m": 0.05, "maximum_flow_lpm": 2}))
    assert "laminar" in str(values(slow)[f"{HEATING}: pipes by law of friction"])
    fast = values(one("flows", driven()))
    assert "Colebrook-White" in str(fast[f"{HEATING}: pipes by law of friction"])
    assert f"{HEATING}: unvented store us" not in fast  # what is not called and gets nothing is left out


def test_what_it_rests_on_is_told_with_how_far_it_moves() -> None:
    figure = one("flows", driven())
    shares = {each.by: each.share for each in figure.moves}
    assert shares["half as much"] > 0 > shares["twice as much"]
    assert any(each.origin.startswith("usual value") for each in figure.inputs)


@pytest.mark.parametrize("name", FLOW_FIGURES)
@pytest.mark.parametrize(
    ("changes", "missing", "why"),
    [
        ({"pu": {"shut_off_head_m": None}}, {"pu.shut_off_head_m"}, ""),
        ({"pipes": {"p3": {"length_m": None}}}, {"p3.length_m"}, ""),
        ({"design": {"glycol_percent": 25}}, set(), "glycol"),
    ],
)
def test_what_keeps_it_from_being_worked(name: str, changes: Any, missing: set[str], why: str) -> None:
    for figure in told(name, driven(**changes)):
        assert figure.refused and set(figure.missing) == missing and why in figure.refused


def test_design_flows_that_are_missing_are_named() -> None:
    figure = one("balancing", driven(us={"coil_power_kw": None}))
    assert figure.missing == ("us.coil_power_kw",)


def test_heads_under_too_much_pressure_are_named() -> None:
    drawing = driven(
        zone={"all_thermostatic": True}, pu={"shut_off_head_m": 9}, bv={"set_difference_kpa": 85}
    )
    results = values(one("balancing", drawing))
    across = float(results["heating zone zone: across its head, all heads shut"])
    assert across > 20 and "heating zone zone: above 20 kPa" in results
    quiet = driven(zone={"all_thermostatic": True}, bv={"set_difference_kpa": 15})
    low = values(one("balancing", quiet))
    assert float(low["heating zone zone: across its head, all heads shut"]) < 20


def test_pumps_behind_a_separator_have_a_duty_each() -> None:
    """Of the guest house: each pump serves its own, and those built into the sources serve these."""
    plant = Plant(read(data_path("samples") / "guest-house.wetcircuit"))
    (body,) = plant.solved.bodies
    flows = design_flows(body)
    for run in flows.runs:
        for pump in body.pumps:
            need = flows.needed(run, pump)
            if need is None:
                continue
            assert not need.why
            own = pump if pump.startswith("source") else need.decides
            assert need.flow_m3_s == pytest.approx(flows.held(run)[own], rel=1e-3)
            assert sum(loss.pascals for loss in flows.circuit(need)) == pytest.approx(
                need.pressure_pa, rel=1e-4
            )


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.stem)
def test_every_sample_is_worked(sample: Any) -> None:
    plant = Plant(read(sample))
    for name in FLOW_FIGURES:
        for figure in worked(figures()[name], plant):
            assert not figure.refused and figure.results and figure.source and figure.limits, figure
