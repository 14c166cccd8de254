"""One drawing as figures and checks see it: its circuit, its data, and which defaults were taken."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Set
from functools import cached_property
from typing import TYPE_CHECKING, Any, Self, TypeVar

from circuitcheck.circuit.bodies import Bodies
from circuitcheck.circuit.discharge import Discharge, discharges
from circuitcheck.circuit.flowways import FlowWays
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.plan import apart, changes_circulation, changes_pressure
from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS
from circuitcheck.drawing.measuring import Measure, bends, length_m
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import NameTuple, sorted_names
from circuitcheck.parts.kind import Kind
from circuitcheck.rules.book import Limit, RuleBook, book, book_names

if TYPE_CHECKING:
    from circuitcheck.circuit.situations import Situations
    from circuitcheck.drawing.routing import Routes
    from circuitcheck.figures.content import Contents
    from circuitcheck.figures.heights import Heights
    from circuitcheck.figures.solved import Solved

Kept = TypeVar("Kept")

_LeftOut = tuple[str, list[int]]
"""How the default of a field that matters is told, and the places of the parts that leave it out."""

_DESIGN = {field.name: field for field in DESIGN_FIELDS}
_PIPE = {field.name: field for field in PIPE_FIELDS}


class Plant:
    """A drawing and all that is worked out from it. Built once; each figure is worked when first asked for."""

    def __init__(self, drawing: Drawing) -> None:
        self.drawing = drawing
        self._taken: dict[str, dict[str, None]] = {}  # by field and default, as they are told, the owners
        self._kept: dict[str, Any] = {}
        self._rested: set[tuple[str, object]] = set()

    @cached_property
    def circuit(self) -> Circuit:
        """The graph behind the drawing."""
        return Circuit(self.drawing)

    @cached_property
    def bodies(self) -> Bodies:
        """What water can meet what."""
        return Bodies(self.circuit)

    @cached_property
    def flow(self) -> FlowWays:
        """Where water can circulate."""
        return FlowWays(self.circuit)

    @cached_property
    def discharges(self) -> tuple[Discharge, ...]:
        """Every relief and safety valve's discharge."""
        return discharges(self.circuit)

    def kept(self, what: str, make: Callable[[], Kept]) -> Kept:
        """What several checks need: made when first asked for under that name, then kept."""
        if what not in self._kept:
            self._kept[what] = make()
        found: Kept = self._kept[what]
        return found

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.let_go()

    def let_go(self) -> None:
        """Nothing more is asked of it. Much of what was worked out refers back to it or to its circuit: taken
        apart it is gone at once, and Python need not look through all of it to find that it is garbage."""
        circuit = self.__dict__.get("circuit")
        if circuit is not None:
            circuit.kept.clear()
        solved = self.__dict__.get("solved")
        if solved is not None:
            solved.let_go()
        self.__dict__.clear()

    @cached_property
    def told_parts(self) -> tuple[str, ...]:
        """The parts of which the drawing gives any data."""
        return tuple([id for id, part in self.drawing.components.items() if part.data])

    @cached_property
    def told_pipes(self) -> frozenset[str]:
        """The pipes of which the drawing gives any data, or the corners: many drawings have none such."""
        pipes = self.drawing.pipes.items()
        return frozenset([id for id, pipe in pipes if pipe.data or pipe.via is not None])

    @cached_property
    def heights(self) -> Heights:
        """How high each part stands."""
        from circuitcheck.figures.heights import Heights

        return Heights(self)

    @cached_property
    def contents(self) -> Contents:
        """How much water each body holds."""
        from circuitcheck.figures.content import Contents

        return Contents(self)

    @cached_property
    def situations(self) -> Situations:
        """What the controls command in each situation."""
        from circuitcheck.circuit.situations import Situations

        return Situations(self.circuit)

    @cached_property
    def solved(self) -> Solved:
        """Flows and pressures in each situation."""
        from circuitcheck.figures.solved import Solved

        return Solved(self)

    @cached_property
    def lines(self) -> Routes:
        """The line of every pipe on the sheet."""
        from circuitcheck.drawing.routing import routes

        return routes(self.drawing)

    @cached_property
    def rules(self) -> RuleBook:
        """The rule book that the drawing names, else the first there is."""
        return book(str(self.drawing.design.get("rule_book") or book_names()[0]))

    def limit(self, name: str) -> Limit:
        """A limit of the rule book, as `topic.name`. Raises NoRuleError where the book sets none."""
        return self.rules.limit(name)

    def rests_as(self, earlier: Plant) -> None:
        """Count as remembered the defaults that verdicts on an earlier plant rest on, where the water goes
        as it does here: whoever judged that one has them."""
        self._rested = set(earlier._rested)

    @property
    def taken(self) -> NameTuple:
        """The defaults that verdicts so far rest on, as `id.field = value`, sorted."""
        pieces = [(tuple(owners), (text,)) for text, owners in self._taken.items()]
        return sorted_names(*pieces)

    def value(self, part: str, field: str) -> Any:
        """A part's data field; a default taken for it is remembered. None: not known yet."""
        component = self.drawing.components[part]
        if field not in component.data:
            self._take(part, field, component.kind.field(field).default)
        return component.value(field)

    def pipe_value(self, pipe: str, field: str) -> Any:
        """A pipe's data field; a default taken for it is remembered. None: not known yet."""
        data = self.drawing.pipes[pipe].data
        if field not in data:
            self._take(pipe, field, _PIPE[field].default)
        return _PIPE[field].value(data)

    def take_usual(self, pipes: Iterable[str], field: str) -> Any:
        """The default of a field that these pipes leave out, remembered as taken for each of them."""
        default = _PIPE[field].default
        if default is not None:
            self._also_of(_told(field, default), dict.fromkeys(pipes))
        return default

    def design(self, field: str) -> Any:
        """A field of the design; a default taken for it is remembered. None: not known yet."""
        if field not in self.drawing.design:
            self._take("design", field, _DESIGN[field].default)
        return _DESIGN[field].value(self.drawing.design)

    def length_m(self, pipe: str) -> Measure | None:
        """A pipe's length in metres, given or measured; None where it is not known."""
        return length_m(self.drawing, self.drawing.pipes[pipe])

    def bends(self, pipe: str) -> Measure | None:
        """A pipe's number of bends, given or measured; None where it is not known."""
        return bends(self.drawing, self.drawing.pipes[pipe])

    def rests_on_pressure_ways(self, waters: frozenset[int]) -> None:
        """A verdict rests on how pressure passes the parts on these waters of the circuit: remember
        the defaults that decide it."""
        if ("pressure", waters) in self._rested:
            return
        self._rested.add(("pressure", waters))
        self._take_on(self._pressure_defaults, self.circuit.waters, waters)

    def rests_on_water_ways(self, body: int) -> None:
        """A verdict rests on how water circulates in this body of water: remember the defaults that
        decide it."""
        if ("water", body) in self._rested:
            return
        self._rested.add(("water", body))
        for text, owners in self._circulation_defaults.get(body, {}).items():
            self._also_of(text, dict(owners))

    @cached_property
    def _pressure_defaults(self) -> tuple[_LeftOut, ...]:
        return self._left_out(changes_pressure)

    @cached_property
    def _circulation_defaults(self) -> dict[int, dict[str, dict[str, None]]]:
        """For each body of water the defaults left out there, as they are told, with the parts that do."""
        ports, body_of = self.circuit.ports, self.bodies.by_node
        ids, first, at = ports.ids, ports.first, ports.at
        found: defaultdict[int, dict[str, dict[str, None]]] = defaultdict(dict)
        for text, alike in self._left_out(changes_circulation):
            for offset in apart(ports.plans[alike[0]]):
                last, owners = -1, dict[str, None]()
                for place in alike:
                    node = at[first[place] + offset]
                    if node >= 0:
                        body = body_of[node]
                        if body != last:
                            last, owners = body, found[body].setdefault(text, {})
                        owners[ids[place]] = None
        return found

    def _left_out(self, matters: Callable[[Kind, str], bool]) -> tuple[_LeftOut, ...]:
        """The parts that leave a field out that matters, and how its default is told."""
        found = []
        parts, ids = self.drawing.components, self.circuit.ids
        for alike in self.circuit.by_plan.values():
            # Parts that share a plan leave the same of these fields out.
            first = parts[ids[alike[0]]]
            for field in first.kind.rests_on:
                default = first.kind.field(field).default
                if default is not None and field not in first.data and matters(first.kind, field):
                    found.append((_told(field, default), alike))
        return tuple(found)

    def _take_on(self, usual: Iterable[_LeftOut], at_node: list[int], wanted: Set[int]) -> None:
        """Remember these defaults where a port of the part is on water so wanted."""
        ports = self.circuit.ports
        ids, first, at = ports.ids, ports.first, ports.at

        def is_there(place: int) -> bool:
            return any(node >= 0 and at_node[node] in wanted for node in ports.nodes(place))

        for text, alike in usual:
            there = [
                ids[place]
                for place in alike
                # Most parts are there by their first port.
                if ((node := at[first[place]]) >= 0 and at_node[node] in wanted) or is_there(place)
            ]
            self._taken.setdefault(text, {}).update(dict.fromkeys(there))

    def _take(self, owner: str, field: str, default: object) -> None:
        if default is not None:
            self._owners(field, default)[owner] = None

    def _also_of(self, text: str, owners: dict[str, None]) -> None:
        """A default taken of many: there are thousands, and mostly none is known yet. Keeps `owners` itself."""
        known = self._taken.setdefault(text, owners)
        if known is not owners:
            known.update(owners)

    def _owners(self, field: str, default: object) -> dict[str, None]:
        """Those of which this default was taken so far."""
        return self._taken.setdefault(_told(field, default), {})


def _told(field: str, default: object) -> str:
    return f".{field} = {_shown(default)}"


def _shown(value: object) -> str:
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, (tuple, list)):
        return f"[{', '.join(str(each) for each in value)}]"
    return f"{value:g}" if isinstance(value, float) else str(value)
