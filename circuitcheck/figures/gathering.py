"""Gathers what a figure is worked from: each number with its origin, and each that is not known."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS
from circuitcheck.figures.figure import Input
from circuitcheck.parts.kind import FieldType
from circuitcheck.told import a_word, spoken

if TYPE_CHECKING:
    from circuitcheck.drawing.measuring import Measure
    from circuitcheck.figures.plant import Plant
    from circuitcheck.parts.kind import Field

_DESIGN = {field.name: field for field in DESIGN_FIELDS}
_PIPE = {field.name: field for field in PIPE_FIELDS}


class Gathering:
    """The inputs of one figure in the order they were asked for, and the fields that are missing.

    Each `part`, `pipe`, `design`, ... returns the value, or None where it is not known and is then
    named in `missing`; with `needed=False` it is not named.
    """

    def __init__(self, plant: Plant) -> None:
        self.plant = plant
        self._inputs: dict[Input, None] = {}
        self._missing: dict[str, None] = {}

    @property
    def inputs(self) -> tuple[Input, ...]:
        """What was gathered so far, each once."""
        return tuple(self._inputs)

    @property
    def missing(self) -> tuple[str, ...]:
        """The fields that were asked for and are not known, each once."""
        return tuple(self._missing)

    @property
    def defaults(self) -> tuple[str, ...]:
        """The fields, as `id.field`, for which a default was taken."""
        word = "usual value "
        return tuple(each.origin.removeprefix(word) for each in self._inputs if each.origin.startswith(word))

    def is_default(self, field: str) -> bool:
        """Whether a default was taken for a field, told as `id.field`."""
        return field in self.defaults

    def part(self, part: str, field: str, symbol: str, name: str = "", *, needed: bool = True) -> Any:
        """A part's data field."""
        component = self.plant.drawing.components[part]
        value = self.plant.value(part, field)
        known = component.kind.field(field)
        return self._field(f"{part}.{field}", value, known, field in component.data, symbol, name, needed)

    def pipe(self, pipe: str, field: str, symbol: str, name: str = "", *, needed: bool = True) -> Any:
        """A pipe's data field."""
        value, given = self.plant.pipe_value(pipe, field), field in self.plant.drawing.pipes[pipe].data
        return self._field(f"{pipe}.{field}", value, _PIPE[field], given, symbol, name, needed)

    def design(self, field: str, symbol: str, name: str = "", *, needed: bool = True) -> Any:
        """A field of the design."""
        value, given = self.plant.design(field), field in self.plant.drawing.design
        return self._field(f"design.{field}", value, _DESIGN[field], given, symbol, name, needed)

    def length_m(self, pipe: str, symbol: str, name: str = "Length", *, needed: bool = True) -> float | None:
        """A pipe's length in metres, given or measured."""
        return self._measure(self.plant.length_m(pipe), f"{pipe}.length_m", symbol, name, "m", needed)

    def bends(self, pipe: str, symbol: str, name: str = "Bends", *, needed: bool = True) -> float | None:
        """A pipe's bends, given or measured."""
        return self._measure(self.plant.bends(pipe), f"{pipe}.bends", symbol, name, "", needed)

    def limit(self, rule: str, symbol: str, name: str) -> Any:
        """A limit of the drawing's rule book. Raises NoRuleError."""
        limit = self.plant.limit(rule)
        if isinstance(limit.value, int | float | str):
            self.add(symbol, name, limit.value, limit.unit, f"rule {self.plant.rules.name}: {rule}")
        return limit.value

    def add(self, symbol: str, name: str, value: float | str, unit: str, origin: str) -> None:
        """Something worked out or looked up, with its origin."""
        self._inputs[Input(symbol, name, value, unit, origin)] = None

    def lacks(self, *fields: str) -> None:
        """Fields that would have to be known."""
        self._missing |= dict.fromkeys(fields)

    def _field(
        self, where: str, value: Any, field: Field, given: bool, symbol: str, name: str, needed: bool
    ) -> Any:
        if value is None:
            if needed:
                self.lacks(where)
            return None
        origin = f"given {where}" if given else f"usual value {where}"
        shown = spoken(str(value)) if field.type is FieldType.CHOICE else _plain(value)
        self.add(symbol, name or field.label, shown, field.unit, origin)
        return value

    def _measure(
        self, found: Measure | None, where: str, symbol: str, name: str, unit: str, needed: bool
    ) -> float | None:
        if found is None:
            if needed:
                self.lacks(where)
            return None
        self.add(symbol, name, found.value, unit, f"{found.how} {where}")
        return found.value


def _plain(value: Any) -> float | str:
    if isinstance(value, bool):
        return a_word("yes") if value else a_word("no")
    return float(value) if isinstance(value, int | float) else str(value)
