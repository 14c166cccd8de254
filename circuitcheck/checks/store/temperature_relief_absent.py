"""Store has no temperature relief valve.

Flags: A mains-fed store of more than 15 litres that reaches no temperature relief valve of its own
    by a way pressure can always take with the valves open, and has none built in. A check valve or a
    reducing valve on the only way does not count as one. A valve that stands on another store's relief
    port feels that store's heat and not this one's.
Why: If thermostat and cut-out both fail, the water goes on heating. At mains pressure it passes 100 °C
    without boiling, and the moment the store gives, all of it flashes to steam: that is an explosion.
    The temperature relief valve lets the hot water go before that, and it needs no electricity.
Remedy: Fit a temperature relief valve on the store's relief port, in its hottest water, with nothing
    between, and lead its discharge through a tundish to a safe place.
Source: Approved Document G, 3.18 (paragraph from memory), water stored above 100 °C is to be prevented
    by such a device; BS EN 1490, temperature relief valves.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.store_cures import with_temperature_relief
from circuitcheck.checks.store_water import StoreWater, above_exempt, judge_absent
from circuitcheck.finding import Finding
from circuitcheck.parts.kind import Role

NAME = "temperature-relief-absent"


def judge(case: Case) -> Verdict:
    """One danger for each store without a temperature relief valve of its own."""
    return judge_absent(
        case,
        NAME,
        Role.RELIEVES_BY_TEMPERATURE,
        lambda water: water.temperature_reliefs,
        "{thing} has no temperature relief valve: nothing lets its water out before it can boil.",
        "{thing} has no temperature relief valve that its pressure always reaches: {device} lies beyond "
        "{blocker}, which does not let pressure through both ways.",
        lambda water: _small(case, water),
    )


def _small(case: Case, water: StoreWater) -> tuple[bool, tuple[str, ...]]:
    above = above_exempt(case, water.store)
    return above is False, (f"{water.store}.volume_l",) if above is None else ()


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A temperature relief valve on the store's relief port."""
    yield from with_temperature_relief(case, finding.components[0])
