"""Copying to the clipboard and reading from it: a piece of a drawing, its picture, its words."""

from __future__ import annotations

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMimeData, QRectF, QSize
from PySide6.QtGui import QGuiApplication, QImage, QPainter
from PySide6.QtSvg import QSvgGenerator

from circuitcheck.drawing.clipboard import in_words, is_bare
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet.picture import Picture
from circuitcheck.editor.translating import tr, tr_n
from circuitcheck.storage.faults import DrawingError
from circuitcheck.storage.limits import MOST_BYTES, MOST_PARTS
from circuitcheck.storage.reading import parse
from circuitcheck.storage.writing import dump

MIME = "application/vnd.circuitcheck.drawing+json"
"""A drawing as its file holds it: the version of the format stands in it, and one reader reads both."""

SVG_MIME, PNG_MIME = "image/svg+xml", "image/png"
NAME = "The clipboard"
SHARP = 2.0
"""Pixels of the picture to a px of the sheet at 100 %."""
MOST_PX = 4096
MOST_PICTURED = 1500
"""A larger piece goes without pictures: nobody pastes it, and painting it would be waited for."""

WITH_CLIPBOARD = frozenset({"windows", "cocoa", "xcb", "wayland"})
"""Platforms of Qt with a clipboard of the system."""


class PasteError(Exception):
    """What is on the clipboard cannot be put in; the message says why in a sentence or two."""


def mime_of(fragment: Drawing, whole: Drawing) -> QMimeData:
    """A piece of a whole drawing: for our own windows, as pictures for programs that take those, as words."""
    data = QMimeData()
    data.setData(MIME, QByteArray(dump(fragment)))
    data.setText(in_words(fragment))
    if len(fragment.components) + len(fragment.pipes) <= MOST_PICTURED:
        picture = Picture(fragment, whole)
        if not picture.is_empty:
            image = _image(picture)
            data.setImageData(image)
            data.setData(PNG_MIME, _png(image))
            data.setData(SVG_MIME, _svg(picture))
        picture.close()
    return data


def put(data: QMimeData) -> None:
    """Put it on the clipboard."""
    QGuiApplication.clipboard().setMimeData(data)


def let_go() -> None:
    """The program ends: give back what the system itself does not hold.

    WORKAROUND Qt keeps the clipboard of a platform without one (offscreen, linuxfb, vnc) past the end of Python,
    and then calls Python to destroy it: a segmentation fault after all is done. Elsewhere it is handed over to the
    system, so that what was copied can still be pasted.
    """
    if QGuiApplication.platformName() not in WITH_CLIPBOARD:
        QGuiApplication.clipboard().clear()


def fragment_on_clipboard() -> Drawing:
    """The piece on the clipboard. Raises PasteError where there is none, or none that can be read."""
    return fragment_in(QGuiApplication.clipboard().mimeData())


def fragment_in(data: QMimeData | None) -> Drawing:
    """The piece in what another window or program gave: our own, or a drawing's file as text."""
    raw = None if data is None else _raw(data)
    if raw is None:
        raise PasteError(tr("There is nothing on the clipboard that can be put into a drawing."))
    if len(raw) > MOST_BYTES:
        raise PasteError(tr("What is on the clipboard is too large for a drawing. Nothing was put in."))
    try:
        fragment = parse(raw, NAME)
    except DrawingError as error:
        first = error.faults[0].message
        more = len(error.faults) - 1
        said = [tr("What is on the clipboard cannot be read as parts of a drawing."), tr(first)]
        if more:
            said.append(
                tr_n("1 more thing is wrong with it.", "{count} more things are wrong with it.", more)
            )
        raise PasteError(" ".join([*said, tr("Nothing was put in.")])) from error
    if is_bare(fragment):
        raise PasteError(tr("The drawing on the clipboard is empty. Nothing was put in."))
    return fragment


def has_fragment(data: QMimeData | None) -> bool:
    """Whether pasting could do something."""
    return data is not None and (data.hasFormat(MIME) or _looks_like_a_drawing(data))


def fits(drawing: Drawing, fragment: Drawing) -> bool:
    """Whether the drawing can still be saved with the piece in it."""
    return len(drawing.components) + len(fragment.components) <= MOST_PARTS


def _raw(data: QMimeData) -> bytes | None:
    if data.hasFormat(MIME):
        return bytes(data.data(MIME).data())
    # `surrogatepass`: half a character is for the reader to refuse, with its own sentence.
    return data.text().encode("utf-8", "surrogatepass") if _looks_like_a_drawing(data) else None


def _looks_like_a_drawing(data: QMimeData) -> bool:
    start = data.text()[:400].lstrip() if data.hasText() else ""
    return start.startswith("{") and '"wetcircuit"' in start


def _image(picture: Picture) -> QImage:
    box = picture.box
    scale = min(SHARP, MOST_PX / max(box.width(), box.height(), 1.0))
    size = QSize(round(box.width() * scale), round(box.height() * scale))
    image = QImage(size, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(picture.paper)
    painter = QPainter(image)
    picture.paint(painter, QRectF(0, 0, size.width(), size.height()))
    painter.end()
    return image


def _png(image: QImage) -> QByteArray:
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "PNG")  # type: ignore[call-overload]  # the stubs want bytes, Qt takes both
    buffer.close()
    return data


def _svg(picture: Picture) -> QByteArray:
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    size = picture.box.size()
    generator = QSvgGenerator()
    generator.setOutputDevice(buffer)
    generator.setTitle("circuitcheck")
    generator.setSize(size.toSize())
    generator.setViewBox(QRectF(0, 0, size.width(), size.height()))
    painter = QPainter(generator)
    picture.paint(painter, QRectF(0, 0, size.width(), size.height()))
    painter.end()
    buffer.close()
    return data
