"""Tells one state of the program from another, down to each of its files."""

from __future__ import annotations

import hashlib
import platform
from collections.abc import Iterator
from functools import cache
from importlib.metadata import PackageNotFoundError
from importlib.metadata import version as installed
from pathlib import Path
from typing import Final

from circuitcheck.shipped import data_path, version

_PACKAGES: Final = ("msgspec", "networkx", "numpy", "scipy", "reportlab", "fonttools", "pillow", "pypdfium2")
_LEFT_OUT: Final = frozenset({"editor", "cli", "folders", "__pycache__"})
"""Folders whose files no answer depends on."""


@cache
def program() -> str:
    """The version, and a digest of every file that an answer can depend on, Python's version and the libraries'."""
    said = hashlib.sha256()
    package = Path(__file__).resolve().parent.parent
    for root in (package, data_path("icons")):
        for path in _files(root):
            said.update(f"{path.relative_to(root).as_posix()}\0".encode())
            said.update(hashlib.sha256(path.read_bytes()).digest())
    for name in _PACKAGES:
        said.update(f"{name} {_version(name)}\0".encode())
    said.update(f"{platform.python_implementation()} {platform.python_version()}".encode())
    return f"circuitcheck {version()} ({said.hexdigest()[:32]})"


@cache
def rules() -> str:
    """A digest of the rule books."""
    said = hashlib.sha256()
    for path in sorted((Path(__file__).resolve().parent.parent / "rules").glob("*.toml")):
        said.update(f"{path.name}\0".encode())
        said.update(hashlib.sha256(path.read_bytes()).digest())
    return said.hexdigest()[:32]


def _files(folder: Path) -> Iterator[Path]:
    for path in sorted(folder.iterdir()):
        if path.is_dir():
            if path.name not in _LEFT_OUT:
                yield from _files(path)
        elif path.suffix != ".pyc":
            yield path


def _version(package: str) -> str:
    try:
        return installed(package)
    except PackageNotFoundError:
        return "none"
