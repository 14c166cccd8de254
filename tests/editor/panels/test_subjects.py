"""What the details panel shows and changes, without a window."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.panels import subjects
from circuitcheck.editor.panels.subjects import Held, Left, Row, heading, put, remark, rows
from circuitcheck.parts.catalogue import kinds
from tests.made import made


@pytest.fixture
def drawing() -> Drawing:
    return made(
        {
            "hs": "heat_source",
            "pump": ("pump", {"shut_off_head_m": 6}),
            "zv1": "zone_valve",
            "zv2": ("zone_valve", {"kv_m3h": 3.5, "serves": "heating"}),
            "store": "unvented_store",
            "rad": "radiator",
            "t1": "tee",
        },
        """
        p1: hs.flow - pump.in
        p2: pump.out - 30,4
        """,
        controls={"rt": ("room_thermostat", ("zv1",)), "pr": ("programmer", ())},
    )


def held(drawing: Drawing, ids: tuple[str, ...], key: str) -> Held:
    (row,) = [row for row in rows(drawing, ids) if row.key == key]
    return row.held


def test_every_kind_shows_every_field_it_has(drawing: Drawing) -> None:
    for kind in kinds().values():
        if kind.is_control:
            continue
        one = made({"x": kind.name}, "")
        assert [row.key for row in rows(one, ("x",))] == ["label", *(field.name for field in kind.fields)]


def test_left_out_and_not_known_are_told_apart(drawing: Drawing) -> None:
    assert held(drawing, ("pump",), "isolating_valves").value is Left.OUT
    step, unknown = put(drawing, ("pump",), "isolating_valves", None)
    assert held(unknown, ("pump",), "isolating_valves").value is None
    assert "isolating_valves" in unknown.components["pump"].data
    _, cleared = put(unknown, ("pump",), "isolating_valves", Left.OUT)
    assert "isolating_valves" not in cleared.components["pump"].data
    assert step == "Set pump pump’s isolating valves"


def test_a_step_is_named_after_what_it_sets(drawing: Drawing) -> None:
    step, named = put(drawing, ("pump",), "label", "Charging pump")
    assert step == "Rename pump pump"
    assert put(named, ("pump",), "shut_off_head_m", 5)[0] == "Set Charging pump’s shut-off head"
    assert put(named, (), "static_height_m", 5)[0] == "Set static height"
    assert put(named, ("zv1", "zv2"), "kv_m3h", 4)[0] == "Set kv of 2"
    assert put(named, (), "title", "Hall")[0] == "Set title"


def test_several_show_what_they_share_and_are_set_in_one_step(drawing: Drawing) -> None:
    keys = [row.key for row in rows(drawing, ("zv1", "zv2"))]
    assert keys == ["rest", "serves", "kv_m3h", "height_m"]
    assert held(drawing, ("zv1", "zv2"), "kv_m3h").differs
    assert not held(drawing, ("zv1", "zv2"), "rest").differs
    _, after = put(drawing, ("zv1", "zv2"), "kv_m3h", 4)
    assert [after.components[id].value("kv_m3h") for id in ("zv1", "zv2")] == [4, 4]
    assert [row.key for row in rows(drawing, ("zv1", "pump"))] == ["height_m"]
    assert rows(drawing, ("p1", "pump")) == ()
    assert remark(drawing, ("p1", "pump"), rows(drawing, ("p1", "pump"))) == "These have no field in common."


def test_of_thousands_only_one_of_each_kind_is_asked_for_its_fields(monkeypatch: pytest.MonkeyPatch) -> None:
    parts = {f"{kind}{number}": kind for number in range(50) for kind in ("radiator", "pump")}
    many = made(parts, "", controls={"rt": ("room_thermostat", ("pump1",))})
    asked: list[str] = []
    rows_of = subjects._rows_of

    def noted(drawing: Drawing, id: str, *, with_options: bool = True) -> tuple[Row, ...]:
        asked.append(id)
        return rows_of(drawing, id, with_options=with_options)

    monkeypatch.setattr(subjects, "_rows_of", noted)
    assert [row.key for row in rows(many, tuple(parts))] == ["height_m"]
    assert len(asked) == 3
    assert rows(many, (*parts, "rt")) == ()


def test_a_value_that_the_last_of_many_has_alone_differs() -> None:
    parts: dict[str, Any] = {f"r{number}": ("radiator", {"height_m": 1}) for number in range(9)}
    alike = made(parts, "")
    assert held(alike, tuple(parts), "height_m") == Held(1, differs=False)
    last = made(parts | {"r8": ("radiator", {"height_m": 2})}, "")
    assert held(last, tuple(parts), "height_m") == Held(1, differs=True)


def test_controls_of_two_sorts_share_what_both_have() -> None:
    drawing = made(
        {"pump": "pump", "zv": "zone_valve"},
        "",
        controls={
            "one": ("room_thermostat", ("zv",)),
            "other": ("room_thermostat", ("pump",)),
            "pr": ("programmer", ()),
        },
    )
    assert held(drawing, ("one", "other"), "acts_on").differs
    assert "set_c" in [row.key for row in rows(drawing, ("one", "other"))]
    assert [row.key for row in rows(drawing, ("one", "pr"))] == ["acts_on"]


def test_a_value_beyond_its_limits_is_refused(drawing: Drawing) -> None:
    with pytest.raises(EditError, match="at least 0 m"):
        put(drawing, ("pump",), "shut_off_head_m", -1)
    with pytest.raises(EditError, match="more than 0"):
        put(drawing, ("p1",), "size_mm", 0)


def test_a_reference_offers_the_parts_it_can_name(drawing: Drawing) -> None:
    (row,) = [row for row in rows(drawing, ("store",)) if row.key == "energy_cut_out"]
    assert [id for id, _ in row.options] == ["zv1", "zv2"]
    _, after = put(drawing, ("store",), "energy_cut_out", "zv1")
    assert after.components["store"].value("energy_cut_out") == "zv1"


def test_two_parts_of_one_name_are_told_apart(drawing: Drawing) -> None:
    _, one = put(drawing, ("zv1",), "label", "Zone valve")
    _, two = put(one, ("zv2",), "label", "Zone valve")
    (row,) = [row for row in rows(two, ("store",)) if row.key == "energy_cut_out"]
    assert ("zv1", "Zone valve (zv1)") in row.options
    assert ("zv2", "Zone valve (zv2)") in row.options


def test_a_control_acts_on_valves_and_pumps(drawing: Drawing) -> None:
    found = {row.key: row for row in rows(drawing, ("rt",))}
    assert [id for id, _ in found["acts_on"].options] == ["hs", "pump", "zv1", "zv2"]
    assert [id for id, _ in found["in_same_room_as"].options] == ["rad"]
    assert found["acts_on"].held.value == ("zv1",)
    _, after = put(drawing, ("rt",), "acts_on", ("zv1", "zv2"))
    assert after.controls["rt"].acts_on == ("zv1", "zv2")
    _, none = put(after, ("rt",), "acts_on", Left.OUT)
    assert none.controls["rt"].acts_on == ()
    _, warm = put(drawing, ("rt",), "set_c", 20.5)
    assert warm.controls["rt"].set_c == 20.5
    assert "set_c" not in {row.key for row in rows(drawing, ("pr",))}


def test_nothing_selected_shows_the_drawing(drawing: Drawing) -> None:
    assert heading(drawing, ()) == "Drawing"
    keys = [row.key for row in rows(drawing, ())]
    assert keys[:2] == ["title", "flow_temperature_c"]
    assert keys[-1] == "metres_per_square"
    _, after = put(drawing, (), "metres_per_square", 0.5)
    assert after.sheet["metres_per_square"] == 0.5
    _, without = put(after, (), "metres_per_square", Left.OUT)
    assert "metres_per_square" not in without.sheet
    _, old = put(drawing, (), "glycol_percent", None)
    assert old.design["glycol_percent"] is None
    assert "glycol_percent" not in put(old, (), "glycol_percent", Left.OUT)[1].design


def test_headings(drawing: Drawing) -> None:
    assert [heading(drawing, (id,)) for id in ("pump", "p1", "rt")] == ["Pump", "Pipe", "Room thermostat"]
    assert heading(drawing, ("pump", "p1")) == "2 selected"
    assert remark(drawing, ("p1",), ()) == "From heat source hs (flow) to pump pump (in)."
    assert remark(drawing, ("p2",), ()) == "From pump pump (out) to a free end."


@pytest.mark.parametrize(
    ("part", "field", "offered"),
    [("store", "energy_cut_out", {"zv1", "zv2", "tp"}), ("vent", "over", {"cistern"})],
)
def test_a_reference_offers_only_what_it_can_mean(part: str, field: str, offered: set[str]) -> None:
    drawing = made(
        {
            "hs": "heat_source",
            "zv1": "zone_valve",
            "zv2": "zone_valve",
            "tp": "three_port_valve",
            "iv": "isolating_valve",
            "store": "unvented_store",
            "vent": "open_vent",
            "cistern": "feed_cistern",
            "t1": "tee",
        },
        "",
    )
    (row,) = [row for row in rows(drawing, (part,)) if row.key == field]
    assert {id for id, _ in row.options} == offered


def test_what_a_file_names_is_offered_all_the_same() -> None:
    drawing = made({"store": ("unvented_store", {"energy_cut_out": "pump"}), "pump": "pump"}, "")
    (row,) = [row for row in rows(drawing, ("store",)) if row.key == "energy_cut_out"]
    assert [id for id, _ in row.options] == ["pump"]
