"""What has to come out and what has to go in, to make the new drawing of the old: as the fitter counts it.

Removed things come out, fitted ones go in. A part of the same id whose order differs (a vessel of another
volume, a safety valve of another pressure) comes out and another goes in, and so does pipe of another size
or material. A number that was not known and now is, and a setting that is turned on the part where it
stands, is no work of this list. A tee is counted by what its pipes need: where their sizes differ, another
tee.

Pipe is counted by size and length. A pipe that stays but is cut shorter or made longer counts with the
difference only where both lengths are known; where one is not, the list says so.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from circuitcheck.drawing.measuring import length_m
from circuitcheck.drawing.value import Component, Drawing, Pipe
from circuitcheck.figures.parts_list import TEE, PartsList, deciding, parts_list, tee_order
from circuitcheck.parts.kind import FieldType
from circuitcheck.review.comparing import Comparison, alike

SET_IN_PLACE = frozenset({"set_difference_kpa", "precharge_bar", "kv_m3h"})
"""What is turned or pumped to on the part as it stands; a blending valve's temperature too.

Common practice, no source: bypass and balancing valves have a hand wheel, a vessel's charge a valve.
"""
SETTING_KINDS = frozenset({"blending_valve", "balancing_valve", "bypass_valve", "expansion_vessel"})
STANDS_FOR_MANY = frozenset({"heating_zone"})
"""What is drawn as one for many: another output of it says nothing of what hangs on the wall."""
PIPE_ORDER = ("size_mm", "material", "bore_mm", "heatproof")


@dataclass(frozen=True, slots=True)
class Altered:
    """A pipe that stays, longer or shorter than it was; metres, None where a length is not known."""

    old_id: str
    new_id: str
    old_m: float | None
    new_m: float | None


@dataclass(frozen=True, slots=True)
class WorkLists:
    """The strip-out list, counted in the old drawing, and the fit list, counted in the new. `replaced`
    are pairs of ids that stand in both lists; `altered` pipes stand in neither."""

    strip_out: PartsList
    fit: PartsList
    replaced: tuple[tuple[str, str], ...]
    altered: tuple[Altered, ...]


def work_lists(found: Comparison) -> WorkLists:
    """What comes out and what goes in."""
    replaced = tuple((mine, its) for mine, its in found.same.items() if _is_replaced(found, mine, its))
    out = {*found.removed, *(mine for mine, _ in replaced)}
    into = {*found.fitted, *(its for _, its in replaced)}
    return WorkLists(
        parts_list(found.old, out),
        parts_list(found.new, into),
        replaced,
        tuple(_altered(found, {mine for mine, _ in replaced})),
    )


def _is_replaced(found: Comparison, mine: str, its: str) -> bool:
    if mine in found.old.components:
        was, now = found.old.components[mine], found.new.components[its]
        if was.kind.name == TEE:
            return _other_tee(found.old, mine, found.new, its)
        same_one = was is now or was.kind.name in STANDS_FOR_MANY
        return not same_one and _is_another(was, now)
    if mine in found.old.pipes:
        was_pipe, now_pipe = found.old.pipes[mine], found.new.pipes[its]
        return was_pipe is not now_pipe and _is_other_pipe(was_pipe, now_pipe)
    return False


def _is_another(old: Component, new: Component) -> bool:
    """Whether what decides the order is known of both and differs."""
    mine = {each.field.name: each for each in deciding(old)}
    for each in deciding(new):
        name = each.field.name
        if name not in mine or (
            name in SET_IN_PLACE | {"set_temperature_c"} and old.kind.name in SETTING_KINDS
        ):
            continue
        was, now = mine[name].value, each.value
        if each.field.type is FieldType.CHOICES:
            was, now = sorted(was or ()), sorted(now or ())
        if was is not None and now is not None and not alike(was, now):
            return True
    return False


def _is_other_pipe(old: Pipe, new: Pipe) -> bool:
    for name in PIPE_ORDER:
        was, now = old.data.get(name), new.data.get(name)
        if name == "material":
            was, now = was or "copper", now or "copper"
        if was is not None and now is not None and not alike(was, now):
            return True
    return False


def _other_tee(old: Drawing, mine: str, new: Drawing, its: str) -> bool:
    before, after = tee_order(old, old.components[mine]), tee_order(new, new.components[its])
    return None not in (*before[1], *after[1]) and before != after


def _altered(found: Comparison, replaced: set[str]) -> Iterator[Altered]:
    repiped = {each.old_id for each in found.repiped}
    for mine, its in found.same.items():
        if mine not in found.old.pipes or mine in replaced:
            continue
        before = _length_m(found.old, mine)
        after = _length_m(found.new, its)
        if before is None or after is None:
            differs = mine in repiped
        else:
            differs = abs(before - after) > 1e-9
        if differs:
            yield Altered(mine, its, before, after)


def _length_m(drawing: Drawing, pipe: str) -> float | None:
    found = length_m(drawing, drawing.pipes[pipe])
    return None if found is None else found.value
