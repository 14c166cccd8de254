"""Drawings as a stranger might make them: samples and random ones, spoilt in a way that knows the format."""

from __future__ import annotations

import copy
import json
from collections.abc import Callable
from pathlib import Path
from random import Random
from typing import Any

from circuitcheck.parts.catalogue import component_kinds, control_kinds
from circuitcheck.parts.kind import FieldType
from circuitcheck.shipped import data_path

Raw = dict[str, Any]

NUMBERS: tuple[Any, ...] = (
    *(0, -0.0, 1, -1, 0.5, 1e-320, 5e-324, 1e300, -1e300, 1.7976931348623157e308, 10**20, 10**400),
    *(1e6, -1e6, 1e6 + 1, 2**53, 2**63, float("nan"), float("inf"), -float("inf"), 1e-9, 273.15, -273.15),
)
TEXTS = (
    "", " ", "a", "../../etc/passwd", "C:\\x\\y", "/dev/null", "<b>x</b><img src='file:///etc/passwd'>",
    "&lt;&#0;", "=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\x1b[31mred\x1b]0;title\x07", "\x00", "\u202eabc",
    "\u2066x", "\ud800", "\udfff\ud800", "\ufeff", "\U0010ffff", "{one}", "{", "%s%n", "a\nb", "a\u2028b",
    "x" * 1001, "y" * 900, "\u0301" * 50, "null", "hs1", "p1",
)  # fmt: skip
ODD: tuple[Any, ...] = (None, True, False, [], {}, [[]], [None], {"": None}, [1, 2], ["a", "b"], "design")


def samples() -> list[Raw]:
    """The drawings that ship, as JSON objects; the smaller ones, so that a trial is short."""
    files = sorted(Path(str(data_path("samples"))).glob("*.wetcircuit"))
    raws = [json.loads(file.read_bytes()) for file in files if file.stat().st_size < 40_000]
    return [raw for raw in raws if len(raw.get("components", ())) <= 60]


def strange(chance: Random) -> Any:
    """Any value that a field may not expect; its own, for more may be put into it."""
    return copy.deepcopy(chance.choice(chance.choice((NUMBERS, TEXTS, TEXTS, ODD))))


def _values(field: Any, chance: Random, ids: list[str]) -> Any:
    if field.type is FieldType.NUMBER:
        low = 0 if field.least is None else field.least
        high = 1e6 if field.most is None else field.most
        return chance.choice((low, high, (low + high) / 2, chance.choice(NUMBERS)))
    if field.type is FieldType.CHOICE:
        return chance.choice(field.choices)
    if field.type is FieldType.CHOICES:
        return chance.sample(field.choices, chance.randint(0, len(field.choices)))
    if field.type is FieldType.SWITCH:
        return chance.random() < 0.5
    return chance.choice(ids) if ids and chance.random() < 0.8 else chance.choice(TEXTS)


def made(chance: Random) -> Raw:
    """A drawing of any kinds with pipes between any ports, its data of the right types and any size."""
    kinds = list(component_kinds().values())
    at_one = chance.random() < 0.3
    ids = [f"c{number}" for number in range(chance.randint(0, 12))]
    parts, ports = [], []
    for id in ids:
        kind = chance.choice(kinds)
        data = {field.name: _values(field, chance, ids) for field in kind.fields if chance.random() < 0.4}
        at = [5, 5] if at_one else [chance.choice((0, 3, 9, -4.5, 1e6)), chance.randint(0, 30)]
        parts.append(
            {"id": id, "kind": kind.name, "at": at, "data": data, "turn": chance.choice((0, 90, 270))}
        )
        ports += [[id, port.name] for port in kind.ports]
    chance.shuffle(ports)
    pipes = []
    for number in range(len(ports) // 2):
        ends: list[Any] = [ports.pop(), ports.pop()]
        if chance.random() < 0.1:
            ends[chance.randrange(2)] = [chance.randint(-5, 30), chance.choice((1e6, 4))]
        via = chance.choice((None, None, [], [[chance.randint(0, 20), chance.choice((2, -1e6))]]))
        data = {"length_m": chance.choice(NUMBERS[:9]), "rise_m": chance.choice((0, 1, -3, 1e9)), "bends": 2}
        pipes.append({"id": f"p{number}", "ends": ends, "via": via, "data": data})
    controls = [
        {
            "id": f"k{number}",
            "kind": chance.choice(list(control_kinds())),
            "acts_on": chance.choices(ids, k=2),
        }
        for number in range(chance.randint(0, 2) if ids else 0)
    ]
    return {
        "wetcircuit": 1,
        "components": parts,
        "pipes": pipes,
        "controls": controls,
        "sheet": {},
        "design": {},
    }


def _places(value: Any, found: list[tuple[Any, Any]]) -> list[tuple[Any, Any]]:
    if isinstance(value, (dict, list)):
        for key, inner in value.items() if isinstance(value, dict) else enumerate(value):
            found.append((value, key))
            _places(inner, found)
    return found


def _put(raw: Raw, chance: Random) -> None:
    inside, key = chance.choice(_places(raw, []) or [(raw, "title")])
    inside[key] = strange(chance)


def _take(raw: Raw, chance: Random) -> None:
    if raw:
        inside, key = chance.choice(_places(raw, []))
        del inside[key]


def _double(raw: Raw, chance: Random) -> None:
    lists = [inside[key] for inside, key in _places(raw, []) if isinstance(inside[key], list) and inside[key]]
    if lists:
        one = chance.choice(lists)
        one.append(copy.deepcopy(chance.choice(one)))


def _swap(raw: Raw, chance: Random) -> None:
    raw.setdefault("sheet", {})
    places = _places(raw, [])
    (a, x), (b, y) = chance.choice(places), chance.choice(places)
    a[x], b[y] = copy.deepcopy(b[y]), copy.deepcopy(a[x])


def _parts(raw: Raw) -> list[Raw]:
    parts = raw.get("components")
    return [part for part in parts if isinstance(part, dict)] if isinstance(parts, list) else []


def _fill(raw: Raw, chance: Random) -> None:
    """Data of the right type in a part that is there."""
    parts = _parts(raw)
    kinds = component_kinds()
    if parts:
        part = chance.choice(parts)
        kind = kinds.get(part["kind"]) if isinstance(part.get("kind"), str) else None
        if kind is not None and kind.fields and isinstance(part.setdefault("data", {}), dict):
            field = chance.choice(kind.fields)
            part["data"][field.name] = _values(field, chance, [str(each.get("id")) for each in parts])


def _far(raw: Raw, chance: Random) -> None:
    parts = _parts(raw)
    for part in chance.sample(parts, min(len(parts), 3)):
        part["at"] = [chance.choice((-1e6, 1e6, 0, 0.1)), chance.choice((-1e6, 1e6, 7))]


SPOIL: tuple[Callable[[Raw, Random], None], ...] = (_put, _take, _double, _swap, _fill, _fill, _fill, _far)


def file_bytes(chance: Random, known: list[Raw]) -> bytes:
    """One file: a sample or a random drawing, with up to five things spoilt, now and then in its bytes."""
    raw = copy.deepcopy(chance.choice(known)) if chance.random() < 0.5 else made(chance)
    for _ in range(chance.randint(0, 4)):
        chance.choice(SPOIL)(raw, chance)
    if chance.random() < 0.03:
        deep: Any = 1
        for _ in range(chance.choice((20, 40, 500))):
            deep = [deep]
        raw["more"] = deep
    data = json.dumps(raw, ensure_ascii=chance.random() < 0.7).encode("utf-8", "surrogatepass")
    if chance.random() < 0.1:
        at = chance.randrange(len(data))
        bits = (b'"', b"{", b"\\", b"\xff", b"\x00", b"9" * 5000, b'"id":"x",', b"[" * 200, b"", b"NaN")
        data = data[:at] + chance.choice(bits) + data[at + chance.randint(0, 3) :]
    return data
