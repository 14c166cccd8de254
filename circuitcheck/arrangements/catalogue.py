"""Every usual arrangement: its name, what it is, and its drawing, read when first asked for."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from functools import cache
from pathlib import Path
from types import MappingProxyType

from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Says
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

ENDING = ".wetcircuit"


class ArrangementGroup(StrEnum):
    """How the hot water is made: the headings of the list of arrangements, in its order."""

    MAINS_FED = "Sealed heating, mains-fed store"
    FROM_CISTERN = "Store fed from a cistern"
    NO_COIL = "Heating and hot water apart"


@dataclass(frozen=True, slots=True)
class Arrangement:
    """One usual arrangement. `title` and `says` are English templates, to be translated where shown."""

    name: str
    group: ArrangementGroup
    title: Says
    says: Says

    @property
    def file(self) -> Path:
        """Where its drawing lies."""
        return data_path("arrangements") / f"{self.name}{ENDING}"

    @property
    def drawing(self) -> Drawing:
        """Its drawing: sound, laid out, every number given. Read once."""
        return _drawing(self.name)


def arrangements() -> Mapping[str, Arrangement]:
    """Every arrangement by its name, in the order in which they are offered."""
    return _BY_NAME


@cache
def _drawing(name: str) -> Drawing:
    return read(_BY_NAME[name].file)


def _told(name: str, group: ArrangementGroup, title: str, says: str) -> Arrangement:
    return Arrangement(name, group, Says(title), Says(says))


_ALL = (
    _told(
        "two-zone-valves",
        ArrangementGroup.MAINS_FED,
        "Two zone valves",
        "Sealed heating with a zone valve for the rooms and one for a mains-fed store, and an automatic bypass.",
    ),
    _told(
        "separator",
        ArrangementGroup.MAINS_FED,
        "Separator with several pumps",
        "Sealed heating behind a separator: each circuit has its own pump and check valve.",
    ),
    _told(
        "combination",
        ArrangementGroup.NO_COIL,
        "Combination heat source",
        "One heat source with everything built in that also heats the water as it is drawn.",
    ),
    _told(
        "radiators",
        ArrangementGroup.NO_COIL,
        "Radiators drawn one by one",
        "Sealed heating with every radiator drawn, one of them left open as the way round.",
    ),
)
_BY_NAME: Mapping[str, Arrangement] = MappingProxyType({each.name: each for each in _ALL})
