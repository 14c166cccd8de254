"""The same work on a cluster of this machine: a scheduler and two worker processes, on 127.0.0.1 only."""

from __future__ import annotations

import json
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from circuitcheck.cli import run
from circuitcheck.folders.cluster import _Work
from circuitcheck.shipped import data_path
from tests.cli.drawings import sound, write

pytest.importorskip("distributed", reason="the extra `cluster` is not installed")
psutil: Any = pytest.importorskip("psutil", reason="what the extra `cluster` needs")

ROOT = Path(__file__).parents[2]
FILES = 6
Capture = pytest.CaptureFixture[str]


class Cluster:
    """A scheduler and workers, each a process of its own."""

    def __init__(self, folder: Path) -> None:
        self._told = folder / "scheduler.json"
        self._log = (folder / "log").open("w")
        self._processes = [
            self._start("dask_scheduler", "--host", "127.0.0.1", "--port", "0", "--no-dashboard", "--no-show",
                        "--scheduler-file", str(self._told))
        ]  # fmt: skip
        self.address = self._address()

    def _address(self) -> str:
        """Where the scheduler is reached. It makes its file first and writes into it then."""
        end = time.monotonic() + 60
        while True:
            try:
                return str(json.loads(self._told.read_text())["address"])
            except (FileNotFoundError, json.JSONDecodeError):
                if time.monotonic() > end:
                    self.stop()
                    raise
                time.sleep(0.05)

    def worker(self) -> subprocess.Popen[bytes]:
        """Start one more worker of one thread."""
        made = self._start("dask_worker", self.address, "--host", "127.0.0.1", "--nthreads", "1", "--no-nanny",
                           "--no-dashboard", "--memory-limit", "0")  # fmt: skip
        self._processes.append(made)
        return made

    def _start(self, module: str, *more: str) -> subprocess.Popen[bytes]:
        call = [sys.executable, "-m", f"distributed.cli.{module}", *more]
        return subprocess.Popen(call, cwd=ROOT, stdout=self._log, stderr=self._log)

    def stop(self) -> None:
        """End every process."""
        for each in reversed(self._processes):
            each.kill()
            each.wait()
        self._log.close()


@pytest.fixture(scope="module")
def cluster(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Cluster]:
    made = Cluster(tmp_path_factory.mktemp("cluster"))
    try:
        made.worker()
        made.worker()
        yield made
    finally:
        made.stop()


def called(*arguments: str) -> subprocess.CompletedProcess[bytes]:
    return subprocess.run(
        [sys.executable, "-m", "circuitcheck", *arguments], cwd=ROOT, capture_output=True, check=False
    )


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """The samples, one drawing more and one that is broken."""
    made = tmp_path / "drawings"
    made.mkdir()
    for sample in sorted(data_path("samples").glob("*.wetcircuit"))[:8]:
        (made / sample.name).write_bytes(sample.read_bytes())
    write(made / "hall.wetcircuit", sound())
    (made / "torn.wetcircuit").write_text('{"wetcircuit": 1, ')
    return made


@pytest.mark.slow
@pytest.mark.parametrize("form", ["text", "sarif"])
def test_check_prints_the_same_bytes(cluster: Cluster, folder: Path, form: str) -> None:
    call = ["check", str(folder), "--as", form, "--on", "2026-11-25"]
    here, there = called(*call), called(*call, "--cluster", cluster.address)
    assert there.stdout == here.stdout and here.stdout
    assert (there.returncode, there.stderr) == (here.returncode, here.stderr)


@pytest.mark.slow
def test_report_writes_the_same_files(cluster: Cluster, folder: Path, tmp_path: Path) -> None:
    written = []
    for name, more in (("here", ()), ("there", ("--cluster", cluster.address))):
        out = tmp_path / name
        out.mkdir()
        called("report", str(folder), "-o", str(out), "--as", "svg", "--on", "2026-11-25", *more)
        written.append({path.name: path.read_bytes() for path in out.iterdir()})
    assert written[0] == written[1]
    assert len(written[0]) == 10 and "index.html" in written[0]


@pytest.mark.slow
def test_a_worker_that_dies_is_told_of_and_its_files_are_done_by_another(tmp_path: Path) -> None:
    folder = tmp_path / "drawings"
    folder.mkdir()
    for number in range(FILES):
        write(folder / f"{number:03}.wetcircuit", {**sound(), "title": f"Hall {number}"})
    made = Cluster(tmp_path)
    try:
        made.worker()
        from distributed import Client

        library: Any = Client
        client = library(made.address, set_as_default=False)
        client.wait_for_workers(1, timeout=60)
        (other,) = client.nthreads()
        dies = made.worker()
        client.wait_for_workers(2, timeout=60)
        (place,) = client.nthreads().keys() - {other}
        # It takes files and does none of them; else it could have done its share before it dies.
        psutil.Process(dies.pid).suspend()
        call = ["check", str(folder), "--as", "json", "--cluster", made.address]
        work = subprocess.Popen(
            [sys.executable, "-m", "circuitcheck", *call],
            cwd=ROOT,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
        )
        end = time.monotonic() + 60
        while time.monotonic() < end and not client.processing()[place]:
            time.sleep(0.02)
        dies.kill()
        client.close()
        out, err = work.communicate(timeout=120)
    finally:
        made.stop()
    assert [each["error"] for each in json.loads(out)["files"]] == [None] * FILES
    assert b" is gone; what it had not done is given to another" in err


class Leaving:
    """The library's client, whose scheduler goes as soon as all is done."""

    status = "running"

    def __init__(self) -> None:
        self.asked = 0

    def nthreads(self) -> dict[str, int]:
        from distributed.comm.core import CommClosedError

        self.asked += 1
        if self.asked > 1:
            raise CommClosedError
        return {"tcp://127.0.0.1:1": 1}


def test_a_scheduler_that_goes_once_all_is_done_spoils_nothing() -> None:
    client, said = Leaving(), list[str]()
    errand: Any = None
    assert list(_Work(errand, client, "tcp://127.0.0.1:9", said.append).all([])) == []
    assert (client.asked, said) == (2, [])


@pytest.mark.filterwarnings("default")
def test_where_no_scheduler_answers_that_is_said(
    tmp_path: Path, capsys: Capture, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("circuitcheck.folders.cluster.CONNECT_S", 1)
    hall = write(tmp_path / "hall.wetcircuit", sound())
    assert run(["check", str(hall), "--cluster", "tcp://127.0.0.1:9"]) == 2
    assert "no scheduler answers there" in capsys.readouterr().err


def test_without_the_extra_it_is_said(
    tmp_path: Path, capsys: Capture, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(sys.modules, "distributed", None)
    hall = write(tmp_path / "hall.wetcircuit", sound())
    assert run(["check", str(hall), "--cluster", "tcp://127.0.0.1:9"]) == 2
    assert "pip install circuitcheck[cluster]" in capsys.readouterr().err
