"""Each figure told by `Telling` is named as its file and titled as its lesson, on every sample and rule book."""

from __future__ import annotations

from dataclasses import replace
from importlib import import_module
from pathlib import Path

import pytest

from circuitcheck.figures.catalogue import figures, worked
from circuitcheck.figures.plant import Plant
from circuitcheck.storage.reading import read

TOLD = (
    "cistern-content",
    "draw-off",
    "emitter-output",
    "floor",
    "heat-balance",
    "instant-hot-water",
    "mains-demand",
    "mixed-water",
    "open-vent",
    "secondary-return",
    "standing-loss",
    "store-heat-up",
    "wait-for-hot",
)
SAMPLES = sorted((Path(__file__).parents[3] / "samples").glob("*.wetcircuit"))


@pytest.mark.parametrize("name", TOLD)
def test_name_and_title(name: str) -> None:
    code = import_module(f"circuitcheck.figures.worked.{name.replace('-', '_')}")
    assert (code.TELLING.name, code.TELLING.title) == (name, figures()[name].title)


@pytest.mark.parametrize("rule_book", ["england", "european_standards"])
@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_samples(path: Path, rule_book: str) -> None:
    drawing = read(path)
    plant = Plant(replace(drawing, design={**drawing.design, "rule_book": rule_book}))
    for name in TOLD:
        for figure in worked(figures()[name], plant):
            assert not figure.crashed, figure
            assert figure.missing == (), (figure.name, figure.missing)
            assert set(figure.subject) <= set(drawing.components)
            assert all(result.value == result.value for result in figure.results)
