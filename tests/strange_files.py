"""Tries strange files: a program of its own, so that its memory is that of reading and judging them alone.

`python -m tests.strange_files FIRST LAST` tries the batches of these seeds and prints one line of JSON.
"""

from __future__ import annotations

import json
import sys
import time
from dataclasses import asdict, dataclass
from datetime import date
from random import Random

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.parts_list import parts_list
from circuitcheck.report import parts, sizes
from circuitcheck.report.as_csv import as_csv
from circuitcheck.report.as_json import as_json
from circuitcheck.report.as_sarif import as_sarif
from circuitcheck.report.as_text import as_text
from circuitcheck.report.checked import told_of
from circuitcheck.storage.reading import DrawingError, parse
from circuitcheck.storage.writing import dump
from tests.storage.hostile import file_bytes, samples

TODAY = date(2030, 1, 31)
READ, JUDGED = 250, 6
"""Files of a batch that are read, and drawings of them that go through everything."""
MOST_S = 2.0
KIB_A_MIB = 1024 if sys.platform == "linux" else 1024 * 1024
"""The most memory is told in KiB on Linux, in bytes on macOS."""


def outputs(drawing: Drawing, file: str = "a.wetcircuit") -> dict[str, str]:
    """All that the command line says of a drawing, by the form it is said in."""
    checked = [told_of(file, analyse(drawing), TODAY)]
    found, listed = sizes.sized(file, drawing), parts_list(drawing)
    return {
        "text": as_text(checked),
        "json": as_json(checked),
        "csv": as_csv(checked),
        "sarif": as_sarif(checked),
        "sizes text": sizes.as_text(found),
        "sizes json": sizes.as_json(found),
        "sizes csv": sizes.as_csv(found),
        "parts text": parts.as_text(file, listed),
        "parts json": parts.as_json(file, listed),
        "parts csv": parts.as_csv(listed),
    }


@dataclass
class Tried:
    """How many files were tried, and the most that one of them took."""

    files: int = 0
    judged: int = 0
    read_s: float = 0.0
    judged_s: float = 0.0

    def batch(self, seed: int) -> None:
        """Try the files of one batch: each is a drawing or refused, and what can be read can be told and saved."""
        chance, known, judged = Random(seed), samples(), 0
        refused, read_whole = 0, 0
        for _ in range(READ):
            data = file_bytes(chance, known)
            begun = time.process_time()
            try:
                drawing = parse(data, "strange.wetcircuit")
            except DrawingError as error:
                refused += bool(error.faults and str(error))
                continue
            finally:
                self.files += 1
                self.read_s = max(self.read_s, time.process_time() - begun)
                assert self.read_s < MOST_S, data
            read_whole += 1
            saved = dump(drawing)
            assert dump(parse(saved, "saved.wetcircuit")) == saved
            if judged < JUDGED:
                judged += 1
                analysis = analyse(drawing)
                assert analysis.crashed == (), (analysis.why_not_judged, data)
                assert all(outputs(drawing).values())
                self.judged_s = max(self.judged_s, time.process_time() - begun)
                assert self.judged_s < 5 * MOST_S, data
        assert 0 < refused == READ - read_whole
        assert judged == JUDGED
        self.judged += judged


def main(first: int, last: int) -> None:
    """Try the batches with the seeds from `first` to `last`, and tell of it."""
    # Not on every system.
    import resource

    tried = Tried()
    for seed in range(first, last + 1):
        tried.batch(seed)
    most_mib = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / KIB_A_MIB
    print(json.dumps(asdict(tried) | {"most_mib": most_mib}))


if __name__ == "__main__":
    main(int(sys.argv[1]), int(sys.argv[2]))
