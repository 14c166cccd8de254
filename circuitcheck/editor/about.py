"""The About box: what the program is, its version and licence, and the words of care."""

from __future__ import annotations

from PySide6.QtWidgets import QMessageBox, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.translating import later, tr
from circuitcheck.report.care import CARE
from circuitcheck.shipped import version

LICENCES = later(
    "Apache License 2.0. The font Source Sans 3 is under the SIL Open Font License 1.1. "
    "The window is made with Qt, under the GNU Lesser General Public License 3."
)


def about_box(parent: QWidget) -> QMessageBox:
    """The box, not yet shown."""
    # Here and not at the top: what asks for the versions installed is not read before somebody wants to know.
    from circuitcheck.report.libraries import libraries

    return plain.message(
        parent,
        f"circuitcheck {version()}",
        tr(
            "Draws a heating and hot-water circuit, and proves it safe or shows the valve "
            "that makes it unsafe.\n\n{care}\n\n{licences}",
            care=tr(CARE),
            licences=tr(LICENCES),
        ),
        details="\n".join(f"{each.name} {each.version}: {each.licence}" for each in libraries()),
    )
