"""A mains-fed store as it should be, for tests that spoil one thing of it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import way
from tests.made import Part, made

STORE: Mapping[str, Any] = {
    "volume_l": 200,
    "maximum_pressure_bar": 8,
    "thermostat_c": 60,
    "energy_cut_out": "zv",
    "immersion_kw": 3,
    "immersion_cut_out": True,
    "coil_maximum_pressure_bar": 10,
}
PARTS: Mapping[str, Part] = {
    "cm": ("cold_main", {"standing_pressure_bar": 4}),
    "rv": ("pressure_reducing_valve", {"set_pressure_bar": 3}),
    "cv": "check_valve",
    "ev": ("expansion_vessel", {"volume_l": 24, "precharge_bar": 3}),
    "er": ("expansion_relief_valve", {"set_pressure_bar": 6}),
    "tr": ("temperature_relief_valve", {"set_pressure_bar": 7}),
    "us": ("unvented_store", STORE),
    "ou": "outlet",
    "hs": ("heat_source", {"high_limit": "hand_reset"}),
    "pu": "pump",
    "zv": "zone_valve",
    "sv": "safety_valve",
    "hv": "expansion_vessel",
    **{f"t{number}": "tee" for number in range(1, 12)},
}
COLD = "cm.outlet rv.in:out cv.in:out t1.a:b t2.a:b us.cold"
VESSEL = "t1.branch ev.connection"
EXPANSION = "t2.branch er.inlet"
TEMPERATURE = "us.relief tr.inlet"
HOT = "us.hot ou.hot"
HEAT = "hs.flow t3.a:b pu.in:out zv.in:out us.coil_flow:coil_return t4.a:b hs.return"
SAFETY = "t3.branch sv.inlet"
HEATING_VESSEL = "t4.branch hv.connection"
PIPE: Mapping[str, Any] = {"size_mm": 22, "length_m": 1}
"""What every pipe is, unless told otherwise."""
CONTROLS = {"st": ("store_thermostat", ("zv",))}


def store(**data: Any) -> Part:
    """The store with some of its data otherwise."""
    return ("unvented_store", {**STORE, **data})


def without(*fields: str) -> Part:
    """The store with some of its data left out."""
    return ("unvented_store", {name: value for name, value in STORE.items() if name not in fields})


def fed(
    *ways: str,
    cold: str = COLD,
    vessel: str = VESSEL,
    expansion: str = EXPANSION,
    temperature: str = TEMPERATURE,
    hot: str = HOT,
    heat: str = HEAT,
    safety: str = SAFETY,
    heating_vessel: str = HEATING_VESSEL,
    controls: Mapping[str, tuple[str, tuple[str, ...]]] | None = None,
    design: Mapping[str, Any] | None = None,
    pipe: Mapping[str, Any] | None = None,
    **parts: Part,
) -> Drawing:
    """The store with the parts that its ways name, each way as told or left out where empty."""
    text = way(cold, vessel, expansion, temperature, hot, heat, safety, heating_vessel, *ways)
    used = {id: part for id, part in PARTS.items() if f"{id}." in text}
    return made(
        {**used, **parts},
        text,
        controls=CONTROLS if controls is None and "zv" in used else controls or {},
        design={"fill_temperature_c": 10} if design is None else design,
        pipe_data=dict.fromkeys([f"p{n}" for n in range(1, 60)], PIPE if pipe is None else pipe),
    )


GROUP: Part = ("inlet_group", {"set_pressure_bar": 3, "relief_pressure_bar": 6})
IMMERSION_ONLY: Mapping[str, Any] = {"heat": "", "safety": "", "heating_vessel": ""}

SOUND: dict[str, Drawing] = {
    "with separate parts": fed(),
    "with an inlet group": fed(cold="cm.outlet ig.in:out t1.a:b us.cold", expansion="", ig=GROUP),
    "with a stop valve before all of it": fed(
        cold="cm.outlet iv.a:b rv.in:out cv.in:out t1.a:b t2.a:b us.cold", iv="isolating_valve"
    ),
    "with balanced cold": fed(
        "t5.branch ou.cold", cold="cm.outlet rv.in:out t5.a:b cv.in:out t1.a:b t2.a:b us.cold"
    ),
    "heated by the immersion alone": fed(**IMMERSION_ONLY, us=without("energy_cut_out")),
    "with internal expansion": fed(vessel="", cold=COLD.replace(" t1.a:b", ""), us=store(internal_expansion=True)),
    "with its relief valves built in": fed(
        vessel="",
        expansion="",
        temperature="",
        cold="cm.outlet rv.in:out cv.in:out us.cold",
        us=store(built_in=["temperature_relief", "expansion_relief"], internal_expansion=True),
    ),
    "with a secondary return": fed(
        "t6.branch p2.in:out c2.in:out us.secondary_return",
        hot="us.hot t6.a:b ou.hot",
        p2="pump",
        c2="check_valve",
        ev=("expansion_vessel", {"volume_l": 100, "precharge_bar": 3}),
    ),
    "beside a heating zone": fed(
        "t7.branch z2.in:out rad.flow:return t8.branch",
        heat="hs.flow t3.a:b pu.in:out t7.a:b zv.in:out us.coil_flow:coil_return t8.a:b t4.a:b hs.return",
        z2="zone_valve",
        rad="radiator",
    ),
    "two stores on one feed": fed(
        "t5.branch u2.cold",
        "u2.relief r2.inlet",
        "u2.hot o2.hot",
        cold="cm.outlet rv.in:out cv.in:out t1.a:b t2.a:b t5.a:b us.cold",
        u2=without("energy_cut_out"),
        r2=("temperature_relief_valve", {"set_pressure_bar": 7}),
        o2="outlet",
        ev=("expansion_vessel", {"volume_l": 35, "precharge_bar": 3}),
    ),
    "two stores, each with its own inlet": fed(
        "t5.branch ig.in:out t6.a:b u2.cold",
        "t6.branch e2.connection",
        "u2.relief r2.inlet",
        "u2.hot o2.hot",
        cold="cm.outlet t5.a:b rv.in:out cv.in:out t1.a:b t2.a:b us.cold",
        ig=GROUP,
        u2=without("energy_cut_out"),
        r2=("temperature_relief_valve", {"set_pressure_bar": 7}),
        e2=("expansion_vessel", {"volume_l": 24, "precharge_bar": 3}),
        o2="outlet",
    ),
}  # fmt: skip
