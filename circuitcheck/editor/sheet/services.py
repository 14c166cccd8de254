"""What each pipe carries, for its colour and line."""

from __future__ import annotations

from collections.abc import Mapping

from circuitcheck.drawing.value import Drawing


def service_names(drawing: Drawing) -> Mapping[str, str]:
    """Each pipe's service by its name, as the circuit shows it."""
    from circuitcheck.circuit.services import services

    return {pipe: str(service) for pipe, service in services(drawing).items()}
