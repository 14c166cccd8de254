"""Every field that somebody may fill in says what it means."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.fields import CONTROL_FIELDS, DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.parts.catalogue import kinds
from circuitcheck.parts.field_help import FIELD_HELP
from circuitcheck.parts.kind import Field

FIELDS = {
    (owner, field.name): field
    for owner, fields in (
        *((kind.name, kind.fields) for kind in kinds().values()),
        ("pipe", PIPE_FIELDS),
        ("design", DESIGN_FIELDS),
        ("sheet", SHEET_FIELDS),
        ("control", CONTROL_FIELDS),
    )
    for field in fields
}


@pytest.mark.parametrize("field", FIELDS.values(), ids=lambda field: field.name)
def test_it_explains_itself_in_a_sentence(field: Field) -> None:
    assert field.help.endswith(".") and field.help[:1].isupper()
    assert field.help.strip(".").casefold() != field.label.casefold()


def test_nothing_explains_a_field_that_is_not_there() -> None:
    assert set(FIELD_HELP) <= {field.name for field in FIELDS.values()}
