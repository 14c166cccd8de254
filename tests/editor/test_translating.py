"""Texts of the window: without a translation they are what they say."""

from __future__ import annotations

from circuitcheck.editor.translating import tr, tr_n


def test_without_a_translation_a_text_is_itself() -> None:
    assert tr("Not joined") == "Not joined"
    assert tr("Valve {name} is shut", name="V1") == "Valve V1 is shut"


def test_a_value_is_never_read_as_a_template() -> None:
    assert tr("Valve {name} is shut", name="{count}") == "Valve {count} is shut"


def test_one_and_many() -> None:
    assert tr_n("{count} part", "{count} parts", 1) == "1 part"
    assert tr_n("{count} part", "{count} parts", 0) == "0 parts"
