"""Names that are made when they are read stand for the tuple in every way that it can be used."""

from __future__ import annotations

import json
import pickle
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck import finding
from circuitcheck.analysis import analyse
from circuitcheck.finding import Names, Piece, joined
from circuitcheck.storage.reading import read
from tests.benchmarks.synthetic import plant

IDS = st.lists(st.sampled_from(["p1", "p2", "a.b", "", "x.size_mm"]), max_size=4).map(tuple)
ENDINGS = st.lists(st.sampled_from([".size_mm", ".length_m", ""]), min_size=1, max_size=3).map(tuple)
PIECES = st.lists(st.tuples(IDS, ENDINGS), max_size=3).map(tuple)


def told(pieces: tuple[Piece, ...]) -> tuple[str, ...]:
    return tuple(name + ending for begin, endings in pieces for name in begin for ending in endings)


@given(PIECES, st.booleans(), st.integers(-3, 15))
def test_is_the_tuple(pieces: tuple[Piece, ...], is_sorted: bool, count: int) -> None:
    whole = tuple(sorted(told(pieces))) if is_sorted else told(pieces)

    def fresh() -> Names:
        return Names(*pieces, is_sorted=is_sorted)

    assert fresh() == whole and whole == fresh() and fresh() == fresh()
    assert fresh() != (*whole, "more") and (*whole, "more") != fresh()
    assert hash(fresh()) == hash(whole) and repr(fresh()) == repr(whole)
    assert len(fresh()) == len(whole) and bool(fresh()) == bool(whole)
    assert fresh()[:count] == whole[:count] and fresh()[1:] == whole[1:] and fresh()[::-1] == whole[::-1]
    assert all(fresh()[place] == name for place, name in enumerate(whole))
    assert [*fresh()] == list(whole) and json.dumps(list(fresh())) == json.dumps(list(whole))
    assert {name in fresh() for name in whole} <= {True}
    assert ("p1.size_mm" in fresh()) == ("p1.size_mm" in whole)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(finding, "MANY", 0)
        asked_often = fresh()
        for name in (*whole, "p1.size_mm", "p2", "p3.size_mm", ".size_mm", ""):
            assert (name in asked_often) == (name in whole)
    back = pickle.loads(pickle.dumps(fresh()))  # noqa: S301 - made here
    assert type(back) is tuple and back == whole


@given(PIECES, PIECES, st.booleans())
def test_one_after_another(one: tuple[Piece, ...], two: tuple[Piece, ...], is_sorted: bool) -> None:
    first, second = Names(*one, is_sorted=is_sorted), Names(*two)
    both = (*first, *second)
    assert joined(first, second) == both
    assert first + second == both
    assert tuple(first) + second == both
    assert first + tuple(second) == both


@pytest.fixture
def never_plain(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Names are made late, however few they are."""
    with monkeypatch.context() as patch:
        patch.setattr(finding, "MANY", 0)
        yield


def answers(sample: Path) -> str:
    drawing = read(sample) if sample.suffix else plant(60)
    result = analyse(drawing)
    return repr((result.findings, result.taken, result.why_not_judged))


SAMPLES = sorted(Path(__file__).parents[1].joinpath("samples").glob("*.wetcircuit"))


@pytest.mark.parametrize("sample", [*SAMPLES, Path("synthetic")], ids=lambda path: path.stem)
def test_late_or_at_once_is_the_same(sample: Path, request: pytest.FixtureRequest) -> None:
    at_once = answers(sample)
    request.getfixturevalue("never_plain")
    assert answers(sample) == at_once
