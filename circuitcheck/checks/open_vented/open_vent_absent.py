"""Open-vented heating has no open vent.

Flags: A circuit fed from a cistern whose heated water reaches no open vent. Where the heat source's
    data say that feed and vent may be one pipe, that pipe counts as both.
Why: The vent is the way out for steam, air and swelling water when a thermostat fails. Without it a
    fed circuit is neither vented nor protected as a sealed one is: boiling water has only the cold
    feed to push back through.
Remedy: Run an open vent of at least 22 mm from the flow near the heat source, rising all the way
    and ending over the feed cistern, with no valve in it.
Source: BS 5449 and BS EN 12828 with its national annex (as taught in trade textbooks).
"""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.cutting_off import HeatedWater, heated_waters, judge_absent
from circuitcheck.checks.wording import upper
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "open-vent-absent"


def judge(case: Case) -> Verdict:
    """One danger for each open-vented body of heated water without a vent."""
    waters = [water for water in heated_waters(case) if water.is_open_vented]
    judged = judge_absent(
        case,
        NAME,
        [water for water in waters if not water.may_be_combined],
        Role.VENTS,
        lambda water: water.vents,
        "{thing} is fed from a cistern but has no open vent: steam and swelling water have no way out.",
        "{thing} is fed from a cistern but has no open vent it can always use: {device} lies beyond "
        "{blocker}.",
    )
    unknown = tuple(_unknown(case, water) for water in waters if water.may_be_combined)
    return Verdict((*judged.findings, *unknown), judged.sound)


def _unknown(case: Case, water: HeatedWater) -> Finding:
    missing = f"{water.heated.part}.combined_feed_and_vent"
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            "{thing} is fed from a cistern and has no open vent; whether its feed may be its vent too is "
            "not known: {missing}.",
            {"thing": upper(case.drawing.name(water.heated.part)), "missing": missing},
        ),
        components=(water.heated.part,),
        missing=(missing,),
        would_be=Grade.DANGER,
    )
