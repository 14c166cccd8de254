"""The findings of the supply checks are whole sentences in names, not ids."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import found
from tests.checks.supply.plumbing import FED, blended, plumbed, store
from tests.made import Part

LINK: Part = ("filling_link", {"left_connected": True, "double_check": False})
RING = "hs.flow t8.a:b rad.flow:return t9.a:b hs.return"

DRAWINGS = [
    plumbed(FED, "us.hot t2.a:b bath.hot", "t2.branch sink.hot", us=store(thermostat_c=85)),
    plumbed(FED, "us.hot b1.hot:mixed bath.hot", "t1.branch b1.cold", b1=blended(60), us=store(thermostat_c=50)),
    plumbed(FED, "us.hot b1.hot:mixed bath.hot", "t1.branch b1.cold", us=store(thermostat_c=None)),
    plumbed("cm.outlet t1.a:b pr.in:out c1.in:out t2.a:b t3.a:b us.cold", "us.hot shower.hot", "t3.branch er.inlet",
        "t1.branch shower.cold", "t2.branch sink.cold", cm=("cold_main", {"standing_pressure_bar": 9})),
    plumbed("cm.outlet t1.a:b pr.in:out t3.a:b us.cold", "us.hot shower.hot", "t3.branch er.inlet",
        "t1.branch shower.cold"),
    plumbed(FED, "us.hot t5.a:b p1.in:out us.secondary_return", "t5.branch sink.hot",
        pipe_data={f"p{n}": {"size_mm": 22, "length_m": 30, "insulated": False} for n in range(1, 9)}),
    plumbed("us.hot sink.hot", pipe_data={"p1": {"size_mm": 22, "length_m": 30, "insulated": False}}),
    plumbed(RING, "cm.outlet t1.a:b sink.cold", "t1.branch c1.in:out t9.branch"),
    plumbed(RING, "cm.outlet t1.a:b sink.cold", "t1.branch c1.in:out c2.in:out t9.branch"),
    plumbed(RING, "cm.outlet fl.supply:system t9.branch", fl=LINK),
    plumbed(RING, "cm.outlet fl.supply:system t9.branch", fl=("filling_link", {"left_connected": None,
        "double_check": None})),
    plumbed("cm.outlet t1.a:b sink.cold", "t1.branch de.inlet", "fc.feed basin.cold"),
    plumbed("cm.outlet t1.a:b us.cold", "t1.branch sink.cold", cm=("cold_main", {"flow_lpm": 1, "height_m": 0,
        "running_pressure_bar": 1.2}), sink=("outlet", {"fitting": "sink", "height_m": 9})),
]  # fmt: skip

LABEL = "Back {bedroom} <b>rail</b> %s"


def labelled(drawing: Drawing) -> Drawing:
    components = {
        id: replace(part, label=f"{LABEL} no. {number}")
        for number, (id, part) in enumerate(drawing.components.items(), start=1)
    }
    return replace(drawing, components=components)


@pytest.mark.parametrize("drawing", DRAWINGS)
def test_messages(drawing: Drawing) -> None:
    names = [name for name, check in checks().items() if check.topic == "supply"]
    findings = [finding for name in names for finding in found(name, labelled(drawing))]
    assert findings
    for finding in findings:
        words = [word for word in re.findall(r"[\w.:]+", finding.message) if "." not in word.rstrip(".")]
        assert not {word.rstrip(".") for word in words} & set(drawing.components), finding.message
        assert not re.search(r"[{}]", finding.message.replace("{bedroom}", "")), finding.message
        assert finding.message[0].isupper() and finding.message.endswith(".")
        assert "None" not in finding.message
        assert set(finding.components) <= set(drawing.components)
        assert set(finding.pipes) <= set(drawing.pipes)


def test_every_check_of_the_topic_speaks() -> None:
    names = {name for name, check in checks().items() if check.topic == "supply"}
    assert names == {
        finding.check for drawing in DRAWINGS for name in names for finding in found(name, drawing)
    }
