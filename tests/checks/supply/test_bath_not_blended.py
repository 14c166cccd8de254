"""A bath's hot water is blended to 48 °C or less by every way."""

from __future__ import annotations

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.supply.bath_not_blended import propose
from circuitcheck.drawing.value import Drawing
from circuitcheck.parts.kind import Data
from tests.checks.asking import asked, found, only
from tests.checks.supply.plumbing import FED, blended, new_open_ends, plumbed, store

NAME = "bath-not-blended"
NEW = {"dwelling": "new"}
BLEND = (FED, "us.hot b1.hot:mixed bath.hot", "t1.branch b1.cold")


def grades(drawing: Drawing) -> list[str]:
    return [each.grade.value for each in found(NAME, drawing)]


@pytest.mark.parametrize(
    ("design", "grade"), [({}, "advice"), ({"dwelling": "existing"}, "advice"), (NEW, "danger")]
)
def test_no_blending(design: Data, grade: str) -> None:
    finding = only(NAME, plumbed(FED, "us.hot bath.hot", design=design))
    assert (finding.grade.value, finding.components) == (grade, ("bath", "us"))
    assert finding.message.endswith("no blending valve stands between.")


@pytest.mark.parametrize(("setting", "fires"), [(44, False), (48, False), (48.1, True), (60, True)])
def test_the_setting_of_the_valve(setting: float, fires: bool) -> None:
    findings = found(NAME, plumbed(*BLEND, b1=blended(setting), design=NEW))
    assert [each.components for each in findings] == [("bath", "b1", "us")] * fires


@pytest.mark.parametrize(("thermostat", "fires"), [(48, False), (48.5, True), (60, True)])
def test_a_store_at_48_needs_none(thermostat: float, fires: bool) -> None:
    drawing = plumbed(FED, "us.hot bath.hot", us=store(thermostat_c=thermostat))
    assert bool(found(NAME, drawing)) is fires
    assert asked(NAME, drawing).status == "judged"


@pytest.mark.parametrize(
    "ways",
    [
        ("cm.outlet ch.cold", "ch.hot bath.hot"),
        ("fc.feed vs.cold", "vs.hot v1.a:b bath.hot"),
        (FED, "us.secondary_return bath.hot"),
        ("cm.outlet hx.secondary_in:secondary_out bath.hot", "hs.flow hx.primary_in:primary_out hs.return"),
        (*BLEND[::2], "us.hot t2.a:b b1.hot:mixed t3.a:b bath.hot", "t2.branch v1.a:b t3.branch"),  # a way round
        (FED, "us.hot b1.cold:mixed bath.hot", "t1.branch b1.hot"),  # hot and cold of the valve exchanged
        (FED, "us.hot b1.mixed:hot bath.hot", "us.relief t2.a:b bath2.hot"),
    ],
    ids=["as drawn", "vented", "secondary", "plate", "round the valve", "exchanged", "backwards"],
)  # fmt: skip
def test_other_ways(ways: tuple[str, ...]) -> None:
    parts = {"b1": blended(44), "bath2": ("outlet", {"fitting": "bath"})}
    used = {id: part for id, part in parts.items() if any(f"{id}." in way for way in ways)}
    assert grades(plumbed(*ways, parts=used)) == ["advice"]


@pytest.mark.parametrize(
    "ways",
    [
        (FED, "us.hot b1.hot:mixed b2.hot:mixed bath.hot", "t1.branch t2.a:b b1.cold", "t2.branch b2.cold"),
        (FED, "us.hot c2.out:in bath.hot"),  # nothing comes through
        ("cm.outlet bath.hot", "us.hot sink.hot"),  # cold
        (FED, "us.hot sink.hot", "t1.branch bath.cold"),
    ],
    ids=["two valves", "against a check valve", "cold on hot", "cold only"],
)
def test_not_hot(ways: tuple[str, ...]) -> None:
    parts = {"b1": blended(70), "b2": blended(45)} if "b1." in " ".join(ways) else {}
    assert grades(plumbed(*ways, parts=parts)) == []


def test_a_first_valve_is_enough_for_a_second_set_too_high() -> None:
    ways = (FED, "us.hot b1.hot:mixed b2.hot:mixed bath.hot", "t1.branch t2.a:b b1.cold", "t2.branch b2.cold")
    assert grades(plumbed(*ways, b1=blended(45), b2=blended(60))) == []


def test_a_hotter_store_before_a_cool_one() -> None:
    ways = ("cm.outlet us.cold", "us.hot u2.cold:hot bath.hot")
    assert grades(plumbed(*ways, us=store(thermostat_c=70), u2=store(thermostat_c=45))) == ["advice"]
    assert grades(plumbed(*ways, us=store(thermostat_c=40), u2=store(thermostat_c=45))) == []


def test_uncontrolled_heat_makes_a_cool_store_hot() -> None:
    ways = (FED, "us.hot bath.hot", "hs.flow us.coil_flow:coil_return hs.return")
    cool = store(thermostat_c=45)
    assert grades(plumbed(*ways, us=cool, hs=("heat_source", {"heat": "uncontrolled"}))) == ["advice"]
    assert grades(plumbed(*ways, us=cool)) == []
    unknown = only(NAME, plumbed(*ways, us=cool, hs=("heat_source", {"heat": None})))
    assert unknown.missing == ("hs.heat",)


def test_other_fittings_and_no_hot() -> None:
    assert asked(NAME, plumbed(FED, "us.hot shower.hot")).status == "not applicable"
    assert asked(NAME, plumbed("cm.outlet bath.cold")).status == "not applicable"


def test_unanswered_names_all_that_is_missing() -> None:
    unknown = only(
        NAME, plumbed(*BLEND, b1=blended(None), us=store(thermostat_c=None), design={"dwelling": None})
    )
    assert unknown.missing == ("us.thermostat_c", "b1.set_temperature_c", "design.dwelling")
    assert unknown.would_be is not None and unknown.would_be.value == "danger"
    fitting = only(NAME, plumbed(FED, "us.hot bath.hot", bath="outlet"))
    assert fitting.missing == ("bath.fitting",)
    assert fitting.would_be is not None and fitting.would_be.value == "advice"
    weight = only(NAME, plumbed(FED, "us.hot bath.hot", design={"dwelling": None}))
    assert weight.missing == ("design.dwelling",)
    assert weight.message.endswith("How heavy that is rests on what is not known: design.dwelling.")


def test_known_numbers_settle_it() -> None:
    assert grades(plumbed(*BLEND, b1=blended(44), us=store(thermostat_c=None))) == []
    assert grades(plumbed(*BLEND, b1=blended(None), us=store(thermostat_c=45))) == []
    assert grades(plumbed(FED, "us.hot bath.hot", bath="outlet", us=store(thermostat_c=45))) == []


def test_not_a_european_rule() -> None:
    answer = asked(NAME, plumbed(FED, "us.hot bath.hot", design={"rule_book": "european_standards"}))
    assert (answer.findings, answer.status) == ((), "not judged")
    assert "european_standards" in answer.why


def test_a_valve_that_is_there_is_set_lower() -> None:
    drawing = plumbed(*BLEND, b1=blended(60), design=NEW)
    after = next(propose(Case(drawing), only(NAME, drawing))).drawing
    assert after.components["b1"].data["set_temperature_c"] == 44
    assert after.components.keys() == drawing.components.keys()


@pytest.mark.parametrize(
    "drawing",
    [
        plumbed(FED, "us.hot bath.hot", "t1.branch k1.connection", design=NEW),
        plumbed("cm.outlet ig.in:out us.cold", "us.hot bath.hot", design=NEW),
        plumbed(*BLEND, b1=blended(60), design=NEW),
        plumbed("cm.outlet ch.cold", "ch.hot bath.hot", design=NEW),
        plumbed("fc.feed vs.cold", "vs.hot bath.hot", design=NEW),
    ],
    ids=["reducing valve", "inlet group", "set lower", "as drawn", "cistern"],
)
def test_the_first_cure_cures(drawing: Drawing) -> None:
    proposal = next(propose(Case(drawing), only(NAME, drawing)))
    assert found(NAME, proposal.drawing) == ()
    assert found("balanced-cold-unreduced", proposal.drawing) == ()
    assert found("cold-drawn-after-check", proposal.drawing) == ()
    assert new_open_ends(drawing, proposal.drawing) == set()
