"""Files from strangers: whatever Python's own parser lets through or chokes on gets a sentence."""

from __future__ import annotations

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.storage.limits import LONGEST_LABEL, MOST_BYTES, MOST_DEPTH, MOST_DIGITS
from circuitcheck.storage.strict_json import Repeated, decode
from tests.storage.files import faults
from tests.strategies import json_values

SOUND = '{"wetcircuit": 1, "title": "Cottage"}'


def with_extra(literal: str) -> bytes:
    """A sound file with a field that this program does not know."""
    return f'{{"wetcircuit": 1, "later": {literal}}}'.encode()


def with_output(literal: str) -> bytes:
    data = f'{{"id": "hs1", "kind": "heat_source", "data": {{"output_kw": {literal}}}}}'
    return f'{{"wetcircuit": 1, "components": [{data}]}}'.encode()


def nested(depth: int) -> str:
    return "[" * depth + "]" * depth


NO_NUMBERS = [
    "NaN",
    "Infinity",
    "-Infinity",
    "1e999",
    "-1e999",
    "1" * 5_000,
    "-" + "1" * 5_000,
    "0." + "1" * 5_000,
]


@pytest.mark.parametrize("literal", NO_NUMBERS, ids=lambda literal: literal[:9])
def test_what_is_no_number_is_named_with_its_place(literal: str) -> None:
    (fault,) = faults(with_output(literal))
    assert (fault.item, fault.field) == ("hs1", "output_kw")
    assert literal[:8] in fault.message
    (fault,) = faults(with_extra(f'[{{"x": {literal}}}]'))
    assert fault.field == "later"
    assert "finite number" in fault.message


def test_a_number_may_have_as_many_digits_as_python_reads() -> None:
    assert faults(with_extra("1" * MOST_DIGITS)) == ()
    assert len(faults(with_extra("1" * (MOST_DIGITS + 1)))) == 1


@pytest.mark.parametrize(
    ("text", "item", "field"),
    [
        ('{"wetcircuit": 1, "wetcircuit": 1}', "", "wetcircuit"),
        ('{"wetcircuit": 1, "title": "a", "title": "a"}', "", "title"),
        ('{"wetcircuit": 1, "later": 1, "later": 1}', "", "later"),
        ('{"wetcircuit": 1, "design": {"occupants": 1, "occupants": 2}}', "design", "occupants"),
        ('{"wetcircuit": 1, "components": [{"id": "x", "id": "x", "kind": "tee"}]}', "x", "id"),
        (
            '{"wetcircuit": 1, "components": [{"id": "x", "kind": "tee", "data": {"note": "", "note": ""}}]}',
            "x",
            "note",
        ),
        (
            '{"wetcircuit": 1, "notes": [{"id": "n", "replies": [{"text": "", "text": ""}]}]}',
            "n.replies[0]",
            "text",
        ),
        # The same key once written plainly and once with an escape.
        ('{"wetcircuit": 1, "title": "a", "t\\u0069tle": "a"}', "", "title"),
    ],
)
def test_a_key_twice_in_one_object_is_named(text: str, item: str, field: str) -> None:
    (fault,) = faults(text.encode())
    assert (fault.item, fault.field) == (item, field)
    assert "more than once" in fault.message


def test_a_key_twice_in_an_unknown_field_is_named() -> None:
    (fault,) = faults(with_extra('{"a": [{"b": 1, "b": 1}]}'))
    assert "later" in fault.field
    assert "b" in fault.field


@pytest.mark.parametrize("coding", ["utf-16", "utf-16-le", "utf-16-be", "utf-32"])
def test_other_codings_are_refused(coding: str) -> None:
    (fault,) = faults(SOUND.encode(coding))
    assert "UTF-16" in fault.message


def test_bytes_that_are_no_utf8_are_refused_with_their_line() -> None:
    (fault,) = faults('{"wetcircuit": 1,\n"title": "Hütte"}'.encode("latin-1"))
    assert "not coded as UTF-8: line 2" in fault.message


@pytest.mark.parametrize(
    "escape", ["\\ud800", "\\uDFFF", "\\ud800\\u0041", "\\ud800 \\udc00", "\\ud800\\\\udc00"]
)
def test_half_a_character_is_refused_with_its_line(escape: str) -> None:
    found = faults(f'{{"wetcircuit": 1,\n\n"title": "{escape}"}}'.encode())
    assert found
    assert all("Line 3 holds half a character" in fault.message for fault in found)


@pytest.mark.parametrize("escape", ["\\ud83d\\ude00", "\\\\ud800", "\\u00e9"])
def test_a_whole_character_may_be_escaped(escape: str) -> None:
    assert faults(f'{{"wetcircuit": 1, "title": "{escape}"}}'.encode()) == ()


@pytest.mark.parametrize("depth", [MOST_DEPTH, 100, 900, 5_000, 100_000, 1_000_000])
def test_deep_nesting_is_refused_and_never_a_recursion_error(depth: int) -> None:
    (fault,) = faults(with_extra(nested(depth)))
    assert f"nested at most {MOST_DEPTH} deep" in fault.message
    (fault,) = faults(with_extra('{"a":' * depth + "1" + "}" * depth))
    assert f"nested at most {MOST_DEPTH} deep" in fault.message
    # Where a known field is nested so, that is the fault.
    assert faults(f'{{"wetcircuit": 1, "title": {nested(depth)}}}'.encode())
    # Never closed again.
    assert faults(b'{"wetcircuit": 1, "later": ' + b"[" * depth)


@pytest.mark.parametrize(
    ("before", "after", "holders"),
    [
        ('"later": ', "", 1),
        ('"design": {"later": ', "}", 2),
        ('"components": [{"id": "x", "kind": "tee", "later": ', "}]", 3),
        ('"components": [{"id": "x", "kind": "tee", "data": {"later": ', "}}]", 4),
        ('"notes": [{"id": "x", "replies": [{"later": ', "}]}]", 5),
    ],
)
def test_the_depth_is_that_of_the_whole_file(before: str, after: str, holders: int) -> None:
    def file(depth: int) -> bytes:
        return f'{{"wetcircuit": 1, {before}{nested(depth)}{after}}}'.encode()

    assert faults(file(MOST_DEPTH - holders)) == ()
    assert len(faults(file(MOST_DEPTH - holders + 1))) == 1


@pytest.mark.parametrize(
    "text",
    [
        "",
        "   \n",
        "{",
        '{"wetcircuit": 1,}',
        "{'wetcircuit': 1}",
        '{"wetcircuit": 01}',
        SOUND + "x",
        '"\x01"',
        "// x",
    ],
)
def test_what_is_no_json_is_refused(text: str) -> None:
    (fault,) = faults(text.encode())
    assert fault.message.startswith(("The file is not JSON: line 1, column", "The file is empty"))


@pytest.mark.parametrize("text", ["[]", "null", "5", '"wetcircuit"', "true"])
def test_what_is_no_object_is_no_drawing(text: str) -> None:
    (fault,) = faults(text.encode())
    assert "no drawing" in fault.message


def test_a_file_over_64_mib_is_refused() -> None:
    assert faults(SOUND.encode().ljust(MOST_BYTES)) == ()
    (fault,) = faults(SOUND.encode().ljust(MOST_BYTES + 1))
    assert "larger than 64 MiB" in fault.message


def test_escapes_that_would_paint_the_terminal_are_shown_as_codes() -> None:
    (fault,) = faults(b'{"wetcircuit": 1, "\\u001b[31m\\u202e": NaN}')
    assert fault.message.isprintable()


@given(json_values())
def test_sound_json_is_read_as_the_standard_library_reads_it(value: Any) -> None:
    assert decode(json.dumps(value).encode()) == value


@given(st.binary(max_size=40) | st.text('[]{}":,\\u0dD8cC19eE+-.NaNIfty \ufeff', max_size=40).map(str.encode))
def test_no_bytes_raise_anything_but_a_drawing_error(data: bytes) -> None:
    assert faults(data)


@given(st.lists(st.tuples(st.sampled_from("abc"), st.integers()), max_size=6))
def test_keys_given_twice_are_marked(pairs: list[tuple[str, int]]) -> None:
    text = "{" + ", ".join(f'"{key}": {value}' for key, value in pairs) + "}"
    found = decode(text.encode())
    assert found == dict(pairs)
    keys = [key for key, _ in pairs]
    twice = {key for key in keys if keys.count(key) > 1}
    assert set(found.twice if isinstance(found, Repeated) else ()) == twice


def test_a_label_may_be_as_long_as_the_limit() -> None:
    assert faults(f'{{"wetcircuit": 1, "title": "{"x" * LONGEST_LABEL}"}}'.encode()) == ()
    assert len(faults(f'{{"wetcircuit": 1, "title": "{"x" * (LONGEST_LABEL + 1)}"}}'.encode())) == 1
