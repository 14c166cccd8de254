"""Rule books: every limit has its unit and source, each is asked for, and a book may leave one out."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

import circuitcheck
from circuitcheck.analysis import analyse
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.fields import DESIGN_FIELDS, RULE_BOOKS
from circuitcheck.drawing.filling_in import set_design
from circuitcheck.drawing.value import Drawing
from circuitcheck.rules.book import NoRuleError, book, book_names
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

EUROPEAN = "european_standards"


def sample(name: str) -> Drawing:
    return read(data_path("samples") / f"{name}.wetcircuit")


def test_england_is_the_first_and_the_default() -> None:
    assert book_names()[0] == "england" and EUROPEAN in book_names()
    assert book_names() == RULE_BOOKS
    (field,) = (field for field in DESIGN_FIELDS if field.name == "rule_book")
    assert field.default == "england" and field.choices == book_names()


@pytest.mark.parametrize("name", book_names())
def test_a_limit_has_a_value_a_unit_and_a_source(name: str) -> None:
    known = book(name)
    assert known.title and known.limits
    for limit in known.limits.values():
        assert limit.value is not None, limit
        assert re.search(r"\d|no source|from memory", limit.source), limit
        if isinstance(limit.value, (int, float)) and not isinstance(limit.value, bool):
            assert limit.unit or re.search(r"share|count|least_checks|factor|units", limit.name), limit


def test_the_european_book_cites_only_european_and_international_standards() -> None:
    for limit in book(EUROPEAN).limits.values():
        assert re.search(r"EN|ISO", limit.source), limit
        assert "Approved Document" not in limit.source and "WFR" not in limit.source


def test_every_limit_is_asked_for_somewhere() -> None:
    package = next(iter(circuitcheck.__path__))
    from pathlib import Path

    code = "\n".join(path.read_text(encoding="utf-8") for path in Path(package).rglob("*.py"))
    for name in book_names():
        for limit in book(name).limits:
            assert f'"{limit}"' in code, limit


def test_an_unknown_book_or_limit_is_an_error() -> None:
    with pytest.raises(KeyError):
        book("nowhere")
    with pytest.raises(NoRuleError, match="england sets no heat source: colour"):
        book("england").limit("heat_source.colour")


def test_under_the_european_book_what_it_does_not_set_is_not_judged_and_says_why() -> None:
    drawing = set_design(sample("terrace-as-proposed"), "rule_book", EUROPEAN)
    analysis = analyse(drawing)
    assert analysis.rule_book == EUROPEAN
    assert analysis.crashed == ()
    assert "discharge-too-long" in analysis.not_judged
    assert "european_standards sets no" in analysis.why_not_judged["discharge-too-long"]
    # What rests on no limit of a place is judged all the same.
    assert {"vessel-can-be-cut-off", "no-way-round-when-zones-shut"} <= set(analysis.judged)
    assert set(analysis.judged) | set(analysis.not_judged) | set(analysis.not_applicable) == set(checks())


def test_a_danger_stays_a_danger_under_either_book() -> None:
    drawing = sample("terrace-valve-before-vessel")
    for name in book_names():
        named = replace(drawing, design={**drawing.design, "rule_book": name})
        assert "vessel-can-be-cut-off" in {finding.check for finding in analyse(named).findings}
