"""What is said of a question, and what is made of a value typed or pasted for it. No Qt."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.editor.panels.numbers import NotANumberError, typed
from circuitcheck.editor.panels.subjects import Left, put
from circuitcheck.finding import Grade
from circuitcheck.parts.kind import Field, FieldType
from circuitcheck.report.asking import ABSENT, DESIGN, SHEET, Need, Question, State
from circuitcheck.report.plain import cell
from circuitcheck.report.wording import lower, spoken, upper, value_words

NOT_KNOWN_SIGN = "?"
_NOT_KNOWN = frozenset({NOT_KNOWN_SIGN, "not known", "unknown"})
_SWITCHES = {"yes": True, "no": False, "true": True, "false": False}
COPIED = ("key", "part", "what", "value", "unit", "needed by")
VALUE_COLUMN = COPIED.index("value")


def subject_ids(subject: str) -> tuple[str, ...]:
    """The subject as the details panel's `put` is told it: none for the drawing's own data."""
    return () if subject in (DESIGN, SHEET) else (subject,)


def part_words(drawing: Drawing, subject: str) -> str:
    """What a question is about: `Pump`, `Pipe p7, pump to bypass`, `The drawing`."""
    if subject in (DESIGN, SHEET):
        return "The drawing"
    if subject not in drawing.pipes:
        return " ".join(upper(drawing.name(subject)).split())
    ends = (
        lower(drawing.name(end.part)) if isinstance(end, Joint) else "a free end"
        for end in drawing.pipes[subject].ends
    )
    return " ".join(f"Pipe {subject}, {' to '.join(ends)}".split())


def held_words(question: Question, decimal: str, drawing: Drawing | None = None) -> str:
    """The value as it is shown, its unit left to the field: empty where it is not known."""
    if question.value is None:
        return ""
    words = value_words(question.field, question.value, decimal, drawing)
    if question.field.type is FieldType.NUMBER and question.field.unit:
        words = words.removesuffix(f" {question.field.unit}")
    return words


def state_words(question: Question) -> str:
    """How a value came about, for beside it: empty for one the drawing states."""
    match question.state:
        case State.OPEN:
            return "not known"
        case State.KEPT:
            return "not known, kept"
        case State.USUAL:
            return "usual"
        case State.WORKED:
            return question.how
        case State.GIVEN:
            return ""


def limits_words(field: Field) -> str:
    """What a number may be, in words: `more than 0 mm`; empty where anything goes."""
    unit = f" {field.unit}" if field.unit else ""
    if field.above is not None:
        most = "" if field.most is None else f", at most {field.most:g}"
        return f"more than {field.above:g}{most}{unit}"
    if field.least is not None and field.most is not None:
        return f"from {field.least:g} to {field.most:g}{unit}".replace("-", "−")
    if field.least is not None:
        return f"at least {field.least:g}{unit}"
    return "" if field.most is None else f"at most {field.most:g}{unit}"


def need_words(needed: Sequence[Need]) -> str:
    """What asks, the heaviest check first: `Vessel too small; Pump too weak; figures: Swell, Pump duty`."""
    checks = [need.title for need in needed if not need.is_figure]
    figures = [need.title for need in needed if need.is_figure]
    if figures:
        checks.append(f"figure{'s' if len(figures) > 1 else ''}: {', '.join(figures)}")
    return upper("; ".join(checks))


def about(
    drawing: Drawing, question: Question, needed: Sequence[Need], *, rests: bool, is_judged: bool = True
) -> str:
    """Everything there is to say of a question: what it is, what it may be, what waits for it.

    `is_judged`: the checks have answered for this drawing, so that silence means something.
    """
    field = question.field
    said = [f"{part_words(drawing, question.subject)}: {lower(field.label)}."]
    said += [field.help] if field.help else []
    limits = limits_words(field)
    said += [f"A number in {field.unit}." if field.unit and not limits else ""]
    said += [f"It must be {limits}." if limits else ""]
    if not question.state.is_known:
        said.append(_waiting(needed, is_judged=is_judged))
    elif rests and question.state is State.USUAL:
        said.append("A verdict rests on this usual value.")
    return " ".join(each for each in said if each)


def _waiting(needed: Sequence[Need], *, is_judged: bool) -> str:
    if not needed:
        return "No check or figure waits for it now." if is_judged else "The checks are still judging."
    told = [
        f"{need.title} (would be {need.grade}{', not judged without it' if need.is_silent else ''})"
        if need.grade is not Grade.UNANSWERED
        else need.title
        for need in needed
        if not need.is_figure
    ]
    if figures := need_words([need for need in needed if need.is_figure]):
        told.append(lower(figures) if told else figures)
    return f"Needed by: {'; '.join(told)}."


def value_of(field: Field, text: str) -> Any:
    """What a text says: a value, None (not known) or `Left.OUT`. Raises EditError for what says nothing.

    A number may carry its unit; a choice is named as it is shown.
    """
    said = " ".join(text.split())
    word = said.casefold()
    if not said or word == "usual":
        return Left.OUT
    if word in _NOT_KNOWN:
        return None
    match field.type:
        case FieldType.NUMBER:
            if field.unit and said.endswith(field.unit):
                said = said.removesuffix(field.unit)
            try:
                return typed(said)
            except NotANumberError as error:
                raise EditError(str(error)) from error
        case FieldType.SWITCH if word in _SWITCHES:
            return _SWITCHES[word]
        case FieldType.CHOICE | FieldType.CHOICES:
            return _chosen(field, word)
        case FieldType.REFERENCE:
            return said
    raise EditError(f"{field.label}: “{said}” is neither yes nor no.")


def _chosen(field: Field, word: str) -> Any:
    known = {spoken(each): each for each in field.choices} | {each: each for each in field.choices}
    if field.type is FieldType.CHOICES:
        words = [] if word == "none" else [each.strip() for each in word.split(",")]
        if all(each in known for each in words):
            return tuple(known[each] for each in words)
    elif word in known:
        return known[word]
    options = ", ".join(spoken(each) for each in field.choices)
    raise EditError(f"{field.label}: “{word}” cannot be set. It is one of {options}.")


def set_answer(drawing: Drawing, question: Question, value: Any) -> tuple[str, Drawing]:
    """The step that answers a question: its name, and the drawing after it. Raises EditError."""
    if value is Left.OUT and question.held is ABSENT:
        return "", drawing
    return put(drawing, subject_ids(question.subject), question.field.name, value)


def copied(
    drawing: Drawing, questions: Sequence[Question], asking: Mapping[str, Sequence[Need]], decimal: str
) -> str:
    """Questions as a table for a spreadsheet; what is pasted back from it finds its place by the key."""
    lines = ["\t".join(COPIED)]
    for question in questions:
        name = part_words(drawing, question.subject)
        needed = need_words(asking.get(question.key, ())) if not question.state.is_known else ""
        if question.value is None:
            value = ""
        elif question.field.type is FieldType.NUMBER:
            # A number is no formula, a minus sign or not.
            value = held_words(question, decimal)
        elif question.field.type is FieldType.REFERENCE:
            value = cell(str(question.value))
        else:
            value = cell(held_words(question, decimal, drawing))
        texts = (cell(question.key), cell(name), question.field.label, value, question.field.unit, needed)
        lines.append("\t".join(" ".join(text.split()) for text in texts))
    return "\n".join(lines) + "\n"
