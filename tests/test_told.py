"""English texts that can be told again: sentences with values, lists, numbers, and what they are elsewhere."""

from __future__ import annotations

import json
from copy import deepcopy
from dataclasses import dataclass

import rfc8785
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.finding import Says
from circuitcheck.told import (
    Told,
    a_word,
    in_tongue,
    listed,
    lower,
    spoken,
    strung,
    told_number,
    upper,
    worded,
    worded_n,
)


@dataclass
class Shouted:
    """A tongue that says everything in capitals, with a comma before the decimals."""

    decimal: str = ","

    def text(self, english: str) -> str:
        return "".join(piece if piece.startswith("{") else piece.upper() for piece in _pieces(english))

    def lower(self, text: str) -> str:
        return text


def _pieces(text: str) -> list[str]:
    found, rest = [], text
    while "{" in rest:
        before, _, rest = rest.partition("{")
        inside, _, rest = rest.partition("}")
        found += [before, f"{{{inside}}}"]
    return [*found, rest]


def told(text: str) -> str:
    assert isinstance(text, Told)
    return text.told_in(Shouted())


def test_a_template_is_told_with_what_is_told_in_it_and_a_label_stays_as_it_is() -> None:
    said = worded("{thing} holds {litres} l of {what}", thing="Pump", litres=1.5, what=a_word("water"))
    assert said == "Pump holds 1.5 l of water"
    assert told(said) == "Pump HOLDS 1,5 L OF WATER"
    assert told(worded("{share:.1%} of it", share=0.255)) == "25,5% OF IT"
    assert told(worded("{many:,} of {all:,.0f}", many=65536, all=1e6)) == "65\u202f536 OF 1\u202f000\u202f000"


def test_a_value_is_never_read_as_a_template() -> None:
    assert told(worded("valve {name}", name="{thing}")) == "VALVE {thing}"


def test_a_template_may_itself_be_told() -> None:
    assert told(Says(a_word("{thing} is shut"), {"thing": "V1"}).told) == "V1 IS SHUT"


def test_one_and_many() -> None:
    assert (worded_n("1 pipe", "{count} pipes", 1), told(worded_n("1 pipe", "{count} pipes", 2))) == (
        "1 pipe",
        "2 PIPES",
    )


def test_lists_tell_each_of_theirs() -> None:
    assert listed([]) == "" and listed(["a"]) == "a"
    assert listed(["a", "b", a_word("c")]) == "a, b and c"
    assert told(listed(["a", "b", a_word("c")])) == "a, b AND C"
    assert told(strung(["a", a_word("b")], "; ")) == "a; B"
    assert told(strung([])) == ""


def test_a_first_letter_is_the_tongues_own() -> None:
    assert (upper("pump P"), lower("Pump P")) == ("Pump P", "pump P")
    assert (upper(a_word("pump")), lower(a_word("Pump"))) == ("Pump", "pump")
    assert told(lower(a_word("Pump"))) == "PUMP"


def test_words_of_the_file_and_numbers() -> None:
    assert (spoken("hot_water"), told(spoken("hot_water"))) == ("hot water", "HOT WATER")
    assert (told_number("1.25"), told(told_number("1.25"))) == ("1.25", "1,25")


def test_an_error_tells_what_it_was_given() -> None:
    assert in_tongue(ValueError(a_word("too hot")), Shouted()) == "TOO HOT"
    assert in_tongue(ValueError(), Shouted()) == ""


def test_copied_written_or_sent_it_is_plain_english() -> None:
    said = worded("{thing} is shut", thing="V1")
    for plain in (
        said.__reduce__()[0](*said.__reduce__()[1]),
        deepcopy(said),
        json.loads(json.dumps(said)),
        said + "",
    ):
        assert type(plain) is str and plain == "V1 is shut"
    assert rfc8785.dumps({"said": said}) == b'{"said":"V1 is shut"}'
    assert hash(said) == hash("V1 is shut") and a_word(said) is said


@given(st.lists(st.text(max_size=5), max_size=5))
def test_a_list_reads_as_it_did_before(texts: list[str]) -> None:
    whole = "".join(texts) if len(texts) < 2 else f"{', '.join(texts[:-1])} and {texts[-1]}"
    assert listed(texts) == whole
