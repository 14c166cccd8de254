"""Something shuts the house off from the main by hand."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed
from tests.checks.supply.plumbing import FED, plumbed

NAME = "stop-valve-absent"

SOUND: dict[str, Drawing] = {
    "right at the main": plumbed("cm.outlet v1.a:b t1.a:b sink.cold", "t1.branch basin.cold"),
    "after a strainer and a reducing valve": plumbed("cm.outlet pr.in:out v1.a:b sink.cold"),
    "one before each": plumbed("cm.outlet t1.a:b v1.a:b sink.cold", "t1.branch v2.a:b basin.cold"),
    "secured": plumbed("cm.outlet v1.a:b sink.cold", v1=("isolating_valve", {"secured": True})),
    "a store behind it": plumbed(FED.replace("cm.outlet", "cm.outlet v1.a:b"), "us.hot sink.hot"),
    "a filling link has its own": plumbed("cm.outlet t1.a:b v1.a:b sink.cold", "t1.branch fl.supply"),
    "a drain before it": plumbed("cm.outlet t1.a:b v1.a:b sink.cold", "t1.branch k1.connection"),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND)
def test_sound(drawing: Drawing) -> None:
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


FIRES: dict[str, tuple[Drawing, tuple[str, ...]]] = {
    "none": (plumbed("cm.outlet sink.cold"), ("cm", "sink")),
    "motorised only": (plumbed("cm.outlet z1.in:out sink.cold"), ("cm", "sink")),
    "check and reducing valve only": (plumbed(FED, "us.hot v1.a:b sink.hot"), ("cm", "us")),
    "one outlet before it": (
        plumbed("cm.outlet t1.a:b v1.a:b sink.cold", "t1.branch basin.cold"), ("cm", "basin"),
    ),
    "a way round it": (
        plumbed("cm.outlet t1.a:b v1.a:b t2.a:b sink.cold", "t1.branch c1.in:out t2.branch"), ("cm", "sink"),
    ),
    "a cistern": (plumbed("cm.outlet fc.supply", "fc.feed v1.a:b vs.cold"), ("cm", "fc")),
    "water heated on its way": (plumbed("cm.outlet ch.cold", "ch.hot sink.hot"), ("cm", "ch")),
    "water heated by a plate": (
        plumbed(
            "hs.flow hx.primary_in:primary_out hs.return", "cm.outlet hx.secondary_in:secondary_out sink.hot"
        ),
        ("cm", "hx"),
    ),
}  # fmt: skip


@pytest.mark.parametrize(("drawing", "components"), FIRES.values(), ids=FIRES)
def test_fires(drawing: Drawing, components: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("advice", components)


def test_what_is_fed_through_a_store_is_not_named_again() -> None:
    outlets = ("us.hot t1.a:b sink.hot", "t1.branch basin.hot")
    assert only(NAME, plumbed("cm.outlet us.cold", *outlets)).components == ("cm", "us")


def test_each_main_is_judged() -> None:
    drawing = plumbed("cm.outlet v1.a:b sink.cold", "c2.outlet basin.cold", c2="cold_main")
    assert only(NAME, drawing).components == ("c2", "basin")


def test_many_are_not_all_named_in_the_sentence() -> None:
    drawing = plumbed(
        "cm.outlet t1.a:b t2.a:b t3.a:b sink.cold", "t1.branch basin.cold", "t2.branch bath.cold",
        "t3.branch wc.cold",
    )  # fmt: skip
    finding = only(NAME, drawing)
    assert len(finding.components) == 5 and "1 more" in finding.message


@pytest.mark.parametrize(
    "drawing",
    [
        sealed(),
        plumbed("cm.outlet k1.connection"),
        plumbed("cm.outlet fl.supply"),
        plumbed("sink.cold v1.a"),
        plumbed("cm.outlet c1.out:in sink.cold"),
    ],
    ids=["no main", "nothing drawn", "a filling link only", "no main for the tap", "no way but backwards"],
)
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


@pytest.mark.parametrize("name", ["none", "one outlet before it", "a way round it", "a cistern"])
def test_the_cure_is_a_stop_valve_at_the_main(name: str) -> None:
    analysis = analyse(FIRES[name][0])
    (finding,) = [each for each in analysis.findings if each.check == NAME]
    (cure,) = cures(analysis, finding)
    added = set(cure.drawing.components) - set(analysis.drawing.components)
    assert [cure.drawing.components[id].kind.name for id in added] == ["isolating_valve"]
    assert found(NAME, cure.drawing) == ()
