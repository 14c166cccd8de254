"""The discharge of mains-fed stores as a worked figure."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import way
from tests.checks.houses import store_discharge
from tests.figures.worked.asking import number, one, told, values
from tests.made import Part, made

BEFORE = ({"size_mm": 15, "length_m": 0.5, "bends": 0},)


def run(length: float, bends: float, size: float = 22, **valve: Any) -> Drawing:
    after = ({"size_mm": size, "length_m": length, "bends": bends},)
    return store_discharge(BEFORE, after, valve=valve)


def test_the_worked_example_of_the_approved_document() -> None:
    """Source: Approved Document G (England), worked example: G 1/2, 7 m, 4 elbows: 22 mm carries 5.8 m and
    fails, 28 mm carries 14 m and serves."""
    figure = one("discharge", run(7, 4))
    found = values(figure)
    assert found["Smallest size after the tundish (D2)"] == 28
    assert found["Longest straight length in 22 mm with these bends"] == pytest.approx(5.8)
    assert found["Longest straight length in 28 mm with these bends"] == pytest.approx(14)
    assert found["In 22 mm it counts as"] == pytest.approx(10.2)
    assert found["In 28 mm it counts as"] == pytest.approx(11)
    assert found["Too long for 22 mm by"] == pytest.approx(1.2)
    assert found["It may still grow in 28 mm by"] == pytest.approx(7)


@pytest.mark.parametrize(
    ("outlet", "length", "bends", "d1", "d2"),
    [(15, 6, 6, 15, 28), (15, 9, 5, 15, 28), (15, 9, 0, 15, 22), (15, 9.01, 0, 15, 28), (15, 18, 0, 15, 28),
     (15, 27, 0, 15, 35), (15, 27.01, 0, 15, 42), (22, 9, 0, 22, 28), (22, 9.01, 0, 22, 35), (22, 27, 0, 22, 42),
     (28, 9, 0, 28, 35), (28, 18.01, 0, 28, 54)],
)  # fmt: skip
def test_sizes(outlet: float, length: float, bends: float, d1: float, d2: float) -> None:
    """Source: Approved Document G (England), Table 3.1 and, beyond its rows, 3.58; the first two from a trade
    textbook's examples."""
    found = values(one("discharge", run(length, bends, outlet_size_mm=outlet)))
    assert found["Smallest size after the tundish (D2)"] == d2
    assert found["Smallest size before the tundish (D1)"] == d1


def test_a_size_beyond_the_printed_table_says_so() -> None:
    assert "That size is" in values(one("discharge", run(30, 0, 42)))
    assert "That size is" not in values(one("discharge", run(26, 0, 42)))


def test_longer_than_any_size_carries() -> None:
    found = values(one("discharge", run(80, 0)))
    assert str(found["Smallest size after the tundish (D2)"]).startswith("none")


def test_the_fall_is_over_what_the_straight_drop_leaves() -> None:
    figure = one("discharge", run(5.3, 0))
    assert number(figure, "Straight drop below the tundish, at least") == pytest.approx(300)
    assert number(figure, "Fall over the rest, at least") == pytest.approx(25)


def test_what_lacks_is_named() -> None:
    figure = one("discharge", store_discharge(BEFORE, ({"size_mm": 22, "length_m": 5}, {"bends": 1})))
    assert set(figure.missing) == {"a1.bends", "a2.length_m"} and not figure.results


@pytest.mark.parametrize(
    ("after", "valve", "why"),
    [
        ({"size_mm": 22, "length_m": 5, "bends": 0, "material": "plastic"}, {}, "is plastic"),
        ({"size_mm": 22, "length_m": 5, "bends": 0}, {"outlet_size_mm": 20}, "no valve outlet"),
    ],
)
def test_what_the_table_does_not_hold_for(
    after: Mapping[str, Any], valve: Mapping[str, Any], why: str
) -> None:
    figure = one("discharge", store_discharge(BEFORE, (after,), valve=valve))
    assert why in figure.refused and not figure.missing


def test_a_discharge_to_nowhere_and_one_without_a_tundish() -> None:
    drawing = run(5, 0)
    cut = replace(drawing, pipes={id: pipe for id, pipe in drawing.pipes.items() if id != "a1"})
    assert "no end" in one("discharge", cut).refused
    parts: dict[str, Part] = {"us": "unvented_store", "tr": "temperature_relief_valve", "de": "discharge_end"}
    straight = made(parts, way("us.relief tr.inlet:outlet de.inlet"))
    assert "no tundish" in one("discharge", straight).refused


@pytest.mark.parametrize(("volume", "count"), [(15, 0), (15.1, 1), (None, 1)])
def test_stores_too_small_for_the_rules(volume: float | None, count: int) -> None:
    assert len(told("discharge", store_discharge(store={"volume_l": volume}))) == count


def test_another_rule_book_refuses_with_its_reason() -> None:
    figure = one("discharge", replace(run(5, 0), design={"rule_book": "european_standards"}))
    assert "rule book european_standards sets no" in figure.refused


def two_stores(common: float = 35, **first: Any) -> Drawing:
    parts: dict[str, Part] = {"us1": ("unvented_store", {"volume_l": 200}), "us2": ("unvented_store", {"volume_l": 200}),
                              "tr1": "temperature_relief_valve", "tr2": "temperature_relief_valve",
                              "tu1": "tundish", "tu2": "tundish", "t": "tee", "de": "discharge_end"}  # fmt: skip
    lines = "\n".join(
        ["us1.relief - tr1.inlet", "tr1.outlet - tu1.inlet", "a1: tu1.outlet - t.a", "c: t.b - de.inlet",
         "us2.relief - tr2.inlet", "tr2.outlet - tu2.inlet", "a2: tu2.outlet - t.branch"]
    )  # fmt: skip
    own = {"size_mm": 22, "length_m": 3, "bends": 0}
    return made(
        parts,
        lines,
        pipe_data={"a1": own | first, "a2": own, "c": {"size_mm": common, "length_m": 2, "bends": 0}},
    )


@pytest.mark.parametrize(("length", "least"), [(3, 28), (8, 35)])
def test_stores_on_one_pipe(length: float, least: float) -> None:
    """Source: Approved Document G (England), 3.59: one size above the largest; 22 and 28 mm make 35 mm."""
    *single, common = told("discharge", two_stores(length_m=length))
    assert len(single) == 2
    assert number(common, "Smallest size of the common pipe") == least
    assert number(common, "As drawn, the smallest of it") == 35
    assert common.subject == ("de", "us1", "us2")


def test_what_a_common_pipe_lacks() -> None:
    common = told("discharge", two_stores(length_m=None))[-1]
    assert common.missing == ("a1.length_m",)


@pytest.mark.parametrize("length", [3, 5.8, 5.81, 9, 14.01])
@pytest.mark.parametrize("bends", [0, 4])
@pytest.mark.parametrize("size", [22, 28])
def test_the_figure_and_the_check_agree(length: float, bends: float, size: float) -> None:
    drawing = run(length, bends, size)
    findings = checks()["discharge-too-long"].judge(Case(drawing)).findings
    assert bool(findings) == (f"Too long for {size:g} mm by" in values(one("discharge", drawing)))
