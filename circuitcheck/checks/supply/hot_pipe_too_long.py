"""A hot pipe to an outlet is too long.

Flags: An outlet whose hot water must push out more metres of uninsulated pipe than the guidance gives
    for its diameter: 20 m up to 12 mm, 12 m up to 22 mm, 8 m up to 28 mm, 3 m above. The pipe counts
    from what gives the hot water, or from the nearest place that a secondary return keeps hot.
    Insulated pipe does not count. Where diameters differ, the largest governs; of several ways, the
    best. Exactly the limit passes.
Why: All the water in that pipe has gone cold since the tap was last opened. It is run to waste while
    somebody waits, with the heat that went into it; and it stands lukewarm in between, as legionella
    likes it.
Remedy: Insulate the pipe, run it shorter or in a smaller diameter, or bring a secondary return near
    the outlet.
Source: WFR guidance, Table 8.1. That the largest of several diameters governs: from memory.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cached_property

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.supplying import supplies
from circuitcheck.checks.wording import figure, upper
from circuitcheck.circuit.secondary import kept_hot
from circuitcheck.circuit.supplies import Supplies
from circuitcheck.circuit.waterways import Cheapest, Step, cheapest_way, pipes_of
from circuitcheck.drawing.edits import set_field
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.sizing.discharge import within
from circuitcheck.sizing.tube import outside_mm

NAME = "hot-pipe-too-long"


@dataclass(frozen=True, slots=True)
class _Row:
    to_mm: float
    most_m: float


def judge(case: Case) -> Verdict:
    """One piece of advice for each outlet at the end of too long a pipe."""
    ways = supplies(case)
    outlets = [
        joint
        for place in ways.outlets
        if (joint := Joint(place.part, place.device.port)) in case.drawing.joined
    ]
    if not outlets or not ways.givers:
        return Verdict()
    rows = [_Row(float(row["to_mm"]), float(row["most_m"])) for row in case.limit("supply.dead_leg").value]
    legs = _Legs(case, ways, rows)
    findings, sound = [], 0
    for joint in outlets:
        if joint not in legs.reached:
            continue
        if legs.passes(legs.at_most, joint):
            sound += 1
        elif legs.passes(legs.at_least, joint):
            findings.append(_unknown(case, legs, joint))
        else:
            findings.append(_finding(case, legs, joint))
    return Verdict(tuple(findings), sound)


class _Legs:
    """The pipe between what is hot and each outlet: for each row of the table the least metres by
    pipes no wider than it, once at least and once at most for what is not known."""

    def __init__(self, case: Case, ways: Supplies, rows: list[_Row]) -> None:
        self.case, self.ways, self.rows = case, ways, rows
        self._starts = [port for giver in ways.givers for port in giver.ports]
        for giver in ways.givers:
            if giver.stores:
                self._starts += sorted(kept_hot(ways, giver))

    @cached_property
    def reached(self) -> frozenset[Joint]:
        """Every port that hot water comes to."""
        return frozenset(self.ways.walk(self._starts, self.ways.drawn_outside))

    @cached_property
    def at_least(self) -> list[Cheapest]:
        """As short as what is not known allows."""
        return self._measured(at_most=False)

    @cached_property
    def at_most(self) -> list[Cheapest]:
        """As long as what is not known allows."""
        return self._measured(at_most=True)

    def _measured(self, *, at_most: bool) -> list[Cheapest]:
        return [self.ways.cheapest(self._starts, self._cost(row, at_most=at_most)) for row in self.rows]

    def _cost(self, row: _Row, *, at_most: bool) -> Callable[[Step], float | None]:
        def cost(step: Step) -> float | None:
            if not self.ways.drawn_outside(step):
                return None
            if not step.pipe:
                return 0.0
            insulated = self.case.pipe_value(step.pipe, "insulated")
            if insulated or (insulated is None and not at_most):
                return 0.0
            outside = self.outside_mm(step.pipe)
            widest = float("inf") if at_most else 0.0
            if (widest if outside is None else outside) > row.to_mm:
                return None
            length = self.case.length_m(step.pipe)
            if length is None:
                return float("inf") if at_most else 0.0
            return length.value

        return cost

    def outside_mm(self, pipe: str) -> float | None:
        """A pipe's outside diameter; None where it is not known."""
        size = self.case.pipe_value(pipe, "size_mm")
        material = self.case.pipe_value(pipe, "material")
        if size is None or material is None:
            return None
        return outside_mm(material, float(size))

    def passes(self, measured: list[Cheapest], joint: Joint) -> bool:
        """Whether some way to the port keeps to the row of its widest pipe."""
        return any(
            joint in best and within(best[joint][0], row.most_m)
            for row, best in zip(self.rows, measured, strict=True)
        )

    def nearest(self, joint: Joint) -> tuple[_Row, float, tuple[Step, ...]]:
        """The row that a way comes nearest to keeping, its metres at the least, and that way."""
        fits = [
            (best[joint][0] / row.most_m, number)
            for number, (row, best) in enumerate(zip(self.rows, self.at_least, strict=True))
            if joint in best
        ]
        number = min(fits)[1]
        best = self.at_least[number]
        return self.rows[number], best[joint][0], cheapest_way(best, joint)


def _counted(case: Case, steps: tuple[Step, ...]) -> tuple[str, ...]:
    """The pipes on a way that are not insulated, or not known to be."""
    return tuple(pipe for pipe in pipes_of(steps) if not case.pipe_value(pipe, "insulated"))


def _finding(case: Case, legs: _Legs, joint: Joint) -> Finding:
    row, metres, steps = legs.nearest(joint)
    start = steps[0].start.part
    return Finding(
        NAME,
        Grade.ADVICE,
        Says(
            "{thing} is at the end of {metres} m of uninsulated hot pipe from {start}; the guidance allows "
            "{limit} m of that diameter.",
            {
                "metres": figure(metres),
                "start": case.drawing.name(start),
                "thing": upper(case.drawing.name(joint.part)),
                "limit": figure(row.most_m),
            },
        ),
        components=tuple(dict.fromkeys((joint.part, start))),
        pipes=_counted(case, steps),
        numbers={"length_m": metres, "limit_m": row.most_m},
    )


def _unknown(case: Case, legs: _Legs, joint: Joint) -> Finding:
    _, _, steps = legs.nearest(joint)
    missing: list[str] = []
    pipes = _counted(case, steps)
    for pipe in pipes:
        if case.pipe_value(pipe, "insulated") is None:
            missing.append(f"{pipe}.insulated")
        if case.length_m(pipe) is None:
            missing.append(f"{pipe}.length_m")
        missing += [
            f"{pipe}.{field}" for field in ("size_mm", "material") if case.pipe_value(pipe, field) is None
        ]
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            "Whether the hot pipe to {thing} is short enough is not known: {missing}.",
            {"thing": case.drawing.name(joint.part), "missing": ", ".join(missing)},
        ),
        components=(joint.part,),
        pipes=pipes,
        missing=tuple(missing),
        would_be=Grade.ADVICE,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Insulate the pipes that count."""
    after = case.drawing
    for pipe in finding.pipes:
        after = set_field(after, pipe, "insulated", True)
    says = Says("Insulate the hot pipe to {thing}.", {"thing": case.drawing.name(finding.components[0])})
    yield Proposal(says, after)
