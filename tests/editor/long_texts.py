"""A whole window with a drawing whose texts are as long as a file may hold: a program of its own for the trials.

`python -m tests.editor.long_texts KIND FOLDER` opens it, looks at it in every way, and prints one line
of JSON: what held the window up the longest, and for how long. Times are of the clock.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date
from functools import partial
from pathlib import Path

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication, QTabWidget

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Acceptance, Drawing, Note, Reply, Review
from circuitcheck.editor.appearance import Appearance, Appearances
from circuitcheck.editor.window import MainWindow
from circuitcheck.editor.windows import Windows
from circuitcheck.shipped import data_path
from circuitcheck.storage.limits import LONGEST_LABEL, LONGEST_TEXT
from circuitcheck.storage.reading import read
from circuitcheck.storage.writing import write
from tests.editor.until_quiet import until_quiet

SAMPLE = data_path("samples") / "terrace-as-found-valve-in-vent.wetcircuit"
DAY = date(2030, 1, 31)

KINDS = {
    "one word": "W",
    "lines": "a\n",
    "words": "ab ",
    "tabs": "\t",
    "spaces that do not break": "\u00a0",
    "right to left": "\u0645\u0644\u0641 ",
    "marks on one letter": "\u0301",
    "joined pictures": "\U0001f468\u200d",
    "markup": "<b>&amp;",
}
"""What a text is made of, over and over."""


def full_of(grain: str, drawing: Drawing) -> Drawing:
    """The drawing with each of its texts as long as may be."""
    text = "a" + grain * ((LONGEST_TEXT - 1) // len(grain))
    label = text[:LONGEST_LABEL]
    note = Note("", tuple(drawing.components)[:3], label, label, text, replies=(Reply(label, label, text),))
    findings = analyse(drawing).findings[:2]
    return replace(
        drawing,
        title=label,
        components={id: replace(each, label=label) for id, each in drawing.components.items()},
        notes=tuple(replace(note, id=f"note{number}") for number in range(3)),
        acceptances=tuple(
            Acceptance(each.check, (*each.components, *each.pipes), text, label, DAY.isoformat())
            for each in findings
        ),
        reviews=(Review(label, label, DAY.isoformat(), "rejected", text, label, label),),
    )


def acts(window: MainWindow) -> Iterator[tuple[str, Callable[[], object]]]:
    """Ways of looking at it, each with a name."""
    actions = window.actions_
    part = next(iter(window.document.drawing.components))
    yield "fit", actions.fit.trigger
    for turn in range(3):
        yield f"next finding, {turn}", actions.next_finding.trigger
    yield "leave the finding", actions.leave_finding.trigger
    yield "select a part", partial(window.sheet.select, [part])
    yield "turn it", actions.turn.trigger
    yield "undo", actions.undo.trigger
    yield "100 %", actions.zoom_reset.trigger
    for tabs in window.findChildren(QTabWidget):
        for index in range(tabs.count()):
            yield f"tab {tabs.tabText(index)}", partial(tabs.setCurrentIndex, index)
    for switch in (window.live.figures_action, window.tables.fill_in_action, window._outlining.action):
        yield f"{switch.text()}, on", switch.trigger
        yield f"{switch.text()}, in other colours", actions.appearances[Appearance.DARK].trigger
        yield f"{switch.text()}, in colours as before", actions.appearances[Appearance.LIGHT].trigger
        yield f"{switch.text()}, off", switch.trigger
    yield "operate", window.operate.action.trigger
    yield "no longer operate", window.operate.action.trigger
    yield "wide", partial(window.resize, 1920, 1080)
    yield "narrow", partial(window.resize, 900, 600)


def main(kind: str, folder: Path) -> None:
    """Try it, and tell of it."""
    file = folder / "long texts.wetcircuit"
    write(full_of(KINDS[kind], read(SAMPLE)), file)
    application = QApplication([])
    settings = QSettings(str(folder / "settings.ini"), QSettings.Format.IniFormat)
    windows = Windows(settings, Appearances(settings, application), folder / "recovery")
    window = windows.new()
    held_up_s = {"open": until_quiet(window, partial(window.files.read, file))[0]}
    held_up_s |= {name: until_quiet(window, act)[0] for name, act in acts(window)}
    assert window.document.drawing == read(file)
    windows.close_documents()
    window.close()
    worst = max(held_up_s, key=lambda name: held_up_s[name])
    print(json.dumps({"acts": len(held_up_s), "worst": worst, "worst_s": held_up_s[worst]}))


if __name__ == "__main__":
    main(sys.argv[1], Path(sys.argv[2]))
