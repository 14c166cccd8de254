"""Two drawings compared by content: what is the same thing, what differs, and what the fitter has to do."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.drawing.edits import move, relabel, remove, set_design, set_field
from circuitcheck.drawing.value import Drawing, End, Joint
from circuitcheck.figures.parts_list import PartsList
from circuitcheck.review.comparing import compare
from circuitcheck.review.findings_between import findings_between
from circuitcheck.review.work_lists import work_lists
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.made import made


@pytest.fixture(scope="module")
def cottage() -> Drawing:
    return read(data_path("samples") / "cottage.wetcircuit")


def renamed(drawing: Drawing, ids: Mapping[str, str]) -> Drawing:
    """The same drawn elsewhere: other ids, in the opposite order."""

    def name(id: str) -> str:
        return ids.get(id, id)

    def value(field: str, each: Any) -> Any:
        return name(each) if field in ("energy_cut_out", "over") else each

    parts = {
        name(part.id): replace(
            part, id=name(part.id), data={field: value(field, each) for field, each in part.data.items()}
        )
        for part in reversed(tuple(drawing.components.values()))
    }

    def end(each: End) -> End:
        return Joint(name(each.part), each.port) if isinstance(each, Joint) else each

    pipes = {
        name(pipe.id): replace(pipe, id=name(pipe.id), ends=(end(pipe.ends[0]), end(pipe.ends[1])))
        for pipe in reversed(tuple(drawing.pipes.values()))
    }
    controls = {
        id: replace(
            each,
            acts_on=tuple(map(name, each.acts_on)),
            in_same_room_as=tuple(map(name, each.in_same_room_as)),
        )
        for id, each in drawing.controls.items()
    }
    return replace(drawing, components=parts, pipes=pipes, controls=controls)


def counted(found: PartsList) -> dict[str, int]:
    return {line.kind.name: line.count for line in found.parts}


def test_nothing_differs_from_itself_in_any_order(cottage: Drawing) -> None:
    assert compare(cottage, cottage).is_nothing
    turned = replace(
        cottage,
        components=dict(reversed(tuple(cottage.components.items()))),
        pipes=dict(reversed(tuple(cottage.pipes.items()))),
    )
    assert compare(cottage, turned).is_nothing


def test_a_file_drawn_anew_with_other_ids_is_matched_by_what_it_holds(cottage: Drawing) -> None:
    ids = {id: f"x{number}" for number, id in enumerate((*cottage.components, *cottage.pipes))}
    found = compare(cottage, renamed(cottage, ids))
    assert not (found.removed or found.fitted or found.changed or found.repiped or found.moved)
    assert dict(found.renumbered) == ids


def test_ids_that_agree_by_chance_are_not_believed(cottage: Drawing) -> None:
    """The pipes' ids are dealt out anew, as they are where two people draw the same house."""
    pipes = list(cottage.pipes)
    ids = dict(zip(pipes, [*pipes[7:], *pipes[:7]], strict=True))
    found = compare(cottage, renamed(cottage, ids))
    assert not (found.removed or found.fitted or found.changed or found.repiped)
    assert {mine: its for mine, its in ids.items() if mine != its} == dict(found.renumbered)


def test_a_field_a_name_and_a_place_that_differ(cottage: Drawing) -> None:
    vessel = next(part.id for part in cottage.components.values() if part.kind.name == "expansion_vessel")
    edited = set_field(cottage, vessel, "volume_l", 35)
    edited = relabel(edited, vessel, "Large vessel")
    edited = set_design(edited, "static_height_m", 7)
    edited = move(edited, (vessel,), 1, 0)
    found = compare(cottage, edited)
    told = {(each.new_id, each.field, each.new) for each in found.changed}
    assert told == {
        (vessel, "volume_l", 35),
        (vessel, "label", "Large vessel"),
        ("", "design.static_height_m", 7),
    }
    assert (vessel, vessel) in found.moved and not (found.removed or found.fitted)


def simple(valve: Mapping[str, Any] | None = None) -> Drawing:
    return made(
        {"hs": "heat_source", "iv": ("isolating_valve", valve or {}), "r": "radiator"},
        "p1: hs.flow - iv.a\np2: iv.b - r.flow\np3: r.return - hs.return",
        pipe_data={"p1": {"size_mm": 22, "length_m": 2}, "p2": {"size_mm": 22, "length_m": 3}},
    )


def test_a_valve_cut_in_is_fitted_and_its_pipe_repiped() -> None:
    old = made({"hs": "heat_source", "r": "radiator"}, "p1: hs.flow - r.flow\np3: r.return - hs.return")
    new = made(
        {"hs": "heat_source", "r": "radiator", "iv": "isolating_valve"},
        "p1: hs.flow - iv.a\np2: iv.b - r.flow\np3: r.return - hs.return",
    )
    found = compare(old, new)
    assert found.fitted == ("iv", "p2") and not found.removed
    assert [(each.new_id, each.old_ends, each.new_ends) for each in found.repiped] == [
        ("p1", ("hs.flow", "r.flow"), ("hs.flow", "iv.a"))
    ]
    back = compare(new, old)
    assert back.removed == ("iv", "p2") and not back.fitted


def test_a_pipe_drawn_from_its_other_end_is_the_same_pipe() -> None:
    new = made(
        {"hs": "heat_source", "iv": "isolating_valve", "r": "radiator"},
        "p1: iv.a - hs.flow\np2: iv.b - r.flow\np3: r.return - hs.return",
        pipe_data={"p1": {"size_mm": 22, "length_m": 2}, "p2": {"size_mm": 22, "length_m": 3}},
    )
    found = compare(simple(), new)
    assert [(each.new_id, each.field) for each in found.changed] == [
        ("p1", "direction")
    ] and not found.repiped


def test_another_kind_under_the_same_id_is_taken_out_and_fitted() -> None:
    new = made({"hs": "heat_source", "iv": "check_valve", "r": "radiator"}, "")
    found = compare(replace(simple(), pipes={}), new)
    assert found.removed == ("iv",) and found.fitted == ("iv",)


@pytest.mark.parametrize(
    ("old", "new", "same"),
    [
        ({"volume_l": 12}, {"volume_l": 18}, False),
        ({}, {"volume_l": 18}, True),
        ({"volume_l": 12, "precharge_bar": 0.8}, {"volume_l": 12, "precharge_bar": 1}, True),
        ({"volume_l": 12}, {"volume_l": 12, "note": "in the loft"}, True),
    ],
)
def test_a_part_is_replaced_only_where_another_must_be_ordered(
    old: dict[str, Any], new: dict[str, Any], same: bool
) -> None:
    found = compare(made({"v": ("expansion_vessel", old)}, ""), made({"v": ("expansion_vessel", new)}, ""))
    lists = work_lists(found)
    assert counted(lists.strip_out) == ({} if same else {"expansion_vessel": 1})
    assert counted(lists.fit) == ({} if same else {"expansion_vessel": 1})
    assert lists.replaced == (() if same else (("v", "v"),))


def test_pipe_of_another_size_comes_out_and_goes_in_by_length() -> None:
    lists = work_lists(compare(simple(), set_field(simple(), "p2", "size_mm", 15)))
    (out,), (into,) = lists.strip_out.pipes, lists.fit.pipes
    assert (out.size_mm, out.length_m, out.ids) == (22, 3, ("p2",))
    assert (into.size_mm, into.length_m, into.ids) == (15, 3, ("p2",))
    assert not lists.altered


def test_pipe_cut_shorter_is_in_neither_list() -> None:
    lists = work_lists(compare(simple(), set_field(simple(), "p2", "length_m", 2.5)))
    assert not lists.strip_out.pipes and not lists.fit.pipes
    assert [(each.new_id, each.old_m, each.new_m) for each in lists.altered] == [("p2", 3, 2.5)]


def test_a_tee_of_other_sizes_is_another_tee() -> None:
    def tee(size: float) -> Drawing:
        return made(
            {"t": "tee", "a": "cap", "b": "cap", "c": "cap"},
            "p1: t.a - a.connection\np2: t.b - b.connection\np3: t.branch - c.connection",
            pipe_data={id: {"size_mm": 22} for id in ("p1", "p2")} | {"p3": {"size_mm": size}},
        )

    lists = work_lists(compare(tee(22), tee(15)))
    assert [line.sizes_mm for line in lists.strip_out.tees] == [(22, 22, 22)]
    assert [line.sizes_mm for line in lists.fit.tees] == [(22, 22, 15)]


def between(old: Drawing, new: Drawing) -> Any:
    return findings_between(compare(old, new), analyse(old).findings, analyse(new).findings)


def test_findings_come_go_and_stay(cottage: Drawing) -> None:
    plugged = read(data_path("samples") / "cottage-safety-valve-plugged.wetcircuit")
    found = between(cottage, plugged)
    assert [each.check for each in found.came] == ["discharge-absent"] and not found.went
    found = between(plugged, cottage)
    assert [each.check for each in found.went] == ["discharge-absent"] and not found.came
    assert len(between(plugged, plugged).stayed) == 1


def test_a_finding_on_a_part_of_another_id_is_the_same_finding() -> None:
    plugged = read(data_path("samples") / "cottage-safety-valve-plugged.wetcircuit")
    found = between(plugged, renamed(plugged, {"safety_valve": "sv1"}))
    assert len(found.stayed) == 1 and not (found.came or found.went)


def test_removing_a_part_tells_it_and_its_pipes(cottage: Drawing) -> None:
    valve = next(part.id for part in cottage.components.values() if part.kind.name == "bypass_valve")
    found = compare(cottage, remove(cottage, (valve,)))
    assert valve in found.removed and not set(found.fitted) & set(cottage.components)
