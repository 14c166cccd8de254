"""Heated water that can push back into the main."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.store.fed import COLD, GROUP, SOUND, fed, store

NAME = "cold-check-absent"

NO_CHECK = COLD.replace(" cv.in:out", "")

FIRES: dict[str, tuple[Drawing, tuple[str, ...]]] = {
    "a reducing valve is none": (fed(cold=NO_CHECK), ("us", "rv", "cm")),
    "nothing at all": (fed(cold=NO_CHECK.replace(" rv.in:out", "")), ("us", "cm")),
    "the wrong way round": (fed(cold=COLD.replace("cv.in:out", "cv.out:in")), ("us", "rv", "cm")),
    "round the check valve": (
        fed("t5.branch t6.branch", cold=COLD.replace("cv.in:out", "t5.a:b cv.in:out t6.a:b")),
        ("us", "rv", "cm"),
    ),
    "round it by a valve": (
        fed("t5.branch iv.a:b t6.branch", cold=COLD.replace("cv.in:out", "t5.a:b cv.in:out t6.a:b"), iv="isolating_valve"),
        ("us", "rv", "cm"),
    ),
    "by the hot pipe": (fed("t5.branch t6.branch", hot="us.hot t6.a:b ou.hot", cold=COLD.replace("cm.outlet", "cm.outlet t5.a:b")), ("us", "cm")),
    "through the group's balanced cold": (
        fed("ig.balanced_cold t5.branch", cold="cm.outlet ig.in:out t5.a:b t1.a:b us.cold", expansion="", ig=GROUP),
        ("us", "ig", "cm"),
    ),
    "built in, and round it by the hot pipe": (
        fed("t5.branch t6.branch", hot="us.hot t6.a:b ou.hot", cold=NO_CHECK.replace("rv.in:out", "rv.in:out t5.a:b"),
            us=store(built_in=["check_valve"])),
        ("us", "rv", "cm"),
    ),
}  # fmt: skip


@pytest.mark.parametrize(("drawing", "components"), FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing, components: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("danger", components)
    assert ("reducing valve is no check valve" in finding.message) is (len(components) > 2)


@pytest.mark.parametrize(
    "drawing",
    [
        *SOUND.values(),
        fed(cold=NO_CHECK, us=store(built_in=["check_valve"])),
        fed(cold=COLD.replace("cm.outlet rv.in:out cv.in:out", "cm.outlet cv.in:out rv.in:out")),
        fed(
            "t5.branch bl.cold",
            cold=COLD.replace("rv.in:out", "rv.in:out t5.a:b"),
            hot="us.hot bl.hot:mixed ou.hot",
            bl="blending_valve",
        ),
    ],
)
def test_silent(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()
    assert asked(NAME, drawing).status == "judged"


def test_not_applicable_without_a_main_on_its_water() -> None:
    no_main = fed(cold="cv.in:out t1.a:b t2.a:b us.cold".replace("cv.in:out ", "cv.out "))
    assert asked(NAME, no_main).status == "not applicable"
    elsewhere = fed("cm.outlet ou.cold", cold="cv.out t1.a:b t2.a:b us.cold")
    assert asked(NAME, elsewhere).status == "not applicable"


def test_each_store_by_itself() -> None:
    two = fed("t5.branch u2.cold", cold=COLD.replace("rv.in:out", "rv.in:out t5.a:b"), u2=store())
    assert only(NAME, two).components == ("u2", "rv", "cm")
    joined = fed(
        "t5.branch u2.cold", "u2.hot t6.branch",
        cold=COLD.replace("rv.in:out", "rv.in:out t5.a:b"), hot="us.hot t6.a:b ou.hot", u2=store(),
    )  # fmt: skip
    assert {each.components[0] for each in found(NAME, joined)} == {"us", "u2"}
