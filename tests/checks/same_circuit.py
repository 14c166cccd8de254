"""Changes of a drawing that leave its circuit as it is, and random changes that do not."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from random import Random
from typing import Any, TypeVar

from circuitcheck.drawing.value import Component, Drawing, End, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds
from circuitcheck.parts.kind import FieldType

OLD = "as_it_was_"
"""What `renamed` puts before every id."""
TWIN = "twin_"
"""What `doubled` puts before the ids of the second of everything."""
NEW = "new_"
SYMMETRIC = ("tee", "isolating_valve", "balancing_valve", "dirt_separator")
Thing = TypeVar("Thing")
Change = Callable[[Drawing, Random], Drawing]


def with_ids(drawing: Drawing, to: Callable[[str], str]) -> Drawing:
    """Every id changed, with all that refers to it; what had no label keeps its name as one."""

    def end(each: End) -> End:
        return Joint(to(each.part), each.port) if isinstance(each, Joint) else each

    def data(part: Component) -> dict[str, Any]:
        refers = {field.name for field in part.kind.fields if field.type is FieldType.REFERENCE}
        return {name: to(value) if name in refers and value else value for name, value in part.data.items()}

    return replace(
        drawing,
        components={
            to(id): replace(part, id=to(id), label=part.name, data=data(part))
            for id, part in drawing.components.items()
        },
        pipes={
            to(id): replace(pipe, id=to(id), ends=(end(pipe.ends[0]), end(pipe.ends[1])))
            for id, pipe in drawing.pipes.items()
        },
        controls={
            to(id): replace(
                control,
                id=to(id),
                acts_on=tuple(map(to, control.acts_on)),
                in_same_room_as=tuple(map(to, control.in_same_room_as)),
            )
            for id, control in drawing.controls.items()
        },
    )


def renamed(drawing: Drawing, rng: Random) -> Drawing:
    """Other ids."""
    return with_ids(drawing, lambda id: OLD + id)


def shuffled(drawing: Drawing, rng: Random) -> Drawing:
    """Parts, pipes and controls in another order in the file."""

    return replace(
        drawing,
        components=_mixed(drawing.components, rng),
        pipes=_mixed(drawing.pipes, rng),
        controls=_mixed(drawing.controls, rng),
    )


def _mixed(items: Mapping[str, Thing], rng: Random) -> dict[str, Thing]:
    return dict(rng.sample(list(items.items()), len(items)))


def turned_pipe(pipe: Pipe) -> Pipe:
    """The pipe told from its other end."""
    rise = pipe.data.get("rise_m")
    data = dict(pipe.data) if rise is None else {**pipe.data, "rise_m": -rise}
    return replace(pipe, ends=pipe.ends[::-1], data=data)


def piped_in_the_other_order(drawing: Drawing, rng: Random) -> Drawing:
    """Some pipes told from their other end."""
    pipes = {id: turned_pipe(pipe) if rng.random() < 0.6 else pipe for id, pipe in drawing.pipes.items()}
    return replace(drawing, pipes=pipes)


def with_ends_swapped(drawing: Drawing, ids: set[str], one: str, two: str) -> Drawing:
    """The pipes on two ports of these parts changed over."""
    other = {one: two, two: one}

    def end(each: End) -> End:
        if isinstance(each, Joint) and each.part in ids:
            return Joint(each.part, other.get(each.port, each.port))
        return each

    pipes = {
        id: replace(pipe, ends=(end(pipe.ends[0]), end(pipe.ends[1]))) for id, pipe in drawing.pipes.items()
    }
    return replace(drawing, pipes=pipes)


def symmetric_parts_turned(drawing: Drawing, rng: Random) -> Drawing:
    """Some parts that look alike from both ends turned round."""
    ids = {
        id for id, part in drawing.components.items() if part.kind.name in SYMMETRIC and rng.random() < 0.6
    }
    return with_ends_swapped(drawing, ids, "a", "b")


def mirrored(drawing: Drawing, rng: Random) -> Drawing:
    """Some parts mirrored and turned on the sheet, their pipes on the same ports."""
    parts = {
        id: replace(part, mirrored=not part.mirrored, turn=rng.choice((0, 90, 180, 270)))
        if rng.random() < 0.6
        else part
        for id, part in drawing.components.items()
    }
    return replace(drawing, components=parts)


def cut_in(drawing: Drawing, pipe_id: str, kind: str, start: str, finish: str, **data: Any) -> Drawing:
    """A part cut into a pipe right by its second end, where it stands as high as what is there."""
    pipe = drawing.pipes[pipe_id]
    left, right = pipe.ends
    if not isinstance(left, Joint) or not isinstance(right, Joint):
        return drawing
    if drawing.components[right.part].kind.name == "tundish":
        # Right below a tundish it would be another circuit: the pipe there has to run straight down.
        return drawing
    id = NEW + pipe_id
    while id in drawing.components:
        id += "x"
    height = drawing.components[right.part].data.get("height_m")
    parts = dict(drawing.components)
    parts[id] = Component(id, component_kinds()[kind], data={**data, "height_m": height})
    nothing = {"length_m": 0, "rise_m": 0, "bends": 0}
    short = {name: value for name, value in pipe.data.items() if name != "straight_drop_m"} | nothing
    pipes: dict[str, Pipe] = {}
    for each in drawing.pipes.values():
        pipes[each.id] = each
        if each.id == pipe_id:
            pipes[each.id] = replace(pipe, ends=(left, Joint(id, start)), via=None)
            pipes[id + "_pipe"] = Pipe(id + "_pipe", (Joint(id, finish), right), data=short)
    if kind == "tee":
        parts[id + "_end"] = Component(id + "_end", component_kinds()["cap"], data={"height_m": height})
        cap = (Joint(id, "branch"), Joint(id + "_end", "connection"))
        pipes[id + "_cap"] = Pipe(id + "_cap", cap, data={**short, **nothing})
    return replace(drawing, components=parts, pipes=pipes)


def capped_tees_cut_in(drawing: Drawing, rng: Random) -> Drawing:
    """A few pipes in two, joined by a tee with a capped branch."""
    for pipe in rng.sample(sorted(drawing.pipes), min(5, len(drawing.pipes))):
        drawing = cut_in(drawing, pipe, "tee", *rng.choice((("a", "b"), ("b", "a"))))
    return drawing


def valves_at_taps(drawing: Drawing, rng: Random) -> Drawing:
    """Isolating valves, secured and not, right before taps and at radiators: they serve one thing only."""
    for id, part in tuple(drawing.components.items()):
        ports = {"outlet": ("hot", "cold"), "radiator": ("flow", "return")}.get(part.kind.name, ())
        for port in ports:
            pipe = drawing.joined.get(Joint(id, port))
            if pipe is not None and rng.random() < 0.7:
                drawing = cut_in(drawing, pipe, "isolating_valve", "a", "b", secured=rng.random() < 0.5)
    return drawing


def doubled(drawing: Drawing) -> Drawing:
    """Two of everything, each house by itself."""
    twin = with_ids(drawing, lambda id: TWIN + id)
    parts = {
        id: replace(
            part, label=f"{part.label} of the twin", at=part.at and Point(part.at.x + 1000, part.at.y)
        )
        for id, part in twin.components.items()
    }
    pipes = {id: replace(pipe, via=None) for id, pipe in twin.pipes.items()}
    return replace(
        drawing,
        components={**drawing.components, **parts},
        pipes={**drawing.pipes, **pipes},
        controls={**drawing.controls, **twin.controls},
    )


def broken(drawing: Drawing, rng: Random) -> Drawing:
    """One random mistake: a part cut in, turned round or unlike what it was, a number changed or gone."""
    part = rng.choice([part for part in drawing.components.values() if part.data])
    pipe = rng.choice(list(drawing.pipes.values()))
    two_ports = [each for each in drawing.components.values() if len(each.kind.ports) == 2]
    what = rng.randrange(6)
    if what == 0 and two_ports:
        turned = rng.choice(two_ports)
        return with_ends_swapped(drawing, {turned.id}, *(port.name for port in turned.kind.ports))
    if what == 1:
        kind, data = rng.choice(CUT_IN)
        ports = [port.name for port in component_kinds()[kind].ports]
        return cut_in(drawing, pipe.id, kind, *rng.sample(ports, 2), **data)
    if what == 2 and drawing.controls:
        gone = rng.choice(list(drawing.controls))
        return replace(drawing, controls={id: c for id, c in drawing.controls.items() if id != gone})
    if what == 3:
        data = rng.choice(PIPES)
        pipes = {**drawing.pipes, pipe.id: replace(pipe, data={**pipe.data, **data})}
        return replace(drawing, pipes=pipes)
    return _with_another_value(drawing, part, rng)


CUT_IN: tuple[tuple[str, dict[str, Any]], ...] = (
    ("isolating_valve", {}),
    ("isolating_valve", {"secured": True}),
    ("check_valve", {}),
    ("pressure_reducing_valve", {"set_pressure_bar": 3}),
    ("zone_valve", {"serves": "heating"}),
    ("strainer", {}),
    ("pump", {"shut_off_head_m": 5, "maximum_flow_lpm": 40}),
)
PIPES: tuple[dict[str, Any], ...] = (
    {"size_mm": 15},
    {"length_m": 20},
    {"length_m": None},
    {"material": "plastic"},
    {"bends": 8},
)


def _with_another_value(drawing: Drawing, part: Component, rng: Random) -> Drawing:
    name = rng.choice([name for name in part.data if name != "height_m"] or ["height_m"])
    field, value = part.kind.field(name), part.data[name]
    if field.type is FieldType.CHOICES or name == "height_m":
        return drawing
    if rng.random() < 0.4 or value is None:
        value = None
    elif field.type is FieldType.NUMBER:
        least, most = field.least or 0.001, field.most or 1e9
        value = min(most, max(least, value * rng.choice((0.3, 0.6, 0.9, 1.1, 1.6, 3))))
    elif field.type is FieldType.SWITCH:
        value = not value
    elif field.type is FieldType.CHOICE:
        value = rng.choice(field.choices)
    changed = replace(part, data={**part.data, name: value})
    return replace(drawing, components={**drawing.components, part.id: changed})
