"""Nothing that the program does asks for the network; the kernel itself watches.

The window is watched the same way where it is worked by chance and by a script: `tests/editor/wandering/` and
`tests/editor/whole_runs.py` forbid the network before they begin.
"""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from circuitcheck.shipped import data_path
from tests.no_network import IS_POSSIBLE

pytestmark = pytest.mark.skipif(not IS_POSSIBLE, reason="the kernel is not asked that way there")

HOUSE = str(data_path("samples") / "terrace-as-proposed.wetcircuit")
UNDER_WATCH = (
    "import sys; from tests.no_network import forbid_network; forbid_network();"
    " from circuitcheck.__main__ import main; sys.argv = ['circuitcheck', *sys.argv[1:]]; sys.exit(main())"
)


def ended(*arguments: str, home: Path) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, *arguments],
        env={**os.environ, "HOME": str(home), "QT_QPA_PLATFORM": "offscreen"},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )


@pytest.mark.parametrize("how", ["python", "qt"])
def test_who_asks_for_it_is_ended(how: str, tmp_path: Path) -> None:
    done = ended("-m", "tests.no_network", how, home=tmp_path)
    assert done.returncode == -signal.SIGSYS
    assert done.stdout == "forbidden\n"


def test_who_does_not_ask_goes_on(tmp_path: Path) -> None:
    done = ended("-m", "tests.no_network", home=tmp_path)
    assert (done.returncode, done.stdout) == (0, "forbidden\nstill there\n")


@pytest.mark.parametrize(
    "arguments",
    [
        ("check", "--cures", HOUSE),
        ("check", "--jobs", "2", HOUSE, HOUSE),
        ("report", HOUSE, "--to", "out.pdf"),
        ("report", HOUSE, "--to", "out.html"),
    ],
)
def test_no_command_asks_for_it(arguments: tuple[str, ...], tmp_path: Path) -> None:
    arguments = tuple(str(tmp_path / each) if each.startswith("out.") else each for each in arguments)
    done = ended("-c", UNDER_WATCH, *arguments, home=tmp_path)
    assert done.returncode in (0, 1), done.stderr
    assert "Traceback" not in done.stderr
