"""What Qt is told of a theme: its palette, and a style sheet for edges, panels and labels by role."""

from __future__ import annotations

from PySide6.QtGui import QColor, QPalette

from circuitcheck.editor.theme import Theme

_Role = QPalette.ColorRole
_PALETTE = {
    _Role.Window: "panel",
    _Role.WindowText: "ink",
    _Role.Base: "field",
    _Role.AlternateBase: "panel",
    _Role.Text: "ink",
    _Role.PlaceholderText: "ink_2",
    _Role.Button: "field",
    _Role.ButtonText: "ink",
    _Role.BrightText: "danger",
    _Role.ToolTipBase: "body",
    _Role.ToolTipText: "ink",
    _Role.Link: "select",
    _Role.LinkVisited: "select",
    _Role.Highlight: "select",
    _Role.HighlightedText: "select_text",
    _Role.Accent: "select",
    _Role.Light: "body",
    _Role.Midlight: "chrome",
    _Role.Mid: "hairline",
    _Role.Dark: "edge",
    _Role.Shadow: "ink",
}
_DISABLED = (_Role.WindowText, _Role.Text, _Role.ButtonText, _Role.ToolTipText)


def palette(theme: Theme) -> QPalette:
    """The palette of a theme; disabled texts are quiet."""
    made = QPalette()
    for role, name in _PALETTE.items():
        made.setColor(role, theme[name])
    for role in _DISABLED:
        made.setColor(QPalette.ColorGroup.Disabled, role, theme["quiet"])
    return made


def wash(theme: Theme, share: float) -> QColor:
    """The select colour as a wash: so much of it, the rest clear."""
    colour = QColor(theme["select"])
    colour.setAlphaF(share)
    return colour


def style_sheet(theme: Theme, *, slim_bars: bool = False) -> str:
    """The style sheet of a theme. `slim_bars`: for a style whose own scroll bars crowd a panel."""
    colours = {role: theme.hex(role) for role in theme.colours}
    colours["hover"] = wash(theme, 0.10).name(QColor.NameFormat.HexArgb)
    # Where edges are thick and black a ring of the same width in another colour would hardly be seen.
    thick = theme.high_contrast
    colours["line"], colours["ring"] = ("2px", "4px") if thick else ("1px", "2px")
    colours["field_pad"], colours["text_pad"] = ("0 6px", "2px 2px") if thick else ("0 7px", "3px 3px")
    colours["button_pad"] = "3px 12px" if thick else "4px 13px"
    return (_SHEET + (_SLIM_BARS if slim_bars else "")) % colours


_SHEET = """
QMainWindow, QMenuBar, QStatusBar, #bar { background: %(chrome)s; color: %(ink)s; }
QMenuBar { padding: 1px 8px; }
QMenuBar::item { padding: 4px 10px; border-radius: 5px; background: transparent; }
QMenuBar::item:selected { background: %(hover)s; }
QMenuBar::item:pressed { background: %(select)s; color: %(select_text)s; }
QStatusBar { border-top: %(line)s solid %(hairline)s; }
QStatusBar::item { border: none; }
QDockWidget::title { background: %(chrome)s; padding: 5px 12px; }
QHeaderView::section {
    background: %(panel)s; color: %(ink_2)s; border: none; border-bottom: %(line)s solid %(hairline)s; padding: 4px 5px;
}
#bar { border-bottom: %(line)s solid %(hairline)s; }
#panel { background: %(panel)s; }
QSplitter::handle { background: %(hairline)s; }
QLabel { background: transparent; }
QLabel[role="second"] { color: %(ink_2)s; }
QLabel[role="fault"], QLabel[grade="danger"] { color: %(danger)s; }
QLineEdit, QPlainTextEdit, QComboBox {
    background: %(field)s; color: %(ink)s;
    border: %(line)s solid %(edge)s; border-radius: 5px; padding: 0 8px;
    selection-background-color: %(select)s; selection-color: %(select_text)s;
    placeholder-text-color: %(ink_2)s;
}
QComboBox::drop-down { border: none; width: 22px; }
QComboBox::down-arrow { image: none; }
QLineEdit, QComboBox { min-height: 28px; }
QPlainTextEdit { padding: 4px 4px; }
QLineEdit:focus, QPlainTextEdit:focus, QComboBox:focus {
    border: %(ring)s solid %(select)s; padding: %(field_pad)s;
}
QPlainTextEdit:focus { padding: %(text_pad)s; }
QLineEdit:disabled, QComboBox:disabled { color: %(quiet)s; border-color: %(hairline)s; }
QLineEdit[invalid="true"] { border: 2px solid %(danger)s; padding: 0 7px; }
QPushButton {
    background: %(field)s; color: %(ink)s; border: %(line)s solid %(edge)s; border-radius: 6px;
    padding: 5px 14px; min-height: 20px;
}
QPushButton:hover { background: %(hover)s; }
QPushButton:pressed { background: %(select)s; color: %(select_text)s; }
QPushButton:default { background: %(select)s; color: %(select_text)s; border-color: %(select)s; }
QPushButton:focus { border: %(ring)s solid %(select)s; padding: %(button_pad)s; }
QPushButton:default:focus { border-color: %(ink)s; }
QPushButton:disabled, QPushButton:default:disabled {
    background: %(field)s; color: %(quiet)s; border-color: %(hairline)s;
}
QDateEdit {
    background: %(field)s; color: %(ink)s; border: %(line)s solid %(edge)s; border-radius: 5px;
    padding: 0 8px; min-height: 28px;
}
QDateEdit:focus { border: %(ring)s solid %(select)s; padding: %(field_pad)s; }
QDateEdit::drop-down { border: none; width: 22px; }
QDateEdit:disabled { color: %(quiet)s; border-color: %(hairline)s; }
QToolButton { border: 2px solid transparent; border-radius: 6px; padding: 2px; color: %(ink)s; }
QToolButton:hover { background: %(hover)s; }
QToolButton:focus { border-color: %(select)s; }
QToolButton[link="true"] { color: %(select)s; padding: 1px; text-align: left; }
QTabWidget::pane { border: none; border-top: %(line)s solid %(hairline)s; }
QTabBar::tab {
    background: transparent; color: %(ink_2)s; padding: 6px 9px;
    border: 2px solid transparent; border-bottom: 2px solid transparent;
}
QTabBar::tab:hover { background: %(hover)s; }
QTabBar::tab:selected { color: %(ink)s; border-bottom: 2px solid %(select)s; }
QTabBar::tab:selected:focus { border: 2px solid %(select)s; border-radius: 5px; }
QTreeView, QListView, QScrollArea { background: %(panel)s; border: none; outline: none; }
QTreeView, QListView, QScrollArea { border: 2px solid %(panel)s; }
QTreeView:focus, QListView:focus, QScrollArea:focus { border-color: %(select)s; }
QGraphicsView { border: 2px solid %(paper)s; }
QGraphicsView[keys="true"] { border-color: %(select)s; }
QTreeView { show-decoration-selected: 0; }
QTreeView::item { border-radius: 5px; }
QTreeView::item:hover { background: %(hover)s; }
QTreeView::item:selected { background: %(hover)s; color: %(ink)s; }
QTreeView::item:focus { border: 2px solid %(select)s; }
#counted::item, #counted::item:focus { border: none; border-radius: 0; }
#find { background: %(body)s; border: %(line)s solid %(edge)s; border-radius: 8px; }
#find QTreeView { background: %(body)s; border: none; }
#find QTreeView::item { border-radius: 0; }
#start { background: %(panel)s; }
#start QTreeView::branch, #start QTreeView::branch:selected { background: %(panel)s; }
#rule { background: %(hairline)s; }
#card { background: %(body)s; border: none; border-left: 5px solid %(quiet)s; }
#card[grade="danger"] { border-left-color: %(danger)s; }
#card[grade="fault"] { border-left-color: %(fault)s; }
#card[grade="advice"] { border-left-color: %(advice)s; }
#card[grade="unanswered"] { border-left-color: %(unanswered)s; }
#sound { background: %(cure_tint)s; border: %(line)s solid %(cure)s; border-radius: 8px; }
QToolTip { background: %(body)s; color: %(ink)s; border: 1px solid %(edge)s; padding: 3px; }
"""

_SLIM_BARS = """
QScrollBar { background: transparent; border: none; }
QScrollBar:vertical { width: 12px; }
QScrollBar:horizontal { height: 12px; }
QScrollBar::handle { background: %(quiet)s; border-radius: 3px; margin: 3px; }
QScrollBar::handle:hover, QScrollBar::handle:pressed { background: %(ink_2)s; }
QScrollBar::handle:vertical { min-height: 32px; }
QScrollBar::handle:horizontal { min-width: 32px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QAbstractScrollArea::corner { background: transparent; }
"""
