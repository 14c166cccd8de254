"""A filter on pumped heating water."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed, vented

NAME = "filter-absent"
PUMPED = "hs.flow t1.a:b rad.flow:return pu.in:out {} t2.a:b hs.return"


def pumped(middle: str = "", **parts: Any) -> Drawing:
    return sealed(ring=PUMPED.format(middle), pu="pump", **parts)


@pytest.mark.parametrize(
    "drawing",
    [
        pumped(),
        pumped("st.in:out", st="strainer"),
        vented(ring=PUMPED.format(""), pu="pump"),
        sealed(hs=("heat_source", {"built_in": ["pump"]})),
    ],
    ids=["none", "a strainer is none", "open-vented", "pump built in"],
)
def test_advice(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade, finding.components) == ("advice", ("hs",))


@pytest.mark.parametrize(
    ("drawing", "status"),
    [
        (pumped("ds.a:b", ds="dirt_separator"), "judged"),
        (pumped("ds.b:a", ds=("dirt_separator", {"isolating_valves": False})), "judged"),
        (sealed(), "not applicable"),
    ],
    ids=["a dirt separator", "turned round", "gravity alone"],
)
def test_silent(drawing: Drawing, status: str) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), status)


def test_a_store_heated_directly_holds_no_heating_water() -> None:
    drawing = sealed(
        "cm.outlet us.cold",
        ring="hs.flow t1.a:b us.hot:secondary_return t2.a:b pu.in:out hs.return",
        cm="cold_main",
        us="unvented_store",
        pu="pump",
    )
    assert asked(NAME, drawing).status == "not applicable"


def test_water_behind_an_exchanger_needs_its_own() -> None:
    drawing = sealed(
        "hx.secondary_out p2.in:out r2.flow:return hx.secondary_in",
        ring="hs.flow t1.a:b hx.primary_in:primary_out ds.a:b t2.a:b pu.in:out hs.return",
        hx="heat_exchanger",
        r2="radiator",
        ds="dirt_separator",
        pu="pump",
        p2="pump",
    )
    assert [finding.components for finding in found(NAME, drawing)] == [("hx",)]
