"""Work asks whether it is still wanted: it ends where it is not, and what it held is let go."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from threading import Event, Lock

import pytest

from circuitcheck.wanted import NoLongerWantedError, go_on, holding, while_wanted


def test_where_nobody_asked_it_goes_on() -> None:
    go_on()


def test_it_ends_when_it_is_no_longer_wanted() -> None:
    answers = iter((True, True, False))
    done: list[int] = []

    def work() -> None:
        for each in range(9):
            go_on()
            done.append(each)

    with pytest.raises(NoLongerWantedError), while_wanted(lambda: next(answers)):
        work()
    assert done == [0, 1]
    go_on()  # what comes after it is asked no more


def test_what_is_within_asks_only_its_own_question() -> None:
    with while_wanted(lambda: False), while_wanted(lambda: True):
        go_on()


def test_each_thread_has_a_question_of_its_own() -> None:
    with ThreadPoolExecutor(1) as other, while_wanted(lambda: False):
        other.submit(go_on).result()


def test_it_is_no_failure_of_the_program() -> None:
    def catches_failures() -> None:
        try:
            go_on()
        except Exception:
            pytest.fail("taken for a failure")

    with pytest.raises(NoLongerWantedError), while_wanted(lambda: False):
        catches_failures()


def test_a_lock_is_held_and_let_go() -> None:
    lock = Lock()
    with holding(lock):
        assert lock.locked()
    with pytest.raises(NoLongerWantedError), while_wanted(lambda: False), holding(lock):
        go_on()
    assert not lock.locked()


def test_who_waits_for_a_lock_goes_when_it_is_no_longer_wanted() -> None:
    lock, wanted = Lock(), Event()
    wanted.set()

    def waits() -> None:
        with while_wanted(wanted.is_set), holding(lock):
            pytest.fail("it was never let go")

    with lock, ThreadPoolExecutor(1) as other:
        waiting = other.submit(waits)
        wanted.clear()
        with pytest.raises(NoLongerWantedError):
            waiting.result(timeout=20)
        assert lock.locked()
