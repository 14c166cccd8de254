"""A store without a vessel, and one whose vessel valves can part from it."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, danger, found, only, told
from tests.checks.houses import SECURED
from tests.checks.store.fed import COLD, SOUND, fed, store

ABSENT = "store-vessel-absent"
CUT_OFF = "store-vessel-can-be-cut-off"

NO_VESSEL = COLD.replace(" t1.a:b", "")


@pytest.mark.parametrize(
    "drawing",
    [
        fed(vessel="", cold=NO_VESSEL),
        fed(vessel="t1.branch pg.connection", pg="pressure_gauge"),
        fed(vessel="", cold=NO_VESSEL, ev="expansion_vessel"),
        fed(vessel="", cold=NO_VESSEL, us=store(internal_expansion=False)),
    ],
    ids=["none", "a gauge in its place", "joined to nothing", "stated that there is none inside"],
)
def test_absent(drawing: Drawing) -> None:
    finding = only(ABSENT, drawing)
    assert (finding.grade.value, finding.components) == ("danger", ("us",))


BLOCKED: dict[str, tuple[Drawing, str]] = {
    "before the check valve": (fed(cold="cm.outlet rv.in:out t1.a:b cv.in:out t2.a:b us.cold"), "cv"),
    "behind a check valve of its own": (fed(vessel="t1.branch c2.in:out ev.connection", c2="check_valve"), "c2"),
    "behind a reducing valve": (fed(vessel="t1.branch r2.in:out ev.connection", r2="pressure_reducing_valve"), "r2"),
    "on the group's balanced cold": (
        fed(vessel="ig.balanced_cold ev.connection", cold="cm.outlet ig.in:out us.cold", expansion="", ig="inlet_group"),
        "ig",
    ),
    "behind two": (fed(cold="cm.outlet t1.a:b rv.in:out cv.in:out t2.a:b us.cold"), "cv"),
}  # fmt: skip


@pytest.mark.parametrize(("drawing", "blocker"), BLOCKED.values(), ids=BLOCKED.keys())
def test_absent_names_the_part_that_cannot_serve(drawing: Drawing, blocker: str) -> None:
    finding = only(ABSENT, drawing)
    assert (finding.grade.value, finding.components) == ("danger", ("us", blocker, "ev"))
    assert found(CUT_OFF, drawing) == ()


def test_another_stores_vessel_beyond_its_check_valve_is_not_offered() -> None:
    two = fed(
        "t5.branch ig.in:out t6.a:b u2.cold",
        "t6.branch e2.connection",
        cold="cm.outlet t5.a:b rv.in:out cv.in:out t2.a:b us.cold",
        vessel="",
        ig="inlet_group",
        u2=store(),
        e2="expansion_vessel",
    )
    assert only(ABSENT, two).components == ("us",)


@pytest.mark.parametrize(
    "drawing", [*SOUND.values(), fed(vessel="t1.branch iv.a:b ev.connection", iv=SECURED)]
)
def test_not_absent(drawing: Drawing) -> None:
    assert found(ABSENT, drawing) == ()


def test_internal_expansion() -> None:
    assert (
        asked(ABSENT, fed(vessel="", cold=NO_VESSEL, us=store(internal_expansion=True))).status
        == "not applicable"
    )
    finding = only(ABSENT, fed(vessel="", cold=NO_VESSEL, us=store(internal_expansion=None)))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("us.internal_expansion",))
    assert found(ABSENT, fed(us=store(internal_expansion=None))) == ()


@pytest.mark.parametrize("valve", ["isolating_valve", SECURED], ids=["plain", "secured is no excuse"])
def test_cut_off(valve: str) -> None:
    drawing = fed(vessel="t1.branch iv.a:b ev.connection", iv=valve)
    assert told(CUT_OFF, drawing) == [danger("us", "iv", "iv")]
    assert only(CUT_OFF, drawing).components == ("us", "iv", "ev")


def test_cut_off_by_two_together() -> None:
    two = fed(
        "us.secondary_return i2.a:b e2.connection",
        vessel="t1.branch i1.a:b ev.connection",
        i1="isolating_valve",
        i2="isolating_valve",
        e2="expansion_vessel",
    )
    assert told(CUT_OFF, two) == [danger("us", "i1 i2")]


@pytest.mark.parametrize(
    "drawing",
    [
        *[drawing for drawing in SOUND.values() if asked(CUT_OFF, drawing).status == "judged"],
        fed(cold=COLD.replace("cv.in:out", "iv.a:b cv.in:out"), iv="isolating_valve"),
        fed(cold=COLD.replace("cv.in:out", "cv.in:out iv.a:b"), iv="isolating_valve"),
        fed("us.secondary_return e2.connection", vessel="t1.branch iv.a:b ev.connection", iv="isolating_valve", e2="expansion_vessel"),
    ],
)  # fmt: skip
def test_not_cut_off(drawing: Drawing) -> None:
    assert found(CUT_OFF, drawing) == ()
    assert asked(CUT_OFF, drawing).status == "judged"


def test_cut_off_matters_only_without_internal_expansion() -> None:
    def with_valve(internal: bool | None) -> Drawing:
        return fed(
            vessel="t1.branch iv.a:b ev.connection",
            iv="isolating_valve",
            us=store(internal_expansion=internal),
        )

    assert asked(CUT_OFF, with_valve(True)).status == "not applicable"
    finding = only(CUT_OFF, with_valve(None))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("us.internal_expansion",))
    assert found(CUT_OFF, fed(us=store(internal_expansion=None))) == ()
