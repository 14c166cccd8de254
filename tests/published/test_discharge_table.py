"""The published table for discharge pipes and its worked examples, on the formulas and on whole drawings.

Source of all: Approved Document G (England), 2010 edition and the 2015 edition with 2016 amendments.
"""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding
from circuitcheck.rules.book import book
from circuitcheck.sizing.discharge import resistance_m, row, rows, smallest_d2, table_of, within
from tests.checks.asking import found, way
from tests.made import made

LIMITS = book("england").limits
RULED = table_of(LIMITS["discharge.table"].value, LIMITS["discharge.length_a_size_m"].value)

# Outlet, least D1, D2, greatest resistance in metres of straight pipe, resistance of each elbow or bend.
TABLE = [
    # G 1/2
    (15, 15, 22, 9, 0.8),
    (15, 15, 28, 18, 1.0),
    (15, 15, 35, 27, 1.4),
    # G 3/4
    (22, 22, 28, 9, 1.0),
    (22, 22, 35, 18, 1.4),
    (22, 22, 42, 27, 1.7),
    # G 1
    (28, 28, 35, 9, 1.4),
    (28, 28, 42, 18, 1.7),
    (28, 28, 54, 27, 2.3),
]


def store(outlet_mm: float, d1_mm: float, d2_mm: float, length_m: float, bends: int) -> Drawing:
    """A 200 l mains-fed store, its relief valve, half a metre of D1, a tundish, D2 and its end."""
    return made(
        {
            "us": ("unvented_store", {"volume_l": 200}),
            "tr": ("temperature_relief_valve", {"outlet_size_mm": outlet_mm}),
            "tu": "tundish",
            "de": ("discharge_end", {"place": "gully_below_grating"}),
        },
        way("us.relief tr.inlet", "tr.outlet tu.inlet:outlet de.inlet"),
        pipe_data={
            "p2": {"size_mm": d1_mm, "length_m": 0.5, "bends": 0},
            "p3": {"size_mm": d2_mm, "length_m": length_m, "bends": bends, "material": "copper"},
        },
    )


def dangers(drawing: Drawing) -> dict[str, Finding]:
    """What the whole program says of the discharge."""
    names = {
        "discharge-too-long",
        "discharge-bore-too-small",
        "tundish-too-far",
        "discharge-absent",
        "tundish-absent",
    }
    analysis = analyse(drawing)
    assert not names & set(analysis.not_judged)
    return {finding.check: finding for finding in analysis.findings if finding.check in names}


@pytest.mark.parametrize(("outlet", "d1", "d2", "limit", "bend"), TABLE)
class TestEachRow:
    """All nine rows of Approved Document G, Table 3.1."""

    def test_is_in_the_formulas(self, outlet: int, d1: int, d2: int, limit: float, bend: float) -> None:
        """Source: Approved Document G (England), Table 3.1."""
        found = row(RULED, outlet, d2)
        assert found is not None
        assert (found.outlet_mm, found.d1_least_mm, found.d2_mm, found.limit_m, found.bend_m, found.printed) == (
            outlet, d1, d2, limit, bend, True,
        )  # fmt: skip

    def test_holds_on_a_drawing(self, outlet: int, d1: int, d2: int, limit: float, bend: float) -> None:
        """Source: Approved Document G (England), Table 3.1; "up to" the limit is read as including it."""
        assert dangers(store(outlet, d1, d2, limit, 0)) == {}
        assert set(dangers(store(outlet, d1, d2, limit + 0.01, 0))) == {"discharge-too-long"}
        assert dangers(store(outlet, d1, d2, round(limit - 3 * bend, 6), 3)) == {}
        assert set(dangers(store(outlet, d1, d2, limit - 3 * bend + 0.01, 3))) == {"discharge-too-long"}

    def test_least_d1(self, outlet: int, d1: int, d2: int, limit: float, bend: float) -> None:
        """Source: Approved Document G (England), Table 3.1: D1 no smaller than the valve's outlet."""
        smaller = {15: 12, 22: 15, 28: 22}[d1]
        assert set(dangers(store(outlet, smaller, d2, 1, 0))) == {"discharge-bore-too-small"}


@pytest.mark.parametrize(("outlet", "d2"), [(15, 15), (22, 22), (28, 28), (22, 15)])
def test_d2_is_at_least_one_size_above_the_outlet(outlet: int, d2: int) -> None:
    """Source: Approved Document G (England), Table 3.1 and paragraph 3.58."""
    assert row(RULED, outlet, d2) is None
    assert set(dangers(store(outlet, outlet, d2, 1, 0))) == {"discharge-bore-too-small"}


class TestWorkedExample:
    """Approved Document G's worked example: G 1/2 outlet, four 22 mm elbows, 7 m to the end."""

    def test_permitted_lengths(self) -> None:
        """Source: Approved Document G (England), worked example beside Table 3.1: 9.0 - 4 x 0.8 = 5.8 m is
        permitted at 22 mm, less than 7 m; 18 - 4 x 1.0 = 14 m at 28 mm."""
        small, large = row(RULED, 15, 22), row(RULED, 15, 28)
        assert small is not None and large is not None
        assert small.limit_m - 4 * small.bend_m == pytest.approx(5.8)
        assert large.limit_m - 4 * large.bend_m == pytest.approx(14)
        assert resistance_m(7, 4, small.bend_m) == pytest.approx(10.2)
        assert resistance_m(7, 4, large.bend_m) == pytest.approx(11)
        answer = smallest_d2(RULED, 15, 7, 4)
        assert answer is not None and answer.d2_mm == 28

    def test_22_mm_is_refused_on_a_drawing(self) -> None:
        """Source: Approved Document G (England), worked example beside Table 3.1."""
        finding = dangers(store(15, 15, 22, 7, 4))["discharge-too-long"]
        assert finding.numbers["resistance_m"] == pytest.approx(10.2)
        assert finding.numbers["size_that_passes_mm"] == 28
        assert dangers(store(15, 15, 22, 5.8, 4)) == {}

    def test_28_mm_is_accepted_on_a_drawing(self) -> None:
        """Source: Approved Document G (England), worked example beside Table 3.1."""
        assert dangers(store(15, 15, 28, 7, 4)) == {}
        assert dangers(store(15, 15, 28, 14, 4)) == {}
        assert set(dangers(store(15, 15, 28, 14.01, 4))) == {"discharge-too-long"}


@pytest.mark.parametrize(
    ("length", "elbows", "at_22", "at_28"),
    [
        pytest.param(6, 6, 10.8, 12.0, id="worked example"),
        pytest.param(9, 5, 13.0, 14.0, id="exercise, its answer worked here"),
    ],
)
def test_textbook_examples(length: float, elbows: int, at_22: float, at_28: float) -> None:
    """Source: City & Guilds Textbook: Plumbing, Book 1 (2019), p. 416: G 1/2; 22 mm fails, 28 mm passes."""
    for size, resistance in ((22, at_22), (28, at_28)):
        found = row(RULED, 15, size)
        assert found is not None
        assert resistance_m(length, elbows, found.bend_m) == pytest.approx(resistance)
    assert not within(at_22, 9) and within(at_28, 18)
    answer = smallest_d2(RULED, 15, length, elbows)
    assert answer is not None and answer.d2_mm == 28
    finding = dangers(store(15, 15, 22, length, elbows))["discharge-too-long"]
    assert finding.numbers["resistance_m"] == pytest.approx(at_22)
    assert dangers(store(15, 15, 28, length, elbows)) == {}


def test_one_size_more_for_each_further_nine_metres() -> None:
    """Source: Approved Document G (England), paragraph 3.58; WFR guidance G19.3d."""
    for outlet in (15, 22, 28):
        found = rows(RULED, outlet)
        assert [each.limit_m for each in found] == [9 * (step + 1) for step in range(len(found))]
        assert [each.printed for each in found] == [step < 3 for step in range(len(found))]


@pytest.mark.parametrize(("length", "passes"), [(0.6, True), (0.61, False)])
def test_tundish_within_600_mm(length: float, passes: bool) -> None:
    """Source: Approved Document G (England), paragraph 3.54; WFR guidance G19.3a: 600 mm at most."""
    drawing = store(15, 15, 22, 1, 0)
    from dataclasses import replace

    pipes = {**drawing.pipes, "p2": replace(drawing.pipes["p2"], data={"size_mm": 15, "length_m": length})}
    assert ("tundish-too-far" not in dangers(replace(drawing, pipes=pipes))) is passes


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("tundish_within_m", 0.6),  # 3.54
        ("straight_drop_m", 0.3),  # 3.56a
        ("least_fall_m_a_m", 1 / 200),  # 3.56b
        ("sizes_above_the_largest", 1),  # 3.59
        ("length_a_size_m", 9),  # 3.58
    ],
)
def test_single_limits(name: str, value: float) -> None:
    """Source: Approved Document G (England), 3.54, 3.56, 3.58 and 3.59; each limit says so."""
    limit = LIMITS[f"discharge.{name}"]
    assert limit.value == pytest.approx(value)
    assert "Approved Document G (England)" in limit.source


@pytest.mark.parametrize("common", [22, 28, 35])
def test_one_pipe_for_two_stores_is_a_size_above_the_largest(common: float) -> None:
    """Source: Approved Document G (England), 3.59: 22 mm would do for each, so 28 mm for both."""
    piece = {"size_mm": 22, "length_m": 2, "bends": 1}
    drawing = made(
        {"s1": ("unvented_store", {"volume_l": 150, "built_in": ["temperature_relief"]}), "u1": "tundish",
         "s2": ("unvented_store", {"volume_l": 150, "built_in": ["temperature_relief"]}), "u2": "tundish",
         "t": "tee", "de": "discharge_end"},
        way("s1.relief_outlet u1.inlet", "s2.relief_outlet u2.inlet", "u1.outlet t.a", "u2.outlet t.branch", "t.b de.inlet"),
        pipe_data={"p3": piece, "p4": piece, "p5": {**piece, "size_mm": common}},
    )  # fmt: skip
    assert {finding.check for finding in found("shared-discharge-too-small", drawing)} == (
        {"shared-discharge-too-small"} if common < 28 else set()
    )
