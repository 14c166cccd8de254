"""Small water supplies that the tests start from: parts are known by their ids."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import found, way
from tests.made import Part, made

KNOWN: Mapping[str, Part] = {
    "cm": "cold_main",
    "us": "unvented_store",
    "vs": "vented_store",
    "ch": "combination_heat_source",
    "hs": "heat_source",
    "fc": ("feed_cistern", {"serves": "hot_water"}),
    "fl": "filling_link",
    "hx": "heat_exchanger",
    "ig": "inlet_group",
    "pr": "pressure_reducing_valve",
    "er": ("expansion_relief_valve", {"set_pressure_bar": 6}),
    "de": "discharge_end",
    "rad": "radiator",
    **{fitting: ("outlet", {"fitting": fitting}) for fitting in ("bath", "basin", "shower", "sink", "wc")},
}
BY_LETTER = {
    "t": "tee",
    "c": "check_valve",
    "v": "isolating_valve",
    "z": "zone_valve",
    "k": "cap",
    "p": "pump",
    "b": "blending_valve",
}


def plumbed(
    *ways: str,
    design: Mapping[str, Any] | None = None,
    pipe_data: Mapping[str, Mapping[str, Any]] | None = None,
    controls: Mapping[str, tuple[str, tuple[str, ...]]] | None = None,
    parts: Mapping[str, Part] | None = None,
    **more: Part,
) -> Drawing:
    """A water supply by its ways. A part is known by its id: those of KNOWN, or a letter of BY_LETTER
    and a number; `parts` and what is named after them say it of others, or otherwise."""
    told = {**(parts or {}), **more}
    text = way(*ways)
    ids = dict.fromkeys(word.partition(".")[0] for word in text.split() if "." in word)
    chosen: dict[str, Part] = {}
    for id in ids:
        if id in told:
            chosen[id] = told[id]
        elif id in KNOWN:
            chosen[id] = KNOWN[id]
        else:
            chosen[id] = BY_LETTER[id[0]]
    return made(chosen, text, design=design, pipe_data=pipe_data, controls=controls)


FED = "cm.outlet pr.in:out t1.a:b c1.in:out us.cold"
"""A mains-fed store behind a reducing valve, a tee for balanced cold and a check valve."""


def blended(to_c: float | None) -> Part:
    """A blending valve set to that temperature."""
    return ("blending_valve", {"set_temperature_c": to_c})


def store(kind: str = "unvented_store", **data: Any) -> Part:
    """A store with these data."""
    return (kind, data)


def new_open_ends(before: Drawing, after: Drawing) -> set[str]:
    """What a cure leaves open that was joined before."""
    texts = [{each.message for each in found("open-end", drawing)} for drawing in (before, after)]
    return texts[1] - texts[0]
