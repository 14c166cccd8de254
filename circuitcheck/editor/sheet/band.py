"""The band round the part of a circuit that is cut off: along its pipes and round its parts."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainterPath, QPainterPathStroker

from circuitcheck.editor.sheet.painting import qt_path
from circuitcheck.picture.marks import Path, Step
from circuitcheck.picture.pipes import Place, pipe_path

ALONG_PX = 28.0
ROUND_PX = 10.0
RADIUS_PX = 16.0


def band(lines: Iterable[Sequence[Place]], boxes: Iterable[QRectF]) -> Path:
    """One outline in px: 28 wide along each line, 10 out from each box; flat where a line ends."""
    stroker = QPainterPathStroker()
    stroker.setWidth(ALONG_PX)
    stroker.setCapStyle(Qt.PenCapStyle.FlatCap)
    stroker.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    whole = QPainterPath()
    whole.setFillRule(Qt.FillRule.WindingFill)
    for line in lines:
        whole = whole.united(stroker.createStroke(qt_path(pipe_path(line))).simplified())
    for box in boxes:
        grown = box.adjusted(-ROUND_PX, -ROUND_PX, ROUND_PX, ROUND_PX)
        disc = QPainterPath()
        radius = min(RADIUS_PX, grown.width() / 2, grown.height() / 2)
        disc.addRoundedRect(grown, radius, radius)
        whole = whole.united(disc)
    return _steps(whole.simplified())


def _steps(path: QPainterPath) -> Path:
    """Qt's path as a path of the picture, each of its outlines closed."""
    steps: list[Step] = []
    count = path.elementCount()
    index = 0
    while index < count:
        element = path.elementAt(index)
        if element.isMoveTo():
            if steps:
                steps.append(("Z", ()))
            steps.append(("M", (element.x, element.y)))
        elif element.isCurveTo():
            second, third = path.elementAt(index + 1), path.elementAt(index + 2)
            steps.append(("C", (element.x, element.y, second.x, second.y, third.x, third.y)))
            index += 2
        else:
            steps.append(("L", (element.x, element.y)))
        index += 1
    return (*steps, ("Z", ())) if steps else ()
