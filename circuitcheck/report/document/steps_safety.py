"""Steps of the commissioning sheet for what keeps people safe: valves, discharge, cut-outs, interlock."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.circuit.discharge import Discharge
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.expansion import safety_valve_set_bar
from circuitcheck.parts.kind import Role
from circuitcheck.report.document.asked_of import NOT_KNOWN, PRACTICE, Asked, joined
from circuitcheck.report.document.content import Step
from circuitcheck.report.wording import missing_words, shown

LIFT = "taught in trade textbooks; for how long: common practice, no source"
SEEN = "Approved Document G (England) 3.54 to 3.63; WFR guidance G19.3"
CUT_OUT = (
    "Approved Document G, guidance to G3 (paragraph from memory): the cut-out shuts off the heat to the store"
)
INTERLOCK = (
    "Approved Document L: with no call the appliance and the pump are off; City & Guilds Textbook: Plumbing, "
    "Book 1 (2019), interlock"
)


def safety(asked: Asked) -> Iterator[Step]:
    """Every safety and relief valve, its discharge, and every cut-out."""
    ends = _ends(asked)
    for place in asked.places(Role.RELIEVES_HEATING):
        bar = safety_valve_set_bar(asked.plant, place)
        if bar is None:
            asked.lacking[missing_words(asked.drawing, f"{place.part}.set_pressure_bar")] = None
        yield Step(
            f"{asked.name(place.part)}: lifted by hand, closes again",
            joined((f"set at {shown(bar)} bar" if bar is not None else NOT_KNOWN, ends.get(place.part, ""))),
            LIFT,
        )
    for place in asked.places(Role.RELIEVES_STORE):
        yield Step(
            f"{asked.name(place.part)}: lifted by hand for 20 to 30 seconds, closes again",
            joined((_set_at(asked, place), ends.get(place.part, ""))),
            LIFT,
        )
    for place in asked.places(Role.SHOWS_DISCHARGE):
        yield Step(
            f"{asked.name(place.part)}: takes the whole discharge, nothing splashes over, in sight",
            "runs away freely to the end",
            SEEN,
        )
    for place in asked.places(Role.ENDS_DISCHARGE):
        yield Step(
            f"{asked.name(place.part)}: end seen, no one can be scalded there", "clear of people", SEEN
        )
    yield from _cut_outs(asked)


def _set_at(asked: Asked, place: Placed) -> str:
    """What a store's relief valve is set at, as far as its fields tell."""
    own = {field.name for field in asked.drawing.components[place.part].kind.own_fields}
    said = []
    for field, unit in (
        ("set_pressure_bar", "bar"),
        ("relief_pressure_bar", "bar"),
        ("set_temperature_c", "°C"),
    ):
        reduces = field == "set_pressure_bar" and "relief_pressure_bar" in own
        if field in own and not reduces:
            value = asked.number(place.part, field)
            said.append(NOT_KNOWN if value is None else f"{shown(value)} {unit}")
    return f"set at {', '.join(said)}" if said else "set as the store’s maker states"


def _ends(asked: Asked) -> dict[str, str]:
    """Where each valve's discharge is to be seen."""
    try:
        discharges = asked.plant.discharges
    except TooLargeError:
        return {}
    return {each.valve.part: _seen_at(asked, each) for each in discharges}


def _seen_at(asked: Asked, discharge: Discharge) -> str:
    if not discharge.runs:
        return "its discharge reaches no end in this drawing"
    run = discharge.runs[0]
    shown_at = "" if run.tundish is None else f"{asked.name(run.steps[run.tundish].part)} and at "
    return f"water seen at {shown_at}{asked.drawing.name(run.end)}"


def _cut_outs(asked: Asked) -> Iterator[Step]:
    for place in asked.places(Role.STORES_AT_MAINS_PRESSURE):
        valve = asked.plant.value(place.part, "energy_cut_out")
        coil = any(each.part == place.part for each in asked.plant.circuit.devices(Role.HEATED_BY_COIL))
        if coil:
            expect = (
                f"{asked.name(valve)} shuts and stays shut until the cut-out is reset by hand"
                if valve in asked.drawing.components
                else "the drawing names no valve that it shuts"
            )
            yield Step(
                f"{asked.name(place.part)}: energy cut-out operated while the coil is called", expect, CUT_OUT
            )
        if asked.plant.value(place.part, "immersion_kw"):
            yield Step(
                f"{asked.name(place.part)}: immersion heater’s own cut-out operated",
                "no current until it is reset by hand; by a qualified electrician",
                CUT_OUT,
            )


def controls(asked: Asked) -> Iterator[Step]:
    """What the controls must do, one at a time, and the interlock of all of them."""
    drawing = asked.drawing
    for control in drawing.controls.values():
        acts = [asked.name(id) for id in control.acts_on if id in drawing.components]
        if not acts:
            continue
        name = asked.name(control.id)
        at = f" at {shown(control.set_c)} °C" if control.set_c is not None else ""
        yield Step(
            f"{name}: calls, then is satisfied{at}",
            f"{', '.join(acts)} open and close with it",
            PRACTICE,
            "°C" if control.set_c is not None else "",
        )
    for place in asked.places(Role.HEATS):
        if asked.plant.value(place.part, "heat") == "uncontrolled":
            continue
        minutes = asked.number(place.part, "pump_overrun_min")
        run_on = "" if minutes is None else f"after at most {shown(minutes)} minutes the pump stops as well"
        yield Step(
            f"{asked.name(place.part)}: every thermostat satisfied, heads on radiators left open",
            joined(("the heat source goes off", run_on)),
            INTERLOCK,
        )
    for valve in (*asked.plant.situations.two_port, *asked.plant.situations.three_port):
        rest = asked.plant.value(valve, "rest")
        said = "rest" if rest is None else str(rest)
        words = {"shut": "shuts", "open": "opens", "stays": "stays as it stands", "rest": NOT_KNOWN}
        expect = words.get(said, f"stands open to {said}")
        yield Step(f"{asked.name(valve)}: supply taken away", expect, "as drawn; the maker’s data come first")
