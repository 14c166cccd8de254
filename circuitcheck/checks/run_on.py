"""When a position that leaves no way round is excused, and the finding made of one that is not."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.circuit.labels import other_leg, part_of, shown
from circuitcheck.finding import Grade, Witness
from circuitcheck.parts.kind import Passage, Way

NOT_KNOWN = "Whether that is excused rests on what is not known: {missing}."

ShutIn = Callable[[frozenset[str]], frozenset[str] | None]
IsOpen = Callable[[frozenset[str]], bool]


@dataclass(frozen=True, slots=True)
class Ruling:
    """The grade a proved position has, the position, every passage that proves it alone, and what
    is missing where that is unanswered."""

    grade: Grade
    labels: frozenset[str]
    alone: frozenset[str] = frozenset()
    missing: tuple[str, ...] = ()

    def witness(self, case: Case) -> Witness:
        """The position as a witness, in the order of the drawing; and what does it alone."""
        place = {id: number for number, id in enumerate(case.drawing.components)}

        def ordered(labels: frozenset[str]) -> list[str]:
            return sorted(labels, key=lambda label: (place[part_of(label)], label))

        shut = ordered(self.labels)
        return Witness(
            tuple(shown(label) for label in shut),
            tuple(shown(label) for label in ordered(self.alone)),
            tuple(dict.fromkeys(part_of(label) for label in shut)),
        )


def motor_labels(case: Case, labels: frozenset[str]) -> frozenset[str]:
    """Those of the labels that are passages shut by a motor."""
    return frozenset(label for label in labels if _is_motor(case, part_of(label)))


def _is_motor(case: Case, part: str) -> bool:
    passages: tuple[Passage, ...] = case.circuit.plans[part].passages
    return any(passage.way is Way.MOTOR for passage in passages)


def rule(
    case: Case,
    heats: Iterable[str],
    labels: frozenset[str],
    shut_in: ShutIn,
    is_open: IsOpen,
) -> Ruling | None:
    """What a water with these labels deserves; None where every reachable position has a way round.

    Excused: no run-on, no least flow, and end switches that stop heat and pump once every motor
    valve is shut. They do not stop it while one stands open: a position in which others then leave
    no way round is a fault all the same, and advice where it needs thermostatic heads. `shut_in`
    gives a smallest position, with given labels never shut; `is_open` tells whether a loop is left
    with these labels shut.
    """
    worst = shut_in(frozenset())
    if worst is None:
        return None
    motors = motor_labels(case, labels)
    excuse, missing = _excuse(case, tuple(heats)) if motors else (False, ())
    if not excuse:
        return proved(Grade.FAULT, worst, labels, is_open)
    calling = _calling(motors)
    by_motors = _fewest(shut_in((labels - motors) | {motor}) for motor in calling)
    if by_motors is not None:
        return proved(Grade.FAULT, by_motors, labels, is_open)
    if missing:
        return proved(Grade.UNANSWERED, worst, labels, is_open, missing)
    by_heads = _fewest(shut_in(frozenset({motor})) for motor in calling)
    return None if by_heads is None else proved(Grade.ADVICE, by_heads, labels - motors, is_open)


def _calling(motors: frozenset[str]) -> list[str]:
    """The valves whose end switches call: those with two ports; the legs of three-port valves only
    where there is no other, since one of them stands open whether anything calls or not."""
    two_port = sorted(label for label in motors if not other_leg(label))
    return two_port or sorted(motors)


def _fewest(positions: Iterable[frozenset[str] | None]) -> frozenset[str] | None:
    known = [each for each in positions if each is not None]
    return min(known, key=lambda each: (len(each), sorted(each)), default=None)


def proved(
    grade: Grade,
    position: frozenset[str],
    labels: frozenset[str],
    is_open: IsOpen,
    missing: tuple[str, ...] = (),
) -> Ruling:
    """A ruling with that position; where it is one passage, with every other of `labels` that does
    it alone too."""
    single = len(position) == 1
    alone = frozenset(label for label in labels if not is_open(frozenset({label}))) if single else frozenset()
    return Ruling(grade, position, alone, missing)


def _excuse(case: Case, heats: tuple[str, ...]) -> tuple[bool, tuple[str, ...]]:
    """Whether the plant may be excused, and the numbers that would have to be known to say so."""
    missing = []
    for heat in heats:
        for field in ("pump_overrun_min", "minimum_flow_lpm"):
            value = case.value(heat, field)
            if value is None:
                missing.append(f"{heat}.{field}")
            elif value > 0:
                return False, ()
    called_by = case.design("heat_called_by")
    if called_by == "programmer_only":
        return False, ()
    if called_by is None:
        missing.append("design.heat_called_by")
    return True, tuple(missing)
