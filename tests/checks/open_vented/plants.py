"""Open-vented plants that the tests start from, with every number that a check of them reads."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from circuitcheck.drawing.value import Drawing
from tests.made import Part, made

Data = Mapping[str, Any]

PARTS: dict[str, Part] = {
    "hs": ("heat_source", {"height_m": 1}),
    "tv": "tee",
    "tf": "tee",
    "pu": ("pump", {"shut_off_head_m": 4}),
    "rad": "radiator",
    "ov": ("open_vent", {"over": "fc", "height_above_water_mm": 450}),
    "fc": ("feed_cistern", {"water_level_m": 5.5, "serves": "heating", "content_l": 40}),
}
PIPES = """
    flow: hs.flow - tv.a
    gap: tv.b - tf.a
    suck: tf.b - pu.in
    push: pu.out - rad.flow
    back: rad.return - hs.return
    vent: tv.branch - ov.connection
    feed: fc.feed - tf.branch
"""
DATA: dict[str, Data] = {
    "flow": {"size_mm": 28, "length_m": 3, "rise_m": 2.5},
    "gap": {"size_mm": 28, "length_m": 0.15, "rise_m": 0},
    "suck": {"size_mm": 22, "length_m": 0.3, "rise_m": 0},
    "push": {"size_mm": 22, "length_m": 5, "rise_m": -1},
    "back": {"size_mm": 22, "length_m": 5, "rise_m": -1.5},
    "vent": {"size_mm": 22, "length_m": 3, "rise_m": 2.5},
    "feed": {"size_mm": 15, "length_m": 2, "rise_m": -2},
}


def pumped_vented(
    more: str = "", *, without: str = "", data: Mapping[str, Data] | None = None, **parts: Part
) -> Drawing:
    """Fully pumped heating: heat source, vent's tee, feed's tee 150 mm on, pump, radiator.

    `more` adds pipes, and `without` leaves out those of these names; `data` and `parts` add to
    what is known of a pipe or part, or take its place.
    """
    gone = set(without.split())
    lines = [line for line in PIPES.splitlines() if line.partition(":")[0].strip() not in gone]
    known = {id: {**DATA.get(id, {}), **(data or {}).get(id, {})} for id in {**DATA, **(data or {})}}
    return made({**PARTS, **parts}, "\n".join([*lines, *more.splitlines()]), pipe_data=known)


def with_data(id: str, **data: Any) -> dict[str, Any]:
    """One of the usual parts with other data."""
    part = PARTS[id]
    kind, known = (part, {}) if isinstance(part, str) else part
    return {id: (kind, {**known, **data})}


STORE_PARTS: dict[str, Part] = {
    "sc": ("feed_cistern", {"content_l": 230, "water_level_m": 5.5, "serves": "hot_water"}),
    "iv": "isolating_valve",
    "st": ("vented_store", {"volume_l": 140}),
    "th": "tee",
    "sv": ("open_vent", {"over": "sc"}),
    "bath": ("outlet", {"fitting": "bath"}),
}
STORE_PIPES = """
    down: sc.feed - iv.a
    cold: iv.b - st.cold
    hot: st.hot - th.a
    up: th.b - sv.connection
    draw: th.branch - bath.hot
"""
STORE_DATA: dict[str, Data] = {
    id: {"size_mm": 22, "rise_m": rise}
    for id, rise in {"down": -1, "cold": -1.5, "hot": 0.5, "up": 3, "draw": -1}.items()
}


def vented_store(
    more: str = "", *, without: str = "", data: Mapping[str, Data] | None = None, **parts: Part
) -> Drawing:
    """A vented store under its storage cistern, a valve in its feed, a vent from its hot side, a bath."""
    gone = set(without.split())
    lines = [line for line in STORE_PIPES.splitlines() if line.partition(":")[0].strip() not in gone]
    known = {
        id: {**STORE_DATA.get(id, {}), **(data or {}).get(id, {})} for id in {**STORE_DATA, **(data or {})}
    }
    return made({**STORE_PARTS, **parts}, "\n".join([*lines, *more.splitlines()]), pipe_data=known)
