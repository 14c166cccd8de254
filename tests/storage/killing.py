"""Kills processes that edit and save, at any moment, and looks at what is left: a program of its own.

`python -m tests.storage.killing TRIALS SEED` prints one line of JSON. Nothing but this runs in it, so that it
may fork: a trial costs no start of Python.
"""

from __future__ import annotations

import json
import os
import random
import signal
import sys
import tempfile
import time
from dataclasses import dataclass
from pathlib import Path

from circuitcheck.drawing.edits import set_title
from circuitcheck.storage.keeper import Keeper
from circuitcheck.storage.reading import read
from circuitcheck.storage.recovery import Origin, left_behind, take
from circuitcheck.storage.saver import save_bytes
from circuitcheck.storage.writing import dump

AT_ONCE = 12
LONGEST_S = 2.0
MAY_BE_LOST_S = 1.0
SAMPLE = Path(__file__).parents[2] / "samples" / "cottage.wetcircuit"


@dataclass(frozen=True, slots=True)
class Trial:
    """A process that edits, what it tells, and when it is killed."""

    pid: int
    told: int
    folder: Path
    dies_at_s: float


def edit(folder: Path, told: int, seed: int) -> None:
    """In the child: a step every few hundredths of a second, now and then a save. The title counts the steps."""
    chance = random.Random(seed)
    keeper = Keeper(folder / "recovery", lambda _: None)
    file = folder / "drawing.wetcircuit"
    drawing = read(file)
    # The child's own pace, not the wall's: on a busy machine its two threads starve alike.
    now = 0.0
    for step in range(1, 10_000):
        drawing = set_title(drawing, str(step))
        keeper.keep(drawing, Origin(file, None))
        os.write(told, f"step {step} {now}\n".encode())
        if chance.random() < 0.05:
            os.write(told, f"saving {step} {now}\n".encode())
            save_bytes(file, dump(drawing))
            keeper.forget()
            os.write(told, f"saved {step} {now}\n".encode())
        pause_s = chance.uniform(0, 0.06)
        time.sleep(pause_s)
        now += pause_s


def begin(folder: Path, seed: int) -> Trial:
    """Start a trial in an empty folder."""
    folder.mkdir()
    save_bytes(folder / "drawing.wetcircuit", dump(set_title(read(SAMPLE), "0")))
    reading, writing = os.pipe()
    pid = os.fork()
    if pid == 0:
        os.close(reading)
        try:
            edit(folder, writing, seed)
        finally:
            os._exit(3)
    os.close(writing)
    return Trial(pid, reading, folder, time.monotonic() + random.Random(~seed).uniform(0, LONGEST_S))


def end(trial: Trial) -> tuple[str, float]:
    """Kill it, and say what is wrong with what is left (nothing: empty), and how old the newest lost step is."""
    time.sleep(max(0.0, trial.dies_at_s - time.monotonic()))
    os.kill(trial.pid, signal.SIGKILL)
    _, status = os.waitpid(trial.pid, 0)
    with os.fdopen(trial.told, encoding="ascii") as pipe:
        said = [line.split() for line in pipe if line.endswith("\n")]
    if os.waitstatus_to_exitcode(status) != -signal.SIGKILL:
        return f"it ended by itself with {status}", 0.0
    steps = {int(number): float(at) for what, number, at in said if what == "step"}
    saved = [int(number) for what, number, _ in said if what == "saved"]
    saving = [int(number) for what, number, _ in said if what == "saving"]
    on_file = int(read(trial.folder / "drawing.wetcircuit").title)
    if on_file not in {0, *saving} or on_file < max(saved, default=0):
        return f"the file holds step {on_file}, saved was {saved[-1:]}", 0.0
    left = left_behind(trial.folder / "recovery")
    if len(left) > 1:
        return f"{len(left)} drawings were left behind", 0.0
    kept = max([on_file, *(int(take(each)[1].title) for each in left)])
    killed_at = max(steps.values(), default=0.0)
    lost = [killed_at - at for step, at in steps.items() if step > kept]
    return "", max(lost, default=0.0)


def main(trials: int, seed: int) -> int:
    """Run the trials, some at a time."""
    wrong: list[str] = []
    oldest_s = 0.0
    with tempfile.TemporaryDirectory() as name:
        for first in range(0, trials, AT_ONCE):
            numbers = range(first, min(first + AT_ONCE, trials))
            running = [begin(Path(name) / str(number), seed * 1_000_000 + number) for number in numbers]
            for trial in sorted(running, key=lambda each: each.dies_at_s):
                fault, lost_s = end(trial)
                if lost_s > MAY_BE_LOST_S:
                    fault = f"a step {lost_s:.2f} s old was lost"
                oldest_s = max(oldest_s, lost_s)
                wrong += [f"{trial.folder.name}: {fault}"] if fault else []
    print(json.dumps({"trials": trials, "wrong": wrong, "oldest_lost_s": round(oldest_s, 3)}))
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(int(sys.argv[1]), int(sys.argv[2])))
