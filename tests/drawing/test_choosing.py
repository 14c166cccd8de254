"""A pipe keeps its line, or takes the cheapest: as if all were looked at, though most of them are not."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.drawing.choosing import GOOD_ENOUGH, Ends, kept_or_best
from circuitcheck.drawing.shapes import Line, own_cost
from circuitcheck.drawing.sides import ANY_WAY
from circuitcheck.drawing.surroundings import Box, Effort, Run, Surroundings
from circuitcheck.geometry import Point

START, FINISH = Point(0, 0), Point(9, 6)
REGION = (-10.0, -10.0, 19.0, 16.0)

places = st.integers(-4, 13).map(float)
boxes = st.builds(lambda x, y: (x, y, x + 3, y + 2), places, places)
runs = st.builds(
    lambda upright, across, low, long: (upright, across, low, low + long, "other"),
    st.booleans(),
    places,
    places,
    st.integers(1, 8).map(float),
)
corners = st.tuples(places, places, places)


def surroundings(boxes: list[Box], runs: list[Run]) -> Surroundings:
    return Surroundings(REGION, tuple(boxes), tuple(runs), (START, FINISH), Effort())


def between(around: Surroundings) -> Ends:
    return Ends(around, START, ANY_WAY, FINISH, ANY_WAY, 0)


def by_way_of(x: float, y: float, last_x: float) -> Line:
    """A square line with four corners, that leaves and comes in level."""
    return (START, Point(x, 0), Point(x, y), Point(last_x, y), Point(last_x, FINISH.y), FINISH)


@settings(max_examples=300, deadline=None)
@given(st.lists(boxes, max_size=5), st.lists(runs, max_size=6), st.lists(corners, max_size=3), st.data())
def test_the_first_that_may_stay_else_the_cheapest(
    boxes: list[Box], runs: list[Run], before: list[tuple[float, float, float]], data: st.DataObject
) -> None:
    earlier = [(by_way_of(*each), data.draw(st.sampled_from((3.0, 16.0)))) for each in before]
    earlier = [(line, dearer) for line, dearer in earlier if len(set(line)) == len(line)]
    around = surroundings(boxes, runs)
    best = kept_or_best(between(around), ())
    kept = [
        (own_cost(line) + met, met, line, dearer)
        for line, dearer in earlier
        for met in (around.line_cost(line),)
    ]

    cost, line = kept_or_best(between(around), earlier)

    stays = next(((each, by) for each, _, by, dearer in kept if each <= best[0] + dearer), None)
    if stays is not None:
        assert (cost, line) == stays
    elif kept and kept[0][1] <= GOOD_ENOUGH:
        # One that meets next to nothing is good enough: no search for another is made.
        assert best[0] <= cost <= kept[0][0]
    else:
        assert cost == best[0]


def test_what_is_not_so_much_cheaper_is_not_looked_for() -> None:
    plain = (START, Point(9, 0), FINISH)
    spent = []
    for earlier in ((), [(plain, 3.0)]):
        effort = Effort(1_000)
        around = Surroundings(REGION, (), (), (START, FINISH), effort)
        before_all = effort.left
        assert kept_or_best(between(around), earlier) == (19.0, plain)
        spent.append(before_all - effort.left)
    counted = Effort(1_000)
    Surroundings(REGION, (), (), (START, FINISH), counted).line_cost(plain)
    assert spent[1] == 1_000 - counted.left  # only what the line itself meets
