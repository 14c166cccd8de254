"""A piece of a drawing: taken out whole, put in under new ids, naming nothing that is not there."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.drawing.clipboard import in_words, is_bare, middle, piece, put_in
from circuitcheck.drawing.value import Drawing, Joint, Note
from circuitcheck.geometry import Point
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import parse, read
from circuitcheck.storage.writing import dump

SAMPLES = sorted(data_path("samples").glob("*.wetcircuit"))


@pytest.fixture(scope="module")
def terrace() -> Drawing:
    return read(data_path("samples") / "terrace-as-proposed.wetcircuit")


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_all_of_a_sample_comes_through_the_reader_and_is_itself(path: object) -> None:
    drawing = read(str(path))
    everything = (*drawing.components, *drawing.pipes, *drawing.controls)
    taken = parse(dump(piece(drawing, everything)), "the clipboard")
    assert (taken.components, taken.pipes, taken.controls) == (
        drawing.components,
        drawing.pipes,
        drawing.controls,
    )
    after, ids = put_in(drawing, taken, 100, 0)
    assert len(ids) == len(everything)
    assert len(after.components) == 2 * len(drawing.components) and len(after.pipes) == 2 * len(drawing.pipes)
    parse(dump(after), "after")


@given(st.data())
@settings(max_examples=60, deadline=None)
def test_any_piece_can_be_written_and_read(terrace: Drawing, data: st.DataObject) -> None:
    everything = [*terrace.components, *terrace.pipes, *terrace.controls]
    chosen = data.draw(st.sets(st.sampled_from(everything)))
    taken = piece(terrace, chosen)
    assert parse(dump(taken), "the clipboard") == taken
    after, ids = put_in(terrace, taken, 3, -2)
    parse(dump(after), "after")
    assert chosen & terrace.components.keys() == taken.components.keys()
    assert not ids & set(everything)
    for id, part in terrace.components.items():
        assert after.components[id] is part


def test_pipes_between_chosen_parts_come_along_and_others_are_cut_free(terrace: Drawing) -> None:
    taken = piece(terrace, {"pump", "t_bypass", "p5"})
    assert taken.pipes.keys() == {"p4", "p5"}
    assert taken.pipes["p5"].ends == (Joint("t_bypass", "b"), Point(30, 13))


def test_what_is_named_goes_by_the_new_name_or_not_at_all(terrace: Drawing) -> None:
    both = piece(terrace, {"store", "zv_store", "store_thermostat"})
    after, ids = put_in(terrace, both, 0, 40)
    (store,) = [
        after.components[id]
        for id in ids & after.components.keys()
        if "store" in after.components[id].kind.name
    ]
    (control,) = [after.controls[id] for id in ids & after.controls.keys()]
    assert store.data["energy_cut_out"] in ids and control.acts_on == (store.data["energy_cut_out"],)
    alone = piece(terrace, {"store", "store_thermostat"})
    assert alone.components["store"].data["energy_cut_out"] is None
    assert alone.controls["store_thermostat"].acts_on == ()


def test_ids_that_a_note_speaks_of_are_not_given_anew() -> None:
    gone = Drawing(notes=(Note("n1", ("pump1",), text="too small"),))
    pump = read(data_path("samples") / "terrace-as-proposed.wetcircuit")
    after, ids = put_in(gone, piece(pump, {"pump"}), 0, 0)
    assert ids == {"pump2"} and after.notes == gone.notes


def test_words_and_middle(terrace: Drawing) -> None:
    taken = piece(terrace, {"pump", "t_bypass", "programmer"})
    assert in_words(taken) == "Pump (pump)\nProgrammer (programmer)\n1 tee\n1 pipe"
    assert middle(taken) is not None
    assert middle(Drawing()) is None and is_bare(Drawing()) and not is_bare(taken)
