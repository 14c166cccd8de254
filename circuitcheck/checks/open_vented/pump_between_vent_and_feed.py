"""A pump between open vent and cold feed.

Flags: Open-vented heating in which every way from the feed's tee to the vent's that passes no
    emitter, coil or exchanger leads through a pump, built-in pumps too.
Why: The feed's tee is where the pump leaves the pressure as it is. With the pump between, its whole
    head stands between feed and vent: water is pumped over into the cistern without end, or air is
    drawn in through the vent. Either way fresh air gets into the water and the circuit rusts away.
Remedy: Put the pump after both, so that water passes the vent's tee, the feed's tee and then the pump.
Source: BS 5449 (as taught in trade textbooks): pump after vent and feed on the flow.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.venting import vents_and_feeds
from circuitcheck.checks.venting_cures import rejoined
from circuitcheck.checks.wording import named, upper
from circuitcheck.finding import Finding, Grade, Says

NAME = "pump-between-vent-and-feed"


def judge(case: Case) -> Verdict:
    """One fault for each vent that only a way through a pump joins to its feed."""
    findings, sound = [], 0
    for pair in vents_and_feeds(case):
        if not pair.pumps_between:
            sound += 1
            continue
        pumps = tuple(dict.fromkeys(step.start.part for step in pair.pumps_between))
        says = Says(
            "{pumps} stands between {vent} and the feed of {feed}: it pumps water over, or draws air in.",
            {
                "pumps": upper(named(case.drawing, pumps)),
                "vent": case.drawing.name(pair.vent.part),
                "feed": case.drawing.name(pair.feed.part),
            },
        )
        components = tuple(dict.fromkeys((*pumps, pair.vent.part, pair.feed.part)))
        findings.append(Finding(NAME, Grade.FAULT, says, components))
    return Verdict(tuple(findings), sound)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The feed joined right beside the vent, which leaves the pump to one side of both."""
    for pair in vents_and_feeds(case):
        if (pair.vent.part, pair.feed.part) != finding.components[-2:]:
            continue
        says = Says(
            "Join the feed of {feed} to the circuit right beside {vent}.",
            {"feed": case.drawing.name(pair.feed.part), "vent": case.drawing.name(pair.vent.part)},
        )
        for after in rejoined(case, pair.feed_tap, pair.vent_tap):
            yield Proposal(says, after)
