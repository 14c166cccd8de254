"""Vessels that are too small, as drawn or after valves are shut; and those that are just large enough."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.analysis import analyse
from circuitcheck.checks.answering import answer
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.parts.catalogue import component_kinds
from circuitcheck.sizing import water
from tests.checks.asking import advice, asked, fault, only, told
from tests.checks.houses import SECURED, vented
from tests.checks.sized import house, source, valve, vessel
from tests.circuit import brute
from tests.circuit.random_circuits import circuits, plants

NAME = "vessel-too-small"
HAND = "isolating_valve"
SWELL_L = 100 * water.expansion(10, 80)
TAKES = 1.7 / 3.5  # of a vessel between 0.8 and 2.5 bar
SMALL_L = SWELL_L / (TAKES - 0.2)  # one up to 15 l holds a fifth of itself in reserve
BEHIND_A_VALVE = ("t1.branch t3.a:b sv.inlet", "t3.branch iv.a:b e2.connection")


def two(first_l: float | None, second_l: float, iv: Any = HAND, **design: Any) -> Drawing:
    """A vessel on the return with nothing between, and one behind a valve."""
    return house(
        *BEHIND_A_VALVE, safety_by="", design=design, t3="tee", iv=iv, sv=valve(),
        ev=vessel(volume_l=first_l), e2=vessel(volume_l=second_l),
    )  # fmt: skip


SOUND: dict[str, Drawing] = {
    "12 l": house(),
    "just large enough": house(ev=vessel(volume_l=SMALL_L)),
    "large, with 3 l in reserve": house(
        ev=vessel(volume_l=(2 * SWELL_L + 3) / TAKES), design={"system_content_l": 200}
    ),
    "two together": house(
        "t1.branch t3.a:b sv.inlet", "t3.branch e2.connection", safety_by="", sv=valve(), t3="tee",
        ev=vessel(volume_l=6), e2=vessel(volume_l=7),
    ),
    "built in": house(
        vessel_by="", hs=source(built_in=["vessel"], built_in_vessel_l=12, built_in_vessel_precharge_bar=0.8)
    ),
    "one may be shut, the other is enough": two(12, 8),
    "content not known, too large a vessel for any doubt": house(
        design={"system_content_l": None}, ev=vessel(volume_l=500),
    ),
    "fill not known: there is a right one": house(design={"fill_pressure_bar": None}),
    "charged wrongly, but large enough once put right": house(ev=vessel(precharge_bar=1.6)),
    "valve stands higher, so the vessel may see more": house(
        ev=vessel(volume_l=SMALL_L * 0.95), sv=valve(height_m=5)
    ),
    "pump on the flow": house(ring="hs.flow t1.a:b pu.in:out rad.flow:return t2.a:b hs.return", pu="pump"),
    "primary pump round a separator": house(
        "se.load_flow rad.flow:return se.load_return", rad=("radiator", {"water_content_l": 10}),
        ring="hs.flow t1.a:b se.source_flow:source_return t2.a:b pu.in:out hs.return", se="separator",
        pu=("pump", {"shut_off_head_m": 9}),
    ),
}  # fmt: skip

TOO_SMALL: dict[str, Drawing] = {
    "8 l": house(ev=vessel(volume_l=8)),
    "a thousandth too small": house(ev=vessel(volume_l=SMALL_L * 0.999)),
    "large, a thousandth short": house(
        ev=vessel(volume_l=0.999 * (2 * SWELL_L + 3) / TAKES), design={"system_content_l": 200}
    ),
    "the heat source's limit is hotter": house(hs=source(maximum_flow_temperature_c=105)),
    "filled too high for it": house(design={"fill_pressure_bar": 2.0}),
    "charged to more than it may see": house(
        ev=vessel(precharge_bar=2.6), design={"static_height_m": 24, "fill_pressure_bar": 2.7}
    ),
    "stands higher than the valve": house(ev=vessel(volume_l=SMALL_L, height_m=1)),
    "pump between the vessel and the valve": house(
        ev=vessel(volume_l=12), pu=("pump", {"shut_off_head_m": 6}),
        ring="hs.flow t1.a:b rad.flow:return t2.a:b pu.in:out hs.return",
    ),
    "a lower valve": house(sv=valve(set_pressure_bar=2)),
    "much too small though the content is not known": house(
        design={"system_content_l": None}, rad=("radiator", {"water_content_l": 300}), hs=source(water_content_l=None)
    ),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND)
def test_sound(drawing: Drawing) -> None:
    answered = asked(NAME, drawing)
    assert (answered.findings, answered.status) == ((), "judged")


@pytest.mark.parametrize("drawing", TOO_SMALL.values(), ids=TOO_SMALL)
def test_too_small(drawing: Drawing) -> None:
    assert told(NAME, drawing) == [fault("hs")]


@pytest.mark.parametrize(
    ("drawing", "expected"),
    [
        (two(8, 8), [fault("hs", "iv", "iv")]),
        (two(8, 8, SECURED), [advice("hs", "iv", "iv")]),
        (two(4, 4, SECURED), [fault("hs")]),
        (two(10.1, 8), []),
        (two(9.9, 8), [fault("hs", "iv", "iv")]),
    ],
)  # fmt: skip
def test_too_small_once_a_valve_is_shut(drawing: Drawing, expected: list[object]) -> None:
    assert told(NAME, drawing) == expected


def test_a_three_port_valve_leaves_one_of_two_vessels() -> None:
    drawing = house(
        "t1.branch t3.a:b sv.inlet", "t3.branch tp.ab:a e1.connection", "tp.b e2.connection",
        safety_by="", vessel_by="t2.branch ev.connection", sv=valve(), t3="tee", tp="three_port_valve",
        ev=vessel(volume_l=4), e1=vessel(volume_l=4), e2=vessel(volume_l=9),
    )  # fmt: skip
    # Both legs are never shut: 4 + 4 l is the least there can be, and too small.
    assert told(NAME, drawing) == [fault("hs", "tp:b", "tp:b")]
    larger = house(
        "t1.branch t3.a:b sv.inlet", "t3.branch tp.ab:a e1.connection", "tp.b e2.connection",
        safety_by="", vessel_by="t2.branch ev.connection", sv=valve(), t3="tee", tp="three_port_valve",
        ev=vessel(volume_l=4), e1=vessel(volume_l=9), e2=vessel(volume_l=9),
    )  # fmt: skip
    assert told(NAME, larger) == []


def test_less_water_is_left_with_the_vessel_that_is_left() -> None:
    """Shutting the second vessel off also shuts off most of the water."""
    ring = "hs.flow t1.a:b t3.a:b v1.a:b rad.flow:return v2.a:b t4.a:b t2.a:b hs.return"
    drawing = house(
        "t3.branch e2.connection", ring=ring, t3="tee", t4="tee", v1=HAND, v2=HAND,
        ev=vessel(volume_l=2), e2=vessel(volume_l=12),
    )  # fmt: skip
    assert told(NAME, drawing) == []


MISSING: list[tuple[Drawing, set[str]]] = [
    (house(design={"system_content_l": None}, pipe_data={"p1": {"length_m": None}}), {"p1.length_m"}),
    (house(design={"fill_temperature_c": None}, ev=vessel(volume_l=10.05)), {"design.fill_temperature_c"}),
    (house(design={"flow_temperature_c": None}), {"design.flow_temperature_c"}),
    (house(design={"static_height_m": None}), {"design.static_height_m"}),
    (house(ev=vessel(volume_l=None)), {"ev.volume_l"}),
    (house(ev=vessel(precharge_bar=None, volume_l=11)), {"ev.precharge_bar"}),
    (house(sv=valve(set_pressure_bar=None)), {"sv.set_pressure_bar"}),
    (house(sv=valve(height_m=None), ev=vessel(volume_l=11)), {"sv.height_m"}),
    (
        house(ring="hs.flow t1.a:b rad.flow:return t2.a:b pu.in:out hs.return", pu="pump"),
        {"pu.shut_off_head_m"},
    ),
    # Enough together; with the large one shut off, what is left is not known.
    (two(None, 500), {"ev.volume_l"}),
    (house(design={"glycol_percent": 30}), set()),
    (house(design={"flow_temperature_c": 115}), set()),
    (
        house(design={"flow_temperature_c": None, "fill_temperature_c": None}, ev=vessel(volume_l=None)),
        {"design.flow_temperature_c", "design.fill_temperature_c", "ev.volume_l"},
    ),
]


@pytest.mark.parametrize(("drawing", "missing"), MISSING)
def test_unanswered(drawing: Drawing, missing: set[str]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.would_be and finding.would_be.value) == ("unanswered", "fault")
    assert set(finding.missing) == missing


@pytest.mark.parametrize(
    "drawing",
    [vented(), house(vessel_by=""), house(safety_by="")],
    ids=["open-vented", "no vessel", "no safety valve"],
)
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def test_the_numbers_are_told() -> None:
    finding = only(NAME, house(ev=vessel(volume_l=8)))
    assert finding.numbers["content_l"] == 100
    assert finding.numbers["swell_l"] == pytest.approx(2.87, abs=0.01)
    assert finding.numbers["needed_l"] == pytest.approx(SMALL_L)
    assert finding.numbers["bs_7074_l"] == pytest.approx(0.8 * 0.0491 * 100 / (1 - 1.8 / 3.65))
    assert "8 l" in finding.message


@pytest.mark.parametrize(
    ("drawing", "words"),
    [
        (TOO_SMALL["8 l"], ("would have to hold 10.05 l in all and holds 8 l", "1.6 l in reserve between 0.8 and 2.5 bar.")),
        (TOO_SMALL["filled too high for it"], ("33.5 l in all and holds 12 l. Filled to 2 bar too little room is left",)),
        (TOO_SMALL["charged to more than it may see"], ("charged to 2.6 bar, can take up nothing below 2.5 bar: no size would do.",)),
        (two(8, 8), ("With isolating valve iv shut, heat source hs is left without expansion vessel e2: ",)),
        (two(8, 8, SECURED), ("between 0.8 and 2.5 bar. Only secured valves do it",)),
        (house(design={"glycol_percent": 30}), ("swells more than water",)),
        (house(design={"flow_temperature_c": 115}), ("beyond those reckoned here.",)),
        (house(ev=vessel(volume_l=None)), ("on what is not known: ev.volume_l.",)),
    ],
)  # fmt: skip
def test_what_it_says(drawing: Drawing, words: tuple[str, ...]) -> None:
    message = only(NAME, drawing).message
    assert all(each in message for each in words), message
    assert "Only secured" not in message or drawing.components["iv"].data


def test_the_cure_is_the_next_size_made() -> None:
    analysis = analyse(house(ev=vessel(volume_l=8)))
    (finding,) = [each for each in analysis.findings if each.check == NAME]
    first = cures(analysis, finding)[0]
    assert first.drawing.components["ev"].data["volume_l"] == 12


def test_a_built_in_vessel_is_changed_by_no_cure() -> None:
    built_in = source(built_in=["vessel"], built_in_vessel_l=5, built_in_vessel_precharge_bar=0.8)
    drawing = house(vessel_by="", hs=built_in)
    assert list(checks()[NAME].propose(Case(drawing), only(NAME, drawing))) == []


# -- Against every position of every valve ---------------------------------------------------------


def _with_vessels(drawing: Drawing, places: list[int]) -> Drawing:
    """The drawing with a safety valve built into each heat source and more vessels hung on its pipes."""
    kinds = component_kinds()
    components, pipes = dict(drawing.components), dict(drawing.pipes)
    for id, part in drawing.components.items():
        if part.kind.name == "heat_source":
            built_in = [*part.data.get("built_in", ()), "safety_valve"]
            components[id] = replace(part, data={**part.data, "built_in": list(dict.fromkeys(built_in))})
    for number, place in enumerate(places):
        id = list(pipes)[place % len(pipes)]
        tee, more = f"xt{number}", f"xv{number}"
        components[tee] = Component(tee, kinds["tee"])
        components[more] = Component(more, kinds["expansion_vessel"])
        start, finish = pipes[id].ends
        pipes[id] = replace(pipes[id], ends=(start, Joint(tee, "a")))
        pipes[f"{id}x{number}"] = Pipe(f"{id}x{number}", (Joint(tee, "b"), finish))
        pipes[f"xp{number}"] = Pipe(f"xp{number}", (Joint(tee, "branch"), Joint(more, "connection")))
    return replace(drawing, components=components, pipes=pipes)


def _told_in_full(drawing: Drawing, picks: list[int], content: int) -> Drawing:
    """The drawing with every number known: vessels and emitters of random size, all at one height."""
    components = {}
    for number, part in enumerate(drawing.components.values()):
        pick = picks[number % len(picks)]
        data: dict[str, Any] = {**part.data, "height_m": 0}
        match part.kind.name:
            case "heat_source":
                data |= {
                    "built_in_vessel_l": 5 + pick,
                    "built_in_vessel_precharge_bar": 0.8,
                    "water_content_l": 2,
                }
            case "expansion_vessel":
                data |= {"volume_l": 5 + 4 * pick, "precharge_bar": 0.8}
            case "radiator" | "heating_zone" | "separator":
                data["water_content_l"] = content * pick
            case "vented_store":
                data["coil_content_l"] = content * pick
            case "pump":
                data["shut_off_head_m"] = 0
        if part.kind.name == "heat_source" and "pump" in part.data.get("built_in", ()):
            data["shut_off_head_m"] = 0
        components[part.id] = replace(part, data=data)
    pipes = {id: replace(pipe, data={"bore_mm": 100, "length_m": 1}) for id, pipe in drawing.pipes.items()}
    design = {
        "flow_temperature_c": 80,
        "fill_temperature_c": 10,
        "static_height_m": 5,
        "fill_pressure_bar": 1.0,
    }
    return replace(drawing, components=components, pipes=pipes, design=design)


def _litres(drawing: Drawing, ports: set[tuple[str, str]]) -> float:
    """The water at these ports."""
    found = 0.0
    for pipe in drawing.pipes.values():
        if any((end.part, end.port) in ports for end in pipe.ends if isinstance(end, Joint)):
            found += 7.853981634
    for part in drawing.components.values():
        for field, names in (
            ("water_content_l", ("flow", "return", "load_flow")),
            ("coil_content_l", ("coil_flow",)),
        ):
            if field in part.data and any((part.id, name) in ports for name in names):
                found += part.data[field]
    return found


def _enough(drawing: Drawing, litres: float, vessels: set[tuple[str, str]]) -> bool:
    volume = sum(
        drawing.components[part].data["volume_l" if port == "connection" else "built_in_vessel_l"]
        for part, port in vessels
    )
    swell = litres * water.expansion(10, 80)
    reserve = 0.2 * volume if volume <= 15 else max(3.0, 0.005 * litres)
    return bool(volume * TAKES >= swell + reserve - 1e-9 and volume * (1.8 / 2.0 - 1.8 / 3.5) >= swell - 1e-9)


def _component(
    plant: brute.Plant, start: brute.Port, shut: frozenset[str], *, any_way: bool = False
) -> set[Any]:
    beside: dict[Any, list[Any]] = {}
    ways = [
        (way.a, way.b)
        for way in plant.ways
        if any_way or (way.pressure and not (way.pressure_shut_by and way.entry in shut))
    ]
    for a, b in (*ways, *plant.pipes):
        beside.setdefault(a, []).append(b)
        beside.setdefault(b, []).append(a)
    seen, todo = {start}, [start]
    for here in todo:
        for there in beside.get(here, ()):
            if there not in seen:
                seen.add(there)
                todo.append(there)
    return seen


def _expected(drawing: Drawing, plant: brute.Plant, start: brute.Port) -> str | None:
    """The grade that trying every position gives; "" where the check says nothing of that water."""
    whole = _component(plant, start, frozenset())
    if not whole & plant.vessels or not whole & plant.safety_valves:
        return None
    body = _component(plant, start, frozenset(), any_way=True)
    if not _enough(drawing, _litres(drawing, body), whole & plant.vessels):
        return "fault"
    shuttable = [way for way in plant.ways if way.pressure and way.pressure_shut_by]
    secured = {way.entry for way in shuttable if way.secured}
    worst = "sound"
    for position in brute.positions(sorted({way.entry for way in shuttable})):
        left = _component(plant, start, position)
        kept = left & plant.vessels
        if kept and not _enough(drawing, _litres(drawing, left), kept):
            if not position & secured:
                return "fault"
            worst = "advice"
    return worst


@settings(max_examples=100)
@given(
    st.one_of(circuits(), plants()),
    st.lists(st.integers(0, 4), min_size=3, max_size=12),
    st.sampled_from([2, 15, 40, 90]),
    st.lists(st.integers(0, 40), min_size=1, max_size=3),
)
def test_equal_to_trying_every_position(
    drawing: Drawing, picks: list[int], content: int, places: list[int]
) -> None:
    drawing = _told_in_full(_with_vessels(drawing, places), picks, content)
    plant = brute.plant(drawing)
    answered = answer(checks()[NAME], Case(drawing))
    by_heat = {finding.components[0]: finding for finding in answered.findings}
    for heat, start in plant.heats.items():
        expected = _expected(drawing, plant, start)
        finding = by_heat.get(heat)
        assert (finding.grade.value if finding else "sound") == (expected or "sound")
        if finding is not None and finding.witness is not None:
            shut = frozenset(finding.witness.shut)
            left = _component(plant, start, shut)
            assert left & plant.vessels
            assert not _enough(drawing, _litres(drawing, left), left & plant.vessels)
            assert not any(f"{entry[:-2]}:b" in shut for entry in shut if entry.endswith(":a"))
            for label in finding.witness.alone:
                alone = _component(plant, start, frozenset({label}))
                assert not _enough(drawing, _litres(drawing, alone), alone & plant.vessels)


def many(first_l: float, other_l: float, **design: Any) -> Drawing:
    """A vessel with nothing between and eleven behind a valve each."""
    ways: list[str] = []
    parts: dict[str, Any] = {}
    ring = ["hs.flow t1.a:b rad.flow:return t2.a:b"]
    for number in range(3, 14):
        ring.append(f"t{number}.a:b")
        ways.append(f"t{number}.branch v{number}.a:b e{number}.connection")
        parts |= {f"t{number}": "tee", f"v{number}": HAND, f"e{number}": vessel(volume_l=other_l)}
    return house(
        *ways, ring=" ".join([*ring, "hs.return"]), ev=vessel(volume_l=first_l), design=design, **parts
    )


def test_many_vessels_each_large_enough() -> None:
    assert told(NAME, many(12, 12)) == []


def test_many_vessels_of_which_the_first_is_enough() -> None:
    assert told(NAME, many(12, 4)) == []


def test_many_vessels_of_which_one_is_left() -> None:
    assert [each.grade for each in told(NAME, many(4, 4))] == ["fault"]


def test_more_vessels_than_can_be_tried() -> None:
    finding = only(NAME, many(12, 12, glycol_percent=30))
    assert (finding.grade.value, finding.missing) == ("unanswered", ())
    assert "too many" in finding.message


def test_a_secured_valve_that_does_it_alone_is_named_beside_two_unsecured_ones() -> None:
    # The large vessel can be cut off by one secured valve, or by two others on two ways to it.
    drawing = house(
        "t1.branch t3.a:b sv.inlet", "t3.branch t4.a:b i1.a:b t5.a:b s1.a:b e2.connection",
        "t4.branch i2.a:b t5.branch", safety_by="", sv=valve(), t3="tee", t4="tee", t5="tee",
        i1=HAND, i2=HAND, s1=SECURED, ev=vessel(volume_l=2), e2=vessel(volume_l=12),
    )  # fmt: skip
    assert told(NAME, drawing) == [fault("hs", "i1 i2", "s1")]
