"""A rule book: named limits, each with its unit and its source, read from a data file in this folder.

A limit that a book does not set is not there: a check that needs it then says that it judged
nothing under this book, and why.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any


class NoRuleError(LookupError):
    """The rule book sets no limit of that name."""

    def __init__(self, book: str, name: str) -> None:
        super().__init__(f"the rule book {book} sets no {name.replace('.', ': ').replace('_', ' ')}")
        self.book = book
        self.name = name


@dataclass(frozen=True, slots=True)
class Limit:
    """One limit: a number, a word or a table (rows of columns by name), its unit, and its source."""

    name: str
    value: Any
    unit: str
    source: str


@dataclass(frozen=True, slots=True)
class RuleBook:
    """A rule book by the name that drawings call it by, its title, and its limits by `topic.name`."""

    name: str
    title: str
    limits: Mapping[str, Limit]

    def limit(self, name: str) -> Limit:
        """The limit of that name. Raises NoRuleError where this book sets none."""
        try:
            return self.limits[name]
        except KeyError:
            raise NoRuleError(self.name, name) from None


def _folder() -> Path:
    return Path(__file__).parent


@cache
def book_names() -> tuple[str, ...]:
    """The books there are: `england` first, since it is the default, then by name."""
    names = sorted(path.stem for path in _folder().glob("*.toml"))
    return tuple(sorted(names, key=lambda name: name != "england"))


@cache
def book(name: str) -> RuleBook:
    """The rule book of that name. Raises KeyError."""
    if name not in book_names():
        raise KeyError(name)
    import tomllib  # what only names the books need not read them

    with (_folder() / f"{name}.toml").open("rb") as file:
        content = tomllib.load(file)
    title = str(content.pop("title"))
    limits = {}
    for topic, rules in content.items():
        for rule, entry in rules.items():
            known = f"{topic}.{rule}"
            limits[known] = Limit(known, entry["value"], str(entry.get("unit", "")), str(entry["source"]))
    return RuleBook(name, title, limits)
