"""Python looks for garbage again after building, as it did before, whatever happens meanwhile."""

import gc

import pytest

from circuitcheck import garbage
from circuitcheck.garbage import building_to_stay

GROW_OLD = garbage.grow_old
"""The program's own: read before `tests/conftest.py` puts it out of action for all tests."""


def test_it_is_off_inside_and_on_again_after() -> None:
    assert gc.isenabled()
    with building_to_stay():
        assert not gc.isenabled()
        with building_to_stay():
            pass
        assert not gc.isenabled()
    assert gc.isenabled()
    with pytest.raises(ValueError, match="of the builder"), building_to_stay():
        raise ValueError("of the builder")
    assert gc.isenabled()


def test_who_has_it_off_keeps_it_off() -> None:
    gc.disable()
    try:
        with building_to_stay():
            pass
        assert not gc.isenabled()
    finally:
        gc.enable()


def test_what_was_built_is_old_and_nothing_stays_frozen(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(garbage, "grow_old", GROW_OLD)
    try:
        with building_to_stay():
            built = [[number] for number in range(1000)]
        assert gc.get_freeze_count() == 0
        assert any(each is built for each in gc.get_objects(generation=2))
    finally:
        gc.freeze()


def test_what_the_tests_keep_frozen_stays_so() -> None:
    gc.freeze()
    before = gc.get_freeze_count()
    with building_to_stay():
        built = [[number] for number in range(1000)]
    assert built
    # Some of what is frozen goes by itself meanwhile.
    assert gc.get_freeze_count() > before / 2
