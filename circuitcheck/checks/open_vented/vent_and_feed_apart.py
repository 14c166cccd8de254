"""Open vent and cold feed join a pumped circuit too far apart.

Flags: In open-vented heating with a pump, a vent and a feed whose tees are more than 150 mm apart
    along the pipe, or that stand on no common pipe at all. Where hot water turns by gravity beside
    pumped heating, they may stand apart on its pipes, as long as no pump stands on every way from
    one to the other and the pumps' pressure between the two tees, solved in every situation, neither
    lifts the water in the vent to its end nor sucks it down to its tee.
Why: The feed's tee is where a pump leaves the pressure as it is. At a vent close beside it the water
    stays level with the cistern's. Further along, the pump's pressure lifts the water in the vent
    or sucks it down, so that it runs over into the cistern or takes in air, and the circuit rusts.
Remedy: Join both to the flow within 150 mm of one another, the vent first as the water goes, the
    feed next, then the pump.
Source: BS 5449 (150 mm; as taught in trade textbooks). Beside gravity hot water: hydrostatics.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.venting import (
    VentAndFeed,
    height_above_water_m,
    pumps_of,
    turns_by_gravity,
    unknown_lengths,
    vents_and_feeds,
)
from circuitcheck.checks.venting_cures import rejoined
from circuitcheck.checks.wording import figure, upper
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.sizing.open_vent import draws_air, head_m, pumps_over
from circuitcheck.told import a_word

NAME = "vent-and-feed-apart"

_ROUNDING_M = 1e-9


def judge(case: Case) -> Verdict:
    """One fault for each vent of a pumped circuit whose feed is too far from it."""
    findings, sound = [], 0
    for pair in vents_and_feeds(case):
        most = float(case.limit("open_vent.most_apart_m").value)
        sure = _length_m(case, pair.surest_pipes_between)
        if sure is not None and sure <= most + _ROUNDING_M:
            sound += 1
            continue
        if turns_by_gravity(case, pair.water):
            found = _beside_gravity(case, pair, most)
            findings += [] if found is None else [found]
            sound += found is None
            continue
        least = _length_m(case, pair.pipes_between)
        missing = unknown_lengths(case, pair.pipes_between or ())
        if least is None or least > most + _ROUNDING_M:
            findings.append(_apart(case, pair, least, most, at_least=bool(missing)))
        else:
            findings.append(_unanswered(case, pair, missing, most))
    return Verdict(tuple(findings), sound)


def _beside_gravity(case: Case, pair: VentAndFeed, most: float) -> Finding | None:
    """The fault, or what is missing to say, where gravity lets vent and feed stand apart; None: sound."""
    if pair.way_past_no_emitter is None or pair.pumps_between:
        return _apart(case, pair, None, most)
    solved = [case.solved.at(pump) for pump in pumps_of(case, pair.water)]
    bodies = [body for body in solved if body is not None]
    missing = {name: None for body in bodies for name in body.missing}
    moved = [
        None if pressure is None else head_m(pressure)
        for body in bodies[:1]
        for run in body.runs
        for pressure in [run.between_kpa(pair.vent_tap.pipes[-1], pair.feed_tap.pipes[-1])]
    ]
    known = [each for each in moved if each is not None]
    up, down = max(known, default=0.0), -min(known, default=0.0)
    height, above = height_above_water_m(case, pair.vent), _water_above_tee_m(case, pair)
    if (height is not None and pumps_over(up, height)) or (above is not None and draws_air(down, above)):
        return _moved(case, pair, up, down)
    if up > 0 and height is None:
        missing[f"{pair.vent.part}.height_above_water_mm"] = None
    if down > 0 and above is None:
        missing |= dict.fromkeys(_missing_above_tee(case, pair))
    if missing or len(known) < len(moved) or not bodies or not bodies[0].is_known:
        return _not_solved(case, pair, tuple(missing))
    return None


def _water_above_tee_m(case: Case, pair: VentAndFeed) -> float | None:
    level = case.value(pair.feed.part, "water_level_m")
    tee = case.heights.of(pair.vent_tap.joint.part)
    return None if level is None or tee is None else float(level) - tee


def _missing_above_tee(case: Case, pair: VentAndFeed) -> tuple[str, ...]:
    level = () if case.value(pair.feed.part, "water_level_m") is not None else ("water_level_m",)
    named = tuple(f"{pair.feed.part}.{name}" for name in level)
    return (*named, *case.heights.missing_for([pair.vent_tap.joint.part]))


def _moved(case: Case, pair: VentAndFeed, up: float, down: float) -> Finding:
    values = _names(case, pair) | {"up": figure(up), "down": figure(down)}
    says = Says(
        "The pumps' pressure between {vent} and the feed of {feed} lifts the water in the vent by up to {up} "
        "m and lowers it by up to {down} m: it runs over, or air is drawn in.",
        values,
    )
    numbers = {"lifted_m": up, "lowered_m": down}
    return Finding(NAME, Grade.FAULT, says, _components(pair), numbers=numbers)


def _not_solved(case: Case, pair: VentAndFeed, missing: tuple[str, ...]) -> Finding:
    values = _names(case, pair) | {"missing": ", ".join(missing) or a_word("the flows cannot be solved")}
    says = Says(
        "The pumps' pressure between {vent} and the feed of {feed}, beside gravity hot water, is not known: "
        "{missing}.",
        values,
    )
    return Finding(NAME, Grade.UNANSWERED, says, _components(pair), missing=missing, would_be=Grade.FAULT)


def _length_m(case: Case, pipes: tuple[str, ...] | None) -> float | None:
    """The length of a run, unknown ones counted as none; None for no run."""
    if pipes is None:
        return None
    lengths = [case.length_m(pipe) for pipe in pipes]
    return sum(length.value for length in lengths if length is not None)


def _names(case: Case, pair: VentAndFeed) -> dict[str, str | float]:
    return {"vent": case.drawing.name(pair.vent.part), "feed": case.drawing.name(pair.feed.part)}


def _components(pair: VentAndFeed) -> tuple[str, ...]:
    taps = (pair.vent_tap.joint.part, pair.feed_tap.joint.part)
    return tuple(dict.fromkeys((pair.vent.part, pair.feed.part, *taps)))


def _apart(
    case: Case, pair: VentAndFeed, length: float | None, most: float, *, at_least: bool = False
) -> Finding:
    values = _names(case, pair) | {"most": figure(most * 1000)}
    values["vent"] = upper(str(values["vent"]))
    numbers = {"most_apart_m": most}
    if length is None:
        template = (
            "{vent} and the feed of {feed} join the circuit at places that no pipe joins within {most} mm: "
            "the pump's pressure comes between them."
        )
    else:
        values["length"] = f"{'at least ' if at_least else ''}{figure(length * 1000)}"
        numbers["apart_m"] = length
        template = (
            "{vent} and the feed of {feed} join the circuit {length} mm apart along the pipe; {most} mm is "
            "the most."
        )
    return Finding(
        NAME,
        Grade.FAULT,
        Says(template, values),
        components=_components(pair),
        pipes=pair.pipes_between or () if length is not None else (),
        numbers=numbers,
    )


def _unanswered(case: Case, pair: VentAndFeed, missing: tuple[str, ...], most: float) -> Finding:
    values = _names(case, pair) | {"most": figure(most * 1000), "missing": ", ".join(missing)}
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            "Whether {vent} and the feed of {feed} join the circuit within {most} mm of one another is not "
            "known: {missing}.",
            values,
        ),
        components=_components(pair),
        pipes=pair.pipes_between or (),
        numbers={"most_apart_m": most},
        missing=missing,
        would_be=Grade.FAULT,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The feed joined right beside the vent, or the vent right beside the feed."""
    for pair in vents_and_feeds(case):
        if _components(pair) != finding.components:
            continue
        names = _names(case, pair)
        feed_moves = Says("Join the feed of {feed} to the circuit right beside {vent}.", names)
        for after in rejoined(case, pair.feed_tap, pair.vent_tap):
            yield Proposal(feed_moves, after)
        vent_moves = Says("Join {vent} to the circuit right beside the feed of {feed}.", names)
        for after in rejoined(case, pair.vent_tap, pair.feed_tap):
            yield Proposal(vent_moves, after)
