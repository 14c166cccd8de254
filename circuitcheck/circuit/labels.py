"""What a passage that can be shut is called: its part's id, with the leg of a three-port valve."""

from __future__ import annotations

LEG = "\0"
"""Between a three-port valve's id and its leg: no id of a part that is read holds it."""


def leg_label(part: str, leg: str) -> str:
    """The label of one leg of a three-port valve."""
    return f"{part}{LEG}{leg}"


def part_of(label: str) -> str:
    """The part whose passage a label names."""
    return label.partition(LEG)[0]


def shown(label: str) -> str:
    """A label as a finding shows it: `id`, or `id:leg` for a leg."""
    return label.replace(LEG, ":")


def other_leg(label: str) -> str:
    """The other leg of a three-port valve; empty for a passage without legs."""
    part, mark, leg = label.partition(LEG)
    if not mark:
        return ""
    return leg_label(part, "b" if leg == "a" else "a")
