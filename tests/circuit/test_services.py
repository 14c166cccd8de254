"""The service of each pipe: whole plants as they are drawn, and the places where two services meet."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from itertools import chain

import pytest

from circuitcheck.circuit.services import Service, services
from circuitcheck.drawing.value import Drawing, End, Joint
from circuitcheck.parts.kind import Role
from tests.drawing.layouts import LAYOUTS, flat_over_workshop, guest_house, village_hall
from tests.drawing.layouts import terrace_with_separator as terrace
from tests.drawing.making import chained, drawing, part


def of(drawn: Drawing) -> dict[str, Service]:
    """The service by the pipe's two ends, as `part.port-part.port`."""
    return {
        "-".join(f"{joint.part}.{joint.port}" for joint in drawn.pipes[id].joints): service
        for id, service in services(drawn).items()
    }


def carry(drawn: Drawing, service: Service) -> set[str]:
    return {ends for ends, carried in of(drawn).items() if carried is service}


def test_sealed_heating_of_two_zones_with_a_store() -> None:
    drawn = guest_house()
    assert carry(drawn, Service.RETURN) == {
        "st.coil_return-t8.a",
        "hz.return-t8.branch",
        "t8.b-t10.a",
        "h2.return-t10.branch",
        "t10.b-t9.a",
        "bv.out-t9.branch",
        "t9.b-t12.a",
        "t12.branch-fl.system",
        "t12.b-t11.a",
        "t11.branch-dr.connection",
        "t11.b-hs.return",
    }
    assert carry(drawn, Service.HOT) == {
        "st.hot-t18.a",
        "t18.b-ks.hot",
        "t18.branch-bl.hot",
        "bl.mixed-bt.hot",
        "st.relief-tr.inlet",
    }
    assert carry(drawn, Service.DISCHARGE) == {
        "sv.outlet-e1.inlet",
        "tr.outlet-t17.a",
        "xr.outlet-t17.branch",
        "t17.b-tu.inlet",
        "tu.outlet-e2.inlet",
    }
    assert {"cm.outlet-iv.a", "t16.b-st.cold", "t19.branch-bl.cold", "t13.branch-fl.supply"} <= carry(
        drawn, Service.COLD
    )
    assert {"hs.flow-t1.a", "t4.branch-bv.in", "z2.out-t7.a", "t3.branch-ev.connection"} <= carry(
        drawn, Service.FLOW
    )
    assert not carry(drawn, Service.UNKNOWN) | carry(drawn, Service.VENT)


def test_open_vented_heating_and_a_store_under_a_cistern() -> None:
    drawn = village_hall()
    assert carry(drawn, Service.VENT) == {
        "t1.branch-ov.connection",
        "t2.branch-fc.feed",
        "t5.b-sv.connection",
    }
    assert carry(drawn, Service.COLD) == {
        "m1.outlet-fc.supply",
        "m2.outlet-cc.supply",
        "cc.feed-t6.a",
        "t6.b-vs.cold",
        "t6.branch-ba.cold",
    }
    assert carry(drawn, Service.HOT) == {"vs.hot-t5.a", "t5.branch-ba.hot"}
    assert carry(drawn, Service.DISCHARGE) == {"fc.warning-ed.inlet"}
    assert "mv.b-vs.coil_flow" in carry(drawn, Service.FLOW)
    assert "vs.coil_return-t7.a" in carry(drawn, Service.RETURN)


def test_a_combination() -> None:
    drawn = flat_over_workshop()
    assert carry(drawn, Service.COLD) == {"cm.outlet-t1.a", "t1.b-cs.cold", "t1.branch-si.cold"}
    assert carry(drawn, Service.HOT) == {"cs.hot-si.hot"}
    assert carry(drawn, Service.DISCHARGE) == {"cs.relief-ed.inlet"}
    assert carry(drawn, Service.RETURN) == {"ra.return-t3.a", "rb.return-t3.branch", "t3.b-cs.return"}


def test_a_separator_keeps_flow_and_return_apart() -> None:
    drawn = terrace()
    assert carry(drawn, Service.RETURN) == {
        "se.source_return-t3.a",
        "t3.b-hs.return",
        "t3.branch-ev.connection",
        "hz.return-t5.a",
        "hx.primary_out-t5.branch",
        "t5.b-t2.a",
        "h2.return-t2.branch",
        "t2.b-se.load_return",
    }
    assert carry(drawn, Service.COLD) == {"cm.outlet-hx.secondary_in"}
    assert carry(drawn, Service.HOT) == {"hx.secondary_out-sh.hot"}


@pytest.mark.parametrize("layout", LAYOUTS.values(), ids=list(LAYOUTS))
def test_neither_the_direction_nor_the_order_of_pipes_matters(layout: Callable[[], Drawing]) -> None:
    drawn = layout()
    turned = {
        pipe.id: replace(pipe, ends=(pipe.ends[1], pipe.ends[0]))
        for pipe in reversed(tuple(drawn.pipes.values()))
    }
    assert services(replace(drawn, pipes=turned)) == services(drawn)


def with_link(between: str) -> Drawing:
    """A pump, valves and two radiators, with a link from flow to return close by the heat source."""
    parts = [
        part("hs", "heat_source"),
        part("pu", "pump"),
        part("iv", "isolating_valve"),
        part("t1", "tee"),
        part("t2", "tee"),
        part("t3", "tee"),
        part("t4", "tee"),
        part("lv", "balancing_valve"),
        part("ra", "radiator"),
        part("rb", "radiator"),
        part("va", "isolating_valve"),
        part("vb", "isolating_valve"),
    ]
    plain = """
        hs.flow pu.in
        pu.out iv.a
        iv.b t1.a
        t1.b va.a
        va.b t2.a
        t2.b ra.flow
        t2.branch rb.flow
        ra.return t3.a
        rb.return t3.branch
        t3.b vb.a
        vb.b t4.a
        t4.b hs.return
        """
    return drawing(parts, chained(plain + between))


@pytest.mark.parametrize(
    "between",
    ["t1.branch t4.branch", "t1.branch lv.a\n lv.b t4.branch", "lv.a t4.branch\n t1.branch lv.b"],
)
def test_a_plain_link_from_flow_to_return_changes_neither(between: str) -> None:
    found = of(with_link(between))
    links = {ends for ends in found if "t1.branch" in ends or "t4.branch" in ends}
    flow = {
        "hs.flow-pu.in",
        "pu.out-iv.a",
        "iv.b-t1.a",
        "t1.b-va.a",
        "va.b-t2.a",
        "t2.b-ra.flow",
        "t2.branch-rb.flow",
    }
    for ends, service in found.items():
        if ends not in links:
            assert service is (Service.FLOW if ends in flow else Service.RETURN), ends
    if "lv" in between:
        assert [service for ends, service in found.items() if "t1.branch" in ends] == [Service.FLOW]
        assert [service for ends, service in found.items() if "t4.branch" in ends] == [Service.RETURN]


def test_a_tee_may_be_met_by_any_of_its_ports() -> None:
    drawn = with_link("t1.branch lv.a\n lv.b t4.branch")
    other = {"a": "branch", "branch": "a"}

    def swapped(end: End) -> End:
        if isinstance(end, Joint) and end.part in ("t1", "t4"):
            return Joint(end.part, other.get(end.port, end.port))
        return end

    pipes = {
        pipe.id: replace(pipe, ends=(swapped(pipe.ends[0]), swapped(pipe.ends[1])))
        for pipe in drawn.pipes.values()
    }
    assert list(services(replace(drawn, pipes=pipes)).values()) == list(services(drawn).values())


def test_a_radiator_joined_the_wrong_way_round_does_not_turn_the_water() -> None:
    drawn = drawing(
        [part("hs", "heat_source"), part("pu", "pump"), part("ra", "radiator")],
        chained("hs.flow pu.in\n pu.out ra.return\n ra.flow hs.return"),
    )
    assert list(services(drawn).values()) == [Service.FLOW, Service.FLOW, Service.RETURN]


def test_emitters_alone_already_tell() -> None:
    drawn = drawing(
        [part("ra", "radiator"), part("zv", "zone_valve"), part("t", "tee"), part("cv", "check_valve")],
        chained("zv.out ra.flow\n ra.return t.a\n t.b cv.in"),
    )
    assert list(services(drawn).values()) == [Service.FLOW, Service.RETURN, Service.RETURN]


def test_what_nothing_tells_is_unknown() -> None:
    drawn = drawing([part("a", "pump"), part("b", "zone_valve")], chained("a.out b.in"))
    assert list(services(drawn).values()) == [Service.UNKNOWN]


def test_a_blending_valve_before_a_heated_floor_is_no_tap() -> None:
    drawn = drawing(
        [
            part("hs", "heat_source"),
            part("bl", "blending_valve"),
            part("pu", "pump"),
            part("hz", "heating_zone"),
            part("t", "tee"),
        ],
        chained(
            "hs.flow bl.hot\n bl.mixed pu.in\n pu.out hz.flow\n hz.return t.a\n t.branch bl.cold\n t.b hs.return"
        ),
    )
    assert list(services(drawn).values()) == [Service.FLOW] * 3 + [Service.RETURN] * 3


def test_a_blending_valve_by_a_heated_floor_tells_by_itself() -> None:
    """With no heat source drawn yet, its ports are taken for those of heating."""
    drawn = drawing(
        [
            part("zv", "zone_valve"),
            part("bl", "blending_valve"),
            part("hz", "heating_zone"),
            part("t", "tee"),
        ],
        chained("zv.out bl.hot\n bl.mixed hz.flow\n hz.return t.a\n t.branch bl.cold"),
    )
    assert list(services(drawn).values()) == [Service.FLOW] * 2 + [Service.RETURN] * 2


def test_the_pipe_of_an_open_vent_goes_on_through_a_valve_as_far_as_a_tee() -> None:
    drawn = drawing(
        [part("hs", "heat_source"), part("t", "tee"), part("iv", "isolating_valve"), part("ov", "open_vent")],
        chained("hs.flow t.a\n t.branch iv.a\n iv.b ov.connection"),
    )
    assert list(services(drawn).values()) == [Service.FLOW, Service.VENT, Service.VENT]


def test_heating_behind_a_plate_has_flow_and_return_of_its_own() -> None:
    drawn = drawing(
        [
            part("hs", "heat_source"),
            part("hx", "heat_exchanger"),
            part("pu", "pump"),
            part("hz", "heating_zone"),
        ],
        chained(
            "hs.flow hx.primary_in\n hx.primary_out hs.return\n hx.secondary_out pu.in\n"
            "pu.out hz.flow\n hz.return hx.secondary_in"
        ),
    )
    flow, back = Service.FLOW, Service.RETURN
    assert list(services(drawn).values()) == [flow, back, flow, flow, back]


def test_three_services_in_one_stretch_each_keep_what_is_nearest() -> None:
    drawn = drawing(
        [
            part("hs", "heat_source"),
            part("cm", "cold_main"),
            part("iv", "isolating_valve"),
            part("jv", "isolating_valve"),
            part("t", "tee"),
        ],
        chained("hs.flow iv.a\n iv.b t.a\n hs.return t.b\n t.branch jv.a\n jv.b cm.outlet"),
    )
    found = of(drawn)
    assert found["hs.flow-iv.a"] is Service.FLOW
    assert found["hs.return-t.b"] is Service.RETURN
    assert found["jv.b-cm.outlet"] is Service.COLD


def test_every_part_that_gives_water_has_named_ports() -> None:
    """Heat sources and stores are known by what their ports are called; a new one must be, too."""
    gives = {Role.HEATS, Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN}
    for layout in LAYOUTS.values():
        drawn = layout()
        known = services(drawn)
        for one in drawn.components.values():
            if gives & {device.role for device in one.kind.devices(one.data)}:
                assert all(known[id] is not Service.UNKNOWN for id in drawn.pipes_of(one.id))
    assert set(chain.from_iterable(services(layout()).values() for layout in LAYOUTS.values())) == set(
        Service
    ) - {Service.UNKNOWN}
