"""Valves between a store and its relief valves."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, danger, found, only, told
from tests.checks.houses import SECURED, TIGHT_PUMP
from tests.checks.store.fed import COLD, SOUND, fed, store
from tests.made import Part

NAME = "relief-can-be-cut-off"

SHUTS: dict[str, Part] = {
    "hand": "isolating_valve",
    "secured": SECURED,
    "balancing": "balancing_valve",
}


@pytest.mark.parametrize("part", SHUTS.values(), ids=SHUTS.keys())
def test_before_the_temperature_relief(part: Part) -> None:
    drawing = fed(temperature="us.relief iv.a:b tr.inlet", iv=part)
    assert told(NAME, drawing) == [danger("us", "iv", "iv")]
    assert only(NAME, drawing).components == ("us", "iv", "tr")


@pytest.mark.parametrize(
    ("kind", "ends"), [("zone_valve", "in:out"), ("pump", "in:out"), ("dirt_separator", "a:b")]
)
def test_before_the_expansion_relief(kind: str, ends: str) -> None:
    drawing = fed(cold=COLD.replace("t2.a:b", f"t2.a:b x.{ends}"), x=kind)
    assert told(NAME, drawing) == [danger("us", "x", "x")]
    assert only(NAME, drawing).components == ("us", "x", "er")


def test_before_both_by_one_valve_or_two() -> None:
    both = fed(
        temperature="us.relief i1.a:b tr.inlet",
        expansion="t2.branch i2.a:b er.inlet",
        i1="isolating_valve",
        i2="isolating_valve",
    )
    finding = only(NAME, both)
    assert told(NAME, both) == [danger("us", "i1", "i1 i2")]
    assert set(finding.components) == {"us", "i1", "tr", "er"}
    assert both.name("er") in finding.message


def test_a_way_round_must_be_shut_too() -> None:
    round_ = fed(
        "t5.branch i2.a:b t6.branch",
        temperature="us.relief t5.a:b i1.a:b t6.a:b tr.inlet",
        i1="isolating_valve",
        i2="isolating_valve",
    )
    assert told(NAME, round_) == [danger("us", "i1 i2")]


@pytest.mark.parametrize(
    "drawing",
    [
        *SOUND.values(),
        fed("t5.branch t6.branch", temperature="us.relief t5.a:b i1.a:b t6.a:b tr.inlet", i1="isolating_valve"),
        fed("t5.branch t6.branch", temperature="us.relief t5.a:b x.in:out t6.a:b tr.inlet", x="check_valve"),
        fed(cold=COLD.replace("t2.a:b", "x.in:out t2.a:b"), x=TIGHT_PUMP),
        fed(cold=COLD.replace("cv.in:out", "cv.in:out iv.a:b"), iv="isolating_valve"),
        fed(hot="us.hot iv.a:b ou.hot", iv="isolating_valve"),
        fed(temperature="us.relief iv.a:b tr.inlet", iv="isolating_valve", us=store(volume_l=15)),
        fed(temperature="us.relief x.in:out tr.inlet", x="check_valve"),
    ],
)  # fmt: skip
def test_silent(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()
    assert asked(NAME, drawing).status == "judged"


def test_the_second_of_two_valves_does_not_save_the_store_where_one_valve_shuts_both() -> None:
    two = fed("t5.branch r2.inlet", temperature="us.relief iv.a:b t5.a:b tr.inlet",
              iv="isolating_valve", r2="temperature_relief_valve")  # fmt: skip
    assert told(NAME, two) == [danger("us", "iv", "iv")]
    assert set(only(NAME, two).components) == {"us", "iv", "tr", "r2"}


def test_an_unknown_size() -> None:
    finding = only(
        NAME, fed(temperature="us.relief iv.a:b tr.inlet", iv="isolating_valve", us=store(volume_l=None))
    )
    assert (finding.grade.value, finding.missing) == ("unanswered", ("us.volume_l",))


def test_a_valve_between_two_stores_cuts_one_of_them_off() -> None:
    two = fed(
        "t5.branch iv.a:b u2.cold", "u2.relief r2.inlet",
        cold=COLD.replace(" us.cold", " t5.a:b us.cold"),
        iv="isolating_valve", u2=store(), r2="temperature_relief_valve",
    )  # fmt: skip
    assert told(NAME, two) == [danger("u2", "iv", "iv")]


def test_not_known_if_secured_does_not_matter() -> None:
    unsure: Part = ("isolating_valve", {"secured": None})
    assert only(NAME, fed(temperature="us.relief iv.a:b tr.inlet", iv=unsure)).grade.value == "danger"
