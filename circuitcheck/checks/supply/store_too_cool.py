"""A hot water store is kept too cool.

Flags: A store whose thermostat is set below 60 °C, by its own data or by the store thermostat that
    stops its coil; of several settings the lowest counts. Exactly 60 °C passes.
Why: Legionella, which kills by the lungs, grows in water from 20 to 45 °C, and does not die quickly
    until nearly 60 °C. A store that is always lukewarm breeds it, and a shower makes a mist of it.
Remedy: Set the store's thermostat to 60 °C, and blend the water down where it is drawn.
Source: WFR guidance G18.2; HSG274 part 2; ACOP L8.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.supplying import StoredHeat, supplies
from circuitcheck.checks.wording import figure, upper
from circuitcheck.drawing.edits import set_field
from circuitcheck.finding import Finding, Grade, Says

NAME = "store-too-cool"


def judge(case: Case) -> Verdict:
    """One piece of advice for each store whose thermostat is set too low."""
    findings, sound = [], 0
    stores = supplies(case).stores
    heat = StoredHeat(case)
    for store in stores:
        least = case.limit("supply.store_least_c").value
        settings = heat.thermostats_c(store)
        known = [value for value in settings if value is not None]
        if known and min(known) < least:
            findings.append(_finding(case, store, min(known), least))
        elif len(known) < len(settings):
            findings.append(_unknown(case, store))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def _finding(case: Case, store: str, setting: float, least: float) -> Finding:
    return Finding(
        NAME,
        Grade.ADVICE,
        Says(
            "{thing} is kept at {setting} °C: below {least} °C legionella can live in it.",
            {
                "thing": upper(case.drawing.name(store)),
                "setting": figure(setting),
                "least": figure(least),
            },
        ),
        components=(store,),
        numbers={"setting_c": setting, "least_c": float(least)},
    )


def _unknown(case: Case, store: str) -> Finding:
    field = f"{store}.thermostat_c"
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            "Whether {thing} is kept hot enough against legionella is not known: {missing}.",
            {"thing": case.drawing.name(store), "missing": field},
        ),
        components=(store,),
        missing=(field,),
        would_be=Grade.ADVICE,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Set every thermostat of the store to the least temperature."""
    store = finding.components[0]
    least = float(case.limit("supply.store_least_c").value)
    after = case.drawing
    if (case.value(store, "thermostat_c") or 0) < least:
        after = set_field(after, store, "thermostat_c", least)
    for control in StoredHeat(case).controls(store):
        if control.set_c is not None and control.set_c < least:
            after = set_field(after, control.id, "set_c", least)
    says = Says(
        "Set the thermostat of {thing} to {least} °C.",
        {"thing": case.drawing.name(store), "least": figure(least)},
    )
    yield Proposal(says, after)
