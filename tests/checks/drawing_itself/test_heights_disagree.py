"""Heights and rises that cannot all be right, said of the right pipes."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing, Pipe
from circuitcheck.geometry import Point
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed
from tests.checks.open_vented.plants import pumped_vented, with_data

NAME = "heights-disagree"


def test_a_loop_that_closes_is_sound() -> None:
    assert (found(NAME, pumped_vented()), asked(NAME, pumped_vented()).status) == ((), "judged")


def test_nothing_told_is_not_applicable() -> None:
    assert asked(NAME, sealed()).status == "not applicable"


@pytest.mark.parametrize(("rise", "fires"), [(-1.6, False), (-1.4, False), (-1.61, True), (1.5, True)])
def test_a_loop_that_does_not_close(rise: float, fires: bool) -> None:
    drawing = pumped_vented(data={"back": {"rise_m": rise}})
    if not fires:
        assert found(NAME, drawing) == ()
        return
    finding = only(NAME, drawing)
    assert finding.grade.value == "fault"
    assert set(finding.pipes) == {"flow", "gap", "suck", "push", "back"}
    assert finding.numbers == pytest.approx({"disagree_by_m": abs(rise + 1.5), "closes_within_m": 0.1})


def test_two_given_heights() -> None:
    finding = only(NAME, pumped_vented(**with_data("ov", height_m=6.2)))
    assert (finding.components, finding.pipes) == (("hs", "tv", "ov"), ("flow", "vent"))
    assert found(NAME, pumped_vented(**with_data("ov", height_m=6.1))) == ()


def test_a_rise_longer_than_its_pipe() -> None:
    finding = only(NAME, pumped_vented(data={"vent": {"length_m": 2.4}}))
    assert finding.pipes == ("vent",)
    assert finding.numbers == pytest.approx({"disagree_by_m": 0.1, "rise_m": 2.5, "length_m": 2.4})
    assert "by 2.5 m, 0.1 m more than its length of 2.4 m" in finding.message
    assert found(NAME, pumped_vented(data={"vent": {"length_m": 2.5}})) == ()


def test_a_pipe_that_joins_no_part_yet() -> None:
    pipe = Pipe("p", (Point(0, 0), Point(5, 0)), data={"rise_m": 2, "length_m": 1.5})
    finding = only(NAME, Drawing(pipes={"p": pipe}))
    assert (finding.components, finding.pipes) == ((), ("p",))
