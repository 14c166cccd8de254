"""No outlet waits behind too long a pipe."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.supply.hot_pipe_too_long import propose
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.supply.plumbing import plumbed

NAME = "hot-pipe-too-long"


def bare(length: float | None = 1, size: float | None = 15, **data: Any) -> dict[str, Any]:
    return {"length_m": length, "size_mm": size, "insulated": False, **data}


def run(*pipes: dict[str, Any]) -> Drawing:
    """From a store to a sink, through valves that join the pipes."""
    valves = " ".join(f"v{n}.a:b" for n in range(1, len(pipes)))
    return plumbed(f"us.hot {valves} sink.hot", pipe_data={f"p{n}": pipe for n, pipe in enumerate(pipes, 1)})


@pytest.mark.parametrize(
    ("pipes", "fires"),
    [
        ((bare(12, 15),), False),
        ((bare(12.1, 15),), True),
        ((bare(6, 22), bare(6, 15)), False),
        ((bare(6, 22), bare(6.1, 15)), True),
        ((bare(20, 10),), False),
        ((bare(7.5, 15), bare(0.5, 28)), False),  # the largest governs
        ((bare(7.6, 15), bare(0.5, 28)), True),
        ((bare(3, 35),), False),
        ((bare(3.1, 35),), True),
        ((bare(50, 35, insulated=True),), False),
        ((bare(50, 35, insulated=True), bare(12, 22)), False),  # insulated pipe does not count at all
        ((bare(50, 22, insulated=True), bare(12.1, 22)), True),
        ((bare(12.1, 12, material="plastic"),), False),
        ((bare(12, 15, material="steel"),), False),  # 21.3 mm outside
        ((bare(8.1, 20, material="steel"),), True),  # 26.9 mm outside
    ],
)
def test_the_table(pipes: tuple[dict[str, Any], ...], fires: bool) -> None:
    answer = asked(NAME, run(*pipes))
    assert [each.components for each in answer.findings] == [("sink", "us")] * fires
    assert answer.status == "judged"


def test_the_finding_says_length_and_limit() -> None:
    finding = only(NAME, run(bare(7.6, 15), bare(0.5, 28), bare(9, 28, insulated=True)))
    assert finding.grade.value == "advice"
    assert finding.numbers == {"length_m": pytest.approx(8.1), "limit_m": 8}
    assert finding.pipes == ("p1", "p2")


@pytest.mark.parametrize(
    ("pipes", "missing"),
    [
        ((bare(None, 15),), ["p1.length_m"]),
        ((bare(13, None),), ["p1.size_mm"]),
        ((bare(13, 22, insulated=None),), ["p1.insulated"]),
        ((bare(1, 22), {}), ["p2.insulated", "p2.length_m", "p2.size_mm"]),
        ((bare(11.5, 22), bare(None, 22)), ["p2.length_m"]),
        ((bare(3, None),), []),  # short for any size
        ((bare(20.1, None),), None),  # too long for any size
        ((bare(13, 22), {}), None),  # already too long
        ((bare(None, None, insulated=True),), []),
        ((bare(12, 22, insulated=None),), []),
    ],
)
def test_what_is_missing(pipes: tuple[dict[str, Any], ...], missing: list[str] | None) -> None:
    findings = found(NAME, run(*pipes))
    if missing is None:
        assert [each.grade.value for each in findings] == ["advice"]
    else:
        assert [list(each.missing) for each in findings] == [missing] * bool(missing)


def test_every_outlet_by_itself_and_the_best_of_two_ways() -> None:
    drawing = plumbed(
        "us.hot t1.a:b sink.hot", "t1.branch bath.hot",
        pipe_data={"p1": bare(5), "p2": bare(7), "p3": bare(7.1)},
    )  # fmt: skip
    assert [each.components[0] for each in found(NAME, drawing)] == ["bath"]
    two = plumbed(
        "us.hot t1.a:b t2.a:b sink.hot", "t1.branch v1.a:b t2.branch",
        pipe_data={f"p{n}": bare(length) for n, length in enumerate((1, 30, 1, 4, 4), 1)},
    )  # fmt: skip
    assert found(NAME, two) == ()


@pytest.mark.parametrize(("far", "fires"), [(12, False), (12.1, True)])
@pytest.mark.parametrize("back", ["p1.in:out c2.in:out us.secondary_return", "us.secondary_return"])
def test_from_the_secondary_loop(far: float, fires: bool, back: str) -> None:
    drawing = plumbed(
        f"us.hot t1.a:b t2.a:b {back}", "t1.branch sink.hot", "t2.branch bath.hot",
        pipe_data={f"p{n}": bare(20) for n in range(1, 4)}
        | {f"p{n}": bare(20) for n in range(4, 6 if "c2" in back else 4)}
        | ({"p6": bare(far), "p7": bare(1)} if "c2" in back else {"p4": bare(far), "p5": bare(1)}),
    )  # fmt: skip
    assert [each.components[0] for each in found(NAME, drawing)] == ["sink"] * fires


def test_a_branch_of_the_loop_is_no_loop() -> None:
    drawing = plumbed(
        "us.hot t1.a:b p9.in:out us.secondary_return", "t1.branch t2.a:b sink.hot", "t2.branch bath.hot",
        pipe_data={f"p{n}": bare(8) for n in range(1, 7)}, p9="pump",
    )  # fmt: skip
    assert [each.components[0] for each in found(NAME, drawing)] == ["sink", "bath"]


def test_a_combination_heat_source_and_a_blending_valve() -> None:
    drawing = plumbed("ch.hot b1.hot:mixed sink.hot", pipe_data={"p1": bare(6), "p2": bare(6.1)})
    assert only(NAME, drawing).components == ("sink", "ch")


def test_not_applicable() -> None:
    assert asked(NAME, plumbed("cm.outlet sink.cold")).status == "not applicable"
    assert (
        asked(NAME, plumbed("cm.outlet sink.hot", "us.hot bath.hot", pipe_data={"p2": bare(1)})).status
        == "judged"
    )
    assert asked(NAME, plumbed("cm.outlet sink.hot")).status == "not applicable"


def test_the_cure() -> None:
    drawing = run(bare(7), bare(7))
    (proposal,) = propose(Case(drawing), only(NAME, drawing))
    assert found(NAME, proposal.drawing) == ()
