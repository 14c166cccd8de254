"""The command line and the package start in a blink: what a command doesn't need it doesn't import."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from circuitcheck.shipped import data_path

QT = {"PySide6", "shiboken6"}
HEAVY = QT | {"networkx", "shapely", "msgspec", "numpy", "scipy"}
SAMPLES = sorted(data_path("samples").glob("*.wetcircuit"))


def traced(*arguments: str, cwd: Path) -> tuple[str, set[str]]:
    """Return what a fresh interpreter prints for the arguments, and the top-level packages it imports."""
    run = subprocess.run(
        [sys.executable, "-X", "importtime", *arguments],
        cwd=cwd,
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )
    # 0 and 1 are verdicts; anything else is a run that did not do what was asked.
    assert run.returncode in (0, 1), run.stderr
    lines = [line for line in run.stderr.splitlines() if line.startswith("import time:")]
    packages = {line.rpartition("|")[2].strip().partition(".")[0] for line in lines}
    assert "circuitcheck" in packages, run.stderr
    return run.stdout, packages


def test_the_trace_sees_an_import(tmp_path: Path) -> None:
    _, packages = traced("-c", "import circuitcheck, msgspec", cwd=tmp_path)
    assert "msgspec" in packages


def test_importing_the_package_is_cheap(tmp_path: Path) -> None:
    _, packages = traced("-c", "import circuitcheck", cwd=tmp_path)
    assert not packages & HEAVY


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda sample: sample.stem)
def test_checking_a_drawing_never_imports_qt(sample: Path, tmp_path: Path) -> None:
    printed, packages = traced("-m", "circuitcheck", "check", str(sample), "--as", "json", cwd=tmp_path)
    # A run that broke off early would import nothing and prove nothing.
    (checked,) = json.loads(printed)["files"]
    assert checked["error"] is None
    assert not packages & QT


@pytest.mark.parametrize("form", ["pdf", "html", "svg", "png", "csv"])
def test_a_report_never_imports_qt(form: str, tmp_path: Path) -> None:
    to = tmp_path / f"hall.{form}"
    sample = next(each for each in SAMPLES if each.stem == "village-hall")
    _, packages = traced("-m", "circuitcheck", "report", str(sample), "-o", str(to), cwd=tmp_path)
    assert to.stat().st_size > 1000
    assert not packages & QT


def test_checking_needs_nothing_of_the_report(tmp_path: Path) -> None:
    _, packages = traced("-m", "circuitcheck", "check", str(SAMPLES[0]), cwd=tmp_path)
    assert not packages & {"reportlab", "PIL", "fontTools", "pypdfium2"}


def test_a_language_is_read_only_where_it_is_asked_for(tmp_path: Path) -> None:
    code = "import circuitcheck.cli, circuitcheck.tongues as t; {}"
    for more, is_read in (("t.tongue('en')", False), ("t.tongue('de')", True)):
        _, packages = traced("-c", code.format(more), cwd=tmp_path)
        assert ("pyexpat" in packages) is is_read


def test_a_german_report_never_imports_qt(tmp_path: Path) -> None:
    to = tmp_path / "hall.html"
    sample = next(each for each in SAMPLES if each.stem == "village-hall")
    _, packages = traced(
        "-m", "circuitcheck", "report", str(sample), "-o", str(to), "--language", "de", cwd=tmp_path
    )
    assert b'<html lang="de">' in to.read_bytes()
    assert not packages & QT
