"""What each check's answer can depend on, told from its code.

A check whose `judge` nowhere in its code, nor in the code it can come to, names a data field cannot
have read it. So after an edit only the checks that name a changed field are asked again. This takes
too many rather than too few; `tests/test_rechecking.py` holds it against asking them all.

Followed are the functions and classes that code names: a method can only be called on what some code
that was followed has made, or on what a case works out, which `WORKED_OUT` tells.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from enum import Enum
from functools import cache, cached_property
from importlib import import_module
from types import CodeType, FunctionType, ModuleType
from typing import Any

PACKAGE = "circuitcheck."
NOT_FOLLOWED = ("circuitcheck.parts", "circuitcheck.figures.plant", "circuitcheck.checks.case",
                "circuitcheck.drawing.fields", "circuitcheck.storage", "circuitcheck.rules")  # fmt: skip
"""Where every field is named, or where all figures come together."""

WORKED_OUT = {
    "circuit": ("circuitcheck.circuit.joining", "Circuit"),
    "bodies": ("circuitcheck.circuit.bodies", "Bodies"),
    "flow": ("circuitcheck.circuit.flowways", "FlowWays"),
    "discharges": ("circuitcheck.circuit.discharge", "discharges"),
    "heights": ("circuitcheck.figures.heights", "Heights"),
    "contents": ("circuitcheck.figures.content", "Contents"),
    "situations": ("circuitcheck.circuit.situations", "Situations"),
    "solved": ("circuitcheck.figures.solved", "Solved"),
    "lines": ("circuitcheck.drawing.routing", "routes"),
}
"""What a case works out when it is asked by that name, and who does so."""

ALSO = {"limit": "rule_book", "rules": "rule_book"}
"""What a case reads by itself when it is asked by that name."""

LAYOUT = frozenset({"lines", "lying", "port_at", "port_faces", "box", "end_at"})
"""Who says one of these looks at where things lie."""

MEASURED = frozenset({"length_m", "bends"})
"""Measured from the layout where the sheet has a scale."""


@cache
def words_of(module: str) -> frozenset[str]:
    """Every name and every text that a module's code, and the code that it can come to, names."""
    held = vars(import_module(module)).values()
    return _all_words(each for each in held if getattr(each, "__module__", "") == module)


@cache
def words_of_check(module: str) -> frozenset[str]:
    """The same of what a check's `judge` can come to; its cures may look at more."""
    return _all_words([import_module(module).judge])


@cache
def circuit_words() -> frozenset[str]:
    """What the circuit itself and what is worked out from it alone can depend on."""
    return _all_words(_worked_out(name) for name in ("circuit", "bodies", "flow", "discharges"))


def _worked_out(name: str) -> object:
    module, made = WORKED_OUT[name]
    return getattr(import_module(module), made)


def _all_words(starts: Iterable[object]) -> frozenset[str]:
    words: set[str] = set()
    todo = list(starts)
    seen = {id(each) for each in todo}
    while todo:
        own, onward = _read(todo.pop())
        words |= own
        for each in onward:
            if id(each) not in seen:
                seen.add(id(each))
                todo.append(each)
    return frozenset(words | {ALSO[word] for word in words & ALSO.keys()})


_READ: dict[int, tuple[object, frozenset[str], tuple[object, ...]]] = {}


def _read(thing: object) -> tuple[frozenset[str], tuple[object, ...]]:
    """The words in a function, a class or a constant, and what it leads to."""
    known = _READ.get(id(thing))
    if known is None:
        words: set[str] = set()
        onward = tuple(_onward(thing, words))
        known = _READ[id(thing)] = thing, frozenset(words), onward
    return known[1], known[2]


def _onward(thing: Any, words: set[str]) -> Iterator[object]:
    """What a thing leads to; its own words are added to `words`."""
    if isinstance(thing, str):
        words.add(thing)
    elif isinstance(thing, (tuple, list, set, frozenset)):
        yield from thing
    elif isinstance(thing, dict):
        yield from thing.keys()
        yield from thing.values()
    elif isinstance(thing, (Enum, ModuleType)) or not _is_followed(thing):
        return
    elif isinstance(thing, FunctionType):
        yield from _in_function(thing, words)
    elif isinstance(thing, type):
        yield from thing.__bases__
        for name, held in vars(thing).items():
            words.add(name)
            yield _unwrapped(held)
    elif hasattr(thing, "__wrapped__"):
        yield thing.__wrapped__
    else:
        yield type(thing)
        slots = (getattr(thing, name, None) for name in getattr(type(thing), "__slots__", ()))
        yield from (*slots, *getattr(thing, "__dict__", {}).values())


def _is_followed(thing: Any) -> bool:
    module = getattr(thing, "__module__", None)
    return isinstance(module, str) and module.startswith(PACKAGE) and not module.startswith(NOT_FOLLOWED)


def _unwrapped(held: Any) -> object:
    """The function behind a property or a method."""
    if isinstance(held, property):
        return held.fget
    if isinstance(held, cached_property):
        return held.func
    return getattr(held, "__func__", held)


def _in_function(function: FunctionType, words: set[str]) -> Iterator[object]:
    words |= _in_code(function.__code__)
    yield from (cell.cell_contents for cell in function.__closure__ or ())
    yield from function.__defaults__ or ()
    yield from (function.__kwdefaults__ or {}).values()
    modules = [import_module(word) for word in words if word.startswith(PACKAGE)]
    for word in words:
        if word in WORKED_OUT:
            yield _worked_out(word)
        held = function.__globals__.get(word)
        if isinstance(held, ModuleType):
            modules.append(held)
        elif held is not None:
            yield held
    for module in modules:
        if module.__name__.startswith(PACKAGE):
            yield from (getattr(module, word) for word in words if hasattr(module, word))


def _in_code(code: CodeType) -> set[str]:
    words = set(code.co_names)
    for constant in code.co_consts:
        if isinstance(constant, CodeType):
            words |= _in_code(constant)
        else:
            words |= _texts_in(constant)
    return words


def _texts_in(constant: object) -> set[str]:
    if isinstance(constant, str):
        return {constant}
    if isinstance(constant, (tuple, frozenset)):
        return set[str]().union(*map(_texts_in, constant))
    return set()
