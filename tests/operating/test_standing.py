"""Any position solved: as every situation is, and what hands shut beside; what the shut valves cut off."""

from __future__ import annotations

import json
from itertools import combinations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.circuit.isolation import reaches
from circuitcheck.circuit.situations import HEATING_ONLY, RUN_ON
from circuitcheck.cli import run
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.value import Joint
from circuitcheck.operating.cutting import cut_off_by
from circuitcheck.operating.positions import turnables
from circuitcheck.operating.readings import Readings, stopped
from circuitcheck.operating.standing import Operated
from circuitcheck.parts.kind import Role
from circuitcheck.report.flows import NO_WATER, flows
from circuitcheck.shipped import data_path
from tests.made import made
from tests.operating.asking import SAMPLES, operated, ring, sample, situation


@pytest.mark.parametrize("name", SAMPLES)
def test_each_situation_flows_as_the_figures_have_it(name: str) -> None:
    at_work, told = operated(name), flows(sample(name))
    assert [each.name for each in told.situations] == [each.name for each in at_work.situations]
    for each, positions in zip(told.situations, at_work.situations, strict=True):
        found = at_work.standing(positions).flows
        assert found.pipes.keys() == each.pipes.keys()
        for id, pipe in each.pipes.items():
            assert found.pipes[id].flow_lpm == pytest.approx(pipe.flow_lpm, rel=1e-6, abs=1e-6)
            lost = found.pipes[id].loss_kpa
            assert (lost is None) is (pipe.loss_kpa is None)
            assert lost is None or lost == pytest.approx(pipe.loss_kpa, rel=1e-5, abs=1e-6)


def test_a_valve_shut_by_hand_stops_its_branch_and_what_hangs_on_it() -> None:
    at_work = operated("terrace-as-proposed")
    both = at_work.standing(situation(at_work, "both"))
    assert both.through["rooms"] > 5 and both.through["store"] > 5
    shut = situation(at_work, "both").by_hand(shut=frozenset({"rooms"}))
    found = at_work.standing(shut)
    assert found.through["rooms"] == 0 and found.through["store"] > both.through["store"]
    alone = at_work.standing(situation(at_work, "hot water only"))
    assert found.through["store"] == pytest.approx(alone.through["store"], rel=1e-6)
    none = at_work.standing(situation(at_work, "both").by_hand(running=frozenset()))
    assert all(pipe.is_still for pipe in none.flows.pipes.values())


def test_what_flows_is_known_unless_a_pump_drives_heating_water_nobody_knows_how() -> None:
    drawing = ring()
    unknown = set_field(drawing, "p_rad", "length_m", None)
    for each, known in ((drawing, True), (unknown, False)):
        at_work = Operated(each)
        heating = situation(at_work, HEATING_ONLY)
        assert at_work.standing(heating).is_known is known
        assert at_work.standing(heating.by_hand(running=frozenset())).is_known


def test_numbers_that_are_missing_are_named_and_no_flow_is_told() -> None:
    at_work = Operated(ring(design={"flow_temperature_c": None}))
    found = at_work.standing(at_work.situations[0])
    assert found.missing == ("design.flow_temperature_c",) and not found.flows.pipes
    dry = Operated(made({"rad": "radiator"}, ""))
    assert dry.standing(dry.situations[0]).flows.fault == NO_WATER


@pytest.mark.parametrize("name", SAMPLES)
def test_what_a_witness_cuts_off_lies_on_the_other_side_from_what_the_finding_tells(name: str) -> None:
    """A finding tells the water that is left with the devices; at work the water without them is tinted."""
    plant = operated(name).plant
    for finding in analyse(sample(name)).findings:
        if finding.witness is None or not finding.cut_off_pipes:
            continue
        found = [
            each
            for each in cut_off_by(plant, frozenset(finding.witness.shut))
            if each.part == finding.components[0]
        ]
        assert found and all(each.part in each.parts for each in found)
        assert not any(set(each.pipes) & set(finding.cut_off_pipes) for each in found)


@pytest.mark.parametrize("name", SAMPLES)
def test_cut_off_is_as_trying_every_pair_of_valves_has_it(name: str) -> None:
    """By another way: from each device back, over every passage that does not stand shut."""
    plant = operated(name).plant
    circuit = plant.circuit
    labels = [each.label for each in turnables(circuit)]
    for shut in [frozenset(pair) for pair in combinations(labels, 2)][:60]:
        lacking = {(each.part, each.lacks) for each in cut_off_by(plant, shut)}
        for heat in circuit.devices(Role.HEATS):
            water = circuit.water(heat.other)
            valves = list(circuit.devices(Role.RELIEVES_HEATING))
            whole = [each for each in valves if circuit.water(each.node) in reaches(circuit, water)]
            left = [each for each in whole if water in reaches(circuit, circuit.water(each.node), shut)]
            if (heat.part, "safety valve") in lacking:
                assert whole and not left
            elif whole and not _is_open(plant, water):
                assert left


def _is_open(plant: object, water: int) -> bool:
    circuit = plant.circuit  # type: ignore[attr-defined]
    whole = reaches(circuit, water)
    return any(
        circuit.water(each.node) in whole
        for role in (Role.VENTS, Role.FEEDS)
        for each in circuit.devices(role)
    )


def test_nothing_is_cut_off_while_everything_stands_open() -> None:
    at_work = operated("terrace-as-proposed")
    assert not any(at_work.standing(each).cut_off for each in at_work.situations)
    found = Operated(ring())
    at = situation(found, HEATING_ONLY).by_hand(shut=frozenset({"iv_flow", "iv_return"}))
    (cut,) = found.standing(at).cut_off
    assert (cut.part, cut.lacks, cut.devices) == ("hs", "expansion vessel", ("vessel",))
    assert set(cut.pipes) == {"p_flow", "p_sv", "p_valve", "p_return"} and "hs" in cut.parts
    one = situation(found, HEATING_ONLY).by_hand(shut=frozenset({"iv_flow"}))
    assert not found.standing(one).cut_off


def test_gauges_read_as_the_pressure_map_says(capsys: pytest.CaptureFixture[str]) -> None:
    path = data_path("samples") / "terrace-as-proposed.wetcircuit"
    run(["sizes", "--as", "json", str(path)])
    told = json.loads(capsys.readouterr().out)
    (figure,) = [each for each in told["figures"] if each["figure"] == "pressure-map"]
    known = {each["name"]: each["value"] for each in figure["results"]}
    at_work = operated("terrace-as-proposed")
    fill = dict.fromkeys(at_work.drawing.pipes, 1.3)
    cold = {
        each.name: Readings(at_work.plant, at_work.standing(each)).gauges(fill)["gauge"]
        for each in at_work.situations
    }
    assert cold["at rest"] == pytest.approx(known["Gauge reads, cold, at rest"], rel=1e-3)
    running = [value for name, value in cold.items() if name not in ("at rest", "power off")]
    low, high = (float(each) for each in str(known["Gauge reads, cold, pumps running"]).split(" to "))
    assert round(min(running), 2) == low and round(max(running), 2) == high
    rest = Readings(at_work.plant, at_work.standing(situation(at_work, "at rest"))).by_pipe(fill)
    assert rest["p1"] == pytest.approx(1.3 - 0.0981 * 0.65, abs=0.1)


def test_once_the_pumps_stop_all_water_stands() -> None:
    at_work = operated("terrace-as-proposed")
    found = stopped(at_work.standing(situation(at_work, RUN_ON)))
    assert all(pipe.is_still for pipe in found.flows.pipes.values())
    assert (
        not found.positions.running
        and found.flows.shut == at_work.standing(situation(at_work, RUN_ON)).flows.shut
    )
    readings = Readings(at_work.plant, found)
    assert readings.at(Joint("vessel", "connection"), 1.3) == pytest.approx(1.3)
