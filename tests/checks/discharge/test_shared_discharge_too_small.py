"""One pipe for several stores: a size above the largest of theirs, a size less, and what is not known."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.discharge.plants import EUROPEAN, two_stores
from tests.made import Part, made

NAME = "shared-discharge-too-small"


def pipe(
    size: float | None, length: float | None = 1, bends: float | None = 0, **more: Any
) -> dict[str, Any]:
    return {"size_mm": size, "length_m": length, "bends": bends, **more}


SOUND = {
    "one size above": two_stores(pipe(28)),
    "more": two_stores(pipe(35)),
    # 7 m and its branch's bend: 8.8 m at 22 mm, so that each needs 22 mm.
    "the longer just within 22 mm": two_stores(pipe(28, 7), other=pipe(22, 1)),
    "two sizes up for a long run": two_stores(pipe(35, 9)),
    "a larger outlet": two_stores(pipe(35), outlets=(15, 22)),
    "sizes drawn larger than they need be do not count": two_stores(pipe(28), pipe(28), pipe(28)),
    "whatever the stores hold": two_stores(pipe(28), volumes=(None, None)),
}
TOO_SMALL: dict[str, tuple[Drawing, float, float | None]] = {
    # drawing, size, the least it should have
    "as small as each": (two_stores(pipe(22)), 22, 28),
    "a run just over 9 m": (two_stores(pipe(28, 8.1), other=pipe(22, 0.2)), 28, 35),
    "by its branch": (two_stores(pipe(28, 7.3)), 28, 35),
    "by its bends": (two_stores(pipe(28, 1, 10)), 28, 35),
    "a larger outlet": (two_stores(pipe(28), outlets=(15, 22)), 28, 35),
    "too small whatever is not known": (two_stores(pipe(22, None, None)), 22, 28),
    "too small in any material": (two_stores(pipe(22, material="plastic")), 22, 28),
    "no size is larger": (two_stores(pipe(54, 40), outlets=(15, 15)), 54, None),
}
UNANSWERED = {
    "size": (two_stores(pipe(None)), ("dc.size_mm",)),
    "length": (two_stores(pipe(28, None)), ("dc.length_m",)),
    "bends of one": (two_stores(pipe(28), other=pipe(22, 1, None)), ("d2.bends",)),
    "outlet": (two_stores(pipe(35), outlets=(15, None)), ("r2.outlet_size_mm",)),
    "material": (two_stores(pipe(28, material="steel")), ("dc.material",)),
    "material of a run too long for copper": (two_stores(pipe(28, 9, material="steel")), ("dc.material",)),
    "too small, if one store is no small one": (two_stores(pipe(22), volumes=(200, None)), ("s2.volume_l",)),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "size", "least"), TOO_SMALL.values(), ids=TOO_SMALL.keys())
def test_fires(drawing: Drawing, size: float, least: float | None) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components, finding.pipes) == ("danger", ("de", "s1", "s2"), ("dc",))
    assert (finding.numbers["size_mm"], finding.numbers.get("least_mm")) == (size, least)


@pytest.mark.parametrize(("drawing", "missing"), UNANSWERED.values(), ids=UNANSWERED.keys())
def test_unanswered(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)


def one_store(second: str, **parts: Part) -> Drawing:
    """Two relief valves, of which the second stands on the first's store, into one pipe of 22 mm."""
    return made(
        {"us": ("unvented_store", {"volume_l": 200}), "tr": "temperature_relief_valve", "xr": "expansion_relief_valve",
         "u1": "tundish", "u2": "tundish", "td": "tee", "de": "discharge_end", **parts},
        way("us.relief tr.inlet", second, "tr.outlet u1.inlet:outlet td.a:b de.inlet", "xr.outlet u2.inlet:outlet td.branch"),
    )  # fmt: skip


NOT_SEVERAL = {
    "valves of one store": one_store("us.cold xr.inlet"),
    "behind a valve": one_store("us.cold iv.a:b xr.inlet", iv="isolating_valve"),
    "behind a check valve": one_store("us.cold cv.out:in xr.inlet", cv="check_valve"),
    "the other store of 15 litres": two_stores(pipe(22), volumes=(200, 15)),
    "the other's is a safety valve": made(
        {"us": ("unvented_store", {"volume_l": 200}), "tr": "temperature_relief_valve", "sv": "safety_valve",
         "u1": "tundish", "td": "tee", "de": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet u1.inlet:outlet td.a:b de.inlet", "sv.outlet td.branch"),
    ),
    "ends of their own": made(
        {"s1": ("unvented_store", {"volume_l": 200, "built_in": ["temperature_relief"]}), "u1": "tundish", "d1": "discharge_end",
         "s2": ("unvented_store", {"volume_l": 200, "built_in": ["temperature_relief"]}), "u2": "tundish", "d2": "discharge_end"},
        way("s1.relief_outlet u1.inlet:outlet d1.inlet", "s2.relief_outlet u2.inlet:outlet d2.inlet"),
    ),
}  # fmt: skip


@pytest.mark.parametrize("drawing", NOT_SEVERAL.values(), ids=NOT_SEVERAL.keys())
def test_not_asked_for(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def test_three_stores_of_which_two_share_more() -> None:
    def drawing(first: float, second: float) -> Drawing:
        built: Part = ("unvented_store", {"volume_l": 150, "built_in": ["temperature_relief"]})
        big: Part = (
            "unvented_store",
            {"volume_l": 150, "built_in": ["temperature_relief"], "outlet_size_mm": 22},
        )
        return made(
            {"s1": built, "s2": built, "s3": big, "u1": "tundish", "u2": "tundish", "u3": "tundish", "t1": "tee", "t2": "tee",
             "de": "discharge_end"},
            way("s1.relief_outlet u1.inlet", "s2.relief_outlet u2.inlet", "s3.relief_outlet u3.inlet")
            + "\na: u1.outlet - t1.a\nb: u2.outlet - t1.branch\nc: t1.b - t2.a\nd: u3.outlet - t2.branch\ne: t2.b - de.inlet",
            pipe_data={"a": pipe(22), "b": pipe(22), "c": pipe(first), "d": pipe(28), "e": pipe(second)},
        )  # fmt: skip

    assert found(NAME, drawing(28, 35)) == ()
    assert only(NAME, drawing(22, 35)).pipes == ("c",)
    assert only(NAME, drawing(28, 28)).pipes == ("e",)
    both = only(NAME, drawing(22, 22))
    assert (both.pipes, both.components) == (("c", "e"), ("de", "s1", "s2", "s3"))


def test_the_message_holds_its_numbers() -> None:
    message = only(NAME, two_stores(pipe(22))).message
    assert "22 mm" in message and "28 mm" in message and "unvented store s2" in message


def test_not_judged_without_the_rule() -> None:
    assert asked(NAME, two_stores(pipe(22), design=EUROPEAN)).status == "not judged"
