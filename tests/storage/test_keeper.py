"""The newest state is on the disk within a second; the asker never waits, and hears when it cannot be kept."""

from __future__ import annotations

import threading
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from circuitcheck.drawing.edits import set_title
from circuitcheck.drawing.value import Drawing
from circuitcheck.storage import keeper as module
from circuitcheck.storage.keeper import Keeper
from circuitcheck.storage.recovery import Origin, Slot, left_behind, take


@pytest.fixture
def told() -> list[str]:
    return []


@pytest.fixture
def keeper(tmp_path: Path, told: list[str]) -> Iterator[Keeper]:
    made = Keeper(tmp_path / "recovery", told.append, pause_s=0.01)
    yield made
    made.close()


def titled(title: str) -> Drawing:
    return set_title(Drawing(), title)


def found(folder: Path) -> list[str]:
    return [left.title for left in left_behind(folder / "recovery")]


def test_the_last_of_many_wins(keeper: Keeper, tmp_path: Path) -> None:
    for number in range(200):
        keeper.keep(titled(str(number)), Origin())
    assert keeper.flush(5)
    assert keeper.leave() is not None
    assert found(tmp_path) == ["199"]


def test_saved_work_is_not_kept_twice(keeper: Keeper, tmp_path: Path) -> None:
    keeper.keep(titled("saved"), Origin())
    keeper.forget()
    assert keeper.flush(5)
    assert keeper.leave() is None
    assert found(tmp_path) == []


def test_forgetting_first_makes_no_folder_and_no_thread(keeper: Keeper, tmp_path: Path) -> None:
    before = threading.active_count()
    keeper.forget()
    assert keeper.flush(1)
    assert threading.active_count() == before
    assert list(tmp_path.iterdir()) == []


def test_closed_it_leaves_nothing_and_no_thread(keeper: Keeper, tmp_path: Path) -> None:
    keeper.keep(titled("given up"), Origin())
    assert keeper.flush(5)
    keeper.close()
    assert [thread.name for thread in threading.enumerate() if thread.name == "recovery"] == []
    assert list((tmp_path / "recovery").iterdir()) == []
    keeper.keep(titled("too late"), Origin())
    assert list((tmp_path / "recovery").iterdir()) == []


def test_it_goes_on_in_the_slot_of_what_was_left(tmp_path: Path, told: list[str]) -> None:
    slot = Slot(tmp_path / "recovery")
    slot.keep(titled("left"), Origin())
    slot.leave()
    (left,) = left_behind(tmp_path / "recovery")
    keeper = Keeper(tmp_path / "recovery", told.append, take(left)[0], pause_s=0)
    keeper.keep(titled("gone on"), Origin())
    assert keeper.flush(5)
    assert keeper.file == left.file
    keeper.leave()
    assert found(tmp_path) == ["gone on"]


def test_a_disk_that_refuses_is_told_once_and_tried_again(
    tmp_path: Path, told: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(module, "RETRY_S", 0.01)
    # A file stands where the folder should be.
    (tmp_path / "recovery").write_text("")
    keeper = Keeper(tmp_path / "recovery", told.append, pause_s=0)
    keeper.keep(titled("kept at last"), Origin())
    assert not keeper.flush(1)
    time.sleep(0.1)
    assert len(told) == 1 and told[0]
    (tmp_path / "recovery").unlink()
    deadline = time.monotonic() + 5
    while len(told) < 2 and time.monotonic() < deadline:
        time.sleep(0.01)
    assert told[1] == ""
    keeper.leave()
    assert found(tmp_path) == ["kept at last"]


def test_asking_does_not_wait_for_the_disk(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    may_go_on = threading.Event()
    monkeypatch.setattr(Slot, "keep", lambda *_: may_go_on.wait(10))
    keeper = Keeper(tmp_path, lambda _: None, pause_s=0)
    keeper.keep(titled("first"), Origin())
    keeper.keep(titled("second"), Origin())
    assert not keeper.flush(0.05)
    may_go_on.set()
    assert keeper.flush(5)
    keeper.close()
