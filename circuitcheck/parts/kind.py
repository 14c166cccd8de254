"""What a kind of part is: its ports, the ways water can take through it, and its data fields."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import Enum, StrEnum
from typing import Any

from circuitcheck.parts.field_help import FIELD_HELP
from circuitcheck.told import a_word

Data = Mapping[str, Any]


class Group(StrEnum):
    """What a part does for the trade: the headings of the parts shelf, in its order."""

    HEAT = "Heat and stores"
    MOVING = "Moving and steering"
    SAFETY = "Safety and discharge"
    EMITTERS = "Emitters"
    SHUTTING = "Shutting and guarding"
    FILLING = "Filling, venting, draining"
    MAINS = "Mains and outlets"
    CONTROLS = "Controls"


class Way(Enum):
    """How water can go through a passage from `a` to `b`."""

    OPEN = "open"
    HAND = "hand"
    MOTOR = "motor"
    THERMOSTAT = "thermostat"
    ONE_WAY = "one-way"
    SPRING = "spring"
    REDUCING = "reducing"


class Role(Enum):
    """What a device inside a part does; checks ask for roles instead of kinds."""

    HEATS = "gives heat to the water from its port to its other port"
    PUMPS = "drives water from its port to its other port"
    HOLDS_EXPANSION = "takes up swelling water"
    RELIEVES_HEATING = "lets heating water out at its set pressure"
    RELIEVES_STORE = "lets a store's water out at its set pressure or temperature"
    EMITS = "gives heat to a room"
    HEATED_BY_COIL = "a coil that heats a store"
    STORES_AT_MAINS_PRESSURE = "holds hot water at mains pressure"
    STORES_OPEN = "holds hot water open to air"
    EXCHANGES = "passes heat through a wall between the water at its port and at its other port"
    FEEDS = "feeds water from a cistern by its height"
    VENTS = "ends open to air over a cistern"
    SHOWS_DISCHARGE = "shows a discharge through an air gap"
    ENDS_DISCHARGE = "where a discharge ends"
    MAIN = "source of mains water"
    SHOWS_PRESSURE = "a gauge on the water at its port"
    FILLS = "a link to fill the water at its port, from its other port"
    LETS_AIR_OUT = "a vent for air at its port"
    DRAINS = "a drain at its port"
    FILTERS = "takes dirt out of the heating water"
    CAN_BLOCK = "may block with dirt, from its port to its other port"
    BLENDS = "blends hot water at its port down to a set temperature at its other port"
    REDUCES = "brings the main's pressure down, from its port to its other port"
    STOPS_BACKFLOW = "keeps water from going back, from its port to its other port"
    RELIEVES_BY_TEMPERATURE = "lets a store's water out at its set temperature"
    RELIEVES_BY_PRESSURE = "lets a store's water out at its set pressure"
    BYPASSES = "opens above its set difference, from its port to its other port"
    SEPARATES = "joins a source's circuit and its load's without either driving the other"
    DRAWS = "where water is drawn"


@dataclass(frozen=True, slots=True)
class Device:
    """Something a part does, at a port of it; `other` is its outlet or far port where it has one."""

    role: Role
    port: str
    other: str = ""
    built_in: bool = False


@dataclass(frozen=True, slots=True)
class Port:
    """Where a pipe joins: offset from the part's `at` in squares (x right, y down), unturned.

    `faces` is the unit step in which a pipe leaves; None where it may leave any way (tee, cap).
    """

    name: str
    at: tuple[int, int]
    faces: tuple[int, int] | None


@dataclass(frozen=True, slots=True)
class Passage:
    """A way through a part, from `a` to `b`; a name that begins with `~` is a point inside the part.

    `way` is how water can circulate; `pressure` how pressure can pass where that differs.
    `driven`: water circulates from `a` to `b` only, though pressure passes both ways.
    `leg` names the leg of a three-port valve; the two legs of one part are never both shut.
    `gives_heat`: an emitter, a coil or an exchanger. `householder`: anybody may shut it by hand.
    `secured`: locked, sealed or capped against unintended shutting. `gap`: open to air.
    """

    a: str
    b: str
    way: Way = Way.OPEN
    pressure: Way | None = None
    leg: str = ""
    driven: bool = False
    gives_heat: bool = False
    householder: bool = False
    secured: bool = False
    gap: bool = False

    @property
    def pressure_way(self) -> Way:
        """How pressure passes."""
        return self.way if self.pressure is None else self.pressure


class FieldType(Enum):
    """The type a data field's value must have."""

    NUMBER = "number"
    SWITCH = "switch"
    CHOICE = "choice"
    CHOICES = "choices"
    REFERENCE = "reference"
    TEXT = "text"


@dataclass(frozen=True, slots=True)
class Field:
    """One field of `data`: its type, unit, limits and default.

    `default` None with no stated default means: left out is not known yet, as is null.
    `above` is an exclusive lower limit (a bore of zero is impossible), `least`/`most` inclusive.
    `refers_to` says what a reference must name: MOTOR_VALVE or CISTERN; any part if "".
    """

    name: str
    label: str
    type: FieldType = FieldType.NUMBER
    unit: str = ""
    default: object = None
    least: float | None = None
    above: float | None = None
    most: float | None = None
    choices: tuple[str, ...] = ()
    help: str = ""
    refers_to: str = ""

    def __post_init__(self) -> None:
        if not self.help:
            object.__setattr__(self, "help", FIELD_HELP.get(self.name, ""))
        # Put into sentences, these are told along when the sentence is told in another language.
        for name in ("label", "help"):
            object.__setattr__(self, name, a_word(getattr(self, name)))

    @property
    def has_default(self) -> bool:
        """Whether leaving the field out means a stated value."""
        return self.default is not None

    def value(self, data: Data) -> Any:
        """The field's value in `data`: as given, else the default, else None (not known yet).

        A number beyond all that can be measured counts as the most, or the least, that one reckons with.
        """
        return reckoned(data.get(self.name, self.default))


MOST_NUMBER, LEAST_NUMBER = 1e9, 1e-9
"""No plant has a number larger, or nearer to 0, in the units of any field. A file may: its powers would be no
numbers any more."""


def reckoned(value: Any) -> Any:
    """A value as one reckons with it: a number beyond these is the most, or the least, of them."""
    if value.__class__ is float or value.__class__ is int:
        size = abs(value)
        if size > MOST_NUMBER:
            return MOST_NUMBER if value > 0 else -MOST_NUMBER
        if 0 < size < LEAST_NUMBER:
            return LEAST_NUMBER if value > 0 else -LEAST_NUMBER
    return value


def number(
    name: str,
    label: str,
    unit: str,
    *,
    default: float | None = None,
    least: float | None = None,
    above: float | None = None,
    most: float | None = None,
    help: str = "",
) -> Field:
    """A numeric field."""
    return Field(name, label, FieldType.NUMBER, unit, default, least, above, most, (), help)


def switch(name: str, label: str, *, default: bool | None, help: str = "") -> Field:
    """A yes-or-no field; null means not known yet."""
    return Field(name, label, FieldType.SWITCH, default=default, help=help)


def choice(name: str, label: str, choices: tuple[str, ...], *, default: str | None, help: str = "") -> Field:
    """A field that takes one of the named values."""
    return Field(name, label, FieldType.CHOICE, default=default, choices=choices, help=help)


def any_of(name: str, label: str, choices: tuple[str, ...], *, help: str = "") -> Field:
    """A field that takes any of the named values, none by default."""
    return Field(name, label, FieldType.CHOICES, default=(), choices=choices, help=help)


MOTOR_VALVE, CISTERN = "motor valve", "cistern"
"""What a reference may have to name."""


def reference(name: str, label: str, *, to: str = "", help: str = "") -> Field:
    """A field that names another part by its id; `to` is MOTOR_VALVE, CISTERN, or any part."""
    return Field(name, label, FieldType.REFERENCE, help=help, refers_to=to)


HEIGHT = number("height_m", "Height", "m", least=-1000, most=1000, help="Above the sheet's datum.")
NOTE = Field("note", "Note", FieldType.TEXT)
COMMON_FIELDS = (HEIGHT, NOTE)

Passages = Callable[[Data], tuple[Passage, ...]]
Devices = Callable[[Data], tuple[Device, ...]]
OptionalPorts = Callable[[Data, frozenset[str]], frozenset[str]]

NO_PORTS: frozenset[str] = frozenset()


def passages(*ways: Passage) -> Passages:
    """Passages that do not depend on the part's data."""
    return lambda data: ways


def devices(*things: Device) -> Devices:
    """Devices that do not depend on the part's data."""
    return lambda data: things


def none_free(data: Data, joined: frozenset[str]) -> frozenset[str]:
    """No port may stay free."""
    return NO_PORTS


def free(*ports: str) -> OptionalPorts:
    """These ports may always stay free."""
    names = frozenset(ports)
    return lambda data, joined: names


def is_on(data: Data, name: str, default: bool) -> bool:
    """A switch's value. A null (not known) reads as the default: a check that rests on it has
    been told of the null before it comes here, and answers for both values."""
    value = data.get(name)
    return default if value is None else bool(value)


def chosen(data: Data, name: str) -> tuple[str, ...]:
    """The chosen values of an any-of field; none for null or left out."""
    return tuple(data.get(name) or ())


@dataclass(frozen=True, slots=True, eq=False, repr=False)
class Kind:
    """One kind of part: everything the program knows of it, in one place.

    `size` is the footprint in squares (width, height) centred on `at`. `passages` gives the ways
    through and `devices` what it does, for a part's data; `rests_on` names the fields these rest
    on, so that a default taken there can be reported and a null be answered for. `may_stay_free`
    gives the ports that need no pipe, for the data and the ports that have one. `outlets` names
    the ports whose freedom is an absent discharge and not an open end. `figure` names the fields
    that stand under the part's name on the sheet.
    """

    name: str
    title: str
    group: Group
    size: tuple[int, int]
    ports: tuple[Port, ...]
    own_fields: tuple[Field, ...] = ()
    passages: Passages = passages()
    devices: Devices = devices()
    rests_on: tuple[str, ...] = ()
    may_stay_free: OptionalPorts = none_free
    outlets: frozenset[str] = NO_PORTS
    figure: tuple[str, ...] = ()
    summary: str = ""
    is_control: bool = False

    def __post_init__(self) -> None:
        for name in ("title", "summary"):
            object.__setattr__(self, name, a_word(getattr(self, name)))

    @property
    def fields(self) -> tuple[Field, ...]:
        """The kind's own data fields, then those every part has."""
        return self.own_fields + COMMON_FIELDS

    def __repr__(self) -> str:
        # All of it would fill pages wherever a part is shown in a message.
        return f"<kind {self.name}>"

    def port(self, name: str) -> Port:
        """The port of that name. Raises KeyError."""
        for port in self.ports:
            if port.name == name:
                return port
        raise KeyError(name)

    def field(self, name: str) -> Field:
        """The data field of that name. Raises KeyError."""
        for known in self.fields:
            if known.name == name:
                return known
        raise KeyError(name)
