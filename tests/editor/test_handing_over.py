"""Hand over in the window: the menu, the dialog, files made beside the window, what is said when that fails."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, QSettings
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QApplication, QMenu, QMessageBox
from pytestqt.qtbot import QtBot

from circuitcheck.editor import handing_over
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.hand_over_dialog import KINDS, HandOverDialog, Wanted
from circuitcheck.editor.language import document_tongue, shown_code
from circuitcheck.editor.window import MainWindow
from circuitcheck.report.document.writing import Form
from circuitcheck.shipped import data_path
from tests.editor.languages.speaking import german

SAMPLE = data_path("samples") / "village-hall.wetcircuit"


@pytest.fixture
def window(qtbot: QtBot, tmp_path: Path) -> Iterator[MainWindow]:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    made = MainWindow(Document(), settings, Appearances(settings))
    made.show()
    qtbot.waitExposed(made)
    made.files.read(SAMPLE)
    yield made
    made.close()


def hand_over(
    window: MainWindow,
    qtbot: QtBot,
    monkeypatch: pytest.MonkeyPatch,
    form: str,
    to: Path,
    language: str = "en",
) -> None:
    monkeypatch.setattr(window.handing_over, "ask", lambda: Wanted(form, language=language))
    monkeypatch.setattr(window.handing_over, "ask_file", lambda wanted: to)
    window.handing_over.action.trigger()
    assert not window.handing_over.action.isEnabled()
    qtbot.waitUntil(lambda: not window.handing_over.is_busy, timeout=120_000)
    assert window.handing_over.action.isEnabled()


def test_it_stands_in_the_file_menu_with_a_key(window: MainWindow) -> None:
    (menu,) = (each for each in window.menuBar().findChildren(QMenu) if each.title() == "&File")
    texts = {each.text(): each.shortcut().toString() for each in menu.actions()}
    assert texts["&Hand over…"] == "Ctrl+E"
    assert texts["&Print the drawing…"] == "Ctrl+P"


@pytest.mark.parametrize(
    ("form", "start"), [("pdf", b"%PDF-"), ("html", b"<!DOCTYPE html>"), ("csv", b"\xef\xbb\xbf")]
)
def test_the_file_is_made_of_the_drawing_shown(
    window: MainWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path, form: str, start: bytes
) -> None:
    to = tmp_path / f"hall.{form}"
    hand_over(window, qtbot, monkeypatch, form, to)
    assert to.read_bytes().startswith(start)
    if form == "html":
        assert b"village-hall.wetcircuit" in to.read_bytes()


def test_a_document_in_another_language_than_the_windows(
    window: MainWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    to = tmp_path / "hall.html"
    hand_over(window, qtbot, monkeypatch, "html", to, "de")
    page = to.read_text(encoding="utf-8")
    assert '<html lang="de">' in page and "Inbetriebnahmeblatt" in page


def test_a_drawing_not_saved_yet_is_told_so_in_the_documents_language(
    window: MainWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(type(window.document), "path", None)
    for language, told in (("de", "noch nicht gespeichert"), ("en", "not saved yet")):
        to = tmp_path / f"{language}.html"
        hand_over(window, qtbot, monkeypatch, "html", to, language)
        assert told in to.read_text(encoding="utf-8")


def test_a_folder_that_is_gone_is_said(
    window: MainWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    said: list[str] = []
    monkeypatch.setattr(QMessageBox, "exec", lambda box: said.append(box.text()))
    hand_over(window, qtbot, monkeypatch, "csv", tmp_path / "gone" / "hall.csv")
    assert said == ["“hall.csv” was not saved: the folder does not exist."]


def test_a_failure_is_said(
    window: MainWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    def fail(*_: object) -> None:
        raise RuntimeError

    said: list[str] = []
    monkeypatch.setattr(QMessageBox, "exec", lambda box: said.append(box.text()))
    monkeypatch.setattr(handing_over, "_write", fail)
    hand_over(window, qtbot, monkeypatch, "csv", tmp_path / "hall.csv")
    assert said == [handing_over.FAILED]


def test_leaving_the_dialog_does_nothing(window: MainWindow, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(window.handing_over, "ask", lambda: None)
    window.handing_over.action.trigger()
    assert not window.handing_over.is_busy


def test_the_window_can_close_while_a_document_is_made(
    window: MainWindow, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(window.handing_over, "ask", lambda: Wanted("csv"))
    monkeypatch.setattr(window.handing_over, "ask_file", lambda wanted: tmp_path / "hall.csv")
    window.handing_over.action.trigger()
    window.close()
    assert (tmp_path / "hall.csv").exists()


def test_printing_paints_one_page(
    window: MainWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "page.pdf"))
    monkeypatch.setattr(window.handing_over, "ask_printer", lambda: printer)
    window.handing_over.print_action.trigger()
    qtbot.waitUntil(lambda: not window.handing_over.is_busy, timeout=120_000)
    from pypdf import PdfReader

    (page,) = PdfReader(tmp_path / "page.pdf").pages
    assert page.mediabox.width > page.mediabox.height
    assert (tmp_path / "page.pdf").stat().st_size > 10_000


class TestDialog:
    def test_it_offers_every_kind(self, qtbot: QtBot) -> None:
        dialog = HandOverDialog()
        qtbot.addWidget(dialog)
        assert {form for form, _ in KINDS} == set(Form)
        assert dialog.wanted == Wanted("pdf", "a4", "", "en")

    def test_the_language_of_the_window_is_proposed(self, qtbot: QtBot, qapp: QApplication) -> None:
        with german(qapp):
            assert shown_code() == "de"
            dialog = HandOverDialog()
            qtbot.addWidget(dialog)
            assert dialog.language.currentText() == "Deutsch"
            assert dialog.wanted.language == "de"
            # The place's decimal sign goes with the window's language, and with no other.
            QLocale.setDefault(QLocale("de_CH"))
            assert document_tongue("de").decimal == "."
        assert document_tongue("de").decimal == ","
        assert shown_code() == "en"

    def test_a_table_has_no_language_to_choose(self, qtbot: QtBot) -> None:
        dialog = HandOverDialog()
        qtbot.addWidget(dialog)
        for index in range(dialog.kind.count()):
            dialog.kind.setCurrentIndex(index)
            assert dialog.language.isEnabled() is (dialog.wanted.form != "csv")

    def test_only_a_pdf_has_pages(self, qtbot: QtBot) -> None:
        dialog = HandOverDialog()
        qtbot.addWidget(dialog)
        for index in range(dialog.kind.count()):
            dialog.kind.setCurrentIndex(index)
            is_pdf = dialog.wanted.form == "pdf"
            assert dialog.paper.isEnabled() is is_pdf and dialog.lies.isEnabled() is is_pdf
