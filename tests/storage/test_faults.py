"""Whatever is wrong with a file is named: the item, the field, what was found, what was expected."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from circuitcheck.storage.limits import FARTHEST, LONGEST_LABEL, LONGEST_TEXT, MOST_FAULTS, MOST_PARTS
from circuitcheck.storage.reading import DrawingError, parse
from tests.storage.files import File, cottage, encoded, faults

Change = Callable[[File], Any]


def put(*path: Any) -> Change:
    """Put the last of `path` where the others lead."""
    *way, last, value = path

    def change(file: File) -> None:
        place: Any = file
        for step in way:
            place = place[step]
        place[last] = value

    return change


def add(name: str, *items: Any) -> Change:
    return lambda file: file[name].extend(items)


HEAT = ("components", 0)
STORE = ("components", 2)
PIPE = ("pipes", 0)
CONTROL = ("controls", 0)
NOTE = ("notes", 0)
ACCEPTANCE = ("acceptances", 0)
REVIEW = ("reviews", 0)
FARTHER = FARTHEST * 1.01

# The change, then the item and the field of the one fault that it makes.
ONE_FAULT: list[tuple[Change, str, str]] = [
    # The wrong type.
    (put("title", 5), "", "title"),
    (put("title", None), "", "title"),
    (put("sheet", []), "", "sheet"),
    (put("design", "warm"), "", "design"),
    (put("reviews", {}), "", "reviews"),
    (put("notes", None), "", "notes"),
    (add("components", 5), "components[4]", ""),
    (add("pipes", None), "pipes[2]", ""),
    (add("controls", []), "controls[1]", ""),
    (put(*HEAT, "label", None), "hs1", "label"),
    (put(*HEAT, "mirrored", 1), "hs1", "mirrored"),
    (put(*HEAT, "data", None), "hs1", "data"),
    (put(*HEAT, "data", "output_kw", "18"), "hs1", "output_kw"),
    (put(*HEAT, "data", "output_kw", True), "hs1", "output_kw"),
    (put(*HEAT, "data", "output_kw", [18]), "hs1", "output_kw"),
    (put(*HEAT, "data", "combined_feed_and_vent", 0), "hs1", "combined_feed_and_vent"),
    (put(*HEAT, "data", "note", 5), "hs1", "note"),
    (put(*HEAT, "data", "built_in", "pump"), "hs1", "built_in"),
    (put(*STORE, "data", "energy_cut_out", 5), "us1", "energy_cut_out"),
    (put(*PIPE, "data", "insulated", "yes"), "p1", "insulated"),
    (put(*PIPE, "via", [8, 6]), "p1", "via"),
    (put(*PIPE, "via", [[8, True]]), "p1", "via"),
    (put(*CONTROL, "acts_on", "zv1"), "rt1", "acts_on"),
    (put(*CONTROL, "in_same_room_as", [5]), "rt1", "in_same_room_as"),
    (put(*CONTROL, "set_c", "20"), "rt1", "set_c"),
    (put(*CONTROL, "set_c", False), "rt1", "set_c"),
    (put(*NOTE, "on", "t1"), "n1", "on"),
    (put(*NOTE, "replies", {}), "n1", "replies"),
    (put(*NOTE, "replies", ["It is."]), "n1.replies[0]", ""),
    (put(*NOTE, "replies", 0, "text", 5), "n1.replies[0]", "text"),
    (put(*ACCEPTANCE, "check", 5), "acceptances[0]", "check"),
    (put(*REVIEW, "author", ["A"]), "reviews[0]", "author"),
    # An impossible value.
    (put(*STORE, "id", ""), "components[2]", "id"),
    (put(*STORE, "id", 7), "components[2]", "id"),
    (put(*HEAT, "at", [4]), "hs1", "at"),
    (put(*HEAT, "at", [4, None]), "hs1", "at"),
    (put(*HEAT, "at", [4, FARTHER]), "hs1", "at"),
    (put(*HEAT, "at", {"x": 4, "y": 10}), "hs1", "at"),
    (put(*HEAT, "turn", 45), "hs1", "turn"),
    (put(*HEAT, "turn", 360), "hs1", "turn"),
    (put(*HEAT, "turn", -90), "hs1", "turn"),
    (put(*HEAT, "turn", False), "hs1", "turn"),
    (put(*HEAT, "turn", "90"), "hs1", "turn"),
    (put(*HEAT, "data", "output_kw", -1), "hs1", "output_kw"),
    (put(*HEAT, "data", "output_kw", 10**400), "hs1", "output_kw"),
    (put(*HEAT, "data", "height_m", 5000), "hs1", "height_m"),
    (put(*HEAT, "data", "maximum_flow_temperature_c", 5000), "hs1", "maximum_flow_temperature_c"),
    (put("design", "flow_temperature_c", 5000), "design", "flow_temperature_c"),
    (put("design", "fill_temperature_c", -274), "design", "fill_temperature_c"),
    (put("design", "glycol_percent", 101), "design", "glycol_percent"),
    (put("sheet", "metres_per_square", 0), "sheet", "metres_per_square"),
    (put("sheet", "metres_per_square", -0.5), "sheet", "metres_per_square"),
    (put(*PIPE, "data", "size_mm", 0), "p1", "size_mm"),
    (put(*PIPE, "data", "length_m", -1), "p1", "length_m"),
    (put(*ACCEPTANCE, "until", "31.1.2030"), "acceptances[0]", "until"),
    (put(*ACCEPTANCE, "until", "2030-02-30"), "acceptances[0]", "until"),
    (put(*ACCEPTANCE, "until", "20300131"), "acceptances[0]", "until"),
    (put(*ACCEPTANCE, "until", "2030-01-31\n"), "acceptances[0]", "until"),
    (put(*ACCEPTANCE, "until", ""), "acceptances[0]", "until"),
    (put(*REVIEW, "findings", "not hex"), "reviews[0]", "findings"),
    (put(*HEAT, "label", "x" * (LONGEST_LABEL + 1)), "hs1", "label"),
    (put(*NOTE, "text", "x" * (LONGEST_TEXT + 1)), "n1", "text"),
    (put(*HEAT, "data", "note", "x" * (LONGEST_TEXT + 1)), "hs1", "note"),
    # A value that is not among the named ones.
    (put("design", "rule_book", "atlantis"), "design", "rule_book"),
    (put("design", "dwelling", "old"), "design", "dwelling"),
    (put(*HEAT, "kind", "kettle"), "hs1", "kind"),
    (put(*HEAT, "kind", ["tee"]), "hs1", "kind"),
    (put(*HEAT, "kind", "programmer"), "hs1", "kind"),
    (put(*CONTROL, "kind", "tee"), "rt1", "kind"),
    (put(*HEAT, "data", "heat", "lukewarm"), "hs1", "heat"),
    (put(*HEAT, "data", "built_in", ["kettle"]), "hs1", "built_in"),
    (put(*HEAT, "data", "built_in", ["pump", "pump"]), "hs1", "built_in"),
    (put(*HEAT, "data", "built_in", [["pump"]]), "hs1", "built_in"),
    (put(*PIPE, "data", "material", "lead"), "p1", "material"),
    (put(*NOTE, "state", "closed"), "n1", "state"),
    # Something that must be there.
    (add("components", {"kind": "tee"}), "components[4]", "id"),
    (add("components", {"id": "x"}), "x", "kind"),
    (add("pipes", {"ends": [[1, 1], [2, 2]]}), "pipes[2]", "id"),
    (add("pipes", {"id": "x"}), "x", "ends"),
    (add("controls", {"id": "x"}), "x", "kind"),
    # Between the items.
    (add("components", {"id": "t1", "kind": "tee"}), "t1", "id"),
    (add("pipes", {"id": "t1", "ends": [[1, 1], [2, 2]]}), "t1", "id"),
    (add("controls", {"id": "p1", "kind": "programmer"}), "p1", "id"),
    (add("notes", {"id": "hs1"}), "hs1", "id"),
    (put(*PIPE, "ends", 0, ["hs2", "flow"]), "p1", "ends"),
    (put(*PIPE, "ends", 0, ["p2", "flow"]), "p1", "ends"),
    (put(*PIPE, "ends", 0, ["rt1", "flow"]), "p1", "ends"),
    (put(*PIPE, "ends", 0, ["hs1", "flow_"]), "p1", "ends"),
    (put(*PIPE, "ends", 0, ["hs1"]), "p1", "ends"),
    (put(*PIPE, "ends", 0, ["hs1", 5]), "p1", "ends"),
    (put(*PIPE, "ends", 0, None), "p1", "ends"),
    (put(*PIPE, "ends", [["hs1", "flow"]]), "p1", "ends"),
    (put(*PIPE, "ends", [["hs1", "flow"], ["t1", "a"], ["t1", "branch"]]), "p1", "ends"),
    (put(*PIPE, "ends", 0, [1, FARTHER]), "p1", "ends"),
    (put(*PIPE, "ends", 0, ["t1", "b"]), "p2", "ends"),
    (put(*PIPE, "ends", 0, ["t1", "a"]), "p1", "ends"),
    (put(*STORE, "data", "energy_cut_out", "gone"), "us1", "energy_cut_out"),
    (put(*CONTROL, "acts_on", ["zv1", "gone"]), "rt1", "acts_on"),
    (put(*CONTROL, "in_same_room_as", ["gone"]), "rt1", "in_same_room_as"),
    (add("components", {"id": "v", "kind": "open_vent", "data": {"over": "gone"}}), "v", "over"),
]


def test_the_file_that_is_changed_is_sound() -> None:
    assert faults(encoded(cottage())) == ()


@pytest.mark.parametrize("number", range(len(ONE_FAULT)))
def test_one_thing_wrong_is_one_fault(number: int) -> None:
    change, item, field = ONE_FAULT[number]
    file = cottage()
    change(file)
    (fault,) = faults(encoded(file))
    assert (fault.item, fault.field) == (item, field)
    assert fault.found
    assert fault.expected
    assert fault.message.endswith(".")
    # The sentence says where.
    assert item in fault.message
    assert field in fault.message or fault.message.startswith(("Pipe ", "The id "))


def test_a_sentence_says_what_was_found_and_expected() -> None:
    file = cottage()
    file["components"][0]["data"]["output_kw"] = "18"
    file["pipes"][0]["ends"][0] = ["hs1", "out"]
    file["design"]["flow_temperature_c"] = 5000
    assert [fault.message for fault in faults(encoded(file))] == [
        "design.flow_temperature_c is 5000, but must be a number from -50 to 300 (°C), or null.",
        'hs1.output_kw is "18", but must be a number of at least 0 (kW), or null.',
        'Pipe p1 has an end on hs1, which has no port "out".',
    ]


def test_all_faults_of_a_file_are_reported_together() -> None:
    file = cottage()
    put("title", 5)(file)
    put(*HEAT, "turn", 45)(file)
    put(*PIPE, "data", "insulated", "yes")(file)
    put("pipes", 1, "ends", 0, ["t1", "a"])(file)
    put(*CONTROL, "acts_on", ["gone"])(file)
    put(*NOTE, "on", "t1")(file)
    add("components", {"id": "t1", "kind": "tee"}, 5)(file)
    assert {(fault.item, fault.field) for fault in faults(encoded(file))} == {
        ("", "title"),
        ("hs1", "turn"),
        ("p1", "insulated"),
        ("p2", "ends"),
        ("rt1", "acts_on"),
        ("n1", "on"),
        ("t1", "id"),
        ("components[5]", ""),
    }
    with pytest.raises(DrawingError) as caught:
        parse(encoded(file), "cottage.wetcircuit")
    assert str(caught.value).splitlines()[0] == "cottage.wetcircuit cannot be read. 8 things are wrong:"
    assert len(str(caught.value).splitlines()) == 9


def test_faults_between_items_are_found_beside_faults_within_them() -> None:
    file = cottage()
    file["components"][2].update(label=5, data={"energy_cut_out": "gone", "volume_l": "big", "later": 1})
    file["pipes"][0].update(via=5, ends=[["us1", "out"], ["t1", "b"]])
    file["controls"][0].update(at=5, acts_on=["gone"])
    file["notes"][0].update(id="t1", text=5)
    found = [(fault.item, fault.field) for fault in faults(encoded(file))]
    assert sorted(found) == [
        ("p1", "ends"),
        ("p1", "via"),
        ("p2", "ends"),
        ("rt1", "acts_on"),
        ("rt1", "at"),
        ("t1", "id"),
        ("t1", "text"),
        ("us1", "energy_cut_out"),
        ("us1", "label"),
        ("us1", "volume_l"),
    ]


def test_a_wrong_reference_beside_an_unknown_field_is_one_fault() -> None:
    file = cottage()
    file["components"][2]["data"] = {"energy_cut_out": ["zv1"], "later": 1}
    assert [(fault.item, fault.field) for fault in faults(encoded(file))] == [("us1", "energy_cut_out")]


def test_a_part_that_is_wrong_does_not_put_its_pipes_in_the_wrong() -> None:
    file = cottage()
    file["components"][1]["kind"] = "kettle"
    assert [(fault.item, fault.field) for fault in faults(encoded(file))] == [("t1", "kind")]


def test_without_a_list_of_parts_no_pipe_is_blamed() -> None:
    file = cottage()
    file["components"] = "none"
    assert [(fault.item, fault.field) for fault in faults(encoded(file))] == [("", "components")]


def test_what_a_file_says_is_harmless_on_a_terminal() -> None:
    file = cottage()
    file["components"][0]["id"] = "a\x1b[31m\u202eb"
    file["components"][0]["data"]["heat"] = "\x1b]0;x\x07" + "long " * 100
    file["pipes"] = []
    (fault,) = faults(encoded(file))
    assert fault.message.isprintable()
    assert fault.message.startswith("a<U+001B>[31m<U+202E>b.heat is ")
    assert len(fault.message) < 250


def test_too_many_parts_are_refused_before_any_is_built() -> None:
    file = {"wetcircuit": 1, "components": [0] * (MOST_PARTS + 1)}
    (fault,) = faults(encoded(file))
    assert fault.message == "The file has 100,001 components; this program reads at most 100,000."


def test_a_file_of_rubbish_does_not_fill_the_memory() -> None:
    found = faults(encoded({"wetcircuit": 1, "components": [0] * MOST_PARTS}))
    assert len(found) == MOST_FAULTS + 1
    assert "there may be more" in found[-1].message
