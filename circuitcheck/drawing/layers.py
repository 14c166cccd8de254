"""Large maps that go on from step to step: a copy costs what was changed, not what there is."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, MutableMapping
from typing import Any, TypeVar

Key = TypeVar("Key")
Value = TypeVar("Value")

FEW = 1_000
"""A map of no more than this is copied outright: that is as quick, and quicker to look into."""
MOST_OWN = 256
"""With more of its own than this a map is put together anew, so that a long row of copies stays cheap."""

_GONE: Any = object()


class Layers(MutableMapping[Key, Value]):
    """A map of its own over one that is shared and stays as it is, of which it holds what differs.

    It has the order of the one below: what is put in anew, though it was taken out before, stands where it
    stood there; what is not there comes last.
    """

    def __init__(self, below: Mapping[Key, Value]) -> None:
        self._below = below
        self._own: dict[Key, Value] = {}
        self._count = len(below)

    def copy(self) -> Layers[Key, Value]:
        """Another map that holds the same."""
        if len(self._own) > MOST_OWN:
            return Layers(dict(self.items()))
        other = Layers(self._below)
        other._own = dict(self._own)
        other._count = self._count
        return other

    def __getitem__(self, key: Key) -> Value:
        found = self._own.get(key)
        if found is None:
            return self._below[key]
        if found is _GONE:
            raise KeyError(key)
        return found

    def get(self, key: Key, default: Any = None) -> Any:
        """The value, or what else is given."""
        found = self._own.get(key)
        if found is None:
            return self._below.get(key, default)
        return default if found is _GONE else found

    def __setitem__(self, key: Key, value: Value) -> None:
        self._count += key not in self
        self._own[key] = value

    def __delitem__(self, key: Key) -> None:
        if key not in self:
            raise KeyError(key)
        self._count -= 1
        if key in self._below:
            self._own[key] = _GONE
        else:
            del self._own[key]

    def __contains__(self, key: object) -> bool:
        found = self._own.get(key)  # type: ignore[arg-type]
        return key in self._below if found is None else found is not _GONE

    def __iter__(self) -> Iterator[Key]:
        for key in self._below:
            if self._own.get(key) is not _GONE:
                yield key
        for key in self._own:
            if key not in self._below:
                yield key

    def __len__(self) -> int:
        return self._count


class Over(Mapping[Key, Value]):
    """A map like another one but for a few values, of which it copies nothing: quick to make, slower to read."""

    def __init__(self, below: Mapping[Key, Value], own: Mapping[Key, Value]) -> None:
        """`own` holds the few, all of them under keys that the one below has too."""
        self._below = below
        self._own = own

    def __getitem__(self, key: Key) -> Value:
        return self._own[key] if key in self._own else self._below[key]

    def get(self, key: Key, default: Any = None) -> Any:
        """The value, or what else is given."""
        return self._own[key] if key in self._own else self._below.get(key, default)

    def __contains__(self, key: object) -> bool:
        return key in self._below

    def __iter__(self) -> Iterator[Key]:
        return iter(self._below)

    def __len__(self) -> int:
        return len(self._below)


def over(items: Mapping[Key, Value], new: Mapping[Key, Value]) -> Mapping[Key, Value]:
    """A map in which these stand in place of those of the same keys, for what is gone again at once; the map itself
    where nothing differs. Raises KeyError for a key that is not in the map."""
    differing = {key: value for key, value in new.items() if items[key] is not value}
    return Over(items, differing) if differing else items


def carried_on(items: MutableMapping[Key, Value]) -> MutableMapping[Key, Value]:
    """A map to be changed that holds the same as one that must not change any more. None is no value of it."""
    if isinstance(items, Layers):
        return items.copy()
    return dict(items) if len(items) <= FEW else Layers(items)


def may_differ(one: Mapping[Key, Value], other: Mapping[Key, Value]) -> Iterable[Key]:
    """The keys under which two maps may hold other values, each once; of two over the same one, few."""
    below, own = _apart(one)
    other_below, other_own = _apart(other)
    if below is other_below:
        return dict.fromkeys((*own, *other_own))
    return dict.fromkeys((*one, *other))


def _apart(items: Mapping[Key, Value]) -> tuple[Mapping[Key, Value], Mapping[Key, Value]]:
    return (items._below, items._own) if isinstance(items, Layers) else (items, {})
