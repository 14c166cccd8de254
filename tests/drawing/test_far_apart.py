"""A file may put things a million squares apart: what that costs grows with the things, not with the squares."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from circuitcheck.drawing.cells import CELL, most_cells
from circuitcheck.drawing.lying import Lying
from circuitcheck.drawing.routing import routes
from circuitcheck.drawing.value import Drawing, Pipe
from circuitcheck.geometry import Point
from circuitcheck.picture.crossings import LONG, Crossings
from circuitcheck.picture.flow import CLEAR_PX, MOST_ARROWS, PITCH_PX, arrows
from circuitcheck.picture.labels import Obstacles
from circuitcheck.storage.limits import FARTHEST

FAR = FARTHEST
LEAST_S, MOST_MB = 10, 512
"""Time on the processor, a start of Python and a busy machine counted in, and memory of the whole process."""

BOUNDED = """
import resource, sys
resource.setrlimit(resource.RLIMIT_CPU, (int(sys.argv[2]), int(sys.argv[2])))
from circuitcheck.cli import run
status = run(["check", sys.argv[1]])
# The most that this process had; getrusage would count what its parent had before it.
most = int(open("/proc/self/status").read().split("VmHWM:")[1].split()[0]) / 1024
sys.exit(0 if status in (0, 1) and most < float(sys.argv[3]) else f"status {status}, {most} MB")
"""

PUMPS = [{"id": "a", "kind": "pump", "at": [-FAR, -FAR]}, {"id": "b", "kind": "pump", "at": [FAR, FAR]}]
BETWEEN = {"id": "p", "ends": [["a", "out"], ["b", "in"]]}
HOSTILE: dict[str, dict[str, Any]] = {
    "parts, the program routes": {"components": PUMPS, "pipes": [BETWEEN]},
    "parts, a person's corners": {"components": PUMPS, "pipes": [{**BETWEEN, "via": [[-FAR, FAR]]}]},
    "free ends": {"pipes": [{"id": "p", "ends": [[-FAR, -FAR], [FAR, FAR]]}]},
    "aslant": {"pipes": [{"id": "p", "ends": [[-FAR, 3], [FAR, 7]], "via": [[0, -FAR], [1, FAR]]}]},
    "to and fro": {
        "pipes": [{"id": "p", "ends": [[0, 0], [1, 1]], "via": [[(-1) ** i * FAR, i] for i in range(2000)]}]
    },
    "many times over": {
        "pipes": [
            {"id": f"p{row}", "ends": [[-FAR, 9 * row], [FAR, 9 * row]], "via": [[0, 9 * row]]}
            for row in range(100)
        ]
    },
}


@pytest.mark.skipif(sys.platform != "linux", reason="measured as Linux tells it")
@pytest.mark.parametrize("name", HOSTILE)
def test_a_tiny_file_is_checked_in_little_time_and_memory(name: str, tmp_path: Path) -> None:
    file = tmp_path / "far.wetcircuit"
    file.write_text(json.dumps({"wetcircuit": 1, "sheet": {"metres_per_square": 0.5}, **HOSTILE[name]}))
    ended = subprocess.run(
        [sys.executable, "-c", BOUNDED, str(file), str(LEAST_S), str(MOST_MB)],
        env={**os.environ, "PYTHONPATH": str(Path(__file__).parents[2])},
        capture_output=True,
        text=True,
        timeout=120,
    )
    assert ended.returncode == 0, ended.stderr[-2000:]


def pipe(id: str, *points: tuple[float, float]) -> Pipe:
    first, *corners, last = (Point(*point) for point in points)
    return Pipe(id, (first, last), tuple(corners))


NEAR = pipe("near", (10, 0.4), (10, 6), (14, 6))
AWAY = pipe("away", (40, 30), (44, 30), (44, 34))
LONG_ONE = pipe("long", (-FAR, 0), (0, 0), (FAR, 0))


def laid(*pipes: Pipe) -> Drawing:
    return Drawing(pipes={each.id: each for each in pipes})


@pytest.mark.parametrize("order", [(NEAR, AWAY, LONG_ONE), (LONG_ONE, NEAR, AWAY)])
def test_what_lies_beside_a_long_line_is_found_from_both(order: tuple[Pipe, ...]) -> None:
    lying = Lying(routes(laid(*order)))
    assert "long" in lying.pipes_beside("near")
    assert "near" in lying.pipes_beside("long")


def test_the_index_goes_on_when_a_line_grows_long_and_short_again() -> None:
    short, before = pipe("long", (0, 0), (4, 0), (8, 0)), laid(NEAR, AWAY)
    lying, lines = Lying(routes(before)), routes(before)
    for line in (LONG_ONE, short, LONG_ONE):
        after = laid(NEAR, AWAY, line)
        lines = routes(after, lines)
        lying = lying.after(lines)
        fresh = Lying(routes(after))
        for id in after.pipes:
            assert set(fresh.pipes_beside(id)) <= set(lying.pipes_beside(id))
            assert lying.line(id) == fresh.line(id)


def test_a_usual_sheet_keeps_small_buckets() -> None:
    rows = [pipe(f"p{row}", (0, 2 * row), (150, 2 * row), (150, 2 * row + 1)) for row in range(500)]
    lying = Lying(routes(laid(*rows)))
    assert len(lying.pipes_beside("p100")) < 10
    assert most_cells(500) > 500 * 150 / CELL


def test_hops_of_long_runs_are_those_of_short_ones() -> None:
    for half in (50.0, LONG * 2.0, FAR):
        crossings = Crossings()
        crossings.put("level", [Point(-half, 0), Point(half, 0)])
        assert crossings.put("upright", [Point(3, -half), Point(3, half)]) == {"level"}
        crossings.put("short", [Point(7, -4), Point(7, 4)])
        crossings.put("across", [Point(-3, 2), Point(9, 2)])
        assert crossings.hops("level") == (Point(3, 0), Point(7, 0))
        assert crossings.hops("across") == (Point(3, 2), Point(7, 2))
        assert crossings.remove("upright") >= {"level", "across"}
        assert crossings.hops("across") == (Point(7, 2),)


def test_obstacles_of_any_size_are_met() -> None:
    obstacles = Obstacles()
    obstacles.put("long", [(-3e7, 0, 3e7, 6)])
    obstacles.put("small", [(100, 0, 110, 10)])
    assert obstacles.met((104, 2, 106, 4)) == {"long", "small"}
    assert obstacles.met((-2e7, -2e7, 2e7, 2e7)) == {"long", "small"}
    obstacles.put("long", ())
    assert obstacles.met((104, 2, 106, 4)) == {"small"}


def test_arrowheads_of_a_long_run_are_few_and_evenly_spread() -> None:
    heads = arrows([(0.0, 0.0), (3e7, 0.0)], "flow", forward=True)
    assert len(heads) == 2 * MOST_ARROWS
    short = arrows([(0.0, 0.0), (3000.0, 0.0)], "flow", forward=True)
    assert len(short) == 2 * (int((3000 - 2 * CLEAR_PX) // PITCH_PX) + 1)
