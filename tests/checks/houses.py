"""Small plants that the tests of the checks start from, each sound in what its tests change."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import way
from tests.made import Part, made

TIGHT_PUMP: Part = ("pump", {"isolating_valves": False})
OPEN_RADIATOR: Part = ("radiator", {"thermostatic": False, "valves": False})
SECURED: Part = ("isolating_valve", {"secured": True})


def sealed(
    *ways: str,
    vessel: str = "t2.branch ev.connection",
    safety: str = "t1.branch sv.inlet",
    ring: str = "hs.flow t1.a:b rad.flow:return t2.a:b hs.return",
    **parts: Part,
) -> Drawing:
    """A heat source, a radiator with a thermostatic head, a vessel by the return, a safety valve by
    the flow. `vessel`, `safety` and `ring` tell how each is joined; an empty one leaves it out."""
    usual: dict[str, Part] = {"hs": "heat_source", "t1": "tee", "t2": "tee", "rad": "radiator"}
    usual |= {"ev": "expansion_vessel"} if "ev." in " ".join((vessel, *ways)) else {}
    usual |= {"sv": "safety_valve"} if "sv." in " ".join((safety, *ways)) else {}
    return made({**usual, **parts}, way(ring, vessel, safety, *ways))


def vented(
    *ways: str,
    vent: str = "t1.branch ov.connection",
    feed: str = "fc.feed t2.branch",
    ring: str = "hs.flow t1.a:b rad.flow:return t2.a:b hs.return",
    **parts: Part,
) -> Drawing:
    """A heat source under a feed cistern, with an open vent from its flow and a feed to its return."""
    usual: dict[str, Part] = {"hs": "heat_source", "t1": "tee", "t2": "tee", "rad": "radiator"}
    usual |= {"ov": "open_vent"} if "ov." in " ".join((vent, *ways)) else {}
    usual |= {"fc": "feed_cistern"} if "fc." in " ".join((vent, feed, *ways)) else {}
    return made({**usual, **parts}, way(ring, vent, feed, *ways))


def pumped(
    *ways: str,
    design: Mapping[str, Any] | None = None,
    controls: Mapping[str, tuple[str, tuple[str, ...]]] | None = None,
    **parts: Part,
) -> Drawing:
    """A pumped plant by its ways; `hs` and `pu` are a heat source and a pump unless told otherwise."""
    text = way(*ways)
    usual: dict[str, Part] = {"hs": "heat_source", "pu": "pump"}
    usual |= dict.fromkeys(_tees(text), "tee")
    return made(
        {**{id: kind for id, kind in usual.items() if f"{id}." in text}, **parts},
        text,
        design=design,
        controls=controls,
    )


def _tees(text: str) -> list[str]:
    """The parts called t and a number, which are tees."""
    names = dict.fromkeys(word.partition(".")[0] for word in text.split() if "." in word)
    return [name for name in names if name[:1] == "t" and name[1:].isdigit()]


def store_discharge(
    before: tuple[Mapping[str, Any], ...] = ({"size_mm": 15, "length_m": 0.5, "bends": 0},),
    after: tuple[Mapping[str, Any], ...] = ({"size_mm": 22, "length_m": 5, "bends": 2},),
    *,
    store: Mapping[str, Any] | None = None,
    valve: Mapping[str, Any] | None = None,
) -> Drawing:
    """A mains-fed store with a temperature relief valve, a tundish and a discharge end.

    `before` and `after` hold the data of the pipes before and after the tundish, which couplings
    join: they are called b1, b2, ... and a1, a2, ...
    """
    parts: dict[str, Part] = {
        "us": ("unvented_store", {"volume_l": 200, **(store or {})}),
        "tr": ("temperature_relief_valve", {**(valve or {})}),
        "tu": "tundish",
        "de": "discharge_end",
    }
    lines = ["us.relief - tr.inlet"]
    data: dict[str, Mapping[str, Any]] = {}
    for mark, pieces, start, finish in (
        ("b", before, "tr.outlet", "tu.inlet"),
        ("a", after, "tu.outlet", "de.inlet"),
    ):
        here = start
        for number, piece in enumerate(pieces, start=1):
            last = number == len(pieces)
            coupling = f"{mark}x{number}"
            if not last:
                parts[coupling] = "strainer"
            lines.append(f"{mark}{number}: {here} - {finish if last else f'{coupling}.in'}")
            data[f"{mark}{number}"] = piece
            here = f"{coupling}.out"
    return made(parts, "\n".join(lines), pipe_data=data)
