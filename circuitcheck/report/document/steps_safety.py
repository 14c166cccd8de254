"""Steps of the commissioning sheet for what keeps people safe: valves, discharge, cut-outs, interlock."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.circuit.discharge import Discharge
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.expansion import safety_valve_set_bar
from circuitcheck.parts.kind import Role
from circuitcheck.report.document.asked_of import NOT_KNOWN, PRACTICE, Asked, joined, with_unit
from circuitcheck.report.document.content import Step
from circuitcheck.report.wording import missing_words, shown
from circuitcheck.told import a_word, strung, told_number, worded

LIFT = a_word("taught in trade textbooks; for how long: common practice, no source")
SEEN = a_word("Approved Document G (England) 3.54 to 3.63; WFR guidance G19.3")
CUT_OUT = a_word(
    "Approved Document G, guidance to G3 (paragraph from memory): the cut-out shuts off the heat to the store"
)
INTERLOCK = a_word(
    "Approved Document L: with no call the appliance and the pump are off; City & Guilds Textbook: Plumbing, "
    "Book 1 (2019), interlock"
)
AT_REST = {
    "shut": a_word("shuts"),
    "open": a_word("opens"),
    "stays": a_word("stays as it stands"),
    "rest": NOT_KNOWN,
}
"""What a motor valve does without current, by how it rests."""


def safety(asked: Asked) -> Iterator[Step]:
    """Every safety and relief valve, its discharge, and every cut-out."""
    ends = _ends(asked)
    for place in asked.places(Role.RELIEVES_HEATING):
        bar = safety_valve_set_bar(asked.plant, place)
        if bar is None:
            asked.lacking[missing_words(asked.drawing, f"{place.part}.set_pressure_bar")] = None
        yield Step(
            worded("{part}: lifted by hand, closes again", part=asked.name(place.part)),
            joined(
                (_set_to(with_unit(bar, "bar")) if bar is not None else NOT_KNOWN, ends.get(place.part, ""))
            ),
            LIFT,
        )
    for place in asked.places(Role.RELIEVES_STORE):
        yield Step(
            worded("{part}: lifted by hand for 20 to 30 seconds, closes again", part=asked.name(place.part)),
            joined((_set_at(asked, place), ends.get(place.part, ""))),
            LIFT,
        )
    for place in asked.places(Role.SHOWS_DISCHARGE):
        yield Step(
            worded(
                "{part}: takes the whole discharge, nothing splashes over, in sight",
                part=asked.name(place.part),
            ),
            a_word("runs away freely to the end"),
            SEEN,
        )
    for place in asked.places(Role.ENDS_DISCHARGE):
        what = worded("{part}: end seen, no one can be scalded there", part=asked.name(place.part))
        yield Step(what, a_word("clear of people"), SEEN)
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
            said.append(NOT_KNOWN if value is None else with_unit(value, unit))
    return _set_to(strung(said)) if said else a_word("set as the store’s maker states")


def _set_to(value: str) -> str:
    return worded("set at {value}", value=value)


def _ends(asked: Asked) -> dict[str, str]:
    """Where each valve's discharge is to be seen."""
    try:
        discharges = asked.plant.discharges
    except TooLargeError:
        return {}
    return {each.valve.part: _seen_at(asked, each) for each in discharges}


def _seen_at(asked: Asked, discharge: Discharge) -> str:
    if not discharge.runs:
        return a_word("its discharge reaches no end in this drawing")
    run = discharge.runs[0]
    end = asked.drawing.name(run.end)
    if run.tundish is None:
        return worded("water seen at {end}", end=end)
    tundish = asked.name(run.steps[run.tundish].part)
    return worded("water seen at {tundish} and at {end}", tundish=tundish, end=end)


def _cut_outs(asked: Asked) -> Iterator[Step]:
    for place in asked.places(Role.STORES_AT_MAINS_PRESSURE):
        valve = asked.plant.value(place.part, "energy_cut_out")
        coil = any(each.part == place.part for each in asked.plant.circuit.devices(Role.HEATED_BY_COIL))
        if coil:
            expect = (
                worded(
                    "{valve} shuts and stays shut until the cut-out is reset by hand", valve=asked.name(valve)
                )
                if valve in asked.drawing.components
                else a_word("the drawing names no valve that it shuts")
            )
            what = worded(
                "{part}: energy cut-out operated while the coil is called", part=asked.name(place.part)
            )
            yield Step(what, expect, CUT_OUT)
        if asked.plant.value(place.part, "immersion_kw"):
            yield Step(
                worded("{part}: immersion heater’s own cut-out operated", part=asked.name(place.part)),
                a_word("no current until it is reset by hand; by a qualified electrician"),
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
        what = (
            worded("{control}: calls, then is satisfied", control=name)
            if control.set_c is None
            else worded(
                "{control}: calls, then is satisfied at {value}",
                control=name,
                value=with_unit(control.set_c, "°C"),
            )
        )
        yield Step(
            what,
            worded("{parts} open and close with it", parts=strung(acts)),
            PRACTICE,
            "°C" if control.set_c is not None else "",
        )
    for place in asked.places(Role.HEATS):
        if asked.plant.value(place.part, "heat") == "uncontrolled":
            continue
        minutes = asked.number(place.part, "pump_overrun_min")
        run_on = (
            ""
            if minutes is None
            else worded(
                "after at most {minutes} minutes the pump stops as well", minutes=told_number(shown(minutes))
            )
        )
        yield Step(
            worded(
                "{part}: every thermostat satisfied, heads on radiators left open",
                part=asked.name(place.part),
            ),
            joined((a_word("the heat source goes off"), run_on)),
            INTERLOCK,
        )
    for valve in (*asked.plant.situations.two_port, *asked.plant.situations.three_port):
        rest = asked.plant.value(valve, "rest")
        said = "rest" if rest is None else str(rest)
        expect = AT_REST.get(said, worded("stands open to {leg}", leg=said))
        what = worded("{valve}: supply taken away", valve=asked.name(valve))
        yield Step(what, expect, a_word("as drawn; the maker’s data come first"))
