"""Plain text only: the one place that makes labels, tooltips and message boxes.

Qt guesses whether a text is rich and would then load what it names; a text from a file is never markup.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QTextOption
from PySide6.QtWidgets import QLabel, QMessageBox, QPlainTextEdit, QToolButton, QTreeWidgetItem, QWidget

from circuitcheck.editor.eliding import ElidedButton, ElidedLabel
from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.shortening import has_long_word, in_short, is_long
from circuitcheck.editor.tips import tip_text as tip_text
from circuitcheck.editor.translating import shown_told

SIZES: dict[str, tuple[float, bool]] = {
    # role: how large beside the window's own font, and whether it is semibold
    "body": (1.0, False),
    "strong": (1.0, True),
    "second": (0.93, False),
    "heading": (1.08, True),
    "finding": (1.14, True),
    "name": (1.21, True),
    "fault": (0.93, False),
    "grade": (0.93, True),
}
"""What a label is for: its size and weight here, its colour by the style sheet under the same name."""
PASSAGE_PX = 240
"""How high a box with a very long text is."""


def label(
    text: str = "", role: str = "body", *, wrap: bool = False, selectable: bool = False, elided: bool = False
) -> QLabel:
    """A label that shows its text as it is, or how it begins where it is very long. `role` is one of SIZES;
    `elided`: it may grow narrower than its text."""
    made = ElidedLabel() if elided else QLabel()
    made.setTextFormat(Qt.TextFormat.PlainText)
    made.setText(in_short(shown_told(text)))
    made.setProperty("role", role)
    size, strong = SIZES[role]
    made.setFont(scaled(made.font(), size, strong=strong))
    made.setWordWrap(wrap)
    if selectable:
        made.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
    return made


def passage(text: str, role: str = "body") -> QLabel | QPlainTextEdit:
    """All of a text that may be of any length, wrapped, to be selected and copied. A very long one, of which a label
    would show how it begins, stands in a box to be scrolled, which the tab key comes by."""
    if not is_long(shown := shown_told(text)):
        made = label(text, role, wrap=True, selectable=True)
        # Reached by the mouse alone: the tab key goes from one thing to do to the next.
        made.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        return made
    whole = box(shown)
    whole.setReadOnly(True)
    whole.setAccessibleName(in_short(shown))
    whole.setFixedHeight(PASSAGE_PX)
    return whole


def box(text: str) -> QPlainTextEdit:
    """A box to scroll a text of any length in, broken at words where it has words; the tab key leaves it."""
    made = QPlainTextEdit()
    if has_long_word(text):
        made.setWordWrapMode(QTextOption.WrapMode.WrapAnywhere)
    made.setPlainText(text)
    made.setTabChangesFocus(True)
    return made


def link(text: str, does: Callable[[], object]) -> QToolButton:
    """A button that looks like a link, and shows its text as it is."""
    made = ElidedButton()
    made.setProperty("link", True)
    made.setText(action_text(text))
    made.clicked.connect(does)
    return made


def set_tip(thing: QWidget | QAction, text: str) -> None:
    """Give a widget or an action a tooltip that shows its text as it is."""
    thing.setToolTip(tip_text(text))


def set_column_tip(item: QTreeWidgetItem, column: int, text: str) -> None:
    """Give a column of a row or heading a tooltip that shows its text as it is."""
    item.setToolTip(column, tip_text(text))


def action_text(text: str) -> str:
    """A text for a menu or a button, with no letter of it taken for a mnemonic."""
    return shown_told(text).replace("&", "&&")


def message(
    parent: QWidget | None,
    text: str,
    more: str = "",
    *,
    icon: QMessageBox.Icon = QMessageBox.Icon.Information,
    details: str = "",
    buttons: QMessageBox.StandardButton = QMessageBox.StandardButton.Ok,
    default: QMessageBox.StandardButton = QMessageBox.StandardButton.Ok,
) -> QMessageBox:
    """A message box, not yet shown, that shows its texts as they are."""
    box = QMessageBox(parent)
    box.setTextFormat(Qt.TextFormat.PlainText)
    box.setIcon(icon)
    box.setWindowTitle("circuitcheck")
    box.setText(shown_told(text))
    box.setInformativeText(shown_told(more))
    if details:
        box.setDetailedText(details)
    box.setStandardButtons(buttons)
    box.setDefaultButton(default)
    return box
