"""What a drawing can begin with: an empty sheet, a sound arrangement, or a sample to look at."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.editor.translating import tr


@dataclass(frozen=True, slots=True)
class Offer:
    """One thing to begin with. `file` is None for the empty sheet; `does` is what its button says."""

    heading: str
    title: str
    words: str
    does: str
    file: Path | None = None
    is_sample: bool = False


def offers(samples: list[tuple[str, Path]]) -> Iterator[Offer]:
    """All of them in the order of the list; `samples` are those that ship, each with its name."""
    yield Offer(
        tr("From nothing"),
        tr("Empty sheet"),
        tr("Begin with the heat source, and draw from port to port."),
        tr("Begin empty"),
    )
    for each in arrangements().values():
        yield Offer(
            tr("{group}, sound", group=tr(str(each.group))),
            tr(each.title.template),
            tr(each.says.template),
            tr("Start from this"),
            each.file,
        )
    for name, path in samples:
        yield Offer(
            tr("Samples to look at"),
            name,
            tr("Opened as a copy. Nothing you do changes the sample."),
            tr("Open a copy"),
            path,
            is_sample=True,
        )
