"""Heights carried on from part to part, what is missing for them, and where they disagree."""

from __future__ import annotations

from collections.abc import Mapping

import networkx as nx
import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.heights import Against, Heights
from circuitcheck.figures.plant import Plant
from tests.made import Part, made


def heights(drawing: Drawing) -> Heights:
    return Plant(drawing).heights


def row(rises: Mapping[str, float | None], given: Mapping[str, float], pipes: str = "") -> Drawing:
    """Valves a, b, c, d in a row: pipes ab, bc, cd."""
    parts: dict[str, Part] = {
        id: ("isolating_valve", {"height_m": given[id]} if id in given else {}) for id in "abcd"
    }
    text = pipes or "ab: a.b - b.a\nbc: b.b - c.a\ncd: c.b - d.a"
    return made(parts, text, pipe_data={id: {"rise_m": rise} for id, rise in rises.items()})


def test_rises_carry_a_height_on_either_way() -> None:
    found = heights(row({"ab": 1, "bc": -0.5}, {"b": 2}))
    assert [found.of(id) for id in "abcd"] == [1, 2, 1.5, None]
    assert found.difference("a", "c") == 0.5
    assert found.missing_for("abcd") == ("cd.rise_m",)


def test_a_given_height_wins() -> None:
    found = heights(row({"ab": 1}, {"a": 0, "b": 1.05}))
    assert found.of("b") == 1.05
    assert found.disagreements == ()


def test_two_heights_are_a_rise() -> None:
    found = heights(row({"ab": None}, {"a": 0, "b": 3}))
    assert found.rise("ab") == 3
    assert found.rise("bc") is None


def test_no_height_at_all_still_tells_differences() -> None:
    found = heights(row({"ab": 1, "bc": 2}, {}))
    assert (found.of("a"), found.difference("a", "c"), found.difference("c", "a")) == (None, 3, -3)
    assert found.difference("a", "d") is None
    assert found.missing_for("abc") == ("a.height_m",)
    assert found.missing_for("d") == ("d.height_m",)


def test_untold_pieces_have_no_difference() -> None:
    found = heights(row({"ab": 1, "cd": 1}, {"a": 0}))
    assert found.difference("a", "c") is None
    assert found.difference("c", "d") == 1
    assert found.missing_for("cd") == ("bc.rise_m",)


RING = "ab: a.b - b.a\nbc: b.b - c.a\ncd: c.b - d.a\nda: d.b - a.a"


@pytest.mark.parametrize(("last", "by"), [(-2.1, None), (-1.9, None), (-2.11, 0.11), (-1.89, 0.11), (2, 4)])
def test_a_loop_must_close_within_a_tenth(last: float, by: float | None) -> None:
    found = heights(row({"ab": 1, "bc": 1, "cd": 0, "da": last}, {}, RING)).disagreements
    if by is None:
        assert found == ()
        return
    (one,) = found
    assert one.against is Against.ITSELF
    assert (set(one.pipes), set(one.parts)) == ({"ab", "bc", "cd", "da"}, set("abcd"))
    assert one.by_m == pytest.approx(by)


@pytest.mark.parametrize(("given_d", "by"), [(3.1, None), (3.11, 0.11)])
def test_two_heights_against_the_rises_between(given_d: float, by: float | None) -> None:
    found = heights(row({"ab": 1, "bc": 1, "cd": 1}, {"a": 0, "d": given_d})).disagreements
    if by is None:
        assert found == ()
        return
    (one,) = found
    assert (one.against, one.pipes, one.parts) == (Against.HEIGHTS, ("ab", "bc", "cd"), tuple("abcd"))
    assert one.by_m == pytest.approx(by)


@pytest.mark.parametrize(("rise", "told"), [(2, False), (-2, False), (2.01, True), (-2.01, True)])
def test_a_rise_longer_than_its_pipe(rise: float, told: bool) -> None:
    drawing = made(
        {"a": "isolating_valve", "b": "isolating_valve"},
        "ab: a.b - b.a",
        pipe_data={"ab": {"rise_m": rise, "length_m": 2}},
    )
    assert [each.against for each in heights(drawing).disagreements] == [Against.LENGTH] * told


def test_a_free_end_and_a_pipe_back_to_its_own_tee() -> None:
    drawing = made(
        {"t": "tee", "v": "isolating_valve"},
        "p1: t.a - t.b\np2: t.branch - 3,3\np3: v.a - v.b",
        pipe_data={"p1": {"rise_m": 0.5}, "p2": {"rise_m": 9}, "p3": {"rise_m": 0.05}},
    )
    (one,) = heights(drawing).disagreements
    assert (one.pipes, one.parts) == (("p1",), ("t",))


NETS = st.lists(
    st.tuples(st.integers(0, 6), st.integers(0, 6), st.sampled_from([-1.0, -0.5, 0.0, 0.5, 1.0])),
    max_size=10,
)


@given(NETS, st.dictionaries(st.integers(0, 6), st.sampled_from([0.0, 0.5, 1.0]), max_size=3))
def test_against_a_plain_search(net: list[tuple[int, int, float]], known: dict[int, float]) -> None:
    """Told anew: silent exactly where one set of heights fits all; then each height is that set's."""
    used = dict.fromkeys(range(7), 0)
    lines, data = [], {}
    ports = ("a", "b", "branch")
    graph: nx.MultiGraph[int] = nx.MultiGraph()
    graph.add_nodes_from(range(7))
    for number, (start, finish, rise) in enumerate(net):
        if used[start] + (start == finish) > 2 or used[finish] > 2:
            continue
        begins = f"t{start}.{ports[used[start]]}"
        used[start] += 1
        ends = f"t{finish}.{ports[used[finish]]}"
        used[finish] += 1
        lines.append(f"p{number}: {begins} - {ends}")
        data[f"p{number}"] = {"rise_m": rise}
        graph.add_edge(start, finish, rise=rise, begins=start)
    parts: dict[str, Part] = {
        f"t{number}": ("tee", {"height_m": known[number]} if number in known else {}) for number in range(7)
    }
    told = heights(made(parts, "\n".join(lines), pipe_data=data))
    fits = True
    for piece in nx.connected_components(graph):
        tied = sorted(piece & set(known))
        root = tied[0] if tied else min(piece)
        at = {root: known.get(root, 0.0)}
        for near, far in list[tuple[int, int]](nx.bfs_edges(graph, root)):
            edge = next(iter(graph[near][far].values()))
            at[far] = at[near] + (edge["rise"] if edge["begins"] == near else -edge["rise"])
        for one, two, edge in graph.edges(piece, data=True):
            lower, upper = (one, two) if edge["begins"] == one else (two, one)
            fits &= at[lower] + edge["rise"] == at[upper]
        fits &= all(at[each] == known[each] for each in tied)
        if fits:
            for each in piece:
                assert told.of(f"t{each}") == (at[each] if tied else None)
                assert told.difference(f"t{root}", f"t{each}") == at[each] - at[root]
    assert (told.disagreements == ()) == fits
