"""Drawings that nobody lays out so: everything far apart, or all in one place. None may take long."""

from __future__ import annotations

import json
import time
from random import Random
from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.drawing.cells import most_pairs
from circuitcheck.drawing.laying import EFFORT
from circuitcheck.drawing.routing import routes
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Grade
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import parse, read

MOST_S = 2.0
BUSY = 5.0
"""How many times slower than by itself a test may run here."""
LAYOUT = {"near-miss", "unclear-crossing", "overlapping-parts"}

Items = list[dict[str, Any]]


def _drawing(components: Items, pipes: Items) -> Drawing:
    content = {"wetcircuit": 1, "title": "Crowded", "components": components, "pipes": pipes}
    return parse(json.dumps(content).encode(), "crowded.wetcircuit")


def _pumps(places: list[tuple[int, int]]) -> Items:
    return [{"id": f"p{place}", "kind": "pump", "at": at} for place, at in enumerate(places)]


def _in_a_row(count: int) -> Items:
    return [{"id": f"w{i}", "ends": [[f"p{i}", "out"], [f"p{i + 1}", "in"]]} for i in range(count - 1)]


def _scattered(count: int, over: int) -> list[tuple[int, int]]:
    chance = Random(1)
    return [(chance.randrange(over), chance.randrange(over)) for _ in range(count)]


CROWDED = {
    "in one place": (_pumps([(0, 0)] * 1_000), _in_a_row(1_000)),
    "not piped, in one place": (_pumps([(0, 0)] * 2_000), []),
    "the same two ends": ([], [{"id": f"w{i}", "ends": [[0, 0], [30, 20]]} for i in range(2_000)]),
}
LAID_OUT_BADLY = {
    "far apart": (_pumps(_scattered(400, 4_000)), _in_a_row(400)),
    "pipes over one another": (_pumps(_scattered(600, 60)), _in_a_row(600)),
    "two pipes of a thousand corners": (
        [],
        [
            {"id": f"w{k}", "ends": [[0, k], [1001, k]], "via": [[i, i % 2 * 7 + k] for i in range(1, 1_000)]}
            for k in range(2)
        ],
    ),
}


@pytest.mark.parametrize("case", [*CROWDED, *LAID_OUT_BADLY])
def test_it_is_judged_within_two_seconds(case: str) -> None:
    drawing = _drawing(*(CROWDED | LAID_OUT_BADLY)[case])
    begun = time.process_time()
    analysis = analyse(drawing)
    assert time.process_time() - begun < BUSY * MOST_S
    assert analysis.crashed == ()


@pytest.mark.parametrize("case", CROWDED)
def test_what_lies_in_one_place_is_never_passed_in_silence(case: str) -> None:
    analysis = analyse(_drawing(*CROWDED[case]))
    told = {finding.check for finding in analysis.findings if finding.grade is Grade.UNANSWERED}
    assert told & LAYOUT
    assert told & LAYOUT <= set(analysis.not_judged)
    for name in told & LAYOUT:
        assert analysis.why_not_judged[name] == "too much lies in one place on the sheet"


def test_every_pipe_has_a_line_when_the_effort_is_spent() -> None:
    drawing = _drawing(*LAID_OUT_BADLY["far apart"])
    lines = routes(drawing)
    assert set(lines) == set(drawing.pipes)
    for id, line in lines.items():
        ends = drawing.pipes[id].ends
        assert (line[0], line[-1]) == tuple(drawing.end_at(end) for end in ends)
    assert dict(routes(drawing)) == dict(lines)


def test_a_house_is_far_from_the_bounds(monkeypatch: pytest.MonkeyPatch) -> None:
    drawing = read(data_path("samples") / "terrace-as-proposed.wetcircuit")
    lines = routes(drawing)
    analysis = analyse(drawing)
    assert not LAYOUT & set(analysis.not_judged)
    # A tenth of the effort, and of the pairs, does as well.
    monkeypatch.setattr("circuitcheck.drawing.laying.EFFORT", EFFORT / 10)
    monkeypatch.setattr("circuitcheck.drawing.lying.most_pairs", lambda things: most_pairs(things) / 10)
    assert dict(routes(drawing)) == dict(lines)
    assert analyse(drawing).judged == analysis.judged
