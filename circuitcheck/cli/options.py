"""What several commands take alike: how work on many files is done."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from circuitcheck.cli.printing import say

if TYPE_CHECKING:
    from circuitcheck.folders.running import Ways


def add_ways(parser: argparse.ArgumentParser) -> None:
    """Declare how many files at a time, where, and whether to go on with an earlier run."""
    where = parser.add_mutually_exclusive_group()
    where.add_argument(
        "--jobs", type=_jobs, default=None, metavar="N", help="so many files at a time (for many, every core)"
    )
    where.add_argument(
        "--cluster",
        default="",
        metavar="ADDRESS",
        help="work on the cluster whose Dask scheduler is there, as in tcp://10.0.0.5:8786",
    )
    parser.add_argument(
        "--resume", action="store_true", help="take over what an earlier run of this call did, where it holds"
    )
    parser.add_argument(
        "--state", type=Path, default=None, metavar="FILE", help="keep answers there, for --resume"
    )


def add_day(parser: argparse.ArgumentParser, says: str) -> None:
    """Declare the day that is taken for today."""
    parser.add_argument("--on", type=date.fromisoformat, default=None, metavar="DATE", help=says)


def ways(parsed: argparse.Namespace, command: str, paths: Sequence[Path]) -> Ways:
    """What `add_ways` took; `paths` tell this call from others."""
    from circuitcheck.folders.keeping import usual_place
    from circuitcheck.folders.running import Ways

    return Ways(usual_place(command, paths), parsed.jobs, parsed.cluster, parsed.resume, parsed.state)


def faultless(work: Callable[[], int]) -> int:
    """The status of work on many files; what ends it early is said in a sentence."""
    from circuitcheck.cli.status import FAILED, INTERRUPTED
    from circuitcheck.folders.failing import FolderError, InterruptedRunError

    try:
        return work()
    except InterruptedRunError as error:
        say(str(error))
        return INTERRUPTED
    except FolderError as error:
        say(str(error))
        return FAILED


def _jobs(text: str) -> int:
    number = int(text)
    if number < 1:
        raise argparse.ArgumentTypeError("at least 1")
    return number
