"""No check of the mains-fed store says anything of one that is as it should be."""

from __future__ import annotations

import re

import pytest

from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked
from tests.checks.houses import sealed, vented
from tests.checks.store.fed import SOUND, fed, store
from tests.checks.test_lessons import labelled

STORE_CHECKS = [name for name, check in checks().items() if check.topic == "store"]


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_silent(drawing: Drawing) -> None:
    said = {name: [each.message for each in asked(name, drawing).findings] for name in STORE_CHECKS}
    assert {name: messages for name, messages in said.items() if messages} == {}


@pytest.mark.parametrize("drawing", [sealed(), vented()], ids=["sealed", "vented"])
@pytest.mark.parametrize("name", STORE_CHECKS)
def test_not_applicable_without_a_store(name: str, drawing: Drawing) -> None:
    assert asked(name, drawing).status == "not applicable"


SPOILED = {
    "everything left out": fed(cold="cm.outlet us.cold", vessel="", expansion="", temperature="", controls={}),
    "nothing known": fed(
        us="unvented_store", rv="pressure_reducing_valve", ev="expansion_vessel", er="expansion_relief_valve",
        tr=("temperature_relief_valve", {"set_temperature_c": None}), sv=("safety_valve", {"set_pressure_bar": None}),
        hs=("heat_source", {"heat": None}), zv=("zone_valve", {"rest": None}), design={},
    ),
    "everything wrong": fed(
        vessel="t1.branch i1.a:b ev.connection",
        expansion="t2.branch i2.a:b er.inlet",
        temperature="us.relief i3.a:b tr.inlet",
        rv=("pressure_reducing_valve", {"set_pressure_bar": 9}),
        er=("expansion_relief_valve", {"set_pressure_bar": 10}),
        tr=("temperature_relief_valve", {"set_pressure_bar": 10, "set_temperature_c": 99}),
        us=store(energy_cut_out="pu", immersion_cut_out=False, coil_maximum_pressure_bar=1),
        hs=("heat_source", {"heat": "uncontrolled"}),
        ev=("expansion_vessel", {"volume_l": 1, "precharge_bar": 1}),
        i1="isolating_valve", i2="isolating_valve", i3="isolating_valve", controls={},
    ),
    "one-way parts": fed(
        vessel="t1.branch c1.in:out ev.connection",
        expansion="t2.branch c2.in:out er.inlet",
        temperature="us.relief c3.in:out tr.inlet",
        c1="check_valve", c2="check_valve", c3="check_valve",
    ),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SPOILED.values(), ids=SPOILED.keys())
def test_messages_hold_labels_and_no_ids_or_gaps(drawing: Drawing) -> None:
    labels = labelled(drawing)
    findings = [finding for name in STORE_CHECKS for finding in asked(name, labels).findings]
    assert findings
    for finding in findings:
        words = [word for word in re.findall(r"[\w.:]+", finding.message) if "." not in word.rstrip(".")]
        assert not {word.rstrip(".:") for word in words} & set(drawing.components), finding.message
        assert not re.search(r"[{}]", finding.message.replace("{bedroom}", "")), finding.message
        assert finding.message[0].isupper() and finding.message.endswith(".")
        assert "None" not in finding.message
        assert {*finding.components} <= {*drawing.components}
        assert len(set(finding.components)) == len(finding.components)


def test_a_crash_is_none_of_the_answers() -> None:
    for drawing in (*SPOILED.values(), *SOUND.values()):
        assert not any(asked(name, drawing).crashed for name in STORE_CHECKS)
