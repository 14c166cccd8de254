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
    """Where the hot water comes from: the headings of the list of arrangements, in its order."""

    MAINS_FED = "Mains-fed store"
    FROM_CISTERN = "Store fed from a cistern"
    NO_STORE = "No store"


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
        "Sealed heating with one zone valve for the rooms and one for a mains-fed store, and an automatic bypass.",
    ),
    _told(
        "built-in-devices",
        ArrangementGroup.MAINS_FED,
        "Built-in devices",
        "Pump, vessel, safety valve, bypass and gauge are inside the heat source; a mains-fed store with a zone valve.",
    ),
    _told(
        "secondary-return",
        ArrangementGroup.MAINS_FED,
        "Secondary return",
        "A mains-fed store whose hot water goes round by a pump, so that it is hot at the tap at once.",
    ),
    _told(
        "separator",
        ArrangementGroup.MAINS_FED,
        "Separator with several pumps",
        "Behind a separator each circuit has its own pump; a mains-fed store with an inlet group.",
    ),
    _told(
        "two-heat-sources",
        ArrangementGroup.MAINS_FED,
        "Two heat sources",
        "Two heat sources side by side before a separator, several pumped circuits and a secondary return.",
    ),
    _told(
        "store-heated-directly",
        ArrangementGroup.MAINS_FED,
        "Store heated directly",
        "Heating in two zones, and a mains-fed store that an immersion heater heats alone.",
    ),
    _told(
        "two-stores",
        ArrangementGroup.MAINS_FED,
        "Two stores, one discharge",
        "A guest house: heating and two mains-fed stores, whose tundishes share one larger pipe to the outside.",
    ),
    _told(
        "three-port-valve",
        ArrangementGroup.FROM_CISTERN,
        "Three-port valve, sealed",
        "Sealed heating with a three-port valve for the rooms and for a store that a cistern feeds.",
    ),
    _told(
        "open-vented",
        ArrangementGroup.FROM_CISTERN,
        "Open-vented with cisterns",
        "Heating under an open vent and a feed cistern, and a store that its own cistern feeds.",
    ),
    _told(
        "combination",
        ArrangementGroup.NO_STORE,
        "Combination heat source",
        "One heat source with all devices built in, which also heats the water as it is drawn.",
    ),
    _told(
        "radiators",
        ArrangementGroup.NO_STORE,
        "Radiators drawn one by one",
        "Sealed heating with each radiator drawn, and a rail without valves as the way round.",
    ),
    _told(
        "no-store",
        ArrangementGroup.NO_STORE,
        "No store",
        "Sealed heating alone, in two zones with an automatic bypass.",
    ),
)
_BY_NAME: Mapping[str, Arrangement] = MappingProxyType({each.name: each for each in _ALL})
