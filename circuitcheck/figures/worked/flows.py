"""Flows of the pumped water.

What flows through each heat source, pump, emitter, coil and bypass in every situation in which a pump
runs, and where the water runs fastest. Everything else about a pumped circuit follows from these.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from circuitcheck.figures.driven import (
    LIMITS,
    SOURCE,
    called,
    driven,
    flow_lpm,
    on,
    refusing,
    sources,
    take_curves,
    take_water,
    usual_moves,
)
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.figures.telling import Telling
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.pipe import LAMINAR_BELOW, TURBULENT_FROM, Law
from circuitcheck.told import a_word, strung, worded

TELLING = Telling(
    "flows",
    a_word("Flows of the pumped water"),
    a_word(
        "Σ Q = 0 at each joint, Σ Δp = 0 round each loop\n"
        "pipe: Δp = (f L/d + Σ ζ) ρ v²/2\n"
        "f: 64/Re up to 2,000; 1/√f = −2 log10(k/(3.7 d) + 2.51/(Re √f)) from 4,000; a straight line between\n"
        "valve: Δp = 1 bar × (Q/kv)²\n"
        "pump: Δp = ρ g H0 (1 − (Q/Q0)²)"
    ),
    SOURCE,
    f"{LIMITS} Between Re 2,000 and 4,000 no law of friction holds. A pump's curve is taken for the parabola "
    "through its shut-off head and its most flow; one that regulates itself runs lower.",
)


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each body of pumped heating water."""
    return tuple(_one(body) for body in plant.solved.bodies)


def _one(body: SolvedBody) -> Figure:
    subject = body.pumps
    refused = refusing(TELLING, body, subject)
    if refused is not None:
        return refused
    runs = driven(body)
    told = Gathering(body.plant)
    take_water(told)
    take_curves(told, body, usual=True)
    if not runs:
        return TELLING.refused(told, subject, a_word("in no situation does a pump run"))
    results = [result for run in runs for result in _results(run)]
    first = (*sources(body), *body.pumps)[0]
    moves = usual_moves(body, runs[0], lambda each: flow_lpm(each, first), called(runs[0]))
    return TELLING.worked(told, subject, results, moves=moves)


def _results(run: Run) -> Iterator[Result]:
    body, situation = run.body, called(run)
    name = body.plant.drawing.name
    bypasses = (place.part for place in on(body, Role.BYPASSES) if not place.device.built_in)
    for part in dict.fromkeys((*sources(body), *body.pumps, *body.takers, *bypasses)):
        flow = flow_lpm(run, part)
        if flow or (flow is not None and part in run.situation.called | run.situation.running):
            yield Result(worded("{situation}: {part}", situation=situation, part=name(part)), flow, "l/min")
    speeds = {pipe: speed for pipe in body.pipes if (speed := run.velocity_m_s(pipe))}
    if speeds:
        fastest = max(speeds, key=lambda pipe: speeds[pipe])
        yield Result(
            worded("{situation}: fastest, in {fastest}", situation=situation, fastest=name(fastest)),
            speeds[fastest],
            "m/s",
        )
        laws = Counter(law(body, pipe, speed).value for pipe, speed in speeds.items())
        yield Result(
            worded("{situation}: pipes by law of friction", situation=situation),
            strung(
                worded("{count} {law}", count=count, law=a_word(each)) for each, count in laws.most_common()
            ),
            "",
        )


def law(body: SolvedBody, pipe: str, velocity_m_s: float) -> Law:
    """Which law of friction holds in a pipe at a velocity."""
    water, bore = body.network.water, body.bore_mm(pipe)
    if water is None or bore is None or velocity_m_s == 0:
        return Law.STILL
    reynolds = water.density_kg_m3 * velocity_m_s * bore / 1000 / water.viscosity_pa_s
    if reynolds <= LAMINAR_BELOW:
        return Law.LAMINAR
    return Law.TURBULENT if reynolds >= TURBULENT_FROM else Law.TRANSITION
