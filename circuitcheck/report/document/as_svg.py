"""The drawing as one SVG file: line work, text as text, its font inside; below it what was judged."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator

from circuitcheck.picture.colours import light
from circuitcheck.picture.grades import RADIUS, grade_mark
from circuitcheck.picture.lettering import fitted, width
from circuitcheck.picture.marks import Mark, TextMark
from circuitcheck.report.document.content import Content
from circuitcheck.report.document.fonts import FAMILY, font_faces
from circuitcheck.report.document.svg_marks import by_hex, marks, svg_text, view_box
from circuitcheck.report.document.telling import LANGUAGE
from circuitcheck.sheet.pictures import MARGIN_PX, Picture
from circuitcheck.told import a_word, tell, worded, worded_n

NOTHING = a_word("Nothing of this drawing is on a sheet")
FOOT_SIZE, FOOT_PITCH = 12.0, 18.0
LEAST_WIDE = 720.0


def sheet_picture(content: Content) -> Picture:
    """The drawing with a foot that says what was found, what was not judged, and that it is no certificate."""
    picture = content.drawing or Picture((), (0.0, 0.0, LEAST_WIDE, 40.0), tell(NOTHING, content.tongue))
    left, _, right, low = picture.box
    wide = max(right - left, LEAST_WIDE)
    foot, high = _foot(content, left + MARGIN_PX, low, wide - 2 * MARGIN_PX)
    box = (left, picture.box[1], left + wide, low + high)
    return Picture((*picture.marks, *foot), box, picture.words)


def as_svg(content: Content) -> bytes:
    """The file."""
    picture = sheet_picture(content)
    letters: dict[int, list[str]] = defaultdict(list)
    for mark in picture.marks:
        if isinstance(mark, TextMark):
            letters[mark.weight].append(mark.text)
    wide, high = picture.size
    lines = [
        '<?xml version="1.0" encoding="UTF-8"?>',
        (
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide:.0f}" height="{high:.0f}" '
            f'viewBox="{view_box(picture.box)}" xml:lang="{svg_text(tell(LANGUAGE, content.tongue))}" role="img" '
            f"font-family=\"'{FAMILY}', sans-serif\">"
        ),
        f"<title>{svg_text(content.title)}</title>",
        f"<desc>{svg_text(picture.words)}. {svg_text(content.judgement.verdict)} {svg_text(content.program)}</desc>",
        f"<style>{font_faces(letters)}</style>",
        (
            f'<rect x="{picture.box[0]:.1f}" y="{picture.box[1]:.1f}" width="{wide:.1f}" height="{high:.1f}" '
            f'fill="{light("paper")}"/>'
        ),
        *marks(picture.marks, by_hex(light)),
        "</svg>",
    ]
    return ("\n".join(lines) + "\n").encode("utf-8")


def _foot(content: Content, left: float, top: float, wide: float) -> tuple[list[Mark], float]:
    """The lines below the drawing, and how high they are."""
    made: list[Mark] = []
    x, y = left, top + FOOT_PITCH
    for grade, count in content.judgement.counts:
        if not count:
            continue
        made += grade_mark(grade, x + RADIUS, y - 4)
        words = tell(worded("{count} {grade}", count=count, grade=a_word(grade.value)), content.tongue)
        made.append(TextMark(words, x + 2 * RADIUS + 6, y, "ink", FOOT_SIZE, 600, "start"))
        x += 2 * RADIUS + 6 + width(words, FOOT_SIZE, 600) + 18
    if x > left:
        y += FOOT_PITCH + 4
    for told in _foot_lines(content):
        line = tell(told, content.tongue)
        made.append(TextMark(fitted(line, FOOT_SIZE, 400, wide), left, y, "ink_2", FOOT_SIZE, 400, "start"))
        y += FOOT_PITCH
    return made, y - top + 4


def _foot_lines(content: Content) -> Iterator[str]:
    judgement = content.judgement
    yield judgement.verdict
    if judgement.not_judged or judgement.crashed:
        yield worded_n(
            "1 check could not judge; see the report.",
            "{count} checks could not judge; see the report.",
            len(judgement.not_judged) + judgement.crashed,
        )
    if content.not_placed:
        yield worded(
            "Not shown, since not placed on the sheet: {parts}.", parts=", ".join(content.not_placed)
        )
    yield worded(
        "{file} · {day} · {program} · rule book {rule_book}",
        file=content.file,
        day=content.made_on,
        program=content.program,
        rule_book=content.rule_book,
    )
    yield content.review.state
    yield a_word(
        "Local codes and the makers’ instructions come first. A drawing without findings is not a certificate."
    )
