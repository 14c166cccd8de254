"""What a document holds, told in another language: every text of it that the program wrote."""

from __future__ import annotations

from dataclasses import fields, is_dataclass
from typing import Any, TypeVar

from circuitcheck.sheet.pictures import Picture
from circuitcheck.told import ENGLISH, Told, Tongue, a_word

LANGUAGE = a_word("en-GB")
"""What a file says it is written in. Its translation is the tag of that language."""
_Value = TypeVar("_Value")


def retold(value: _Value, tongue: Tongue) -> _Value:
    """The same value with every text in it told in that language; texts of a person or a file stay as they are."""
    if tongue is ENGLISH:
        return value
    told: _Value = _retold(value, tongue)
    return told


def _retold(value: Any, tongue: Tongue) -> Any:
    if isinstance(value, Told):
        return value.told_in(tongue)
    if isinstance(value, tuple):
        return tuple(_retold(each, tongue) for each in value)
    # A picture's texts are told when it is made: how wide they are decides where they stand.
    if is_dataclass(value) and not isinstance(value, type | Picture):
        told = {each.name: _retold(getattr(value, each.name), tongue) for each in fields(value)}
        return type(value)(**told)
    return value
