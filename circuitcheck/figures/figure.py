"""What a worked figure is: its results with the formula, the inputs and their origin, source and limits."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from circuitcheck.figures.plant import Plant


@dataclass(frozen=True, slots=True)
class Input:
    """One number that went into a formula, by the symbol that stands for it there.

    `origin` says where it came from: `given hs1.output_kw`, `usual value hs1.x` (a default of the
    file format), `measured p3.length_m`, `table EN 1057`, `rule england: topic.name`,
    `figure water-content`.
    """

    symbol: str
    name: str
    value: float | str
    unit: str
    origin: str


@dataclass(frozen=True, slots=True)
class Moves:
    """How much a result rests on a default: moving `field` (`id.field`) by `by`, such as `+20 %` or
    `15 mm instead of 22 mm`, moves the result by `share` of itself; below 0 where it becomes less, infinite
    where the figure then no longer holds."""

    field: str
    by: str
    share: float


@dataclass(frozen=True, slots=True)
class Result:
    """One thing that a figure comes to, with its unit. `float` may be infinite; a text is a size or place."""

    name: str
    value: float | str
    unit: str


@dataclass(frozen=True, slots=True)
class Figure:
    """One figure worked for one subject.

    `name` is the file's, `title` what stands over it, `subject` the ids that it is about (none: the
    whole drawing). `formula`, `source` and `limits` are sentences; several formulas are told apart by
    line breaks. `refused` says why it cannot be worked, empty where it was; `missing` then names the
    fields, as `id.field`, that would have to be known. `moves` says what the results owe to defaults.
    """

    name: str
    title: str
    subject: tuple[str, ...]
    results: tuple[Result, ...]
    formula: str
    inputs: tuple[Input, ...]
    source: str
    limits: str
    refused: str = ""
    missing: tuple[str, ...] = ()
    moves: tuple[Moves, ...] = ()
    crashed: bool = False

    def __post_init__(self) -> None:
        if not self.refused and (self.missing or not self.results):
            raise ValueError(f"{self.name}: a figure has results, or says why it has none")

    @property
    def lacks_numbers(self) -> bool:
        """Whether it was refused because numbers are missing, and not because none would serve."""
        return bool(self.missing)


Work = Callable[["Plant"], tuple[Figure, ...]]


@dataclass(frozen=True, slots=True)
class WorkedFigure:
    """One figure by its name, with its title, what it is and why it is asked, and how it is worked.

    `checks` names the checks that find what is not as the figure says it must be.
    """

    name: str
    title: str
    about: str
    work: Work
    checks: tuple[str, ...] = ()
