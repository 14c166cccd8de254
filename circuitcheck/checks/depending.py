"""What each check's answer can depend on, told from its code.

A check that nowhere in its code, nor in the code it imports, names a data field cannot have read
it. So after an edit only the checks that name a changed field are asked again. This takes too many
rather than too few; `tests/test_rechecking.py` holds it against asking them all.
"""

from __future__ import annotations

from functools import cache
from importlib.util import find_spec
from types import CodeType

PACKAGE = "circuitcheck."
NOT_FOLLOWED = ("circuitcheck.parts", "circuitcheck.figures.plant", "circuitcheck.checks.case",
                "circuitcheck.drawing.fields", "circuitcheck.storage")  # fmt: skip
"""Where every field is named, or where all figures come together."""

WORKED_OUT = {
    "circuit": "circuitcheck.circuit.joining",
    "bodies": "circuitcheck.circuit.bodies",
    "flow": "circuitcheck.circuit.flowways",
    "discharges": "circuitcheck.circuit.discharge",
    "heights": "circuitcheck.figures.heights",
    "contents": "circuitcheck.figures.content",
    "situations": "circuitcheck.circuit.situations",
    "solved": "circuitcheck.figures.solved",
    "lines": "circuitcheck.drawing.routing",
}
"""What a case works out when it is asked by that name, and the module that does so."""

LAYOUT = frozenset({"lines", "lying", "port_at", "port_faces", "box", "end_at"})
"""Who says one of these looks at where things lie."""

MEASURED = frozenset({"length_m", "bends"})
"""Measured from the layout where the sheet has a scale."""


@cache
def words_of(module: str) -> frozenset[str]:
    """Every name and every text in the code of a module and of all it imports in the package."""
    seen: set[str] = set()
    words: set[str] = set()
    todo = [module]
    while todo:
        name = todo.pop()
        if name in seen or name.startswith(NOT_FOLLOWED):
            continue
        seen.add(name)
        own = _own_words(name)
        words |= own
        todo += [word for word in own if word.startswith(PACKAGE)]
        todo += [WORKED_OUT[word] for word in own & WORKED_OUT.keys()]
    return frozenset(words)


@cache
def _own_words(module: str) -> frozenset[str]:
    try:
        spec = find_spec(module)
    except (ImportError, ValueError):
        spec = None
    loader = spec.loader if spec is not None else None
    get_code = getattr(loader, "get_code", None)
    code = get_code(module) if get_code is not None else None
    return frozenset(_in_code(code)) if isinstance(code, CodeType) else frozenset()


def _in_code(code: CodeType) -> set[str]:
    words = set(code.co_names)
    for constant in code.co_consts:
        if isinstance(constant, CodeType):
            words |= _in_code(constant)
        elif isinstance(constant, str):
            words.add(constant)
        elif isinstance(constant, (tuple, frozenset)):
            words.update(each for each in constant if isinstance(each, str))
    return words


@cache
def circuit_words() -> frozenset[str]:
    """What the circuit itself and what is worked out from it alone can depend on."""
    return frozenset().union(
        *(words_of(WORKED_OUT[name]) for name in ("circuit", "bodies", "flow", "discharges"))
    )
