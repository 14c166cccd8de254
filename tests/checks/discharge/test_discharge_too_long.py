"""The run after the tundish against the table: at the limit, a step over, and what is not known."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.houses import store_discharge
from tests.made import made

NAME = "discharge-too-long"


def run(*pieces: Mapping[str, Any], store: Mapping[str, Any] | None = None, outlet: float = 15) -> Drawing:
    """A discharge whose pipes after the tundish are these."""
    return store_discharge(after=pieces, store=store, valve={"outlet_size_mm": outlet})


def piece(size: float, length: float | None, bends: float | None = 0, **more: Any) -> Mapping[str, Any]:
    """One pipe's data."""
    return {"size_mm": size, "length_m": length, "bends": bends, **more}


SOUND: dict[str, Drawing] = {
    "exactly the limit": run(piece(22, 9)),
    "exactly the limit, in pieces that do not add up exactly": run(*[piece(22, 0.9)] * 10),
    "exactly the limit with bends": run(piece(22, 5.8, 4)),
    "the larger size": run(piece(28, 7, 4)),
    "long before the tundish, which another check speaks of": store_discharge(
        before=(piece(15, 20, 9),), after=(piece(22, 9),)
    ),
    "larger further down": run(piece(22, 4), piece(28, 5)),
    "the bore below the table's, which another check speaks of": run(piece(15, 30)),
    "beyond the printed rows, one more size for each nine metres": run(piece(42, 36)),
    "a larger outlet": run(piece(28, 9), outlet=22),
    "the largest outlet": run(piece(35, 9), outlet=28),
    "material said": run(piece(22, 9, 0, material="copper")),
    "through a tee's straight way": run(piece(22, 9)),
}

TOO_LONG: dict[str, tuple[Drawing, float, float, float | None]] = {
    # drawing, resistance, limit, the size that passes
    "a step over": (run(piece(22, 9.01)), 9.01, 9, 28),
    "a step over in pieces": (run(piece(22, 4.5), piece(22, 4.51)), 9.01, 9, 28),
    "by its bends": (run(piece(22, 7, 4)), 10.2, 9, 28),
    "by one bend": (run(piece(22, 9, 1)), 9.8, 9, 28),
    "by a bend in each piece": (run(piece(22, 4, 1), piece(22, 4, 1)), 9.6, 9, 28),
    "two sizes up": (run(piece(22, 20)), 20, 9, 35),
    "mixed bores count by the smallest": (run(piece(28, 5), piece(22, 5)), 10, 9, 28),
    "mixed bores, the smaller first": (run(piece(22, 5), piece(28, 5)), 10, 9, 28),
    "a larger outlet": (run(piece(28, 9.01), outlet=22), 9.01, 9, 35),
    "no size carries it": (run(piece(54, 100)), 100, 45, None),
    "the largest outlet, no size carries it": (run(piece(54, 27.01), outlet=28), 27.01, 27, None),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()


@pytest.mark.parametrize(("drawing", "resistance", "limit", "larger"), TOO_LONG.values(), ids=TOO_LONG.keys())
def test_fires(drawing: Drawing, resistance: float, limit: float, larger: float | None) -> None:
    finding = only(NAME, drawing)
    assert finding.grade.value == "danger"
    assert finding.components == ("tr", "de")
    assert finding.numbers["resistance_m"] == pytest.approx(resistance)
    assert finding.numbers["limit_m"] == limit
    assert finding.numbers.get("size_that_passes_mm") == larger
    assert all(pipe.startswith("a") for pipe in finding.pipes)


def tee_run(through: str, *, length: float = 8.5) -> Drawing:
    """A run through one tee, by the ports named, of two pipes of that length together."""
    other = next(port for port in ("a", "b", "branch") if port not in through.split(":"))
    return made(
        {"us": ("unvented_store", {"volume_l": 150}), "tr": "temperature_relief_valve", "tu": "tundish",
         "t1": "tee", "k": "cap", "de": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet tu.inlet", f"tu.outlet t1.{through} de.inlet", f"t1.{other} k.connection"),
        pipe_data={
            "p2": piece(15, 0.3), "p3": piece(22, length / 2), "p4": piece(22, length / 2),
        },
    )  # fmt: skip


@pytest.mark.parametrize("through", ["branch:a", "b:branch", "a:branch", "branch:b"])
def test_a_tee_by_its_branch_counts_as_a_bend(through: str) -> None:
    finding = only(NAME, tee_run(through))
    assert finding.numbers["bends"] == 1
    assert finding.numbers["resistance_m"] == pytest.approx(9.3)
    assert found(NAME, tee_run(through, length=8.2)) == ()


@pytest.mark.parametrize("through", ["a:b", "b:a"])
def test_a_tee_straight_through_counts_as_none(through: str) -> None:
    assert found(NAME, tee_run(through)) == ()


UNANSWERED: dict[str, tuple[Drawing, tuple[str, ...]]] = {
    "length not known": (run(piece(22, None)), ("a1.length_m",)),
    "length left out": (run({"size_mm": 22, "bends": 0}), ("a1.length_m",)),
    "bends not known": (run(piece(22, 5, None)), ("a1.bends",)),
    "both, of two pipes": (
        run(piece(22, None, None), piece(22, 5, None)),
        ("a1.length_m", "a1.bends", "a2.bends"),
    ),
    "size not known": (run({"length_m": 5, "bends": 0}), ("a1.size_mm",)),
    "size of one of two not known": (run(piece(28, 5), {"length_m": 2, "bends": 0}), ("a2.size_mm",)),
    "plastic": (run(piece(22, 5, 0, material="plastic")), ("a1.material",)),
    "steel": (run(piece(22, 5, 0, material="steel")), ("a1.material",)),
    "material not known": (run(piece(22, 5, 0, material=None)), ("a1.material",)),
    "plastic, and too long by copper's table": (run(piece(22, 15, 0, material="plastic")), ("a1.material",)),
    "a size the table does not know": (run(piece(25, 5)), ("a1.size_mm",)),
    "a size beyond the table": (run(piece(67, 5)), ("a1.size_mm",)),
    "an outlet the table does not know": (run(piece(22, 5), outlet=20), ("tr.outlet_size_mm",)),
    "too long, if the store is not one of 15 litres": (
        run(piece(22, 9.01), store={"volume_l": None}),
        ("us.volume_l",),
    ),
}


@pytest.mark.parametrize(("drawing", "missing"), UNANSWERED.values(), ids=UNANSWERED.keys())
def test_unanswered_naming_what_is_missing(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components[0]) == ("unanswered", "tr")
    assert sorted(finding.missing) == sorted(missing)
    assert finding.would_be is not None and finding.would_be.value == "danger"
    assert asked(NAME, drawing).status == "not judged"
    for name in missing:
        assert name in finding.message


@pytest.mark.parametrize(
    "drawing",
    [
        run(piece(22, 9.01), piece(22, None, None)),
        run(piece(22, 9.01, None)),
        run(piece(22, None, 12)),
    ],
    ids=["a length not known", "bends not known", "bends enough by themselves"],
)
def test_what_is_known_is_too_long_already(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("danger", ())


def test_too_long_at_the_size_that_is_known_waits_for_the_one_that_is_not() -> None:
    """A smaller pipe among them has no row in the table, and is another check's danger."""
    finding = only(NAME, run(piece(22, 9.01), {"length_m": 1, "bends": 0}))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("a2.size_mm",))


@pytest.mark.parametrize(("volume", "fires"), [(15, False), (15.1, True), (10, False)])
def test_small_stores_are_outside_the_rules(volume: float, fires: bool) -> None:
    drawing = run(piece(22, 20), store={"volume_l": volume})
    assert bool(found(NAME, drawing)) is fires
    assert asked(NAME, drawing).status == ("judged" if fires else "not applicable")


def test_an_unknown_volume_does_not_matter_where_the_run_is_short() -> None:
    assert found(NAME, run(piece(22, 5), store={"volume_l": None})) == ()


def test_the_heating_safety_valve_is_outside_the_table() -> None:
    drawing = made(
        {"hs": "heat_source", "sv": "safety_valve", "tu": "tundish", "de": "discharge_end"},
        way("hs.flow sv.inlet", "sv.outlet tu.inlet:outlet de.inlet"),
        pipe_data={"p3": piece(15, 60)},
    )
    assert asked(NAME, drawing).status == "not applicable"


@pytest.mark.parametrize("built_in", ["temperature_relief", "expansion_relief"])
def test_built_in_relief_valves(built_in: str) -> None:
    def drawing(length: float) -> Drawing:
        return made(
            {"us": ("unvented_store", {"volume_l": 150, "built_in": [built_in]}), "tu": "tundish", "de": "discharge_end"},
            way("us.relief_outlet tu.inlet:outlet de.inlet"),
            pipe_data={"p1": piece(15, 0.2), "p2": piece(22, length)},
        )  # fmt: skip

    assert found(NAME, drawing(9)) == ()
    assert only(NAME, drawing(9.01)).components == ("us", "de")


def test_an_inlet_groups_relief() -> None:
    def drawing(length: float) -> Drawing:
        return made(
            {"ig": "inlet_group", "us": ("unvented_store", {"volume_l": 150}), "tu": "tundish", "de": "discharge_end"},
            way("ig.out us.cold", "ig.relief tu.inlet:outlet de.inlet"),
            pipe_data={"p2": piece(15, 0.2), "p3": piece(22, length)},
        )  # fmt: skip

    assert found(NAME, drawing(9)) == ()
    assert only(NAME, drawing(9.01)).components == ("ig", "de")


def test_two_valves_into_one_tundish_are_judged_each() -> None:
    drawing = made(
        {"us": ("unvented_store", {"volume_l": 150}), "tr": "temperature_relief_valve", "xr": "expansion_relief_valve",
         "t1": "tee", "t2": "tee", "tu": "tundish", "de": "discharge_end", "k": "cap"},
        way("us.relief tr.inlet", "us.cold t2.a", "t2.branch xr.inlet", "tr.outlet t1.a:b tu.inlet:outlet de.inlet",
            "xr.outlet t1.branch", "t2.b k.connection"),
        pipe_data={"p6": piece(22, 9.01)},
    )  # fmt: skip
    assert [finding.components for finding in found(NAME, drawing)] == [("tr", "de"), ("xr", "de")]


def test_two_ends_the_longer_way_counts() -> None:
    def drawing(one: float, other: float) -> Drawing:
        return made(
            {"us": ("unvented_store", {"volume_l": 150}), "tr": "temperature_relief_valve", "tu": "tundish",
             "t1": "tee", "d1": "discharge_end", "d2": "discharge_end"},
            way("us.relief tr.inlet", "tr.outlet tu.inlet:outlet t1.a:b d1.inlet", "t1.branch d2.inlet"),
            pipe_data={"p2": piece(15, 0.2), "p3": piece(22, 1), "p4": piece(22, one), "p5": piece(22, other)},
        )  # fmt: skip

    assert found(NAME, drawing(8, 7.2)) == ()
    assert only(NAME, drawing(8.01, 1)).components == ("tr", "d1")
    assert only(NAME, drawing(1, 7.21)).components == ("tr", "d2")


def test_two_ends_of_which_the_shorter_by_length_is_too_long_by_its_bends() -> None:
    drawing = made(
        {"us": ("unvented_store", {"volume_l": 150}), "tr": "temperature_relief_valve", "tu": "tundish",
         "t1": "tee", "d1": "discharge_end", "d2": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet tu.inlet:outlet t1.a:b d1.inlet", "t1.branch d2.inlet"),
        pipe_data={"p2": piece(15, 0.2), "p3": piece(22, 1), "p4": piece(22, 7), "p5": piece(22, 6, 5)},
    )  # fmt: skip
    assert only(NAME, drawing).components == ("tr", "d2")


def test_two_ends_of_which_the_shorter_is_too_long_for_its_smaller_bore() -> None:
    drawing = made(
        {"us": ("unvented_store", {"volume_l": 150}), "tr": "temperature_relief_valve", "tu": "tundish",
         "t1": "tee", "d1": "discharge_end", "d2": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet tu.inlet:outlet t1.a:b d1.inlet", "t1.branch d2.inlet"),
        pipe_data={"p2": piece(15, 0.2), "p3": piece(28, 1), "p4": piece(28, 12), "p5": piece(22, 10)},
    )  # fmt: skip
    assert only(NAME, drawing).components == ("tr", "d2")


def test_two_ends_of_which_the_shorter_is_not_known() -> None:
    drawing = made(
        {"us": ("unvented_store", {"volume_l": 150}), "tr": "temperature_relief_valve", "tu": "tundish",
         "t1": "tee", "d1": "discharge_end", "d2": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet tu.inlet:outlet t1.a:b d1.inlet", "t1.branch d2.inlet"),
        pipe_data={"p2": piece(15, 0.2), "p3": piece(22, 1), "p4": piece(22, 7), "p5": piece(22, None)},
    )  # fmt: skip
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", ("p5.length_m",))


def test_the_taken_material_and_outlet_are_told() -> None:
    from circuitcheck.analysis import analyse

    drawing = store_discharge()
    assert {"a1.material = copper", "tr.outlet_size_mm = 15"} <= set(analyse(drawing).taken)


def test_the_message_holds_its_numbers() -> None:
    message = only(NAME, run(piece(22, 7, 4))).message
    for text in ("22 mm", "7 m", "4 bends", "10.2 m", "9 m", "28 mm"):
        assert text in message
