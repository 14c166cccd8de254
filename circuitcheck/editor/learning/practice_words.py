"""Practice in words: topics, reasons, outcomes, and what is written of a part. No widgets."""

from __future__ import annotations

from circuitcheck.checks.catalogue import checks, lesson
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.panels.subjects import Left, remark, rows
from circuitcheck.editor.translating import decimal_sign, shown_told, tr, tr_n
from circuitcheck.lessons.scoring import WHOLE, Outcome, Score
from circuitcheck.parts.kind import FieldType
from circuitcheck.report.wording import upper
from circuitcheck.review.words import value_words

CONTROL_FIELDS = ("acts_on", "in_same_room_as")
SIDE_PX = 400


def topic_words(topic: str) -> str:
    """A topic of checks as a heading."""
    known = {
        "circulation": tr("Circulation"),
        "discharge": tr("Discharge"),
        "drawing_itself": tr("The drawing itself"),
        "flow": tr("Flows"),
        "heat_source": tr("Heat source and its safety"),
        "open_vented": tr("Open-vented heating"),
        "store": tr("Hot-water store"),
        "structure": tr("Structure"),
        "supply": tr("Cold and hot supply"),
    }
    return known.get(topic, topic.replace("_", " ").capitalize())


def reason_words(check: str) -> str:
    """What a check finds, as one says it."""
    return tr(lesson(check).title) if check in checks() else check


def outcome_words(outcome: Outcome) -> str:
    """What came of a fault, in a word or two."""
    return {
        Outcome.FOUND: tr("found"),
        Outcome.WRONG_REASON: tr("other reason"),
        Outcome.MISSED: tr("missed"),
    }[outcome]


def place_words(drawing: Drawing, place: str) -> str:
    """What a mark is on."""
    if place == WHOLE:
        return tr("Something is missing")
    return shown_told(upper(drawing.name(place)))


def asked_words(count: int) -> str:
    """What is to be done."""
    return tr_n("Find the fault", "Find the {count} faults", count)


def points_words(score: Score) -> str:
    """The points, with no more digits than they have."""
    return tr_n(
        "{points} of {count} point",
        "{points} of {count} points",
        score.most,
        points=f"{score.points:g}".replace(".", decimal_sign()),
    )


def score_words(score: Score) -> str:
    """What was found, in one sentence."""
    said = [
        tr("{count} found", count=score.count(Outcome.FOUND)),
        tr("{count} for another reason", count=score.count(Outcome.WRONG_REASON)),
        tr("{count} missed", count=score.count(Outcome.MISSED)),
        tr("{count} accused wrongly", count=len(score.false)),
    ]
    return tr("{all}.", all=", ".join(said))


def facts(drawing: Drawing, id: str | None) -> list[tuple[str, str]]:
    """What is written of a part, a pipe or a control, or of the drawing as a whole (None): each field
    that the drawing states, with its value; one that is stated as not known too."""
    found = []
    for row in rows(drawing, () if id is None else (id,)):
        value = row.held.value
        if row.key in ("label", "title", "note") or value is Left.OUT or value == ():
            continue
        names = row.key in CONTROL_FIELDS or row.field.type is FieldType.REFERENCE
        if names and value is not None:
            ids = (value,) if isinstance(value, str) else value
            text = ", ".join(shown_told(upper(drawing.name(each))) for each in ids)
        else:
            text = tr(value_words(row.field, value))
        found.append((tr(row.field.label), text))
    return found


def remark_words(drawing: Drawing, id: str) -> str:
    """What a part is, or what a pipe joins."""
    if id in drawing.pipes:
        return remark(drawing, (id,), ())
    thing = drawing.components.get(id) or drawing.controls[id]
    return tr(thing.kind.title)
