"""What the tests of a drawing at work share: samples operated, and a small circuit made from a few words."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from functools import cache
from typing import Any

from circuitcheck.drawing.value import Drawing
from circuitcheck.operating.positions import Positions, named
from circuitcheck.operating.running import Model, Run
from circuitcheck.operating.standing import Operated
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.made import made

SAMPLES = tuple(sorted(path.stem for path in data_path("samples").glob("*.wetcircuit")))


@cache
def sample(name: str) -> Drawing:
    """A drawing that ships."""
    return read(data_path("samples") / f"{name}.wetcircuit")


@cache
def operated(name: str) -> Operated:
    """A drawing that ships, to be put into positions."""
    return Operated(sample(name))


def situation(at_work: Operated, name: str) -> Positions:
    """One of its situations."""
    found = named(at_work.situations, name)
    assert found is not None
    return found


def designed(drawing: Drawing, **design: Any) -> Drawing:
    """The same with other numbers in its design."""
    return replace(drawing, design={**drawing.design, **design})


def running(name: str, at: str | Positions, **changes: Any) -> tuple[Model, Run]:
    """A sample at work from the beginning of a situation."""
    at_work = operated(name)
    positions = situation(at_work, at) if isinstance(at, str) else at
    model = Model(at_work.plant)
    state = model.cold() if positions.firing else model.hot(positions)
    return model, Run(model, positions, at_work.standing(positions).flows.pipes, state, **changes)


DESIGN = {
    "flow_temperature_c": 75,
    "return_temperature_c": 60,
    "fill_temperature_c": 10,
    "fill_pressure_bar": 1.0,
    "static_height_m": 3.0,
}


def ring(
    source: Mapping[str, Any] | None = None,
    vessel: Mapping[str, Any] | None = None,
    radiator: Mapping[str, Any] | None = None,
    design: Mapping[str, Any] | None = None,
) -> Drawing:
    """A heat source, its pump and one radiator in a ring, with valves that part the source from its vessel and
    from the radiator: `iv_flow` and `iv_return`."""
    parts: dict[str, Any] = {
        "hs": (
            "heat_source",
            {"output_kw": 12, "water_content_l": 3, "high_limit": "hand_reset", **(source or {})},
        ),
        "t_sv": "tee",
        "sv": ("safety_valve", {"set_pressure_bar": 3}),
        "out": "discharge_end",
        "iv_flow": "isolating_valve",
        "pump": ("pump", {"isolating_valves": False, "shut_off_head_m": 5, "maximum_flow_lpm": 40}),
        "rad": (
            "radiator",
            {
                "output_w": 6000,
                "water_content_l": 20,
                "thermostatic": False,
                "valves": False,
                **(radiator or {}),
            },
        ),
        "t_vessel": "tee",
        "vessel": ("expansion_vessel", {"volume_l": 12, "precharge_bar": 0.8, **(vessel or {})}),
        "iv_return": "isolating_valve",
    }
    pipes = """
        p_flow: hs.flow - t_sv.a
        p_sv: t_sv.branch - sv.inlet
        p_out: sv.outlet - out.inlet
        p_valve: t_sv.b - iv_flow.a
        p_pump: iv_flow.b - pump.in
        p_rad: pump.out - rad.flow
        p_back: rad.return - t_vessel.a
        p_vessel: t_vessel.branch - vessel.connection
        p_last: t_vessel.b - iv_return.a
        p_return: iv_return.b - hs.return
    """
    data = {"size_mm": 22, "length_m": 4, "bends": 2}
    ids = [line.split(":")[0].strip() for line in pipes.strip().splitlines()]
    return made(parts, pipes, design={**DESIGN, **(design or {})}, pipe_data=dict.fromkeys(ids, data))
