"""Expansion vessel is too small.

Flags: The vessels that heated water reaches cannot take up its swell and still hold their reserve when
    all is cold, before the pressure comes within half a bar of the safety valve; or, filled to the
    stated pressure, they have too little room left. Where there are several vessels, also if some
    positions of the valves leave the heat source with fewer of them than the water still joined to it
    needs; if only secured valves do that, it is advice.
Why: A vessel that is too small is full before the water is hot. From then on the pressure climbs as if
    there were none: the safety valve weeps at every heating-up, somebody tops the circuit up with
    fresh water, and the fresh water brings oxygen that rusts the radiators from inside.
Remedy: Fit the next size made that is large enough, or a second vessel beside it, joined where nothing
    can shut it off. If only the fill pressure is too high, fill to a lower one that still reaches the
    top of the circuit.
Source: BS EN 12828:2012, Annex D (method and numbers from memory); BS 5449 and BS 7074-1 as a cross-check.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import inf, isfinite

from circuitcheck.checks.bounds import too_large
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import HeatedWater
from circuitcheck.checks.sealed_water import missing_of, sealed_with
from circuitcheck.checks.wording import each_once, figure, named, part_of, shortened, upper, valves
from circuitcheck.circuit.isolation import TooLargeError, cut_off
from circuitcheck.circuit.regions import Region, largest_regions, region_with_shut
from circuitcheck.drawing.edits import set_field
from circuitcheck.figures.content import Content
from circuitcheck.figures.expansion import Expansion, Reckoned, Vessel, expansion_of, vessel_fields
from circuitcheck.finding import Finding, Grade, NameTuple, Says, Witness
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.vessel import bs_volume_l, next_made_l
from circuitcheck.told import a_word

NAME = "vessel-too-small"


@dataclass(frozen=True, slots=True)
class _Asked:
    """The vessels that are left and the water they serve, at its best and at its worst."""

    vessels: tuple[Vessel, ...]
    content: Content
    best: Reckoned
    worst: Reckoned

    @property
    def fails(self) -> bool:
        return not self.best.serves

    @property
    def is_open(self) -> bool:
        return self.best.serves and not self.worst.serves


def judge(case: Case) -> Verdict:
    """One finding for each sealed body of heated water whose vessels are too small for it."""
    findings, sound = [], 0
    for water in sealed_with(case, Role.HOLDS_EXPANSION, Role.RELIEVES_HEATING):
        try:
            finding = _judged(case, water)
        except TooLargeError:
            finding = too_large(case, NAME, water.heated.part, Grade.FAULT)
        if finding is None:
            sound += 1
        else:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _judged(case: Case, water: HeatedWater) -> Finding | None:
    expansion = expansion_of(case, water.heated)
    everything = _asked(expansion, expansion.vessels, case.contents.of(water.heated.body))
    if everything.fails:
        return _too_small(case, water, expansion, everything, Grade.FAULT, None)
    unsure = [everything] if everything.is_open else []
    if not _always_serve(expansion, everything):
        for secured_stay_open, grade in ((True, Grade.FAULT), (False, Grade.ADVICE)):
            failing, doubtful = _regions(case, expansion, secured_stay_open=secured_stay_open)
            if failing:
                return _by_closing(case, water, expansion, failing, grade)
            unsure += doubtful
    return _unanswered(case, water, expansion, unsure) if unsure else None


def _always_serve(expansion: Expansion, everything: _Asked) -> bool:
    """Whether what is left by any closing is surely enough for all of the water: the vessels that
    nothing can shut off, or any one of them all."""
    never_shut = tuple(each for each in expansion.vessels if each.water == expansion.heated.water)
    if never_shut and _asked(expansion, never_shut, everything.content).worst.serves:
        return True
    return all(_asked(expansion, (each,), everything.content).worst.serves for each in expansion.vessels)


def _regions(
    case: Case, expansion: Expansion, *, secured_stay_open: bool
) -> tuple[list[Region], list[_Asked]]:
    """The regions that valves can leave whose vessels are too small, and what is asked in those that
    are in doubt. Raises TooLargeError where there are too many to try and none tried is too small."""
    failing: list[Region] = []
    doubtful: list[_Asked] = []
    marks = {each.water for each in expansion.vessels}
    start = expansion.heated.water
    try:
        for region in largest_regions(case.circuit, start, marks, secured_stay_open=secured_stay_open):
            asked = _in_region(case, expansion, region.waters)
            if asked is not None and asked.fails:
                failing.append(region)
            elif asked is not None and asked.is_open:
                doubtful.append(asked)
    except TooLargeError:
        if not failing:
            raise
    return failing, doubtful


def _asked(expansion: Expansion, vessels: tuple[Vessel, ...], content: Content) -> _Asked:
    best, worst = (expansion.reckoned(content, vessels, best=best) for best in (True, False))
    return _Asked(vessels, content, best, worst)


def _in_region(case: Case, expansion: Expansion, waters: frozenset[int]) -> _Asked | None:
    """What is asked of the vessels that are left in a region; None where none is."""
    left = tuple(each for each in expansion.vessels if each.water in waters)
    return _asked(expansion, left, case.contents.in_waters(waters)) if left else None


def _fails_in(case: Case, expansion: Expansion, waters: frozenset[int]) -> bool:
    asked = _in_region(case, expansion, waters)
    return asked is not None and asked.fails


def _by_closing(
    case: Case, water: HeatedWater, expansion: Expansion, failing: list[Region], grade: Grade
) -> Finding:
    """The finding for the position found that needs the fewest closings."""
    circuit, start = case.circuit, water.heated.water
    best = min(failing, key=lambda region: (len(region.shut), region.shut))
    shut = best.shut
    lost_waters = {each.water for each in expansion.vessels} - best.marks
    fewer = cut_off(circuit, start, lost_waters)
    if fewer is not None and len(fewer.shut) < len(shut):
        secured = grade is Grade.ADVICE or not fewer.by_secured_only
        if secured and _fails_in(case, expansion, region_with_shut(circuit, start, fewer.shut)):
            shut = fewer.shut
    waters = region_with_shut(circuit, start, shut)
    asked = _in_region(case, expansion, waters)
    if asked is None:  # pragma: no cover - a failing region holds a vessel
        raise TooLargeError
    witness = Witness(shut, _alone(case, expansion, start), _parts(case, shut))
    return _too_small(case, water, expansion, asked, grade, witness)


def _alone(case: Case, expansion: Expansion, start: int) -> tuple[str, ...]:
    labels = [edge.label for edge in case.circuit.edges if edge.a in expansion.reach]
    return tuple(
        label
        for label in labels
        if _fails_in(case, expansion, region_with_shut(case.circuit, start, (label,)))
    )


def _parts(case: Case, shut: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(part_of(case.drawing, entry) for entry in shut))


def _too_small(
    case: Case,
    water: HeatedWater,
    expansion: Expansion,
    asked: _Asked,
    grade: Grade,
    witness: Witness | None,
) -> Finding:
    drawing, reckoned = case.drawing, asked.best
    left = tuple(dict.fromkeys(each.part for each in asked.vessels))
    lost = tuple(each.part for each in expansion.vessels if each.part not in left)
    pieces = ["{content} l of water swells by {swell} l;"]
    pieces.append(
        "{vessels} would have to hold {needed} l in all and {hold} {volume} l."
        if isfinite(reckoned.needed_l)
        else "{vessels}, charged to {charge} bar, can take up nothing below {final} bar: no size would do."
    )
    if isfinite(reckoned.needed_l):
        pieces.append(
            "Filled to {fill} bar too little room is left for it."
            if reckoned.by_fill
            else "It must take up the swell and {reserve} l in reserve between {charge} and {final} bar."
        )
    if witness is not None:
        pieces.insert(0, "With {valves} shut, {thing} is left without {lost}:")
    else:
        pieces.insert(0, "{thing_first}:")
    if grade is Grade.ADVICE:
        pieces.append("Only secured valves do it: make sure that they stay secured open.")
    fill = case.design("fill_pressure_bar")
    says = Says(
        " ".join(pieces),
        {
            "thing": drawing.name(water.heated.part),
            "thing_first": upper(drawing.name(water.heated.part)),
            "vessels": named(drawing, left),
            "hold": a_word("holds") if len(left) == 1 else a_word("hold"),
            "lost": named(drawing, dict.fromkeys(lost)),
            "valves": valves(drawing, witness.shut if witness else ()),
            "content": figure(reckoned.content_l),
            "swell": figure(reckoned.swell_l),
            "reserve": figure(reckoned.reserve_l),
            "needed": figure(reckoned.needed_l),
            "volume": figure(reckoned.volume_l),
            "charge": figure(reckoned.charge_bar),
            "final": figure(reckoned.final_bar),
            "fill": "?" if fill is None else figure(fill),
        },
    )
    shut_parts = witness.parts if witness else ()
    return Finding(
        NAME,
        grade,
        says,
        components=tuple(dict.fromkeys((water.heated.part, *shut_parts, *left, *lost))),
        witness=witness,
        numbers=_numbers(case, expansion, reckoned),
    )


def _numbers(case: Case, expansion: Expansion, reckoned: Reckoned) -> dict[str, float]:
    valve = min(
        (setting for each in expansion.safety_valves if (setting := expansion.setting_bar(each)) is not None),
        default=inf,
    )
    hottest = expansion.hottest_c.high
    found = {
        "content_l": reckoned.content_l,
        "swell_l": reckoned.swell_l,
        "reserve_l": reckoned.reserve_l,
        "volume_l": reckoned.volume_l,
        "needed_l": reckoned.needed_l,
        "precharge_bar": reckoned.charge_bar,
        "final_bar": reckoned.final_bar,
        "hottest_c": hottest,
        "bs_7074_l": bs_volume_l(reckoned.content_l, reckoned.charge_bar, valve, hottest)
        if isfinite(valve) and isfinite(hottest)
        else inf,
    }
    return {name: value for name, value in found.items() if isfinite(value)}


def _unanswered(case: Case, water: HeatedWater, expansion: Expansion, unsure: list[_Asked]) -> Finding:
    lacks = [expansion.swell]
    for asked in unsure:
        lacks += [
            bounds for each in asked.vessels for bounds in (each.volume_l, each.charge_bar, each.final_bar)
        ]
    contents: list[NameTuple] = []
    for asked in unsure:
        if asked.content.missing not in contents:  # no hash of it, which would make all of the names
            contents.append(asked.content.missing)
    missing = each_once(missing_of(*lacks), *contents)
    template = "Is {vessels} large enough for {thing}?"
    if missing:
        template += " It rests on what is not known: {missing}."
    if expansion.glycol:
        template += " Water with glycol swells more than water; by how much is not reckoned here."
    elif expansion.beyond_tables:
        template += " The temperatures are beyond those reckoned here."
    parts = tuple(dict.fromkeys(each.part for each in expansion.vessels))
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            template,
            {
                "vessels": named(case.drawing, parts),
                "thing": case.drawing.name(water.heated.part),
                "missing": shortened(missing),
            },
        ),
        components=tuple(dict.fromkeys((water.heated.part, *parts))),
        missing=missing,
        would_be=Grade.FAULT,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The next size made that is large enough, for each vessel that could be the larger one."""
    needed, volume = finding.numbers.get("needed_l"), finding.numbers.get("volume_l")
    if needed is None or volume is None:
        return
    for place in case.circuit.devices(Role.HOLDS_EXPANSION):
        if place.part not in finding.components or place.device.built_in:
            continue
        field = vessel_fields(place)[0]
        own = case.value(place.part, field)
        if own is None:
            continue
        size = next_made_l(max(needed - volume, 0.0) + own)
        if size is not None and size > own:
            says = Says(
                "Fit {vessel} in the next size that is large enough, {size} l.",
                {"vessel": case.drawing.name(place.part), "size": figure(size)},
            )
            yield Proposal(says, set_field(case.drawing, place.part, field, size))
