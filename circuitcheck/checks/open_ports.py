"""Which ports must be joined and are not."""

from __future__ import annotations

from circuitcheck.drawing.value import Component, Drawing, Joint


def open_ports(drawing: Drawing, part: Component) -> tuple[str, ...]:
    """The ports of a part that must be joined and have no pipe, in their order.

    The free outlet of a relief or safety valve is none of them: it is an absent discharge.
    """
    return tuple(port for port in unjoined_ports(drawing, part) if port not in part.kind.outlets)


def unjoined_ports(drawing: Drawing, part: Component) -> tuple[str, ...]:
    """The same, with the free outlets of relief and safety valves that are there."""
    kind = part.kind
    joined = frozenset(port.name for port in kind.ports if Joint(part.id, port.name) in drawing.joined)
    if len(joined) == len(kind.ports):
        return ()
    may_stay = kind.may_stay_free(part.data, joined)
    return tuple(port.name for port in kind.ports if port.name not in joined and port.name not in may_stay)
