"""The parts list: what is ordered alike counts together, and what is not known is counted and named."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.parts_list import PartsList, parts_list
from circuitcheck.geometry import Point
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.made import made

SAMPLES = sorted(data_path("samples").glob("*.wetcircuit"))


def counted(found: PartsList) -> dict[tuple[str, tuple[float | None, ...]], int]:
    """How many of each kind and size."""
    totals: dict[tuple[str, tuple[float | None, ...]], int] = {}
    for line in found.parts:
        key = (line.kind.name, line.sizes_mm)
        totals[key] = totals.get(key, 0) + line.count
    return totals


def row_of_valves(*sizes: float | None, **data: Any) -> Drawing:
    """Isolating valves, one after the other, between pipes of these sizes."""
    parts = {f"v{place}": ("isolating_valve", data) for place in range(len(sizes) - 1)}
    ends = ["0,0", *(end for id in parts for end in (f"{id}.a", f"{id}.b")), "90,0"]
    pipes = "\n".join(f"{ends[place]} - {ends[place + 1]}" for place in range(0, len(ends), 2))
    known = {f"p{n}": {"size_mm": size} for n, size in enumerate(sizes, 1) if size is not None}
    return made(parts, pipes, pipe_data=known)


def test_nothing_drawn_is_an_empty_list() -> None:
    found = parts_list(Drawing())
    assert (found.parts, found.tees, found.pipes, found.no_length) == ((), (), (), ())


def test_valves_count_by_the_size_of_their_pipes() -> None:
    found = parts_list(row_of_valves(22, 22, 22, 15, 15, None))
    assert counted(found) == {
        ("isolating_valve", (22,)): 2,
        ("isolating_valve", (22, 15)): 1,
        ("isolating_valve", (15,)): 1,
        ("isolating_valve", (15, None)): 1,
    }


def test_a_reducing_valve_turned_round_is_the_same_valve() -> None:
    one, other = parts_list(row_of_valves(15, 22)), parts_list(row_of_valves(22, 15))
    assert counted(one) == counted(other) == {("isolating_valve", (22, 15)): 1}


def test_what_decides_the_order_parts_and_what_does_not_joins() -> None:
    drawing = made(
        {
            "a": ("safety_valve", {"set_pressure_bar": 3}),
            "b": "safety_valve",
            "c": ("safety_valve", {"set_pressure_bar": 6, "note": "upstairs"}),
            "d": ("zone_valve", {"serves": "heating"}),
            "e": ("zone_valve", {"serves": "hot_water", "height_m": 2}),
            "f": ("isolating_valve", {"secured": True}),
            "g": "isolating_valve",
        },
        "",
    )
    lines = {(line.kind.name, line.ids) for line in parts_list(drawing).parts}
    assert lines == {
        ("safety_valve", ("a", "b")),
        ("safety_valve", ("c",)),
        ("zone_valve", ("d", "e")),
        ("isolating_valve", ("f",)),
        ("isolating_valve", ("g",)),
    }


def test_a_usual_value_that_was_taken_is_told() -> None:
    (line,) = parts_list(
        made({"a": ("safety_valve", {"set_pressure_bar": 3}), "b": "safety_valve"}, "")
    ).parts
    told = {datum.field.name: (datum.value, datum.usual) for datum in line.data}
    assert told["set_pressure_bar"] == (3, True)
    assert told["outlet_size_mm"] == (15, True)


def test_what_decides_and_is_not_known_stays_not_known() -> None:
    (line,) = parts_list(made({"v": "expansion_vessel"}, "")).parts
    assert {datum.field.name: datum.value for datum in line.data} == {"volume_l": None, "precharge_bar": None}
    assert line.sizes_mm == ()


@pytest.mark.parametrize(
    ("run", "branch", "called"),
    [
        ((22, 22), 15, (22, 22, 15)),
        ((15, 22), 22, (22, 15, 22)),
        ((22, 15), 22, (22, 15, 22)),
        ((22, None), 15, (22, None, 15)),
        ((22, 22), None, (22, 22, None)),
    ],
)
def test_a_tee_is_called_by_its_run_and_then_its_branch(
    run: tuple[float | None, float | None], branch: float | None, called: tuple[float | None, ...]
) -> None:
    sizes = {"p1": run[0], "p2": run[1], "p3": branch}
    drawing = made(
        {"t": "tee"},
        "0,0 - t.a\nt.b - 9,0\nt.branch - 5,5",
        pipe_data={id: {"size_mm": size} for id, size in sizes.items() if size},
    )
    (tee,) = parts_list(drawing).tees
    assert (tee.sizes_mm, tee.count, tee.materials) == (called, 1, ("copper",))


def test_pipe_adds_up_by_material_and_size() -> None:
    drawing = made(
        {},
        "\n".join(f"0,{y} - 9,{y}" for y in range(6)),
        pipe_data={
            "p1": {"size_mm": 22, "length_m": 1.25, "bends": 2, "insulated": True},
            "p2": {"size_mm": 22, "length_m": 2.5, "material": "copper"},
            "p3": {"size_mm": 15, "length_m": 0.1, "bends": 0},
            "p4": {"size_mm": 22, "material": "steel", "bends": 1},
            "p5": {"size_mm": 22, "material": "plastic", "bore_mm": 16, "length_m": 4, "bends": 3},
            "p6": {"material": None, "length_m": 1},
        },
    )
    lines = {(line.material, line.size_mm): line for line in parts_list(drawing).pipes}
    assert list(lines) == [("copper", 22), ("copper", 15), ("plastic", 22), ("steel", 22), (None, None)]
    copper = lines["copper", 22]
    assert (copper.length_m, copper.bends, copper.no_bends, copper.no_length) == (3.75, 2, ("p2",), ())
    assert (copper.insulated_m, copper.usual_material) == (1.25, ("p1",))
    assert (lines["steel", 22].length_m, lines["steel", 22].no_length) == (0, ("p4",))
    assert lines["plastic", 22].bore_mm == 16
    assert parts_list(drawing).no_length == ("p4",) and parts_list(drawing).usual_material == ("p1", "p3")


def test_plastic_of_another_bore_or_fit_for_hot_discharge_is_another_pipe() -> None:
    told = [{"bore_mm": 12}, {"bore_mm": 13}, {"bore_mm": 13, "heatproof": True}, {"bore_mm": 13}]
    drawing = made(
        {},
        "\n".join(f"0,{y} - 9,{y}" for y in range(4)),
        pipe_data={f"p{n}": {"size_mm": 15, "material": "plastic", **each} for n, each in enumerate(told, 1)},
    )
    assert sorted(line.ids for line in parts_list(drawing).pipes) == [("p1",), ("p2", "p4"), ("p3",)]


def test_a_length_is_measured_only_at_a_scale_and_along_corners_a_person_set() -> None:
    drawing = made({}, "0,0 - 3,4")
    assert parts_list(drawing).no_length == ("p1",)
    scaled = replace(drawing, sheet={"metres_per_square": 0.5})
    assert parts_list(scaled).no_length == ("p1",)
    pipe = replace(scaled.pipes["p1"], via=(Point(3, 0),))
    (line,) = parts_list(replace(scaled, pipes={"p1": pipe})).pipes
    assert (line.length_m, line.bends, line.measured, line.no_length) == (3.5, 1, ("p1",), ())


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_everything_drawn_is_in_the_list_once(path: Any) -> None:
    drawing = read(path)
    found = parts_list(drawing)
    told = [id for line in found.parts for id in line.ids] + [id for tee in found.tees for id in tee.ids]
    assert sorted(told) == sorted([*drawing.components, *drawing.controls])
    assert sorted(id for line in found.pipes for id in line.ids) == sorted(drawing.pipes)
    given = sum(pipe.data.get("length_m") or 0 for pipe in drawing.pipes.values())
    measured = {id for line in found.pipes for id in line.measured}
    if not measured:
        assert sum(line.length_m for line in found.pipes) == pytest.approx(given)
