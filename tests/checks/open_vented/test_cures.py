"""A larger cistern and a vent for the store are offered, and put it right."""

from __future__ import annotations

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from tests.checks.asking import found, only
from tests.checks.open_vented.plants import vented_store
from tests.checks.open_vented.test_cistern_runs_dry import store

DRY, VENT = "cistern-runs-dry", "store-vent-absent"


def test_a_cistern_that_holds_a_bath() -> None:
    drawing = store(60)
    (cure,) = cures(analyse(drawing), only(DRY, drawing))
    assert cure.message == "Fit a cistern that holds 100 l at least in place of feed cistern sc."
    assert not found(DRY, cure.drawing)


def test_one_of_two_makes_up_for_both() -> None:
    more = "down: sc.feed - x.a\nd2: x.b - iv.a\nd3: s2.feed - x.branch"
    small = ("feed_cistern", {"content_l": 40})
    drawing = vented_store(more, without="down", s2=small, x="tee", sc=small)
    offered = cures(analyse(drawing), only(DRY, drawing))
    assert [cure.message.split()[5] for cure in offered] == ["60", "60"]


def test_a_vent_for_the_store() -> None:
    drawing = vented_store(without="up sv")
    (cure,) = cures(analyse(drawing), only(VENT, drawing))
    assert cure.message.startswith("Run an open vent in 22 mm from the top of")
    vents = [part for part in cure.drawing.components.values() if part.kind.name == "open_vent"]
    assert {vent.data.get("over") for vent in vents} == {"sc"}


def test_no_vent_where_no_cistern_feeds_the_store() -> None:
    drawing = vented_store(without="up down")
    assert cures(analyse(drawing), only(VENT, drawing)) == ()
