"""A sound file is read as it stands; what this program does not know is kept."""

from __future__ import annotations

import json
import os
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds
from circuitcheck.storage import reading
from circuitcheck.storage.limits import MOST_BYTES
from circuitcheck.storage.reading import LARGE, DrawingError, content, parse, read
from circuitcheck.storage.writing import dump, write
from tests.storage.files import File, cottage, encoded, faults


def read_back(file: File) -> Drawing:
    return parse(encoded(file), "cottage.wetcircuit")


def test_a_sound_file_is_read_as_it_stands() -> None:
    drawing = read_back(cottage())
    assert drawing.title == "Cottage"
    assert drawing.sheet == {"metres_per_square": 0.25}
    assert drawing.design["system_content_l"] is None
    heat = drawing.components["hs1"]
    assert (heat.kind.name, heat.label, heat.at) == ("heat_source", "Heat source", Point(4, 10))
    assert heat.data == {"output_kw": 18, "built_in": ("pump", "gauge")}
    assert drawing.components["zv1"].value("rest") is None
    first, second = drawing.pipes["p1"], drawing.pipes["p2"]
    assert first.ends == (Joint("hs1", "flow"), Joint("t1", "a"))
    assert first.via == (Point(8, 6),)
    assert second.ends == (Joint("t1", "b"), Point(20, 8))
    assert [type(end) for end in second.ends] == [Joint, Point]
    assert second.via is None
    assert drawing.controls["rt1"].acts_on == ("zv1",)
    assert drawing.controls["rt1"].set_c == 20
    assert drawing.notes[0].replies[0].text == "It is."
    assert drawing.acceptances[0].until == "2030-01-31"
    assert drawing.reviews[0].meaning == "00ff"


def test_a_file_may_leave_out_all_but_its_version() -> None:
    assert parse(b'{"wetcircuit": 1}', "empty.wetcircuit") == Drawing()


def test_what_is_left_out_has_its_default() -> None:
    file = {
        "wetcircuit": 1,
        "components": [{"id": "t1", "kind": "tee"}],
        "controls": [{"kind": "programmer"}],
    }
    drawing = read_back(file)
    tee = drawing.components["t1"]
    assert (tee.label, tee.at, tee.turn, tee.mirrored, dict(tee.data)) == ("", None, 0, False, {})
    assert [control.acts_on for control in drawing.controls.values()] == [()]


def test_the_order_of_a_file_is_kept() -> None:
    file = cottage()
    file["components"].reverse()
    assert list(read_back(file).components) == ["zv1", "us1", "t1", "hs1"]


def test_notes_and_controls_without_an_id_get_a_free_one() -> None:
    file = cottage()
    file["components"].append({"id": "n2", "kind": "tee"})
    file["notes"] += [{"text": "one"}, {"text": "two"}]
    file["controls"].append({"kind": "programmer"})
    drawing = read_back(file)
    assert [note.id for note in drawing.notes] == ["n1", "n3", "n4"]
    assert list(drawing.controls) == ["rt1", "c1"]


def test_a_whole_number_may_be_written_with_a_point() -> None:
    file = cottage()
    file["wetcircuit"] = 1.0
    file["components"][0]["turn"] = 90.0
    turned = read_back(file).components["hs1"].turn
    assert turned == 90
    assert type(turned) is int


def test_a_byte_order_mark_is_accepted() -> None:
    assert parse(b"\xef\xbb\xbf" + encoded(cottage()), "x") == read_back(cottage())


@pytest.mark.parametrize("kind", sorted(component_kinds()))
def test_every_data_field_may_be_null(kind: str) -> None:
    data = {field.name: None for field in component_kinds()[kind].fields}
    file = {"wetcircuit": 1, "components": [{"id": "x", "kind": kind, "data": data}]}
    assert read_back(file).components["x"].data == data


UNKNOWN: dict[str, Any] = {"later_field": {"deep": [1, {"x": None}, "é\n"]}, "later_number": 5}


def holders(file: File) -> list[dict[str, Any]]:
    """Every object of the file that may hold fields this program does not know."""
    found = [file, file["sheet"], file["design"], file["notes"][0]["replies"][0]]
    for name in ("components", "pipes", "controls", "notes", "acceptances", "reviews"):
        found.append(file[name][0])
    return [*found, file["components"][0]["data"], file["pipes"][0]["data"]]


@pytest.mark.parametrize("place", range(len(holders(cottage()))))
def test_unknown_fields_are_kept_and_written_back(place: int) -> None:
    file = cottage()
    holders(file)[place].update(UNKNOWN)
    written = json.loads(dump(read_back(file)))
    there = holders(written)[place]
    assert {name: there[name] for name in UNKNOWN} == UNKNOWN


def test_things_that_look_odd_but_are_allowed() -> None:
    file = cottage()
    # Two free ends on one point, a pipe from a part to itself, an id with the mark of a valve's leg.
    file["components"].append({"id": "zv1:a", "kind": "cap"})
    file["pipes"] += [
        {"id": "p3", "ends": [[20, 8], [20, 8]], "via": []},
        {"id": "p4", "ends": [["us1", "cold"], ["us1", "hot"]]},
    ]
    # A reference to an item of the wrong sort is for the checks to judge.
    file["components"][2]["data"]["energy_cut_out"] = "t1"
    file["notes"][0]["on"] = ["gone"]
    file["acceptances"][0] = {"check": "of-a-later-version", "on": ["gone", "gone"], "until": None}
    assert faults(encoded(file)) == ()


def test_an_error_names_the_file_and_survives_another_process(tmp_path: Path) -> None:
    path = tmp_path / "broken.wetcircuit"
    path.write_bytes(b"{}")
    with pytest.raises(DrawingError) as caught:
        read(path)
    assert caught.value.file == str(path)
    assert str(caught.value).startswith(f"{path} cannot be read: ")
    again = type(caught.value)(*caught.value.args)
    assert again.faults == caught.value.faults


def test_reading_and_writing_a_file(tmp_path: Path) -> None:
    path = tmp_path / "cottage.wetcircuit"
    drawing = read_back(cottage())
    write(drawing, path)
    assert read(path) == drawing
    assert [file.name for file in tmp_path.iterdir()] == ["cottage.wetcircuit"]


def test_a_missing_file_is_the_systems_error(tmp_path: Path) -> None:
    with pytest.raises(FileNotFoundError):
        read(tmp_path / "none.wetcircuit")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="there are no pipes between programs with a name there")
def test_a_file_without_a_size_of_its_own_is_read_whole(tmp_path: Path) -> None:
    file = tmp_path / "cottage.wetcircuit"
    os.mkfifo(file)
    data = encoded(cottage())
    with ThreadPoolExecutor() as beside:
        written = beside.submit(file.write_bytes, data)
        assert content(file) == data
        assert written.result() == len(data)


def test_a_file_that_grows_while_it_is_read_is_read_whole(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = tmp_path / "cottage.wetcircuit"
    data = encoded(cottage())
    file.write_bytes(data)
    monkeypatch.setattr(os, "fstat", lambda _: os.stat_result((0,) * 6 + (100, 0, 0, 0)))
    assert content(file) == data


@pytest.mark.parametrize("beyond", [-1, 0, 1, 2])
def test_no_more_of_a_file_is_read_than_tells_that_it_is_too_large(tmp_path: Path, beyond: int) -> None:
    file = tmp_path / "large.wetcircuit"
    with file.open("wb") as large:
        large.truncate(MOST_BYTES + beyond)
    assert len(content(file)) == MOST_BYTES + min(beyond, 1)


def test_many_small_files_are_read_the_quick_way_once_they_pay_for_it(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    taken: list[int] = []

    def quick(data: bytes) -> Drawing | None:
        taken.append(reading._so_far.in_bytes)
        return None

    monkeypatch.setattr(reading._so_far, "in_bytes", 0)
    monkeypatch.setattr("circuitcheck.storage.quick.quick", quick)
    data = encoded(cottage())
    before = -(-LARGE // len(data)) - 1
    for _ in range(before):
        parse(data, "cottage.wetcircuit")
    assert not taken
    for number in range(3):
        # What the quick way does not take is read all the same.
        assert parse(data, "cottage.wetcircuit").title == "Cottage"
        assert taken.pop() == (before + number + 1) * len(data)
