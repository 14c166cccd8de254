"""The way along the pipes: the cheapest of several, by all of its steps."""

from __future__ import annotations

from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.pipework import Cost, Step, way
from circuitcheck.drawing.value import Joint
from tests.checks.asking import way as pipes_of
from tests.made import made

SHORT_WAY_ROUND = made(
    dict.fromkeys(("t1", "t2", "a", "b", "c"), "tee"),
    pipes_of("t1.a a.a:b b.a:b c.a:b t2.a", "t1.b t2.b"),
)


def test_the_price_of_a_way_is_that_of_all_its_pipes() -> None:
    """Four pipes of one metre, or one of three: each of the four is cheaper than the one."""
    lengths = {"p1": 1.0, "p2": 1.0, "p3": 1.0, "p4": 1.0, "p5": 3.0}

    def cost(step: Step) -> Cost:
        return (lengths.get(step.pipe, 0.0),)

    found = way(
        Circuit(SHORT_WAY_ROUND), [Joint("t1", "branch")], Joint("t2", "branch").__eq__, lambda _: True, cost
    )
    assert found is not None
    assert [step.pipe for step in found if step.pipe] == ["p5"]
