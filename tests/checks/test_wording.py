"""A long list of parts is said the same whether it is named anew or carried on."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from circuitcheck.checks import wording
from circuitcheck.checks.case import Case
from circuitcheck.drawing.edits import relabel
from circuitcheck.told import in_tongue
from tests.benchmarks.synthetic import plant
from tests.test_told import Shouted


@pytest.fixture(autouse=True)
def carried_on(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Two parts are many already."""
    with monkeypatch.context() as patch:
        patch.setattr(wording, "MANY", 2)
        yield


def test_only_what_is_called_otherwise_changes() -> None:
    drawing = plant(60)
    parts = tuple(drawing.components)
    case = Case(drawing)
    first = wording.named_again(case, parts)
    assert first == wording.named(drawing, parts)
    for label in ("Hall", "Kitchen", ""):
        after = Case(relabel(drawing, parts[12], label))
        after.circuit.kept = case.circuit.kept
        assert wording.named_again(after, parts) == wording.named(after.drawing, parts)
        assert label in wording.named_again(after, parts)
    assert wording.named_again(case, parts) == first  # asked of the drawing before once more
    assert wording.named_again(case, parts[:1]) == wording.named(drawing, parts[:1])
    assert wording.named_again(case, ()) == ""


def test_pipes_and_controls_among_parts_are_named_too() -> None:
    drawing = plant(60)
    mixed = ("c0", "p3", "c12")
    assert drawing.names(mixed) == [drawing.name(id) for id in mixed]
    with pytest.raises(KeyError):
        drawing.names(("c0", "nothing"))


def test_a_long_list_is_told_in_another_language_as_a_short_one_is() -> None:
    drawing = relabel(plant(60), "c12", "Hall")
    parts = tuple(drawing.components)
    again = wording.named_again(Case(drawing), parts)
    told = in_tongue(again, Shouted())
    assert told == in_tongue(wording.named(drawing, parts), Shouted())
    assert told != again
    assert "Hall" in str(told)
