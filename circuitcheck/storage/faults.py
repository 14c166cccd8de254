"""What is wrong with a drawing file: faults, and the error that carries all of them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any
from unicodedata import category

from circuitcheck.storage.limits import MOST_FAULTS
from circuitcheck.storage.strict_json import Unsound
from circuitcheck.told import a_word, worded

LONGEST_SHOWN = 60

_UNSEEN = frozenset({"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"})


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing wrong in a file.

    `item` is the id of the part, pipe, control or note, or its place (`components[3]`) where it
    has no id, `design` or `sheet`, or empty for the file itself; `field` the name of the field or
    empty; `found` what stands there and `expected` what should, both in words; `message` the whole
    as one sentence. Control and bidirectional characters of the file are shown as codes.
    """

    item: str
    field: str
    found: str
    expected: str
    message: str


class DrawingError(ValueError):
    """A drawing file that cannot be read. `faults` holds all that is wrong with it, never none."""

    def __init__(self, file: str, faults: Sequence[Fault]) -> None:
        self.file = file
        self.faults = tuple(faults)
        # Both are kept in `args`, so that the error survives the way home from another process.
        super().__init__(file, self.faults)

    def __str__(self) -> str:
        name = visible(self.file)
        if len(self.faults) == 1:
            return worded("{name} cannot be read: {message}", name=name, message=self.faults[0].message)
        lines = (f"  {fault.message}" for fault in self.faults)
        return "\n".join(
            [
                worded(
                    "{name} cannot be read. {faults} things are wrong:", name=name, faults=len(self.faults)
                ),
                *lines,
            ]
        )


class TooManyFaultsError(Exception):
    """So much is wrong that looking further helps nobody."""


class Faults:
    """A list of faults in the making."""

    def __init__(self) -> None:
        self.found: list[Fault] = []

    def __len__(self) -> int:
        return len(self.found)

    def add(self, item: str, field: str, found: str, expected: str, message: str = "") -> None:
        """Note a fault; the sentence is made of the rest unless given. Raises TooManyFaultsError."""
        item, field = visible(item), visible(field)
        if not message:
            message = worded(
                "{item} is {found}, but must be {expected}.",
                item=place(item, field),
                found=found,
                expected=expected,
            )
        self.found.append(Fault(item, field, found, expected, message))
        if len(self.found) >= MOST_FAULTS:
            self.found.append(
                Fault(
                    "",
                    "",
                    "",
                    "",
                    worded(
                        "Reading stopped after {most_faults:,} faults; there may be more.",
                        most_faults=MOST_FAULTS,
                    ),
                )
            )
            raise TooManyFaultsError

    def wrong(self, item: str, field: str, value: Any, expected: str) -> None:
        """Note a value that is not what was expected."""
        self.add(item, field, shown(value), expected)

    def absent(self, item: str, field: str, expected: str) -> None:
        """Note a field that is missing and has no default."""
        where = visible(item) or a_word("The file")
        self.add(
            item,
            field,
            "nothing",
            expected,
            worded(
                "{where} has no {field}; it must be {expected}.", where=where, field=field, expected=expected
            ),
        )


def place(item: str, field: str) -> str:
    """Where a fault is: `hs1.output_kw`."""
    return f"{item}.{field}" if item and field else item or field or a_word("The file")


def visible(text: str) -> str:
    """The text with every control, format and direction character shown as its code, `<U+202E>`."""
    if text.isprintable():
        return text
    return "".join(f"<U+{ord(each):04X}>" if is_unseen(each) else each for each in text)


def is_unseen(character: str) -> bool:
    """Whether a character is none that is seen: control, format, direction, or no character at all."""
    return category(character) in _UNSEEN


def shown(value: Any) -> str:
    """A value of a file in a few words, harmless on a terminal."""
    if value is None:
        return "null"
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return f'"{visible(_cut(value))}"'
    if isinstance(value, Unsound):
        return _cut(value.literal)
    if isinstance(value, float):
        return repr(value)
    if isinstance(value, int):
        # Cut before it is written out: a number of thousands of digits would fill the line.
        return str(value) if abs(value) < 10**LONGEST_SHOWN else a_word("a number of very many digits")
    if isinstance(value, list):
        if len(value) <= 4 and not any(isinstance(each, (list, dict)) for each in value):
            return f"[{', '.join(shown(each) for each in value)}]"
        return worded("a list of {value}", value=len(value))
    return a_word("an object")


def _cut(text: str) -> str:
    return text if len(text) <= LONGEST_SHOWN else text[: LONGEST_SHOWN - 1] + "…"
