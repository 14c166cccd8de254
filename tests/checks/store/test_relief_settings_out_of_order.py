"""Settings of relief valves against the store, 95 °C and the reducing valve."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.store.fed import COLD, SOUND, fed, store
from tests.made import Part

NAME = "relief-settings-out-of-order"


def tr(**data: Any) -> Part:
    return ("temperature_relief_valve", {"set_pressure_bar": 7, **data})


def er(bar: float | None) -> Part:
    return ("expansion_relief_valve", {"set_pressure_bar": bar})


def rv(bar: float | None) -> Part:
    return ("pressure_reducing_valve", {"set_pressure_bar": bar})


def group(reduced: float | None, relief: float | None) -> Drawing:
    ig: Part = ("inlet_group", {"set_pressure_bar": reduced, "relief_pressure_bar": relief})
    return fed(cold="cm.outlet ig.in:out t1.a:b us.cold", expansion="", ig=ig)


Expected = list[tuple[str, tuple[str, ...]]]

CASES: list[tuple[Drawing, Expected]] = [
    (fed(tr=tr(set_pressure_bar=8)), []),
    (fed(tr=tr(set_pressure_bar=8.01)), [("danger", ("tr", "us"))]),
    (fed(tr=tr(set_temperature_c=95)), []),
    (fed(tr=tr(set_temperature_c=95.1)), [("danger", ("tr", "us"))]),
    (fed(tr=tr(set_pressure_bar=9, set_temperature_c=99)), [("danger", ("tr", "us"))] * 2),
    (fed(er=er(8)), []),
    (fed(er=er(8.01)), [("danger", ("er", "us"))]),
    (fed(er=er(6), rv=rv(4.8)), []),
    (fed(er=er(6), rv=rv(4.81)), [("fault", ("er", "rv"))]),
    (fed(er=er(9), rv=rv(7.5)), [("danger", ("er", "us")), ("fault", ("er", "rv"))]),
    (group(4.8, 6), []),
    (group(4.9, 6), [("fault", ("ig",))]),
    (group(3, 8.5), [("danger", ("ig", "us"))]),
    (fed(cold=COLD.replace("rv.in:out", "rv.in:out r2.in:out"), rv=rv(6), r2=rv(3)), []),
    (fed(cold=COLD.replace(" rv.in:out", "")), []),
    (fed(us=store(volume_l=15), tr=tr(set_temperature_c=99, set_pressure_bar=20)), []),
    (fed(us=store(volume_l=15), er=er(20)), [("danger", ("er", "us"))]),
]


@pytest.mark.parametrize(("drawing", "expected"), CASES)
def test_settings(drawing: Drawing, expected: Expected) -> None:
    answer = asked(NAME, drawing)
    assert [(each.grade.value, each.components) for each in answer.findings] == expected
    assert answer.status == "judged"


UNANSWERED: list[tuple[Drawing, dict[str, tuple[str, tuple[str, ...]]]]] = [
    (fed(tr=tr(set_pressure_bar=None)), {"tr": ("danger", ("tr.set_pressure_bar",))}),
    (fed(tr=tr(set_temperature_c=None)), {"tr": ("danger", ("tr.set_temperature_c",))}),
    (
        fed(tr=tr(set_pressure_bar=None, set_temperature_c=None)),
        {"tr": ("danger", ("tr.set_pressure_bar", "tr.set_temperature_c"))},
    ),
    (fed(er=er(None)), {"er": ("danger", ("er.set_pressure_bar",))}),
    (fed(er=er(None), rv=rv(None)), {"er": ("danger", ("er.set_pressure_bar", "rv.set_pressure_bar"))}),
    (fed(rv=rv(None)), {"er": ("fault", ("rv.set_pressure_bar",))}),
    (
        fed(us=store(maximum_pressure_bar=None)),
        {"tr": ("danger", ("us.maximum_pressure_bar",)), "er": ("danger", ("us.maximum_pressure_bar",))},
    ),
    (group(3, None), {"ig": ("danger", ("ig.relief_pressure_bar",))}),
    (
        fed(us=store(volume_l=None), tr=tr(set_temperature_c=99)),
        {"tr": ("danger", ("us.volume_l",))},
    ),
]


@pytest.mark.parametrize(("drawing", "expected"), UNANSWERED)
def test_unanswered(drawing: Drawing, expected: dict[str, tuple[str, tuple[str, ...]]]) -> None:
    findings = found(NAME, drawing)
    assert {each.grade.value for each in findings} == {"unanswered"}
    told = {each.components[0]: (each.would_be and each.would_be.value, each.missing) for each in findings}
    assert told == expected
    assert len(findings) == len(expected)


def test_what_is_wrong_stands_though_the_rest_is_not_known() -> None:
    findings = found(NAME, fed(tr=tr(set_pressure_bar=None, set_temperature_c=99)))
    assert [each.grade.value for each in findings] == ["danger", "unanswered"]


def test_the_store_with_the_lowest_pressure_counts() -> None:
    two = fed(
        "t5.branch u2.cold",
        cold=COLD.replace(" us.cold", " t5.a:b us.cold"),
        u2=store(maximum_pressure_bar=5),
    )
    assert [each.components for each in found(NAME, two)] == [("tr", "u2"), ("er", "u2")]


@pytest.mark.parametrize(("volume", "fires"), [(15, False), (16, True)])
def test_the_valve_of_a_small_store_is_outside_its_rule_beside_a_large_one(
    volume: float, fires: bool
) -> None:
    drawing = fed(
        "c2.outlet u2.cold", "u2.relief r2.inlet",
        c2="cold_main", u2=store(volume_l=volume), r2=tr(set_temperature_c=99),
    )  # fmt: skip
    assert [each.components for each in found(NAME, drawing)] == [("r2", "u2")] * fires


def test_a_temperature_relief_valve_alone_is_judged() -> None:
    drawing = fed(expansion="", cold=COLD.replace(" t2.a:b", ""))
    assert (asked(NAME, drawing).findings, asked(NAME, drawing).status) == ((), "judged")


def test_numbers_are_told() -> None:
    finding = only(NAME, fed(er=er(6), rv=rv(5)))
    assert finding.numbers == pytest.approx(
        {"set_pressure_bar": 5, "limit_bar": 4.8, "relief_pressure_bar": 6}
    )
    assert "4.8 bar" in finding.message and "0.8" in finding.message


def test_valves_built_into_a_store_come_set() -> None:
    built_in = fed(
        temperature="", expansion="", cold=COLD.replace(" t2.a:b", ""),
        us=store(built_in=["temperature_relief", "expansion_relief"]),
    )  # fmt: skip
    assert asked(NAME, built_in).status == "not applicable"


@pytest.mark.parametrize("name", [name for name in SOUND if "built in" not in name])
def test_sound(name: str) -> None:
    assert asked(NAME, SOUND[name]).status == "judged"
