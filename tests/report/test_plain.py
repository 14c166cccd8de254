"""Text from a file can neither steer a terminal nor be a formula."""

from __future__ import annotations

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.report.plain import cell, is_unseen, plain


@pytest.mark.parametrize(
    "text", ["", "Heat source", "Kocioł 暖房 °C 3 × 2 – ’", "a\u00a0b", "<b>&amp;</b> {x} %s"]
)
def test_what_is_seen_stays(text: str) -> None:
    assert plain(text) == text


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("a\x1b[31m", "a<U+001B>[31m"),
        ("a\nb", "a<U+000A>b"),
        ("\x9b", "<U+009B>"),
        ("\u202eevil", "<U+202E>evil"),
        ("\u2066\u2069", "<U+2066><U+2069>"),
        ("a\u200bb", "a<U+200B>b"),
        ("\udcff", "<U+DCFF>"),
        ("\u2028", "<U+2028>"),
        ("\ue000", "<U+E000>"),
        ("\U000e0041", "<U+E0041>"),
    ],
)
def test_what_is_not_seen_is_shown_as_its_code(text: str, shown: str) -> None:
    assert plain(text) == shown


@given(st.text(st.characters()))
def test_nothing_unseen_is_left(text: str) -> None:
    shown = plain(text)
    assert not any(is_unseen(each) for each in shown)
    assert not any(unicodedata.category(each) in ("Cc", "Cf", "Cs") for each in shown)


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1", "@x", "\t=1", "\r=1"])
def test_a_formula_is_quoted(text: str) -> None:
    assert cell(text) == f"'{plain(text)}"


@pytest.mark.parametrize("text", ["", "1+1", "hs1 iv1", "a=b"])
def test_anything_else_is_not(text: str) -> None:
    assert cell(text) == text
