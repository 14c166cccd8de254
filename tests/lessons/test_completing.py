"""What a cure leaves open is filled in, and the remedied drawing can be put to work; nothing else is changed."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Grade
from circuitcheck.lessons.completing import completed
from circuitcheck.lessons.lesson import lesson
from circuitcheck.operating.standing import Operated


@pytest.mark.parametrize("check", ["no-way-round-when-zones-shut", "floor-heating-unlimited"])
def test_the_remedy_of_a_lesson_works(check: str) -> None:
    found = lesson(check)
    after = Operated(found.remedy.drawing).standing(found.scene.remedied)
    assert after.is_known and not after.missing
    assert not [each for each in analyse(found.remedy.drawing).findings if each.grade is Grade.UNANSWERED]


def test_a_bypass_fitted_for_the_lesson_lets_the_run_on_through() -> None:
    found = lesson("no-way-round-when-zones-shut")
    (bypass,) = [
        part.id for part in found.remedy.drawing.components.values() if part.kind.name == "bypass_valve"
    ]
    after = Operated(found.remedy.drawing).standing(found.scene.remedied)
    assert bypass not in found.drawing.components
    assert after.through[bypass] >= found.drawing.components["source"].data["minimum_flow_lpm"] > 0
    assert [str(each) for each in found.scene.says if "flow 0 l/min, after the remedy" in str(each)]


def test_what_was_not_known_before_stays_so() -> None:
    sound = arrangements()["no-store"].drawing
    drawing = set_field(sound, sound.joined[Joint("pump", "out")], "length_m", None)
    assert any(each.grade is Grade.UNANSWERED for each in analyse(drawing).findings)
    assert completed(drawing, drawing).drawing is drawing
