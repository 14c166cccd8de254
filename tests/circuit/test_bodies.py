"""Which waters are one body, which are heated, and which are drinking water."""

from __future__ import annotations

from circuitcheck.circuit.bodies import Bodies
from circuitcheck.circuit.joining import Circuit
from tests.checks.asking import way
from tests.made import Part, made


def bodies(*ways: str, **parts: Part) -> Bodies:
    return Bodies(Circuit(made(parts, way(*ways))))


def body(of: Bodies, port: str) -> int:
    part, _, name = port.partition(".")
    return of.of(of.circuit.node(part, name))


def test_water_meets_through_valves_and_check_valves_but_not_through_walls_and_gaps() -> None:
    of = bodies(
        "iv.b cv.in:out hx.primary_in", "hx.secondary_out tu.inlet", "tu.outlet de.inlet",
        iv="isolating_valve", cv="check_valve", hx="heat_exchanger", tu="tundish", de="discharge_end",
    )  # fmt: skip
    assert body(of, "iv.a") == body(of, "hx.primary_out")
    assert body(of, "hx.primary_in") != body(of, "hx.secondary_in")
    assert body(of, "tu.inlet") != body(of, "tu.outlet")


def test_a_store_has_two_bodies_and_a_combination_heat_source_too() -> None:
    of = bodies(us="unvented_store", ch="combination_heat_source", fl="filling_link")
    assert body(of, "us.cold") == body(of, "us.relief") == body(of, "us.secondary_return")
    assert body(of, "us.coil_flow") == body(of, "us.coil_return") != body(of, "us.cold")
    assert body(of, "ch.cold") == body(of, "ch.hot") != body(of, "ch.flow")
    assert body(of, "fl.supply") != body(of, "fl.system")


def test_drinking_water() -> None:
    of = bodies(
        "cm.outlet us.cold", "us.hot ot.hot", "f1.feed vs.cold",
        cm="cold_main", us="unvented_store", ot="outlet", vs="vented_store",
        f1=("feed_cistern", {"serves": "hot_water"}), f2=("feed_cistern", {"serves": "heating"}),
        f3="feed_cistern",
    )  # fmt: skip
    for port in ("us.cold", "ot.cold", "vs.hot", "f1.feed"):
        assert body(of, port) in of.drinking
    for port in ("f2.feed", "f3.feed", "us.coil_flow", "vs.coil_flow"):
        assert body(of, port) not in of.drinking


def heated(of: Bodies) -> list[tuple[str, bool]]:
    return [(each.part, each.by_exchanger) for each in of.heated]


def test_heated_waters_in_the_order_of_the_drawing() -> None:
    of = bodies(
        "h2.flow h2.return", "h1.flow hx.primary_in:primary_out h1.return",
        "hx.secondary_out rad.flow:return hx.secondary_in",
        h2="heat_source", h1="combination_heat_source", hx="heat_exchanger", rad="radiator",
    )  # fmt: skip
    assert heated(of) == [("h2", False), ("h1", False), ("hx", True)]
    assert of.heated[2].body == body(of, "rad.flow")


def test_an_exchanger_between_two_heat_sources_heats_neither() -> None:
    of = bodies(
        "h1.flow hx.primary_in:primary_out h1.return", "h2.flow hx.secondary_in", "hx.secondary_out h2.return",
        h1="heat_source", h2="heat_source", hx="heat_exchanger",
    )  # fmt: skip
    assert heated(of) == [("h1", False), ("h2", False)]


def test_an_exchanger_no_heat_source_reaches_heats_nothing() -> None:
    of = bodies(
        "r1.flow hx.primary_in:primary_out r1.return", "hx.secondary_out r2.flow:return hx.secondary_in",
        hx="heat_exchanger", r1="radiator", r2="radiator",
    )  # fmt: skip
    assert heated(of) == []


def test_two_exchangers_on_one_far_water_are_each_named() -> None:
    of = bodies(
        "h1.flow x1.primary_in:primary_out x2.primary_in:primary_out h1.return",
        "x1.secondary_out x2.secondary_in", "x2.secondary_out rad.flow:return x1.secondary_in",
        h1="heat_source", x1="heat_exchanger", x2="heat_exchanger", rad="radiator",
    )  # fmt: skip
    assert heated(of)[0] == ("h1", False)
    assert {part for part, by_exchanger in heated(of) if by_exchanger} <= {"x1", "x2"}
    assert len({each.body for each in of.heated}) == 2
