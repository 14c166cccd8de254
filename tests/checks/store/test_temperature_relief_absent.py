"""A store without a temperature relief valve of its own."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.store.fed import COLD, SOUND, fed, store

NAME = "temperature-relief-absent"

ABSENT: dict[str, Drawing] = {
    "none": fed(temperature=""),
    "an expansion relief valve in its place": fed(
        temperature="us.relief e2.inlet", e2="expansion_relief_valve"
    ),
    "a safety valve in its place": fed(temperature="us.relief s2.inlet", s2="safety_valve"),
    "only expansion relief built in": fed(temperature="", us=store(built_in=["expansion_relief"])),
    "drawn and joined to nothing": fed(temperature="", tr="temperature_relief_valve"),
    "on the heating water": fed(temperature="t4.branch tr.inlet", heating_vessel=""),
}


@pytest.mark.parametrize("drawing", ABSENT.values(), ids=ABSENT.keys())
def test_fires(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("danger", ("us",))


@pytest.mark.parametrize("blocker", ["check_valve", "pressure_reducing_valve", "bypass_valve"])
@pytest.mark.parametrize("ends", ["in:out", "out:in"])
def test_names_the_part_that_cannot_serve(blocker: str, ends: str) -> None:
    drawing = fed(temperature=f"us.relief x.{ends} tr.inlet", x=blocker)
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("danger", ("us", "x", "tr"))
    assert drawing.name("x") in finding.message


@pytest.mark.parametrize(
    "drawing",
    [
        fed(),
        fed(temperature="", us=store(built_in=["temperature_relief"])),
        fed(temperature="us.relief iv.a:b tr.inlet", iv="isolating_valve"),
        fed(temperature="us.relief st.in:out tr.inlet", st="strainer"),
        fed(temperature="us.relief t5.a:b tr.inlet"),
    ],
    ids=["there", "built in", "behind a valve, which another check speaks of", "strainer", "tee"],
)
def test_silent(drawing: Drawing) -> None:
    assert (asked(NAME, drawing).findings, asked(NAME, drawing).status) == ((), "judged")


def test_a_valve_on_the_cold_pipe_is_misplaced_and_not_absent() -> None:
    assert (
        found(NAME, fed(temperature="t5.branch tr.inlet", cold=COLD.replace(" us.cold", " t5.a:b us.cold")))
        == ()
    )


@pytest.mark.parametrize(("volume", "grade"), [(15, None), (15.01, "danger"), (None, "unanswered")])
def test_small_stores(volume: float | None, grade: str | None) -> None:
    answer = asked(NAME, fed(temperature="", us=store(volume_l=volume)))
    assert [each.grade.value for each in answer.findings] == ([grade] if grade else [])
    if grade == "unanswered":
        assert answer.findings[0].missing == ("us.volume_l",)
    if grade is None:
        assert answer.status == "not applicable"


def test_an_unknown_size_does_not_matter_with_a_valve() -> None:
    assert asked(NAME, fed(us=store(volume_l=None))).status == "judged"


def test_another_stores_valve_feels_the_other_stores_heat() -> None:
    two = fed(
        "t5.branch u2.cold",
        "u2.hot o2.hot",
        cold=COLD.replace(" us.cold", " t5.a:b us.cold"),
        u2=store(),
        o2="outlet",
    )
    assert only(NAME, two).components == ("u2",)
    built_in = fed(
        "t5.branch u2.cold",
        cold=COLD.replace(" us.cold", " t5.a:b us.cold"),
        temperature="",
        u2=store(built_in=["temperature_relief"]),
    )
    assert only(NAME, built_in).components == ("us",)


def test_a_valve_behind_another_stores_check_valve_is_not_offered() -> None:
    two = fed(
        "t5.branch ig.in:out u2.cold",
        "u2.relief r2.inlet",
        cold=COLD.replace("cm.outlet", "cm.outlet t5.a:b"),
        temperature="",
        ig="inlet_group",
        u2=store(),
        r2="temperature_relief_valve",
    )
    assert only(NAME, two).components == ("us",)


def test_under_european_standards_no_store_is_too_small() -> None:
    drawing = fed(temperature="", us=store(volume_l=10), design={"rule_book": "european_standards"})
    assert only(NAME, drawing).grade.value == "danger"


def test_every_sound_store_is_judged() -> None:
    assert {asked(NAME, drawing).status for drawing in SOUND.values()} == {"judged"}
