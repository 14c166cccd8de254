"""A pump can push water out of the open vent, or draw air in.

Flags: In pumped, open-vented heating: a vent no higher above the cistern's water than the head of the
    pump between the feed's tee and the vent's; a pump that sucks on the vent's tee, or stands so that
    it sucks on the emitters (vent and feed on its delivery side), with more head than the water that
    stands above; and a vent that ends lower above the water than pumped heating (450 mm), or gravity
    hot water beside it (40 mm a metre and 150 mm), needs.
Why: Pressure is fixed where the feed joins. Whatever a pump adds at the vent lifts the water in it by
    so much, and what it takes away lowers it. Water that runs over into the cistern is heated and
    aired for nothing, air that is drawn in stops radiators and rusts the circuit from within.
Remedy: Let the water pass the vent's tee, close by it the feed's, and then the pump; end the vent
    high enough above the water; or raise the cistern.
Source: Hydrostatics; BS 5449 (450 mm; as taught in trade textbooks); WFR guidance to Schedule 2,
    G20.3 (0.04 H + 0.15 m). The pump is taken at its shut-off head, the most it can put there.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.venting import (
    VentAndFeed,
    height_above_water_m,
    is_cistern,
    pumps_before_feed,
    turns_by_gravity,
    vents_and_feeds,
)
from circuitcheck.checks.venting_cures import rejoined
from circuitcheck.checks.wording import figure, named, upper
from circuitcheck.drawing.edits import set_field
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.sizing.open_vent import draws_air, least_height_by_gravity_m, pumps_over

NAME = "pump-over-or-draws-air"

_ROUNDING_M = 1e-9


@dataclass
class _Told:
    """What is found out of one vent and feed: the faults, each with its sentence, and what is missing."""

    case: Case
    pair: VentAndFeed
    faults: list[tuple[str, dict[str, str | float], dict[str, float]]] = field(default_factory=list)
    missing: dict[str, None] = field(default_factory=dict)
    pumps: dict[str, None] = field(default_factory=dict)

    def head_m(self, pumps: tuple[str, ...]) -> float:
        """The shut-off heads of these pumps together; what is not known is noted as missing."""
        known = 0.0
        for pump in pumps:
            self.pumps[pump] = None
            head = self.case.value(pump, "shut_off_head_m")
            if head is None:
                self.missing[f"{pump}.shut_off_head_m"] = None
            else:
                known += float(head)
        return known

    def water_above_m(self, part: str) -> float | None:
        """How far the feed cistern's water stands above a part; noted as missing where not known."""
        cistern = self.pair.feed.part
        level = self.case.value(cistern, "water_level_m")
        height = self.case.heights.of(part)
        if level is None:
            self.missing[f"{cistern}.water_level_m"] = None
        self.missing.update(dict.fromkeys(self.case.heights.missing_for([part])))
        return None if level is None or height is None else float(level) - height

    def fault(self, template: str, values: dict[str, str | float], numbers: dict[str, float]) -> None:
        """Note a fault."""
        self.faults.append((template, values, numbers))


def judge(case: Case) -> Verdict:
    """One fault for each vent that a pump can pump over or draw air by, or that ends too low for one."""
    findings, sound = [], 0
    for pair in vents_and_feeds(case):
        told = _Told(case, pair)
        _between(told)
        if not pair.pumps_between:
            _on_delivery(told)
        if not told.faults:
            _too_low(told)
        if told.faults:
            findings.append(_fault(told))
        elif told.missing:
            findings.append(_unanswered(told))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def _miss_height(told: _Told) -> None:
    vent = told.pair.vent.part
    if not is_cistern(told.case, vent):
        told.missing[f"{vent}.height_above_water_mm"] = None


def _between(told: _Told) -> None:
    """The pumps between the tees: those that push on the vent, and those that suck on it."""
    steps = told.pair.pumps_between
    pushing = tuple(dict.fromkeys(step.start.part for step in steps if step.pumps > 0))
    sucking = tuple(dict.fromkeys(step.start.part for step in steps if step.pumps < 0))
    if pushing:
        head, height = told.head_m(pushing), height_above_water_m(told.case, told.pair.vent)
        if height is None:
            _miss_height(told)
        elif pumps_over(head, height):
            told.fault(
                "{pumps} can lift the water in {vent} by {head} m; the vent ends {height} m above the "
                "water, so it pumps over.",
                {"pumps": named(told.case.drawing, pushing), "head": figure(head), "height": figure(height)},
                {"head_m": head, "height_above_water_m": height},
            )
    if sucking:
        head, above = told.head_m(sucking), told.water_above_m(told.pair.vent_tap.joint.part)
        if above is not None and draws_air(head, above):
            told.fault(
                "{pumps} sucks on {vent} with {head} m; {above} m of water stands above the vent's tee, so "
                "air is drawn in.",
                {"pumps": named(told.case.drawing, sucking), "head": figure(head), "above": figure(above)},
                {"head_m": head, "water_above_m": above},
            )


def _on_delivery(told: _Told) -> None:
    """The pumps that have vent and feed on their delivery side, and so suck on the rest."""
    for pump in pumps_before_feed(told.case, told.pair):
        head, above = told.head_m((pump,)), told.water_above_m(pump)
        if above is not None and draws_air(head, above):
            told.fault(
                "{pumps} has {vent} and the feed of {feed} on its delivery side, and sucks on the circuit "
                "with up to {head} m; {above} m of water stands above it, so air can be drawn in.",
                {"pumps": told.case.drawing.name(pump), "head": figure(head), "above": figure(above)},
                {"head_m": head, "water_above_m": above},
            )


def _too_low(told: _Told) -> None:
    """A vent that ends too low for a pumped circuit. One drawn to the cistern's own port states no
    height, and is not judged by it."""
    case, pair = told.case, told.pair
    if is_cistern(case, pair.vent.part):
        return
    least: float | None
    if turns_by_gravity(case, pair.water):
        above = told.water_above_m(pair.water.heated.part)
        least = None if above is None else least_height_by_gravity_m(above)
    else:
        least = float(case.limit("open_vent.least_height_pumped_m").value)
    height = height_above_water_m(told.case, told.pair.vent)
    if height is None:
        _miss_height(told)
    if least is None or height is None or height >= least - _ROUNDING_M:
        return
    told.fault(
        "{vent} ends {height} m above the water; {least} m is the least.",
        {"height": figure(height), "least": figure(least)},
        {"height_above_water_m": height, "least_height_m": least},
    )


def _components(told: _Told) -> tuple[str, ...]:
    return tuple(dict.fromkeys((told.pair.vent.part, *told.pumps, told.pair.feed.part)))


def _fault(told: _Told) -> Finding:
    drawing = told.case.drawing
    template, values, numbers = told.faults[0]
    vent, feed = drawing.name(told.pair.vent.part), drawing.name(told.pair.feed.part)
    named_so = {"vent": vent, "feed": feed, **values}
    first = "vent" if template.startswith("{vent}") else "pumps"
    named_so[first] = upper(str(named_so[first]))
    return Finding(NAME, Grade.FAULT, Says(template, named_so), _components(told), numbers=numbers)


def _unanswered(told: _Told) -> Finding:
    missing = tuple(told.missing)
    says = Says(
        "Whether {vent} can be pumped over or draw air is not known: {missing}.",
        {"vent": told.case.drawing.name(told.pair.vent.part), "missing": ", ".join(missing)},
    )
    return Finding(
        NAME,
        Grade.UNANSWERED,
        says,
        components=_components(told),
        missing=missing,
        would_be=Grade.FAULT,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The vent ended higher, where only that is wrong; the feed joined beside the vent, where a pump
    stands between."""
    vent, least = finding.components[0], finding.numbers.get("least_height_m")
    if least is not None:
        least_mm = round(least * 1000 + 0.5)
        says = Says(
            "End {vent} {height} mm above the water.",
            {"vent": case.drawing.name(vent), "height": figure(least_mm)},
        )
        yield Proposal(says, set_field(case.drawing, vent, "height_above_water_mm", least_mm))
        return
    for pair in vents_and_feeds(case):
        if pair.vent.part == vent and pair.pumps_between:
            says = Says(
                "Join the feed of {feed} to the circuit right beside {vent}.",
                {"feed": case.drawing.name(pair.feed.part), "vent": case.drawing.name(vent)},
            )
            for after in rejoined(case, pair.feed_tap, pair.vent_tap):
                yield Proposal(says, after)
