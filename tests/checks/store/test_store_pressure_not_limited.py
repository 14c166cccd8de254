"""What holds the main's pressure down for a store."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.store.fed import COLD, GROUP, SOUND, fed, store
from tests.made import Part

NAME = "store-pressure-not-limited"

NO_REDUCER = COLD.replace(" rv.in:out", "")


def main(bar: float | None) -> Part:
    return ("cold_main", {"standing_pressure_bar": bar})


def reducer(bar: float | None) -> Part:
    return ("pressure_reducing_valve", {"set_pressure_bar": bar})


@pytest.mark.parametrize(
    ("standing", "grade"), [(3, "fault"), (8, "fault"), (8.01, "danger"), (12, "danger")]
)
def test_no_reducing_valve(standing: float, grade: str) -> None:
    finding = only(NAME, fed(cold=NO_REDUCER, cm=main(standing)))
    assert (finding.grade.value, finding.components, finding.missing) == (grade, ("us", "cm"), ())
    assert finding.numbers == {"standing_pressure_bar": standing, "maximum_pressure_bar": 8}
    assert (
        f"at {standing} bar, {'below' if standing <= 8 else 'above'} the store's highest pressure, 8 bar"
        in finding.message
    )


@pytest.mark.parametrize(
    ("standing", "most", "missing"),
    [
        (None, 8, ("cm.standing_pressure_bar",)),
        (4, None, ("us.maximum_pressure_bar",)),
        (None, None, ("cm.standing_pressure_bar", "us.maximum_pressure_bar")),
    ],
)
def test_no_reducing_valve_is_a_fault_whatever_is_not_known(
    standing: float | None, most: float | None, missing: tuple[str, ...]
) -> None:
    finding = only(NAME, fed(cold=NO_REDUCER, cm=main(standing), us=store(maximum_pressure_bar=most)))
    assert (finding.grade.value, finding.missing) == ("fault", missing)
    assert all(name in finding.message for name in missing)


@pytest.mark.parametrize(("bar", "fires"), [(8, False), (8.01, True), (3, False)])
def test_set_too_high(bar: float, fires: bool) -> None:
    findings = found(NAME, fed(rv=reducer(bar)))
    assert [(each.grade.value, each.components) for each in findings] == (
        [("danger", ("us", "rv"))] if fires else []
    )
    group = fed(
        cold="cm.outlet ig.in:out t1.a:b us.cold", expansion="", ig=("inlet_group", {"set_pressure_bar": bar})
    )
    assert bool(found(NAME, group)) is fires


@pytest.mark.parametrize(
    ("bar", "most", "missing"),
    [
        (None, 8, ("rv.set_pressure_bar",)),
        (3, None, ("us.maximum_pressure_bar",)),
        (None, None, ("us.maximum_pressure_bar", "rv.set_pressure_bar")),
    ],
)
def test_unanswered(bar: float | None, most: float | None, missing: tuple[str, ...]) -> None:
    finding = only(NAME, fed(rv=reducer(bar), us=store(maximum_pressure_bar=most)))
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert finding.would_be is not None and finding.would_be.value == "danger"


IN_SERIES = COLD.replace("rv.in:out", "rv.in:out r2.in:out")
SIDE_BY_SIDE = COLD.replace("rv.in:out", "t5.a:b rv.in:out t6.a:b")
OTHER_WAY = "t5.branch r2.in:out t6.branch"


@pytest.mark.parametrize(
    ("drawing", "told"),
    [
        (fed(cold=IN_SERIES, rv=reducer(12), r2=reducer(3)), []),
        (fed(cold=IN_SERIES, rv=reducer(3), r2=reducer(12)), []),
        (fed(cold=IN_SERIES, rv=reducer(3), r2=reducer(None)), []),
        (fed(cold=IN_SERIES, rv=reducer(12), r2=reducer(10)), [("danger", ("us", "rv", "r2"))]),
        (fed(cold=IN_SERIES, rv=reducer(12), r2=reducer(None)), [("unanswered", ("us", "rv", "r2"))]),
        (fed(OTHER_WAY, cold=SIDE_BY_SIDE, rv=reducer(3), r2=reducer(12)), [("danger", ("us", "r2"))]),
        (fed(OTHER_WAY, cold=SIDE_BY_SIDE, rv=reducer(3), r2=reducer(4)), []),
        (fed(OTHER_WAY, cold=SIDE_BY_SIDE, rv=reducer(12), r2=reducer(None)), [("danger", ("us", "rv"))]),
        (
            fed("t5.branch iv.a:b t6.branch", cold=SIDE_BY_SIDE, iv="isolating_valve"),
            [("fault", ("us", "cm"))],
        ),
        (fed("t5.branch c2.out:in t6.branch", cold=SIDE_BY_SIDE, c2="check_valve"), []),
        (fed(cold=COLD.replace("rv.in:out", "rv.out:in")), []),
    ],
)
def test_several_ways(drawing: Drawing, told: list[tuple[str, tuple[str, ...]]]) -> None:
    assert [(each.grade.value, each.components) for each in found(NAME, drawing)] == told


def test_two_mains() -> None:
    two = fed("c2.outlet t5.branch", cold=NO_REDUCER.replace("cv.in:out", "t5.a:b cv.in:out"), c2=main(9))
    assert (only(NAME, two).grade.value, only(NAME, two).components) == ("danger", ("us", "cm", "c2"))


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_sound(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "judged"


def test_a_feed_that_comes_from_nowhere_is_judged_by_its_reducing_valve() -> None:
    no_main = COLD.replace("cm.outlet rv.in:out", "rv.out")
    assert (found(NAME, fed(cold=no_main)), asked(NAME, fed(cold=no_main)).status) == ((), "judged")
    assert only(NAME, fed(cold=no_main, rv=reducer(9))).grade.value == "danger"
    assert asked(NAME, fed(cold="t1.a:b t2.a:b us.cold".replace("t1.a:b", "t1.b"))).status == "not applicable"


def test_group_beside_another_stores_unreduced_feed() -> None:
    two = fed(
        "t5.branch c2.in:out u2.cold",
        cold="cm.outlet t5.a:b ig.in:out t1.a:b us.cold",
        expansion="",
        ig=GROUP,
        u2=store(),
        c2="check_valve",
    )
    assert only(NAME, two).components == ("u2", "cm")
