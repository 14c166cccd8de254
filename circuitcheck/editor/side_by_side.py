"""A layout of two: side by side where there is room, else one below the other. Long words are then never cut."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QSizePolicy, QWidget, QWidgetItem


class SideBySide(QLayout):
    """The first takes the room that is left, the second is as wide as it likes to be and stands to the right.

    Where the longest word of the first does not fit beside the second, the second goes below it. `middle`: the
    lower of the two stands at the middle of the other, not at its top.
    """

    def __init__(
        self, first: QWidget, second: QWidget, *, gap: int = 8, below: int = 3, middle: bool = False
    ) -> None:
        super().__init__()
        self._items: list[QLayoutItem] = []
        self._heights: dict[int, int] = {}
        """What was reckoned by width: Qt asks for each dozens of times before it settles how a panel lies."""
        self._gap, self._below, self._middle = gap, below, middle
        self.setContentsMargins(0, 0, 0, 0)
        for each in (first, second):
            self.addChildWidget(each)
            self.addItem(QWidgetItem(each))

    def addItem(self, item: QLayoutItem) -> None:
        """Take the next of the two."""
        self._items.append(item)

    def count(self) -> int:
        """How many it holds."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        """The item of a place, None past the last."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        """Give an item away."""
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        """As wide as it may be."""
        return Qt.Orientation.Horizontal

    def hasHeightForWidth(self) -> bool:
        """Wrapped text is higher where it is narrower."""
        return True

    def heightForWidth(self, width: int) -> int:
        """How high both are at a width."""
        known = self._heights.get(width)
        if known is None:
            known = self._heights[width] = self._place(QRect(0, 0, width, 0), moves=False)
        return known

    def invalidate(self) -> None:
        """One of the two may be larger or smaller than it was."""
        self._heights.clear()
        super().invalidate()

    def sizeHint(self) -> QSize:
        """Both side by side."""
        hints = [each.sizeHint() for each in self._items]
        return QSize(
            sum(hint.width() for hint in hints) + self._gap, max((hint.height() for hint in hints), default=0)
        )

    def minimumSize(self) -> QSize:
        """As narrow as the wider of the two, one below the other."""
        least = [each.minimumSize() for each in self._items]
        return QSize(
            max((size.width() for size in least), default=0),
            max((size.height() for size in least), default=0),
        )

    def setGeometry(self, rect: QRect) -> None:
        """Place both."""
        super().setGeometry(rect)
        self._place(rect, moves=True)

    def _place(self, rect: QRect, *, moves: bool) -> int:
        if len(self._items) < 2:
            return 0
        first, second = self._items
        wide = _liked(second)
        if first.minimumSize().width() + self._gap + wide <= rect.width():
            width = rect.width() - self._gap - wide
            heights = (_height(first, width), _height(second, wide))
            high = max(heights)
            down = [(high - each) // 2 if self._middle else 0 for each in heights]
            places = (
                QRect(rect.topLeft() + QPoint(0, down[0]), QSize(width, heights[0])),
                QRect(rect.topLeft() + QPoint(width + self._gap, down[1]), QSize(wide, heights[1])),
            )
        else:
            wide = min(wide, rect.width())
            heights = (_height(first, rect.width()), _height(second, wide))
            high = heights[0] + self._below + heights[1]
            left = rect.width() - wide
            places = (
                QRect(rect.topLeft(), QSize(rect.width(), heights[0])),
                QRect(rect.topLeft() + QPoint(left, heights[0] + self._below), QSize(wide, heights[1])),
            )
        if moves:
            first.setGeometry(places[0])
            second.setGeometry(places[1])
        return high


def in_line(first: QWidget, second: QWidget, *, gap: int = 8, middle: bool = False) -> QWidget:
    """A widget that holds two so."""
    made = QWidget()
    made.setLayout(SideBySide(first, second, gap=gap, middle=middle))
    policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
    policy.setHeightForWidth(True)
    made.setSizePolicy(policy)
    return made


def _liked(item: QLayoutItem) -> int:
    return max(item.sizeHint().width(), item.minimumSize().width())


def _height(item: QLayoutItem, width: int) -> int:
    return item.heightForWidth(width) if item.hasHeightForWidth() else item.sizeHint().height()
