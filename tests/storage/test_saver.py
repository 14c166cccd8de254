"""Whatever fails while a file is saved, the old content or the new is there, whole, and nothing else."""

from __future__ import annotations

import errno
import os
import random
import stat
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from circuitcheck.storage import saver
from circuitcheck.storage.saver import SaveError, save_bytes

OLD, NEW = b"the old content\n", b"the new content, which is longer\n" * 500
# Every system call of a save that replaces a file, in the order in which they come.
CALLS = ["lstat", "access", "open", "write", "fchmod", "fsync", "close", "replace"]
on_posix = pytest.mark.skipif(os.name != "posix", reason="permissions and links as POSIX has them")


class FailingSystem:
    """The `os` module, but for one function that answers as it is told, from its nth call on."""

    def __init__(self, name: str, answer: Callable[..., Any], *, first: int = 1, times: int = 10_000) -> None:
        self._name, self._answer = name, answer
        self._called = 0
        self._first, self._last = first, first + times - 1

    def __getattr__(self, name: str) -> Any:
        real = getattr(os, name)
        if name != self._name:
            return real

        def call(*arguments: Any) -> Any:
            self._called += 1
            if self._first <= self._called <= self._last:
                return self._answer(*arguments)
            return real(*arguments)

        return call

    @property
    def was_called(self) -> bool:
        return self._called >= self._first


def failing_with(number: int) -> Callable[..., Any]:
    def fail(*_: Any) -> None:
        raise OSError(number, os.strerror(number))

    return fail


@pytest.fixture
def target(tmp_path: Path) -> Iterator[Path]:
    path = tmp_path / "cottage.wetcircuit"
    path.write_bytes(OLD)
    yield path
    assert [file.name for file in tmp_path.iterdir() if file.suffix == ".saving"] == []


def test_a_file_is_replaced(target: Path) -> None:
    save_bytes(target, NEW)
    assert target.read_bytes() == NEW


def test_a_new_file_is_made_with_the_systems_permissions(tmp_path: Path) -> None:
    saved, plain = tmp_path / "saved", tmp_path / "plain"
    save_bytes(saved, NEW)
    plain.write_bytes(NEW)
    assert saved.read_bytes() == NEW
    assert saved.stat().st_mode == plain.stat().st_mode


def test_an_empty_file_is_saved(target: Path) -> None:
    save_bytes(target, b"")
    assert target.read_bytes() == b""


@pytest.mark.parametrize("number", [errno.ENOSPC, errno.EIO, errno.EROFS, errno.EDQUOT, errno.EACCES])
@pytest.mark.parametrize("name", CALLS)
def test_a_call_that_fails_leaves_the_old_file(
    name: str, number: int, target: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def close(file: int) -> None:
        os.close(file)
        failing_with(number)()

    # What is closed is closed, even where closing reports an error.
    system = FailingSystem(name, close if name == "close" else failing_with(number))
    if name == "access":
        system = FailingSystem(name, lambda *_: False)
    monkeypatch.setattr(saver, "os", system)
    with pytest.raises(SaveError) as caught:
        save_bytes(target, NEW)
    assert system.was_called
    assert target.read_bytes() == OLD
    assert str(caught.value).startswith("“cottage.wetcircuit” was not saved: ")
    assert str(caught.value).count("\n") == 0
    if name != "access":
        assert caught.value.errno == number
    assert caught.value.filename == str(target)


@pytest.mark.parametrize(
    ("number", "reason"),
    [
        (errno.ENOSPC, "the disk is full"),
        (errno.EROFS, "the disk is read-only"),
        (errno.EIO, "the disk reports an error"),
        (errno.EACCES, "writing there is not allowed"),
        (errno.ENXIO, os.strerror(errno.ENXIO)),
    ],
)
def test_the_sentence_says_why(
    number: int, reason: str, target: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(saver, "os", FailingSystem("write", failing_with(number)))
    with pytest.raises(SaveError) as caught:
        save_bytes(target, NEW)
    assert str(caught.value) == f"“cottage.wetcircuit” was not saved: {reason}."


@pytest.mark.parametrize("first", [1, 2, 3])
def test_a_disk_that_fills_up_on_the_way_leaves_the_old_file(
    first: int, target: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    class Filling(FailingSystem):
        def __getattr__(self, name: str) -> Any:
            real = super().__getattr__(name)
            return (lambda file, rest: real(file, rest[:100])) if name == "write" else real

    monkeypatch.setattr(saver, "os", Filling("write", failing_with(errno.ENOSPC), first=first))
    with pytest.raises(SaveError):
        save_bytes(target, NEW)
    assert target.read_bytes() == OLD


def test_a_write_that_takes_nothing_is_a_full_disk(target: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(saver, "os", FailingSystem("write", lambda *_: 0))
    with pytest.raises(SaveError, match="the disk is full"):
        save_bytes(target, NEW)
    assert target.read_bytes() == OLD


@pytest.mark.parametrize("step", [1, 7, 100])
def test_short_writes_are_gone_on_with(step: int, target: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    system = FailingSystem("write", lambda file, rest: os.write(file, rest[:step]))
    monkeypatch.setattr(saver, "os", system)
    save_bytes(target, NEW)
    assert system.was_called
    assert target.read_bytes() == NEW


@pytest.mark.parametrize("name", ["write", "fsync", "replace"])
def test_an_interrupted_call_is_made_again(name: str, target: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    system = FailingSystem(name, failing_with(errno.EINTR), times=3)
    monkeypatch.setattr(saver, "os", system)
    save_bytes(target, NEW)
    assert system.was_called
    assert target.read_bytes() == NEW


def test_an_interrupt_of_the_user_leaves_no_stray_file(target: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def interrupt(*_: Any) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(saver, "os", FailingSystem("fsync", interrupt))
    with pytest.raises(KeyboardInterrupt):
        save_bytes(target, NEW)
    assert target.read_bytes() == OLD
    assert len(list(target.parent.iterdir())) == 1


@on_posix
@pytest.mark.parametrize("name", ["open", "fsync", "close"])
def test_a_folder_that_cannot_be_flushed_is_told_of_and_the_new_file_is_there(
    name: str, target: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def close(file: int) -> None:
        os.close(file)
        failing_with(errno.EIO)()

    answer = close if name == "close" else failing_with(errno.EIO)
    monkeypatch.setattr(saver, "os", FailingSystem(name, answer, first=2))
    with pytest.raises(SaveError, match="is saved, but perhaps not for good: "):
        save_bytes(target, NEW)
    assert target.read_bytes() == NEW


@on_posix
@pytest.mark.parametrize(("name", "number"), [("fsync", errno.EINVAL), ("open", errno.EACCES)])
def test_a_folder_that_offers_no_flush_is_no_failure(
    name: str, number: int, target: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(saver, "os", FailingSystem(name, failing_with(number), first=2))
    save_bytes(target, NEW)
    assert target.read_bytes() == NEW


def test_a_disk_without_permissions_is_no_failure(target: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(saver, "os", FailingSystem("fchmod", failing_with(errno.EPERM)))
    save_bytes(target, NEW)
    assert target.read_bytes() == NEW


def test_on_windows_a_file_that_is_held_open_for_a_moment_is_waited_for(
    target: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    system = FailingSystem("replace", failing_with(errno.EACCES), times=3)
    monkeypatch.setattr(system, "name", "nt", raising=False)
    monkeypatch.setattr(saver, "os", system)
    monkeypatch.setattr(saver, "_PAUSE_S", 0.0)
    save_bytes(target, NEW)
    assert target.read_bytes() == NEW


def test_on_windows_a_file_that_stays_open_is_refused(target: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    system = FailingSystem("replace", failing_with(errno.EACCES))
    monkeypatch.setattr(system, "name", "nt", raising=False)
    monkeypatch.setattr(saver, "os", system)
    monkeypatch.setattr(saver, "_PAUSE_S", 0.0)
    with pytest.raises(SaveError, match="not allowed"):
        save_bytes(target, NEW)
    assert target.read_bytes() == OLD


def test_a_read_only_file_is_refused(target: Path) -> None:
    target.chmod(stat.S_IREAD)
    try:
        with pytest.raises(SaveError, match="was not saved: the file is read-only"):
            save_bytes(target, NEW)
        assert target.read_bytes() == OLD
    finally:
        target.chmod(stat.S_IREAD | stat.S_IWRITE)


def test_a_folder_is_refused(tmp_path: Path) -> None:
    with pytest.raises(SaveError, match="it is no plain file"):
        save_bytes(tmp_path, NEW)
    assert list(tmp_path.iterdir()) == []


def test_a_folder_that_is_not_there_is_said_so(tmp_path: Path) -> None:
    with pytest.raises(SaveError, match="the folder does not exist"):
        save_bytes(tmp_path / "gone" / "cottage.wetcircuit", NEW)
    assert list(tmp_path.iterdir()) == []


def test_the_longest_name_that_a_disk_takes_is_saved(tmp_path: Path) -> None:
    path = tmp_path / ("x" * 244 + ".wetcircuit")
    save_bytes(path, NEW)
    assert path.read_bytes() == NEW
    with pytest.raises(SaveError, match="the name is too long"):
        save_bytes(tmp_path / ("x" * 300), NEW)


@on_posix
@pytest.mark.parametrize("mode", [0o600, 0o640, 0o644, 0o666, 0o755, 0o200])
def test_permissions_are_kept(mode: int, target: Path) -> None:
    target.chmod(mode)
    save_bytes(target, NEW)
    assert stat.S_IMODE(target.stat().st_mode) == mode
    target.chmod(0o600)
    assert target.read_bytes() == NEW


@on_posix
def test_links_are_followed_and_stay_links(target: Path, tmp_path: Path) -> None:
    folder = tmp_path / "elsewhere"
    folder.mkdir()
    first, second = folder / "first.wetcircuit", folder / "second.wetcircuit"
    first.symlink_to(target)
    second.symlink_to("first.wetcircuit")
    save_bytes(second, NEW)
    assert target.read_bytes() == NEW
    assert first.is_symlink()
    assert second.is_symlink()
    assert not target.is_symlink()
    assert sorted(file.name for file in folder.iterdir()) == ["first.wetcircuit", "second.wetcircuit"]


@on_posix
def test_a_link_to_nothing_makes_the_file_it_names(tmp_path: Path) -> None:
    link = tmp_path / "link"
    link.symlink_to(tmp_path / "new")
    save_bytes(link, NEW)
    assert link.is_symlink()
    assert (tmp_path / "new").read_bytes() == NEW


@on_posix
def test_links_in_a_circle_are_refused(tmp_path: Path) -> None:
    (tmp_path / "one").symlink_to("two")
    (tmp_path / "two").symlink_to("one")
    with pytest.raises(SaveError, match="leads in a circle"):
        save_bytes(tmp_path / "one", NEW)
    assert (tmp_path / "one").is_symlink()


SAVE_FOR_EVER = """
import sys
from pathlib import Path
from circuitcheck.storage.saver import save_bytes

target, contents = Path(sys.argv[1]), [letter * 400_000 for letter in (b"a", b"b")]
save_bytes(target, contents[0])
print("ready", flush=True)
while True:
    for content in contents:
        save_bytes(target, content)
"""


def test_a_process_killed_at_any_moment_leaves_a_whole_file(tmp_path: Path) -> None:
    moments = random.Random(11)
    target = tmp_path / "cottage.wetcircuit"
    strays = 0
    for _ in range(30):
        with subprocess.Popen(
            [sys.executable, "-c", SAVE_FOR_EVER, str(target)],
            cwd=Path(saver.__file__).parents[2],
            stdout=subprocess.PIPE,
        ) as saving:
            assert saving.stdout is not None
            assert saving.stdout.readline().strip() == b"ready"
            time.sleep(moments.uniform(0, 0.02))
            saving.kill()
        assert target.read_bytes() in (b"a" * 400_000, b"b" * 400_000)
        left = [file for file in tmp_path.iterdir() if file != target]
        # All that a kill can leave is one hidden file, which no walk through a folder takes for a drawing.
        assert len(left) <= 1
        assert all(file.name.startswith(".") and file.suffix == ".saving" for file in left)
        strays += len(left)
        for file in left:
            file.unlink()
    # Else no process was killed while it was saving, and nothing was tried.
    assert strays
