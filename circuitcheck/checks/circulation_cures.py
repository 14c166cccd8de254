"""What would put the circulation right: proposals that several checks make."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from circuitcheck.checks.arrows import is_backwards, with_arrows
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal
from circuitcheck.circuit.circulation import Spoilers
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Says
from circuitcheck.parts.kind import Role
from circuitcheck.told import listed, spoken, worded


def turned_round(case: Case, part: str) -> Proposal:
    """A part turned round where it stands."""
    work = Fitting(case.drawing, case.lines)
    work.turn_round(part)
    return Proposal(Says("Turn {thing} round.", {"thing": case.drawing.name(part)}), work.drawing)


def backwards_turned_round(case: Case, but: tuple[str, ...] = ()) -> Iterator[Proposal]:
    """Each part that stands backwards turned round, but for those."""
    for place, sort in with_arrows(case):
        if place.part not in but and is_backwards(case, place, sort):
            yield turned_round(case, place.part)


def bypass_mended(case: Case, spoilers: Spoilers) -> Iterator[Proposal]:
    """A bypass that is there made to count: turned round, or without its hand valve."""
    for part in spoilers.backwards:
        yield turned_round(case, part)
    if spoilers.shut_by_hand:
        work = Fitting(case.drawing, case.lines)
        work.take_out(*spoilers.shut_by_hand)
        names = listed(case.drawing.name(part) for part in spoilers.shut_by_hand)
        says = Says("Take {valves} out, so that nobody can shut the way round.", {"valves": names})
        yield Proposal(says, work.drawing)


def with_bypass(case: Case, pumps: Iterable[str], heats: Iterable[str]) -> Iterator[Proposal]:
    """An automatic bypass from flow to return that takes in a pump and a heat source, right beside them
    and so before every zone valve; its setting is left to be filled in."""
    own = case.circuit.parts_with(Role.HEATS)
    heats = tuple(heats)
    for pump in pumps:
        for heat in heats:
            flow, back = Joint(heat, "flow"), Joint(heat, "return")
            ends = [(flow, back)] if pump in own else [(Joint(pump, "out"), back), (flow, Joint(pump, "in"))]
            for start, finish in ends:
                yield from _bridged(case, start, finish)


def with_bypass_round_pump(case: Case, pump: str) -> Iterator[Proposal]:
    """An automatic bypass from a pump's delivery to its suction side."""
    yield from _bridged(case, Joint(pump, "out"), Joint(pump, "in"))


def _bridged(case: Case, start: Joint, finish: Joint) -> Iterator[Proposal]:
    work = Fitting(case.drawing, case.lines)
    try:
        work.bridge(start, finish, "bypass_valve")
    except (EditError, KeyError):
        return
    names = {
        "start": worded("the {port} of {part}", port=_called(start.port), part=case.drawing.name(start.part)),
        "finish": worded(
            "the {port} of {part}", port=_called(finish.port), part=case.drawing.name(finish.part)
        ),
    }
    says = Says("Fit an automatic bypass valve from {start} to {finish}, and set it.", names)
    yield Proposal(says, work.drawing)


def _called(port: str) -> str:
    return spoken({"in": "inlet", "out": "outlet"}.get(port, port))


def with_pump(case: Case, heats: Iterable[str]) -> Iterator[Proposal]:
    """A pump in the flow of a heat source."""
    for heat in heats:
        work = Fitting(case.drawing, case.lines)
        work.cut_in("pump", Joint(heat, "flow"), port="in")
        says = Says("Fit a pump in the flow of {heat}.", {"heat": case.drawing.name(heat)})
        yield Proposal(says, work.drawing)
