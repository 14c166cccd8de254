"""What the discharge checks propose: one edit, after which the check itself finds nothing more."""

from __future__ import annotations

from itertools import islice

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import found, only, way
from tests.checks.discharge.plants import heating, two_stores
from tests.checks.houses import store_discharge
from tests.made import Part, made

WAYS = (("p2", 0.5), ("p3", 0.5), ("p4", 1), ("p5", 10))


def proposed(check: str, drawing: Drawing) -> list[tuple[str, Drawing]]:
    """What the check proposes for its one finding, as sentence and drawing."""
    finding = only(check, drawing)
    return [
        (str(each.says), each.drawing) for each in islice(checks()[check].propose(Case(drawing), finding), 5)
    ]


def cured(check: str, drawing: Drawing) -> Drawing:
    """The drawing after the first proposal, of which the check must find nothing."""
    sentence, after = proposed(check, drawing)[0]
    assert after is not drawing and sentence[0].isupper() and sentence.endswith(".")
    assert found(check, after) == ()
    return after


def sizes(drawing: Drawing) -> dict[str, float | None]:
    return {id: pipe.data.get("size_mm") for id, pipe in drawing.pipes.items()}


def test_a_run_too_long_is_enlarged_from_the_tundish_to_its_end() -> None:
    after = cured(
        "discharge-too-long",
        store_discharge(
            after=({"size_mm": 22, "length_m": 4, "bends": 2},) * 2
            + ({"size_mm": 28, "length_m": 1, "bends": 0},)
        ),
    )
    assert {sizes(after)[pipe] for pipe in ("a1", "a2", "a3")} == {28}
    assert sizes(after)["b1"] == 15


def test_a_way_by_the_branch_of_a_tee_counts_as_a_bend_more() -> None:
    """8.3 m and that bend, which are 9.1 m of the 9 m that 22 mm carries."""
    after = cured("discharge-too-long", two_stores({"size_mm": 22, "length_m": 7.3, "bends": 0}))
    assert (sizes(after)["d2"], sizes(after)["dc"]) == (28, 28)


def test_of_two_ways_the_longer_gives_the_size() -> None:
    drawing = made(
        {"us": ("unvented_store", {"volume_l": 200}), "tr": "temperature_relief_valve", "tu": "tundish", "t1": "tee",
         "d1": "discharge_end", "d2": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet tu.inlet:outlet t1.a:b d1.inlet", "t1.branch d2.inlet"),
        pipe_data={id: {"size_mm": 22, "length_m": length, "bends": 0} for id, length in WAYS},
    )  # fmt: skip
    assert set(list(sizes(cured("discharge-too-long", drawing)).values())[2:]) == {28}


@pytest.mark.parametrize("bare", ["t1.branch d2.inlet", "t1.branch s1.in:out s2.in:out d2.inlet"])
def test_the_way_without_a_tundish_is_enlarged_be_it_the_shorter_or_the_longer(bare: str) -> None:
    used = dict.fromkeys({"s1", "s2"} & {*bare.replace(".", " ").split()}, "strainer")
    drawing = made(
        {"us": ("unvented_store", {"volume_l": 150}), "tr": "temperature_relief_valve", "t1": "tee", "tu": "tundish",
         "d1": "discharge_end", "d2": "discharge_end", **used},
        way("us.relief tr.inlet", "tr.outlet t1.a:b tu.inlet:outlet d1.inlet", bare),
        pipe_data={f"p{n}": {"size_mm": 15} for n in range(2, 6 + len(used))},
    )  # fmt: skip
    size = sizes(cured("tundish-absent", drawing))
    assert size["p4"] == 15 and {size[f"p{n}"] for n in range(5, 6 + len(used))} == {22}


def test_nothing_is_proposed_where_no_size_carries_it() -> None:
    assert (
        proposed("discharge-too-long", store_discharge(after=({"size_mm": 54, "length_m": 90, "bends": 0},)))
        == []
    )


@pytest.mark.parametrize(
    ("before", "after", "then"),
    [
        ((12,), (22,), (15, 22)),
        ((15,), (15,), (15, 22)),
        ((15,), (28, 22), (15, 28, 28)),
        ((22, 15), (22,), (22, 22, 22)),
        ((15,), (15, None), (15, 22, 22)),
    ],
)
def test_pipes_too_small_grow(
    before: tuple[float, ...], after: tuple[float | None, ...], then: tuple[float, ...]
) -> None:
    drawing = store_discharge(
        tuple({"size_mm": size} for size in before), tuple({"size_mm": size} for size in after)
    )
    result = sizes(cured("discharge-bore-too-small", drawing))
    assert tuple(size for pipe, size in result.items() if pipe[0] in "ab") == then


def test_the_heatings_pipe_grows_to_its_outlet() -> None:
    assert sizes(cured("discharge-bore-too-small", heating(pipe_data={"p2": {"size_mm": 12}})))["p2"] == 15


def straight(at: bool) -> Drawing:
    """A store's relief valve that discharges through no tundish; placed on the sheet, or not."""
    places = {"us": (0, 0), "tr": (6, -3), "de": (20, 10)}
    return made(
        {
            "us": ("unvented_store", {"volume_l": 150}),
            "tr": "temperature_relief_valve",
            "de": "discharge_end",
        },
        way("us.relief tr.inlet", "tr.outlet de.inlet"),
        pipe_data={"p2": {"size_mm": 15, "length_m": 4, "bends": 2}},
        at=places if at else None,
    )


@pytest.mark.parametrize("at", [True, False])
def test_a_tundish_is_cut_in_close_by_the_valve(at: bool) -> None:
    after = cured("tundish-absent", straight(at))
    assert found("tundish-too-far", after) == ()
    assert found("discharge-bore-too-small", after) == ()


@pytest.mark.parametrize("kind", ["safety_valve", "temperature_relief_valve"])
@pytest.mark.parametrize("ends", ["", "v.outlet - k.connection", "v.outlet - 9,9"])
def test_an_absent_discharge_gets_an_end(kind: str, ends: str) -> None:
    parts: dict[str, Part] = {"us": ("unvented_store", {"volume_l": 150}), "hs": "heat_source", "v": kind}
    parts |= {"k": "cap"} if "k." in ends else {}
    on = "us.relief - v.inlet" if kind == "temperature_relief_valve" else "hs.flow - v.inlet"
    after = cured("discharge-absent", made(parts, f"{on}\n{ends}"))
    assert found("discharge-bore-too-small", after) == ()
    assert found("tundish-absent", after) == ()


def test_no_end_is_proposed_for_a_pipe_that_goes_on() -> None:
    drawing = made(
        {"sv": "safety_valve", "t1": "tee", "k1": "cap", "k2": "cap"},
        way("sv.outlet t1.a:b k1.connection", "t1.branch k2.connection"),
    )
    assert proposed("discharge-absent", drawing) == []


def test_the_pipe_to_the_tundish_is_shortened() -> None:
    after = cured("tundish-too-far", store_discharge(({"length_m": 0.9, "rise_m": -0.7}, {"length_m": 0.2})))
    assert after.pipes["b1"].data["length_m"] == pytest.approx(0.4)
    assert after.pipes["b1"].data["rise_m"] == pytest.approx(-0.4)


@pytest.mark.parametrize("kind", ["isolating_valve", "zone_valve"])
def test_valves_are_taken_out_and_the_pipe_heals(kind: str) -> None:
    ports = "a:b" if kind == "isolating_valve" else "in:out"
    after = cured("discharge-can-be-shut", heating(f"xx.{ports}", xx=kind))
    assert "xx" not in after.components and len(after.pipes) == 2
    assert found("discharge-absent", after) == ()


def test_plastic_becomes_copper() -> None:
    drawing = heating(pipe_data={"p2": {"material": "plastic", "heatproof": False, "bore_mm": 11}})
    after = cured("discharge-not-heatproof", drawing)
    assert after.pipes["p2"].data["material"] == "copper" and "bore_mm" not in after.pipes["p2"].data


def test_the_common_pipe_grows() -> None:
    drawing = two_stores({"size_mm": 22, "length_m": 1, "bends": 0})
    assert sizes(cured("shared-discharge-too-small", drawing))["dc"] == 28


def test_a_tundish_is_put_in_sight() -> None:
    hidden = made(
        {"us": ("unvented_store", {"volume_l": 200}), "tr": "temperature_relief_valve",
         "tu": ("tundish", {"in_sight": False}), "de": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet tu.inlet:outlet de.inlet"),
    )  # fmt: skip
    assert cured("tundish-out-of-sight", hidden).components["tu"].data["in_sight"] is True
