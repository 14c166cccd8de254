"""Store has no expansion relief valve.

Flags: A mains-fed store whose water reaches no expansion relief valve by a way pressure can always
    take with the valves open, and that has none built in. A check valve or a reducing valve on the only
    way does not count as one. The valve inside an inlet group counts.
Why: The check valve at the inlet shuts the swelling water in with the store. When the vessel has lost
    its charge, or the reducing valve lets by, pressure climbs at every heating. The expansion relief
    valve lets that little water go on the cold side, long before the store itself is in danger.
Remedy: Fit an expansion relief valve, or an inlet group, on the cold feed between the check valve and
    the store, with nothing between it and the store.
Source: Approved Document G, guidance to G3 (paragraph from memory); WFR guidance G19; BS EN 1491.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.store_cures import with_expansion_relief
from circuitcheck.checks.store_water import judge_absent
from circuitcheck.finding import Finding
from circuitcheck.parts.kind import Role

NAME = "expansion-relief-absent"


def judge(case: Case) -> Verdict:
    """One danger for each store without an expansion relief valve."""
    return judge_absent(
        case,
        NAME,
        Role.RELIEVES_BY_PRESSURE,
        lambda water: water.reached(Role.RELIEVES_BY_PRESSURE),
        "{thing} has no expansion relief valve: nothing limits the pressure when its water swells.",
        "{thing} has no expansion relief valve that its pressure always reaches: {device} lies beyond "
        "{blocker}, which does not let pressure through both ways.",
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """An expansion relief valve teed off right at the store's cold port."""
    yield from with_expansion_relief(case, finding.components[0])
