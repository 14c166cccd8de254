"""Every check there is, found by walking the topic folders: nothing else names them."""

from __future__ import annotations

import pkgutil
from collections.abc import Mapping
from functools import cache
from importlib import import_module
from types import MappingProxyType

import circuitcheck.checks as folder
from circuitcheck.checks.check import Check, Lesson, lesson_of, proposes_nothing


@cache
def checks() -> Mapping[str, Check]:
    """Every check by its name, sorted by name."""
    found = {}
    for topic in pkgutil.iter_modules(folder.__path__):
        if not topic.ispkg:
            continue
        package = import_module(f"{folder.__name__}.{topic.name}")
        for module in pkgutil.iter_modules(package.__path__):
            code = import_module(f"{package.__name__}.{module.name}")
            name = module.name.replace("_", "-")
            found[name] = Check(
                name,
                topic.name,
                lesson_of(name, code.__doc__ or ""),
                code.judge,
                getattr(code, "propose", proposes_nothing),
            )
    return MappingProxyType({name: found[name] for name in sorted(found)})


def lesson(name: str) -> Lesson:
    """The lesson of the check of that name. Raises KeyError."""
    return checks()[name].lesson


NOT_JUDGED_BY_THIS_PROGRAM = (
    "workmanship, supports and freedom from leaks",
    "gas, oil and solid fuel supply, flues, air for burning and ventilation",
    "electrical supply, wiring and earthing",
    "the building's structure",
    "water quality and treatment",
)
"""What no drawing of a circuit can show, said once in every answer."""
