"""All that has a symbol: the parts, and of the controls those that are placed."""

from __future__ import annotations

from itertools import product
from random import Random

import pytest

from circuitcheck.drawing.edits import add_control, change_control, move, place, remove
from circuitcheck.drawing.value import Drawing
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds
from circuitcheck.sheet.things import Things, changed, things
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read


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


@pytest.mark.parametrize("seed", range(20))
def test_what_changed_is_what_a_look_at_each_of_them_tells(seed: int) -> None:
    rng, drawing = Random(seed), read(data_path("samples") / "guest-house.wetcircuit")
    assert isinstance(things(drawing), Things)
    drawings = [drawing]
    for _ in range(12):
        drawing = rng.choice(drawings)
        ids = rng.sample([*drawing.components, *drawing.controls], 3)
        match rng.randrange(5):
            case 0:
                drawing = move(drawing, ids, 1, 0)
            case 1:
                drawing = remove(drawing, ids)
            case 2:
                drawing, _ = place(drawing, kinds()["pump"], Point(4, 4))
            case 3:
                drawing, _ = add_control(
                    drawing, kinds()["room_thermostat"], acts_on=list(drawing.components)[:1], at=Point(9, 9)
                )
            case 4:
                for control in sorted(drawing.controls)[:1]:
                    drawing = change_control(drawing, control, at=None)
        drawings.append(drawing)
    for before, after in product(drawings, repeat=2):
        old, new = things(before), things(after)
        others = {id for id in new if id not in old or old[id] is not new[id]}
        assert changed(old, new) == (others, {id for id in old if id not in new})
