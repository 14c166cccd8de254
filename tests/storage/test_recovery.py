"""What is kept is found by the next start, and only there; what is not wanted is gone."""

from __future__ import annotations

import json
import os
import time
from datetime import UTC, datetime
from pathlib import Path

import pytest
from filelock import Timeout

from circuitcheck.drawing.edits import set_title
from circuitcheck.drawing.value import Drawing
from circuitcheck.storage import recovery
from circuitcheck.storage.faults import DrawingError
from circuitcheck.storage.recovery import Left, Origin, Slot, discard, left_behind, take
from circuitcheck.storage.saver import SaveError


def titled(title: str) -> Drawing:
    return set_title(Drawing(), title)


def kept(folder: Path, title: str, origin: Origin = Origin()) -> Left:  # noqa: B008  # it is frozen
    """What a program that has ended left in a folder."""
    slot = Slot(folder)
    slot.keep(titled(title), origin)
    slot.leave()
    (left,) = (each for each in left_behind(folder) if each.file == slot.file)
    return left


def test_what_was_kept_is_offered_with_what_is_known_of_it(tmp_path: Path) -> None:
    origin = Origin(tmp_path / "Cottage,\n old.wetcircuit", "0" * 64)
    left = kept(tmp_path, "Larch “Cottage”\n<b>", origin)
    assert (left.title, left.origin) == ("Larch “Cottage”\n<b>", origin)
    assert abs(left.kept_at.timestamp() - time.time()) < 60
    slot, drawing = take(left)
    assert drawing == titled("Larch “Cottage”\n<b>")
    slot.close()
    assert left_behind(tmp_path) == []
    assert list(tmp_path.iterdir()) == []


def test_the_newest_comes_first(tmp_path: Path) -> None:
    first = kept(tmp_path, "first")
    time.sleep(0.01)
    second = kept(tmp_path, "second")
    assert left_behind(tmp_path) == [second, first]


def test_what_a_running_program_holds_is_not_offered_nor_taken(tmp_path: Path) -> None:
    slot = Slot(tmp_path)
    slot.keep(titled("open"), Origin())
    assert left_behind(tmp_path) == []
    left = Left(slot.file, "open", Origin(), datetime.now(UTC))
    for lose in (take, discard):
        with pytest.raises(Timeout):
            lose(left)
    assert slot.file.exists()
    slot.close()


def test_taken_by_one_it_cannot_be_taken_by_another(tmp_path: Path) -> None:
    left = kept(tmp_path, "mine")
    slot, _ = take(left)
    with pytest.raises(Timeout):
        take(left)
    slot.leave()
    assert left_behind(tmp_path) == [left]


def test_thrown_away_it_is_gone(tmp_path: Path) -> None:
    discard(kept(tmp_path, "unwanted"))
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    "content",
    [
        b"",
        b"{}\n{}",
        b"\xff\xfe\n",
        b"[" * 100_000,
        b'{"path": 3, "digest": null, "title": "", "kept_at": "2031-01-01T00:00:00+00:00"}\n',
        b'{"path": null, "digest": null, "title": "", "kept_at": "once"}\n',
        b"x" * 1_000_000,
    ],
)
def test_a_slot_that_tells_nothing_is_passed_over_and_stays(content: bytes, tmp_path: Path) -> None:
    file = tmp_path / f"strange{recovery.ENDING}"
    file.write_bytes(content)
    good = kept(tmp_path, "good")
    assert left_behind(tmp_path) == [good]
    assert file.read_bytes() == content


def test_a_drawing_that_cannot_be_read_stays_and_can_be_tried_again(tmp_path: Path) -> None:
    left = kept(tmp_path, "cut short")
    header, drawing = left.file.read_bytes().split(b"\n", 1)
    left.file.write_bytes(header + b"\n" + drawing[:-20])
    for _ in range(2):
        with pytest.raises(DrawingError):
            take(left)
    assert left_behind(tmp_path) == [left]


def test_half_of_a_character_is_kept_too(tmp_path: Path) -> None:
    """It cannot be read again as a drawing, but nothing of it is lost."""
    left = kept(tmp_path, "half \ud800")
    assert left.title == "half \ud800"


def test_what_a_kill_left_half_done_goes_after_a_day(tmp_path: Path) -> None:
    lock, half, young = tmp_path / "a.lock", tmp_path / ".b.saving", tmp_path / "c.lock"
    for file in (lock, half, young):
        file.touch()
    for file in (lock, half):
        os.utime(file, (time.time() - 90_000,) * 2)
    assert left_behind(tmp_path) == []
    assert list(tmp_path.iterdir()) == [young]


def test_no_folder_holds_nothing(tmp_path: Path) -> None:
    assert left_behind(tmp_path / "absent") == []


@pytest.mark.skipif(os.name != "posix", reason="permissions as POSIX has them")
def test_the_folder_is_the_users_own(tmp_path: Path) -> None:
    slot = Slot(tmp_path / "deep" / "recovery")
    slot.keep(titled("private"), Origin())
    assert (tmp_path / "deep" / "recovery").stat().st_mode & 0o077 == 0
    slot.close()


def test_keeping_says_why_not(tmp_path: Path) -> None:
    slot = Slot(tmp_path / "recovery")
    (tmp_path / "recovery").rename(tmp_path / "gone")
    with pytest.raises(SaveError) as caught:
        slot.keep(titled("lost"), Origin())
    assert caught.value.reason == "the folder does not exist"
    slot.leave()


def test_the_header_is_one_line_of_ascii(tmp_path: Path) -> None:
    left = kept(tmp_path, "Zürich\r\n\u2028\x00", Origin(Path("é.wetcircuit"), "a"))
    header = left.file.read_bytes().split(b"\n", 1)[0]
    assert json.loads(header.decode("ascii"))["title"] == "Zürich\r\n\u2028\x00"
