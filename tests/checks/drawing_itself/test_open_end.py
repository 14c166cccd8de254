"""Every port of every kind: which must be joined, and the exceptions that the format states."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from circuitcheck.parts.catalogue import component_kinds
from tests.checks.asking import asked, found, only
from tests.made import Part, made

NAME = "open-end"


def with_joined(kind: str, ports: tuple[str, ...], data: Mapping[str, Any] | None = None) -> Drawing:
    """One part with a capped pipe on each of these ports."""
    parts: dict[str, Part] = {"xx": (kind, data or {}), **{f"k{port}": "cap" for port in ports}}
    return made(parts, "\n".join(f"xx.{port} - k{port}.connection" for port in ports))


def all_ports(kind: str) -> tuple[str, ...]:
    return tuple(port.name for port in component_kinds()[kind].ports)


MAY_STAY_FREE = {
    ("feed_cistern", "vent_over"),
    ("feed_cistern", "warning"),
    ("unvented_store", "secondary_return"),
    ("unvented_store", "relief_outlet"),  # none without built-in relief valves
    ("heat_source", "relief"),  # none without a built-in safety valve
    ("combination_heat_source", "relief"),
    ("outlet", "hot"),  # all but one
    ("outlet", "cold"),
}
ABSENT_DISCHARGE = {
    ("safety_valve", "outlet"),
    ("temperature_relief_valve", "outlet"),
    ("expansion_relief_valve", "outlet"),
    ("inlet_group", "relief"),
}
PORTS = [(kind.name, port.name) for kind in component_kinds().values() for port in kind.ports]


@pytest.mark.parametrize(("kind", "port"), PORTS, ids=[f"{kind}.{port}" for kind, port in PORTS])
def test_one_port_free_and_all_others_joined(kind: str, port: str) -> None:
    joined = tuple(name for name in all_ports(kind) if name != port)
    expected = 0 if (kind, port) in MAY_STAY_FREE | ABSENT_DISCHARGE else 1
    findings = found(NAME, with_joined(kind, joined))
    assert [finding.components for finding in findings] == [("xx",)] * expected
    for finding in findings:
        assert finding.grade.value == "fault"
        assert len(all_ports(kind)) == 1 or port.replace("_", " ") in finding.message


@pytest.mark.parametrize("kind", component_kinds())
def test_all_ports_joined(kind: str) -> None:
    answer = asked(NAME, with_joined(kind, all_ports(kind)))
    assert (answer.findings, answer.status) == ((), "judged")


EXCEPTIONS: dict[str, tuple[str, tuple[str, ...], Mapping[str, Any], int]] = {
    # kind, ports joined, data, how many open ends are left
    "exchanger, primary only": ("heat_exchanger", ("primary_in", "primary_out"), {}, 0),
    "exchanger, secondary only": ("heat_exchanger", ("secondary_in", "secondary_out"), {}, 0),
    "exchanger, half a side": ("heat_exchanger", ("primary_in", "primary_out", "secondary_in"), {}, 1),
    "exchanger, half of each side": ("heat_exchanger", ("primary_in", "secondary_in"), {}, 2),
    "store whose coil nothing heats": ("unvented_store", ("cold", "hot", "relief"), {}, 0),
    "store with half its coil joined": ("unvented_store", ("cold", "hot", "relief", "coil_flow"), {}, 1),
    "vented store whose coil nothing heats": ("vented_store", ("cold", "hot"), {}, 0),
    "vented store with half its coil joined": ("vented_store", ("cold", "hot", "coil_return"), {}, 1),
    "store without a relief valve": ("unvented_store", ("cold", "hot"), {}, 1),
    "store with built-in valves": (
        "unvented_store",
        ("cold", "hot", "relief_outlet"),
        {"built_in": ["temperature_relief", "expansion_relief"]},
        0,
    ),
    "store with built-in valves and no discharge, which another check speaks of": (
        "unvented_store",
        ("cold", "hot"),
        {"built_in": ["temperature_relief", "expansion_relief"]},
        0,
    ),
    "store with a built-in check valve only": (
        "unvented_store",
        ("cold", "hot"),
        {"built_in": ["check_valve"]},
        1,
    ),
    "heat source with a built-in safety valve, which another check speaks of": (
        "heat_source",
        ("flow", "return"),
        {"built_in": ["safety_valve"]},
        0,
    ),
    "combination heat source, heating side only": ("combination_heat_source", ("flow", "return"), {}, 2),
    "outlet, hot only": ("outlet", ("hot",), {}, 0),
    "outlet, cold only": ("outlet", ("cold",), {}, 0),
    "outlet, neither": ("outlet", (), {}, 1),
    "cistern, feed and supply only": ("feed_cistern", ("supply", "feed"), {}, 0),
    "cistern, feed only": ("feed_cistern", ("feed",), {}, 1),
    "tee, two ways": ("tee", ("a", "b"), {}, 1),
    "tee, nothing": ("tee", (), {}, 3),
    "safety valve, nothing": ("safety_valve", (), {}, 1),
}


@pytest.mark.parametrize(("kind", "ports", "data", "open_ends"), EXCEPTIONS.values(), ids=EXCEPTIONS.keys())
def test_exceptions(kind: str, ports: tuple[str, ...], data: Mapping[str, Any], open_ends: int) -> None:
    assert len(found(NAME, with_joined(kind, ports, data))) == open_ends


@pytest.mark.parametrize("relief", ["heat_source", "combination_heat_source", "unvented_store"])
def test_a_free_relief_outlet_is_an_absent_discharge_instead(relief: str) -> None:
    built_in = "temperature_relief" if relief == "unvented_store" else "safety_valve"
    free = "relief_outlet" if relief == "unvented_store" else "relief"
    ports = tuple(port for port in all_ports(relief) if port != free)
    drawing = with_joined(relief, ports, {"built_in": [built_in]})
    assert found(NAME, drawing) == ()
    assert only("discharge-absent", drawing).components == ("xx",)


@pytest.mark.parametrize(
    ("pipe", "word"), [("k.connection - 3,4", "One end"), ("1,2 - k.connection", "One end"), ("1,2 - 3,4", "Neither end")]
)  # fmt: skip
def test_a_pipes_free_end(pipe: str, word: str) -> None:
    drawing = made({"k": "cap"} if "k." in pipe else {}, f"p7: {pipe}")
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components, finding.pipes) == ("fault", (), ("p7",))
    assert word in finding.message and "p7" in finding.message


def test_not_applicable_to_an_empty_sheet() -> None:
    assert asked(NAME, Drawing()).status == "not applicable"
