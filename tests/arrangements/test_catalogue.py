"""The usual arrangements: all are there, sound, complete and told apart."""

from __future__ import annotations

from pathlib import Path

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.arrangements import catalogue
from circuitcheck.arrangements.catalogue import ENDING, arrangements
from circuitcheck.sheet.depiction import subtitle
from circuitcheck.shipped import data_path


def test_every_file_is_told_and_every_one_told_is_there() -> None:
    files = {path.name.removesuffix(ENDING) for path in data_path("arrangements").glob(f"*{ENDING}")}
    assert files == set(arrangements())
    assert len({str(each.title) for each in arrangements().values()}) == len(files)


@pytest.mark.parametrize("name", arrangements())
def test_it_is_sound_complete_and_laid_out(name: str) -> None:
    arrangement = arrangements()[name]
    analysis = analyse(arrangement.drawing)
    assert [finding.message for finding in analysis.findings] == []
    assert analysis.not_judged == () and len(analysis.judged) > 40
    assert arrangement.drawing.title == str(arrangement.title)
    assert all(part.at is not None for part in arrangement.drawing.components.values())


def test_a_drawing_is_read_once() -> None:
    arrangement = arrangements()["two-zone-valves"]
    assert arrangement.drawing is arrangements()["two-zone-valves"].drawing


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("two-zone-valves", "Sealed heating, mains-fed store"),
        ("three-port-valve", "Sealed heating, store fed from a cistern"),
        ("open-vented", "Open-vented heating, store fed from a cistern"),
        ("no-store", "Sealed heating"),
    ],
)
def test_the_sheet_says_what_it_is(name: str, said: str) -> None:
    assert subtitle(arrangements()[name].drawing) == said


def test_they_lie_beside_the_code_and_so_ship_with_it() -> None:
    package = Path(catalogue.__file__).parent
    assert {each.file.parent for each in arrangements().values()} == {package}
