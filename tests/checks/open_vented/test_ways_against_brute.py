"""The ways of vents and feeds on random plants, against every way there is."""

from __future__ import annotations

import itertools

import networkx as nx
from hypothesis import assume, given
from hypothesis import strategies as st

from circuitcheck.checks.answering import answer
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Drawing
from tests.made import Part, made

TEES = 4
PARTS: dict[str, Part] = {
    "hs": "heat_source", "pu": "pump", "rad": "radiator", "ov": "open_vent", "fc": "feed_cistern",
    **{f"t{n}": "tee" for n in range(TEES)},
}  # fmt: skip
JOINTS = ["hs.flow", "hs.return", "pu.in", "pu.out", "rad.flow", "rad.return", "ov.connection", "fc.feed"]
JOINTS += [f"t{n}.{port}" for n in range(TEES) for port in ("a", "b", "branch")]

RISES = st.lists(st.sampled_from([1.0, 0.0, -1.0, None]), min_size=10, max_size=10)


def plant(order: list[str], rises: list[float | None]) -> tuple[Drawing, list[tuple[str, str]]]:
    pairs = list(zip(order[::2], order[1::2], strict=True))
    text = "\n".join(f"p{n}: {a} - {b}" for n, (a, b) in enumerate(pairs))
    data = {f"p{n}": {"rise_m": rise} for n, rise in enumerate(rises)}
    return made(PARTS, text, pipe_data=data), pairs


def graph(pairs: list[tuple[str, str]], through: str) -> nx.Graph[str]:
    """Ports, joined by pipes and through the tees and the parts named."""
    found: nx.Graph[str] = nx.Graph()
    found.add_nodes_from(JOINTS)
    for n, (a, b) in enumerate(pairs):
        found.add_edge(a, b, pipe=n, start=a)
    for n in range(TEES):
        found.add_edges_from(itertools.combinations([f"t{n}.{port}" for port in ("a", "b", "branch")], 2))
    ports = {"hs": ("flow", "return"), "pu": ("in", "out"), "rad": ("flow", "return")}
    for part in through.split():
        a, b = (f"{part}.{port}" for port in ports[part])
        if not found.has_edge(a, b):
            found.add_edge(a, b)
    return found


def ways(among: nx.Graph[str], start: str, goal: str) -> list[list[str]]:
    return list(nx.all_simple_paths(among, start, goal))


@given(st.permutations(JOINTS), RISES)
def test_vent_pipe_dips(order: list[str], rises: list[float | None]) -> None:
    pairs = list(zip(order[::2], order[1::2], strict=True))
    last = next(n for n, pair in enumerate(pairs) if "ov.connection" in pair)
    if rises[last] is not None:  # the last turn down has tests of its own: here it only rises
        rises[last] = 1.0 if pairs[last][1] == "ov.connection" else -1.0
    drawing, _ = plant(order, rises)
    case = Case(drawing)
    said = answer(checks()["vent-pipe-dips"], case)
    found = ways(graph(pairs, "pu"), "hs.flow", "ov.connection")
    if not found:
        found = ways(graph(pairs, "pu rad hs"), "hs.flow", "ov.connection")
    among = graph(pairs, "pu rad hs")

    def gained(a: str, b: str) -> float | None:
        """What a pipe gains from one end to the other: as given, or told by the rises of the rest."""
        edge = among.edges[a, b]
        rise = case.heights.rise(f"p{edge['pipe']}")
        return None if rise is None else (rise if edge["start"] == a else -rise)

    verdicts = set()
    for path in found:
        gains = [gained(a, b) for a, b in itertools.pairwise(path) if "pipe" in among.edges[a, b]]
        if any(gain is not None and gain < 0 for gain in gains):
            verdicts.add("danger")
        else:
            verdicts.add("unanswered" if None in gains else "sound")
    grades = {finding.grade.value for finding in said.findings}
    if said.status == "not applicable":
        assert not found
    elif "sound" in verdicts:
        assert grades == set()
    else:
        assert grades == {"unanswered" if "unanswered" in verdicts else "danger"}


@given(st.permutations(JOINTS))
def test_pump_between(order: list[str]) -> None:
    drawing, pairs = plant(order, [None] * 10)
    said = answer(checks()["pump-between-vent-and-feed"], Case(drawing))
    assume(said.status == "judged")
    whole = graph(pairs, "hs pu rad")
    assume({"pu.in", "pu.out"} not in [set(bridge) for bridge in nx.bridges(whole)])
    past_no_emitter = ways(graph(pairs, "hs pu"), "ov.connection", "fc.feed")
    through_pump = [
        any({a, b} == {"pu.in", "pu.out"} for a, b in itertools.pairwise(path)) for path in past_no_emitter
    ]
    assert bool(said.findings) == (bool(through_pump) and all(through_pump))
