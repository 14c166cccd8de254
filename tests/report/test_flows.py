"""Flows by pipe: every situation of the samples, what is written, once along a stretch, and what is missing."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

import pytest

from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.plant import Plant
from circuitcheck.report.flows import (
    NO_WATER,
    By,
    Flows,
    PipeFlow,
    SituationFlows,
    captions,
    flows,
    pipe_words,
    position_words,
    still,
    text,
)
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.made import made

SAMPLES = sorted(path.stem for path in data_path("samples").glob("*.wetcircuit"))


def sample(name: str) -> Drawing:
    return read(data_path("samples") / f"{name}.wetcircuit")


def situation(found: Flows, name: str) -> SituationFlows:
    told = found.named(name)
    assert told is not None
    return told


@pytest.mark.parametrize("name", SAMPLES)
def test_every_situation_has_a_name_of_its_own_and_the_solved_flows(name: str) -> None:
    drawing = sample(name)
    found, plant = flows(drawing), Plant(drawing)
    assert found.fault == "" and found.missing == ()
    names = [each.name for each in found.situations]
    assert len(set(names)) == len(names)
    assert [each.name for each in plant.situations.all] == [name.partition(":")[0] for name in names]
    for row, told in enumerate(found.situations):
        assert told.pipes and told.fault == ""
        for body in plant.solved.bodies:
            for id in body.pipes:
                assert told.pipes[id].flow_lpm == body.runs[row].flow_lpm(id)
                assert told.pipes[id].velocity_m_s == body.runs[row].velocity_m_s(id)


@pytest.mark.parametrize("name", SAMPLES)
def test_what_flows_into_a_tee_flows_out_of_it(name: str) -> None:
    drawing = sample(name)
    for told in flows(drawing).situations:
        for id, part in drawing.components.items():
            joined = drawing.pipes_of(id)
            if part.kind.name != "tee" or not all(pipe in told.pipes for pipe in joined):
                continue
            into = 0.0
            for pipe in joined:
                first = getattr(drawing.pipes[pipe].ends[0], "part", None)
                into += told.pipes[pipe].flow_lpm * (-1 if first == id else 1)
            assert into == pytest.approx(0, abs=1e-3)


def test_with_the_power_off_nothing_moves_and_nothing_is_written() -> None:
    drawing = sample("cottage")
    told = situation(flows(drawing), "power off")
    assert all(pipe.is_still for pipe in told.pipes.values())
    assert captions(drawing, told.pipes, By.FLOW, {}) == ()
    pale = still(drawing, told.pipes)
    assert told.pipes.keys() <= pale and "t_vessel" in pale


def test_a_tee_beside_moving_water_is_not_pale() -> None:
    drawing = sample("cottage")
    told = situation(flows(drawing), "heating only")
    pale = still(drawing, told.pipes)
    vessel = next(id for id in drawing.pipes_of("vessel"))
    assert vessel in pale and "t_vessel" not in pale
    assert not told.pipes[vessel].circulates


@pytest.mark.parametrize(
    ("pipe", "by", "said"),
    [
        (PipeFlow(12.34), By.FLOW, "12.3 l/min"),
        (PipeFlow(-12.34), By.FLOW, "12.3 l/min"),
        (PipeFlow(99.94), By.FLOW, "99.9 l/min"),
        (PipeFlow(99.96), By.FLOW, "100 l/min"),
        (PipeFlow(12, 0.546), By.VELOCITY, "0.55 m/s"),
        (PipeFlow(12), By.VELOCITY, ""),
        (PipeFlow(12, 0.5, 0.0004), By.LOSS, "under 1 Pa"),
        (PipeFlow(12, 0.5, 0.035), By.LOSS, "35 Pa"),
        (PipeFlow(12, 0.5, 0.9994), By.LOSS, "999 Pa"),
        (PipeFlow(12, 0.5, 0.9996), By.LOSS, "1.00 kPa"),
        (PipeFlow(12, 0.5, 9.96), By.LOSS, "10.0 kPa"),
        (PipeFlow(12), By.LOSS, ""),
        (PipeFlow(12, 0.5, 1), By.NOTHING, ""),
        (PipeFlow(0.004, 0.0, 0.0), By.FLOW, ""),
    ],
)
def test_what_is_written_beside_a_pipe(pipe: PipeFlow, by: By, said: str) -> None:
    assert text(pipe, by) == said
    assert text(pipe, by, ",") == said.replace(".", ",")


RING = """
    p1: hs.flow - t1.a
    p2: t1.b - rad.flow
    p3: rad.return - t2.a
    p4: t2.b - hs.return
    p5: t1.c - t2.c
    p6: t3.a - t3.b
"""


def ring() -> Drawing:
    return made(
        {"hs": "heat_source", "t1": "tee", "t2": "tee", "t3": "tee", "rad": "radiator"},
        RING.replace("rad.flow", "rad.a").replace("rad.return", "rad.b"),
    )


def written(pipes: Mapping[str, PipeFlow], by: By, service: Mapping[str, str]) -> list[tuple[str, str]]:
    return [(" ".join(each.pipes), each.text) for each in captions(ring(), pipes, by, service)]


def test_a_flow_is_written_once_along_a_stretch_and_never_across_a_branch_that_moves() -> None:
    round_it = {id: PipeFlow(10.0, 0.5, 0.1) for id in ("p1", "p2", "p3", "p4")}
    hot = {"p1": "flow", "p2": "flow", "p3": "return", "p4": "return"}
    idle = round_it | {"p5": PipeFlow(0.0)}
    assert written(idle, By.FLOW, hot) == [("p1 p2", "10.0 l/min"), ("p3 p4", "10.0 l/min")]
    # Each way half of it: the two halves are equal, and yet not one stretch.
    halved = idle | {id: PipeFlow(5.0, 0.25, 0.05) for id in ("p2", "p3", "p5")}
    assert [ids for ids, _ in written(halved, By.FLOW, hot | {"p5": "flow"})] == [
        "p1",
        "p2",
        "p3",
        "p4",
        "p5",
    ]
    narrow = idle | {"p2": PipeFlow(10.0, 0.9, 0.4)}
    assert [ids for ids, _ in written(narrow, By.VELOCITY, hot)] == ["p1", "p2", "p3 p4"]
    assert len(written(idle, By.LOSS, hot)) == 4


def test_without_the_pumps_numbers_they_are_named_and_no_pipe_is_told() -> None:
    full = sample("terrace-as-proposed")
    parts = {**full.components, "pump": replace(full.components["pump"], data={})}
    found = flows(replace(full, components=parts))
    assert set(found.missing) == {"pump.shut_off_head_m", "pump.maximum_flow_lpm"}
    assert found.situations and not any(each.pipes for each in found.situations)


def test_no_heating_water_is_said() -> None:
    assert flows(Drawing()).fault == NO_WATER
    assert flows(made({"m": "cold_main", "c": "cap"}, "m.out - c.a")).situations == ()


def test_situations_of_one_name_are_told_apart_by_their_valves() -> None:
    names = [each.name for each in flows(sample("terrace-as-found")).situations]
    apart = [name for name in names if name.startswith("pump run-on")]
    assert len(apart) == 2 and all("Three-port valve to" in name for name in apart)


def test_one_pipe_in_words_names_where_the_water_goes() -> None:
    drawing = sample("terrace-as-proposed")
    found = flows(drawing)
    told = situation(found, "heating only")
    pipe = next(id for id in drawing.pipes_of("pump") if not told.pipes[id].is_still)
    words = pipe_words(drawing, pipe, told)
    assert "l/min towards " in words and " m/s · " in words
    turned = replace(told, pipes={pipe: replace(told.pipes[pipe], flow_lpm=-told.pipes[pipe].flow_lpm)})
    assert pipe_words(drawing, pipe, turned) != words
    idle = {pipe: PipeFlow(0.0), "dead": PipeFlow(0.0, circulates=False)}
    assert pipe_words(drawing, pipe, replace(told, pipes=idle)) == "No flow in this pipe."
    assert "nothing goes round" in pipe_words(drawing, "dead", replace(told, pipes=idle))
    assert pipe_words(drawing, "p1", replace(told, pipes={})).startswith("Nothing is known")


def test_the_position_in_words_names_valves_and_pumps() -> None:
    drawing = sample("terrace-as-proposed")
    found = flows(drawing)
    assert position_words(drawing, situation(found, "heating only")) == "Shut: Store valve. Running: Pump."
    assert position_words(drawing, situation(found, "both")).startswith("No motor valve is shut.")
    assert position_words(drawing, situation(found, "power off")).endswith("Nothing runs.")
