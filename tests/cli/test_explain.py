"""`explain`: the list of checks, and one check's lesson."""

from __future__ import annotations

import pytest

from circuitcheck.checks.catalogue import checks
from circuitcheck.cli import run

Capture = pytest.CaptureFixture[str]


def test_the_list_names_every_check_once_with_its_title(capsys: Capture) -> None:
    assert run(["explain"]) == 0
    out, err = capsys.readouterr()
    lines = [line.split(maxsplit=1) for line in out.splitlines() if line.startswith("  ")]
    assert dict(lines) == {name: check.lesson.title for name, check in checks().items()}
    assert len(lines) == len(checks()) and err == ""


@pytest.mark.parametrize("name", checks())
def test_one_check(name: str, capsys: Capture) -> None:
    assert run(["explain", name]) == 0
    out = capsys.readouterr().out
    lesson = checks()[name].lesson
    flat = " ".join(out.split())
    assert out.startswith(f"{name}\n{lesson.title}\n")
    for text in (lesson.flags, lesson.why, lesson.remedy, lesson.source):
        assert text in flat
    assert max(map(len, out.splitlines())) <= 96


def test_an_unknown_check_is_2_and_says_how_to_list_them(capsys: Capture) -> None:
    assert run(["explain", "no-such\x1b[31m"]) == 2
    out, err = capsys.readouterr()
    assert out == "" and "no-such" in err and "circuitcheck explain" in err and "\x1b" not in err
