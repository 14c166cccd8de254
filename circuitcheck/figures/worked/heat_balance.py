"""Heat source against emitters and coil.

What the heat source gives must be enough for the emitters and, where hot water does not come first, for the
coil beside them. Much more than both is no good either: it starts and stops all day. A coil that takes less
than the heat source gives makes it do the same whenever only the store calls.
"""

from __future__ import annotations

from circuitcheck.figures.emitting import emitted
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.heat_nets import HeatNet, heat_nets
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.telling import Telling
from circuitcheck.told import a_word, strung, worded

TELLING = Telling(
    "heat-balance",
    a_word("Heat source against emitters and coil"),
    a_word("Φ = sum of Φn × (ΔT / 50 K)^n over the emitters\nto spare = ΣP − Φ − ΣPc"),
    a_word("Conservation of energy; emitters by EN 442-2, exponent 1.3 (usual)."),
    a_word(
        "Emitters all open and their rooms at the temperature told; pipe losses not counted. What the rooms lose, "
        "and so what they need, is not in the drawing. An emitter that takes cooler water by its own limit counts "
        "at its stated output."
    ),
)
COIL_POWER = "coil_power_kw"


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each heating net that heats an emitter or a coil."""
    return tuple(_net(plant, net) for net in heat_nets(plant) if net.emitters or net.coils)


def _net(plant: Plant, net: HeatNet) -> Figure:
    told = Gathering(plant)
    outputs = [told.part(source, "output_kw", "P") for source in net.sources]
    emitters = [emitted(told, part) for part in net.emitters]
    coils, untold = _coils(told, net)
    if told.missing:
        return TELLING.lacking(told, net.sources)
    source_kw = sum(float(output) for output in outputs if output is not None)
    given_kw = sum(each.given_w for each in emitters if each is not None) / 1000
    nominal_kw = sum(each.nominal_w for each in emitters if each is not None) / 1000
    coil_kw = sum(coils)
    results = [Result(a_word("Heat sources together"), source_kw, "kW")]
    if net.emitters:
        results += [
            Result(a_word("Emitters at 50 K"), nominal_kw, "kW"),
            Result(a_word("Emitters at the design's temperatures"), given_kw, "kW"),
            Result(a_word("To spare, heating alone"), source_kw - given_kw, "kW"),
        ]
    if coils:
        results += [
            Result(a_word("Coils together"), coil_kw, "kW"),
            Result(a_word("To spare, hot water alone"), source_kw - coil_kw, "kW"),
        ]
        if source_kw:
            results.append(Result(a_word("Coils' share of the heat sources"), 100 * coil_kw / source_kw, "%"))
    if coils and net.emitters:
        results.append(
            Result(a_word("To spare, heating and hot water at once"), source_kw - given_kw - coil_kw, "kW")
        )
    more = ""
    if untold:
        names = strung(plant.drawing.name(store) for store in untold)
        more = worded("Not counted, since its kind has no coil power: {names}.", names=names)
    return TELLING.worked(told, net.sources, results, more_limits=more)


def _coils(told: Gathering, net: HeatNet) -> tuple[list[float], list[str]]:
    """The power of each coil that states one, and the stores whose kind states none."""
    components = told.plant.drawing.components
    powers, untold = [], []
    for store in net.coils:
        if all(field.name != COIL_POWER for field in components[store].kind.own_fields):
            untold.append(store)
            continue
        power = told.part(store, COIL_POWER, "Pc")
        if power is not None:
            powers.append(float(power))
    return powers, untold
