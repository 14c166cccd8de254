"""The pump is put into the return, where there is room for it, and so before the vessel's tee and not after it:
nobody asks what it then takes off the rest."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.circuit.joining import Placed
from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.vessel import static_bar


def plant(site: Site) -> Iterator[Planted]:
    """A pump moved to right before a vessel's tee, where it is strong enough that the top of the house can
    come below the air's pressure: any other is advice wherever the vessel stands."""
    for vessel in of_the_heating(site, Role.HOLDS_EXPANSION):
        for pump in of_the_heating(site, Role.PUMPS):
            before = _where_water_comes(site, vessel)
            if before is None or not _may_draw_air(site, vessel, pump):
                continue
            with tried():
                known = site.drawing.components[pump.part]
                data = {**known.data}
                height = site.case.heights.of(before.part)
                if height is not None:
                    data["height_m"] = height
                work = site.fitting()
                work.take_out(pump.part)
                moved = work.cut_in(known.kind.name, before, port="out", data=data, label=known.label)
                says = site.says(
                    "{pump} stands right before the tee of {vessel}.",
                    work.drawing,
                    pump=moved,
                    vessel=vessel.part,
                )
                yield Planted(work.drawing, says, (moved, vessel.part), work.drawing.pipes_of(moved))


def _where_water_comes(site: Site, vessel: Placed) -> Joint | None:
    """The port of the vessel's tee at which water comes to it while pumps run."""
    body, tee = site.case.solved.at(vessel), site.beyond(vessel.part, vessel.device.port)
    if body is None or tee is None or not body.is_known:
        return None
    for run in body.runs:
        for id in site.drawing.pipes_of(tee.part):
            lpm, ends = run.flow_lpm(id), site.drawing.pipes[id].ends
            last = ends[1] if lpm and lpm > 0 else ends[0]
            if lpm and isinstance(last, Joint) and last.part == tee.part:
                return last
    return None


def _may_draw_air(site: Site, vessel: Placed, pump: Placed) -> bool:
    """Whether the height above the vessel and the pump's whole head are more than what the circuit is
    filled to."""
    case = site.case
    fill, own = case.design("fill_pressure_bar"), case.heights.of(vessel.part)
    head = case.value(pump.part, "shut_off_head_m")
    if fill is None or own is None or head is None:
        return False
    body = case.bodies.of(vessel.node)
    above = [
        height - own
        for each in case.circuit.devices(Role.EMITS)
        if case.bodies.of(each.node) == body and (height := case.heights.of(each.part)) is not None
    ]
    return bool(static_bar(max([0.0, *above]) + float(head)) > fill)
