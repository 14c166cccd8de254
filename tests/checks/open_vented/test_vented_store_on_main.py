"""A vented store that the main reaches."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed
from tests.checks.open_vented.plants import vented_store

NAME = "vented-store-on-main"

SOUND: dict[str, Drawing] = {
    "under its cistern": vented_store(),
    "the main fills the cistern": vented_store("m: cm.outlet - sc.supply", cm="cold_main"),
    "a blending valve takes cold from the main": vented_store(
        "draw: th.branch - bv.hot\nmix: bv.mixed - bath.hot\nm: cm.outlet - bv.cold",
        without="draw", bv="blending_valve", cm="cold_main",
    ),
    "the bath takes cold from the main": vented_store("m: cm.outlet - bath.cold", cm="cold_main"),
}  # fmt: skip

ON_MAIN: dict[str, Drawing] = {
    "straight": vented_store("m: cm.outlet - st.cold", without="down cold", cm="cold_main"),
    "through a shut-off valve": vented_store("m: cm.outlet - iv.a", without="down", cm="cold_main"),
    "through a reducing valve": vented_store(
        "m: cm.outlet - rv.in\nr: rv.out - iv.a", without="down", cm="cold_main", rv="pressure_reducing_valve"
    ),
    "teed beside the cistern, through a check valve": vented_store(
        "cold: iv.b - x.a\nc2: x.b - st.cold\nm: cm.outlet - cv.in\nc: cv.out - x.branch",
        without="cold", cm="cold_main", cv="check_valve", x="tee",
    ),
    "into its hot pipe": vented_store(
        "up: th.b - x.a\nu2: x.b - sv.connection\nm: cm.outlet - x.branch", without="up", cm="cold_main", x="tee"
    ),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


@pytest.mark.parametrize("drawing", ON_MAIN.values(), ids=ON_MAIN.keys())
def test_fires(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("danger", ("st", "cm"))


def test_without_a_vented_store_it_does_not_apply() -> None:
    assert asked(NAME, sealed()).status == "not applicable"
