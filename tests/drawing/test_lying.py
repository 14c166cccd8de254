"""The indexes of what lies where and of labels: carried on through edits they tell what new ones tell."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.edits import move, place, relabel, remove, turn
from circuitcheck.drawing.labelled import Labelled, carried_on
from circuitcheck.drawing.lying import PARTS, PIPES, Lying
from circuitcheck.drawing.pipes import draw_pipe, set_corners
from circuitcheck.drawing.routing import routes
from circuitcheck.drawing.value import Drawing, End, Joint
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds
from tests.drawing.layouts import guest_house

KINDS = component_kinds()
NAMES = ("near-miss", "unclear-crossing", "overlapping-parts", "label-twice")


def test_every_port_lies_in_its_parts_box() -> None:
    """What lies beside a part is told from its box, so its ports must lie within."""
    for kind in KINDS.values():
        for port in kind.ports:
            assert abs(port.at[0]) <= kind.size[0] / 2 and abs(port.at[1]) <= kind.size[1] / 2


def told(index: Lying, labels: Labelled, drawing: Drawing) -> dict[str, object]:
    """What the four checks say by these indexes."""
    case = Case(drawing)
    case.__dict__.update(lines=index.lines, lying=index, labelled=labels)
    return {name: checks()[name].judge(case) for name in NAMES}


def labelled(drawing: Drawing) -> Labelled:
    return Labelled(drawing.components.values())


@st.composite
def edits(draw: st.DrawFn, drawing: Drawing) -> Drawing:
    """A drawing after one random edit of its layout or its joints."""
    parts, pipes = sorted(drawing.components), sorted(drawing.pipes)
    step = st.integers(-3, 3)
    where = st.builds(Point, st.integers(0, 24).map(float), st.integers(0, 24).map(float))
    does: dict[str, Callable[[], Drawing]] = {
        "place": lambda: place(
            drawing, KINDS[draw(st.sampled_from(["tee", "pump", "cap", "radiator"]))], draw(where)
        )[0],
        "hidden": lambda: place(drawing, KINDS["pump"], None)[0],
    }

    def end() -> End:
        if not parts or draw(st.booleans()):
            return draw(where)
        part = draw(st.sampled_from(parts))
        return Joint(part, draw(st.sampled_from([port.name for port in drawing.components[part].kind.ports])))

    does["draw"] = lambda: draw_pipe(drawing, end(), end(), via=draw(st.none() | st.just([])))[0]
    if parts:
        some = st.lists(st.sampled_from(parts), min_size=1, max_size=3)
        does["move"] = lambda: move(drawing, draw(some), draw(step), draw(step))
        does["turn"] = lambda: turn(drawing, draw(some))
        does["label"] = lambda: relabel(
            drawing, draw(st.sampled_from(parts)), draw(st.sampled_from(["", "A", "B"]))
        )
        does["remove"] = lambda: remove(drawing, draw(some))
    if pipes:
        one = st.sampled_from(pipes)
        does["corners"] = lambda: set_corners(drawing, draw(one), draw(st.lists(where, max_size=2)))
        does["no pipe"] = lambda: remove(drawing, [draw(one)])
        does["shift"] = lambda: move(drawing, [draw(one)], draw(step), 0)
    try:
        return does[draw(st.sampled_from(sorted(does)))]()
    except EditError:
        return drawing


@settings(max_examples=100, deadline=None)
@given(st.data())
def test_carried_on_it_tells_what_a_new_one_tells(data: st.DataObject) -> None:
    drawing = Drawing()
    index, labels = Lying(routes(drawing)), labelled(drawing)
    for _ in range(data.draw(st.integers(1, 14))):
        before, drawing = drawing, data.draw(edits(drawing))
        index = index.after(routes(drawing, index.lines))
        labels = carried_on(labels, before, drawing)
        if data.draw(st.booleans()):
            assert told(index, labels, drawing) == told(Lying(index.lines), labelled(drawing), drawing)
    assert told(index, labels, drawing) == told(Lying(index.lines), labelled(drawing), drawing)
    assert labels.parts == labelled(drawing).parts
    assert set(labels.twice) == set(labelled(drawing).twice)
    assert index.parts_placed == sum(part.at is not None for part in drawing.components.values())
    assert index.lines_laid == len(index.lines)


def test_only_what_a_change_may_concern_is_asked_again() -> None:
    drawing = guest_house()
    index = Lying(routes(drawing))
    asked: list[str] = []

    def judge(lying: Lying, id: str) -> Any:
        asked.append(id)
        return ()

    index.told(judge, PARTS)
    assert sorted(asked) == sorted(drawing.components)
    asked.clear()
    after = move(drawing, ["e2"], 0, 1)
    index.after(routes(after, index.lines)).told(judge, PARTS)
    assert "e2" in asked and len(asked) < 8
    asked.clear()
    index.told(judge, PARTS)
    assert asked == []


def test_the_same_drawing_changes_nothing() -> None:
    lines = routes(guest_house())
    index = Lying(lines)
    assert index.after(lines) is index
    assert index.told(lambda lying, id: id, PIPES).keys() == set(lines)


@pytest.mark.parametrize("name", NAMES)
def test_a_layout_as_people_draw_it_is_clear(name: str) -> None:
    drawing = guest_house()
    assert [finding.message for finding in checks()[name].judge(Case(drawing)).findings] == []
