"""The parts list as text for a person, as JSON, and as a table that is safe to open in a spreadsheet."""

from __future__ import annotations

import csv
import io
import json
import textwrap
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import Any

from circuitcheck.figures.parts_list import Datum, PartLine, PartsList, PipeLine, Sizes, TeeLine
from circuitcheck.parts.kind import FieldType
from circuitcheck.report.as_json import escaped
from circuitcheck.report.plain import cell, plain
from circuitcheck.shipped import version
from circuitcheck.told import a_word, listed, lower, spoken, strung, told_number, upper, worded, worded_n

COLUMNS = (
    "section",
    "count",
    "length_m",
    "bends",
    "item",
    "size",
    "details",
    "not_known",
    "length_not_known",
    "bends_not_known",
    "ids",
)
PIPE, TEES = a_word("Pipe"), a_word("Tees")
WIDTH = 96
MOST_NAMED, MOST_IN_NOTES = 8, 60

_PIPE_OF = {
    "copper": a_word("copper pipe"),
    "plastic": a_word("plastic pipe"),
    "steel": a_word("steel pipe"),
}


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the list in words. `count` or `length_m` is how much of it; `bends` of pipe only.

    `lacking` says what is not known of it, in words; `no_length` and `no_bends` name the pipes whose
    length or bends the sums do without.
    """

    section: str
    item: str
    size: str
    details: str
    count: int | None
    length_m: float | None
    bends: int | None
    lacking: str
    ids: tuple[str, ...]
    no_length: tuple[str, ...] = ()
    no_bends: tuple[str, ...] = ()

    @property
    def short_of(self) -> str:
        """How many lengths and numbers of bends the sums do without, in words: a sentence's end."""
        return worded("{these} not known", these=self.not_summed) if self.not_summed else ""

    @property
    def not_summed(self) -> str:
        """How many lengths and numbers of bends the sums do without, named."""
        said: list[str] = []
        if self.no_length:
            said.append(worded_n("1 length", "{count} lengths", len(self.no_length)))
        if self.no_bends:
            said.append(worded_n("bends of 1 pipe", "bends of {count} pipes", len(self.no_bends)))
        return listed(said)


def rows(found: PartsList) -> Iterator[Row]:
    """The list in words, section by section: parts by what they do, then tees, then pipe."""
    for line in found.parts:
        yield _part_row(line)
    for tee in found.tees:
        yield _tee_row(tee)
    for pipe in found.pipes:
        yield _pipe_row(pipe)


def notes(found: PartsList, most: int = MOST_IN_NOTES) -> tuple[str, ...]:
    """What the sums rest on, as sentences: lengths that lack, lengths measured, materials taken as usual;
    of the pipes concerned so many are named."""
    said = []
    if lengths := found.no_length:
        said.append(
            worded_n(
                "The length of {some} of 1 pipe is not known and not in the sums: {named}.",
                "The length of {some} of {count} pipes is not known and not in the sums: {named}.",
                len(found.drawing.pipes),
                some=len(lengths),
                named=_named(lengths, most),
            )
        )
    if turns := found.no_bends:
        said.append(
            worded_n(
                "The bends of 1 pipe are not known: {named}.",
                "The bends of {count} pipes are not known: {named}.",
                len(turns),
                named=_named(turns, most),
            )
        )
    if measured := tuple(id for line in found.pipes for id in line.measured):
        said.append(
            worded("Measured from the line at the sheet's scale: {named}.", named=_named(measured, most))
        )
    if usual := found.usual_material:
        of_them = _number(len(usual), "pipe")
        named = _named(usual, most)
        said.append(
            worded(
                "Material taken as copper, since not given, for {of_them}: {named}.",
                of_them=of_them,
                named=named,
            )
        )
    return tuple(said)


def as_text(file: str, found: PartsList) -> str:
    """The list for reading."""
    title = f"  {plain(found.drawing.title)}" if found.drawing.title else ""
    lines = [f"{plain(file)}{title}"]
    for section, members in groupby(rows(found), key=lambda row: row.section):
        lines += ["", section]
        for row in members:
            lines += row_lines(row)
    if len(lines) == 1:
        lines += ["", "Nothing is drawn."]
    said = notes(found)
    lines += [""] if said else []
    for note in said:
        lines += textwrap.wrap(plain(note), WIDTH, subsequent_indent="  ")
    return "\n".join(lines) + "\n"


def as_csv(found: PartsList) -> str:
    """A header and one row for each line of the list."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    for row in rows(found):
        ids = (" ".join(each) for each in (row.no_length, row.no_bends, row.ids))
        texts = (row.item, row.size, row.details, row.lacking, *ids)
        numbers = ("" if row.count is None else row.count, _metres(row.length_m), _blank(row.bends))
        writer.writerow([cell(row.section), *numbers, *(cell(text) for text in texts)])
    return out.getvalue()


def as_json(file: str, found: PartsList) -> str:
    """One object; the same drawing gives the same text."""
    told = {
        "program": f"circuitcheck {version()}",
        "file": file,
        "title": found.drawing.title,
        **list_objects(found),
    }
    return escaped(json.dumps(told, ensure_ascii=False, indent=1) + "\n")


def list_objects(found: PartsList) -> dict[str, list[dict[str, Any]]]:
    """The list as JSON shows it."""
    return {
        "parts": [_part_object(line) for line in found.parts],
        "tees": [
            {
                "count": tee.count,
                "sizes_mm": list(tee.sizes_mm),
                "materials": list(tee.materials),
                "ids": list(tee.ids),
            }
            for tee in found.tees
        ],
        "pipes": [_pipe_object(line) for line in found.pipes],
    }


def _part_row(line: PartLine) -> Row:
    words = [_datum_words(datum) for datum in line.data if datum.value is not None]
    lacking: list[str] = [lower(datum.field.label) for datum in line.data if datum.value is None]
    if None in line.sizes_mm:
        lacking.insert(0, a_word("size"))
    return Row(
        a_word(str(line.kind.group)),
        line.kind.title,
        size_words(line.sizes_mm),
        strung(word for word in words if word),
        line.count,
        None,
        None,
        strung(lacking),
        line.ids,
    )


def _tee_row(line: TeeLine) -> Row:
    lacking: str = a_word("size") if None in line.sizes_mm else ""
    details = strung(a_word(each) for each in line.materials)
    return Row(
        TEES, a_word("Tee"), size_words(line.sizes_mm), details, line.count, None, None, lacking, line.ids
    )


def _pipe_row(line: PipeLine) -> Row:
    details: list[str] = (
        [worded("bore {bore_mm:g} mm", bore_mm=line.bore_mm)] if line.bore_mm is not None else []
    )
    details += [a_word("marked fit for hot discharge")] if line.heatproof else []
    details += (
        [worded("{insulated_m} m of it insulated", insulated_m=told_number(_metres(line.insulated_m)))]
        if line.insulated_m
        else []
    )
    lacking: list[str] = [] if line.material else [a_word("material")]
    lacking += [] if line.size_mm is not None else [a_word("size")]
    return Row(
        PIPE,
        upper(_PIPE_OF.get(line.material, a_word("pipe"))) if line.material else a_word("Pipe"),
        size_words((line.size_mm,)),
        strung(details),
        None,
        line.length_m,
        line.bends,
        strung(lacking),
        line.ids,
        line.no_length,
        line.no_bends,
    )


def size_words(sizes: Sizes) -> str:
    """Sizes as the trade says them: `22 mm`, `22 × 22 × 15 mm`, `?` for one that is not known."""
    if not sizes:
        return ""
    if all(size is None for size in sizes):
        return a_word("size not known")
    return f"{' × '.join('?' if size is None else f'{size:g}' for size in sizes)} mm"


def _datum_words(datum: Datum) -> str:
    field, value = datum.field, datum.value
    said: str
    match field.type:
        case FieldType.NUMBER:
            unit = worded(" {unit}", unit=a_word(field.unit)) if field.unit else ""
            said = worded(
                "{field} {value}{unit}", field=lower(field.label), value=told_number(f"{value:g}"), unit=unit
            )
        case FieldType.SWITCH:
            said = _switch_words(field.label, on=bool(value)) if value or field.default else ""
        case FieldType.CHOICES:
            return worded(
                "{field} {value}", field=lower(field.label), value=strung(spoken(each) for each in value)
            )
        case _:
            said = worded("{field} {value}", field=lower(field.label), value=spoken(str(value)))
    return worded("{value} (usual)", value=said) if said and datum.usual else said


def _switch_words(label: str, *, on: bool) -> str:
    """`thermostatic head`, `no thermostatic head`, `not all thermostatic`."""
    if on:
        return lower(label)
    if label.startswith("All "):
        return worded("not {all}", all=lower(label))
    return worded("no {thing}", thing=lower(label))


def row_lines(row: Row) -> list[str]:
    """One line of the list for reading, wrapped."""
    much = f"{row.count}" if row.count is not None else f"{row.length_m or 0:.2f} m"
    words = [row.item + (f" {row.size}" if row.size else "")]
    words += [row.details] if row.details else []
    words += [_number(row.bends, "bend")] if row.bends is not None else []
    # An unknown size stands as a question mark among the sizes already.
    lacking = ", ".join(each for each in row.lacking.split(", ") if each and each != "size")
    words += [worded("not known: {lacking}", lacking=lacking)] if lacking else []
    words += [row.short_of] if row.short_of else []
    named = "" if row.section == PIPE else f"  [{_named(row.ids)}]"
    return textwrap.wrap(
        plain("; ".join(words) + named),
        WIDTH,
        initial_indent=f"{much:>11}  ",
        subsequent_indent=" " * 15,
        break_long_words=False,
    )


def _part_object(line: PartLine) -> dict[str, Any]:
    return {
        "count": line.count,
        "kind": line.kind.name,
        "group": str(line.kind.group),
        "sizes_mm": list(line.sizes_mm),
        "data": {
            datum.field.name: list(datum.value) if isinstance(datum.value, tuple) else datum.value
            for datum in line.data
        },
        "usual": [datum.field.name for datum in line.data if datum.usual],
        "ids": list(line.ids),
    }


def _pipe_object(line: PipeLine) -> dict[str, Any]:
    return {
        "material": line.material,
        "size_mm": line.size_mm,
        "bore_mm": line.bore_mm,
        "heatproof": line.heatproof,
        "length_m": round(line.length_m, 4),
        "insulated_m": round(line.insulated_m, 4),
        "bends": line.bends,
        "measured": list(line.measured),
        "length_not_known": list(line.no_length),
        "bends_not_known": list(line.no_bends),
        "usual": ["material"] if line.usual_material else [],
        "ids": list(line.ids),
    }


def _metres(value: float | None) -> str:
    return "" if value is None else f"{value:.2f}"


def _blank(value: int | None) -> str:
    return "" if value is None else str(value)


def _named(ids: Sequence[str], most: int = MOST_NAMED) -> str:
    """The ids, so many of them by name and the rest by number."""
    named = ", ".join(ids[:most])
    return worded("{named} and {ids} more", named=named, ids=len(ids) - most) if len(ids) > most else named


def _number(count: int, thing: str) -> str:
    return f"{count} {thing}" if count == 1 else f"{count} {thing}s"
