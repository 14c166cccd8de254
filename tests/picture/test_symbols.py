"""Symbols: every file reads as marks, states change them, letters stay upright."""

from pathlib import Path
from xml.etree import ElementTree

import pytest

from circuitcheck.parts.catalogue import kinds
from circuitcheck.picture import symbols
from circuitcheck.picture.marks import Fill, Mark, Stroke, TextMark, extent
from circuitcheck.picture.symbols import states_of, symbol, symbol_extent, view_box

TURNS = (0, 90, 180, 270)


def has_ink_fill(marks: tuple[Mark, ...]) -> bool:
    return any(isinstance(mark, Fill) and mark.role == "ink" for mark in marks)


@pytest.mark.parametrize("kind", sorted(kinds()))
def test_every_kind_has_marks_of_known_roles(kind: str) -> None:
    for states in (frozenset[str](), states_of(kind), frozenset({"small"})):
        marks = symbol(kind, states)
        assert marks
        assert {mark.role for mark in marks} <= set(symbols.ROLES.values())


@pytest.mark.parametrize("kind", sorted(kinds()))
def test_the_view_box_holds_the_symbol(kind: str) -> None:
    left, top, wide, high = view_box(kind)
    box = symbol_extent(kind)
    assert left <= box[0] and top <= box[1]
    assert box[2] <= left + wide and box[3] <= top + high


def test_a_state_changes_the_symbol_and_an_unknown_one_does_not() -> None:
    assert not has_ink_fill(symbol("isolating_valve"))
    assert has_ink_fill(symbol("isolating_valve", frozenset({"shut"})))
    assert symbol("isolating_valve", frozenset({"running"})) == symbol("isolating_valve")


@pytest.mark.parametrize("turn", TURNS)
def test_a_letter_stays_upright_and_goes_along_with_its_circle(turn: int) -> None:
    for mirrored in (False, True):
        marks = symbol("zone_valve", turn=turn, mirrored=mirrored)
        (letter,) = [mark for mark in marks if isinstance(mark, TextMark)]
        circle = next(
            mark for mark in marks if isinstance(mark, Stroke) and sum(s[0] == "C" for s in mark.path) == 4
        )
        left, top, right, low = extent([circle])
        assert letter.x == pytest.approx((left + right) / 2, abs=0.6)
        assert letter.y - 3.7 == pytest.approx((top + low) / 2, abs=0.6)


def test_turning_goes_clockwise_after_mirroring() -> None:
    # The safety valve's outlet is to the right; turned by 90 degrees it faces down.
    right = symbol_extent("safety_valve")[2]
    assert symbol_extent("safety_valve", turn=90)[3] == pytest.approx(right)
    assert symbol_extent("safety_valve", turn=90, mirrored=True)[1] == pytest.approx(-right)


def root(inside: str) -> ElementTree.Element:
    return ElementTree.fromstring(f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1">{inside}</svg>')


@pytest.mark.parametrize(
    "inside",
    [
        "<image/>",
        "<script/>",
        '<path d="M0,0" fill="#123456"/>',
        '<g transform="scale(2)"/>',
        '<path d="m0,0"/>',
    ],
)
def test_what_a_symbol_may_not_hold_is_refused(inside: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(symbols, "_root", lambda kind: root(inside))
    with pytest.raises(ValueError, match="may not hold"):
        symbol.__wrapped__("made_up")


@pytest.mark.parametrize(
    ("inside", "steps"),
    [
        ('<line x1="1" y1="2" x2="3" y2="4" stroke="#1D2126" fill="none"/>', "ML"),
        ('<polyline points="0,0 1,0 1,1" stroke="#1D2126" fill="none"/>', "MLL"),
        ('<polygon points="0,0 1,0 1,1" fill="#FFFFFF"/>', "MLLZ"),
        ('<rect x="0" y="0" width="4" height="2" fill="#FFFFFF"/>', "MLLLZ"),
        ('<ellipse cx="0" cy="0" rx="4" ry="2" fill="#FFFFFF"/>', "MCCCCZ"),
    ],
)
def test_every_shape_reads_as_a_path(inside: str, steps: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(symbols, "_root", lambda kind: root(inside))
    (mark,) = symbol.__wrapped__("made_up")
    assert not isinstance(mark, TextMark)
    assert "".join(letter for letter, _ in mark.path) == steps


def test_a_kind_without_a_file_says_so() -> None:
    with pytest.raises(FileNotFoundError):
        symbol("steam_engine")


def test_the_folder_holds_one_file_a_kind() -> None:
    from circuitcheck.shipped import data_path

    assert {Path(file).stem for file in data_path("icons").glob("*.svg")} == set(kinds())
