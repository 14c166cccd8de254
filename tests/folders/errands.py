"""An errand for the tests: slow, deadly or broken as each file's content says."""

from __future__ import annotations

import os
import sys
import time
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from circuitcheck.folders.checking import File
from circuitcheck.folders.errand import Made
from circuitcheck.folders.running import Run, Ways


@dataclass(frozen=True, slots=True)
class Reading:
    """The answer is the file's content, in capitals. Each file worked on leaves a mark in a folder."""

    marks: Path
    day: str = "Monday"

    def bound(self) -> Mapping[str, str]:
        return {"the date": self.day}

    def made(self, data: bytes, task: File) -> Made:
        words = data.decode().split()
        mark = self.marks / task.source.name
        was_here = mark.exists()
        mark.write_text(f"{time.monotonic_ns()}")
        if words[0] == "slow":
            time.sleep(0.03)
        if words[0] == "deadly" or (words[0] == "once" and not was_here):
            os._exit(7)
        if words[0] == "broken":
            raise RuntimeError("out of order")
        return Made(data.decode().upper())

    def put(self, made: Made, task: File) -> Made:
        return made

    def refused(self, task: File, reason: str) -> str:
        return f"{task.source.name}: {reason}"

    def stands(self, answer: str, task: File) -> bool:
        return "GONE" not in answer


def files(folder: Path, words: list[str]) -> list[File]:
    """A file for each word."""
    folder.mkdir(exist_ok=True)
    found = []
    for number, word in enumerate(words):
        path = folder / f"{number:03}"
        path.write_text(f"{word} {number}")
        found.append(File(path))
    return found


def main() -> None:
    """Work on every file of a folder: folder, marks, state."""
    folder, marks, state = map(Path, sys.argv[1:])
    tasks = [File(path) for path in sorted(folder.iterdir())]
    with Run(Reading(marks), tasks, Ways(state, state=state, resume=True, jobs=2), print):
        pass


if __name__ == "__main__":
    main()
