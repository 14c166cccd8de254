"""Heat that nothing can stop goes into a mains-fed store.

Flags: A heat source whose heat is uncontrolled, such as a solid-fuel fire, on the water of the coil of a
    mains-fed store, or behind a heat exchanger before it.
Why: Every guard of a mains-fed store works by stopping the heat. A fire that goes on burning when it is
    called off cannot be stopped, so sooner or later the store boils at mains pressure. Water that has
    nowhere to go needs an open vent, which a mains-fed store does not have.
Remedy: Heat a vented store with it instead, or a thermal store open to the air whose heat reaches the
    mains-fed water through an exchanger only.
Source: Approved Document G, guidance to G3 (paragraph from memory): unvented stores are not for heat
    without automatic control; common practice for solid fuel.
"""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.store_water import unanswered
from circuitcheck.checks.wording import named, upper
from circuitcheck.figures.heat_nets import heats_coil
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "uncontrolled-heat-into-store"


def judge(case: Case) -> Verdict:
    """One danger for each mains-fed store that uncontrolled heat reaches."""
    findings, sound = [], 0
    for place in case.circuit.devices(Role.STORES_AT_MAINS_PRESSURE):
        sources = heats_coil(case, place.part)
        if not sources:
            continue
        heat = {source: case.value(source, "heat") for source in sources}
        wild = tuple(source for source in sources if heat[source] == "uncontrolled")
        unknown = tuple(source for source in sources if heat[source] is None)
        if wild:
            says = Says(
                "{thing} is heated by {sources}, whose heat nothing can stop.",
                {"thing": upper(case.drawing.name(place.part)), "sources": named(case.drawing, wild)},
            )
            findings.append(Finding(NAME, Grade.DANGER, says, (place.part, *wild)))
        elif unknown:
            template = "{thing}: whether its heat can be stopped rests on what is not known: {missing}."
            missing = [f"{source}.heat" for source in unknown]
            parts = (place.part, *unknown)
            findings.append(unanswered(case, NAME, template, parts, missing, Grade.DANGER))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)
