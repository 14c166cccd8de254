"""Contents of documents, gathered once for all tests that read them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from functools import cache

import pytest

from circuitcheck.drawing.value import Acceptance, Component, Drawing, Joint, Note, Pipe, Reply
from circuitcheck.geometry import Point
from circuitcheck.report.document.content import Content
from circuitcheck.report.document.gathering import gather
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

DAY = date(2026, 11, 25)
HOSTILE = "<script>alert(1)</script>&\"'\u202e\x07=1+1<b>]]>"


@cache
def sample(name: str) -> Drawing:
    """A drawing that ships."""
    return read(data_path("samples") / f"{name}.wetcircuit")


@cache
def content_of(name: str) -> Content:
    """Its document's content."""
    return gather(sample(name), f"{name}.wetcircuit", DAY)


@pytest.fixture
def content() -> Callable[[str], Content]:
    return content_of


@cache
def hostile() -> Content:
    """A drawing in which every text of the file tries to be more than text."""
    drawing = sample("terrace-valve-before-vessel")
    parts = {id: replace(part, label=f"{HOSTILE}{id}") for id, part in drawing.components.items()}
    return gather(
        replace(
            drawing,
            title=HOSTILE,
            components=parts,
            notes=(
                Note(
                    "n1",
                    ("hs",),
                    HOSTILE,
                    HOSTILE,
                    f"{HOSTILE}\nsecond line",
                    replies=(Reply(HOSTILE, "", HOSTILE),),
                ),
            ),
            acceptances=(Acceptance("vessel-can-be-cut-off", ("hs",), HOSTILE, HOSTILE, "2026-01-01"),),
        ),
        f"{HOSTILE.replace('/', '')}.wetcircuit",
        DAY,
    )


def many(copies: int) -> Drawing:
    """The cottage so many times over on one sheet, its lengths left out."""
    drawing = sample("cottage")
    parts: dict[str, Component] = {}
    pipes: dict[str, Pipe] = {}
    for number in range(copies):
        dx, dy = (number % 6) * 70, (number // 6) * 60
        for part in drawing.components.values():
            at = part.at and Point(part.at.x + dx, part.at.y + dy)
            data = {**part.data}
            if data.get("energy_cut_out"):
                data["energy_cut_out"] = f"{data['energy_cut_out']}_{number}"
            id = f"{part.id}_{number}"
            parts[id] = replace(part, id=id, label=part.label and f"{part.label} {number}", at=at, data=data)
        for pipe in drawing.pipes.values():
            a, b = (Joint(f"{end.part}_{number}", end.port) for end in pipe.joints)
            via = pipe.via and tuple(Point(point.x + dx, point.y + dy) for point in pipe.via)
            data = {name: value for name, value in pipe.data.items() if name != "length_m"}
            id = f"{pipe.id}_{number}"
            pipes[id] = replace(pipe, id=id, ends=(a, b), via=via, data=data)
    return Drawing(title="Many cottages", design=drawing.design, components=parts, pipes=pipes)
