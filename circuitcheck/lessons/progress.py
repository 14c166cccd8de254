"""What an apprentice has practised, kept in one file on the machine it was practised on, and nowhere else."""

from __future__ import annotations

import csv
import io
import os
from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

import msgspec

from circuitcheck.lessons.generator import Exercise
from circuitcheck.lessons.scoring import Outcome, Score
from circuitcheck.report.plain import cell
from circuitcheck.storage.saver import save_bytes

VERSION = 1
MOST_BYTES = 64 * 1024 * 1024


class ProgressError(ValueError):
    """The file is none of practice; the text is one sentence for the user."""


class Practised(msgspec.Struct, frozen=True, forbid_unknown_fields=False):
    """One exercise that was answered: when (a date as in ISO 8601), what it was, and what came of it.

    `faults` holds check and outcome of each fault; `false` the reasons of the false accusations.
    """

    date: str
    seed: int
    arrangement: str
    faults: tuple[tuple[str, Outcome], ...]
    false: tuple[str, ...] = ()


class Log(msgspec.Struct, frozen=True):
    """All exercises answered, oldest first."""

    circuitcheck_practice: int = VERSION
    exercises: tuple[Practised, ...] = ()


@dataclass(frozen=True, slots=True)
class Tally:
    """Of one check: how often its fault was put in, found, found for another reason, and accused wrongly."""

    seen: int = 0
    found: int = 0
    wrong_reason: int = 0
    false: int = 0

    @property
    def share(self) -> float:
        """How surely it is known, 0 to 1: found by times put in and times accused wrongly. What was never
        met counts as known by half."""
        return (self.found + 0.5 * self.wrong_reason + 0.5) / (self.seen + self.false + 1)


def read(path: str | os.PathLike[str]) -> Log:
    """The log in a file; an empty one where there is no file. Raises ProgressError, and OSError as `open` does."""
    try:
        with open(path, "rb") as file:
            data = file.read(MOST_BYTES + 1)
    except FileNotFoundError:
        return Log()
    if len(data) > MOST_BYTES:
        raise ProgressError("The file of practice is too large to be one.")
    try:
        log = msgspec.json.decode(data, type=Log)
    except msgspec.MsgspecError as error:
        raise ProgressError(f"The file of practice cannot be read: {error}.") from error
    if log.circuitcheck_practice > VERSION:
        raise ProgressError("The file of practice was written by a later version of this program.")
    return log


def write(log: Log, path: str | os.PathLike[str]) -> None:
    """Put the log into a file, whole or not at all. Raises SaveError."""
    save_bytes(path, as_json(log))


def with_exercise(log: Log, exercise: Exercise, score: Score, date: str) -> Log:
    """The log with one more exercise, answered on that date."""
    done = Practised(
        date,
        exercise.seed,
        exercise.arrangement,
        tuple((told.planted.check, told.outcome) for told in score.told),
        tuple(mark.reason for mark in score.false),
    )
    return Log(exercises=(*log.exercises, done))


def tallies(log: Log) -> Mapping[str, Tally]:
    """The tally of every check that was met or named, sorted by name."""
    outcomes = Counter(fault for each in log.exercises for fault in each.faults)
    false = Counter(reason for each in log.exercises for reason in each.false)
    names = sorted({check for check, _ in outcomes} | set(false))
    return {
        name: Tally(
            sum(outcomes[name, outcome] for outcome in Outcome),
            outcomes[name, Outcome.FOUND],
            outcomes[name, Outcome.WRONG_REASON],
            false[name],
        )
        for name in names
    }


def suggested(log: Log, kinds: Iterable[str], most: int = 5) -> tuple[str, ...]:
    """The kinds to practise next: the least surely known first, of equals those met least, then by name."""
    known = tallies(log)
    unmet = Tally()

    def order(kind: str) -> tuple[float, int, str]:
        tally = known.get(kind, unmet)
        return tally.share, tally.seen, kind

    return tuple(sorted(kinds, key=order)[:most])


def as_json(log: Log) -> bytes:
    """The log as JSON, an exercise a line."""
    lines = b",\n".join(b"    " + msgspec.json.encode(each) for each in log.exercises)
    middle = b"\n" + lines + b"\n  " if log.exercises else b""
    return b'{\n  "circuitcheck_practice": %d,\n  "exercises": [%s]\n}\n' % (VERSION, middle)


def as_csv(log: Log) -> str:
    """The log as a table, a row a fault and a row a false accusation, oldest first."""
    told = io.StringIO()
    table = csv.writer(told, lineterminator="\r\n")
    table.writerow(("date", "seed", "arrangement", "check", "outcome"))
    for each in log.exercises:
        rows = [*each.faults, *((reason, "false accusation") for reason in each.false)]
        for check, outcome in rows:
            table.writerow(
                [cell(text) for text in (each.date, str(each.seed), each.arrangement, check, str(outcome))]
            )
    return told.getvalue()
