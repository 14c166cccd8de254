"""A check's lesson as text: what it flags, why it matters, what puts it right, and the source."""

from __future__ import annotations

import textwrap
from collections.abc import Mapping

from circuitcheck.checks.check import Check, Lesson

WIDTH = 88


def explained(lesson: Lesson) -> str:
    """One lesson, wrapped for reading."""
    parts = [f"{lesson.name}\n{lesson.title}"]
    for heading, text in (
        ("What it flags", lesson.flags),
        ("Why it matters", lesson.why),
        ("What puts it right", lesson.remedy),
        ("Source", lesson.source),
    ):
        body = textwrap.fill(text, WIDTH, initial_indent="  ", subsequent_indent="  ", break_on_hyphens=False)
        parts.append(f"{heading}\n{body}")
    return "\n\n".join(parts) + "\n"


def listed(checks: Mapping[str, Check]) -> str:
    """Every check by its topic, with its title."""
    lines = []
    for topic in sorted({check.topic for check in checks.values()}):
        lines.append(topic.replace("_", " ").capitalize())
        for name, check in checks.items():
            if check.topic == topic:
                lines.append(f"  {name:<32} {check.lesson.title}")
    return "\n".join(lines) + "\n"
