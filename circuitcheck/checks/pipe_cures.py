"""Larger pipes: along the way round that an emitter is fed by, and along a stretch of one flow."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal
from circuitcheck.checks.wording import figure, listed, named
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.solved import Run
from circuitcheck.finding import Says
from circuitcheck.sizing.tube import COPPER_BORE_MM, STEEL_BORE_MM
from circuitcheck.told import a_word, worded

SIZES = {"copper": tuple(sorted(COPPER_BORE_MM)), "steel": tuple(sorted(STEEL_BORE_MM))}
MOST_STEPS = 6
"""Enlargements tried; each costs a solution of the network."""
MOST_SIZES_UP = 2
"""Beyond two sizes it is the pump or the layout that is wrong (common practice, no source)."""

STILL_M3_S = 1e-8
"""Flow that is none but for rounding."""


@dataclass(frozen=True, slots=True)
class Short:
    """An emitter or coil that gets too little, and the run in which it does."""

    taker: str
    run: Run


def size_up_mm(case: Case, pipe: str, steps: int = 1) -> int | None:
    """The standard size so many above a pipe's own; None where its bore is told, or there is none."""
    size, material = case.pipe_value(pipe, "size_mm"), str(case.pipe_value(pipe, "material") or "")
    sizes = SIZES.get(material, ())
    if size not in sizes or case.pipe_value(pipe, "bore_mm") is not None:
        return None
    place = sizes.index(int(size)) + steps
    return sizes[place] if place < len(sizes) else None


def enlarged(case: Case, pipes: Iterable[str], steps: int = 1) -> Case | None:
    """The case with each of these pipes so many sizes larger; None where one has no such size."""
    drawing = case.drawing
    for pipe in pipes:
        size = size_up_mm(case, pipe, steps)
        if size is None:
            return None
        drawing = set_field(drawing, pipe, "size_mm", size)
    return Case(drawing)


def way_round(run: Run, taker: str) -> tuple[str, ...]:
    """The pipes of a shortest way round with the water, from a taker's outlet to its inlet."""
    strands, solution = run.body.network.strands, run.body.solution
    place = run.body.place(taker)
    if place is None:
        return ()
    beyond: dict[int, list[tuple[int, int]]] = {}
    for number, strand in enumerate(strands):
        flow = solution.flow_m3_s(run.row, number)  # None in a tee's arm and the like
        if number == place or (flow is not None and abs(flow) < STILL_M3_S):
            continue
        if flow is None or flow > 0:
            beyond.setdefault(strand.a, []).append((strand.b, number))
        if flow is None or flow < 0:
            beyond.setdefault(strand.b, []).append((strand.a, number))
    came = _reached(beyond, strands[place].b)
    pipes: list[str] = []
    here = strands[place].a
    while (step := came.get(here)) is not None:
        here, number = step
        if strands[number].passage is None:
            pipes.append(strands[number].id)
    return tuple(reversed(pipes)) if here == strands[place].b else ()


def _reached(beyond: dict[int, list[tuple[int, int]]], start: int) -> dict[int, tuple[int, int] | None]:
    """By node, the node it was reached from and the strand; None for the start."""
    came: dict[int, tuple[int, int] | None] = {start: None}
    todo = deque([start])
    while todo:
        here = todo.popleft()
        for there, number in beyond.get(here, ()):
            if there not in came:
                came[there] = (here, number)
                todo.append(there)
    return came


def with_wider_way(case: Case, short: Callable[[Case], Short | None]) -> Iterator[Proposal]:
    """Larger pipes on the ways round to what is short of water, size by size where most pressure is
    lost, until nothing is short any more. `short` tells what is, the worst first."""
    now, takers = case, dict[str, None]()
    worst = short(case)
    for _ in range(MOST_STEPS):
        if worst is None or not worst.run.body.is_known:
            break
        takers[worst.taker] = None
        wider = enlarged(now, _costliest(case, now, worst))
        if wider is None or wider.drawing is now.drawing:
            return
        now = wider
        worst = short(now)
    if worst is not None or now is case:
        return
    says = Says(
        "Run the {ways} to {takers} and back in larger pipe: {sizes}.",
        {
            "ways": a_word("way") if len(takers) == 1 else a_word("ways"),
            "takers": named(case.drawing, takers),
            "sizes": _sizes(case, now),
        },
    )
    yield Proposal(says, now.drawing)


def _costliest(case: Case, now: Case, short: Short) -> tuple[str, ...]:
    """The pipes of one size on the way round that lose most together, and can be larger."""
    groups: dict[object, list[str]] = {}
    for pipe in way_round(short.run, short.taker):
        size = now.pipe_value(pipe, "size_mm")
        up, most = size_up_mm(now, pipe), size_up_mm(case, pipe, MOST_SIZES_UP) or float("inf")
        if up is not None and up <= most:
            groups.setdefault((size, now.pipe_value(pipe, "material")), []).append(pipe)
    if not groups:
        return ()
    lost = {
        key: sum(abs(short.run.difference_kpa(pipe) or 0.0) for pipe in pipes)
        for key, pipes in groups.items()
    }
    return tuple(groups[max(lost, key=lambda key: lost[key])])


def _sizes(before: Case, after: Case) -> str:
    """`28 mm in place of 22 mm, and 22 mm in place of 15 mm`."""
    changes = {
        (before.pipe_value(pipe, "size_mm"), after.pipe_value(pipe, "size_mm"))
        for pipe in before.drawing.pipes
    }
    grown = sorted((pair for pair in changes if pair[0] != pair[1]), reverse=True)
    texts = [worded("{new} mm in place of {old} mm", new=figure(new), old=figure(old)) for old, new in grown]
    return listed(texts)


def stretch_of(case: Case, pipe: str) -> tuple[str, ...]:
    """The pipes in one line with a pipe that carry the same flow: through valves and the like, as far
    as the next tee, or what heats or gives heat. In order from its first end."""
    found = [pipe]
    for end, at in zip(case.drawing.pipes[pipe].ends, (0, None), strict=True):
        here = end
        while isinstance(here, Joint) and (across := _across(case, here)) is not None:
            after = case.drawing.joined.get(across)
            if after is None or after in found:
                break
            found.insert(0 if at == 0 else len(found), after)
            here = next(other for other in case.drawing.pipes[after].ends if other != across)
    return tuple(found)


def _across(case: Case, joint: Joint) -> Joint | None:
    """The port at the other side of a part with one way through; None for any other part."""
    passages = [each for each in case.circuit.plans[joint.part].passages if not each.gap]
    if (
        len(passages) != 1
        or passages[0].gives_heat
        or len(case.drawing.components[joint.part].kind.ports) != 2
    ):
        return None
    (passage,) = passages
    ports = {passage.a: passage.b, passage.b: passage.a}
    return Joint(joint.part, ports[joint.port]) if joint.port in ports else None


def with_larger_stretch(case: Case, pipe: str, passes: Callable[[Case], bool]) -> Iterator[Proposal]:
    """The stretch that a pipe is in, as much larger as it takes for the check to pass."""
    for steps in range(1, MOST_SIZES_UP + 1):
        size = size_up_mm(case, pipe, steps)
        if size is None:
            return
        pipes = [each for each in stretch_of(case, pipe) if (case.pipe_value(each, "size_mm") or size) < size]
        drawing = case.drawing
        for each in pipes:
            drawing = set_field(drawing, each, "size_mm", size)
            drawing = set_field(drawing, each, "bore_mm", None)
        if passes(Case(drawing)):
            names = {"pipes": named(case.drawing, pipes), "size": figure(size)}
            yield Proposal(Says("Run {pipes} in {size} mm.", names), drawing)
            return
