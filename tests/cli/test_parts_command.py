"""`parts`: the parts list as text, JSON and a table that is safe in a spreadsheet."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path

import pytest

from circuitcheck.cli import COMMANDS, run
from circuitcheck.report.parts import COLUMNS
from tests.cli.drawings import Told, part, pipe, write

Capture = pytest.CaptureFixture[str]


def gaps() -> Told:
    """A hall whose pipes have neither size nor length, but for its discharge, which has a size."""
    return {
        "wetcircuit": 1,
        "title": "Village hall",
        "components": [
            part("hs1", "heat_source", output_kw=18),
            part("t1", "tee"), part("sv1", "safety_valve"), part("de1", "discharge_end"),
            part("ev1", "expansion_vessel", volume_l=18), part("pu1", "pump"),
        ],
        "pipes": [
            pipe("p1", "hs1.flow", "t1.a"), pipe("p2", "t1.branch", "sv1.inlet"),
            pipe("p3", "sv1.outlet", "de1.inlet", size_mm=15), pipe("p4", "t1.b", "pu1.in"),
        ],
    }  # fmt: skip


@pytest.fixture
def hall(tmp_path: Path) -> Path:
    return write(tmp_path / "hall.wetcircuit", gaps())


def cells(text: str) -> list[dict[str, str]]:
    """The rows of the table by their headings."""
    return list(csv.DictReader(io.StringIO(text)))


def test_it_is_a_command_of_its_own() -> None:
    assert "parts" in COMMANDS


def test_text_counts_and_names_what_is_not_known(hall: Path, capsys: Capture) -> None:
    assert run(["parts", str(hall)]) == 0
    out, err = capsys.readouterr()
    assert "Village hall" in out
    assert "1  Heat source; output 18 kW  [hs1]" in out
    assert "The length of 4 of 4 pipes is not known and not in the sums: p3, p1, p2, p4." in out
    assert "Material taken as copper, since not given, for 4 pipes" in out
    assert "4 pipes" in err


def test_json_holds_the_same(hall: Path, capsys: Capture) -> None:
    assert run(["parts", str(hall), "--as", "json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["title"] == "Village hall" and told["program"].startswith("circuitcheck ")
    by_kind = {line["kind"]: line for line in told["parts"]}
    assert by_kind["expansion_vessel"]["data"] == {"volume_l": 18, "precharge_bar": None}
    assert by_kind["safety_valve"]["usual"] == ["set_pressure_bar", "outlet_size_mm"]
    assert by_kind["safety_valve"]["sizes_mm"] == [None, 15]
    assert sum(line["count"] for line in told["tees"]) == 1
    assert [line["size_mm"] for line in told["pipes"]] == [15, None]
    assert all(line["length_not_known"] == line["ids"] for line in told["pipes"])


def test_the_same_drawing_gives_the_same_bytes(hall: Path, capsys: Capture) -> None:
    for form in ("text", "json", "csv"):
        run(["parts", str(hall), "--as", form])
        first = capsys.readouterr().out
        run(["parts", str(hall), "--as", form])
        assert capsys.readouterr().out == first


def test_csv_names_every_pipe_whose_length_is_not_known(hall: Path, capsys: Capture) -> None:
    assert run(["parts", str(hall), "--as", "csv"]) == 0
    out = capsys.readouterr().out
    rows = cells(out)
    assert tuple(rows[0]) == COLUMNS
    pipes = [row for row in rows if row["section"] == "Pipe"]
    named = " ".join(row["length_not_known"] for row in pipes).split()
    assert sorted(named) == ["p1", "p2", "p3", "p4"]
    assert {row["length_m"] for row in pipes} == {"0.00"}
    assert not any(row["count"] for row in pipes)


@pytest.mark.parametrize("begin", ["=", "+", "-", "@", "\t", "\r"])
def test_no_cell_is_a_formula(begin: str, tmp_path: Path, capsys: Capture) -> None:
    told = gaps()
    told["components"] += [part(f"{begin}cmd", "pump"), part("safe", "drain")]
    told["pipes"] += [pipe(f"{begin}p", f"{begin}cmd.out", "safe.connection")]
    assert run(["parts", str(write(tmp_path / "x.wetcircuit", told)), "--as", "csv"]) == 0
    for row in csv.reader(io.StringIO(capsys.readouterr().out)):
        assert not any(each.startswith(("=", "+", "-", "@", "\t", "\r")) for each in row)


def test_what_steers_a_terminal_is_shown_as_a_code(tmp_path: Path, capsys: Capture) -> None:
    told = {**gaps(), "title": "Hall\x1b[31m\u202e"}
    for form in ("text", "json"):
        run(["parts", str(write(tmp_path / "x.wetcircuit", told)), "--as", form])
        out = capsys.readouterr().out
        assert "\x1b" not in out and "\u202e" not in out


def test_an_empty_drawing(tmp_path: Path, capsys: Capture) -> None:
    assert run(["parts", str(write(tmp_path / "x.wetcircuit", {"wetcircuit": 1}))]) == 0
    assert "Nothing is drawn." in capsys.readouterr().out


@pytest.mark.parametrize("content", [None, "{", '{"wetcircuit": 99}'])
def test_what_cannot_be_read_is_told(content: str | None, tmp_path: Path, capsys: Capture) -> None:
    path = tmp_path / "x.wetcircuit"
    if content is not None:
        path.write_text(content)
    assert run(["parts", str(path)]) == 2
    out, err = capsys.readouterr()
    assert out == "" and "x.wetcircuit" in err
