"""Every kind of fault that practice can put in, found by walking the folder: nothing else names them."""

from __future__ import annotations

import inspect
import pkgutil
from collections.abc import Iterator, Mapping
from dataclasses import replace
from functools import cache
from importlib import import_module
from types import MappingProxyType

import circuitcheck.lessons.faults as folder
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.changing import EditError
from circuitcheck.lessons.fault import Fault, Planted
from circuitcheck.lessons.site import Site
from circuitcheck.told import a_word


@cache
def faults() -> Mapping[str, Fault]:
    """Every kind of fault by the name of its check, sorted.

    Raises ValueError for a file that no check is named as, or that does not say how the slip happens.
    """
    found = {}
    for name in sorted(module.name for module in pkgutil.iter_modules(folder.__path__)):
        code = import_module(f"{folder.__name__}.{name}")
        check = name.replace("_", "-")
        happens = " ".join(inspect.cleandoc(code.__doc__ or "").split())
        if check not in checks() or not happens:
            raise ValueError(f"lessons/faults/{name}.py: named as no check, or silent on how it happens")
        found[check] = Fault(check, checks()[check].topic, a_word(happens), code.plant)
    return MappingProxyType(found)


def planted(check: str, site: Site) -> Iterator[Planted]:
    """A fault put in at one place after another, in random order; an edit that cannot be made ends them.

    Raises KeyError for a check whose fault practice does not know.
    """
    try:
        for each in faults()[check].plant(site):
            yield replace(each, check=check)
    except EditError:
        return
