"""Arrowheads and figures along a pipe: which way they point, what they keep clear of, where they stand."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.picture.flow import ARROW_LONG, CLEAR_PX, arrows, boxed, placed, wash, word_box
from circuitcheck.picture.labels import Obstacles, Rect, overlap
from circuitcheck.picture.marks import Fill, Mark, TextMark, extent
from circuitcheck.picture.pipes import Gap, Place
from circuitcheck.picture.taken import Taken

LEVEL: tuple[Place, ...] = ((0.0, 0.0), (160.0, 0.0))
BENT: tuple[Place, ...] = ((0.0, 0.0), (160.0, 0.0), (160.0, 96.0))


def heads(marks: list[Mark]) -> list[Fill]:
    return [mark for mark in marks if isinstance(mark, Fill)]


def tip(head: Fill) -> Place:
    _, (x, y) = head.path[0]
    return x, y


def middle(head: Fill) -> Place:
    left, top, right, low = extent([head])
    return (left + right) / 2, (top + low) / 2


@pytest.mark.parametrize("forward", [True, False])
def test_arrowheads_point_the_way_water_goes(forward: bool) -> None:
    found = heads(arrows(BENT, "flow", forward=forward))
    assert len(found) >= 5
    for head in found:
        (x, y), (a, b) = middle(head), tip(head)
        ahead = (a - x) if abs(a - x) > abs(b - y) else (b - y)
        assert (ahead > 0) == forward


def test_arrowheads_keep_clear_of_corners_ends_letters_hops_and_figures() -> None:
    gap = Gap(0, (80.0, 0.0), 12.0, (66.0, -8.0, 94.0, 8.0))
    taken: list[Rect] = [(120.0, -9.0, 160.0, 9.0)]
    found = heads(arrows(LEVEL, "flow", forward=True, gap=gap, hops=((40.0, 0.0),), taken=Taken(taken)))
    assert found
    for head in found:
        left, _, right, _ = extent([head])
        assert left >= CLEAR_PX - ARROW_LONG / 2 and right <= 160 - CLEAR_PX + ARROW_LONG / 2
        assert not any(overlap(extent([head]), box) for box in (*taken, gap.box, (33.0, -7.0, 47.0, 7.0)))


@pytest.mark.parametrize(("length", "count"), [(12.0, 0), (16.0, 1), (29.0, 1), (32.0, 1), (64.0, 2)])
def test_a_short_pipe_has_one_arrowhead_and_one_too_short_none(length: float, count: int) -> None:
    assert len(heads(arrows(((0.0, 0.0), (0.0, length)), "return", forward=True))) == count


def test_a_pipe_of_no_length_has_none() -> None:
    assert arrows(((3.0, 3.0), (3.0, 3.0)), "flow", forward=True) == []


def test_the_wash_has_the_colour_of_the_service_and_arrows_another_if_told() -> None:
    assert wash(LEVEL, "return").role == "return_"
    assert {head.role for head in heads(arrows(LEVEL, "flow", forward=True, role="quiet"))} == {"quiet"}


def test_a_figure_stands_beside_its_pipe_and_its_letters_fit_the_box() -> None:
    found = placed("26.8 l/min", [("p1", LEVEL)], Obstacles())
    assert found is not None and found[0] == "p1"
    (left, top, right, low), text = found[1].box, boxed(found[1])[-1]
    assert low < 0 and left < 80 < right
    assert isinstance(text, TextMark) and left < text.x < right and top < text.y < low


def obstacles(**boxes: Rect) -> Obstacles:
    made = Obstacles()
    for owner, box in boxes.items():
        made.put(owner.replace("_", " "), [box])
    return made


def test_one_side_taken_it_stands_on_the_other() -> None:
    found = placed("26.8 l/min", [("p1", LEVEL)], obstacles(label_a=(-50.0, -60.0, 210.0, -2.0)))
    assert found is not None and found[1].box[1] > 0


def test_both_sides_taken_it_stands_on_its_own_line() -> None:
    both = obstacles(
        label_a=(-50.0, -60.0, 210.0, -12.0),
        label_b=(-50.0, 12.0, 210.0, 60.0),
        pipe_p1=(0.0, -3.0, 160.0, 3.0),
    )
    found = placed("1.2 m/s", [("p1", LEVEL)], both)
    assert found is not None and found[1].box[1] == -found[1].box[3]


def test_over_another_pipe_rather_than_not_at_all_but_never_over_a_symbol() -> None:
    around: Rect = (-90.0, -90.0, 90.0, 120.0)
    short: tuple[Place, ...] = ((0.0, 0.0), (0.0, 30.0))
    assert placed("35 Pa", [("p1", short)], obstacles(pipe_p2=around)) is not None
    for owner in ("part_a", "label_a", "gap_p2", "kept clear", "stub_a"):
        assert placed("35 Pa", [("p1", short)], obstacles(**{owner: around})) is None
    assert placed("35 Pa", [("p1", short)], Obstacles(), Taken([around])) is None


def test_of_several_pipes_it_takes_one_that_has_room() -> None:
    full = obstacles(part_a=(-60.0, -60.0, 220.0, 60.0))
    far: tuple[Place, ...] = ((0.0, 200.0), (100.0, 200.0))
    found = placed("35 Pa", [("p1", LEVEL), ("p2", far)], full)
    assert found is not None and found[0] == "p2"


@given(st.lists(st.tuples(st.integers(-40, 200), st.integers(-60, 60)), max_size=12))
def test_wherever_symbols_lie_it_meets_none(places: list[tuple[int, int]]) -> None:
    made = Obstacles()
    boxes = [(x, y, x + 24, y + 24) for x, y in places]
    for index, box in enumerate(boxes):
        made.put(f"part {index}", [box])
    found = placed("12.3 l/min", [("p1", BENT)], made)
    if found is not None:
        assert not any(overlap(found[1].box, box) for box in boxes)


def test_the_box_of_a_word_is_about_its_middle() -> None:
    left, top, right, low = word_box("shut", 10, 20)
    assert (left + right) / 2 == pytest.approx(10) and (top + low) / 2 == pytest.approx(20)
