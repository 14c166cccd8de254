"""The three users, each from opening a file to the document that leaves their hands.

`pytest -n 0 tests/editor/users --pictures FOLDER` keeps a picture of each step, to be looked at.
"""

from __future__ import annotations

import io
import json
from collections.abc import Callable
from contextlib import redirect_stdout
from pathlib import Path
from typing import Any

import pytest
from pypdfium2 import PdfDocument
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog, QPlainTextEdit

from circuitcheck.cli import run
from circuitcheck.finding import Grade
from circuitcheck.shipped import data_path

from .person import Person, name_file

pytestmark = pytest.mark.usefixtures("made_once")
SAMPLES = Path(data_path("samples"))
Arrives = Callable[[str], Person]


def pages(path: Path) -> str:
    """The text of a PDF, its white space made one."""
    with PdfDocument(path) as document:
        return " ".join(" ".join(page.get_textpage().get_text_bounded().split()) for page in document)


def checked(path: Path) -> dict[str, Any]:
    """What the command line says of a file."""
    told = io.StringIO()
    with redirect_stdout(told):
        run(["check", str(path), "--as", "json"])
    (file,) = json.loads(told.getvalue())["files"]
    assert isinstance(file, dict)
    return file


def test_the_designer(arrives: Arrives, tmp_path: Path) -> None:
    """Begins with a sound arrangement, changes it, sees the fault that brings, takes the cure, reads a size,
    fills in, saves, and hands over the document."""
    me = arrives("designer")
    window = me.window

    window.starting.show_if_empty()
    page = window.starting.page
    assert page is not None
    me.picture("start")
    QTest.keyClick(page.list, Qt.Key.Key_Return)
    assert not me.findings and "Nothing found" in me.reads(window.bar)
    me.picture("arrangement")

    me.fill("Title", "Mill Lane, new store")
    assert me.drawing.title == "Mill Lane, new store"

    # A valve at the vessel, for the convenience of the next repair.
    vessel = next(id for id, each in me.drawing.components.items() if each.label == "Heating vessel")
    pipe = me.drawing.pipes_of(vessel)[0]
    valve = me.cut_in("isolating", pipe)
    assert me.drawing.components[valve].kind.name == "isolating_valve"
    finding = me.findings[0]
    assert (finding.check, finding.grade) == ("vessel-can-be-cut-off", Grade.DANGER)
    assert finding.witness is not None and finding.witness.shut == (valve,)
    me.key("F8")
    me.picture("danger")

    # How it goes wrong, and back.
    me.press("Operate this", window.findings)
    me.picture("operating")
    me.command("Operate")

    # The cure, as one step.
    me.press("Do it", window.findings)
    assert not me.findings
    me.picture("cured")

    # A size, with its working.
    me.command("Figures")
    me.until(lambda: not window.live.is_busy)
    panel = window.panes.figures
    panel.open_named("heating-vessel")
    assert "EN 12828" in me.reads(panel)
    me.picture("figure")

    drawing = tmp_path / "mill-lane.wetcircuit"
    me.save_as(drawing)
    document = tmp_path / "mill-lane.pdf"
    me.hand_over("pdf", document)
    text = pages(document)
    for said in ("Mill Lane, new store", "Commissioning", "Parts", "not a certificate", "England"):
        assert said in text, said
    told = checked(drawing)
    assert told["findings"] == [] and told["title"] == "Mill Lane, new store"


def test_the_apprentice(arrives: Arrives, tmp_path: Path) -> None:
    """Takes the tour, opens a drawing with a fault, reads why, sees it at work, asks the supervisor by a note
    on the part, puts it right, and sends page and drawing back."""
    me = arrives("apprentice")
    window = me.window

    window.starting.show_if_empty()
    page = window.starting.page
    assert page is not None
    QTest.mouseClick(page.tour_button, Qt.MouseButton.LeftButton)
    tour = window.starting.tour
    assert tour is not None
    me.wait()
    while tour.step >= 0:
        me.picture(f"tour-{tour.step}")
        if tour.step == 3:
            me.until(lambda: bool(tour._cures))
        QTest.mouseClick(tour.card.next_button, Qt.MouseButton.LeftButton)
        me.wait()
    assert not me.findings

    given = tmp_path / "given.wetcircuit"
    given.write_bytes((SAMPLES / "terrace-bypass-backwards.wetcircuit").read_bytes())
    me.open(given)
    heaviest = me.findings[0]
    assert len(me.findings) > 1
    me.key("F8")
    assert window.findings.finding is heaviest
    read = me.reads(window.findings)
    assert "Why it matters" in read and "What puts it right" in read and "Source" in read
    me.picture("why")
    (stuck,) = (each for each in me.findings if each.check == "no-way-round-when-zones-shut")
    window.findings.choose(stuck)
    me.press("Operate this", window.findings)
    me.picture("at-work")
    me.command("Operate")

    author = window.reviewing.panel.author
    window.sheet.select(("bypass",))
    me.command("Pin a note")
    author.setFocus()
    QTest.keyClicks(author, "J. Learner")
    QTest.keyClick(author, Qt.Key.Key_Return)
    window.reviewing.panel.notes.box.setFocus()
    me.type("Turned it round: the arrow now points to the return. Right so?")
    me.press("Pin the note", window.reviewing.panel.notes)
    assert me.drawing.notes[0].on == ("bypass",)
    me.picture("question")

    window.findings.choose(me.findings[0])
    me.press("Do it", window.findings)
    assert not me.findings
    me.picture("right")
    me.command("Save")
    html = tmp_path / "given.html"
    me.hand_over("html", html)
    assert "Right so?" in html.read_text(encoding="utf-8")
    assert checked(given)["findings"] == []


def test_the_supervisor(arrives: Arrives, tmp_path: Path) -> None:
    """Opens what was handed in, compares it with the earlier file, asks, accepts one finding with a reason,
    makes the review record, and files the document; a later change shows."""
    me = arrives("supervisor")
    window = me.window
    handed_in = tmp_path / "handed-in.wetcircuit"
    handed_in.write_bytes((SAMPLES / "cottage-safety-valve-plugged.wetcircuit").read_bytes())
    earlier = tmp_path / "earlier.wetcircuit"
    earlier.write_bytes((SAMPLES / "cottage.wetcircuit").read_bytes())

    me.open(handed_in)
    (finding,) = me.findings
    assert finding.grade is Grade.DANGER
    me.picture("opened")
    me.key("F8")
    me.wait()
    assert "Why it matters" in me.reads(window.findings)
    me.picture("finding")

    me.in_dialog(lambda: me.command("Compare with a file"), lambda dialog: name_file(dialog, earlier))
    me.wait()
    me.picture("compared")
    assert window.sheet.review.shown["plug"] == "fitted"
    me.command("Stop comparing")

    reviewing = window.reviewing
    author = reviewing.panel.author
    author.setFocus()
    QTest.keyClicks(author, "R. Overseer")
    QTest.keyClick(author, Qt.Key.Key_Return)
    window.sheet.select(("plug",))
    me.command("Pin a note")
    reviewing.panel.notes.box.setFocus()
    me.type("Plugged for the pressure test? Take it out before filling.")
    me.press("Pin the note", reviewing.panel.notes)
    (note,) = me.drawing.notes
    assert (note.author, note.on) == ("R. Overseer", ("plug",))
    me.picture("note")

    def accept(dialog: QDialog) -> None:
        (reason,) = dialog.findChildren(QPlainTextEdit)
        reason.setFocus()
        QTest.keyClicks(reason, "For the pressure test only.")
        me.picture("accepting")
        me.press("Accept the finding", dialog)

    window.findings.choose(window.findings.findings[0])
    me.in_dialog(lambda: me.command("Accept the finding"), accept)
    me.wait()
    assert me.drawing.acceptances

    me.command("Review record")
    role = reviewing.panel.record.role
    role.setFocus()
    QTest.keyClicks(role, "supervisor")
    me.press("Make the review record", reviewing.panel.record)
    me.wait()
    me.until(lambda: "Holds" in me.reads(reviewing.panel.record))
    me.picture("record")
    me.command("Save")

    told = checked(handed_in)
    assert [each["reason"] for each in told["acceptances"]] == ["For the pressure test only."]
    assert [each["state"] for each in told["reviews"]] == ["holds"]

    document = tmp_path / "handed-in.pdf"
    me.hand_over("pdf", document)
    text = pages(document)
    for said in (
        "Larch Cottage",
        "For the pressure test only.",
        "R. Overseer",
        "not a certificate",
        "england",
    ):
        assert said in text, said

    # One pipe changes after it.
    pipe = next(iter(me.drawing.pipes))
    window.sheet.setFocus()
    window.sheet.select((pipe,))
    me.key("Delete")
    me.wait()
    me.until(lambda: "Broken" in me.reads(reviewing.panel.record))
    me.picture("record-broken")
