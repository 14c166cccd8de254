"""Random discharge trees: the checks of the run against an opinion told by the way each tree was grown."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import found
from tests.made import Part, made

INLINE: dict[str, tuple[str, str, bool]] = {
    # kind: the port a discharge enters by, the one it leaves by, whether it is a valve
    "tundish": ("inlet", "outlet", False),
    "strainer": ("in", "out", False),
    "isolating_valve": ("b", "a", True),
    "check_valve": ("in", "out", True),
}
SIZES = (15, 22, 28, 35, 42, 54)
ROWS = {
    (15, 22): (9, 0.8), (15, 28): (18, 1.0), (15, 35): (27, 1.4), (15, 42): (36, 1.7), (15, 54): (45, 2.3),
    (22, 28): (9, 1.0), (22, 35): (18, 1.4), (22, 42): (27, 1.7), (22, 54): (36, 2.3),
}  # fmt: skip


@dataclass(frozen=True)
class Hop:
    """A pipe on the way to the end: its data as told along the way, and what it leads into by which ports."""

    pipe: str
    fall_mm: int
    into: str
    kind: str
    by_branch: bool


@dataclass
class Tree:
    """What was grown: parts, pipes, and for each valve its hops from its outlet to the end."""

    parts: dict[str, Part] = field(default_factory=dict)
    pipes: list[str] = field(default_factory=list)
    data: dict[str, dict[str, Any]] = field(default_factory=dict)
    ways: dict[str, tuple[Hop, ...]] = field(default_factory=dict)
    outlets: dict[str, int] = field(default_factory=dict)

    def drawing(self) -> Drawing:
        return made(self.parts, "\n".join(self.pipes), pipe_data=self.data)


@st.composite
def trees(draw: st.DrawFn) -> Tree:
    """A discharge end, and what discharges into it: each valve on a store of its own or on the heating."""
    tree = Tree()
    place = draw(st.sampled_from(["gully_below_grating", "inside", "outside_low_level", "soil_stack"]))
    tree.parts["de"] = (
        "discharge_end",
        {"place": place, "clear_of_people": draw(st.booleans()), "conditions_met": draw(st.booleans())},
    )
    _grow(draw, tree, "de.inlet", (("de", "discharge_end", False),), 0)
    return tree


def _grow(draw: st.DrawFn, tree: Tree, into: str, below: tuple[Any, ...], depth: int) -> None:
    """Draw a pipe into a port and what stands at its upper end; `below` is what follows on the way down."""
    id = f"q{len(tree.pipes)}"
    length = draw(st.integers(0, 12))
    fall_mm = draw(st.sampled_from([-100, 0, 5 * length, 5 * length + 1, max(0, 5 * length - 1), 1000]))
    fall_mm = min(fall_mm, length * 1000)
    turned = draw(st.booleans())
    tree.data[id] = {
        "length_m": length,
        "rise_m": (fall_mm if turned else -fall_mm) / 1000,
        "bends": draw(st.integers(0, 4)),
        "size_mm": draw(st.sampled_from(SIZES)),
        "material": draw(st.sampled_from(["copper", "copper", "copper", "plastic"])),
        "heatproof": draw(st.booleans()),
        "straight_drop_m": 0,
    }
    here = (Hop(id, fall_mm, *below[0]), *below[1:])
    what = draw(st.sampled_from(["valve", "valve", "tee", *INLINE] if depth < 4 else ["valve"]))
    name = f"x{len(tree.parts)}"

    def joined(port: str) -> None:
        ends = (f"{name}.{port}", into)
        tree.pipes.append(f"{id}: {' - '.join(reversed(ends) if turned else ends)}")

    if what == "valve":
        _valve(draw, tree, name, here)
        joined("outlet")
    elif what == "tee":
        tree.parts[name] = "tee"
        down = draw(st.sampled_from(["a", "b", "branch"]))
        joined(down)
        for up in sorted({"a", "b", "branch"} - {down}):
            by_branch = "branch" in (up, down)
            _grow(draw, tree, f"{name}.{up}", ((name, "tee", by_branch), *here), depth + 1)
    else:
        enters, leaves, _ = INLINE[what]
        tree.parts[name] = what
        joined(leaves)
        _grow(draw, tree, f"{name}.{enters}", ((name, what, False), *here), depth + 1)


def _valve(draw: st.DrawFn, tree: Tree, name: str, way: tuple[Hop, ...]) -> None:
    tree.outlets[name] = draw(st.sampled_from([15, 22]))
    tree.ways[name] = way
    if draw(st.booleans()):
        tree.parts[name] = ("safety_valve", {"outlet_size_mm": tree.outlets[name]})
        return
    tree.parts[name] = ("temperature_relief_valve", {"outlet_size_mm": tree.outlets[name]})
    tree.parts[f"s{name}"] = ("unvented_store", {"volume_l": 100})
    tree.pipes.append(f"r{name}: s{name}.relief - {name}.inlet")


def tundish_of(tree: Tree, valve: str) -> int | None:
    """The place of a store's valve's first tundish among its hops; None for the heating's."""
    if tree.parts[valve][0] == "safety_valve":
        return None
    return next((place for place, hop in enumerate(tree.ways[valve]) if hop.kind == "tundish"), None)


def judged(check: str, tree: Tree) -> set[str]:
    """The things a check finds wrong; with all numbers known it leaves none unanswered."""
    findings = found(check, tree.drawing())
    assert all(finding.grade.value == "danger" for finding in findings)
    return {finding.components[0] for finding in findings}


def grown_in(tree: Tree, valve: str) -> tuple[tuple[Hop, ...], tuple[Hop, ...]]:
    """A valve's hops before its tundish and after it; all after it where it has none."""
    place = tundish_of(tree, valve)
    hops = tree.ways[valve]
    return ((), hops) if place is None else (hops[: place + 1], hops[place + 1 :])


@settings(max_examples=100, deadline=None)
@given(trees())
def test_rises(tree: Tree) -> None:
    wrong = set()
    for valve in tree.ways:
        before, after = grown_in(tree, valve)
        rising = any(hop.fall_mm < 0 for hop in before)
        if rising or any(hop.fall_mm < 5 * tree.data[hop.pipe]["length_m"] for hop in after):
            wrong.add(valve)
    assert judged("discharge-rises", tree) == wrong


@settings(max_examples=100, deadline=None)
@given(trees())
def test_can_be_shut(tree: Tree) -> None:
    valves = {kind for kind, (_, _, is_valve) in INLINE.items() if is_valve}
    wrong = {valve for valve, hops in tree.ways.items() if any(hop.kind in valves for hop in hops)}
    assert judged("discharge-can-be-shut", tree) == wrong


@settings(max_examples=100, deadline=None)
@given(trees())
def test_heatproof_and_safe_at_the_end(tree: Tree) -> None:
    def bad(hop: Hop, *, metal_only: bool) -> bool:
        data = tree.data[hop.pipe]
        return data["material"] == "plastic" and (metal_only or not data["heatproof"])

    wrong = set()
    for valve in tree.ways:
        before, after = grown_in(tree, valve)
        if any(bad(hop, metal_only=True) for hop in before) or any(
            bad(hop, metal_only=False) for hop in after
        ):
            wrong.add(valve)
    assert judged("discharge-not-heatproof", tree) == wrong
    data = tree.parts["de"][1]
    assert isinstance(data, dict)
    unsafe = {
        "gully_below_grating": False,
        "inside": True,
        "outside_low_level": not data["clear_of_people"],
        "soil_stack": not data["conditions_met"],
    }[data["place"]]
    assert judged("discharge-ends-unsafely", tree) == ({"de"} if unsafe else set())


def needed_mm(tree: Tree, valve: str) -> int:
    """The size that one store's whole run needs alone, tried size by size; 54 where none is enough."""
    _, after = grown_in(tree, valve)
    length = sum(tree.data[hop.pipe]["length_m"] for hop in after)
    bends = sum(tree.data[hop.pipe]["bends"] + hop.by_branch for hop in after)
    for size in SIZES:
        limit, bend = ROWS.get((tree.outlets[valve], size), (-1, 0))
        if length + bends * bend <= limit + 1e-9:
            return size
    return 54


@settings(max_examples=200, deadline=None)
@given(trees())
def test_shared_and_too_long(tree: Tree) -> None:
    for data in tree.data.values():
        data["material"] = "copper"
    stored = [valve for valve in tree.ways if tundish_of(tree, valve) is not None]
    wrong = False
    for pipe, data in tree.data.items():
        users = [valve for valve in stored if any(hop.pipe == pipe for hop in grown_in(tree, valve)[1])]
        if len(users) > 1:
            largest = max(needed_mm(tree, valve) for valve in users)
            above = [size for size in SIZES if size > largest]
            wrong |= not above or data["size_mm"] < above[0]
    assert judged("shared-discharge-too-small", tree) == ({"de"} if wrong else set())
    too_long = set()
    for valve in stored:
        _, after = grown_in(tree, valve)
        row = ROWS.get((tree.outlets[valve], min(tree.data[hop.pipe]["size_mm"] for hop in after)))
        if row is not None:
            length = sum(tree.data[hop.pipe]["length_m"] for hop in after)
            bends = sum(tree.data[hop.pipe]["bends"] + hop.by_branch for hop in after)
            if length + bends * row[1] > row[0] + 1e-9:
                too_long.add(valve)
    assert judged("discharge-too-long", tree) == too_long
