"""All that has a symbol: the parts, and of the controls those that are placed."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.edits import add_control, place
from circuitcheck.drawing.value import Drawing
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds
from circuitcheck.sheet.things import things


def test_a_control_without_a_place_is_none_of_them() -> None:
    drawing, pump = place(Drawing(), kinds()["pump"], Point(4, 4))
    drawing, placed = add_control(drawing, kinds()["room_thermostat"], acts_on=(pump,), at=Point(9, 9))
    drawing, nowhere = add_control(drawing, kinds()["room_thermostat"], acts_on=(pump,))
    known = things(drawing)

    assert list(known) == [pump, placed]
    assert len(known) == 2
    assert known[pump] is drawing.components[pump]
    assert known[placed] is drawing.controls[placed]
    assert placed in known
    assert nowhere not in known
    for id in (nowhere, "nothing"):
        with pytest.raises(KeyError):
            known[id]
