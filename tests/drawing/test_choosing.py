"""A pipe keeps its line, or takes the cheapest: as if all were looked at, though most of them are not."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.drawing.choosing import GOOD_ENOUGH, Kept, kept_or_best, that_fit
from circuitcheck.drawing.shapes import Line
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
    best = kept_or_best(around, START, ANY_WAY, FINISH, ANY_WAY, 0, iter(()))
    kept = list(that_fit(around, earlier, ANY_WAY, ANY_WAY))

    cost, line = kept_or_best(around, START, ANY_WAY, FINISH, ANY_WAY, 0, iter(kept))

    stays = next((each for each in kept if each.cost <= best[0] + each.dearer), None)
    if stays is not None:
        assert (cost, line) == (stays.cost, stays.line)
    elif kept and kept[0].met <= GOOD_ENOUGH:
        # One that meets next to nothing is good enough: no search for another is made.
        assert best[0] <= cost <= kept[0].cost
    else:
        assert cost == best[0]


def test_what_is_not_so_much_cheaper_is_not_looked_for() -> None:
    effort = Effort()
    around = Surroundings(REGION, (), (), (START, FINISH), effort)
    plain = (START, Point(9, 0), FINISH)
    left = Effort(1_000)
    counted = Surroundings(REGION, (), (), (START, FINISH), left)

    kept_or_best(counted, START, ANY_WAY, FINISH, ANY_WAY, 0, iter([Kept(19.0, 0.0, plain, 3.0)]))

    assert left.left == 1_000
    assert kept_or_best(around, START, ANY_WAY, FINISH, ANY_WAY, 0, iter(()))[0] == 19.0
