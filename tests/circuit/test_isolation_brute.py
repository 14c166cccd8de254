"""Cut-offs are proved equal to trying every position of the valves."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit import isolation
from circuitcheck.circuit.isolation import cut_off, reaches
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.labels import part_of
from circuitcheck.drawing.value import Drawing
from circuitcheck.parts.kind import Role
from tests.circuit import brute
from tests.circuit.random_circuits import circuits, plants
from tests.made import made


def check_role(drawing: Drawing, role: Role, goals: set[brute.Port], found: brute.Plant) -> None:
    """Every heat source of the drawing, both ways."""
    circuit = Circuit(drawing)
    for heat in circuit.devices(Role.HEATS):
        start = circuit.water(heat.other)
        reach = reaches(circuit, start)
        targets = [circuit.water(place.node) for place in circuit.devices(role)]
        inside = [target for target in targets if target in reach]
        everything_open = brute.joined(found, found.heats[heat.part], goals, frozenset())
        assert bool(inside) == everything_open
        if not inside:
            continue
        expected = brute.cut_answer(found, found.heats[heat.part], goals)
        answer = cut_off(circuit, start, inside)
        if expected is None:
            assert answer is None
            continue
        assert answer is not None
        assert answer.by_secured_only == (expected.unsecured_size is None)
        size = expected.size if answer.by_secured_only else expected.unsecured_size
        assert len(answer.shut) == size
        assert not brute.joined(found, found.heats[heat.part], goals, frozenset(answer.shut))
        assert frozenset(answer.alone) == expected.alone
        assert not answer.beyond & {start}
        assert all(part_of(entry) for entry in answer.shut)


@given(st.one_of(circuits(), plants()))
def test_vessels(drawing: Drawing) -> None:
    found = brute.plant(drawing)
    check_role(drawing, Role.HOLDS_EXPANSION, found.vessels, found)


@given(st.one_of(circuits(), plants()))
def test_safety_valves(drawing: Drawing) -> None:
    found = brute.plant(drawing)
    check_role(drawing, Role.RELIEVES_HEATING, found.safety_valves, found)


@given(st.integers(2, 40))
def test_a_row_of_three_port_valves_whose_legs_meet_again_cuts_nothing_off(length: int) -> None:
    parts: dict[str, str] = {"hs": "heat_source", "ve": "expansion_vessel"}
    lines = []
    last = "hs.flow"
    for number in range(length):
        valve, tee = f"v{number}", f"t{number}"
        parts |= {valve: "three_port_valve", tee: "tee"}
        lines += [f"{last} - {valve}.ab", f"{valve}.a - {tee}.a", f"{valve}.b - {tee}.branch"]
        last = f"{tee}.b"
    lines.append(f"{last} - ve.connection")
    circuit = Circuit(made(parts, "\n".join(lines)))
    (heat,) = circuit.devices(Role.HEATS)
    (vessel,) = circuit.devices(Role.HOLDS_EXPANSION)
    assert cut_off(circuit, circuit.water(heat.other), [circuit.water(vessel.node)]) is None


def test_beyond_the_bound_there_is_no_answer(monkeypatch: pytest.MonkeyPatch) -> None:
    """The cuts at either end shut both legs of one valve; one leg of each is found at a second look."""
    circuit = Circuit(
        made(
            {"hs": "heat_source", "v": "three_port_valve", "w": "three_port_valve", "ev": "expansion_vessel"},
            "hs.flow - v.ab\n v.a - w.a\n v.b - w.b\n w.ab - ev.connection",
        )
    )
    (heat,), (vessel,) = circuit.devices(Role.HEATS), circuit.devices(Role.HOLDS_EXPANSION)
    asked = circuit.water(heat.other), [circuit.water(vessel.node)]
    found = cut_off(circuit, *asked)
    assert found is not None and sorted(found.shut) in (["v:a", "w:b"], ["v:b", "w:a"])
    monkeypatch.setattr(isolation, "SEARCH_BOUND", 0)
    with pytest.raises(isolation.TooLargeError):
        cut_off(circuit, *asked)
