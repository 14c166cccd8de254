"""Placing, moving, turning, mirroring, removing and filling in."""

from __future__ import annotations

from dataclasses import replace

import pytest

from circuitcheck.drawing import edits
from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.value import Acceptance, Drawing, Joint, Note
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds
from tests.drawing.invariants import broken
from tests.drawing.making import control, drawing, part, pipe


def valve_between() -> Drawing:
    """A pump, an isolating valve and a radiator in a row, cornered pipes between them."""
    return drawing(
        [
            part("pu", "pump", (0, 0)),
            part("iv", "isolating_valve", (6, 0)),
            part("ra", "radiator", (14, -6)),
        ],
        [
            pipe("p1", ("pu.out", "iv.a"), [], size_mm=22, length_m=1.2, rise_m=0.5, bends=0),
            pipe("p2", ("iv.b", "ra.flow"), [(12, 0)], size_mm=22, length_m=2.1, rise_m=1, bends=1),
        ],
        [control("ct", "room_thermostat", "pu", "iv")],
    )


def with_tee() -> Drawing:
    return drawing(
        [
            part("iv", "isolating_valve", (0, 0)),
            part("t", "tee", (5, 0)),
            part("zv", "zone_valve", (10, 0)),
            part("dr", "drain", (5, 6)),
        ],
        [
            pipe("p1", ("iv.b", "t.a"), size_mm=22, material="copper", bends=1),
            pipe("p2", ("t.b", "zv.in"), size_mm=22, bends=1),
            pipe("p3", ("t.branch", "dr.connection"), size_mm=15),
        ],
    )


def test_a_new_id_is_nothing_in_use_and_nothing_spoken_of() -> None:
    base = drawing([part("tee1", "tee")], [pipe("tee2", ((0, 0), (1, 0)))], [control("tee3", "programmer")])
    base = replace(base, notes=(Note("tee4", on=("tee5",)),), acceptances=(Acceptance("x", on=("tee6",)),))
    assert edits.new_id(base, "tee") == "tee7"


def test_placing_puts_the_part_last_and_shares_the_rest() -> None:
    before = valve_between()
    joined = before.joined
    after, id = edits.place(before, kinds()["zone_valve"], Point(3, 4), turn=90, data={"serves": "heating"})
    assert list(after.components) == ["pu", "iv", "ra", id]
    assert after.components[id].turn == 90
    assert after.components["pu"] is before.components["pu"]
    assert after.pipes is before.pipes
    assert after.joined is joined


@pytest.mark.parametrize(
    ("kind", "turn", "data"),
    [
        ("programmer", 0, {}),
        ("tee", 45, {}),
        ("zone_valve", 0, {"serves": "garden"}),
        ("zone_valve", 0, {"colour": "red"}),
        ("pump", 0, {"shut_off_head_m": -1}),
    ],
)
def test_what_cannot_be_placed_is_refused(kind: str, turn: int, data: dict[str, object]) -> None:
    with pytest.raises(EditError):
        edits.place(Drawing(), kinds()[kind], Point(0, 0), turn=turn, data=data)


def test_moving_both_ends_carries_the_corners() -> None:
    before = valve_between()
    after = edits.move(before, ["iv", "ra"], 2, 3)
    assert after.pipes["p2"].via == (Point(14, 3),)
    assert after.components["pu"] is before.components["pu"]


def test_moving_one_end_keeps_the_line_square() -> None:
    after = edits.move(valve_between(), ["ra"], 3, -1)
    assert after.pipes["p2"].via == (Point(15, 0),)
    after = edits.move(valve_between(), ["iv"], 0, 2)
    assert after.pipes["p2"].via == (Point(12, 2),)
    # The straight pipe has no corner that could give way: the program routes it.
    assert after.pipes["p1"].via is None


def test_a_straight_run_of_corners_gets_a_bend_where_it_must() -> None:
    base = drawing(
        [part("a", "isolating_valve", (0, 0)), part("b", "isolating_valve", (9, 0))],
        [pipe("p", ("a.b", "b.a"), [(4, 0)])],
    )
    assert edits.move(base, ["b"], 0, 3).pipes["p"].via == (Point(4, 0), Point(4, 3))
    assert edits.move(base, ["b"], 2, 0).pipes["p"] is base.pipes["p"]


def test_a_free_end_moves_with_its_pipe_only() -> None:
    base = drawing([part("a", "isolating_valve", (0, 0))], [pipe("p", ("a.b", (5, 0)))])
    assert edits.move(base, ["p"], 1, 1).pipes["p"].ends[1] == Point(6, 1)
    assert edits.move(base, ["a"], 1, 1).pipes["p"] is base.pipes["p"]


def test_moving_nothing_or_nowhere_is_the_same_drawing() -> None:
    base = valve_between()
    assert edits.move(base, ["iv"], 0, 0) is base
    assert edits.move(base, [], 1, 0) is base
    assert edits.turn(base, ["p1"]) is base


def test_a_part_turns_about_itself() -> None:
    after = edits.turn(valve_between(), ["iv"])
    assert (after.components["iv"].at, after.components["iv"].turn) == (Point(6, 0), 90)


@pytest.mark.parametrize("places", [((0, 0), (4, 2)), ((0, 0), (3, 0)), ((1, 0), (1, 5)), ((2, 3), (9, 5))])
def test_four_turns_of_a_group_give_it_back(places: tuple[tuple[float, float], ...]) -> None:
    base = drawing(
        [part(f"v{number}", "isolating_valve", at) for number, at in enumerate(places)],
        [pipe("p", ("v0.b", "v1.a"), [(2, 0), (2, 2)])],
    )
    seen = [base]
    for _ in range(4):
        seen.append(edits.turn(seen[-1], base.components))
    assert seen[4] == base
    assert seen[2] != base
    for turned in seen:
        for moved in turned.components.values():
            assert moved.at is not None and moved.at.x % 1 == 0 and moved.at.y % 1 == 0


@pytest.mark.parametrize("turn", [0, 90, 180, 270])
def test_mirroring_puts_every_port_on_the_other_side(turn: int) -> None:
    base = drawing([part("v", "three_port_valve", (4, 4, turn)), part("w", "radiator", (9, 4))])
    after = edits.mirror(base, ["v", "w"])
    for id, before in base.components.items():
        for port in before.kind.ports:
            old, new = before.port_at(port.name), after.components[id].port_at(port.name)
            assert old is not None and new is not None
            assert new == (13 - old.x, old.y)
    assert edits.mirror(after, ["v", "w"]) == base


def test_taking_an_inline_part_out_heals_the_pipe() -> None:
    before = valve_between()
    after = edits.remove(before, ["iv"])
    assert list(after.pipes) == ["p1"]
    healed = after.pipes["p1"]
    assert healed.ends == (Joint("pu", "out"), Joint("ra", "flow"))
    assert healed.via == (Point(12, 0),)
    assert dict(healed.data) == {"size_mm": 22, "length_m": 3.3, "rise_m": 1.5, "bends": 1}
    assert after.controls["ct"].acts_on == ("pu",)
    assert not broken(after)


def test_healing_reckons_with_the_direction_of_each_pipe() -> None:
    parts = [part("v", "isolating_valve", (0, 0)), part("x", "pump", (9, 0)), part("y", "pump", (-9, 0))]
    away = drawing(parts, [pipe("p1", ("v.b", "x.in"), rise_m=2.0), pipe("p2", ("v.a", "y.out"), rise_m=0.5)])
    healed = edits.remove(away, ["v"]).pipes["p1"]
    assert healed.ends == (Joint("y", "out"), Joint("x", "in"))
    assert healed.data["rise_m"] == 1.5


def test_what_two_pipes_differ_in_is_not_known_of_the_healed_one() -> None:
    base = drawing(
        [part("v", "isolating_valve", (0, 0)), part("x", "pump", (9, 0)), part("y", "pump", (-9, 0))],
        [
            pipe("p1", ("y.out", "v.a"), size_mm=22, length_m=1),
            pipe("p2", ("v.b", "x.in"), size_mm=15, material="copper"),
        ],
    )
    healed = edits.remove(base, ["v"]).pipes["p1"]
    # Copper is what is meant where nothing is said, so the two agree on it.
    assert dict(healed.data) == {"size_mm": None, "length_m": None, "material": "copper"}


def test_the_straight_drop_stays_with_the_pipe_below_the_tundish() -> None:
    base = drawing(
        [
            part("tu", "tundish", (0, 0)),
            part("iv", "isolating_valve", (0, 6, 90)),
            part("en", "discharge_end", (0, 12)),
        ],
        [
            pipe("p1", ("en.inlet", "iv.b"), length_m=4),
            pipe("p2", ("iv.a", "tu.outlet"), length_m=1, straight_drop_m=0.5),
        ],
    )
    assert dict(edits.remove(base, ["iv"]).pipes["p1"].data) == {"length_m": 5, "straight_drop_m": 0.5}


@pytest.mark.parametrize("id", ["ra", "pu"])
def test_taking_any_other_part_out_frees_the_ends_where_they_were(id: str) -> None:
    before = valve_between()
    after = edits.remove(before, [id])
    (joint,) = [joint for joint in before.joined if joint.part == id]
    freed = after.pipes[before.joined[joint]]
    assert before.components[id].port_at(joint.port) in freed.ends
    assert not broken(after)


def test_a_radiator_with_two_pipes_does_not_heal() -> None:
    base = drawing(
        [part("ra", "radiator", (0, 0)), part("x", "pump", (-9, 9)), part("y", "pump", (9, 9))],
        [pipe("p1", ("x.out", "ra.flow")), pipe("p2", ("ra.return", "y.in"))],
    )
    assert list(edits.remove(base, ["ra"]).pipes) == ["p1", "p2"]


def test_a_tee_that_keeps_two_pipes_goes_and_they_heal() -> None:
    after = edits.remove(with_tee(), ["p3"])
    assert "t" not in after.components
    assert after.pipes["p1"].ends == (Joint("iv", "b"), Joint("zv", "in"))
    assert dict(after.pipes["p1"].data) == {"size_mm": 22, "material": "copper", "bends": 2}


def test_a_tee_healed_through_its_branch_leaves_a_bend() -> None:
    after = edits.set_field(with_tee(), "p3", "bends", 0)
    after = edits.remove(after, ["p2"])
    assert after.pipes["p1"].ends == (Joint("iv", "b"), Joint("dr", "connection"))
    assert after.pipes["p1"].data["bends"] == 2


def test_a_full_tee_taken_out_frees_three_ends() -> None:
    after = edits.remove(with_tee(), ["t"])
    assert [Point(5, 0) in pipe.ends for pipe in after.pipes.values()] == [True, True, True]


def test_a_branch_goes_with_all_its_parts() -> None:
    after = edits.remove(with_tee(), ["p3", "dr"])
    assert list(after.components) == ["iv", "zv"]
    assert list(after.pipes) == ["p1"]


def test_nothing_names_what_is_gone() -> None:
    base = drawing(
        [part("zv", "zone_valve", (0, 0)), part("st", "unvented_store", (9, 0), energy_cut_out="zv")],
        controls=[control("ct", "store_thermostat", "zv")],
    )
    after = edits.remove(base, ["zv"])
    assert dict(after.components["st"].data) == {"energy_cut_out": None}
    assert after.controls["ct"].acts_on == ()
    assert not broken(after)
    assert edits.remove(base, ["ct"]).controls == {}


def test_a_part_without_a_place_takes_along_a_pipe_that_has_none_either() -> None:
    base = drawing([part("a", "pump"), part("b", "radiator")], [pipe("p", ("a.out", "b.flow"))])
    assert not edits.remove(base, ["a"]).pipes
    placed = edits.remove(
        drawing([part("a", "pump"), part("b", "radiator", (0, 0))], base.pipes.values()), ["a"]
    )
    assert not broken(placed)


def test_a_field_set_and_cleared() -> None:
    base = valve_between()
    after = edits.set_field(base, "pu", "shut_off_head_m", 6)
    assert after.components["pu"].value("shut_off_head_m") == 6
    assert edits.set_field(after, "pu", "shut_off_head_m", 6) is after
    unknown = edits.set_field(after, "pu", "isolating_valves", None)
    assert unknown.components["pu"].value("isolating_valves") is None
    assert (
        edits.clear_field(unknown, "pu", "isolating_valves").components["pu"].value("isolating_valves")
        is True
    )
    assert edits.set_field(base, "p1", "size_mm", None).pipes["p1"].data["size_mm"] is None
    assert edits.set_field(base, "ct", "set_c", 20.5).controls["ct"].set_c == 20.5
    assert edits.clear_field(base, "p1", "insulated") is base


def test_true_and_one_are_not_the_same_value() -> None:
    base = drawing([part("hs", "heat_source", output_kw=1)])
    with pytest.raises(EditError):
        edits.set_field(base, "hs", "output_kw", True)


@pytest.mark.parametrize(
    ("id", "field", "value"),
    [
        ("pu", "shut_off_head_m", float("nan")),
        ("pu", "shut_off_head_m", "6"),
        ("pu", "isolating_valves", 1),
        ("pu", "note", 3),
        ("p1", "size_mm", 0),
        ("p1", "material", "lead"),
        ("p1", "colour", "red"),
        ("ct", "set_c", 999),
        ("nobody", "set_c", 20),
    ],
)
def test_a_field_that_cannot_be_is_refused(id: str, field: str, value: object) -> None:
    with pytest.raises(EditError):
        edits.set_field(valve_between(), id, field, value)


def test_references_and_choices() -> None:
    base = drawing([part("st", "unvented_store"), part("zv", "zone_valve"), part("hs", "heat_source")])
    assert edits.set_field(base, "st", "energy_cut_out", "zv").components["st"].data["energy_cut_out"] == "zv"
    with pytest.raises(EditError):
        edits.set_field(base, "st", "energy_cut_out", "zv9")
    built_in = edits.set_field(base, "hs", "built_in", ["pump", "vessel"])
    assert built_in.components["hs"].data["built_in"] == ("pump", "vessel")
    with pytest.raises(EditError):
        edits.set_field(base, "hs", "built_in", ["kettle"])


def test_design_sheet_title_and_labels() -> None:
    base = valve_between()
    after = edits.set_design(base, "static_height_m", 5)
    assert after.design["static_height_m"] == 5
    assert edits.clear_design(after, "static_height_m").design == {}
    assert edits.set_sheet(base, "metres_per_square", 0.1).sheet == {"metres_per_square": 0.1}
    with pytest.raises(EditError):
        edits.set_sheet(base, "metres_per_square", 0)
    assert edits.set_title(base, "Village hall").title == "Village hall"
    assert edits.set_title(base, "") is base
    assert edits.relabel(base, "pu", "Pump").components["pu"].label == "Pump"
    assert edits.relabel(base, "ct", "Hall").controls["ct"].label == "Hall"
    with pytest.raises(EditError):
        edits.relabel(base, "p1", "Flow")


def test_controls() -> None:
    base = valve_between()
    after, id = edits.add_control(base, kinds()["programmer"], acts_on=["pu"], label="Timer", at=Point(1, 2))
    assert after.controls[id].acts_on == ("pu",)
    assert after.controls[id].at == Point(1, 2)
    after = edits.change_control(after, id, in_same_room_as=["ra"], set_c=None)
    assert after.controls[id].in_same_room_as == ("ra",)
    assert edits.change_control(after, id, acts_on=["pu"]) is after
    with pytest.raises(EditError):
        edits.change_control(after, id, acts_on=["nobody"])
    with pytest.raises(EditError):
        edits.change_control(after, id, colour="red")
    with pytest.raises(EditError):
        edits.add_control(base, kinds()["pump"])
