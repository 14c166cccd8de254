"""Every number of a drawing at its least and its most: all checks and figures still answer."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from itertools import islice
from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS
from circuitcheck.drawing.value import Drawing
from circuitcheck.parts.kind import Field, FieldType
from circuitcheck.report.sizes import sized
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import parse, read
from circuitcheck.storage.writing import dump

SAMPLES = {"terrace-as-found": 1, "terrace-as-proposed": 4}
"""Each so many numbers of them are tried at every run."""
TINY = 5e-324
HUGE = 1.7e308


def _extremes(field: Field) -> Iterator[float]:
    """The least and the most that the field may hold."""
    if field.type is FieldType.NUMBER:
        yield TINY if field.least is None or field.least == 0 else field.least
        yield 0.0 if field.least == 0 else TINY
        yield HUGE if field.most is None else field.most


def _with(data: Mapping[str, Any], field: Field, value: float) -> dict[str, Any]:
    return {**data, field.name: value}


def _drawings(drawing: Drawing) -> Iterator[tuple[str, Drawing]]:
    """The drawing with one number after another at its extremes, for all of a kind at once."""
    kinds = {part.kind.name: part.kind for part in drawing.components.values()}
    for kind in kinds.values():
        for field in kind.fields:
            for value in _extremes(field):
                parts = {
                    id: replace(part, data=_with(part.data, field, value)) if part.kind is kind else part
                    for id, part in drawing.components.items()
                }
                yield f"{kind.name}.{field.name} = {value}", replace(drawing, components=parts)
    for field in PIPE_FIELDS:
        for value in _extremes(field):
            pipes = {
                id: replace(pipe, data=_with(pipe.data, field, value)) for id, pipe in drawing.pipes.items()
            }
            yield f"pipe.{field.name} = {value}", replace(drawing, pipes=pipes)
    for field in DESIGN_FIELDS:
        for value in _extremes(field):
            yield (
                f"design.{field.name} = {value}",
                replace(drawing, design=_with(drawing.design, field, value)),
            )


@pytest.mark.parametrize(("name", "step"), SAMPLES.items())
def test_no_number_ends_a_check_or_a_figure(name: str, step: int) -> None:
    assert _failed(name, step) == []


@pytest.mark.evening
@pytest.mark.parametrize("name", ["terrace-as-proposed", "guest-house", "village-hall"])
def test_nor_any_other(name: str) -> None:
    assert _failed(name, 1) == []


def _failed(name: str, step: int) -> list[tuple[str, str]]:
    failed = []
    for what, drawing in islice(_drawings(read(data_path("samples") / f"{name}.wetcircuit")), 0, None, step):
        try:
            parse(dump(drawing), "extreme.wetcircuit")
        except ValueError:
            continue  # refused when read: no such drawing comes here
        analysis = analyse(drawing)
        failed += [(what, check) for check in analysis.crashed]
        failed += [(what, figure.name) for figure in sized("a", drawing).figures if figure.crashed]
    return failed
