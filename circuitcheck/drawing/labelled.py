"""Which parts bear which label: an index that follows a drawing's changes, wherever its parts lie."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from circuitcheck.drawing.difference import changed_or_gone, changes
from circuitcheck.drawing.value import Component, Drawing, on_one_line


def label_key(label: str) -> str:
    """What labels that read alike have in common: blanks and capitals tell nothing apart."""
    return on_one_line(label).casefold()


class Labelled:
    """The parts of one drawing by their labels. `carried_on` makes it the index of the next drawing in place,
    so it belongs to one thread."""

    def __init__(self, parts: Iterable[Component]) -> None:
        self._parts: dict[str, dict[str, None]] = {}
        self._twice: dict[str, None] = {}
        for part in parts:
            if part.label:
                self._put(part)

    @property
    def parts(self) -> Mapping[str, Mapping[str, None]]:
        """The ids of the parts by label, as `label_key` tells it."""
        return self._parts

    @property
    def twice(self) -> Iterable[str]:
        """The labels that more than one part bears."""
        return self._twice

    def renew(self, old: Component | None, new: Component | None) -> None:
        """A part is another than it was; None: it was not there, or is gone."""
        if old is not None:
            self._take(old)
        if new is not None:
            self._put(new)

    def _put(self, part: Component) -> None:
        key = label_key(part.label)
        if key:
            bearers = self._parts.setdefault(key, {})
            bearers[part.id] = None
            if len(bearers) > 1:
                self._twice[key] = None

    def _take(self, part: Component) -> None:
        key = label_key(part.label)
        if key:
            bearers = self._parts[key]
            del bearers[part.id]
            if len(bearers) < 2:
                self._twice.pop(key, None)
            if not bearers:
                del self._parts[key]


def carried_on(index: Labelled, before: Drawing, after: Drawing) -> Labelled:
    """The index of a drawing as that of another; what is the same object is not looked at again."""
    old, new = before.components, after.components
    if old is not new:
        for id in changed_or_gone(changes(before, after)[0], old, new):
            index.renew(old.get(id), new.get(id))
    return index
