"""The document as one HTML file: opens offline, reads on a phone, prints, follows light and dark."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from urllib.parse import quote

from circuitcheck.finding import Grade
from circuitcheck.picture.grades import RADIUS, RING, grade_mark
from circuitcheck.picture.marks import TextMark
from circuitcheck.report.document.blocks import (
    LINE,
    Blank,
    Block,
    Bullets,
    Cell,
    Columns,
    Contents,
    Counts,
    GradedHeading,
    Heading,
    Labelled,
    Link,
    Section,
    Shown,
    Style,
    Table,
    Text,
    Together,
)
from circuitcheck.report.document.content import CARE, Content, Head
from circuitcheck.report.document.fonts import font_faces
from circuitcheck.report.document.html_page import POLICY, style
from circuitcheck.report.document.sections import sections
from circuitcheck.report.document.svg_marks import by_class, marks, svg_text, view_box
from circuitcheck.report.document.telling import LANGUAGE
from circuitcheck.report.plain import bound
from circuitcheck.sheet.pictures import Picture
from circuitcheck.told import Tongue, a_word, tell

CONTENTS, TO_TICK = a_word("Contents"), a_word("to tick")
TO_SCROLL = a_word("The drawing, to be scrolled")
STACKS_FROM = 3
"""Tables of so many columns become a list of entries, or two columns, on a narrow screen."""
_CLASSES = {
    Style.BODY: "",
    Style.LEAD: ' class="lead"',
    Style.SECOND: ' class="second"',
    Style.STRONG: ' class="strong"',
}


def as_html(content: Content) -> bytes:
    """The file."""
    return html_of(content, sections(content))


def html_of(head: Head, found: Sequence[Section]) -> bytes:
    """The file of these sections."""
    body = "\n".join(
        line
        for number, section in enumerate(found)
        for line in _section(found, section, head.tongue, is_first=number == 0)
    )
    page = (
        f'<!DOCTYPE html>\n<html lang="{svg_text(tell(LANGUAGE, head.tongue))}">\n'
        '<head>\n<meta charset="utf-8">\n'
        f'<meta http-equiv="Content-Security-Policy" content="{svg_text(POLICY)}">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f'<meta name="generator" content="{svg_text(head.program)}">\n'
        f"<title>{svg_text(head.title)}</title>\n<style>\n{style(font_faces(_letters(found, head)))}</style>\n"
        f"</head>\n<body>\n<main>\n{body}\n<footer>{_foot(head)}</footer>\n</main>\n</body>\n</html>\n"
    )
    return page.encode("utf-8", errors="xmlcharrefreplace")


def _foot(head: Head) -> str:
    said = f"{head.file} · {head.made_on} · {head.program}"
    return f"{svg_text(said)}<br>{svg_text(tell(CARE, head.tongue))}"


def _section(every: Iterable[Section], section: Section, tongue: Tongue, *, is_first: bool) -> Iterator[str]:
    page = ' class="page"' if section.on_new_page else ""
    level = 1 if is_first else 2
    yield f'<section id="{section.key}"{page}>\n<h{level}>{_text(section.title)}</h{level}>'
    for block in section.blocks:
        if isinstance(block, Contents):
            links = "".join(
                f'<li><a href="#{each.key}">{_text(each.title)}</a></li>' for each in list(every)[1:]
            )
            yield f'<nav aria-label="{svg_text(tell(CONTENTS, tongue))}"><ul>{links}</ul></nav>'
        else:
            yield from _block(block, tongue)
    yield "</section>"


def _block(block: Block, tongue: Tongue) -> Iterator[str]:
    match block:
        case Text():
            yield f"<p{_CLASSES[block.style]}>{_text(block.text)}</p>"
        case Labelled():
            yield f"<p><b>{_text(block.label)}:</b> {_text(block.text)}</p>"
        case Heading():
            yield f"<h3>{_text(block.text)}</h3>"
        case GradedHeading():
            words = (
                f'{block.number}. {_text(block.text)} <span class="second">{_text(block.grade_words)}</span>'
            )
            yield f'<h3 class="graded" id="finding-{block.number}">{_mark(block.grade)}<span>{words}</span></h3>'
        case Bullets():
            yield f"<ul>{''.join(f'<li>{_text(item)}</li>' for item in block.items)}</ul>"
        case Columns():
            yield f'<ul class="columns second">{"".join(f"<li>{_text(item)}</li>" for item in block.items)}</ul>'
        case Counts():
            counts = (
                f"<li>{_mark(grade)}<b>{count}</b> {_text(words)}</li>"
                for grade, count, words in block.counts
            )
            yield f'<ul class="counts">{"".join(counts)}</ul>'
        case Table():
            yield from _table(block, tongue)
        case Shown():
            yield from _shown(block, tongue)
        case Together():
            yield '<div class="together">'
            for inner in block.blocks:
                yield from _block(inner, tongue)
            yield "</div>"


def _text(text: str) -> str:
    """A text of a file, its line breaks kept and everything else in it harmless."""
    return "<br>".join(bound(svg_text(line)) for line in text.splitlines())


def _mark(grade: Grade) -> str:
    reach = RADIUS + RING
    inside = "".join(marks(grade_mark(grade, reach, reach), by_class))
    return f'<svg class="mark" viewBox="0 0 {2 * reach:g} {2 * reach:g}" aria-hidden="true">{inside}</svg>'


def _table(block: Table, tongue: Tongue) -> Iterator[str]:
    stacks = ""
    if len(block.shares) >= STACKS_FROM:
        stacks = f' class="{"stack" if block.head else "two"}"'
    total = sum(block.shares)
    columns = "".join(f'<col style="width:{100 * share / total:.1f}%">' for share in block.shares)
    yield f'<div class="wide"><table{stacks}><colgroup>{columns}</colgroup>'
    if block.head:
        cells = (
            f'<th scope="col"{_classes(block, column)}>{_text(each)}</th>'
            for column, each in enumerate(block.head)
        )
        yield f"<thead><tr>{''.join(cells)}</tr></thead>"
    yield "<tbody>"
    for row in block.rows:
        yield f"<tr>{''.join(_cell(block, column, cell, tongue) for column, cell in enumerate(row))}</tr>"
    yield "</tbody></table></div>"


def _cell(block: Table, column: int, cell: Cell, tongue: Tongue) -> str:
    head = block.head[column] if block.head else ""
    told = f' data-head="{svg_text(head)}"' if head and column else ""
    if isinstance(cell, Blank):
        return f"<td{told}>{_blank(cell, tongue)}</td>"
    text = _linked(cell) if isinstance(cell, Link) else _text(cell)
    return f"<td{_classes(block, column)}{told}>{text}</td>"


def _linked(link: Link) -> str:
    # A path never begins with what could be taken for a scheme.
    return f'<a href="./{svg_text(quote(link.path, errors="surrogateescape"))}">{_text(link.text)}</a>'


def _blank(blank: Blank, tongue: Tongue) -> str:
    if not blank.unit:
        return f'<span class="tick" role="img" aria-label="{svg_text(tell(TO_TICK, tongue))}"></span>'
    return f'<span class="fill">{"" if blank == LINE else svg_text(blank.unit)}</span>'


def _classes(block: Table, column: int) -> str:
    names = [name for name, columns in (("n", block.numeric), ("b", block.bold)) if column in columns]
    return f' class="{" ".join(names)}"' if names else ""


def _shown(block: Shown, tongue: Tongue) -> Iterator[str]:
    picture = block.picture
    wide, high = picture.size
    most = "" if block.whole_page else f' style="width:{min(wide, block.most_px * wide / high):.0f}px"'
    kind = ' class="sheet"' if block.whole_page else ""
    yield f"<figure{kind}>"
    yield (
        f'<div class="wide" tabindex="0" role="group" aria-label="{svg_text(tell(TO_SCROLL, tongue))}">'
        if kind
        else "<div>"
    )
    yield f'<svg viewBox="{view_box(picture.box)}" role="img" aria-label="{svg_text(picture.words)}"{most}>'
    yield from marks(picture.marks, by_class)
    yield "</svg></div></figure>"


def _letters(found: Iterable[Section], head: Head) -> dict[int, list[str]]:
    """Every text by the weight it is set in. The pages' words go into both: which is bold is the style's to say."""
    letters: dict[int, list[str]] = defaultdict(list)
    words = [head.title, head.file, head.made_on, head.program, tell(CARE, head.tongue), _SIGNS]
    for section in found:
        words.append(section.title)
        for block in section.blocks:
            words += _words(block)
            for picture in _pictures(block):
                for mark in picture.marks:
                    if isinstance(mark, TextMark):
                        letters[mark.weight].append(mark.text)
    for weight in (400, 600):
        letters[weight] += words
    letters[700].append("?MT")
    return dict(letters)


_SIGNS = "".join(chr(code) for code in range(32, 127)) + "·•…–−×²³°“”’<>"


def _words(block: Block) -> Iterator[str]:
    match block:
        case Text():
            yield block.text
        case Labelled():
            yield from (block.label, block.text)
        case Heading():
            yield block.text
        case GradedHeading():
            yield from (block.text, block.grade_words)
        case Counts():
            yield from (words for _, _, words in block.counts)
        case Bullets() | Columns():
            yield from block.items
        case Table():
            yield from block.head
            yield from _units(block)
            yield from (cell.text if isinstance(cell, Link) else cell for cell in _told(block))
        case Together():
            for inner in block.blocks:
                yield from _words(inner)


def _units(table: Table) -> Iterator[str]:
    for row in table.rows:
        yield from (cell.unit for cell in row if isinstance(cell, Blank))


def _told(table: Table) -> Iterator[str | Link]:
    for row in table.rows:
        yield from (cell for cell in row if not isinstance(cell, Blank))


def _pictures(block: Block) -> Iterator[Picture]:
    if isinstance(block, Shown):
        yield block.picture
    elif isinstance(block, Together):
        for inner in block.blocks:
            yield from _pictures(inner)
