"""The worked figures as a whole: found by walking, never raising, complete, on samples and random plants."""

from __future__ import annotations

import re
from dataclasses import replace
from math import isnan
from pathlib import Path
from typing import Any

import pytest
from hypothesis import Phase, given, settings

import circuitcheck.figures.worked as folder
from circuitcheck.checks.catalogue import checks
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.drawing.edits import set_design, set_field
from circuitcheck.drawing.fields import DESIGN_FIELDS
from circuitcheck.drawing.value import Component, Drawing
from circuitcheck.figures.catalogue import all_figures, figures, worked
from circuitcheck.figures.figure import Figure, Result, WorkedFigure
from circuitcheck.figures.plant import Plant
from circuitcheck.rules.book import NoRuleError
from circuitcheck.shipped import data_path
from circuitcheck.sizing.water import OutsideLimitsError
from circuitcheck.storage.reading import read
from tests.made import made
from tests.strategies import drawings

SAMPLES = sorted(data_path("samples").glob("*.wetcircuit"))
FIELD = re.compile(r"[a-z][a-z0-9_]*")
OWN = (
    "discharge", "heating-vessel", "least-content", "safety-valve", "static-pressure", "store-vessel", "swell",
    "test-and-treatment", "water-content", "water-properties",
)  # fmt: skip


def stripped(drawing: Drawing, design: dict[str, Any] | None = None) -> Drawing:
    """The drawing with every number and switch of its parts and pipes not known."""
    parts = {
        id: replace(part, data={name: None for name in part.data if name not in ("built_in", "height_m")})
        for id, part in drawing.components.items()
    }
    pipes = {id: replace(pipe, data=dict.fromkeys(pipe.data)) for id, pipe in drawing.pipes.items()}
    return replace(drawing, design=design or {}, components=parts, pipes=pipes)


def test_every_file_is_a_figure_with_a_title_and_a_reason() -> None:
    files = {
        path.stem.replace("_", "-")
        for path in Path(folder.__path__[0]).glob("*.py")
        if path.stem != "__init__"
    }
    assert set(figures()) == files and list(figures()) == sorted(files)
    assert set(OWN) <= files
    assert all(each.title and each.about for each in figures().values())


def _raising(error: Exception) -> WorkedFigure:
    def work(plant: Plant) -> tuple[Figure, ...]:
        raise error

    return WorkedFigure("one", "One", "", work)


@pytest.mark.parametrize(
    ("error", "why", "crashed"),
    [
        (NoRuleError("england", "a.b"), "the rule book england sets no a: b", False),
        (TooLargeError(), "too many", False),
        (OutsideLimitsError("water at 200 °C"), "water at 200 °C", False),
        (ZeroDivisionError("x"), "failed inside the program", True),
    ],
)
def test_what_cannot_be_worked_says_why_and_raises_nothing(error: Exception, why: str, crashed: bool) -> None:
    (figure,) = worked(_raising(error), Plant(made({}, "")))
    assert why in figure.refused and figure.crashed is crashed and not figure.missing


def test_a_figure_has_results_or_says_why_not() -> None:
    with pytest.raises(ValueError, match="says why"):
        Figure("one", "One", (), (), "", (), "", "")
    with pytest.raises(ValueError, match="says why"):
        Figure("one", "One", (), (Result("r", 1, "l"),), "", (), "", "", missing=("a.b",))


def test_an_empty_drawing_has_none() -> None:
    assert all_figures(Plant(made({}, ""))) == ()


def _is_sound(figure: Figure, drawing: Drawing) -> None:
    assert not figure.crashed, figure.refused
    owners = {"design", "sheet", *drawing.components, *drawing.pipes, *drawing.controls}
    assert all(FIELD.fullmatch(name.rpartition(".")[2]) for name in figure.missing), figure.missing
    assert {name.rpartition(".")[0] for name in figure.missing} <= owners
    assert set(figure.subject) <= owners
    assert len(set(figure.missing)) == len(figure.missing)
    if not figure.refused:
        assert figure.formula and figure.source and figure.limits
    assert all(each.origin for each in figure.inputs)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_samples(path: Path) -> None:
    drawing = read(path)
    found = all_figures(Plant(drawing))
    assert found
    for figure in found:
        _is_sound(figure, drawing)
        assert figure.name not in OWN or not figure.refused, (figure.name, figure.refused, figure.missing)
    bare = stripped(drawing)
    for figure in all_figures(Plant(bare)):
        _is_sound(figure, bare)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_what_is_named_missing_is_all_that_is_missing(path: Path) -> None:
    """With the fields that a figure names told as the sample tells them, it lacks nothing more."""
    whole = read(path)
    bare = stripped(whole)
    asked = 0
    for figure in all_figures(Plant(bare)):
        if figure.name not in OWN or not figure.lacks_numbers:
            continue
        told = _told(bare, whole, figure.missing)
        if told is None:
            continue  # the sample itself does not tell it
        asked += 1
        again = worked(figures()[figure.name], Plant(told))
        same = [each for each in again if (each.title, each.subject) == (figure.title, figure.subject)]
        assert not [each.missing for each in same if each.missing], figure.name
    assert asked


def _told(bare: Drawing, whole: Drawing, fields: tuple[str, ...]) -> Drawing | None:
    for name in fields:
        owner, _, field = name.rpartition(".")
        if owner == "design":
            if whole.design.get(field) is None:
                return None
            bare = replace(bare, design={**bare.design, field: whole.design[field]})
        elif owner in bare.pipes:
            pipe = bare.pipes[owner]
            value = whole.pipes[owner].data.get(field)
            if value is None:
                return None
            bare = replace(bare, pipes={**bare.pipes, owner: replace(pipe, data={**pipe.data, field: value})})
        else:
            part = bare.components[owner]
            value = whole.components[owner].value(field)
            if value is None:
                return None
            own = replace(part, data={**part.data, field: value})
            bare = replace(bare, components={**bare.components, owner: own})
    return bare


@settings(phases=[Phase.generate])
@given(drawings())
def test_random_drawings_raise_nothing(drawing: Drawing) -> None:
    for figure in all_figures(Plant(drawing)):
        _is_sound(figure, drawing)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_what_rests_on_a_usual_value_says_how_much_it_would_move(path: Path) -> None:
    """Everything that has a default left out: each default a figure names among its inputs is weighed."""
    drawing = read(path)
    parts = {
        id: replace(part, data={name: held for name, held in part.data.items() if _is_needed(part, name)})
        for id, part in drawing.components.items()
    }
    pipes = {
        id: replace(pipe, data={name: held for name, held in pipe.data.items() if name != "material"})
        for id, pipe in drawing.pipes.items()
    }
    usual = [field.name for field in DESIGN_FIELDS if field.default is not None and field.name != "rule_book"]
    design = {name: held for name, held in drawing.design.items() if name not in usual}
    figures_ = all_figures(Plant(replace(drawing, components=parts, pipes=pipes, design=design)))
    weighed = 0
    for figure in figures_:
        taken = [each.origin for each in figure.inputs if each.origin.startswith("usual value ")]
        fields = [] if figure.refused else [origin.removeprefix("usual value ") for origin in taken]
        assert set(fields) <= {each.field for each in figure.moves}, figure.name
        weighed += len(fields)
    counted = any(each.symbol == "usual" for figure in figures_ for each in figure.inputs)
    moved = any("resistances" in each.field for figure in figures_ for each in figure.moves)
    assert weighed and counted == moved


def _is_needed(part: Component, name: str) -> bool:
    return part.kind.field(name).default is None or name in ("built_in", "place")


def test_every_figure_worked_names_formula_source_and_limits() -> None:
    for path in SAMPLES:
        for figure in all_figures(Plant(read(path))):
            assert figure.formula and figure.source and figure.limits, figure.name
            assert all(each.origin and each.symbol for each in figure.inputs), figure.name


def test_the_checks_that_a_figure_names_are_there() -> None:
    named = {name for figure in figures().values() for name in figure.checks}
    assert named <= set(checks()) and {"vessel-too-small", "floor-load", "bypass-set-wrong"} <= named


@pytest.mark.parametrize(
    "field", ["design.system_content_l", "vessel.precharge_bar", "hs.output_kw", "pump.shut_off_head_m"]
)
@pytest.mark.parametrize("value", [0, 1e-9, 1e9])
def test_numbers_that_cannot_be_meant_crash_nothing(field: str, value: float) -> None:
    cottage = read(data_path("samples") / "cottage.wetcircuit")
    id, _, name = field.rpartition(".")
    drawing = set_design(cottage, name, value) if id == "design" else set_field(cottage, id, name, value)
    for figure in all_figures(Plant(drawing)):
        assert not figure.crashed, figure.name
        assert not any(isinstance(each.value, float) and isnan(each.value) for each in figure.results), (
            figure.name
        )
