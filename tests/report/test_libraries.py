"""The list of libraries: all that is declared, each under a licence that lets the program be passed on."""

import re
import tomllib
from pathlib import Path

import pytest

from circuitcheck.report.libraries import Library, libraries

ROOT = Path(__file__).resolve().parents[2]
# Words of licences under which a library may be used by, and given along with, a program under Apache 2.0.
ALLOWED = ("MIT", "BSD", "Apache", "LGPL-3.0", "0BSD", "Zlib", "CC0-1.0")


def named(requirement: str) -> str:
    match = re.match(r"[A-Za-z0-9._-]+", requirement)
    assert match
    return re.sub(r"[-_.]+", "-", match[0]).lower()


def test_every_declared_library_is_listed() -> None:
    declared = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]["dependencies"]
    listed = {library.name.lower().replace("_", "-") for library in libraries()}
    assert {named(each) for each in declared} <= listed


@pytest.mark.parametrize("library", libraries(), ids=lambda library: library.name)
def test_a_library_comes_under_a_licence_that_fits(library: Library) -> None:
    assert any(word in library.licence for word in ALLOWED), library
    assert library.version


@pytest.mark.parametrize("library", libraries(), ids=lambda library: library.name)
def test_the_developers_page_names_each_library_and_says_why(library: Library) -> None:
    page = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    assert re.search(rf"^\| {re.escape(library.name)} \| .+ \| .+ \|$", page, re.MULTILINE | re.IGNORECASE)


def test_each_range_of_versions_has_an_upper_end() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    for requirement in project["dependencies"]:
        assert ">=" in requirement and "<" in requirement.partition(">=")[2], requirement
