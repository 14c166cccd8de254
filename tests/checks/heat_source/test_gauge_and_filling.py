"""The gauge and the filling link of sealed water: absent, left on, without its double check."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed, vented
from tests.made import Part

GAUGE, LINK = "gauge-absent", "filling-link-absent"
LEFT, DOUBLE = "filling-link-left-connected", "filling-link-without-double-check"
RING3 = "hs.flow t1.a:b rad.flow:return t3.a:b t2.a:b hs.return"
BEHIND = ("hx.secondary_out r2.flow:return hx.secondary_in",)


def teed(*ways: str, **parts: Any) -> Drawing:
    """A sealed house with a third tee in its return."""
    return sealed(*ways, ring=RING3, t3="tee", **parts)


def linked(*, before: str = "", **data: Any) -> Drawing:
    """A sealed house with a filling link of those data."""
    return teed(
        f"cm.outlet fl.supply:system {before} t3.branch",
        cm="cold_main",
        fl=("filling_link", data),
        cv="check_valve",
    )


SOUND: dict[str, tuple[str, Drawing]] = {
    "a gauge": (GAUGE, teed("t3.branch pg.connection", pg="pressure_gauge")),
    "a gauge behind a valve": (
        GAUGE,
        teed("t3.branch iv.a:b pg.connection", pg="pressure_gauge", iv="isolating_valve"),
    ),
    "a gauge built in": (GAUGE, sealed(hs=("heat_source", {"built_in": ["gauge"]}))),
    "a link": (LINK, linked()),
    "a link behind a check valve that lets water in": (LINK, linked(before="cv.in:out")),
    "a link built in": (LINK, sealed(hs=("heat_source", {"built_in": ["filling_link"]}))),
    "a cistern that fills through a check valve": (
        LINK,
        teed("fc.feed cv.in:out t3.branch", fc="feed_cistern", cv="check_valve"),
    ),
    "taken off": (LEFT, linked(left_connected=False)),
    "taken off by default": (LEFT, linked()),
    "with its double check": (DOUBLE, linked(double_check=True)),
    "left on, with its double check": (DOUBLE, linked(left_connected=True)),
    "taken off, without its double check": (LEFT, linked(double_check=False)),
}


@pytest.mark.parametrize(("check", "drawing"), SOUND.values(), ids=SOUND)
def test_sound(check: str, drawing: Drawing) -> None:
    answer = asked(check, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


FIRES: dict[str, tuple[str, Drawing, str, str]] = {
    "no gauge": (GAUGE, sealed(), "hs", "fault"),
    "a gauge beyond a check valve": (
        GAUGE,
        teed("t3.branch cv.in:out pg.connection", pg="pressure_gauge", cv="check_valve"),
        "hs",
        "fault",
    ),
    "a gauge on the main": (
        GAUGE,
        sealed(
            "cm.outlet t4.a:b ol.cold",
            "t4.branch pg.connection",
            t4="tee",
            cm="cold_main",
            ol="outlet",
            pg="pressure_gauge",
        ),
        "hs",
        "fault",
    ),
    "no link": (LINK, sealed(), "hs", "advice"),
    "a link whose water cannot come in": (LINK, linked(before="cv.out:in"), "hs", "advice"),
    "a link joined by its supply": (
        LINK,
        teed("t3.branch fl.supply", fl="filling_link"),
        "hs",
        "advice",
    ),
    "left on": (LEFT, linked(left_connected=True), "fl", "fault"),
    "left on, without its double check": (
        LEFT,
        linked(left_connected=True, double_check=False),
        "fl",
        "fault",
    ),
    "no double check": (DOUBLE, linked(double_check=False), "fl", "danger"),
    "no double check behind a check valve": (
        DOUBLE,
        linked(before="cv.in:out", double_check=False),
        "fl",
        "danger",
    ),
}


@pytest.mark.parametrize(("check", "drawing", "subject", "grade"), FIRES.values(), ids=FIRES)
def test_fires(check: str, drawing: Drawing, subject: str, grade: str) -> None:
    finding = only(check, drawing)
    assert (finding.grade, finding.components) == (grade, (subject,))


@pytest.mark.parametrize("check", [GAUGE, LINK, LEFT, DOUBLE])
def test_silent_on_open_vented_water(check: str) -> None:
    link: Part = ("filling_link", {"left_connected": True, "double_check": False})
    drawing = vented("cm.outlet fl.supply:system t3.branch", ring=RING3, t3="tee", cm="cold_main", fl=link)
    assert asked(check, drawing).status == "not applicable"


@pytest.mark.parametrize("check", [GAUGE, LINK])
def test_a_store_heated_directly_is_filled_by_the_main(check: str) -> None:
    drawing = sealed(
        "cm.outlet us.cold",
        ring="hs.flow t1.a:b us.hot:secondary_return t2.a:b hs.return",
        cm="cold_main",
        us="unvented_store",
    )
    assert asked(check, drawing).status == "not applicable"


@pytest.mark.parametrize("check", [LEFT, DOUBLE])
def test_without_a_link_there_is_nothing_to_judge(check: str) -> None:
    built_in: Part = ("heat_source", {"built_in": ["filling_link"]})
    assert asked(check, sealed()).status == asked(check, sealed(hs=built_in)).status == "not applicable"


@pytest.mark.parametrize(
    ("check", "field", "would_be"), [(LEFT, "left_connected", "fault"), (DOUBLE, "double_check", "danger")]
)
def test_not_known(check: str, field: str, would_be: str) -> None:
    unknown: dict[str, Any] = {field: None}
    finding = only(check, linked(**unknown))
    assert (finding.grade, finding.would_be, finding.missing) == ("unanswered", would_be, (f"fl.{field}",))


@pytest.mark.parametrize("check", [GAUGE, LINK])
def test_sealed_water_behind_an_exchanger_needs_its_own(check: str) -> None:
    ring = "hs.flow t1.a:b hx.primary_in:primary_out t3.a:b t2.a:b hs.return"
    drawing = sealed(
        *BEHIND,
        "t3.branch t5.a",
        "t5.b pg.connection",
        "t5.branch fl.system",
        ring=ring,
        t3="tee",
        t5="tee",
        pg="pressure_gauge",
        fl="filling_link",
        hx="heat_exchanger",
        r2="radiator",
    )
    assert [finding.components for finding in found(check, drawing)] == [("hx",)]
