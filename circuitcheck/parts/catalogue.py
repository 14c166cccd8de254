"""Every kind of part there is, found by walking the folder: nothing else names them."""

from __future__ import annotations

import pkgutil
from collections.abc import Mapping
from functools import cache
from importlib import import_module
from types import MappingProxyType

import circuitcheck.parts as folder
from circuitcheck.parts.kind import Group, Kind

NOT_A_KIND = frozenset({"catalogue", "field_help", "heating_body", "kind"})


@cache
def kinds() -> Mapping[str, Kind]:
    """Every kind by its name, sorted by name; controls too."""
    names = sorted(module.name for module in pkgutil.iter_modules(folder.__path__))
    found = {}
    for name in names:
        if name in NOT_A_KIND:
            continue
        kind: Kind = import_module(f"{folder.__name__}.{name}").KIND
        if kind.name != name:
            raise ValueError(f"parts/{name}.py holds the kind {kind.name!r}: file and kind share one name")
        found[name] = kind
    return MappingProxyType(found)


@cache
def component_kinds() -> Mapping[str, Kind]:
    """The kinds that stand on the water, by name."""
    return MappingProxyType({name: kind for name, kind in kinds().items() if not kind.is_control})


@cache
def control_kinds() -> Mapping[str, Kind]:
    """The kinds of control, by name."""
    return MappingProxyType({name: kind for name, kind in kinds().items() if kind.is_control})


def shelf() -> tuple[tuple[Group, tuple[Kind, ...]], ...]:
    """The kinds by group, in the order of the groups, each group by title."""
    groups = []
    for group in Group:
        members = [kind for kind in kinds().values() if kind.group is group]
        groups.append((group, tuple(sorted(members, key=lambda kind: kind.title))))
    return tuple(groups)
