"""What the commissioning sheet asks of a drawing: values in words, and which of them are not known."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.plant import Plant
from circuitcheck.parts.kind import Role
from circuitcheck.report.sizes import shown
from circuitcheck.report.wording import missing_words, upper
from circuitcheck.report.wording import shown as number_words
from circuitcheck.rules.book import NoRuleError
from circuitcheck.told import Told, a_word, ended, strung, told_number, worded

NOT_KNOWN = a_word("not known: settle it before this is tested")
PRACTICE = a_word("common practice, no source")


class Asked:
    """Questions to one drawing. `lacking` gathers in words what it does not tell, each once."""

    def __init__(self, plant: Plant, figures: Sequence[Figure]) -> None:
        self.plant = plant
        self.drawing = plant.drawing
        self.figures = figures
        self.lacking: dict[str, None] = {}

    def name(self, id: str) -> str:
        """What to call a part at the beginning of a sentence."""
        return upper(self.drawing.name(id))

    def places(self, role: Role) -> tuple[Placed, ...]:
        """The devices of a role, each part once, in the order of the drawing."""
        return tuple({place.part: place for place in self.plant.circuit.devices(role)}.values())

    def has(self, *roles: Role) -> bool:
        """Whether there is anything of any of these roles."""
        return any(self.plant.circuit.devices(role) for role in roles)

    def number(self, id: str, field: str) -> float | None:
        """A number of a part, or of the design; None is noted as lacking, a part without that field is not."""
        if id == "design":
            value = self.plant.design(field)
        else:
            own = self.drawing.components[id].kind.own_fields
            if not any(each.name == field for each in own):
                return None
            value = self.plant.value(id, field)
        if value is None:
            self.lacking[missing_words(self.drawing, f"{id}.{field}")] = None
        return None if value is None else float(value)

    def words(self, id: str, field: str, unit: str) -> str:
        """The same with its unit, or the sentence that it is not known."""
        value = self.number(id, field)
        return NOT_KNOWN if value is None else with_unit(value, unit)

    def results(self, figure: str, subject: str = "") -> tuple[Result, ...]:
        """The results of a figure, of one subject where it is given."""
        return tuple(
            result
            for each in self.figures
            if each.name == figure and (not subject or subject in each.subject)
            for result in each.results
        )

    def result(self, figure: str, *words: str, subject: str = "") -> str:
        """The first result whose name holds all these words, with its unit; empty where there is none."""
        for result in self.results(figure, subject):
            if all(word in result.name for word in words):
                return result_words(result)
        return ""

    def limit(self, name: str) -> tuple[float, str] | None:
        """A limit of the rule book and its source; None where the book sets none."""
        try:
            found = self.plant.limit(name)
        except NoRuleError:
            return None
        return float(found.value), a_word(found.source)


def result_words(result: Result) -> str:
    """A result's value, as near as it can be read off, and its unit."""
    if isinstance(result.value, str):
        value = result.value
    else:
        near = f"{result.value:.3g}"
        value = told_number(near) if "e" not in near else a_word(shown(result)[0])
    return worded("{value} {unit}", value=value, unit=a_word(result.unit)) if result.unit else value


def with_unit(value: float, unit: str) -> str:
    """A number with its unit: `1.3 bar`."""
    return worded("{value} {unit}", value=told_number(number_words(value)), unit=a_word(unit))


def value_in(name: str, *keys: str) -> str:
    """What stands in a result's name for the first of these keys that it has: in `{of} reads, cold` the gauge."""
    values = name.values if isinstance(name, Told) else {}
    return next((found for key in keys if isinstance(found := values.get(key), str)), name)


def joined(parts: Iterable[str]) -> str:
    """Those of the sentences that say anything, one after another; one alone is set like a value, without its stop."""
    said = [upper(each) for each in parts if each]
    return said[0] if len(said) == 1 else strung((ended(each) for each in said), " ")
