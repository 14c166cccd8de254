"""Every worked figure there is, found by walking `figures/worked/`: nothing else names them."""

from __future__ import annotations

import inspect
import pkgutil
from collections.abc import Mapping
from functools import cache
from importlib import import_module
from types import MappingProxyType

import circuitcheck.figures.worked as folder
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.figures.figure import Figure, WorkedFigure
from circuitcheck.figures.plant import Plant
from circuitcheck.rules.book import NoRuleError
from circuitcheck.sizing.water import OutsideLimitsError
from circuitcheck.told import a_word


@cache
def figures() -> Mapping[str, WorkedFigure]:
    """Every worked figure by its name, sorted by name."""
    found = {}
    for module in pkgutil.iter_modules(folder.__path__):
        code = import_module(f"{folder.__name__}.{module.name}")
        name = module.name.replace("_", "-")
        title, _, about = inspect.cleandoc(code.__doc__ or "").partition("\n")
        checks = tuple(getattr(code, "CHECKS", ()))
        found[name] = WorkedFigure(
            name, a_word(title.rstrip(".")), a_word(" ".join(about.split())), code.work, checks
        )
    return MappingProxyType({name: found[name] for name in sorted(found)})


def worked(figure: WorkedFigure, plant: Plant) -> tuple[Figure, ...]:
    """One figure for each of its subjects; none where it does not apply. Never raises: what cannot be
    worked is a figure that says why."""
    try:
        return figure.work(plant)
    except (NoRuleError, OutsideLimitsError) as error:
        return (_refused(figure, f"{error}"),)
    except TooLargeError:
        return (_refused(figure, a_word("the ways of the circuit are too many to follow")),)
    except Exception as error:
        return (_refused(figure, f"it failed inside the program ({type(error).__name__})", crashed=True),)


def all_figures(plant: Plant) -> tuple[Figure, ...]:
    """Every figure that applies to a plant, sorted by name, each subject in the order of the drawing.

    Never raises.
    """
    return tuple(each for figure in figures().values() for each in worked(figure, plant))


def _refused(figure: WorkedFigure, why: str, *, crashed: bool = False) -> Figure:
    return Figure(figure.name, figure.title, (), (), "", (), "", "", refused=why, crashed=crashed)
