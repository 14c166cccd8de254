"""`sizes`: the worked figures as text, JSON and a table, and what it ends with."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest

from circuitcheck.cli import run
from circuitcheck.figures.figure import Figure, Input, Moves, Result
from circuitcheck.report import sizes
from circuitcheck.shipped import data_path
from tests.cli.drawings import sound, write

Capture = pytest.CaptureFixture[str]
SAMPLES = sorted(data_path("samples").glob("*.wetcircuit"))
COTTAGE = data_path("samples") / "cottage.wetcircuit"
UNTRUE = "\x1b[31mred\x1b[0m‮​=1+1"


def asked(capsys: Capture, path: Path, form: str = "text") -> tuple[int, str, str]:
    status = run(["sizes", str(path), "--as", form])
    out, err = capsys.readouterr()
    return status, out, err


def hostile(tmp_path: Path) -> Path:
    told = sound()
    told["title"] = UNTRUE
    for part in told["components"]:
        part["label"] = UNTRUE
    told["design"] = {"system_content_l": 100, "flow_temperature_c": 80, "fill_temperature_c": 10}
    return write(tmp_path / "hostile.wetcircuit", told)


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.stem)
def test_every_sample(sample: Path, capsys: Capture) -> None:
    texts = {}
    for form in ("text", "json", "csv"):
        status, texts[form], err = asked(capsys, sample, form)
        assert status == 0 and "refused for want of numbers" in err and len(err.splitlines()) == 1
    figures = json.loads(texts["json"])["figures"]
    assert {"water-content", "swell", "static-pressure"} <= {each["figure"] for each in figures}
    for each in figures:
        assert texts["text"].replace("\n    ", " ").count(each["title"]) >= 1
        assert each["refused"] or (each["results"] and each["formula"] and each["source"])
    rows = list(csv.DictReader(io.StringIO(texts["csv"])))
    assert sum(row["row"] == "result" for row in rows) == sum(len(each["results"]) for each in figures)
    assert sum(row["row"] == "input" for row in rows) == sum(len(each["inputs"]) for each in figures)
    assert max(len(line) for line in texts["text"].splitlines()) <= 140


def test_the_text_shows_result_formula_inputs_with_origin_source_and_limits(capsys: Capture) -> None:
    _, out, _ = asked(capsys, COTTAGE)
    block = out[out.index("  Swell of the heating water") :].partition("\n\n")[0]
    lines = [" ".join(line.split()) for line in block.splitlines()]
    assert "= Swell 2.125 l" in lines
    assert "Formula: e = ρ(t1) / ρ(t2) − 1" in lines and "Ve = e × V" in lines
    assert "V 74 l Water content (given design.system_content_l)" in lines
    assert any(line.startswith("Source: G. S. Kell") for line in lines)
    assert any(line.startswith("Holds: Water without glycol") for line in lines)


def test_the_same_drawing_gives_the_same_bytes(capsys: Capture) -> None:
    for form in ("text", "json", "csv"):
        assert asked(capsys, COTTAGE, form) == asked(capsys, COTTAGE, form)


def test_numbers_that_lack_are_named_and_counted(tmp_path: Path, capsys: Capture) -> None:
    told = sound() | {"design": {}}
    for each in (*told["components"], *told["pipes"]):
        each["data"] = {}
    path = write(tmp_path / "hall.wetcircuit", told)
    status, out, err = asked(capsys, path)
    figures = json.loads(asked(capsys, path, "json")[1])["figures"]
    lacking = [each for each in figures if each["missing"]]
    assert status == 0 and len(lacking) >= 4
    assert f"{len(figures)} figures, {len(lacking)} refused for want of numbers" in err
    assert "Not worked: numbers are missing." in out and "r1.water_content_l" in out
    rows = list(csv.DictReader(io.StringIO(asked(capsys, path, "csv")[1])))
    assert {row["name"] for row in rows if row["row"] == "missing"} == {
        name for each in lacking for name in each["missing"]
    }


@pytest.mark.parametrize("form", ["text", "json", "csv"])
def test_a_text_from_the_file_steers_nothing(form: str, tmp_path: Path, capsys: Capture) -> None:
    _, out, err = asked(capsys, hostile(tmp_path), form)
    assert not {"\x1b", "‮", "​"} & set(out + err)
    assert "red" in out
    if form == "csv":
        cells = [text for row in csv.reader(io.StringIO(out)) for text in row]
        assert not [text for text in cells if text.startswith(("=", "+", "@"))]
    if form == "json":
        assert json.loads(out)["title"] == UNTRUE


@pytest.mark.parametrize("form", ["text", "json", "csv"])
@pytest.mark.parametrize("content", [None, "{", '{"wetcircuit": 99}', "folder"])
def test_a_file_that_cannot_be_read(content: str | None, form: str, tmp_path: Path, capsys: Capture) -> None:
    path = tmp_path / "x.wetcircuit"
    if content == "folder":
        path.mkdir()
    elif content is not None:
        path.write_text(content, encoding="utf-8")
    status, out, err = asked(capsys, path, form)
    assert status == 2 and "cannot be read" in err
    if form == "json":
        found = json.loads(out)
        assert found["error"] and found["figures"] == []
    else:
        assert "x.wetcircuit" in out


def test_a_drawing_that_no_figure_applies_to(tmp_path: Path, capsys: Capture) -> None:
    path = write(tmp_path / "empty.wetcircuit", {"wetcircuit": 1})
    status, out, err = asked(capsys, path)
    assert status == 0 and "No figure applies" in out and "0 figures" in err


def shown(**given: Any) -> sizes.Sized:
    usual: Mapping[str, Any] = {
        "name": "one", "title": "One", "subject": ("a",), "results": (Result("r", 2.0, "l"),), "formula": "r = a",
        "inputs": (Input("a", "A", 2.0, "l", "given a.x"),), "source": "S", "limits": "L",
    }  # fmt: skip
    return sizes.Sized("f", "t", (), "england", (Figure(**{**usual, **given}),), {"a": "Part"})


def test_what_rests_on_defaults_is_told_by_kind() -> None:
    moves = (
        Moves("p1.material", "plastic", -0.1), Moves("p2.material", "plastic", -0.25), Moves("d.m", "0.2 bar", 0.031)
    )  # fmt: skip
    text = sizes.as_text(shown(moves=moves))
    assert "p1.material, p2.material: plastic would move the result by −10.0% to −25.0% each" in text
    assert "d.m: 0.2 bar would move the result by +3.1%" in text
    assert "moves,,p2.material,-0.25,share,plastic" in sizes.as_csv(shown(moves=moves))


def test_what_has_no_limit_is_null_and_never_bare_infinity() -> None:
    endless = shown(results=(Result("r", float("inf"), "l"),))
    assert json.loads(sizes.as_json(endless))["figures"][0]["results"][0]["value"] is None
    assert "without limit" in sizes.as_text(endless)


@pytest.mark.parametrize(
    ("value", "text"),
    [(0.0, "0"), (2.12512, "2.125"), (123456.0, "123456"), (0.00012345, "0.0001234"), (3e-9, "3.000e-09")],
)
def test_numbers_as_people_read_them(value: float, text: str) -> None:
    assert f"= R  {text}  l" in sizes.as_text(shown(results=(Result("r", value, "l"),)))


def test_a_figure_that_fails_inside_the_program_is_no_success(
    monkeypatch: pytest.MonkeyPatch, capsys: Capture
) -> None:
    broken = shown(results=(), refused="it failed inside the program (KeyError)", crashed=True)
    monkeypatch.setattr(sizes, "size_file", lambda path: broken)
    status, out, err = asked(capsys, COTTAGE)
    assert status == 2 and "Not worked: it failed" in out
    assert "1 failed inside the program" in err and "another reason" not in err
