"""A later version is refused with a sentence that says so; an earlier one is brought up to date."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import FORMAT_VERSION
from circuitcheck.storage.versions import STEPS, VersionError, upgraded
from tests.storage.files import cottage, encoded, faults


def test_a_later_version_is_refused_and_nothing_else_is_said() -> None:
    # What a later version means by a pump or a title this one cannot know.
    file = {**cottage(), "wetcircuit": 2, "title": 5}
    (fault,) = faults(encoded(file))
    assert "format version 2, written by a later version of this program" in fault.message


@pytest.mark.parametrize("version", [0, -1, 1.5, True, "1", None, [1], {}, 1e300])
def test_a_version_that_never_was_is_refused(version: Any) -> None:
    (fault,) = faults(encoded({"wetcircuit": version}))
    assert "version" in fault.message


def test_a_file_without_a_version_is_no_drawing() -> None:
    (fault,) = faults(b"{}")
    assert "no drawing" in fault.message


def test_there_is_a_step_from_every_earlier_version() -> None:
    assert sorted(STEPS) == list(range(1, FORMAT_VERSION))


def _with_plural(content: dict[str, Any]) -> dict[str, Any]:
    return {**content, "titles": [content["title"]]}


def _with_count(content: dict[str, Any]) -> dict[str, Any]:
    return {**content, "count": len(content["titles"])}


def test_steps_are_taken_one_after_the_other() -> None:
    steps = {1: _with_plural, 2: _with_count}
    old = {"wetcircuit": 1, "title": "Cottage"}
    new = upgraded(old, steps, newest=3)
    assert new == {"wetcircuit": 3, "title": "Cottage", "titles": ["Cottage"], "count": 1}
    assert old == {"wetcircuit": 1, "title": "Cottage"}
    assert "count" in upgraded({"wetcircuit": 2, "titles": []}, steps, newest=3)
    assert upgraded({"wetcircuit": 3.0}, steps, newest=3)["wetcircuit"] == 3


def test_a_version_no_step_leads_on_from_is_refused() -> None:
    with pytest.raises(VersionError, match="format version 1, which this program does not know"):
        upgraded({"wetcircuit": 1}, {2: _with_count}, newest=3)
