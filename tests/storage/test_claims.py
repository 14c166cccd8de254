"""Which files are open: told by locks, by the place and not by the path."""

from __future__ import annotations

import os
import time
from pathlib import Path

import pytest

from circuitcheck.storage.claims import Claim, same_file


@pytest.fixture
def file(tmp_path: Path) -> Path:
    made = tmp_path / "hall.wetcircuit"
    made.write_bytes(b"{}")
    return made


def test_a_claim_is_seen_by_others_and_not_by_itself(file: Path, tmp_path: Path) -> None:
    one, two = Claim(tmp_path / "open"), Claim(tmp_path / "open")
    one.follow(file)
    assert two.is_shared(file) and not one.is_shared(file)
    assert not two.is_shared(tmp_path / "other.wetcircuit")
    two.follow(file)
    assert one.is_shared(file) and two.is_shared(file)
    one.close()
    assert not two.is_shared(file)
    two.close()
    assert list((tmp_path / "open").iterdir()) == []


def test_it_goes_with_the_document(file: Path, tmp_path: Path) -> None:
    one, two = Claim(tmp_path / "open"), Claim(tmp_path / "open")
    one.follow(file)
    one.follow(file)
    one.follow(tmp_path / "saved as.wetcircuit")
    assert not two.is_shared(file) and two.is_shared(tmp_path / "saved as.wetcircuit")
    one.follow(None)
    assert not two.is_shared(tmp_path / "saved as.wetcircuit")
    one.close()


def test_a_link_leads_to_the_same_file(file: Path, tmp_path: Path) -> None:
    link = tmp_path / "link.wetcircuit"
    link.symlink_to(file)
    one, two = Claim(tmp_path / "open"), Claim(tmp_path / "open")
    one.follow(link)
    assert same_file(link, file) and two.is_shared(file)
    assert two.is_shared(tmp_path / "x" / ".." / file.name)
    one.close()


def test_what_was_forgotten_long_ago_goes(file: Path, tmp_path: Path) -> None:
    folder = tmp_path / "open"
    one, two = Claim(folder), Claim(folder)
    one.follow(file)
    (claimed,) = folder.iterdir()
    stale = folder / f"{claimed.name.partition('-')[0]}-0{claimed.suffix}"
    stale.touch()
    fresh = stale.with_name(stale.name.replace("-0", "-1"))
    fresh.touch()
    os.utime(stale, (time.time() - 2 * 86400,) * 2)
    one.close()
    assert not two.is_shared(file)
    assert list(folder.iterdir()) == [fresh]


def test_without_a_place_for_it_there_is_none(file: Path) -> None:
    one = Claim(file / "no folder")
    one.follow(file)
    assert not Claim(file / "no folder").is_shared(file)
    one.close()
