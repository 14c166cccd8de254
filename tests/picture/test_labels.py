"""Labels: how wide a text is, and where a label finds room."""

import pytest

from circuitcheck.finding import Grade
from circuitcheck.picture.grades import grade_mark, outline, pill, pill_size
from circuitcheck.picture.labels import Obstacles, inside, marks_of, overlap, placed, size_of
from circuitcheck.picture.lettering import FACES, fitted, width, wrapped
from circuitcheck.picture.marks import TextMark, moved, recoloured
from circuitcheck.picture.title_block import title_block

AROUND = (0.0, 0.0, 32.0, 32.0)


def test_a_text_is_as_wide_as_its_letters() -> None:
    assert width("AB", 10) == pytest.approx(width("A", 10) + width("B", 10))
    assert width("A", 20) == pytest.approx(2 * width("A", 10))
    assert width("", 10) == 0


@pytest.mark.parametrize("weight", FACES)
def test_every_weight_that_ships_can_be_measured(weight: int) -> None:
    assert 0.3 < width("n", 1, weight) < 0.8


def test_the_letters_of_units_are_in_the_font() -> None:
    missing = width("\U0001f525", 10)
    assert all(width(letter, 10) != missing for letter in "°·²³…")


def test_a_text_that_fits_is_left_alone_and_a_longer_one_is_cut() -> None:
    assert fitted("Pump", 13, 600, 100) == "Pump"
    cut = fitted("A very long name of a very small part", 13, 600, 100)
    assert cut.endswith("…")
    assert width(cut, 13, 600) <= 100


def test_wrapping_keeps_words_whole() -> None:
    lines = wrapped("Water heated swells by a fortieth", 13, 400, 90)
    assert " ".join(lines) == "Water heated swells by a fortieth"
    assert all(width(line, 13, 400) <= 90 for line in lines)


def middle(box: tuple[float, float, float, float]) -> tuple[float, float]:
    return (box[0] + box[2]) / 2, (box[1] + box[3]) / 2


def test_slots_are_tried_below_above_right_left() -> None:
    obstacles = Obstacles()
    found = []
    for blocked in range(4):
        label = placed(("Pump", "6 m"), AROUND, obstacles)
        x, y = middle(label.box)
        found.append((x > 32, x < 0, y > 32, y < 0))
        obstacles.put(f"block {blocked}", (label.box,))
    below, above = (False, False, True, False), (False, False, False, True)
    assert found == [below, above, (True, False, False, False), (False, True, False, False)]


def test_a_long_label_beside_another_symbol_moves_along_its_own_before_it_goes_off() -> None:
    obstacles = Obstacles()
    obstacles.put("other", ((40.0, -100.0, 100.0, 100.0),))
    obstacles.put("pipe", ((-100.0, 10.0, 0.0, 22.0),))
    label = placed(("Service valve 2",), AROUND, obstacles)
    assert label.anchor == "end" and label.box[2] == AROUND[2]
    assert label.box[1] - AROUND[3] == 8


def test_a_label_keeps_clear_of_its_symbol() -> None:
    label = placed(("Pump",), AROUND, Obstacles())
    assert label.box[1] - AROUND[3] >= 8


def test_where_nothing_is_free_the_least_covered_slot_is_taken() -> None:
    obstacles = Obstacles()
    obstacles.put("all", ((-400.0, -400.0, 400.0, 400.0),))
    obstacles.put("more", ((-400.0, -400.0, 400.0, 30.0),))
    label = placed(("Pump",), AROUND, obstacles)
    assert label.box[1] > 30


def test_an_owner_is_left_out_of_account() -> None:
    obstacles = Obstacles()
    obstacles.put("own", ((-400.0, 32.0, 400.0, 400.0),))
    assert placed(("Pump",), AROUND, obstacles, frozenset({"own"})).box[1] > 32


def test_obstacles_change_one_owner_alone() -> None:
    obstacles = Obstacles()
    obstacles.put("a", ((0.0, 0.0, 500.0, 10.0),))
    obstacles.put("b", ((0.0, 0.0, 10.0, 10.0),))
    assert obstacles.met((400.0, 0.0, 410.0, 5.0)) == {"a"}
    obstacles.put("a", ())
    assert obstacles.met((0.0, 0.0, 600.0, 10.0)) == {"b"}
    assert obstacles.overlap((5.0, 5.0, 15.0, 15.0)) == 25


def test_edges_that_touch_share_nothing() -> None:
    assert overlap((0, 0, 10, 10), (10, 0, 20, 10)) == 0


def test_the_name_is_first_and_heavier() -> None:
    name, figure = marks_of(placed(("Pump", "6 m"), AROUND, Obstacles()))
    assert isinstance(name, TextMark) and isinstance(figure, TextMark)
    assert (name.text, name.size, name.weight, name.role) == ("Pump", 13, 600, "ink")
    assert (figure.text, figure.size, figure.weight, figure.role) == ("6 m", 12, 400, "ink_2")
    assert figure.y - name.y == 15
    assert name.halo == 4


def test_a_label_inside_has_no_paper_around_it() -> None:
    label = inside(("Store", "180 l"), 0, -50, 80)
    assert middle(label.box)[0] == 0
    assert all(isinstance(mark, TextMark) and mark.halo == 0 for mark in marks_of(label))


def test_a_label_is_as_high_as_its_lines() -> None:
    assert size_of(("a", "b"))[1] - size_of(("a",))[1] == 15


def test_grades_differ_by_silhouette() -> None:
    shapes = {tuple(letter for letter, _ in outline(grade, 0, 0)) for grade in Grade}
    assert len(shapes) == len(Grade)


@pytest.mark.parametrize("grade", Grade)
def test_a_grade_mark_is_ring_shape_and_glyph(grade: Grade) -> None:
    marks = grade_mark(grade, 10, 20)
    assert marks[0].role == "paper"
    assert marks[1].role in {"danger", "fault", "advice", "body"}
    assert len(marks) >= 3


def test_a_pill_holds_its_word() -> None:
    wide, _ = pill_size("shut")
    assert wide >= width("shut", 12, 600) + 12
    assert pill("shut", 0, 0, "danger", "danger_text")[1].role == "danger_text"


def test_marks_move_and_change_colour_as_values() -> None:
    marks = pill("shut", 0, 0, "danger", "danger_text")
    shifted = moved(marks, 5, 7)
    text = shifted[1]
    assert isinstance(text, TextMark) and (text.x, text.y) == (5, 11)
    assert recoloured(marks, {"danger": "quiet"})[0].role == "quiet"
    assert marks[0].role == "danger"


def test_the_title_block_names_every_service() -> None:
    said = {mark.text for mark in title_block("Cottage", "") if isinstance(mark, TextMark)}
    assert {"Cottage", "F", "R", "C", "H", "D", "V", "flow", "return", "vent and feed"} <= said


def test_a_text_that_looks_like_markup_is_shown_as_it_is() -> None:
    text = "<b>Pump</b> <img src=x>"
    label = placed((text,), AROUND, Obstacles())
    assert label.lines == (text,)
