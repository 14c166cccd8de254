"""When a position that leaves no way round is excused, and the finding made of one that is not."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.circuit.positions import part_of, shown
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
    valve is shut. Then only positions with a motor valve open count, and those need thermostatic
    heads shut: advice. `shut_in` gives a smallest position, with given labels never shut; `is_open`
    tells whether a loop is left with these labels shut.
    """
    worst = shut_in(frozenset())
    if worst is None:
        return None
    motors = motor_labels(case, labels)
    excuse, missing = _excuse(case, tuple(heats)) if motors else (False, ())
    if missing:
        return proved(Grade.UNANSWERED, worst, labels, is_open, missing)
    if not excuse:
        return proved(Grade.FAULT, worst, labels, is_open)
    one_kept_open = [shut_in(frozenset({motor})) for motor in sorted(motors)]
    by_heads = [each for each in [shut_in(motors), *one_kept_open] if each is not None and each - motors]
    if not by_heads:
        return None
    fewest = min(by_heads, key=lambda each: (len(each), sorted(each)))
    return proved(Grade.ADVICE, fewest, labels - motors, is_open)


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
