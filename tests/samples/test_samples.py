"""What every sample must say, and that each faulty one is a sound one with a single mistake."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import pytest

from circuitcheck import analyse, read
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Grade
from circuitcheck.shipped import data_path
from circuitcheck.storage.writing import dump

FOLDER = data_path("samples")
NAMES = sorted(path.stem for path in FOLDER.glob("*.wetcircuit"))

SOUND = frozenset(
    {
        "cottage",
        "flat-over-workshop",
        "guest-house",
        "terrace-as-found",
        "terrace-as-proposed",
        "village-hall",
    }
)


@dataclass(frozen=True)
class Says:
    """One finding: its check and grade, what it judges first, and its witness and which valve does it alone."""

    check: str
    grade: Grade
    first: str
    shut: frozenset[str] = frozenset()
    alone: frozenset[str] = frozenset()


DANGER, FAULT, ADVICE = Grade.DANGER, Grade.FAULT, Grade.ADVICE


def ids(*names: str) -> frozenset[str]:
    return frozenset(names)


AS_FOUND = (
    Says("bath-not-blended", ADVICE, "bath"),
    Says("drain-absent", ADVICE, "p5"),
    Says("filter-absent", ADVICE, "source"),
)
"""What an old house does without: good practice, no danger and no fault."""

FAULTY: Mapping[str, tuple[Says, ...]] = {
    "cottage-safety-valve-plugged": (Says("discharge-absent", DANGER, "safety_valve"),),
    "flat-over-workshop-pump-no-way-round": (
        Says("no-way-round-when-zones-shut", FAULT, "source", ids("zv_living", "zv_bed")),
        Says("pump-against-shut-valves", FAULT, "source", ids("zv_living", "zv_bed")),
        Says("source-flow-below-minimum", FAULT, "source"),
    ),
    "guest-house-second-source-cut-off": (
        Says("vessel-can-be-cut-off", DANGER, "source_2", ids("flow_valve_2", "return_valve_2")),
    ),
    "terrace-as-found-valve-in-vent": (
        Says("open-vent-can-be-cut-off", DANGER, "source", ids("vent_valve"), ids("vent_valve")),
        *AS_FOUND,
    ),
    "terrace-bypass-backwards": (
        Says("no-way-round-when-zones-shut", FAULT, "source", ids("zv_rooms", "zv_store")),
        Says("pump-against-shut-valves", FAULT, "pump", ids("zv_rooms", "zv_store")),
        Says("fitted-backwards", FAULT, "bypass"),
        Says("source-flow-below-minimum", FAULT, "source"),
    ),
    "terrace-discharge-too-long": (
        Says("discharge-too-long", DANGER, "expansion_relief"),
        Says("discharge-too-long", DANGER, "temperature_relief"),
    ),
    "terrace-valve-before-vessel": (
        Says("vessel-can-be-cut-off", DANGER, "source", ids("pump", "return_valve")),
    ),
    "village-hall-near-miss": (
        Says("emitter-not-in-a-loop", FAULT, "rad_committee"),
        Says("near-miss", FAULT, "rad_committee"),
        Says("open-end", FAULT, "p28"),
        Says("open-end", FAULT, "rad_committee"),
    ),
}


@dataclass(frozen=True)
class Mistake:
    """What a faulty sample changes of the sound one: ids that come, go, or are altered, each with what alters."""

    sound: str
    comes: frozenset[str] = frozenset()
    goes: frozenset[str] = frozenset()
    altered: Mapping[str, frozenset[str]] | None = None


CUT_IN = ids("ends", "via", "data.length_m", "data.rise_m", "data.bends")

MISTAKES: Mapping[str, Mistake] = {
    # A dripping outlet is stopped with a plug where its pipe to the outside wall was.
    "cottage-safety-valve-plugged": Mistake(
        "cottage",
        comes=ids("plug"),
        goes=ids("outside"),
        altered={"p50": CUT_IN},
    ),
    # A heat source without a bypass in it is fitted in the place of one that has one.
    "flat-over-workshop-pump-no-way-round": Mistake(
        "flat-over-workshop", altered={"source": ids("data.built_in")}
    ),
    # A valve joins the one in the return, so that the second source can be taken out.
    "guest-house-second-source-cut-off": Mistake(
        "guest-house", comes=ids("flow_valve_2", "p68"), altered={"p4": CUT_IN}
    ),
    "terrace-as-found-valve-in-vent": Mistake(
        "terrace-as-found", comes=ids("vent_valve", "p27"), altered={"p7": CUT_IN}
    ),
    "terrace-bypass-backwards": Mistake(
        "terrace-as-proposed",
        altered={"bypass": ids("turn"), "p11": ids("ends"), "p12": ids("ends")},
    ),
    "terrace-discharge-too-long": Mistake(
        "terrace-as-proposed", altered={"p52": ids("data.length_m", "data.bends")}
    ),
    "terrace-valve-before-vessel": Mistake(
        "terrace-as-proposed", comes=ids("return_valve", "p54"), altered={"p25": CUT_IN}
    ),
    "village-hall-near-miss": Mistake("village-hall", altered={"p28": ids("ends")}),
}


def sample(name: str) -> Drawing:
    return read(FOLDER / f"{name}.wetcircuit")


def said(finding: Finding) -> Says:
    witness = finding.witness
    return Says(
        finding.check,
        finding.grade,
        (finding.components or finding.pipes)[0],
        frozenset(witness.shut) if witness else frozenset(),
        frozenset(witness.alone) if witness else frozenset(),
    )


def test_there_are_samples_enough_and_each_stands_in_the_tables() -> None:
    assert len(NAMES) >= 14
    assert set(NAMES) == SOUND | FAULTY.keys()
    assert FAULTY.keys() == MISTAKES.keys()
    assert {mistake.sound for mistake in MISTAKES.values()} == SOUND


@pytest.mark.parametrize("name", sorted(SOUND))
def test_a_sound_sample_says_nothing_and_leaves_nothing_unjudged(name: str) -> None:
    analysis = analyse(sample(name))
    expected = AS_FOUND if name == "terrace-as-found" else ()
    assert {said(finding) for finding in analysis.findings} == set(expected)
    assert analysis.not_judged == analysis.crashed == ()


@pytest.mark.parametrize("name", sorted(FAULTY))
def test_a_faulty_sample_says_just_this(name: str) -> None:
    analysis = analyse(sample(name))
    found = [said(finding) for finding in analysis.findings]
    assert len(found) == len(FAULTY[name])
    assert set(found) == set(FAULTY[name])
    assert analysis.not_judged == analysis.crashed == ()


def test_the_long_discharge_is_the_published_worked_example() -> None:
    """Approved Document G (England), worked example below Table 3.1: G1/2 valve, 7 m, 4 elbows, refused for
    22 mm and allowed for 28 mm."""
    for finding in analyse(sample("terrace-discharge-too-long")).findings:
        assert finding.numbers["length_m"] == 7
        assert finding.numbers["bends"] == 4
        assert finding.numbers["size_mm"] == 22
        assert finding.numbers["resistance_m"] == pytest.approx(10.2)
        assert finding.numbers["limit_m"] == 9
        assert finding.numbers["size_that_passes_mm"] == 28


def test_the_other_heat_source_of_the_guest_house_is_not_accused() -> None:
    (finding,) = analyse(sample("guest-house-second-source-cut-off")).findings
    assert "source_1" not in finding.components


def test_the_conversion_is_one_house_before_and_after() -> None:
    before, after = sample("terrace-as-found"), sample("terrace-as-proposed")
    assert {part.kind.name for part in before.components.values()} >= {
        "vented_store",
        "feed_cistern",
        "open_vent",
        "three_port_valve",
    }
    kinds = [part.kind.name for part in after.components.values()]
    assert {"unvented_store", "bypass_valve", "tundish", "safety_valve"} <= set(kinds)
    assert not {"feed_cistern", "open_vent", "vented_store"} & set(kinds)
    assert kinds.count("zone_valve") == 2
    assert kinds.count("expansion_vessel") == 2
    stores = {"vented_store", "unvented_store"}
    for drawing in (before, after):
        assert sum(part.kind.name in stores for part in drawing.components.values()) == 1


@pytest.mark.parametrize("name", sorted(MISTAKES))
def test_a_faulty_sample_is_a_sound_one_with_one_mistake(name: str) -> None:
    mistake = MISTAKES[name]
    sound, faulty = sample(mistake.sound), sample(name)
    before, after = items(sound), items(faulty)
    assert after.keys() - before.keys() == mistake.comes
    assert before.keys() - after.keys() == mistake.goes
    altered = {id: differing(before[id], after[id]) for id in before.keys() & after.keys()}
    expected = mistake.altered or {}
    assert {id for id, names in altered.items() if names} == expected.keys()
    for id, names in expected.items():
        assert altered[id] <= names
    assert sound.title != faulty.title
    assert sound.controls == faulty.controls
    assert (sound.sheet, sound.design) == (faulty.sheet, faulty.design)


def items(drawing: Drawing) -> dict[str, dict[str, Any]]:
    """Every part and pipe by its id, each as its fields, those of its data as `data.field`."""
    found: dict[str, dict[str, Any]] = {}
    for part in drawing.components.values():
        found[part.id] = {
            "kind": part.kind.name,
            "label": part.label,
            "at": part.at,
            "turn": part.turn,
            "mirrored": part.mirrored,
            **{f"data.{name}": value for name, value in part.data.items()},
        }
    for pipe in drawing.pipes.values():
        found[pipe.id] = {
            "ends": pipe.ends,
            "via": pipe.via,
            **{f"data.{name}": value for name, value in pipe.data.items()},
        }
    return found


def differing(one: Mapping[str, Any], other: Mapping[str, Any]) -> frozenset[str]:
    return frozenset(name for name in one.keys() | other.keys() if one.get(name) != other.get(name))


@pytest.mark.parametrize("name", NAMES)
def test_a_sample_is_written_as_the_program_writes_it(name: str) -> None:
    assert dump(sample(name)) == (FOLDER / f"{name}.wetcircuit").read_bytes()


@pytest.mark.parametrize("name", NAMES)
def test_a_sample_states_what_verdicts_rest_on(name: str) -> None:
    assert analyse(sample(name)).taken == ()
