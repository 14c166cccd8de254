"""The libraries the program runs on, with the licence each comes under, as installed here."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from importlib import metadata

_PROGRAM = "circuitcheck"
_NAME = re.compile(r"[A-Za-z0-9][A-Za-z0-9._-]*")
_CLASSIFIER = "License :: OSI Approved :: "
_MOST_LETTERS = 60


@dataclass(frozen=True, slots=True)
class Library:
    """An installed library: its name, its version and its licence in its own words."""

    name: str
    version: str
    licence: str


def libraries() -> tuple[Library, ...]:
    """What the program needs to run, and what that needs in turn; sorted, without what only an extra brings."""
    found: dict[str, Library] = {}
    waiting = list(_required(_PROGRAM))
    while waiting:
        name = waiting.pop()
        if name in found:
            continue
        try:
            about = metadata.metadata(name)
        except metadata.PackageNotFoundError:
            continue  # needed on another system only, or a checkout that is run without being installed
        found[name] = Library(about["Name"], about["Version"], _licence(about))
        waiting.extend(_required(name))
    return tuple(sorted(found.values(), key=lambda library: library.name.lower()))


def _required(name: str) -> Iterator[str]:
    try:
        requirements = metadata.requires(name) or []
    except metadata.PackageNotFoundError:
        return
    for requirement in requirements:
        begins = _NAME.match(requirement)
        if begins is not None and "extra ==" not in requirement:
            yield re.sub(r"[-_.]+", "-", begins[0]).lower()


def _licence(about: metadata.PackageMetadata) -> str:
    """The licence as the library tells it: by expression, by classifier, or in a short text of its own."""
    if "License-Expression" in about:
        return about["License-Expression"]
    classifiers = about.get_all("Classifier") or []
    told = [line.removeprefix(_CLASSIFIER) for line in classifiers if line.startswith(_CLASSIFIER)]
    if told:
        return ", ".join(told)
    lines = about["License"].splitlines() if "License" in about else []
    return lines[0][:_MOST_LETTERS] if lines else "not said"
