"""Figures of a whole drawing just inside and just outside what they hold for: refused, and why in words."""

from __future__ import annotations

import json

import pytest

from circuitcheck.drawing.edits import set_design, set_field
from circuitcheck.drawing.value import Drawing
from circuitcheck.report.sizes import as_csv, as_json, as_text, sized
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.figures.worked.asking import told

COTTAGE = read(data_path("samples") / "cottage.wetcircuit")


def changed(field: str, value: object) -> Drawing:
    """The cottage with one number another; a material with none leaves the pipe's own size alone."""
    id, _, name = field.rpartition(".")
    return set_design(COTTAGE, name, value) if id == "design" else set_field(COTTAGE, id, name, value)


LIMITS = (
    ("swell", "hs.maximum_flow_temperature_c", 110, 110.1, "0 to 110 °C"),
    ("heating-vessel", "hs.maximum_flow_temperature_c", 110, 110.1, "0 to 110 °C"),
    ("water-properties", "design.flow_temperature_c", 110, 110.1, "0 to 110 °C"),
    ("swell", "design.glycol_percent", 0, 0.1, "glycol"),
    ("heating-vessel", "design.glycol_percent", 0, 0.1, "glycol"),
    ("water-properties", "design.glycol_percent", 0, 0.1, "glycol"),
    ("flows", "design.glycol_percent", 0, 0.1, "glycol"),
    ("pump-duty", "design.return_temperature_c", 69.9, 70, "hotter than its return"),
    ("balancing", "design.return_temperature_c", 55, 70, "hotter than its return"),
    ("noise", "pump.shut_off_head_m", 0.01, 0, "head or a most flow of 0"),
    ("index-circuit", "pump.maximum_flow_lpm", 20, 0, "head or a most flow of 0"),
    ("mixed-water", "store.thermostat_c", 40, 39.9, "40 °C"),
    ("draw-off", "store.thermostat_c", 40, 39.9, "40 °C"),
    ("mixed-water", "design.fill_temperature_c", 39.9, 40, "40 °C"),
    ("emitter-output", "rooms.maximum_flow_temperature_c", 70, 69.9, "limited to 69.9 °C"),
    ("discharge", "p49.material", "copper", "plastic", "holds for copper, and pipe p49 is plastic"),
    ("discharge", "p49.material", "copper", "steel", "holds for copper, and pipe p49 is steel"),
    ("discharge", "expansion_relief.outlet_size_mm", 28, 35, "no valve outlet of that size"),
)


@pytest.mark.parametrize(
    ("figure", "field", "inside", "outside", "why"),
    LIMITS,
    ids=lambda each: str(each) if isinstance(each, str) else None,
)
def test_refused_just_outside(figure: str, field: str, inside: object, outside: object, why: str) -> None:
    worked = told(figure, changed(field, inside))
    assert worked and not any(each.refused for each in worked)
    refused = [each for each in told(figure, changed(field, outside)) if each.refused]
    assert refused
    assert all(why in each.refused and not each.missing for each in refused), refused[0].refused


@pytest.mark.parametrize("why", ["0 to 110 °C"])
def test_the_reason_is_in_text_json_and_csv(why: str) -> None:
    found = sized("a", changed("hs.maximum_flow_temperature_c", 110.1))
    assert f"{why}" in " ".join(as_text(found).split())
    assert any(why in (each["refused"] or "") for each in json.loads(as_json(found))["figures"])
    assert any(why in line and ",refused," in line for line in as_csv(found).splitlines())


def test_uncertainty_is_in_text_json_and_csv() -> None:
    from circuitcheck.drawing.edits import clear_field

    found = sized("a", clear_field(COTTAGE, "store", "thermostat_c"))
    assert "Rests on: store.thermostat_c: +5 °C would move the result by +10.0%" in " ".join(
        as_text(found).split()
    )
    moves = [move for each in json.loads(as_json(found))["figures"] for move in each["moves"]]
    assert {"field": "store.thermostat_c", "by": "+5 °C", "share": 0.1} in moves
    assert any(",moves,,store.thermostat_c,0.1,share,'+5 °C," in line for line in as_csv(found).splitlines())
    bare = sized("a", clear_field(COTTAGE, "expansion_relief", "outlet_size_mm"))
    assert "+27.3%" in as_text(bare)
