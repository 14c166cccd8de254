"""What to say when the window cannot be opened because a library is missing; imports no Qt."""

from __future__ import annotations

OFFSCREEN = (
    "libegl1",
    "libgl1",
    "libxkbcommon0",
    "libdbus-1-3",
    "libfontconfig1",
    "libglib2.0-0",
)
SCREEN = (
    "libxcb-cursor0",
    "libxcb-icccm4",
    "libxcb-keysyms1",
    "libxcb-image0",
    "libxcb-render-util0",
    "libxcb-shape0",
    "libxcb-xkb1",
    "libxkbcommon-x11-0",
)
"""The Debian and Ubuntu packages that Qt needs: for any window, and for one on an X screen."""

NEEDS_NO_SCREEN = "'circuitcheck check FILE' works without them."


def explain_missing_library(error: ImportError) -> str:
    """One plain sentence or two for an import of the editor that failed: what is missing, what to install."""
    said = str(error)
    if isinstance(error, ModuleNotFoundError) and (error.name or "").partition(".")[0] in (
        "PySide6",
        "shiboken6",
    ):
        return f"The window needs PySide6, which is not installed: pip install PySide6-Essentials. {NEEDS_NO_SCREEN}"
    library = said.partition(":")[0] if ".so" in said else ""
    if not library:
        return f"The window cannot be opened: {said}"
    return (
        f"The window needs the system library {library}, which is missing. "
        f"On Debian and Ubuntu: sudo apt install {' '.join(OFFSCREEN + SCREEN)}. {NEEDS_NO_SCREEN}"
    )
