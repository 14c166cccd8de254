"""What a part carries while it is dragged from the shelf to the sheet."""

from __future__ import annotations

from PySide6.QtCore import QMimeData

from circuitcheck.parts.catalogue import kinds
from circuitcheck.parts.kind import Kind

KIND_MIME = "application/x-circuitcheck-kind"


def mime_of(kind: Kind) -> QMimeData:
    """The data of a drag of this kind."""
    made = QMimeData()
    made.setData(KIND_MIME, kind.name.encode())
    return made


def kind_in(data: QMimeData) -> Kind | None:
    """The kind that is dragged; None for anything else."""
    if not data.hasFormat(KIND_MIME):
        return None
    name = bytes(data.data(KIND_MIME).data()).decode(errors="replace")
    return kinds().get(name)
