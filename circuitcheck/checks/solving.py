"""What the checks of solved flows share: the bodies, the design flows, and what is said where one can't be solved."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.wording import figure, named, shortened, upper
from circuitcheck.figures.resistance import LITRES_A_MINUTE
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.told import a_word, worded

NO_FLOW_LPM = 0.1
"""Less than this, in litres a minute, is taken for no flow: common practice, no source."""

ENOUGH = 0.9
"""A flow is enough from 90 % of its design: common practice, no source."""


def unanswered(
    case: Case,
    check: str,
    subject: str,
    question: str,
    missing: Iterable[str],
    would_be: Grade,
    why: str = "",
) -> Finding:
    """One finding for a thing that can't be judged. `question` ends in a question mark; `why` says what
    stands against computing it at all."""
    names = tuple(dict.fromkeys(missing))
    template = "{thing}: {question} "
    template += "It rests on what is not known: {missing}." if names else "It can't be computed: {why}."
    says = Says(
        template,
        {
            "thing": upper(case.drawing.name(subject)),
            "question": a_word(question),
            "missing": shortened(names),
            "why": why,
        },
    )
    return Finding(check, Grade.UNANSWERED, says, (subject,), missing=names, would_be=would_be)


def barred(case: Case, body: SolvedBody) -> tuple[tuple[str, ...], str] | None:
    """What keeps a body from being judged, and why where nothing is missing; None where it is solved."""
    if body.missing:
        return body.missing, ""
    if body.refused:
        return (), body.refused
    # Where no pump runs no water is driven, however the valves rest.
    pumped = (run for run in body.runs if run.situation.running.intersection(body.pumps))
    unsure = tuple(dict.fromkeys(name for run in pumped for name in run.situation.missing))
    if unsure:
        return unsure, ""
    for run in body.runs:
        if run.failure is not None:
            where = named(case.drawing, run.failed_at) or a_word("the whole circuit")
            return (), worded(
                "{name}, at {where}, {why}",
                name=a_word(run.situation.name),
                where=where,
                why=a_word(run.failure.why),
            )
    return None


def calling(body: SolvedBody) -> Iterator[Run]:
    """The runs in which something is called."""
    return (run for run in body.runs if run.situation.called and run.situation.heat_on)


def share(case: Case, run: Run) -> float | None:
    """The part of their design flow that what is called can ask for. Where the called want more heat
    than the heat sources give, all are cut alike: more water would carry no more heat. None where one
    of them has no number for what it wants, as a vented store's coil: the shares are then not known."""
    parts = called(run)
    heats = [place for place in case.circuit.devices(Role.HEATS) if case.solved.at(place) is run.body]
    if len(parts) > 1 and heats and not all(has_design(case, part) for part in parts):
        return None
    outputs = [case.value(place.part, "output_kw") for place in heats]
    water = run.body.network.water
    if not heats or water is None or any(output is None for output in outputs):
        return 1.0
    gives = water.flow_m3_s(sum(outputs)) * LITRES_A_MINUTE
    wants = sum(run.body.design_lpm(part) or 0.0 for part in parts)
    return min(1.0, gives / wants) if wants > 0 else 1.0


def through_lpm(run: Run, part: str) -> float:
    """The water through an emitter or coil, whichever way it runs: one piped the other way round warms
    all the same."""
    return abs(run.flow_lpm(part) or 0.0)


def has_design(case: Case, part: str) -> bool:
    """Whether the part has a field that tells its design flow; a vented store's coil has none."""
    fields = {field.name for field in case.drawing.components[part].kind.own_fields}
    return bool(fields & {"output_kw", "output_w", "coil_power_kw"})


def if_otherwise(one_lpm: float, other_lpm: float) -> str:
    """How far a flow moves with the resistances that are defaults; empty where it does not."""
    low, high = (figure(each) for each in sorted((one_lpm, other_lpm)))
    if low == high:
        return ""
    return worded(
        " (Between {low} and {high} l/min if the resistances that the drawing does not "
        "give are twice or half the usual.)",
        low=low,
        high=high,
    )


def called(run: Run) -> tuple[str, ...]:
    """The emitters, coils and exchangers of the body that the situation calls, in the order of the drawing."""
    return tuple(part for part in run.body.takers if part in run.situation.called)


def in_words(run: Run) -> str:
    """The situation in a sentence."""
    name = run.situation.name
    return a_word("heating and hot water together") if name == "both" else name
