"""What is proposed for a store is tried by a fresh analysis, and something that is right is proposed."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.checks.case import Case
from circuitcheck.checks.store_cures import with_larger_vessel
from circuitcheck.checks.store_pressure_cures import with_reducing_valve
from circuitcheck.cures import cures
from circuitcheck.drawing.edits import remove, set_field
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.checks.store.fed import fed, store


def sound() -> Drawing:
    """A shipped drawing of a mains-fed store in which nothing is wrong with the store."""
    return read(Path(str(data_path("samples"))) / "terrace-as-proposed.wetcircuit")


def without(*ids: str) -> Callable[[Drawing], Drawing]:
    return lambda drawing: remove(drawing, ids)


def with_(id: str, field: str, value: object) -> Callable[[Drawing], Drawing]:
    return lambda drawing: set_field(drawing, id, field, value)


def cut_in(kind: str, part: str, port: str) -> Callable[[Drawing], Drawing]:
    def edit(drawing: Drawing) -> Drawing:
        work = Fitting(drawing)
        work.cut_in(kind, Joint(part, port))
        return work.drawing

    return edit


def relief_on_cold(drawing: Drawing) -> Drawing:
    work = Fitting(drawing)
    work.move_end(work.pipe_at(Joint("temperature_relief", "inlet")), "store", Joint("store", "cold"))
    return work.drawing


CURED: list[tuple[str, Callable[[Drawing], Drawing], str]] = [
    ("temperature-relief-absent", without("temperature_relief"), "on the relief port"),
    ("temperature-relief-absent", cut_in("check_valve", "temperature_relief", "inlet"), "on the relief port"),
    ("expansion-relief-absent", without("expansion_relief"), "on the cold feed"),
    ("store-vessel-absent", without("store_vessel"), "vessel for drinking water of 12 l"),
    ("store-vessel-absent", cut_in("check_valve", "store_vessel", "connection"), "Move Store vessel"),
    ("cold-check-absent", without("check"), "Fit a check valve"),
    ("store-pressure-not-limited", without("reducer"), "Fit a reducing valve set at 3 bar"),
    ("store-pressure-not-limited", with_("reducer", "set_pressure_bar", 9), "Set Reducing valve at 3 bar"),
    ("relief-settings-out-of-order", with_("expansion_relief", "set_pressure_bar", 9), "set at 8 bar"),
    ("relief-settings-out-of-order", with_("temperature_relief", "set_pressure_bar", 9), "set at 8 bar"),
    ("relief-settings-out-of-order", with_("temperature_relief", "set_temperature_c", 99), "90 °C"),
    ("relief-settings-out-of-order", with_("reducer", "set_pressure_bar", 5), "at 4.8 bar"),
    ("relief-misplaced", relief_on_cold, "Move Temperature relief"),
    ("relief-can-be-cut-off", cut_in("isolating_valve", "store", "relief"), "out of the pipe"),
    ("relief-can-be-cut-off", cut_in("isolating_valve", "store", "cold"), "out of the pipe"),
    (
        "store-vessel-can-be-cut-off",
        cut_in("isolating_valve", "store_vessel", "connection"),
        "out of the pipe",
    ),
    ("store-vessel-too-small", with_("store_vessel", "volume_l", 8), "12 l"),
    ("store-vessel-too-small", with_("store_vessel", "precharge_bar", 0.5), "Charge Store vessel at 3 bar"),
    ("cut-out-drives-no-valve", with_("store", "energy_cut_out", None), "supply of Store valve"),
    ("cut-out-drives-no-valve", with_("store", "energy_cut_out", "zv_rooms"), "supply of Store valve"),
    ("cut-out-drives-no-valve", with_("zv_store", "rest", "stays"), "rests shut"),
    ("cut-out-drives-no-valve", without("zv_store"), "two-port motorised valve"),
    ("store-thermostat-absent", without("store_thermostat"), "acts on Store valve"),
    ("store-thermostat-absent", without("zv_store"), "Fit a motorised valve"),
    ("immersion-without-cut-out", with_("store", "immersion_cut_out", False), "immersion heater"),
]


@pytest.mark.parametrize(("check", "spoil", "says"), CURED)
def test_cured(check: str, spoil: Callable[[Drawing], Drawing], says: str) -> None:
    analysis = analyse(spoil(sound()))
    (finding,) = (each for each in analysis.findings if each.check == check)
    found = cures(analysis, finding)
    assert found
    assert says in found[0].message
    assert all(
        each.check != check for each in analyse(found[0].drawing).findings if each.grade == finding.grade
    )


def test_a_new_relief_valve_discharges_where_the_others_do() -> None:
    analysis = analyse(remove(sound(), ["temperature_relief"]))
    (finding,) = (each for each in analysis.findings if each.check == "temperature-relief-absent")
    after = cures(analysis, finding)[0].drawing
    assert [part.id for part in after.components.values() if part.kind.name == "tundish"] == ["tundish"]


def test_no_cure_where_another_store_is_needed() -> None:
    analysis = analyse(set_field(sound(), "store", "coil_maximum_pressure_bar", 3))
    (finding,) = (each for each in analysis.findings if each.check == "coil-not-fit-for-sealed")
    assert cures(analysis, finding) == ()


def test_a_new_expansion_relief_valve_is_set_at_what_the_store_bears() -> None:
    analysis = analyse(remove(sound(), ["expansion_relief"]))
    (finding,) = (each for each in analysis.findings if each.check == "expansion-relief-absent")
    after = cures(analysis, finding)[0].drawing
    new = next(part for part in after.components.values() if part.kind.name == "expansion_relief_valve")
    assert new.value("set_pressure_bar") == after.components["store"].value("maximum_pressure_bar") == 8


@pytest.mark.parametrize(("volume", "proposals"), [(8, 2), (100, 1)])
def test_no_smaller_vessel_is_proposed_than_the_one_there(volume: float, proposals: int) -> None:
    drawing = fed(ev=("expansion_vessel", {"volume_l": volume, "precharge_bar": 0.2}))
    says = [str(each.says) for each in with_larger_vessel(Case(drawing), "us")]
    assert len(says) == proposals
    assert says[0].startswith("Charge ")


def test_a_relief_valve_built_into_the_store_bears_what_the_store_does() -> None:
    drawing = fed(
        expansion="", temperature="us.relief_outlet de.inlet", de="discharge_end",
        us=store(built_in=["expansion_relief", "temperature_relief"]),
        rv=("pressure_reducing_valve", {"set_pressure_bar": 9}),
    )  # fmt: skip
    (proposal,) = with_reducing_valve(Case(drawing), "us")
    assert str(proposal.says) == "Set pressure reducing valve rv at 3 bar."
