"""The drawings that ship: listed, and copied out."""

from __future__ import annotations

import shutil
from pathlib import Path

from circuitcheck.report.plain import plain
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read


def sample_files() -> list[Path]:
    """The drawings that ship, sorted by name."""
    return sorted(data_path("samples").glob("*.wetcircuit"))


def list_samples() -> str:
    """Each drawing's file name and title."""
    files = sample_files()
    width = max((len(path.name) for path in files), default=0)
    return "".join(f"{path.name:<{width}}  {plain(read(path).title)}\n" for path in files)


def copy_samples(folder: Path) -> list[Path]:
    """Copy the drawings into a folder, which is made if need be.

    Raises FileExistsError, and copies none, where a file of that name is there already: it may be
    somebody's work.
    """
    files = sample_files()
    folder.mkdir(parents=True, exist_ok=True)
    for path in files:
        if (folder / path.name).exists():
            raise FileExistsError(17, f"{path.name} is there already; nothing was copied")
    return [Path(shutil.copyfile(path, folder / path.name)) for path in files]
