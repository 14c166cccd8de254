"""History: the steps of a drawing, each with its name and the whole drawing before and after it. No Qt."""

from __future__ import annotations

from dataclasses import dataclass

from circuitcheck.drawing.value import Drawing


@dataclass(frozen=True, slots=True)
class Step:
    """One step: what it is called (`Move pump`), and the drawing before and after it."""

    name: str
    before: Drawing
    after: Drawing


class History:
    """The steps made and taken back. Drawings share what a step did not touch, so all are kept."""

    def __init__(self, drawing: Drawing) -> None:
        self._start = drawing
        self._steps: list[Step] = []
        self._done = 0

    @property
    def drawing(self) -> Drawing:
        """The drawing as it stands."""
        return self._steps[self._done - 1].after if self._done else self._start

    @property
    def last(self) -> Step | None:
        """The step that undo takes back; None where there is none."""
        return self._steps[self._done - 1] if self._done else None

    @property
    def next(self) -> Step | None:
        """The step that redo makes again; None where there is none."""
        return self._steps[self._done] if self._done < len(self._steps) else None

    def do(self, name: str, drawing: Drawing) -> Step:
        """Make a step; those taken back before are gone."""
        step = Step(name, self.drawing, drawing)
        del self._steps[self._done :]
        self._steps.append(step)
        self._done += 1
        return step

    def undo(self) -> Step | None:
        """Take the last step back; returns it, or None where there is none."""
        step = self.last
        self._done -= step is not None
        return step

    def redo(self) -> Step | None:
        """Make the next step again; returns it, or None where there is none."""
        step = self.next
        self._done += step is not None
        return step


def new_ids(before: Drawing, after: Drawing) -> set[str]:
    """The parts and pipes that a step brought, or that undoing one brought back."""
    return (after.components.keys() - before.components.keys()) | (after.pipes.keys() - before.pipes.keys())
