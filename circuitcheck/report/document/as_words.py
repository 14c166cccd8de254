"""A figure with its working as plain text, in the language it is told in."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.report.document.content import Worked
from circuitcheck.report.sizes import columns, wrapped
from circuitcheck.told import Tongue, a_word, tell

FORMULA, NOT_WORKED, MISSING = a_word("Formula"), a_word("Not worked"), a_word("Missing")
RESTS_ON, SOURCE, HOLDS = a_word("Rests on"), a_word("Source"), a_word("Holds")


def figure_text(told: Worked, tongue: Tongue) -> str:
    """One figure; its texts are told in `tongue` already."""
    return "".join(f"{line.rstrip()}\n" for line in _lines(told, tongue))


def _lines(told: Worked, tongue: Tongue) -> Iterator[str]:
    def said(label: str, text: str) -> list[str]:
        return wrapped(f"{tell(label, tongue)}: {text}", "  ", hang="    ") if text else []

    yield from wrapped(": ".join(each for each in (told.title, told.about) if each), "", hang="  ")
    yield from said(NOT_WORKED, told.refused)
    yield from said(MISSING, "; ".join(told.missing))
    yield from columns(told.results, "  = ")
    first = f"  {tell(FORMULA, tongue)}: "
    for number, line in enumerate(told.formula.splitlines()):
        yield from wrapped(line, first if number == 0 else " " * len(first), hang=" " * (len(first) + 2))
    rows = [
        (symbol, value, unit, f"{name} ({origin})" if name else f"({origin})")
        for symbol, value, unit, name, origin in told.inputs
    ]
    yield from columns(rows, "    ", last_wraps=True)
    for each in told.rests_on:
        yield from said(RESTS_ON, each)
    yield from said(SOURCE, told.source)
    yield from said(HOLDS, told.limits)
