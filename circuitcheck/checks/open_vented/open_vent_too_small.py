"""An open vent is too small.

Flags: A pipe with a bore below 19 mm (copper below 22 mm) anywhere on the way from a heat source's
    flow, or a store's hot side, to its open vent. Where feed and vent may be one pipe, that pipe is
    judged.
Why: A boiling heat source makes more steam than a thin pipe lets out. The pressure then rises and
    water is thrown out of the vent; scale and sludge close a thin pipe the sooner.
Remedy: Run the vent in 22 mm copper or larger all the way from the heat source or store.
Source: BS 5449, carried on by BS EN 12828 with its national annex: 22 mm (bore of 19 mm from memory);
    for a store's vent BS 6700, 19 mm (from memory).
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.venting import VentPipe, end_of, vent_pipes
from circuitcheck.checks.wording import figure, named, upper
from circuitcheck.circuit.pipework import Cost, Step, way
from circuitcheck.drawing.edits import set_field
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.sizing.tube import COPPER_BORE_MM, STEEL_BORE_MM, bore_mm

NAME = "open-vent-too-small"


def judge(case: Case) -> Verdict:
    """One danger for each vent with too small a pipe on its way, whichever way is the widest."""
    findings, sound = [], 0
    for vent in vent_pipes(case):
        least = float(case.limit("open_vent.smallest_bore_mm").value)
        pipes = _widest_way(case, vent, least)
        small = tuple(pipe for pipe in pipes if _is_small(case, pipe, least))
        missing = tuple(field for pipe in pipes for field in _unknown(case, pipe, least))
        if small:
            findings.append(_too_small(case, vent, small, least))
        elif missing:
            findings.append(_unanswered(case, vent, missing, least))
        else:
            sound += bool(pipes)
    return Verdict(tuple(findings), sound)


def _widest_way(case: Case, vent: VentPipe, least: float) -> tuple[str, ...]:
    def cost(step: Step) -> Cost:
        if not step.pipe:
            return (0.0, 0.0, 1.0)
        small = _is_small(case, step.pipe, least)
        return (float(small), float(bool(_unknown(case, step.pipe, least))), 1.0)

    goal = end_of(vent.vent)
    pipes: dict[str, None] = {}
    for start in vent.starts:
        found = way(case.circuit, [start], goal.__eq__, lambda step: step.goes_on, cost)
        if found is None:  # a vent on the return, reached through the heat source
            found = way(case.circuit, [start], goal.__eq__, lambda step: not step.stores, cost)
        pipes.update((step.pipe, None) for step in found or () if step.pipe)
    return tuple(pipes)


def _bore_mm(case: Case, pipe: str) -> float | None:
    given = case.pipe_value(pipe, "bore_mm")
    if given is not None:
        return float(given)
    size, material = case.pipe_value(pipe, "size_mm"), case.pipe_value(pipe, "material")
    return None if size is None or material is None else bore_mm(material, size)


def _is_small(case: Case, pipe: str, least: float) -> bool:
    bore = _bore_mm(case, pipe)
    if bore is not None:
        return bore < least
    size, material = case.pipe_value(pipe, "size_mm"), case.pipe_value(pipe, "material")
    # A bore is smaller than the outside diameter, whatever the wall.
    return size is not None and size <= least and material in ("copper", "plastic")


def _unknown(case: Case, pipe: str, least: float) -> tuple[str, ...]:
    """The fields that would tell whether a pipe is wide enough, where that is not known."""
    if _bore_mm(case, pipe) is not None or _is_small(case, pipe, least):
        return ()
    names = [name for name in ("size_mm", "material") if case.pipe_value(pipe, name) is None]
    return tuple(f"{pipe}.{name}" for name in names or ["bore_mm"])


def _too_small(case: Case, vent: VentPipe, small: tuple[str, ...], least: float) -> Finding:
    drawing = case.drawing
    numbers = {"smallest_bore_mm": least}
    for pipe in small:
        bore, size = _bore_mm(case, pipe), case.pipe_value(pipe, "size_mm")
        numbers |= {} if size is None else {f"{pipe}.size_mm": float(size)}
        numbers |= {} if bore is None else {f"{pipe}.bore_mm": bore}
    says = Says(
        "{vent} is too small for {things}: {pipes} has a bore below {least} mm (copper of 22 mm).",
        {
            "vent": upper(drawing.name(vent.vent.part)),
            "things": named(drawing, vent.serves),
            "pipes": named(drawing, small),
            "least": figure(least),
        },
    )
    components = tuple(dict.fromkeys((vent.vent.part, *vent.serves)))
    return Finding(NAME, Grade.DANGER, says, components, small, numbers=numbers)


def _unanswered(case: Case, vent: VentPipe, missing: tuple[str, ...], least: float) -> Finding:
    says = Says(
        "Whether {vent} has a bore of {least} mm all the way from {things} is not known: {missing}.",
        {
            "vent": case.drawing.name(vent.vent.part),
            "least": figure(least),
            "things": named(case.drawing, vent.serves),
            "missing": ", ".join(missing),
        },
    )
    return Finding(
        NAME,
        Grade.UNANSWERED,
        says,
        components=tuple(dict.fromkeys((vent.vent.part, *vent.serves))),
        pipes=tuple(dict.fromkeys(field.partition(".")[0] for field in missing)),
        numbers={"smallest_bore_mm": least},
        missing=missing,
        would_be=Grade.DANGER,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Every pipe that is too small made the smallest standard size that is not, in copper or steel."""
    least = float(case.limit("open_vent.smallest_bore_mm").value)
    after: Drawing = case.drawing
    sizes: dict[str, int] = {}
    for pipe in finding.pipes:
        material = "steel" if case.pipe_value(pipe, "material") == "steel" else "copper"
        bores = STEEL_BORE_MM if material == "steel" else COPPER_BORE_MM
        sizes[pipe] = min(size for size, bore in bores.items() if bore >= least)
        after = set_field(after, pipe, "material", material)
        after = set_field(after, pipe, "size_mm", sizes[pipe])
        if case.pipe_value(pipe, "bore_mm") is not None:
            after = set_field(after, pipe, "bore_mm", None)
    says = Says(
        "Run {pipes} in {size} mm.",
        {
            "pipes": named(case.drawing, finding.pipes),
            "size": " or ".join(str(size) for size in dict.fromkeys(sizes.values())),
        },
    )
    yield Proposal(says, after)
