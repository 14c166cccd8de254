"""The bypass is left out because the old heat source did without, or somebody puts a valve beside it to
set it by hand; on a rail that was always open a head is fitted."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import built_in, sources, without_built_in
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role

BRINGS = frozenset({"pump-against-shut-valves", "source-flow-below-minimum"})


def plant(site: Site) -> Iterator[Planted]:
    """The bypass left out or able to be shut by hand; the rail that was the way round able to be shut."""
    heat = tuple(source.part for source in sources(site))
    for bypass in site.devices(Role.BYPASSES):
        says = site.says("There is no bypass: with the zones shut water has no way round.")
        yield Planted(site.without(bypass.part), says, heat, brings=BRINGS)
        with tried():
            drawing, valve = site.valve_cut_in(Joint(bypass.part, bypass.device.port))
            says = site.says("{valve} can shut {bypass}.", drawing, valve=valve, bypass=bypass.part)
            yield Planted(drawing, says, (valve, bypass.part, *heat), brings=BRINGS)
    for rail in site.parts("radiator"):
        if rail.value("thermostatic") or rail.value("valves"):
            continue
        field = site.one("thermostatic", "hand_wheel")
        says = site.says("{rail} can be shut, and was the way round.", rail=rail.id)
        yield Planted(site.with_value(rail.id, field, True), says, (rail.id, *heat), brings=BRINGS)
    for source in built_in(site, "bypass"):
        says = site.says("{source} has no bypass built in, and there is no other.", source=source)
        yield Planted(without_built_in(site, source, "bypass"), says, (source,), brings=BRINGS)
