"""A layer is told what of it is exposed: piece by piece, in px of the sheet, wherever the view stands."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QRect, QRectF
from PySide6.QtGui import QImage, QPainter, QRegion
from PySide6.QtWidgets import QApplication, QGraphicsScene, QGraphicsView
from pytestqt.qtbot import QtBot

from circuitcheck.editor.sheet.layer import MOST_PIECES, Layer, expose
from circuitcheck.editor.sheet.marks_item import MarksItem
from circuitcheck.editor.sheet.painting import Palette
from circuitcheck.editor.theme import light
from circuitcheck.picture.marks import Fill
from circuitcheck.picture.paths import rectangle


def test_the_pieces_follow_the_view_and_the_region(qtbot: QtBot) -> None:
    told: list[tuple[str, list[QRectF]]] = []

    def notes(name: str, painter: QPainter, pieces: list[QRectF]) -> None:
        told.append((name, list(pieces)))

    scene = QGraphicsScene(0, 0, 4_000, 4_000)
    for name in ("below", "above"):
        scene.addItem(Layer(partial(notes, name), 0))
    view = QGraphicsView(scene)
    qtbot.addWidget(view)
    view.resize(400, 300)
    view.show()
    QApplication.processEvents()

    def repainted(*boxes: QRect) -> list[QRectF]:
        told.clear()
        region = QRegion()
        for box in boxes:
            region += box
        view.viewport().repaint(region)
        assert [name for name, _ in told] == ["below", "above"]
        assert told[0][1] == told[1][1]
        return told[0][1]

    def on_sheet(box: QRect) -> QRectF:
        return view.viewportTransform().inverted()[0].mapRect(QRectF(box))

    def holds(pieces: list[QRectF], *boxes: QRect) -> bool:
        found = sorted((p.x(), p.y(), p.width(), p.height()) for p in pieces)
        meant = sorted((b.x(), b.y(), b.width(), b.height()) for b in map(on_sheet, boxes))
        return found == meant

    one, two, three = QRect(10, 10, 20, 20), QRect(200, 150, 30, 10), QRect(300, 40, 8, 8)
    assert holds(repainted(one, two), one, two)
    assert holds(repainted(one, three), one, three)
    view.horizontalScrollBar().setValue(view.horizontalScrollBar().value() + 40)
    QApplication.processEvents()
    assert holds(repainted(one, three), one, three)
    view.scale(2, 2)
    QApplication.processEvents()
    assert holds(repainted(one, three), one, three)


def test_of_many_pieces_all_between_them_is_painted_anew_at_once(qtbot: QtBot) -> None:
    told: list[QRectF] = []

    class Scene(QGraphicsScene):
        def update(self, rect: QRectF) -> None:  # type: ignore[override]  # the one form that is used
            told.append(QRectF(rect))

    few = [QRectF(30 * place, 0, 20, 20) for place in range(MOST_PIECES)]
    scene = Scene()
    expose(scene, few)
    assert told == few
    told.clear()
    expose(scene, [*few, QRectF(0, 500, 10, 10)])
    assert told == [QRectF(0, 0, 30 * (MOST_PIECES - 1) + 20, 510)]
    expose(None, few)


def test_of_marks_far_apart_each_is_painted_where_only_it_is_exposed(qapp: QApplication) -> None:
    boxes = [QRectF(0, 0, 20, 20), QRectF(900, 700, 20, 20), QRectF(400, 0, 20, 20)]
    marks = [Fill(rectangle(box.x(), box.y(), box.width(), box.height()), "danger") for box in boxes]
    scene, palette = QGraphicsScene(0, 0, 1_000, 1_000), Palette(light())
    item = MarksItem(marks, palette)
    scene.addItem(item)

    def is_seen(box: QRectF) -> bool:
        image = QImage(20, 20, QImage.Format.Format_RGB32)
        image.fill(palette.colour("paper"))
        painter = QPainter(image)
        scene.render(painter, QRectF(image.rect()), box)
        painter.end()
        return image.pixelColor(10, 10) == palette.colour("danger")

    assert [is_seen(box) for box in boxes] == [True, True, True]
    item.show_marks(marks[1:], palette)
    assert [is_seen(box) for box in boxes] == [False, True, True]
    assert item.box == boxes[1].united(boxes[2]).adjusted(-6, -6, 6, 6)
    item.show_marks((), palette)
    assert item.box.isNull()
