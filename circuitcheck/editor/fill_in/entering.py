"""What is said of a question, and what is made of a value typed or pasted for it. No Qt."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.editor import translating
from circuitcheck.editor.panels.numbers import NotANumberError, typed
from circuitcheck.editor.panels.subjects import Left, put
from circuitcheck.editor.translating import decimal_sign, of_error, shown_told, tr, tr_n
from circuitcheck.finding import Grade
from circuitcheck.parts.kind import Field, FieldType
from circuitcheck.report.asking import ABSENT, DESIGN, SHEET, Need, Question, State
from circuitcheck.report.plain import cell
from circuitcheck.report.wording import lower, spoken, upper, value_words
from circuitcheck.told import a_word, strung, worded

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
        return tr("The drawing")
    if subject not in drawing.pipes:
        return " ".join(shown_told(upper(drawing.name(subject))).split())
    start, finish = (
        shown_told(lower(drawing.name(end.part))) if isinstance(end, Joint) else tr("a free end")
        for end in drawing.pipes[subject].ends
    )
    return " ".join(tr("Pipe {id}, {start} to {finish}", id=subject, start=start, finish=finish).split())


def held_words(question: Question, decimal: str, drawing: Drawing | None = None) -> str:
    """The value as it is shown, its unit left to the field: empty where it is not known."""
    if question.value is None:
        return ""
    words = tr(value_words(question.field, question.value, decimal, drawing))
    if question.field.type is FieldType.NUMBER and question.field.unit:
        words = words.removesuffix(f" {tr(question.field.unit)}")
    return words


def state_words(question: Question) -> str:
    """How a value came about, for beside it: empty for one the drawing states."""
    match question.state:
        case State.OPEN:
            return tr("not known")
        case State.KEPT:
            return tr("not known, kept")
        case State.USUAL:
            return tr("usual")
        case State.WORKED:
            return tr(question.how)
        case State.GIVEN:
            return ""


def limits_words(field: Field) -> str:
    """What a number may be, in words: `more than 0 mm`; empty where anything goes."""
    unit = f" {tr(field.unit)}" if field.unit else ""
    if field.above is not None:
        above, most = _limit(field.above), field.most
        if most is not None:
            return tr("more than {above}, at most {most}{unit}", above=above, most=_limit(most), unit=unit)
        return tr("more than {above}{unit}", above=above, unit=unit)
    if field.least is not None and field.most is not None:
        return tr(
            "from {least} to {most}{unit}", least=_limit(field.least), most=_limit(field.most), unit=unit
        )
    if field.least is not None:
        return tr("at least {least}{unit}", least=_limit(field.least), unit=unit)
    return "" if field.most is None else tr("at most {most}{unit}", most=_limit(field.most), unit=unit)


def _limit(value: float) -> str:
    return f"{value:g}".replace(".", decimal_sign()).replace("-", "−")


def need_words(needed: Sequence[Need]) -> str:
    """What asks, the heaviest check first: `Vessel too small; Pump too weak; figures: Swell, Pump duty`."""
    checks = [tr(need.title) for need in needed if not need.is_figure]
    figures = [tr(need.title) for need in needed if need.is_figure]
    if figures:
        checks.append(tr_n("figure: {names}", "figures: {names}", len(figures), names=", ".join(figures)))
    return upper("; ".join(checks))


def about(
    drawing: Drawing, question: Question, needed: Sequence[Need], *, rests: bool, is_judged: bool = True
) -> str:
    """Everything there is to say of a question: what it is, what it may be, what waits for it.

    `is_judged`: the checks have answered for this drawing, so that silence means something.
    """
    field = question.field
    said = [f"{part_words(drawing, question.subject)}: {tr(lower(field.label))}."]
    said += [tr(field.help)] if field.help else []
    limits = limits_words(field)
    said += [tr("A number in {unit}.", unit=tr(field.unit)) if field.unit and not limits else ""]
    said += [tr("It must be {limits}.", limits=limits) if limits else ""]
    if not question.state.is_known:
        said.append(_waiting(needed, is_judged=is_judged))
    elif rests and question.state is State.USUAL:
        said.append(tr("A verdict rests on this usual value."))
    return " ".join(each for each in said if each)


def _waiting(needed: Sequence[Need], *, is_judged: bool) -> str:
    if not needed:
        return (
            tr("No check or figure waits for it now.") if is_judged else tr("The checks are still judging.")
        )
    needs = [
        _need_and_grade(need) if need.grade is not Grade.UNANSWERED else tr(need.title)
        for need in needed
        if not need.is_figure
    ]
    if figures := need_words([need for need in needed if need.is_figure]):
        needs.append(translating.lower(figures) if needs else figures)
    return tr("Needed by: {these}.", these="; ".join(needs))


def _need_and_grade(need: Need) -> str:
    title, grade = tr(need.title), tr(need.grade.value)
    if need.is_silent:
        return tr("{title} (would be {grade}, not judged without it)", title=title, grade=grade)
    return tr("{title} (would be {grade})", title=title, grade=grade)


def value_of(field: Field, text: str) -> Any:
    """What a text says: a value, None (not known) or `Left.OUT`. Raises EditError for what says nothing.

    A number may carry its unit; a choice is named as it is shown.
    """
    said = " ".join(text.split())
    named = said.casefold()
    if not said or named in _either("usual"):
        return Left.OUT
    if named in _NOT_KNOWN or named in _either("not known") | _either("unknown"):
        return None
    match field.type:
        case FieldType.NUMBER:
            for unit in (field.unit, tr(field.unit)):
                said = said.removesuffix(unit)
            try:
                return typed(said)
            except NotANumberError as error:
                raise EditError(of_error(error)) from error
        case FieldType.SWITCH if named in _switches():
            return _switches()[named]
        case FieldType.CHOICE | FieldType.CHOICES:
            return _chosen(field, named)
        case FieldType.REFERENCE:
            return said
    raise EditError(worded("{label}: “{said}” is neither yes nor no.", label=a_word(field.label), said=said))


def _either(text: str) -> frozenset[str]:
    """A word as it may be typed: in English, or in the language of the window."""
    return frozenset({text, tr(text).casefold()})


def _switches() -> Mapping[str, bool]:
    return {tr(each).casefold(): value for each, value in _SWITCHES.items()} | _SWITCHES


def _chosen(field: Field, named: str) -> Any:
    known = {form: each for each in field.choices for form in (each, *_either(str(spoken(each))))}
    if field.type is FieldType.CHOICES:
        words = [] if named in _either("none") else [each.strip() for each in named.split(",")]
        if all(each in known for each in words):
            return tuple(known[each] for each in words)
    elif named in known:
        return known[named]
    options = strung(spoken(each) for each in field.choices)
    raise EditError(
        worded(
            "{label}: “{said}” cannot be set. It is one of {options}.",
            label=a_word(field.label),
            said=named,
            options=options,
        )
    )


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
