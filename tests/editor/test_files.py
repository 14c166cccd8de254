"""Opening and saving: nothing unsaved goes without a word, nothing of others is overwritten."""

from __future__ import annotations

import errno
import os
import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QSettings, QUrl
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from circuitcheck.drawing.edits import set_title
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.document import Document
from circuitcheck.editor.dropping import dropped_files
from circuitcheck.editor.files import Answer, Files
from circuitcheck.storage.reading import read
from circuitcheck.storage.writing import write

Button = QMessageBox.StandardButton


class Desk:
    """A document with its files, and a user who answers every dialog as told."""

    def __init__(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        self.folder = folder
        self.document = Document()
        self.window = QWidget()
        self.settings = QSettings(str(folder / "settings.ini"), QSettings.Format.IniFormat)
        self.files = Files(self.document, self.window, self.settings)
        self.presses = Button.Cancel
        self.picks = ""
        self.asked: list[str] = []
        monkeypatch.setattr(QMessageBox, "exec", lambda box: self._press(box))
        monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (self.picks, ""))
        monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (self.picks, ""))

    def _press(self, box: QMessageBox) -> int:
        self.asked.append(f"{box.text()} {box.informativeText()}".strip())
        return self.presses.value

    def file(self, title: str) -> Path:
        path = self.folder / f"{title}.wetcircuit"
        write(set_title(Drawing(), title), path)
        return path

    def edit(self, title: str) -> None:
        self.document.do("Set title", set_title(self.document.drawing, title))

    @property
    def title(self) -> str:
        return self.document.drawing.title


@pytest.fixture
def desk(qapp: object, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Desk]:
    made = Desk(tmp_path, monkeypatch)
    yield made
    made.document.close()


def test_open_asks_for_a_file(desk: Desk) -> None:
    desk.picks = str(desk.file("hall"))
    desk.files.open()
    assert (desk.title, desk.asked) == ("hall", [])
    desk.picks = ""
    desk.files.open()
    assert desk.title == "hall"
    assert [path.stem for _, path in desk.files.recent()] == ["hall"]


@pytest.mark.parametrize("way", ["new", "open", "sample", "path"])
def test_unsaved_changes_are_asked_about_on_every_way_out(desk: Desk, way: str) -> None:
    path = desk.file("hall")
    desk.picks = str(path)
    ways: dict[str, Callable[[], None]] = {
        "new": desk.files.new,
        "open": desk.files.open,
        "sample": lambda: desk.files.open_sample(path),
        "path": lambda: desk.files.open_path(path),
    }
    desk.edit("mine")
    ways[way]()
    assert desk.title == "mine"
    assert desk.asked == ["Save the changes to mine? Without saving they are lost."]
    desk.presses = Button.Discard
    ways[way]()
    assert desk.title == ("" if way == "new" else "hall")
    assert len(desk.asked) == 2
    ways[way]()
    assert len(desk.asked) == 2


def test_saving_on_the_way_out(desk: Desk) -> None:
    desk.edit("mine")
    desk.presses = Button.Save
    desk.picks = str(desk.folder / "mine")
    desk.files.new()
    assert read(desk.folder / "mine.wetcircuit").title == "mine"
    assert desk.title == ""


def test_a_save_given_up_is_no_way_out(desk: Desk) -> None:
    desk.edit("mine")
    desk.presses = Button.Save
    desk.picks = ""
    desk.files.new()
    assert desk.title == "mine"


def test_a_save_that_fails_is_told_and_no_way_out(desk: Desk) -> None:
    desk.edit("mine")
    desk.presses = Button.Save
    desk.picks = str(desk.folder / "absent" / "mine.wetcircuit")
    desk.files.new()
    assert desk.title == "mine" and desk.document.is_unsaved
    assert "the folder does not exist" in desk.asked[-1]


def test_a_name_that_no_disk_takes_is_told_and_nothing_is_lost(desk: Desk) -> None:
    desk.edit("mine")
    desk.picks = str(desk.folder / ("n" * 300))
    assert not desk.files.save()
    assert desk.document.is_unsaved and desk.document.path is None
    (said,) = desk.asked
    assert "the name is too long" in said
    assert list(desk.folder.glob("*n*")) == [] and list(desk.folder.glob(".*")) == []


def test_a_stick_that_was_pulled_out_is_told_and_nothing_is_lost(desk: Desk) -> None:
    stick = desk.folder / "stick"
    stick.mkdir()
    path = stick / "hall.wetcircuit"
    write(set_title(Drawing(), "hall"), path)
    desk.files.read(path)
    desk.edit("mine")
    shutil.rmtree(stick)
    assert not desk.files.save()
    (said,) = desk.asked
    assert said.startswith("“hall.wetcircuit” was not saved: the folder does not exist.")
    assert desk.document.is_unsaved and desk.title == "mine" and not stick.exists()
    stick.mkdir()
    assert desk.files.save()
    assert read(path).title == "mine" and list(stick.iterdir()) == [path]


@pytest.mark.parametrize(
    ("number", "why"),
    [
        (errno.EACCES, "writing there is not allowed"),
        (errno.EROFS, "the disk is read-only"),
        (errno.ENOSPC, "the disk is full"),
    ],
)
def test_a_folder_that_takes_nothing_is_told_and_nothing_is_lost(
    desk: Desk, monkeypatch: pytest.MonkeyPatch, number: int, why: str
) -> None:
    path = desk.file("hall")
    desk.files.read(path)
    desk.edit("mine")
    there = sorted(desk.folder.iterdir())
    open_file = os.open

    def refusing(name: str, flags: int, *rest: int) -> int:
        if flags & os.O_CREAT:
            raise OSError(number, os.strerror(number))
        return open_file(name, flags, *rest)

    with monkeypatch.context() as patch:
        patch.setattr(os, "open", refusing)
        assert not desk.files.save()
    (said,) = desk.asked
    assert why in said
    assert desk.document.is_unsaved and desk.title == "mine"
    assert read(path).title == "hall" and sorted(desk.folder.iterdir()) == there


def test_the_ending_is_added_and_an_existing_file_asked_about(desk: Desk) -> None:
    path = desk.file("hall")
    desk.edit("mine")
    desk.picks = str(desk.folder / "hall")
    assert not desk.files.save_as()
    assert read(path).title == "hall"
    assert desk.asked == ["hall.wetcircuit exists already. Replace it?"]
    desk.presses = Button.Yes
    assert desk.files.save_as()
    assert read(path).title == "mine"


def test_a_file_changed_by_others_is_never_replaced_in_silence(
    desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = desk.file("hall")
    desk.files.read(path)
    desk.edit("mine")
    write(set_title(Drawing(), "theirs"), path)
    assert not desk.files.save()
    assert read(path).title == "theirs"
    assert "changed by somebody else" in desk.asked[-1]
    monkeypatch.setattr(desk.files, "ask_overwrite", lambda error: Answer.DISCARD)
    desk.picks = str(desk.folder / "both.wetcircuit")
    assert desk.files.save()
    assert read(path).title == "theirs" and read(desk.folder / "both.wetcircuit").title == "mine"
    desk.files.read(path)
    desk.edit("mine again")
    write(set_title(Drawing(), "theirs again"), path)
    monkeypatch.setattr(desk.files, "ask_overwrite", lambda error: Answer.SAVE)
    assert desk.files.save()
    assert read(path).title == "mine again"


def test_a_file_with_faults_is_told_with_all_of_them(desk: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
    path = desk.folder / "bad.wetcircuit"
    path.write_text('{"wetcircuit": 1, "components": [{"id": "a", "kind": "kettle"}, {"id": "b"}]}')
    details: list[str] = []
    monkeypatch.setattr(QMessageBox, "setDetailedText", lambda box, text: details.append(text))
    assert not desk.files.read(path)
    assert desk.asked[0].startswith("bad.wetcircuit cannot be read. 2 things are wrong with it.")
    assert "kettle" in details[0] and len(details[0].splitlines()) == 2


def test_a_file_that_is_gone_leaves_the_recent_ones(desk: Desk) -> None:
    path = desk.file("hall")
    desk.files.read(path)
    path.unlink()
    assert not desk.files.read(path)
    assert desk.asked == ["hall.wetcircuit cannot be opened. No such file or directory"]
    assert desk.files.recent() == []


def test_a_sample_is_saved_elsewhere(desk: Desk) -> None:
    samples = desk.files.samples()
    assert len(samples) >= 10
    name, path = samples[0]
    assert name == name.strip() and "-" not in name
    before = path.read_bytes()
    desk.files.open_sample(path)
    assert desk.document.path is None and desk.files.recent() == []
    desk.picks = str(desk.folder / "own.wetcircuit")
    assert desk.files.save()
    assert desk.document.path == desk.folder / "own.wetcircuit"
    assert path.read_bytes() == before


def test_the_name_proposed_is_the_title_as_a_file_can_be_called(desk: Desk) -> None:
    desk.edit("../Flat 3/b: <store>")
    assert desk.files._proposal().name == "flat-3-b-store.wetcircuit"
    desk.edit("///")
    assert desk.files._proposal().name == "drawing.wetcircuit"


def test_what_is_dropped(tmp_path: Path) -> None:
    data = QMimeData()
    assert dropped_files(data) == []
    data.setUrls([QUrl.fromLocalFile(str(tmp_path / "a.wetcircuit"))])
    assert dropped_files(data) == [tmp_path / "a.wetcircuit"]
    data.setUrls([QUrl.fromLocalFile(str(tmp_path / "a.txt"))])
    assert dropped_files(data) == []
    data.setUrls([QUrl("https://example.org/a.wetcircuit")])
    assert dropped_files(data) == []
    data.setUrls([QUrl.fromLocalFile(f"/{name}.wetcircuit") for name in "ab"])
    assert dropped_files(data) == [Path("/a.wetcircuit"), Path("/b.wetcircuit")]
    data.setUrls([*data.urls(), QUrl("https://example.org/c.wetcircuit")])
    assert dropped_files(data) == []
