"""The fall of a discharge: 1 in 200 exactly, a step less, up, below a drop, and what is not known."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.discharge.plants import EUROPEAN, heating
from tests.made import Part, made

NAME = "discharge-rises"


def after(
    *pieces: dict[str, Any], before: dict[str, Any] | None = None, turned: bool = False, **store: Any
) -> Drawing:
    """A store's discharge: `b1` before its tundish, `a1`, `a2`, ... after it; `turned`: told from the end."""
    joints = [
        "tu.outlet",
        *(f"x{number}.{port}" for number in range(1, len(pieces)) for port in ("in", "out")),
        "de.inlet",
    ]
    ends = list(zip(joints[::2], joints[1::2], strict=True))
    lines = [f"a{n}: {b} - {a}" if turned else f"a{n}: {a} - {b}" for n, (a, b) in enumerate(ends, start=1)]
    strainers: dict[str, Part] = {f"x{number}": "strainer" for number in range(1, len(pieces))}
    return made(
        {"us": ("unvented_store", {"volume_l": 200, **store}), "tr": "temperature_relief_valve", "tu": "tundish",
         "de": "discharge_end", **strainers},
        way("us.relief tr.inlet") + "\nb1: tr.outlet - tu.inlet\n" + "\n".join(lines),
        pipe_data={"b1": before or {}, **{f"a{n}": piece for n, piece in enumerate(pieces, start=1)}},
    )  # fmt: skip


def piece(rise: float | None, length: float | None, drop: float | None = 0, **more: Any) -> dict[str, Any]:
    return {"rise_m": rise, "length_m": length, "straight_drop_m": drop, **more}


SOUND = {
    "exactly 1 in 200": after(piece(-0.05, 10)),
    "exactly 1 in 200 below its drop": after(piece(-0.45, 10.4, 0.4)),
    "told from its end": after(piece(0.05, 10), turned=True),
    "nothing but its drop": after(piece(-0.4, 0.4, 0.4)),
    "a plumb pipe whose drop is not told": after(piece(-2, 2, None, bends=0)),
    "each of two": after(piece(-0.5, 1, 0.3), piece(-0.05, 10)),
    "no length": after(piece(-0.5, 1), piece(0, 0)),
    "before the tundish level, or not known": after(piece(-1, 2), before={"rise_m": 0}),
    "the heating's": heating(pipe_data={"p2": {"rise_m": -0.01, "length_m": 2}}),
}
WRONG: dict[str, tuple[Drawing, str, tuple[str, ...], str]] = {
    # drawing, valve, pipes, words of the message
    "a step less": (after(piece(-0.0499, 10)), "tr", ("a1",), "falls 49.9 mm in 10 m; it must fall at least 1 in 200."),
    "enough only with its drop": (after(piece(-0.41, 10.4, 0.4)), "tr", ("a1",), "falls 10 mm in 10 m below its drop of 400 mm"),
    "level": (after(piece(0, 5)), "tr", ("a1",), "runs level"),
    "level, length not known": (after(piece(0, None)), "tr", ("a1",), "runs level"),
    "level below its drop": (after(piece(-0.3, 5, 0.3)), "tr", ("a1",), "runs level below its drop"),
    "rises": (after(piece(0.2, 5)), "tr", ("a1",), "rises by 200 mm"),
    "rises, nothing else known": (after(piece(0.2, None, None)), "tr", ("a1",), "rises by 200 mm"),
    "rises below its drop": (after(piece(-0.1, 5, 0.3)), "tr", ("a1",), "rises by 200 mm below its drop"),
    "rises, told from its end": (after(piece(-0.2, 5), turned=True), "tr", ("a1",), "rises"),
    "too little whatever its drop": (after(piece(-0.01, 10, None)), "tr", ("a1",), "falls 10 mm"),
    "the second of two": (after(piece(-1, 2), piece(-0.01, 10)), "tr", ("a2",), "falls 10 mm"),
    "two of three": (after(piece(-1, 2), piece(-0.01, 10), piece(0.1, 1)), "tr", ("a2", "a3"), "rises by 100 mm"),
    "one of two, the other not known": (after(piece(None, None), piece(0, 10)), "tr", ("a2",), "runs level"),
    "before the tundish": (after(piece(-1, 2), before={"rise_m": 0.1}), "tr", ("b1",), "rises by 100 mm"),
    "of a small store too": (after(piece(0, 2), volume_l=10), "tr", ("a1",), "runs level"),
    "the heating's": (heating(pipe_data={"p2": {"rise_m": 0.01, "length_m": 2}}), "sv", ("p2",), "rises by 10 mm"),
    "the heating's, before a tundish": (
        heating("tu.inlet:outlet", tu="tundish", pipe_data={"p2": {"rise_m": 0, "length_m": 1}}),
        "sv", ("p2",), "runs level",
    ),
    "no tundish where there should be one": (
        made({"us": "unvented_store", "tr": "temperature_relief_valve", "de": "discharge_end"},
             way("us.relief tr.inlet") + "\nd1: tr.outlet - de.inlet", pipe_data={"d1": {"rise_m": 1}}),
        "tr", ("d1",), "rises",
    ),
}  # fmt: skip
UNANSWERED = {
    "rise": (after(piece(None, 5)), ("a1.rise_m",)),
    "length": (after(piece(-0.2, None)), ("a1.length_m",)),
    "drop": (after(piece(-0.2, 5, None)), ("a1.straight_drop_m",)),
    "all": (after(piece(None, None, None)), ("a1.rise_m", "a1.length_m", "a1.straight_drop_m")),
    "of the second": (after(piece(-1, 2), piece(None, None)), ("a2.rise_m", "a2.length_m")),
    "all its drop, or more": (after(piece(-0.3, None, 0.3)), ("a1.length_m",)),
    "the heating's": (heating(), ("p2.rise_m", "p2.length_m")),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "valve", "pipes", "words"), WRONG.values(), ids=WRONG.keys())
def test_fires(drawing: Drawing, valve: str, pipes: tuple[str, ...], words: str) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components, finding.pipes) == ("danger", (valve,), pipes)
    assert words in finding.message
    assert finding.numbers["least_fall_m_a_m"] == 0.005


@pytest.mark.parametrize(
    ("told", "numbers"),
    [
        (piece(-0.0499, 10), {"fall_m": 0.0499, "straight_drop_m": 0, "length_m": 10}),
        (piece(-0.41, 10.4, 0.4), {"fall_m": 0.41, "straight_drop_m": 0.4, "length_m": 10.4}),
        (piece(0.2, None, None), {"fall_m": -0.2, "straight_drop_m": 0}),
    ],
)
def test_what_is_known_is_told(told: dict[str, Any], numbers: dict[str, float]) -> None:
    assert only(NAME, after(told)).numbers == pytest.approx({"least_fall_m_a_m": 0.005, **numbers})


@pytest.mark.parametrize(("drawing", "missing"), UNANSWERED.values(), ids=UNANSWERED.keys())
def test_unanswered(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert asked(NAME, drawing).status == "not judged"


def test_the_heights_of_its_ends_tell_its_rise() -> None:
    def drawing(end_m: float) -> Drawing:
        return made(
            {"hs": "heat_source", "sv": ("safety_valve", {"height_m": 2}), "de": ("discharge_end", {"height_m": end_m})},
            way("hs.flow sv.inlet", "sv.outlet de.inlet"),
            pipe_data={"p2": {"length_m": 4}},
        )  # fmt: skip

    assert found(NAME, drawing(1.98)) == ()
    assert only(NAME, drawing(1.981)).grade.value == "danger"
    assert "rises" in only(NAME, drawing(2.5)).message


def test_a_pipe_that_valves_share_counts_for_each() -> None:
    drawing = made(
        {"s1": "safety_valve", "s2": "safety_valve", "t1": "tee", "de": "discharge_end"},
        way("s1.outlet t1.a:b de.inlet", "s2.outlet t1.branch"),
        pipe_data={"p1": piece(-1, 1), "p2": piece(0, 3), "p3": piece(-1, 1)},
    )
    assert [finding.components for finding in found(NAME, drawing)] == [("s1",), ("s2",)]


def test_does_not_apply_and_is_not_judged_without_the_rule() -> None:
    assert asked(NAME, made({"sv": "safety_valve"}, "")).status == "not applicable"
    assert asked(NAME, heating(design=EUROPEAN)).status == "not judged"
