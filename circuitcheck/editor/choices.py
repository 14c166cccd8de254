"""What is chosen for the whole program under View: its colours and its language."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QObject, QSettings

from circuitcheck.editor.actions import Actions
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.language import Language, choose, chosen
from circuitcheck.editor.translating import tr


class Choices(QObject):
    """Connects the entries of the menu; `hint` shows a sentence in the window."""

    def __init__(
        self,
        window: QObject,
        actions: Actions,
        settings: QSettings,
        appearances: Appearances,
        hint: Callable[[str], object],
    ) -> None:
        super().__init__(window)
        self._settings, self._hint = settings, hint
        for appearance, action in actions.appearances.items():
            action.setChecked(appearance is appearances.choice)
            action.triggered.connect(partial(appearances.choose, appearance))
        for language, action in actions.languages.items():
            action.setChecked(language is chosen(settings))
            action.triggered.connect(partial(self._choose_language, language))

    def _choose_language(self, language: Language) -> None:
        choose(self._settings, language)
        self._hint(tr("The window speaks that language from the next start on."))
