"""Gathers from a drawing all that a document says of it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date
from pathlib import PurePath

from circuitcheck.analysis import Analysis, analyse
from circuitcheck.circuit.services import services
from circuitcheck.drawing.fields import DESIGN_FIELDS
from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.catalogue import all_figures
from circuitcheck.figures.parts_list import parts_list
from circuitcheck.figures.plant import Plant
from circuitcheck.report import parts as parts_words
from circuitcheck.report.care import CAUTIONS
from circuitcheck.report.document.commissioning import commissioning
from circuitcheck.report.document.content import Content
from circuitcheck.report.document.figures import worked
from circuitcheck.report.document.findings import acceptances, found, judgement
from circuitcheck.report.document.reviewed import notes_told, review_told
from circuitcheck.report.document.telling import retold
from circuitcheck.report.flows import flows
from circuitcheck.report.wording import upper, value_words
from circuitcheck.rules.book import book
from circuitcheck.sheet import depiction
from circuitcheck.sheet.pictures import UNTITLED, Pictures
from circuitcheck.shipped import version
from circuitcheck.told import ENGLISH, Told, Tongue, a_word, dated, worded


def gather(
    drawing: Drawing, file: str, today: date, analysis: Analysis | None = None, tongue: Tongue = ENGLISH
) -> Content:
    """The content of the document of one drawing, told in `tongue`. Never raises for what a drawing holds.

    `file` is the name it came from, shown as it is; `analysis`: of that drawing, where there is one.
    """
    judged = analysis if analysis is not None and analysis.drawing is drawing else analyse(drawing)
    with Plant(drawing) as plant:
        figures = all_figures(plant)
        pictures = Pictures(drawing, _services, tongue)
        counted = parts_list(drawing)
        content = Content(
            title=depiction.one_line(drawing.title) or UNTITLED,
            plant=depiction.subtitle(drawing),
            file=PurePath(file).name if not isinstance(file, Told) else file,
            made_on=dated(today.isoformat()),
            program=f"circuitcheck {version()}",
            rule_book=a_word(book(judged.rule_book).title),
            design=tuple(_design(drawing)),
            drawing=None if pictures.is_bare else pictures.whole(judged.findings),
            not_placed=tuple(upper(part.name) for part in drawing.components.values() if part.at is None),
            judgement=judgement(judged),
            findings=found(judged, pictures, today),
            acceptances=acceptances(judged, today),
            figures=worked(drawing, figures),
            parts=tuple(parts_words.rows(counted)),
            parts_notes=parts_words.notes(counted),
            commissioning=commissioning(plant, figures, flows(drawing), pictures),
            notes=notes_told(drawing),
            review=review_told(drawing, judged),
            cautions=CAUTIONS,
            tongue=tongue,
            day=today.isoformat(),
        )
        return retold(content, tongue)


def _design(drawing: Drawing) -> Iterator[tuple[str, str]]:
    """The design's figures; one that is left out says that its usual value holds, or that it is not known."""
    for field in DESIGN_FIELDS:
        if field.name == "rule_book":
            continue  # it stands in the document's head
        words = value_words(field, field.value(drawing.design))
        usual = field.name not in drawing.design and field.has_default
        yield field.label, worded("{value} (usual value, not given)", value=words) if usual else words


def _services(drawing: Drawing) -> Mapping[str, str]:
    return {pipe: str(service) for pipe, service in services(drawing).items()}
