"""The document: one drawing with its file, its history, and what the checks say of it."""

from __future__ import annotations

from hashlib import sha256
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.analyser import Analyse, Analyser
from circuitcheck.editor.curing import Curer
from circuitcheck.editor.history import History
from circuitcheck.told import worded

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis
    from circuitcheck.finding import Finding

ENDING = ".wetcircuit"


class FileChangedError(Exception):
    """The file on the disk is no longer the one that was read or saved here; nothing was written."""

    def __init__(self, path: Path) -> None:
        super().__init__(
            worded("{file} was changed by somebody else since it was opened here.", file=path.name)
        )
        self.path = path


class Document(QObject):
    """Every change goes through `do`, `undo`, `redo`, `open` or `new`, and is signalled.

    `changed` carries the drawing before and after, and the step's name: empty for a drawing that
    was opened or begun. `analysed` carries an Analysis of the present drawing, never a stale one;
    `cured` a finding of it that was asked about, and its cures. With `is_judged` False nothing is judged before
    `judge` is called.
    """

    changed = Signal(object, object, str)
    analysed = Signal(object)
    saved_state_changed = Signal()
    cured = Signal(object, object)

    def __init__(
        self, analyse: Analyse | None = None, parent: QObject | None = None, *, is_judged: bool = True
    ) -> None:
        super().__init__(parent)
        self._history = History(Drawing())
        self._saved: Drawing | None = self._history.drawing
        self._path: Path | None = None
        self._digest: str | None = None
        self._analysis: Analysis | None = None
        self._analyser = Analyser(analyse, self)
        self._analyser.analysed.connect(self._take)
        self._is_judged = is_judged
        self._ask()
        self._curer = Curer(self)
        self._curer.found.connect(self.cured)

    @property
    def drawing(self) -> Drawing:
        """The drawing as it stands."""
        return self._history.drawing

    @property
    def path(self) -> Path | None:
        """The file it was read from or saved to last; None for neither."""
        return self._path

    @property
    def digest(self) -> str | None:
        """The SHA-256 of what stood in the file when it was read or saved here last; None for no file."""
        return self._digest

    @property
    def is_unsaved(self) -> bool:
        """Whether the drawing differs from the one in the file; undoing back to that one counts."""
        return self.drawing is not self._saved

    @property
    def analysis(self) -> Analysis | None:
        """What the checks say of the present drawing; None while that is being worked out."""
        return self._analysis

    @property
    def undo_text(self) -> str:
        """The name of the step that undo takes back; empty where there is none."""
        return self._history.last.name if self._history.last else ""

    @property
    def redo_text(self) -> str:
        """The name of the step that redo makes again; empty where there is none."""
        return self._history.next.name if self._history.next else ""

    def do(self, step: str, drawing: Drawing) -> None:
        """Make a step. A drawing that is the present one is no step."""
        before = self.drawing
        if drawing is not before:
            self._history.do(step, drawing)
            self._tell(before, step)

    def undo(self) -> None:
        """Take the last step back; nothing where there is none."""
        if step := self._history.undo():
            self._tell(step.after, step.name)

    def redo(self) -> None:
        """Make the next step again; nothing where there is none."""
        if step := self._history.redo():
            self._tell(step.before, step.name)

    def judge(self) -> None:
        """From now on have judged what is there, where nothing was judged until now."""
        if not self._is_judged:
            self._is_judged = True
            self._ask()

    def find_cures(self, finding: Finding | None) -> None:
        """Look for what would put a finding of the present analysis right; None: for nothing."""
        if finding is None or self._analysis is None or finding not in self._analysis.findings:
            self._curer.forget()
        else:
            self._curer.ask(self._analysis, finding)

    def new(self) -> None:
        """Begin an empty drawing with no file."""
        self._replace(Drawing(), None, None)

    def open(self, path: Path) -> None:
        """Read a drawing. Raises DrawingError or OSError, and then nothing has changed."""
        from circuitcheck.storage.limits import MOST_BYTES
        from circuitcheck.storage.reading import parse

        with path.open("rb") as file:
            data = file.read(MOST_BYTES + 1)
        self._replace(parse(data, str(path)), path, _digest(data))

    def open_copy(self, path: Path) -> None:
        """Read a drawing that ships with the program: it has no file until it is saved."""
        from circuitcheck.storage.reading import read

        self._replace(read(path), None, None)

    def recover(self, drawing: Drawing, path: Path | None, digest: str | None) -> None:
        """Go on with a drawing that was left unsaved, and with the file it was of, if it had one."""
        self._replace(drawing, path, digest, is_saved=False)

    def save(self, path: Path | None = None, *, over_changes: bool = False) -> None:
        """Save to `path`, or to the drawing's own file.

        Raises OSError, DrawingError for a drawing that could not be read again, and FileChangedError
        where the own file's content is not what was read or saved here last, unless
        `over_changes`. Raises ValueError where there is no file yet.
        """
        from circuitcheck.storage.reading import parse
        from circuitcheck.storage.saver import save_bytes
        from circuitcheck.storage.writing import dump

        target = path or self._path
        if target is None:
            raise ValueError("This drawing has no file yet.")
        if target == self._path and not over_changes and self._is_changed_on_disk():
            raise FileChangedError(target)
        data = dump(self.drawing)
        # A good file is never replaced by one that will not open.
        parse(data, str(target))
        save_bytes(target, data)
        self._path, self._digest, self._saved = target, _digest(data), self.drawing
        self.saved_state_changed.emit()

    def close(self) -> None:
        """Stop the analysis; its threads have ended when this returns."""
        self._curer.close()
        self._analyser.close()

    def _is_changed_on_disk(self) -> bool:
        if self._path is None:
            return False
        try:
            return _digest(self._path.read_bytes()) != self._digest
        except FileNotFoundError:
            # Gone is not changed: saving brings it back and overwrites nobody's work.
            return False

    def _replace(
        self, drawing: Drawing, path: Path | None, digest: str | None, *, is_saved: bool = True
    ) -> None:
        before = self.drawing
        self._history = History(drawing)
        self._saved, self._path, self._digest = drawing if is_saved else None, path, digest
        self._tell(before, "")

    def _tell(self, before: Drawing, step: str) -> None:
        self._analysis = None
        self._ask()
        self.changed.emit(before, self.drawing, step)
        self.saved_state_changed.emit()

    def _ask(self) -> None:
        if self._is_judged:
            self._analyser.ask(self.drawing)

    def _take(self, analysis: Analysis) -> None:
        self._analysis = analysis
        self.analysed.emit(analysis)


def _digest(data: bytes) -> str:
    return sha256(data).hexdigest()
