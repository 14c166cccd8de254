"""Parts fitted close by a port, in a pipe or teed off it: what was known stays known."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import pytest

from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.removing import remove
from circuitcheck.drawing.routing import routes
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.geometry import Point
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.drawing.invariants import broken
from tests.made import made

KNOWN = {"size_mm": 22, "length_m": 4.0, "rise_m": 1.0, "bends": 2}


def ring(placed: bool = True) -> Drawing:
    at = {"hs": (0.0, 0.0), "pu": (20.0, -1.0)} if placed else {}
    return made(
        {"hs": "heat_source", "pu": "pump"},
        "out: hs.flow - pu.in\nback: pu.out - hs.return",
        pipe_data={"out": KNOWN, "back": KNOWN},
        at=at,
    )


def joined_to(drawing: Drawing, part: str, port: str) -> tuple[str, str]:
    """What lies at the other end of the pipe on a port."""
    pipe = drawing.pipes[drawing.joined[Joint(part, port)]]
    (other,) = (end for end in pipe.joints if end != (part, port))
    return other.part, other.port


@pytest.mark.parametrize("placed", [True, False])
@pytest.mark.parametrize("by", [Joint("hs", "flow"), Joint("pu", "in")])
def test_a_part_cut_in_stands_right_at_the_port_and_the_rest_keeps_what_is_known(
    by: Joint, placed: bool
) -> None:
    work = Fitting(ring(placed))
    valve = work.cut_in("check_valve", by)
    after = work.drawing
    assert broken(after) == []
    assert joined_to(after, *by) == (valve, "in")
    stub, rest = (after.pipes[after.joined[Joint(valve, port)]] for port in ("in", "out"))
    assert [stub.data[name] for name in ("length_m", "rise_m", "bends")] == [0, 0, 0]
    assert {name: rest.data[name] for name in KNOWN} == KNOWN
    assert (after.components[valve].at is not None) is placed


def test_the_port_that_faces_it_can_be_told() -> None:
    work = Fitting(ring())
    valve = work.cut_in("check_valve", Joint("hs", "flow"), port="out")
    assert joined_to(work.drawing, "hs", "flow") == (valve, "out")
    assert joined_to(work.drawing, "pu", "in") == (valve, "in")


def test_a_part_is_teed_off_where_there_is_room() -> None:
    work = Fitting(ring())
    gauge = work.tee_off(Joint("hs", "flow"), "pressure_gauge", "connection")
    after = work.drawing
    assert broken(after) == []
    tee, port = joined_to(after, gauge, "connection")
    assert (after.components[tee].kind.name, port) == ("tee", "branch")
    assert {joined_to(after, tee, end)[0] for end in "ab"} == {"hs", "pu"}
    box = after.components[gauge].box()
    assert box is not None
    for other in ("hs", "pu"):
        theirs = after.components[other].box()
        assert theirs is not None
        assert box[0] >= theirs[2] or box[2] <= theirs[0] or box[1] >= theirs[3] or box[3] <= theirs[1]


def test_a_bridge_goes_from_the_first_to_the_second() -> None:
    work = Fitting(ring())
    bypass = work.bridge(Joint("pu", "out"), Joint("hs", "return"), "bypass_valve")
    after = work.drawing
    assert broken(after) == []
    first, second = joined_to(after, bypass, "in")[0], joined_to(after, bypass, "out")[0]
    assert joined_to(after, "pu", "out")[0] == first
    assert joined_to(after, "hs", "return")[0] == second


def test_a_part_turned_round_changes_its_pipes_and_not_the_picture() -> None:
    before = ring()
    work = Fitting(before)
    work.turn_round("pu")
    after = work.drawing
    assert broken(after) == []
    assert joined_to(after, "hs", "flow") == ("pu", "out")
    assert after.components["pu"].turn == 180
    lines = routes(before), routes(after)
    assert [line[0] for line in lines[0].values()] == [line[0] for line in lines[1].values()]
    assert [line[-1] for line in lines[0].values()] == [line[-1] for line in lines[1].values()]


def test_an_end_moves_to_another_pipe_and_the_tee_it_left_heals() -> None:
    drawing = read(data_path("samples") / "terrace-valve-before-vessel.wetcircuit")
    vessel = next(part.id for part in drawing.components.values() if part.kind.name == "expansion_vessel")
    pipe = drawing.joined[Joint(vessel, "connection")]
    (tee,) = (end.part for end in drawing.pipes[pipe].joints if end.part != vessel)
    source = next(part.id for part in drawing.components.values() if part.kind.name.endswith("heat_source"))
    work = Fitting(drawing)
    new = work.move_end(pipe, tee, Joint(source, "return"))
    after = work.drawing
    assert broken(after) == []
    assert tee not in after.components
    assert joined_to(after, vessel, "connection") == (new, "branch")


@pytest.mark.parametrize(
    "step",
    [
        lambda work: work.tee(Joint("hs", "relief")),
        lambda work: work.cut_in("heating_zone", Joint("hs", "flow")),
        lambda work: work.turn_round("hs"),
        lambda work: work.move_end("out", "nobody", Joint("hs", "return")),
        lambda work: work.pipe(Joint("hs", "flow"), Joint("pu", "out")),
    ],
)
def test_a_step_that_cannot_be_made_says_so(step: object) -> None:
    work = Fitting(ring())
    assert callable(step)
    with pytest.raises(EditError):
        step(work)


def moved_gauge() -> Drawing:
    """A ring whose gauge is moved from the heat source's flow to its return."""
    work = Fitting(ring())
    gauge = work.tee_off(Joint("hs", "flow"), "pressure_gauge", "connection", pipe_data=KNOWN)
    pipe = work.pipe_at(Joint(gauge, "connection"))
    tee = next(end.part for end in work.drawing.pipes[pipe].joints if end.part != gauge)
    work.move_end(pipe, tee, Joint("hs", "return"))
    return work.drawing


def test_what_hangs_on_a_moved_pipe_comes_along_with_its_length_and_without_its_rise() -> None:
    after = moved_gauge()
    gauge = next(part for part in after.components.values() if part.kind.name == "pressure_gauge")
    tee, _ = joined_to(after, gauge.id, "connection")
    assert joined_to(after, tee, "a") == ("hs", "return")
    end, port = after.end_at(Joint(tee, "branch")), gauge.port_at("connection")
    assert end is not None and port is not None
    assert abs(end.x - port.x) + abs(end.y - port.y) < 8
    data = after.pipes[after.joined[Joint(gauge.id, "connection")]].data
    assert (data.get("length_m"), data.get("bends"), data.get("rise_m")) == (4.0, 2, None)


def test_a_part_that_hangs_is_placed_ahead_of_its_port() -> None:
    work = Fitting(ring())
    bypass = work.bridge(Joint("hs", "flow"), Joint("hs", "return"), "bypass_valve")
    valve = work.drawing.components[bypass]
    tee, _ = joined_to(work.drawing, bypass, "in")
    end, port = work.drawing.end_at(Joint(tee, "branch")), valve.port_at("in")
    assert end is not None and port is not None and end.x < port.x


def test_a_discharge_end_hangs_where_its_pipe_meets_nothing_and_does_not_rise() -> None:
    drawing = read(data_path("samples") / "cottage-safety-valve-plugged.wetcircuit")
    work = Fitting(remove(drawing, ["plug"]))
    outlet = Joint("safety_valve", "outlet")
    if outlet in work.drawing.joined:
        work.take_out(work.pipe_at(outlet))
    end = work.hang("discharge_end", "inlet", outlet)
    start, finish = work.drawing.end_at(outlet), work.drawing.components[end].port_at("inlet")
    assert start is not None and finish is not None and finish.y > start.y
    new = work.drawing.joined[outlet]
    crossed = {name for name, line in work.lines.items() if name != new and touching(line, work.lines[new])}
    assert not crossed


def touching(one: Sequence[Point], two: Sequence[Point]) -> bool:
    """Whether two lines of level and plumb runs meet."""
    return any(
        min(a.x, b.x) <= max(c.x, d.x)
        and min(c.x, d.x) <= max(a.x, b.x)
        and min(a.y, b.y) <= max(c.y, d.y)
        and min(c.y, d.y) <= max(a.y, b.y)
        for a, b in pairwise(one)
        for c, d in pairwise(two)
    )
