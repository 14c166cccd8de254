"""The findings panel, with real answers to real drawings."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QToolButton
from pytestqt.qtbot import QtBot

from circuitcheck.analysis import Analysis, analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.edits import remove, set_title
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import theme as themes
from circuitcheck.editor.panels.findings import FindingsPanel
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.made import made

VESSEL = "vessel-can-be-cut-off"


def texts(panel: FindingsPanel) -> list[str]:
    """All that is read in the panel's widgets."""
    found = [label.text() for label in panel.findChildren(QLabel) if label.isVisibleTo(panel)]
    return found + [button.text() for button in panel.findChildren(QToolButton) if button.isVisibleTo(panel)]


@pytest.fixture
def panel(qtbot: QtBot) -> FindingsPanel:
    made_ = FindingsPanel()
    qtbot.addWidget(made_)
    made_.resize(320, 700)
    made_.show()
    return made_


@pytest.fixture(scope="module")
def faulty() -> Analysis:
    return analyse(read(data_path("samples") / "terrace-valve-before-vessel.wetcircuit"))


@pytest.fixture(scope="module")
def sound() -> Analysis:
    return analyse(read(data_path("samples") / "cottage.wetcircuit"))


def finding_of(analysis: Analysis, check: str) -> Finding:
    return next(finding for finding in analysis.findings if finding.check == check)


def test_the_list_reads_out_grade_title_and_sentence(panel: FindingsPanel, faulty: Analysis) -> None:
    panel.show_analysis(faulty)
    at = panel.findings.index(finding_of(faulty, VESSEL))
    text = panel.model().index(at, 0).data(Qt.ItemDataRole.AccessibleTextRole)
    assert text.startswith("danger: Heat source can be cut off from its vessel. ")


def test_a_click_opens_the_finding_in_place(panel: FindingsPanel, faulty: Analysis) -> None:
    chosen: list[object] = []
    panel.chosen.connect(chosen.append)
    panel.show_analysis(faulty)
    one = finding_of(faulty, VESSEL)
    place = panel.visualRect(panel.model().index(panel.findings.index(one), 0)).center()
    QTest.mouseClick(panel.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert chosen == [one]
    shown = texts(panel)
    for heading in (
        "Proved by shutting",
        "Why it matters",
        "What puts it right",
        "Source",
        "danger",
        "by hand",
    ):
        assert heading in shown
    assert "12 checks found nothing" in shown or any("found nothing" in text for text in shown)


def test_the_card_is_as_high_as_its_texts(panel: FindingsPanel, faulty: Analysis) -> None:
    panel.show_analysis(faulty)
    panel.choose(finding_of(faulty, VESSEL))
    for width in (320, 260, 500):
        panel.resize(width, 700)
        QApplication.processEvents()
        card = panel.card
        assert card is not None
        layout = card.layout()
        assert layout is not None
        assert card.width() == panel.viewport().width()
        assert card.height() >= layout.totalHeightForWidth(card.width())
        for label in card.findChildren(QLabel):
            if label.wordWrap():
                assert label.height() >= label.heightForWidth(label.width())


def test_keys_open_step_and_leave(panel: FindingsPanel, faulty: Analysis) -> None:
    chosen: list[object] = []
    panel.chosen.connect(chosen.append)
    panel.show_analysis(faulty)
    panel.setFocus()
    panel.setCurrentIndex(panel.model().index(0, 0))
    QTest.keyClick(panel, Qt.Key.Key_Return)
    assert chosen == [faulty.findings[0]]
    QTest.keyClick(panel, Qt.Key.Key_Escape)
    assert chosen[-1] is None and panel.card is None


def test_stepping_goes_round(panel: FindingsPanel) -> None:
    drawing = made({"hs": "heat_source", "pump": "pump"}, "")
    analysis = analyse(drawing)
    assert len(analysis.findings) > 2
    panel.show_analysis(analysis)
    panel.step(1)
    assert panel.finding is analysis.findings[0]
    panel.step(1)
    assert panel.finding is analysis.findings[1]
    panel.step(-1)
    panel.step(-1)
    assert panel.finding is analysis.findings[-1]
    panel.step(1)
    assert panel.finding is analysis.findings[0]


def test_the_chosen_finding_stays_chosen_as_long_as_it_is_there(
    panel: FindingsPanel, faulty: Analysis
) -> None:
    chosen: list[object] = []
    panel.show_analysis(faulty)
    panel.choose(finding_of(faulty, VESSEL))
    panel.chosen.connect(chosen.append)
    again = analyse(set_title(faulty.drawing, "Another name"))
    panel.show_analysis(again)
    assert panel.finding is finding_of(again, VESSEL)
    assert chosen == [panel.finding]
    assert panel.card is not None
    healed = analyse(remove(faulty.drawing, list(faulty.drawing.components)))
    panel.show_analysis(healed)
    assert panel.finding is None and panel.card is None
    assert chosen[-1] is None


def test_nothing_takes_the_focus(panel: FindingsPanel, faulty: Analysis, qtbot: QtBot) -> None:
    other = QLineEdit()
    qtbot.addWidget(other)
    other.show()
    other.activateWindow()
    other.setFocus()
    qtbot.waitUntil(other.hasFocus)
    panel.show_analysis(faulty)
    panel.choose(finding_of(faulty, VESSEL))
    panel.show_analysis(analyse(set_title(faulty.drawing, "x")))
    QApplication.processEvents()
    assert QApplication.focusWidget() is other


def test_nothing_found_says_what_was_not_judged(panel: FindingsPanel, sound: Analysis) -> None:
    panel.show_analysis(sound)
    shown = texts(panel)
    assert f"Nothing found by {len(sound.judged)} checks" in shown
    assert "A drawing is not a certificate." in shown
    assert any(text.startswith("Not judged (") for text in shown)
    assert "Electrical supply, wiring and earthing" in shown


def test_an_open_list_stays_open_in_the_next_answer(panel: FindingsPanel, sound: Analysis) -> None:
    panel.show_analysis(sound)
    button = next(
        each for each in panel.findChildren(QToolButton) if each.text().startswith("Does not apply")
    )
    before = panel.verdict
    assert before is not None
    high = before.height()
    button.click()
    QApplication.processEvents()
    assert before.height() > high
    panel.show_analysis(analyse(set_title(sound.drawing, "x")))
    assert panel.verdict is not before and panel.verdict is not None
    assert "Does not apply" in panel.verdict.open_folds


def test_an_empty_drawing_is_not_approved(panel: FindingsPanel) -> None:
    panel.show_analysis(analyse(Drawing()))
    assert texts(panel) == ["Nothing drawn, nothing judged"]


def test_a_text_of_the_file_is_never_markup(panel: FindingsPanel) -> None:
    evil = "<img src='/etc/hostname'><b>bold</b>"
    drawing = made({"hs": "heat_source"}, "")
    finding = Finding("no-such-check", Grade.FAULT, Says("{x}", {"x": evil}), ("hs",))
    panel.show_analysis(Analysis(drawing, (finding,), ("no-such-check",), (), (), (), (), "england"))
    panel.choose(finding)
    (label,) = [each for each in panel.findChildren(QLabel) if each.text() == evil]
    assert label.textFormat() is Qt.TextFormat.PlainText


def test_a_missing_number_leads_to_its_field(panel: FindingsPanel) -> None:
    wanted: list[tuple[str, str]] = []
    panel.field_wanted.connect(lambda id, field: wanted.append((id, field)))
    drawing = made({"hs": "heat_source"}, "")
    finding = Finding(
        "discharge-too-long",
        Grade.UNANSWERED,
        Says("Missing."),
        ("hs",),
        missing=("hs.output_kw",),
        would_be=Grade.DANGER,
    )
    panel.show_analysis(Analysis(drawing, (finding,), (), (), ("discharge-too-long",), (), (), "england"))
    panel.choose(finding)
    (link,) = [each for each in panel.findChildren(QToolButton) if each.text() == "Heat source hs: output"]
    link.click()
    assert wanted == [("hs", "output_kw")]


def test_a_valve_of_the_proof_leads_to_its_part(panel: FindingsPanel, faulty: Analysis) -> None:
    wanted: list[str] = []
    panel.part_wanted.connect(wanted.append)
    panel.show_analysis(faulty)
    one = finding_of(faulty, VESSEL)
    panel.choose(one)
    link = next(each for each in panel.findChildren(QToolButton) if each.property("link"))
    link.click()
    assert one.witness is not None and wanted == [one.witness.parts[0]]


@pytest.mark.parametrize("theme", [themes.light(), themes.dark(), themes.high_contrast_dark()])
def test_the_chosen_finding_stays_open_in_another_theme(
    panel: FindingsPanel, faulty: Analysis, theme: themes.Theme
) -> None:
    panel.show_analysis(faulty)
    panel.choose(finding_of(faulty, VESSEL))
    panel.set_theme(theme)
    assert panel.card is not None
    assert not panel.grab().toImage().isNull()


def test_a_long_list_is_shown_quickly(panel: FindingsPanel) -> None:
    drawing = made({f"x{n}": "pump" for n in range(500)}, "")
    findings = tuple(Finding("open-end", Grade.FAULT, Says("Open."), (f"x{n}",)) for n in range(500))
    panel.show_analysis(Analysis(drawing, findings, ("open-end",), (), (), (), (), "england"))
    panel.choose(findings[-1])
    QApplication.processEvents()
    bar = panel.verticalScrollBar()
    assert bar.maximum() > 10_000
    assert panel.indexAt(QPoint(20, 20)).row() >= 0


def test_a_cure_is_offered_with_room_for_its_text_and_signals_when_wanted(
    panel: FindingsPanel, faulty: Analysis
) -> None:
    wanted: list[object] = []
    panel.cure_wanted.connect(wanted.append)
    panel.show_analysis(faulty)
    one = finding_of(faulty, VESSEL)
    panel.choose(one)
    before = panel.card.height() if panel.card else 0
    offered = cures(faulty, one)
    assert offered
    panel.show_cures(one, offered)
    QApplication.processEvents()
    assert panel.card is not None and panel.card.height() > before
    assert all(cure.message in texts(panel) for cure in offered)
    buttons = [each for each in panel.card.findChildren(QToolButton) if each.text() == "Do it"]
    QTest.mouseClick(buttons[0], Qt.MouseButton.LeftButton)
    assert wanted == [offered[0]]


def test_cures_of_a_finding_that_was_left_are_dropped(panel: FindingsPanel, faulty: Analysis) -> None:
    panel.show_analysis(faulty)
    one = finding_of(faulty, VESSEL)
    panel.choose(one)
    panel.choose(None)
    panel.show_cures(one, cures(faulty, one))
    assert "Do it" not in texts(panel)
