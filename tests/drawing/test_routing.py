"""Routing: square lines from port to port, around parts and clear of other pipes, that stay where they can."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from itertools import combinations, pairwise
from threading import Lock
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.drawing import edits, pipes
from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.ground import Ground, runs
from circuitcheck.drawing.routing import LINES, Routes, routes
from circuitcheck.drawing.shapes import way_of
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds, kinds
from circuitcheck.wanted import NoLongerWantedError, while_wanted
from tests.drawing.layouts import LAYOUTS, guest_house
from tests.drawing.making import drawing, part, pipe
from tests.drawing.test_random_edits import possible

Line = tuple[Point, ...]


def faulty(drawn: Drawing, lines: Routes) -> Iterator[str]:
    """What is wrong with lines whose pipes are all routed: ends, squareness, ways out of ports."""
    for id, drawn_pipe in drawn.pipes.items():
        places = [drawn.end_at(end) for end in drawn_pipe.ends]
        if None in places:
            if id in lines:
                yield f"{id} has a line and no place"
            continue
        line = lines[id]
        if [line[0], line[-1]] != places:
            yield f"{id} does not lie from end to end"
        if drawn_pipe.via is not None:
            if line[1:-1] != drawn_pipe.via:
                yield f"{id} leaves the corners it was given"
            continue
        if places[0] != places[1] and any(way_of(a, b) is None for a, b in pairwise(line)):
            yield f"{id} is not square: {line}"


def wrong_ways(drawn: Drawing, lines: Routes) -> Iterator[str]:
    for id, drawn_pipe in drawn.pipes.items():
        line = lines[id]
        for end, way in zip(drawn_pipe.ends, (way_of(*line[:2]), way_of(*line[:-3:-1])), strict=True):
            if isinstance(end, Joint):
                faces = drawn.components[end.part].port_faces(end.port)
                if faces is not None and faces != way:
                    yield f"{id} leaves {end} by {way}"


def through_parts(drawn: Drawing, lines: Routes) -> Iterator[str]:
    for id, line in lines.items():
        for upright, across, low, high, _ in runs(id, line):
            left, right = (across, across) if upright else (low, high)
            top, bottom = (low, high) if upright else (across, across)
            for other in drawn.components.values():
                box = other.box()
                if box is None or other.kind.name in ("tee", "cap"):
                    continue
                if right > box[0] and left < box[2] and bottom > box[1] and top < box[3]:
                    yield f"{id} runs through {other.id}"


def looks_joined(lines: Routes) -> Iterator[str]:
    """Pipes that lie on one another, or meet where one of them bends or ends."""
    for (one, a), (two, b) in combinations(lines.items(), 2):
        shared_ends = {a[0], a[-1]} & {b[0], b[-1]}
        for first in runs(one, a):
            for second in runs(two, b):
                if first[0] == second[0]:
                    overlap = min(first[3], second[3]) - max(first[2], second[2])
                    if first[1] == second[1] and overlap > 0:
                        yield f"{one} and {two} lie on one another"
                    continue
                upright, level = (first, second) if first[0] else (second, first)
                meet = Point(upright[1], level[1])
                touches = level[2] <= meet.x <= level[3] and upright[2] <= meet.y <= upright[3]
                inside = level[2] < meet.x < level[3] and upright[2] < meet.y < upright[3]
                if touches and not inside and meet not in shared_ends:
                    yield f"{one} and {two} touch at {meet}"


@pytest.mark.parametrize("layout", LAYOUTS.values(), ids=list(LAYOUTS))
def test_a_layout_as_people_draw_it(layout: Callable[[], Drawing]) -> None:
    drawn = layout()
    lines = routes(drawn)
    assert list(lines) == list(drawn.pipes)
    assert [*faulty(drawn, lines)] == []
    assert [*wrong_ways(drawn, lines)] == []
    assert [*through_parts(drawn, lines)] == []
    assert [*looks_joined(lines)] == []


@pytest.mark.parametrize("layout", LAYOUTS.values(), ids=list(LAYOUTS))
def test_three_pipes_leave_a_tee_by_three_sides(layout: Callable[[], Drawing]) -> None:
    drawn = layout()
    lines = routes(drawn)
    for tee in drawn.components.values():
        if tee.kind.name != "tee":
            continue
        ways = set()
        for id in drawn.pipes_of(tee.id):
            line = lines[id] if lines[id][0] == tee.at else lines[id][::-1]
            ways.add(way_of(line[0], line[1]))
        assert len(ways) == 3, tee.id


def test_the_same_drawing_gives_the_same_lines() -> None:
    assert dict(routes(guest_house())) == dict(routes(guest_house()))
    drawn = guest_house()
    lines = routes(drawn)
    assert routes(drawn, lines) is lines


def two_valves(x: float, y: float, turn: int = 0) -> Drawing:
    return drawing(
        [part("a", "isolating_valve", (0, 0)), part("b", "isolating_valve", (x, y, turn))],
        [pipe("p", ("a.b", "b.a"))],
    )


@pytest.mark.parametrize(
    ("x", "y", "turn", "bends"),
    [(10, 0, 0, 0), (10, 6, 0, 2), (10, 6, 90, 1), (10, 6, 180, 2), (10, -6, 90, 3), (-10, 6, 0, 4)],
)
def test_no_more_bends_than_it_takes(x: float, y: float, turn: int, bends: int) -> None:
    line = routes(two_valves(x, y, turn))["p"]
    assert len(line) - 2 == bends


def test_a_cross_run_lies_in_the_middle() -> None:
    assert routes(two_valves(10, 6))["p"][1].x == 5


def test_a_part_in_the_way_is_gone_around() -> None:
    base = two_valves(20, 0)
    after, _ = edits.place(base, kinds()["radiator"], Point(10, 0))
    line = routes(after)["p"]
    assert len(line) == 6
    assert all(abs(corner.y) >= 3 for corner in line[2:4])


def test_parallel_pipes_lie_a_square_apart() -> None:
    base = drawing(
        [part("h", "heating_zone", (20, 0)), part("s", "heat_source", (0, 12))],
        [pipe("p", ("s.flow", "h.flow")), pipe("q", ("s.return", "h.return"))],
    )
    lines = routes(base)
    assert [*looks_joined(lines)] == []
    for first in runs("p", lines["p"]):
        for second in runs("q", lines["q"]):
            if first[0] == second[0] and min(first[3], second[3]) > max(first[2], second[2]):
                assert abs(first[1] - second[1]) >= 1


def test_corners_a_person_set_are_kept() -> None:
    base = drawing(
        two_valves(10, 6).components.values(), [pipe("p", ("a.b", "b.a"), [(3, 0), (3, 6), (2, 9)])]
    )
    assert routes(base)["p"] == ((1, 0), (3, 0), (3, 6), (2, 9), (9, 6))


def test_free_ends_and_parts_without_a_place() -> None:
    base = drawing(
        [part("a", "isolating_valve", (0, 0)), part("b", "pump")],
        [pipe("p", ("a.b", (8, 5))), pipe("q", ("a.a", "b.out")), pipe("r", ((3.5, 7.25), (-4, 9)))],
    )
    lines = routes(base)
    assert list(lines) == ["p", "r"]
    assert lines["p"] == ((1, 0), (8, 0), (8, 5))
    assert (lines["r"][0], lines["r"][-1]) == ((3.5, 7.25), (-4, 9))


def test_ports_on_one_place_are_joined_by_a_line_without_length() -> None:
    assert routes(two_valves(2, 0))["p"] == ((1, 0), (1, 0))


def test_lines_stay_until_their_ends_move() -> None:
    base = guest_house()
    before = routes(base)
    after = routes(edits.move(base, ["pu"], 0, -2), before)
    moved = set(base.pipes_of("pu"))
    for id in base.pipes:
        assert (after[id] is before[id]) == (id not in moved)
    # A part put down on a tee does not chase its pipes away: no way is free.
    covered, _ = edits.place(base, kinds()["radiator"], Point(30, 26))
    assert dict(routes(covered, before)) == dict(before)


def test_a_pipe_keeps_its_shape_while_its_part_moves() -> None:
    base = two_valves(12, 6)
    lines = routes(base)
    for _ in range(4):
        base = edits.move(base, ["b"], 1, 1)
        lines = routes(base, lines)
    assert lines["p"] == ((1, 0), (6, 0), (6, 10), (15, 10))


def test_a_part_turned_on_the_spot_is_left_by_its_new_side() -> None:
    base = drawing(
        [part("t", "air_vent", (0, 0)), part("v", "pump", (9, 9))], [pipe("p", ("t.connection", "v.in"))]
    )
    before = routes(base)
    after = edits.turn(base, ["t"])
    assert [*wrong_ways(after, routes(after, before))] == []


def test_corners_given_back_are_routed_anew() -> None:
    base = two_valves(10, 6)
    odd = pipes.set_corners(base, "p", [Point(5, 0), Point(5, 20), Point(7, 20), Point(7, 6)])
    lines = routes(odd)
    assert len(routes(pipes.set_corners(odd, "p", None), lines)["p"]) == 4


def test_a_pipe_that_gets_a_tee_stays_where_it_lay() -> None:
    base, _ = edits.place(two_valves(20, 8), kinds()["drain"], Point(3, 9))
    before = routes(base)
    at = Point(before["p"][1].x, 4)
    after, _ = pipes.draw_pipe_onto(base, Joint("drain1", "connection"), "p", at)
    lines = routes(after, before)
    assert lines["p"] + lines["p1"][1:] == (*before["p"][:2], at, *before["p"][2:])
    healed = edits.remove(after, ["p2"])
    assert dict(routes(healed, lines)) == dict(before)


def test_a_pipe_that_gets_a_valve_stays_where_it_lay() -> None:
    base = two_valves(20, 8)
    before = routes(base)
    at = Point(before["p"][1].x, 4)
    after, valve = pipes.cut_in(base, "p", kinds()["zone_valve"], at, line=before["p"])
    lines = routes(after, before)
    assert lines["p"] == (*before["p"][:2], (at.x, 3))
    healed = edits.remove(after, [valve])
    assert dict(routes(healed, lines)) == dict(before)


KIND_NAMES = sorted(name for name, kind in component_kinds().items() if kind.size[0] > 1)
TURNS = st.sampled_from([0, 90, 180, 270])


@st.composite
def spread_out(draw: Any) -> Drawing:
    """Parts with room between them, joined at random."""
    parts = []
    for column in range(3):
        for row in range(draw(st.integers(1, 3))):
            kind, turn = draw(st.sampled_from(KIND_NAMES)), draw(TURNS)
            at = (column * 16 + draw(st.integers(0, 2)), row * 16 + draw(st.integers(0, 2)), turn)
            parts.append(part(f"k{column}{row}", kind, at))
    ports = draw(st.permutations([f"{one.id}.{port.name}" for one in parts for port in one.kind.ports]))
    joined = [pipe(f"p{n}", (a, b)) for n, (a, b) in enumerate(zip(ports[::2], ports[1::2], strict=False))]
    return drawing(parts, joined[: draw(st.integers(1, 8))])


@given(spread_out())
def test_no_pipe_runs_through_a_part(drawn: Drawing) -> None:
    lines = routes(drawn)
    assert [*faulty(drawn, lines)] == []
    assert [*wrong_ways(drawn, lines)] == []
    assert [*through_parts(drawn, lines)] == []


def on_the_ground(ground: Ground) -> tuple[dict[Any, Any], dict[Any, Any]]:
    boxes = {cell: set(entries) for cell, entries in ground._boxes.items() if entries}
    lying = {cell: set(entries) for cell, entries in ground._runs.items() if entries}
    return boxes, lying


@given(st.data())
def test_step_by_step_all_lines_stay_sound(data: st.DataObject) -> None:
    drawn = Drawing()
    lines = routes(drawn)
    for _ in range(data.draw(st.integers(1, 15))):
        edit = data.draw(st.sampled_from(possible(drawn)))
        try:
            after = edit(drawn, data.draw)
        except EditError:
            continue
        earlier = dict(lines)
        lines, before = routes(after, lines), lines
        assert dict(before) == earlier
        assert [*faulty(after, lines)] == []
        assert list(lines) == [id for id in after.pipes if id in lines]
        fresh = Ground()
        for id, box in lines._boxes.items():
            fresh.add_box(id, box)
        for id, line in lines.items():
            fresh.add_line(id, line)
        assert on_the_ground(lines._ground) == on_the_ground(fresh)
        placed = [id for id, one in after.components.items() if one.at is not None]
        assert set(lines._boxes) == set(placed)
        drawn = after


def asked_times(most: int) -> Callable[[], bool]:
    """A question that is answered with yes so many times, and with no after that."""
    left = iter(range(most))
    return lambda: next(left, None) is not None


@pytest.mark.parametrize("times", [0, 1, 7, 20])
def test_a_run_that_is_no_longer_wanted_leaves_nothing_behind(times: int) -> None:
    """Not half of the lines kept, no lock held, and the lines before as they were."""
    drawn = replace(guest_house())
    with pytest.raises(NoLongerWantedError), while_wanted(asked_times(times)):
        routes(drawn)
    assert drawn.kept(LINES) is None
    before = routes(drawn)
    assert dict(before) == dict(routes(replace(guest_house())))

    lay_as = dict(before)
    moved = move(drawn, list(drawn.components)[::2], 3, 2)
    with pytest.raises(NoLongerWantedError), while_wanted(asked_times(times)):
        routes(moved, before)
    assert moved.kept(LINES) is None and dict(before) == lay_as
    assert dict(routes(moved, before)) == dict(routes(replace(moved), routes(replace(drawn))))


def test_who_waits_for_the_lines_of_another_thread_need_not_wait() -> None:
    drawn = replace(guest_house())
    with drawn.keep("routing", Lock()), pytest.raises(NoLongerWantedError), while_wanted(lambda: False):
        routes(drawn)
    assert dict(routes(drawn)) == dict(routes(replace(drawn)))
