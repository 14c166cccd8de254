"""The pump is left at its lowest step, or a small one was at hand."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role

BRINGS = frozenset({"emitter-starved", "source-flow-below-minimum", "bypass-set-wrong"})


def plant(site: Site) -> Iterator[Planted]:
    """A pump that cannot drive the flow it must."""
    for pump in of_the_heating(site, Role.PUMPS):
        low = site.one(0.3, 0.5, 0.8)
        says = site.says("{pump} makes {low} m of head only.", pump=pump.part, low=low)
        yield Planted(site.with_value(pump.part, "shut_off_head_m", low), says, (pump.part,), brings=BRINGS)
    for source in site.devices(Role.PUMPS, built_in=True):
        if not source.device.built_in:
            continue
        low = site.one(0.3, 0.5, 0.8)
        says = site.says("The pump in {source} makes {low} m of head only.", source=source.part, low=low)
        yield Planted(
            site.with_value(source.part, "shut_off_head_m", low), says, (source.part,), brings=BRINGS
        )
