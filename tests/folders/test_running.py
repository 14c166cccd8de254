"""Many files: what is kept, what is taken over and what never is, and what a process that dies costs."""

from __future__ import annotations

import os
import sqlite3
import subprocess
import sys
import time
from pathlib import Path

import pytest

from circuitcheck.folders import fingerprint
from circuitcheck.folders.checking import File
from circuitcheck.folders.failing import InterruptedRunError, StateError
from circuitcheck.folders.progress import words
from circuitcheck.folders.running import Run, Ways
from tests.folders.errands import Reading, files

ROOT = Path(__file__).parents[2]


class Desk:
    """Files, a state, what was said and how many files were worked on since last asked."""

    def __init__(self, folder: Path, names: list[str]) -> None:
        self.marks, self.state = folder / "marks", folder / "a.state"
        self.marks.mkdir()
        self.tasks = files(folder / "files", names)
        self.said: list[str] = []

    def run(self, *, resume: bool = True, jobs: int = 1, day: str = "Monday") -> list[str]:
        ways = Ways(self.state, jobs=jobs, resume=resume, state=self.state)
        with Run(Reading(self.marks, day), self.tasks, ways, self.said.append) as answers:
            assert list(answers) == list(answers)
            return list(answers)

    def worked_on(self) -> int:
        marks = list(self.marks.iterdir())
        for mark in marks:
            mark.unlink()
        return len(marks)


@pytest.fixture
def desk(tmp_path: Path) -> Desk:
    return Desk(tmp_path, ["quick"] * 6)


@pytest.mark.parametrize("jobs", [1, 3])
def test_answers_come_in_the_order_of_the_files(desk: Desk, jobs: int) -> None:
    assert desk.run(jobs=jobs) == [f"QUICK {number}" for number in range(6)]


class TestTakenOver:
    def test_all_that_is_as_it_was(self, desk: Desk) -> None:
        first = desk.run()
        assert desk.worked_on() == 6
        assert desk.run() == first
        assert desk.worked_on() == 0
        assert desk.said == ["6 of 6 files are taken over from an earlier run"]

    def test_nothing_unless_it_is_asked_for(self, desk: Desk) -> None:
        desk.run()
        desk.worked_on()
        desk.run(resume=False)
        assert desk.worked_on() == 6

    def test_not_a_file_that_changed(self, desk: Desk) -> None:
        desk.run()
        desk.worked_on()
        changed = desk.tasks[2].source
        times = changed.stat()
        changed.write_text("quick 7")
        # Its size and times are as they were: only the content tells.
        os.utime(changed, ns=(times.st_atime_ns, times.st_mtime_ns))
        assert desk.run()[2] == "QUICK 7"
        assert desk.worked_on() == 1

    def test_not_another_days_answers(self, desk: Desk) -> None:
        desk.run()
        desk.worked_on()
        desk.run(day="Tuesday")
        assert desk.worked_on() == 6
        assert desk.said == ["nothing is taken over: not the same as then: the date"]
        desk.run(day="Monday")
        assert desk.worked_on() == 6

    @pytest.mark.parametrize("what", ["program", "rules"])
    def test_not_another_programs_or_rule_books(
        self, desk: Desk, monkeypatch: pytest.MonkeyPatch, what: str
    ) -> None:
        desk.run()
        desk.worked_on()
        monkeypatch.setattr(fingerprint, what, lambda: "another")
        desk.run()
        assert desk.worked_on() == 6

    def test_not_where_the_document_is_gone(self, tmp_path: Path) -> None:
        desk = Desk(tmp_path, ["quick", "gone"])
        desk.run()
        desk.worked_on()
        desk.run()
        assert desk.worked_on() == 1

    def test_not_an_altered_answer(self, desk: Desk) -> None:
        first = desk.run()
        desk.worked_on()
        base = sqlite3.connect(desk.state)
        base.execute("UPDATE answers SET answer = (SELECT answer FROM answers LIMIT 1)")
        base.execute("UPDATE answers SET content = (SELECT content FROM answers LIMIT 1)")
        base.commit()
        base.close()
        assert desk.run() == first
        assert desk.worked_on() == 5

    def test_not_a_failure_of_the_program(self, tmp_path: Path) -> None:
        desk = Desk(tmp_path, ["broken", "quick"])
        told = desk.run()
        assert told == ["000: the program failed at it: RuntimeError: out of order", "QUICK 1"]
        desk.worked_on()
        assert desk.run() == told
        assert desk.worked_on() == 1

    def test_not_a_file_that_could_not_be_read(self, desk: Desk) -> None:
        away = desk.tasks[0].source
        text = away.read_text()
        away.unlink()
        assert desk.run()[0] == "000: cannot be read: No such file or directory"
        away.write_text(text)
        assert desk.run()[0] == "QUICK 0"


class TestTheStateItself:
    def test_another_programs_file_stays_as_it_is(self, desk: Desk) -> None:
        base = sqlite3.connect(desk.state)
        base.execute("CREATE TABLE letters (text)")
        base.commit()
        base.close()
        before = desk.state.read_bytes()
        with pytest.raises(StateError, match="another program's file"):
            desk.run()
        assert desk.state.read_bytes() == before

    def test_a_text_stays_as_it_is(self, desk: Desk) -> None:
        desk.state.write_text("Dear Sir, " * 200)
        with pytest.raises(StateError, match="no state of an earlier run"):
            desk.run()
        assert desk.state.read_text() == "Dear Sir, " * 200

    def test_two_runs_do_not_share_one(self, desk: Desk) -> None:
        ways = Ways(desk.state, jobs=1, resume=True)
        with (
            Run(Reading(desk.marks), desk.tasks, ways, print),
            pytest.raises(StateError, match="another run"),
        ):
            desk.run()

    def test_without_being_asked_for_it_goes_when_all_is_told(self, desk: Desk, tmp_path: Path) -> None:
        tasks = files(tmp_path / "files", ["quick"] * 70)
        usual = tmp_path / "usual" / "a.state"
        with Run(Reading(desk.marks), tasks, Ways(usual, jobs=1), print) as answers:
            assert usual.exists() and len(list(answers)) == 70
        assert not usual.exists()

    def test_where_none_can_be_the_work_is_done_all_the_same(self, desk: Desk, tmp_path: Path) -> None:
        tasks = files(tmp_path / "files", ["quick"] * 70)
        (tmp_path / "usual").write_text("no folder")
        with Run(Reading(desk.marks), tasks, Ways(tmp_path / "usual" / "a"), print) as answers:
            assert len(list(answers)) == 70


class TestInterrupted:
    def test_ctrl_c_keeps_what_is_done(self, desk: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
        made = Reading.made

        def breaks_off(self: Reading, data: bytes, task: File) -> object:
            if task is desk.tasks[4]:
                raise KeyboardInterrupt
            return made(self, data, task)

        with monkeypatch.context() as patch:
            patch.setattr(Reading, "made", breaks_off)
            with pytest.raises(InterruptedRunError, match=r"4 of 6 files are done and kept; .* --resume"):
                desk.run()
        desk.worked_on()
        assert len(desk.run()) == 6
        assert desk.worked_on() == 2

    @pytest.mark.skipif(os.name == "nt", reason="SIGKILL is not of that system")
    def test_kill_9_loses_a_second_at_most_and_leaves_no_process(self, tmp_path: Path) -> None:
        desk = Desk(tmp_path, ["slow"] * 300)
        call = [sys.executable, "-m", "tests.folders.errands", str(tmp_path / "files"), str(desk.marks)]
        work = subprocess.Popen([*call, str(desk.state)], cwd=ROOT, start_new_session=True)
        end = time.monotonic() + 60
        while len(list(desk.marks.iterdir())) < 160 and time.monotonic() < end:
            time.sleep(0.02)
        work.kill()
        work.wait()
        while _is_any_left(work.pid) and time.monotonic() < end:
            time.sleep(0.05)
        assert not _is_any_left(work.pid)
        desk.worked_on()
        assert desk.run(jobs=2) == [f"SLOW {number}" for number in range(300)]
        assert desk.worked_on() < 300


def _is_any_left(session: int) -> bool:
    try:
        os.killpg(session, 0)
    except ProcessLookupError:
        return False
    # One that has ended and whom nobody has asked for its status is no process any more.
    told = subprocess.run(
        ["ps", "-o", "stat=", "-g", str(session)], capture_output=True, text=True, check=False
    )
    return any(not state.startswith("Z") for state in told.stdout.split())


class TestAProcessThatDies:
    def test_its_files_are_tried_again(self, tmp_path: Path) -> None:
        desk = Desk(tmp_path, ["quick", "once", *["quick"] * 10])
        told = desk.run(jobs=2)
        assert told[1] == "ONCE 1" and len(set(told)) == 12
        assert "a process ended before its work was done" in desk.said[0]

    def test_the_file_it_dies_of_is_reported_and_no_other_is_lost(self, tmp_path: Path) -> None:
        desk = Desk(tmp_path, ["quick", "deadly", *["quick"] * 30])
        told = desk.run(jobs=2)
        assert told[1] == "001: the process that worked on it ended before it was done, 3 times"
        assert [each for place, each in enumerate(told) if place != 1] == [
            f"QUICK {number}" for number in range(32) if number != 1
        ]


def test_progress_is_told_in_words() -> None:
    assert words(100, 900, 10_000, 10.0) == "1,000 of 10,000 files, 10 a second, 15 min left"
    assert words(10, 0, 20, 1.0) == "10 of 20 files, 10 a second, 1 s left"
