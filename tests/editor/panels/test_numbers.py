"""Numbers as they are typed and shown: a decimal sign typed the other way is never ten times wrong."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.editor.panels.numbers import NotANumberError, typed
from circuitcheck.report.wording import shown


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("1.5", 1.5),
        ("1,5", 1.5),
        (" 6 ", 6),
        (".5", 0.5),
        (",5", 0.5),
        ("6.", 6.0),
        ("-2,25", -2.25),
        ("−2.25", -2.25),
        ("+3", 3),
        ("1.500", 1.5),
        ("1,500", 1.5),
        ("007", 7),
    ],
)
def test_either_decimal_sign_is_taken(text: str, number: float) -> None:
    assert typed(text) == number


@pytest.mark.parametrize(
    "text",
    [
        "",
        " ",
        "-",
        ",",
        "1,000.5",
        "1.000,5",
        "1 000",
        "1'000",
        "1e3",
        "nan",
        "inf",
        "0x1",
        "six",
        "1..5",
        "٣",
        "1_0",
    ],
)
def test_anything_else_is_refused_with_a_sentence(text: str) -> None:
    with pytest.raises(NotANumberError, match=r"is not a number\.$"):
        typed(text)


def test_a_very_long_text_is_refused_in_short() -> None:
    with pytest.raises(NotANumberError) as refused:
        typed("9" * 5_000)
    assert len(str(refused.value)) < 80


@given(
    st.floats(allow_nan=False, allow_infinity=False, min_value=-1e12, max_value=1e12), st.sampled_from(".,")
)
def test_what_is_shown_can_be_typed_back(value: float, decimal: str) -> None:
    text = shown(value, decimal)
    assert typed(text) == pytest.approx(value, rel=1e-12, abs=1e-15)
    assert len(text) <= 40


def test_numbers_are_shown_short() -> None:
    assert [shown(value) for value in (6, 6.0, 0.3, 1.75, 1e-7, 100.0, -0.5)] == [
        "6",
        "6",
        "0.3",
        "1.75",
        "0.0000001",
        "100",
        "-0.5",
    ]
    assert shown(1.5, ",") == "1,5"
