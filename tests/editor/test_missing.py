"""What is said when a library is missing."""

from __future__ import annotations

import subprocess
import sys

from circuitcheck.editor.missing import OFFSCREEN, SCREEN, explain_missing_library


def test_a_missing_system_library_is_named_with_the_packages_that_bring_it() -> None:
    error = ImportError("libEGL.so.1: cannot open shared object file: No such file or directory")
    said = explain_missing_library(error)
    assert "libEGL.so.1" in said
    for package in OFFSCREEN + SCREEN:
        assert package in said.split() or f"{package}." in said
    assert "circuitcheck check FILE" in said
    assert "\n" not in said


def test_a_missing_binding_is_named() -> None:
    said = explain_missing_library(ModuleNotFoundError("No module named 'PySide6'", name="PySide6"))
    assert "pip install PySide6-Essentials" in said
    said = explain_missing_library(ModuleNotFoundError("No module named 'PySide6.X'", name="PySide6.X"))
    assert "PySide6" in said


def test_another_failure_is_said_as_it_is() -> None:
    said = explain_missing_library(ImportError("cannot import name 'x'"))
    assert said == "The window cannot be opened: cannot import name 'x'"


def test_explaining_needs_no_qt() -> None:
    code = "import sys, circuitcheck.editor.missing; sys.exit(any('PySide' in name for name in sys.modules))"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
