"""When a heat source needs no way round: no run-on, no least flow, end switches that stop it."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import advice, asked, fault, found, only, told
from tests.checks.houses import OPEN_RADIATOR, pumped
from tests.made import Part

NAME = "no-way-round-when-zones-shut"
ZONE = "zone_valve"
NO_RUN_ON: Part = ("heat_source", {"pump_overrun_min": 0, "minimum_flow_lpm": 0})
RING = "hs.flow pu.in:out t1.a:b zv.in:out rad.flow:return t2.a:b hs.return"


class TestExcuse:
    """No run-on, no least flow, and end switches that stop heat and pump."""

    TWO_ZONES = (
        RING,
        "t1.branch z2.in:out r2.flow:return t2.branch",
    )

    def two(self, heat: Part = NO_RUN_ON, design: dict[str, Any] | None = None, **parts: Part) -> Drawing:
        usual: dict[str, Part] = {
            "hs": heat,
            "zv": ZONE,
            "z2": ZONE,
            "rad": OPEN_RADIATOR,
            "r2": OPEN_RADIATOR,
        }
        return pumped(*self.TWO_ZONES, design=design, **{**usual, **parts})  # type: ignore[arg-type]  # no part is called as a parameter is

    def test_excused(self) -> None:
        answer = asked(NAME, self.two())
        assert (answer.findings, answer.status) == ((), "judged")

    def test_thermostatic_heads_are_advice_then(self) -> None:
        assert told(NAME, self.two(r2="radiator")) == [advice("hs", "zv r2")]

    def test_a_single_zone_of_thermostatic_heads_is_advice_too(self) -> None:
        drawing = pumped(RING, hs=NO_RUN_ON, zv=ZONE, rad="radiator")
        assert told(NAME, drawing) == [advice("hs", "rad", "rad")]

    def test_one_head_of_two_zones_with_bypass_is_nothing(self) -> None:
        drawing = pumped(
            RING, "t1.branch bv.in:out t2.branch", hs=NO_RUN_ON, zv=ZONE, rad="radiator", bv="bypass_valve"
        )
        assert told(NAME, drawing) == []

    @pytest.mark.parametrize(
        "data",
        [
            {"pump_overrun_min": 0, "minimum_flow_lpm": 3},
            {"pump_overrun_min": 1, "minimum_flow_lpm": 0},
            {"minimum_flow_lpm": 0},  # five minutes of run-on are taken
            {"pump_overrun_min": None, "minimum_flow_lpm": 3},  # a least flow spoils it, whatever the run-on
            {"pump_overrun_min": 2, "minimum_flow_lpm": None},
        ],
    )  # fmt: skip
    def test_not_excused(self, data: dict[str, Any]) -> None:
        assert told(NAME, self.two(("heat_source", data))) == [fault("hs", "zv z2")]

    def test_not_excused_by_a_programmer_alone(self) -> None:
        drawing = self.two(design={"heat_called_by": "programmer_only"})
        assert told(NAME, drawing) == [fault("hs", "zv z2")]

    def test_not_excused_where_no_motor_valve_has_an_end_switch(self) -> None:
        drawing = pumped("hs.flow pu.in:out rad.flow:return hs.return", hs=NO_RUN_ON, rad="radiator")
        assert told(NAME, drawing) == [fault("hs", "rad", "rad")]

    def test_not_excused_where_there_is_no_loop_at_all(self) -> None:
        drawing = pumped(
            "hs.flow pu.in:out cv.out:in zv.in:out rad.flow:return hs.return",
            hs=NO_RUN_ON, cv="check_valve", zv=ZONE, rad=OPEN_RADIATOR,
        )  # fmt: skip
        assert [each.subject for each in told(NAME, drawing)] == ["hs"]

    @pytest.mark.parametrize(
        ("data", "design", "missing"),
        [
            ({"pump_overrun_min": 0}, {}, ("hs.minimum_flow_lpm",)),
            ({"pump_overrun_min": 0, "minimum_flow_lpm": None}, {}, ("hs.minimum_flow_lpm",)),
            ({"pump_overrun_min": None, "minimum_flow_lpm": 0}, {}, ("hs.pump_overrun_min",)),
            ({"pump_overrun_min": None}, {}, ("hs.pump_overrun_min", "hs.minimum_flow_lpm")),
            ({"pump_overrun_min": 0, "minimum_flow_lpm": 0}, {"heat_called_by": None}, ("design.heat_called_by",)),
        ],
    )  # fmt: skip
    def test_unanswered_naming_what_is_missing(
        self, data: dict[str, Any], design: dict[str, Any], missing: tuple[str, ...]
    ) -> None:
        drawing = self.two(("heat_source", data), design)
        finding = only(NAME, drawing)
        assert (finding.grade.value, finding.components[0], finding.missing) == ("unanswered", "hs", missing)
        assert finding.would_be is not None and finding.would_be.value == "fault"
        assert asked(NAME, drawing).status == "not judged"
        for name in missing:
            assert name in finding.message

    def test_unknown_numbers_do_not_matter_where_there_is_a_way_round(self) -> None:
        drawing = pumped(
            RING, "t1.branch bv.in:out t2.branch",
            hs=("heat_source", {"pump_overrun_min": None}), zv=ZONE, rad="radiator", bv="bypass_valve",
        )  # fmt: skip
        assert asked(NAME, drawing).status == "judged"
        assert found(NAME, drawing) == ()

    def test_the_taken_run_on_is_told(self) -> None:
        assert "hs.pump_overrun_min = 5" in analyse(self.two(("heat_source", {"minimum_flow_lpm": 0}))).taken
