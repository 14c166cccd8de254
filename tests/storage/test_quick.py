"""The quick way accepts only what the patient way accepts, and builds an equal Drawing."""

from __future__ import annotations

import copy
import gc
import json
import random
import subprocess
import sys
from dataclasses import FrozenInstanceError, replace
from math import inf, nextafter
from pathlib import Path
from typing import Any, get_type_hints

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.drawing.value import Component, Control, Drawing, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds
from circuitcheck.storage.limits import FARTHEST, LONGEST_LABEL, MOST_DIGITS
from circuitcheck.storage.quick import quick
from circuitcheck.storage.reading import LARGE, DrawingError, parse, parse_patiently
from circuitcheck.storage.writing import dump
from tests.storage.files import cottage, encoded
from tests.storage.test_faults import ONE_FAULT
from tests.strategies import drawings


def patient(data: bytes) -> Drawing | None:
    try:
        return parse_patiently(data, "x")
    except DrawingError:
        return None


def agree(data: bytes) -> bool:
    """Whether the quick way took the file; where it did, the patient way says the same."""
    found = quick(data)
    if found is None:
        return False
    expected = patient(data)
    assert found == expected
    # Equal is not enough: 1 is True, and 22 is shown otherwise than 22.0.
    assert repr(found) == repr(expected)
    return True


def whole(file: dict[str, Any]) -> dict[str, Any]:
    """The file without its free end."""
    file["pipes"].pop()
    return file


def test_a_plain_file_is_taken() -> None:
    assert agree(encoded(whole(cottage())))
    assert agree(encoded(cottage()))
    assert agree(b'{"wetcircuit": 1}')
    assert agree(b"\xef\xbb\xbf" + encoded(whole(cottage())))


def test_what_is_made_is_as_if_made_one_by_one() -> None:
    drawing = quick(encoded(cottage()))
    assert drawing is not None
    part, pipe, control = drawing.components["hs1"], drawing.pipes["p2"], drawing.controls["rt1"]
    for thing, made in ((part, Component), (pipe, Pipe), (control, Control)):
        assert type(thing) is made
        with pytest.raises(FrozenInstanceError):
            thing.id = "other"  # type: ignore[misc]
        assert copy.copy(thing) == thing
    assert replace(part, label="Other").at == part.at


@pytest.mark.parametrize(
    ("of", "change"),
    [
        ("controls", {"id": "hs1"}),
        ("controls", {"id": "n1"}),
        ("controls", {"kind": "pump"}),
        ("controls", {"acts_on": ["nobody"]}),
        ("controls", {"in_same_room_as": ["nobody"]}),
        ("controls", {"acts_on": "zv1"}),
        ("controls", {"at": [1e9, 0]}),
        ("controls", {"set_c": 400}),
        ("controls", {"set_c": True}),
        ("controls", {"later": 1}),
        ("pipes", {"ends": [["t1", "a"], [20, 8]]}),
        ("pipes", {"ends": [["t1", "d"], [20, 8]]}),
        ("pipes", {"ends": [["nobody", "a"], [20, 8]]}),
        ("pipes", {"ends": [["t1", "b"], ["t1", "b"]]}),
        ("pipes", {"ends": [["t1", "b"], [1e9, 8]]}),
        ("pipes", {"ends": [["t1", "b"], [20, "8"]]}),
        ("pipes", {"ends": [["t1", "b"], [20, "a"]]}),
        ("pipes", {"ends": [["t1", "b"], ["t1", 8]]}),
        ("pipes", {"ends": [["t1", 8], ["t1", "b"]]}),
        ("pipes", {"ends": [["t1", "b"], [20, True]]}),
        ("pipes", {"ends": [["t1", "b"], [20, None]]}),
        ("pipes", {"ends": [["t1", "b"], [20, 8, 1]]}),
        ("pipes", {"ends": [[1e9, 8], ["t1", "b"]]}),
        ("pipes", {"ends": [["t1", "b"], {"x": 20}]}),
        ("pipes", {"ends": [["t1", "b"]]}),
        ("pipes", {"ends": {}}),
    ],
)
def test_a_control_or_a_free_end_that_is_wrong_is_not_taken(of: str, change: dict[str, Any]) -> None:
    file = cottage()
    file[of][-1] |= change
    assert not agree(encoded(file))


@pytest.mark.parametrize(
    "change", [{"set_c": None}, {"set_c": 20.5}, {"at": None}, {"at": [3, 4.5]}, {"label": "Hall"}]
)
def test_a_control_as_it_may_be_is_taken(change: dict[str, Any]) -> None:
    file = cottage()
    file["controls"][-1] |= change
    assert agree(encoded(file))


@pytest.mark.parametrize("of", ["components", "controls", "pipes"])
@pytest.mark.parametrize("place", [[FARTHEST, -FARTHEST], [int(FARTHEST), 0], [-0.0, 1e-300]])
def test_a_place_as_far_as_may_be_is_taken_and_none_farther(of: str, place: list[float]) -> None:
    def placed(place: list[float]) -> bytes:
        file = whole(cottage())
        file[of][0] |= {"via": [[1, 2], place]} if of == "pipes" else {"at": place}
        return encoded(file)

    assert agree(placed(place))
    for farther in (nextafter(FARTHEST, inf), -nextafter(FARTHEST, inf), int(FARTHEST) + 1, 10**20, 1e300):
        assert not agree(placed([farther, place[1]]))
        assert not agree(placed([place[0], farther]))


@pytest.mark.parametrize("one", ["components", "pipes", "controls", "notes"])
@pytest.mark.parametrize("other", ["components", "pipes", "controls", "notes"])
def test_an_id_that_stands_twice_is_not_taken(one: str, other: str) -> None:
    file = whole(cottage())
    spare: dict[str, Any] = {
        "components": {"id": "spare", "kind": "tee"},
        "pipes": {"id": "spare", "ends": [["t1", "b"], ["t1", "branch"]]},
        "controls": {"id": "spare", "kind": "programmer"},
        "notes": {"id": "spare"},
    }
    file[one].append(spare[one])
    assert agree(encoded(file))
    file[other].append(file[one][0] | {"id": "spare"} if one == other else spare[other])
    if one == other == "pipes":
        file["pipes"][-1]["ends"] = [["zv1", "a"], ["zv1", "b"]]
    assert not agree(encoded(file))


@pytest.mark.parametrize(
    "end", [["p1", "a"], ["rt1", "a"], ["n1", "a"], ["t1", "flow"], ["t1", ""], ["t1", "a"]]
)
def test_an_end_on_anything_but_a_free_port_is_not_taken(end: list[str]) -> None:
    file = whole(cottage())
    for last, taken in ((["t1", "branch"], True), (end, False)):
        file["pipes"][1:] = [{"id": "p2", "ends": [["t1", "b"], last]}]
        assert agree(encoded(file)) == taken


@pytest.mark.parametrize("id", ["zv1", "p1", "rt1", "n1", "nobody"])
def test_what_is_named_may_be_any_item(id: str) -> None:
    file = whole(cottage())
    file["controls"][0]["acts_on"] = [id]
    file["components"][2]["data"]["energy_cut_out"] = id
    assert agree(encoded(file)) == (id != "nobody")


def test_places_and_joints_are_elsewhere_what_they_were() -> None:
    assert quick(encoded(whole(cottage()))) is not None
    assert get_type_hints(Point) == {"x": float, "y": float}
    assert get_type_hints(Joint) == {"part": str, "port": str}
    assert Point(2 * FARTHEST, 0).x == 2 * FARTHEST


@pytest.mark.parametrize(
    "ends",
    [
        [[20, 8], ["t1", "b"]],
        [[20, 8], [20, 8]],
        [[FARTHEST, -FARTHEST], [-0.0, 1e-300]],
        [["t1", "b"], [20, int(FARTHEST)]],
    ],
)
def test_a_pipe_with_free_ends_is_taken(ends: list[Any]) -> None:
    file = cottage()
    file["pipes"][-1]["ends"] = ends
    assert agree(encoded(file))


@given(drawings(with_extras=False, with_free_ends=False))
def test_both_ways_agree_on_plain_drawings(drawing: Drawing) -> None:
    agree(dump(drawing))


@given(drawings())
def test_both_ways_agree_on_any_drawing(drawing: Drawing) -> None:
    agree(dump(drawing))


@pytest.mark.parametrize("number", range(len(ONE_FAULT)))
def test_what_is_wrong_is_not_taken(number: int) -> None:
    file = cottage()
    ONE_FAULT[number][0](file)
    assert not agree(encoded(file))
    # Without the free end nothing but the fault keeps it from being taken.
    if len(file["pipes"]) == 2 and ONE_FAULT[number][1] != "p2":
        assert not agree(encoded(whole(file)))


@pytest.mark.parametrize(
    "change",
    [
        b'"title": "a", "title": "Cottage"',
        b'"later": 1, "title": "Cottage"',
        b'"later": "\\u003a", "later": "", "title": "Cottage"',
        b'"title": "\\ud800"',
        b'"title": "\xff"',
        b'"title": "' + b"x" * (LONGEST_LABEL + 1) + b'"',
        b'"later": ' + b"1" * (MOST_DIGITS + 1),
        b'"later": ' + b"[" * 40 + b"]" * 40,
        b'"title": "Cottage",',
    ],
)
def test_what_must_be_looked_at_closely_is_not_taken(change: bytes) -> None:
    data = encoded(whole(cottage()))
    assert agree(data)
    changed = data.replace(b'"title": "Cottage"', change)
    assert changed != data
    assert not agree(changed)


@pytest.mark.parametrize("depth", range(25, 35))
def test_nesting_within_records_is_counted_alike(depth: int) -> None:
    file = whole(cottage())
    file["reviews"][0]["later"] = json.loads("[" * depth + "]" * depth)
    data = encoded(file)
    assert agree(data) == (patient(data) is not None)


@pytest.mark.parametrize(
    "where",
    [
        ("title",),
        ("components", 0, "id"),
        ("components", 1, "label"),
        ("components", 3, "data", "note"),
        ("controls", 0, "label"),
        ("notes", 0, "text"),
        ("notes", 0, "replies", 0, "text"),
        ("acceptances", 0, "reason"),
        ("reviews", 0, "la:ter"),
    ],
)
@pytest.mark.parametrize("text", ["10:30, the cottage: as found", ":", '": "'])
def test_a_text_with_colons_is_taken(where: tuple[Any, ...], text: str) -> None:
    file = whole(cottage())
    if where[-1] == "id":
        file["pipes"] = []
    *way, last = where
    place: Any = file
    for key in way:
        place = place[key]
    place[last] = text
    # Another colon of each sort does no harm.
    for content in (file, file | {"title": "a: b"}):
        content["components"][2]["label"] = "c: d" if content is file else ""
        data = encoded(content)
        assert agree(data)
        # But not together with a key that stands twice, or that is not known.
        for again in (b'"turn": 0, "turn": 0', b'"turn": 0, "later": ":"', b'"turn": 0, "label": ""'):
            changed = data.replace(b'"turn": 0', again)
            assert changed != data
            assert not agree(changed)


def test_a_colon_written_as_an_escape_hides_no_key() -> None:
    data = encoded(whole(cottage())).replace(b'"label": "Heat source"', b'"label": "\\u003a"')
    assert patient(data) is not None
    assert patient(data.replace(b'"turn": 0', b'"turn": 0, "turn": 0')) is None
    assert not agree(data.replace(b'"turn": 0', b'"turn": 0, "turn": 0'))


@pytest.mark.parametrize("digits", [MOST_DIGITS - 1, MOST_DIGITS, MOST_DIGITS + 1])
@pytest.mark.parametrize("before", [0, 1, 215, 429])
def test_a_number_too_long_is_seen_wherever_it_stands(digits: int, before: int) -> None:
    file = whole(cottage())
    file["reviews"][0]["later"] = 12345
    data = b" " * before + encoded(file).replace(b"12345", b"0." + b"1" * (digits - 2))
    if digits > MOST_DIGITS:
        assert patient(data) is None
        assert not agree(data)
    else:
        assert patient(data) is not None
        agree(data)


@given(st.data())
def test_both_ways_agree_on_damaged_files(data: st.DataObject) -> None:
    """Bytes of a good file cut out, put in or put elsewhere."""
    file = bytearray(encoded(data.draw(st.sampled_from([cottage(), whole(cottage())]))))
    for _ in range(data.draw(st.integers(1, 3))):
        start = data.draw(st.integers(0, len(file) - 1))
        end = min(len(file), start + data.draw(st.integers(0, 8)))
        pieces = [
            b"",
            b"0",
            b"-",
            b".",
            b"1e400",
            b'"',
            b":",
            b",",
            b"null",
            b"true",
            b"[1, 2]",
            b"{}",
            b"\\u003a",
        ]
        file[start:end] = data.draw(st.sampled_from(pieces) | st.binary(max_size=3))
        if not file:
            return
    agree(bytes(file))


VALUES = (
    st.none()
    | st.booleans()
    | st.integers()
    | st.floats(width=16)
    | st.text(max_size=3)
    | st.lists(st.integers(0, 3) | st.sampled_from(["a", "b", "t1", "pump"]), max_size=3)
)


@given(st.data())
def test_both_ways_agree_on_files_with_a_value_changed(data: st.DataObject) -> None:
    file = data.draw(st.sampled_from([cottage(), whole(cottage())]))
    place: Any = file
    while True:
        keys = list(place) if isinstance(place, dict) else list(range(len(place)))
        key = data.draw(st.sampled_from(keys))
        if isinstance(place[key], (dict, list)) and place[key] and data.draw(st.integers(0, 3)):
            place = place[key]
        else:
            place[key] = data.draw(VALUES)
            break
    agree(json.dumps(file).encode())


def large(parts: int) -> Drawing:
    """Radiators and tees in a long row, in no particular order."""
    names = ("tee", "radiator", "pump", "zone_valve")
    kinds = [component_kinds()[name] for name in names]
    shuffled = random.Random(7)
    components = {}
    joints = []
    for number in range(parts):
        kind = kinds[number % len(kinds)]
        id = f"c{number}"
        at = Point(float(number % 100), number / 4)
        data = {"height_m": number / 8, "note": None}
        components[id] = Component(id, kind, f"{kind.title} {number}", at, 90 * (number % 4), data=data)
        joints += [Joint(id, port.name) for port in kind.ports]
    shuffled.shuffle(joints)
    pipes = {
        f"p{number}": Pipe(f"p{number}", ends, (Point(1, number),), {"size_mm": 22, "length_m": number / 10})
        for number, ends in enumerate(zip(joints[::2], joints[1::2], strict=False))
    }
    return Drawing(title="A large plant", components=components, pipes=pipes)


def test_a_large_file_is_read_quickly_and_as_it_stands() -> None:
    drawing = large(4_000)
    data = dump(drawing)
    assert len(data) > LARGE
    assert agree(data)
    assert parse(data, "x") == drawing


def test_a_large_file_with_a_fault_has_it_named() -> None:
    data = dump(large(4_000)).replace(b'"label": "Pump 2"', b'"label": 2')
    with pytest.raises(DrawingError) as caught:
        parse(data, "x")
    assert [(fault.item, fault.field) for fault in caught.value.faults] == [("c2", "label")]


def test_reading_leaves_the_garbage_collector_as_it_was() -> None:
    before = gc.get_freeze_count()
    assert before, "tests/conftest.py keeps what it finds frozen"
    for data in (encoded(cottage()), b"{}"):
        assert gc.isenabled()
        patient(data)
        try:
            parse(data, "x")
        except DrawingError:
            assert data == b"{}"
        assert gc.isenabled()
        # Some of what is frozen goes by itself meanwhile.
        assert gc.get_freeze_count() > before / 2
    gc.disable()
    try:
        parse(encoded(cottage()), "x")
        assert not gc.isenabled()
    finally:
        gc.enable()


FIRST_BY_MANY = """
import sys, threading
from circuitcheck.storage.quick import quick
with open(sys.argv[1], "rb") as file:
    data = file.read()
taken = []
sys.setswitchinterval(1e-5)
threads = [threading.Thread(target=lambda: taken.append(quick(data) is not None)) for _ in range(8)]
for thread in threads:
    thread.start()
for thread in threads:
    thread.join()
sys.exit(0 if taken == [True] * 8 else 1)
"""


def test_many_threads_may_be_the_first(tmp_path: Path) -> None:
    file = tmp_path / "drawing.wetcircuit"
    file.write_bytes(encoded(cottage()))
    done = subprocess.run(
        [sys.executable, "-c", FIRST_BY_MANY, str(file)], capture_output=True, text=True, check=False
    )
    assert (done.returncode, done.stderr) == (0, "")
