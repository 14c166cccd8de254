"""Which drawings the paths of a call stand for."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import Path

ENDING = ".wetcircuit"


def drawings(paths: Sequence[Path]) -> tuple[list[Path], list[str]]:
    """The files to check, folders walked in order, and a sentence for each path that gives none."""
    files: list[Path] = []
    faults: list[str] = []
    for path in paths:
        try:
            if path.is_dir():
                inside = list(_walk(path, faults))
                files += inside
                if not inside:
                    faults.append(f"{path}: no drawing (*{ENDING}) in this folder")
            elif path.exists():
                files.append(path)
            else:
                faults.append(f"{path}: no such file or folder")
        except OSError as error:
            faults.append(f"{path}: {error.strerror or error}")
    return files, faults


def _walk(folder: Path, faults: list[str]) -> Iterator[Path]:
    """Drawings in a folder and below, sorted; links and hidden files are passed over. A folder that
    cannot be looked into is added to the faults."""
    try:
        inside = sorted(folder.iterdir())
    except OSError as error:
        faults.append(f"{folder}: {error.strerror or error}")
        return
    for path in inside:
        if path.name.startswith(".") or path.is_symlink():
            continue
        if path.is_dir():
            yield from _walk(path, faults)
        elif path.suffix == ENDING and path.is_file():
            yield path
