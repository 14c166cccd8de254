"""One label on two parts.

Flags: Two or more parts or controls of the drawing that bear the same label. Capitals and blanks tell
    no two apart; parts without a label are not judged.
Why: Findings, the parts list and whoever stands before the plant call a part by its label. If two bear
    the same, the wrong valve is shut.
Remedy: Give each a label of its own: a number, a room or a side is enough.
Source: Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.layout import labelled
from circuitcheck.checks.wording import listed
from circuitcheck.drawing.edits import relabel
from circuitcheck.drawing.labelled import label_key
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Grade, Says

NAME = "label-twice"


def judge(case: Case) -> Verdict:
    """One piece of advice for each label that several parts or controls bear."""
    drawing = case.drawing
    labels = labelled(case)
    parts = labels.parts
    controls: dict[str, list[str]] = {}
    for control in drawing.controls.values():
        if control.label.strip():
            controls.setdefault(label_key(control.label), []).append(control.id)
    twice = {*labels.twice, *(key for key, ids in controls.items() if len(ids) > 1 or key in parts)}
    findings = [
        _finding(drawing, (*sorted(parts.get(key, ())), *controls.get(key, ()))) for key in sorted(twice)
    ]
    borne = len(parts) + sum(key not in parts for key in controls)
    return Verdict(tuple(findings), borne - len(findings))


def _finding(drawing: Drawing, ids: tuple[str, ...]) -> Finding:
    return Finding(
        NAME,
        Grade.ADVICE,
        Says("{ids} bear the same label: {label}.", {"ids": listed(ids), "label": drawing.name(ids[0])}),
        components=ids,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To number them, in the order in which they are named."""
    drawing = case.drawing
    taken = set(labelled(case).parts) | {label_key(control.label) for control in drawing.controls.values()}
    after = drawing
    new: list[str] = []
    number = 1
    for id in finding.components:
        base = " ".join(drawing.name(id).split())
        while label_key(f"{base} {number}") in taken:
            number += 1
        new.append(f"{base} {number}")
        taken.add(label_key(new[-1]))
        after = relabel(after, id, new[-1])
    yield Proposal(Says("Call them {labels}.", {"labels": listed(new)}), after)
