"""What every drawing that ships must say, and that a faulty one is a sound one with a single mistake."""

from __future__ import annotations

import pytest

import circuitcheck
from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Drawing
from circuitcheck.shipped import data_path
from circuitcheck.storage.writing import dump

Said = tuple[str, str, str, int]
"""Check, grade, the thing judged, and how many valves the witness shuts (0 without one)."""

SAYS: dict[str, set[Said]] = {
    "cottage": set(),
    "cottage-safety-valve-plugged": {("discharge-absent", "danger", "Safety valve", 0)},
    "flat-over-workshop": set(),
    "flat-over-workshop-pump-no-way-round": {
        ("no-way-round-when-zones-shut", "fault", "Heat source", 2),
        ("pump-against-shut-valves", "fault", "Heat source", 2),
    },
    "terrace-as-found": set(),
    "terrace-as-found-valve-in-vent": {("open-vent-can-be-cut-off", "danger", "Heat source", 1)},
    "terrace-as-proposed": set(),
    "terrace-bypass-backwards": {
        ("no-way-round-when-zones-shut", "fault", "Heat source", 2),
        ("pump-against-shut-valves", "fault", "Pump", 2),
    },
    "terrace-discharge-too-long": {
        ("discharge-too-long", "danger", "Expansion relief", 0),
        ("discharge-too-long", "danger", "Temperature relief", 0),
    },
    "terrace-valve-before-vessel": {("vessel-can-be-cut-off", "danger", "Heat source", 2)},
}

MADE_FROM = {
    "cottage-safety-valve-plugged": "cottage",
    "flat-over-workshop-pump-no-way-round": "flat-over-workshop",
    "terrace-as-found-valve-in-vent": "terrace-as-found",
    "terrace-bypass-backwards": "terrace-as-proposed",
    "terrace-discharge-too-long": "terrace-as-proposed",
    "terrace-valve-before-vessel": "terrace-as-proposed",
}


def sample(name: str) -> Drawing:
    """One of the drawings that ship."""
    return circuitcheck.read(data_path("samples") / f"{name}.wetcircuit")


def test_every_sample_is_spoken_for() -> None:
    assert {path.stem for path in data_path("samples").glob("*.wetcircuit")} == set(SAYS)
    assert len(SAYS) >= 10


@pytest.mark.parametrize("name", SAYS)
def test_it_says_what_it_must(name: str) -> None:
    drawing = sample(name)
    analysis = analyse(drawing)
    said = {
        (
            finding.check,
            finding.grade.value,
            drawing.name(finding.components[0]),
            len(finding.witness.shut) if finding.witness else 0,
        )
        for finding in analysis.findings
    }
    assert said == SAYS[name]
    assert not analysis.not_judged and not analysis.crashed


@pytest.mark.parametrize("name", SAYS)
def test_it_is_written_as_the_program_writes_it(name: str) -> None:
    path = data_path("samples") / f"{name}.wetcircuit"
    assert dump(circuitcheck.read(path)) == path.read_bytes()


@pytest.mark.parametrize("name", SAYS)
def test_every_part_has_its_place(name: str) -> None:
    assert all(part.at is not None for part in sample(name).components.values())


@pytest.mark.parametrize("name", MADE_FROM)
def test_a_faulty_one_is_a_sound_one_with_one_mistake(name: str) -> None:
    faulty, sound = sample(name), sample(MADE_FROM[name])
    parts = {
        id
        for id in faulty.components.keys() | sound.components.keys()
        if faulty.components.get(id) != sound.components.get(id)
    }
    pipes = {
        id for id in faulty.pipes.keys() | sound.pipes.keys() if faulty.pipes.get(id) != sound.pipes.get(id)
    }
    assert 1 <= len(parts) + len(pipes) <= 4
    assert SAYS[MADE_FROM[name]] == set()
