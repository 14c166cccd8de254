"""A storage cistern that holds less than a bath draws."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.open_vented.plants import pumped_vented, vented_store

NAME = "cistern-runs-dry"


def store(content: float | None, fitting: str | None = "bath", more: str = "", **parts: Any) -> Drawing:
    """A store by its cistern's content and what is drawn from it."""
    return vented_store(
        more,
        sc=("feed_cistern", {"content_l": content}),
        bath=("outlet", {"fitting": fitting}),
        **parts,
    )


@pytest.mark.parametrize("drawing", [store(100), store(230), store(100, None)])
def test_does_not_fire(drawing: Drawing) -> None:
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


def test_fires() -> None:
    finding = only(NAME, store(99))
    assert (finding.grade.value, finding.components) == ("advice", ("sc", "bath"))
    assert (finding.numbers["content_l"], finding.numbers["bath_draws_l"]) == (99, 100)


def test_cisterns_that_feed_the_same_water_count_together() -> None:
    two: dict[str, Any] = {"s2": ("feed_cistern", {"content_l": 50}), "x": "tee"}
    more = "down: sc.feed - x.a\nd2: x.b - iv.a\nd3: s2.feed - x.branch"
    assert (
        found(NAME, vented_store(more, without="down", **two, sc=("feed_cistern", {"content_l": 50}))) == ()
    )
    drawing = vented_store(more, without="down", **two, sc=("feed_cistern", {"content_l": 49}))
    assert only(NAME, drawing).components == ("sc", "s2", "bath")


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (store(None), ("sc.content_l",)),
        (store(50, None), ("bath.fitting",)),
        (store(None, None), ("sc.content_l", "bath.fitting")),
    ],
)
def test_unknown(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)


@pytest.mark.parametrize("drawing", [store(10, "basin"), pumped_vented()])
def test_no_bath_on_it(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"
