"""What the energy cut-out of a store shuts."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.store.fed import HEAT, SOUND, fed, store, without

NAME = "cut-out-drives-no-valve"

THREE_PORT = "hs.flow t3.a:b pu.in:out zv.ab:a us.coil_flow:coil_return t8.a:b t4.a:b hs.return"

FIRES: dict[str, tuple[Drawing, tuple[str, ...]]] = {
    "none named": (fed(us=without("energy_cut_out")), ("us",)),
    "said to be none": (fed(us=store(energy_cut_out=None)), ("us",)),
    "a pump": (fed(us=store(energy_cut_out="pu")), ("us", "pu")),
    "a hand valve": (fed(heat=HEAT.replace("zv.in:out", "zv.a:b"), zv="isolating_valve"), ("us", "zv")),
    "the heat source": (fed(us=store(energy_cut_out="hs")), ("us", "hs")),
    "a three-port valve": (
        fed("zv.b rad.flow:return t8.branch", heat=THREE_PORT, zv=("three_port_valve", {"rest": "b"}), rad="radiator"),
        ("us", "zv"),
    ),
    "another zone's valve": (
        fed(
            "t7.branch z2.in:out rad.flow:return t8.branch",
            heat="hs.flow t3.a:b pu.in:out t7.a:b zv.in:out us.coil_flow:coil_return t8.a:b t4.a:b hs.return",
            z2="zone_valve", rad="radiator", us=store(energy_cut_out="z2"),
        ),
        ("us", "z2"),
    ),
    "a valve with a way round it": (
        fed("t7.branch iv.a:b t8.branch", heat=HEAT.replace("zv.in:out", "t7.a:b zv.in:out t8.a:b"), iv="isolating_valve"),
        ("us", "zv"),
    ),
    "a valve in a bypass": (
        fed("t7.branch zv.in:out t8.branch", heat="hs.flow t3.a:b pu.in:out t7.a:b us.coil_flow:coil_return t8.a:b t4.a:b hs.return"),
        ("us", "zv"),
    ),
    "a valve that rests open": (fed(zv=("zone_valve", {"rest": "open"})), ("us", "zv")),
    "a valve that stays where it stands": (fed(zv=("zone_valve", {"rest": "stays"})), ("us", "zv")),
    "a second pump beyond the valve": (
        fed("t7.branch p2.in:out t8.branch", heat="hs.flow t3.a:b pu.in:out zv.in:out t8.a:b us.coil_flow:coil_return t7.a:b t4.a:b hs.return", p2="pump"),
        ("us", "zv"),
    ),
}  # fmt: skip


@pytest.mark.parametrize(("drawing", "components"), FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing, components: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("danger", components)


@pytest.mark.parametrize(
    "drawing",
    [
        fed(),
        fed(heat="hs.flow t3.a:b pu.in:out us.coil_flow:coil_return zv.in:out t4.a:b hs.return"),
        SOUND["beside a heating zone"],
        SOUND["with a secondary return"],
    ],
    ids=["in the flow", "in the return", "beside a zone", "secondary return"],
)
def test_silent(drawing: Drawing) -> None:
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


@pytest.mark.parametrize(
    "drawing",
    [
        SOUND["heated by the immersion alone"],
        fed(heat="zv.in us.coil_flow", safety="", heating_vessel="", us=without("energy_cut_out")),
        fed(us=store(energy_cut_out=None, volume_l=15)),
    ],
    ids=["immersion", "a coil that nothing heats", "small"],
)
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (fed(us=store(energy_cut_out=None, volume_l=None)), ("us.volume_l",)),
        (fed(us=store(energy_cut_out="pu", volume_l=None)), ("us.volume_l",)),
        (fed(zv=("zone_valve", {"rest": None})), ("zv.rest",)),
        (fed(zv=("zone_valve", {"rest": None}), us=store(volume_l=None)), ("zv.rest", "us.volume_l")),
    ],
)
def test_unanswered(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert all(name in finding.message for name in missing)


def test_heat_that_comes_through_an_exchanger() -> None:
    behind = fed(
        "hx.secondary_out t7.a:b us.coil_flow:coil_return hx.secondary_in",
        heat="hs.flow t3.a:b pu.in:out hx.primary_in:primary_out t4.a:b hs.return",
        us=without("energy_cut_out"), hx="heat_exchanger",
    )  # fmt: skip
    assert only(NAME, behind).components == ("us",)


def test_the_rest_left_out_is_shut_and_that_is_remembered() -> None:
    from circuitcheck.checks.case import Case
    from circuitcheck.checks.catalogue import checks

    case = Case(fed())
    checks()[NAME].judge(case)
    assert "zv.rest = shut" in case.taken
