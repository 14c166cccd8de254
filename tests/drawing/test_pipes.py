"""Drawing pipes, ending one on another, cutting in, joining and setting corners."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from circuitcheck.drawing import edits, pipes
from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds, kinds
from tests.drawing.invariants import broken
from tests.drawing.making import drawing, part, pipe


def run() -> Drawing:
    """A pump joined to a radiator by a cornered pipe with all its data, and a drain beside."""
    data = {"size_mm": 22, "length_m": 4, "rise_m": 1, "bends": 1, "insulated": True}
    return drawing(
        [part("pu", "pump", (0, 0)), part("ra", "radiator", (14, -6)), part("dr", "drain", (6, 6))],
        [pipe("p1", ("pu.out", "ra.flow"), [(12, 0)], **data)],
    )


def test_a_pipe_is_drawn_last() -> None:
    before = run()
    after, id = pipes.draw_pipe(before, Joint("ra", "return"), Point(20, 0), via=[Point(16, 0)])
    assert list(after.pipes) == ["p1", id]
    assert after.pipes[id].via == (Point(16, 0),)
    assert after.pipes["p1"] is before.pipes["p1"]
    assert after.components is before.components
    assert after.joined[Joint("ra", "return")] == id


@pytest.mark.parametrize(
    "draw",
    [
        lambda base: pipes.draw_pipe(base, Joint("pu", "out"), Joint("ra", "return")),
        lambda base: pipes.draw_pipe(base, Joint("ra", "return"), Joint("ra", "return")),
        lambda base: pipes.draw_pipe(base, Point(1, 1), Point(1, 1)),
        lambda base: pipes.draw_pipe(base, Joint("ra", "left"), Point(1, 1)),
        lambda base: pipes.draw_pipe(base, Joint("rb", "flow"), Point(1, 1)),
        lambda base: pipes.draw_pipe(base, Point(0, 0), Point(1, 1), data={"size_mm": -1}),
        lambda base: pipes.draw_pipe_onto(base, Joint("pu", "out"), "p1", Point(4, 0)),
        lambda base: pipes.draw_pipe_onto(base, Point(4, 0), "p1", Point(4, 0)),
        lambda base: pipes.draw_pipe_onto(base, Point(0, 9), "p7", Point(4, 0)),
        lambda base: pipes.join(base, "p1", 0, Joint("ra", "flow")),
        lambda base: pipes.join(base, "p1", 2, Point(0, 0)),
        lambda base: pipes.join_onto(base, "p1", 0, "p1", Point(4, 0)),
        lambda base: pipes.cut_in(base, "p1", kinds()["radiator"], Point(4, 0)),
        lambda base: pipes.cut_in(base, "p1", kinds()["programmer"], Point(4, 0)),
        lambda base: pipes.set_corners(base, "p7", None),
    ],
)
def test_what_cannot_be_drawn_is_refused(draw: Callable[[Drawing], object]) -> None:
    with pytest.raises(EditError):
        draw(run())


def test_a_pipe_ended_on_a_pipe_makes_the_tee() -> None:
    after, id = pipes.draw_pipe_onto(run(), Joint("dr", "connection"), "p1", Point(6, 0))
    tee = after.components["tee1"]
    assert tee.at == Point(6, 0)
    assert after.pipes["p1"].ends == (Joint("pu", "out"), Joint("tee1", "a"))
    assert after.pipes["p2"].ends == (Joint("tee1", "b"), Joint("ra", "flow"))
    assert after.pipes[id].ends == (Joint("dr", "connection"), Joint("tee1", "branch"))
    assert (after.pipes["p1"].via, after.pipes["p2"].via) == ((), (Point(12, 0),))
    for half in ("p1", "p2"):
        assert dict(after.pipes[half].data) == {
            "size_mm": 22,
            "length_m": None,
            "rise_m": None,
            "bends": None,
            "insulated": True,
        }
    assert not broken(after)


def test_a_tee_made_and_taken_away_leaves_the_line_as_it_was() -> None:
    after, id = pipes.draw_pipe_onto(run(), Joint("dr", "connection"), "p1", Point(6, 0))
    healed = edits.remove(after, [id])
    assert healed.pipes["p1"].ends == run().pipes["p1"].ends
    assert healed.pipes["p1"].via == run().pipes["p1"].via


def test_no_bends_divide_into_none_and_what_was_left_out_stays_so() -> None:
    base = edits.set_field(edits.clear_field(run(), "p1", "length_m"), "p1", "bends", 0)
    after, _ = pipes.draw_pipe_onto(base, Point(6, 6), "p1", Point(6, 0))
    assert "length_m" not in after.pipes["p1"].data
    assert after.pipes["p2"].data["bends"] == 0


def test_a_parted_straight_drop_is_asked_for_anew_below_the_tundish_only() -> None:
    base = drawing(
        [part("tu", "tundish", (0, 0)), part("en", "discharge_end", (0, 12))],
        [pipe("p1", ("en.inlet", "tu.outlet"), straight_drop_m=0.5)],
    )
    after, _ = pipes.draw_pipe_onto(base, Point(6, 6), "p1", Point(0, 6))
    assert dict(after.pipes["p1"].data) == {}
    assert dict(after.pipes["p2"].data) == {"straight_drop_m": None}


@pytest.mark.parametrize(
    ("ends", "at", "turn"),
    [
        (((0, 0), (12, 0)), (6, 0), 0),
        (((12, 0), (0, 0)), (6, 0), 180),
        (((0, 0), (0, 12)), (0, 6), 90),
        (((0, 12), (0, 0)), (0, 6), 270),
    ],
)
@pytest.mark.parametrize("kind", ["zone_valve", "check_valve", "three_port_valve", "inlet_group", "tundish"])
def test_what_is_cut_in_lies_along_the_pipe(
    ends: tuple[tuple[float, float], tuple[float, float]], at: tuple[float, float], turn: int, kind: str
) -> None:
    base = drawing([], [pipe("p1", ends, [])])
    after, id = pipes.cut_in(base, "p1", kinds()[kind], Point(*at))
    cut = after.components[id]
    ports = pipes.inline_ports(cut.kind)
    assert ports is not None
    assert after.pipes["p1"].ends == (Point(*ends[0]), Joint(id, ports[0]))
    assert after.pipes["p2"].ends == (Joint(id, ports[1]), Point(*ends[1]))
    if kind != "tundish":
        assert cut.turn == turn
    near, far = cut.port_at(ports[0]), cut.port_at(ports[1])
    assert near is not None and far is not None
    start, finish = base.pipes["p1"].ends
    for axis in (0, 1):
        assert (far[axis] - near[axis]) * (finish[axis] - start[axis]) >= 0  # type: ignore[operator]  # free ends
    assert after.pipes["p1"].via == ()
    assert not broken(after)


def test_a_routed_pipe_is_cut_along_the_line_it_is_shown_with() -> None:
    base = pipes.set_corners(run(), "p1", None)
    line = [Point(1, 0), Point(7, 0), Point(7, -4), Point(12, -4)]
    after, id = pipes.cut_in(base, "p1", kinds()["zone_valve"], Point(7, -2), line=line)
    assert after.components[id].turn == 270
    assert after.pipes["p1"].via is None


def test_corners_under_the_part_that_comes_in_are_gone() -> None:
    after, id = pipes.cut_in(run(), "p1", kinds()["zone_valve"], Point(11, 0))
    assert after.pipes["p1"].via == ()
    # The corner lay on the valve's port, from where the pipe goes straight up.
    assert after.components[id].port_at("out") == Point(12, 0)
    assert after.pipes["p2"].via == ()
    after, _ = pipes.cut_in(run(), "p1", kinds()["inlet_group"], Point(10, 0))
    assert after.pipes["p2"].via is None


def test_a_cut_in_valve_taken_out_leaves_the_line_as_it_was() -> None:
    after, id = pipes.cut_in(run(), "p1", kinds()["zone_valve"], Point(5, 0))
    assert edits.remove(after, [id]).pipes["p1"].via == run().pipes["p1"].via


def test_only_kinds_with_two_ports_in_line_can_be_cut_in() -> None:
    can = {name for name, kind in component_kinds().items() if pipes.inline_ports(kind)}
    assert can == {
        "balancing_valve",
        "blending_valve",
        "bypass_valve",
        "check_valve",
        "dirt_separator",
        "inlet_group",
        "isolating_valve",
        "pressure_reducing_valve",
        "pump",
        "separator",
        "strainer",
        "tee",
        "three_port_valve",
        "tundish",
        "unvented_store",
        "vented_store",
        "zone_valve",
    }


def test_joining_moves_one_end_and_its_corner() -> None:
    after = pipes.join(run(), "p1", 1, Joint("ra", "return"))
    assert after.pipes["p1"].ends[1] == Joint("ra", "return")
    assert after.pipes["p1"].via == (Point(16, 0),)
    assert Joint("ra", "flow") not in after.joined
    assert pipes.join(after, "p1", 1, Joint("ra", "return")) is after


def test_a_tee_that_a_pipe_leaves_heals() -> None:
    base, id = pipes.draw_pipe_onto(run(), Joint("dr", "connection"), "p1", Point(6, 0))
    after = pipes.join(base, id, 1, Joint("ra", "return"))
    assert "tee1" not in after.components
    assert after.pipes["p1"].ends == run().pipes["p1"].ends
    assert not broken(after)


def test_a_free_end_is_put_on_another_pipe() -> None:
    base, id = pipes.draw_pipe(run(), Joint("dr", "connection"), Point(6, 3))
    after = pipes.join_onto(base, id, 1, "p1", Point(6, 0))
    assert after.pipes[id].ends[1] == Joint("tee1", "branch")
    assert not broken(after)


def test_corners_are_set_and_given_back_to_the_program() -> None:
    after = pipes.set_corners(run(), "p1", [Point(3, 0), Point(3, -4)])
    assert after.pipes["p1"].via == (Point(3, 0), Point(3, -4))
    assert pipes.set_corners(after, "p1", after.pipes["p1"].via) is after
    assert pipes.set_corners(after, "p1", None).pipes["p1"].via is None
