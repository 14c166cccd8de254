"""Judges whether valves can cut heated water off from a device it must always reach."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cached_property

from circuitcheck.checks.bounds import too_large
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.wording import named, part_of, upper, valves
from circuitcheck.circuit.bodies import Heated
from circuitcheck.circuit.isolation import Cut, TooLargeError, cut_off, reaches
from circuitcheck.circuit.joining import Placed
from circuitcheck.finding import Finding, Grade, Says, Witness
from circuitcheck.parts.kind import Role, Way

_STOPS = frozenset({Way.ONE_WAY, Way.SPRING, Way.REDUCING})


@dataclass(frozen=True)
class HeatedWater:
    """One body of heated water, and the devices that it reaches with all valves open."""

    case: Case
    heated: Heated

    @cached_property
    def reach(self) -> frozenset[int]:
        """Every water it is joined to by ways that pressure passes both ways."""
        return reaches(self.case.circuit, self.heated.water)

    def reached(self, role: Role) -> tuple[Placed, ...]:
        """The devices of that role within reach."""
        circuit = self.case.circuit
        return tuple(place for place in circuit.devices(role) if circuit.water(place.node) in self.reach)

    @property
    def combined_feed_and_vent(self) -> bool:
        """Whether the heat source may be fed and vented by one pipe."""
        return not self.heated.by_exchanger and bool(
            self.case.value(self.heated.part, "combined_feed_and_vent")
        )

    @property
    def may_be_combined(self) -> bool:
        """Whether it is fed, has no vent of its own, and it is not known if one pipe may be both."""
        return (
            not self.heated.by_exchanger
            and bool(self.reached(Role.FEEDS))
            and not self.reached(Role.VENTS)
            and self.case.value(self.heated.part, "combined_feed_and_vent") is None
        )

    @cached_property
    def is_open_vented(self) -> bool:
        """Whether, all valves open, it reaches an open vent or a cistern's feed."""
        return bool(self.reached(Role.VENTS) or self.reached(Role.FEEDS))

    @property
    def vents(self) -> tuple[Placed, ...]:
        """The open vents it reaches; a cistern's feed too where feed and vent may be one pipe."""
        own = self.reached(Role.VENTS)
        if not own and self.reached(Role.FEEDS) and self.combined_feed_and_vent:
            return self.reached(Role.FEEDS)
        return own


def heated_waters(case: Case) -> tuple[HeatedWater, ...]:
    """Every body of heated water, by what heats it, in the order of the drawing."""
    return case.kept(
        "heated waters", lambda: tuple(HeatedWater(case, heated) for heated in case.bodies.heated)
    )


def judge_absent(
    case: Case,
    check: str,
    waters: Iterable[HeatedWater],
    role: Role,
    found: Callable[[HeatedWater], tuple[Placed, ...]],
    template: str,
    blocked: str,
) -> Verdict:
    """One danger for each water that reaches no device. `template` says so of {thing}; `blocked`
    says it where a device lies only beyond {blocker}, which pressure can't pass both ways."""
    findings, sound = [], 0
    for water in waters:
        case.rests_on_pressure_ways(water.reach)
        if found(water):
            sound += 1
            continue
        thing = upper(case.drawing.name(water.heated.part))
        blocker = _blocker(case, water, role)
        if blocker is None:
            says = Says(template, {"thing": thing})
            components: tuple[str, ...] = (water.heated.part,)
        else:
            part, device = blocker
            says = Says(
                blocked,
                {"thing": thing, "blocker": case.drawing.name(part), "device": case.drawing.name(device)},
            )
            components = (water.heated.part, part, device)
        findings.append(Finding(check, Grade.DANGER, says, tuple(dict.fromkeys(components))))
    return Verdict(tuple(findings), sound)


def _blocker(case: Case, water: HeatedWater, role: Role) -> tuple[str, str] | None:
    """The first part that stops pressure on the nearest way to a device of that role, and the device."""
    circuit = case.circuit
    ways: dict[int, list[tuple[int, str, bool]]] = {}
    for part, plan in circuit.plans.items():
        for passage in plan.passages:
            if passage.gap:
                continue
            a, b = (circuit.water(circuit.node(part, port)) for port in (passage.a, passage.b))
            stops = passage.pressure_way in _STOPS
            ways.setdefault(a, []).append((b, part, stops))
            ways.setdefault(b, []).append((a, part, stops))
    goals = {circuit.water(place.node): place.part for place in circuit.devices(role)}
    first_stop: dict[int, str] = {water.heated.water: ""}
    todo = [water.heated.water]
    for here in todo:
        if here in goals and first_stop[here]:
            return first_stop[here], goals[here]
        for there, part, stops in ways.get(here, ()):
            if there not in first_stop:
                first_stop[there] = first_stop[here] or (part if stops else "")
                todo.append(there)
    return None


def judge_cut_off(
    case: Case,
    check: str,
    waters: Iterable[HeatedWater],
    found: Callable[[HeatedWater], tuple[Placed, ...]],
    template: str,
    *,
    secured_excuses: bool = False,
) -> Verdict:
    """One finding for each water that valves can leave without any of its devices.

    `template` takes {thing}, {valves} and {devices}. With `secured_excuses`, advice where only
    secured valves do it.
    """
    findings, sound = [], 0
    for water in waters:
        devices = found(water)
        if not devices:
            continue
        case.rests_on_pressure_ways(water.reach)
        targets = [case.circuit.water(place.node) for place in devices]
        try:
            cut = cut_off(case.circuit, water.heated.water, targets)
        except TooLargeError:
            findings.append(too_large(case, check, water.heated.part, Grade.DANGER))
            continue
        if cut is None:
            sound += 1
            continue
        excused = secured_excuses and cut.by_secured_only
        grade = Grade.ADVICE if excused else Grade.DANGER
        findings.append(_finding(case, check, grade, water, cut, devices, template, excused))
    return Verdict(tuple(findings), sound)


def _finding(
    case: Case,
    check: str,
    grade: Grade,
    water: HeatedWater,
    cut: Cut,
    devices: tuple[Placed, ...],
    template: str,
    excused: bool,
) -> Finding:
    drawing = case.drawing
    parts = tuple(dict.fromkeys(part_of(drawing, entry) for entry in cut.shut))
    lost = tuple(dict.fromkeys(place.part for place in devices))
    says = Says(
        f"{template} {_how_many(cut, excused)}",
        {
            "thing": upper(drawing.name(water.heated.part)),
            "valves": valves(drawing, cut.shut),
            "devices": named(drawing, lost),
            "alone": valves(drawing, cut.alone),
        },
    )
    return Finding(
        check,
        grade,
        says,
        components=tuple(dict.fromkeys((water.heated.part, *parts, *lost))),
        witness=Witness(cut.shut, cut.alone, parts),
        cut_off_components=tuple(id for id in case.circuit.parts_in(cut.beyond) if id not in parts),
        cut_off_pipes=case.circuit.pipes_in(cut.beyond),
    )


def _how_many(cut: Cut, excused: bool) -> str:
    if excused:
        return "Only a secured valve does it: make sure that it stays secured open."
    if not cut.alone:
        return "No one valve does it alone."
    if cut.alone == cut.shut:
        return "It does it alone."
    return "Each of these does it alone: {alone}."
