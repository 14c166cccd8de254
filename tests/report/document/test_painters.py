"""Each format of the document, read back by something else than what wrote it."""

from __future__ import annotations

import base64
import csv
import io
import re
from dataclasses import replace
from html.parser import HTMLParser
from typing import Any
from xml.etree import ElementTree

import pytest
from fontTools.ttLib import TTFont
from PIL import Image
from pypdf import PdfReader
from pypdf.generic import Destination

from circuitcheck.drawing.value import Drawing
from circuitcheck.picture.lettering import FACES
from circuitcheck.report.document.fonts import font_faces
from circuitcheck.report.document.gathering import gather
from circuitcheck.report.document.paper import Orientation, Paper
from circuitcheck.report.document.sections import sections
from circuitcheck.report.document.writing import Form, made

from .conftest import DAY, HOSTILE, content_of, hostile, many

SAMPLE = "terrace-valve-before-vessel"
SVG = "{http://www.w3.org/2000/svg}"
MM = 72 / 25.4
VOID = {"meta", "br", "col"}


def pdf(data: bytes) -> PdfReader:
    return PdfReader(io.BytesIO(data), strict=True)


def text_of(reader: PdfReader) -> str:
    return " ".join("\n".join(page.extract_text() for page in reader.pages).split())


def flat(group: list[Any]) -> list[Destination]:
    return [each for each in group if isinstance(each, Destination)]


def bookmarks(reader: PdfReader) -> list[tuple[str, int]]:
    """Those of the first level, each with its page, counted from 1."""
    return [
        (str(each.title), (reader.get_destination_page_number(each) or 0) + 1)
        for each in flat(reader.outline)
    ]


@pytest.fixture(scope="module")
def read_pdf() -> PdfReader:
    return pdf(made(content_of(SAMPLE), Form.PDF))


class TestPdf:
    def test_every_section_is_there_as_text(self, read_pdf: PdfReader) -> None:
        text = text_of(read_pdf)
        for section in sections(content_of(SAMPLE)):
            assert section.title in text
        for words in (
            "Heat source can be cut off from Heating vessel by shutting Pump and Return valve",
            "Back wall",
            "F 22",
        ):
            assert words in text

    def test_every_font_is_embedded_and_is_the_one_that_ships(self, read_pdf: PdfReader) -> None:
        names = set()
        for page in read_pdf.pages:
            for font in page["/Resources"]["/Font"].values():  # type: ignore[index]
                font = font.get_object()
                if font["/BaseFont"] == "/Helvetica":
                    continue  # named by the library on every page, and used on none
                names.add(str(font["/BaseFont"]).partition("+")[2])
                assert "/FontFile2" in font["/FontDescriptor"]
        assert names == {f"SourceSans3-{FACES[weight]}" for weight in (400, 600, 700)}

    def test_the_points_of_lists_are_of_that_font_too(self, read_pdf: PdfReader) -> None:
        text = "".join(page.extract_text() for page in read_pdf.pages)
        # In the font of the library, which is not embedded, they read as a control character.
        assert text.count("•") > 10 and "\x7f" not in text

    def test_bookmarks_lead_to_sections_findings_and_figures(self, read_pdf: PdfReader) -> None:
        top = bookmarks(read_pdf)
        titles = [title for title, _ in top]
        assert titles == ["Summary", *(each.title for each in sections(content_of(SAMPLE))[1:])]
        pages = [page for _, page in top]
        assert pages == sorted(pages) and pages[0] == 1
        for title, page in top[1:]:
            assert title in " ".join(read_pdf.pages[page - 1].extract_text().split())
        inner = [
            str(each.title) for group in read_pdf.outline if isinstance(group, list) for each in flat(group)
        ]
        assert "1. Heat source can be cut off from its vessel (danger)" in inner

    def test_pages_are_numbered_and_the_contents_tell_the_same_numbers(self, read_pdf: PdfReader) -> None:
        count = len(read_pdf.pages)
        for number, page in enumerate(read_pdf.pages, start=1):
            assert f"Page {number} of {count}" in page.extract_text()
        first = read_pdf.pages[0].extract_text().split()
        assert str(dict(bookmarks(read_pdf))["Parts list"]) in first

    @pytest.mark.parametrize(
        ("paper", "orientation", "text", "drawing"),
        [
            (Paper.A4, None, (210, 297), (297, 210)),
            (Paper.A3, None, (297, 420), (420, 297)),
            (Paper.A4, Orientation.LANDSCAPE, (297, 210), (297, 210)),
            (Paper.A3, Orientation.PORTRAIT, (297, 420), (297, 420)),
        ],
    )
    def test_pages_are_of_the_paper(
        self, paper: Paper, orientation: Orientation | None, text: tuple[int, int], drawing: tuple[int, int]
    ) -> None:
        reader = pdf(made(content_of(SAMPLE), Form.PDF, paper, orientation))
        for page, size in ((reader.pages[0], text), (reader.pages[1], drawing), (reader.pages[2], text)):
            assert [float(each) / MM for each in page.mediabox[2:]] == pytest.approx(size, abs=0.2)

    def test_no_page_is_empty(self, read_pdf: PdfReader) -> None:
        for page in read_pdf.pages:
            assert len(page.extract_text().split()) > 40

    def test_the_drawing_is_line_work(self, read_pdf: PdfReader) -> None:
        assert not list(read_pdf.pages[1].images)

    def test_the_same_day_gives_the_same_bytes(self) -> None:
        assert made(content_of("village-hall"), Form.PDF) == made(content_of("village-hall"), Form.PDF)


class Seen(HTMLParser):
    """What a browser would make of it: elements, their attributes, their text; unclosed ones are faults."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.attributes: list[tuple[str, str | None]] = []
        self.text = ""
        self.open: list[str] = []
        self.feed(page)
        self.close()
        assert self.open == []

    def handle_starttag(self, tag: str, attrs: Any) -> None:
        self.tags.append(tag)
        self.attributes += attrs
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag: str, attrs: Any) -> None:
        self.tags.append(tag)
        self.attributes += attrs

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        if not self.open or self.open[-1] != "style":
            self.text += data


def page_of(name: str) -> str:
    return made(content_of(name), Form.HTML).decode("utf-8")


class TestHtml:
    def test_every_section_is_there_and_linked(self) -> None:
        seen = Seen(page_of(SAMPLE))
        ids = {value for name, value in seen.attributes if name == "id"}
        for section in sections(content_of(SAMPLE)):
            assert section.key in ids
            assert section.title in seen.text
        links = {value for name, value in seen.attributes if name == "href" and value}
        assert {link.removeprefix("#") for link in links} <= ids

    def test_it_opens_offline(self) -> None:
        seen = Seen(page_of(SAMPLE))
        assert not {"script", "link", "img", "iframe", "object"} & set(seen.tags)
        for name, value in seen.attributes:
            assert name not in ("src", "srcset", "action", "xlink:href") and not name.startswith("on"), name
            if name == "href":
                assert value and value.startswith("#")
        assert "url(http" not in page_of(SAMPLE)

    def test_pictures_are_drawn_in_it_and_named(self) -> None:
        page = page_of(SAMPLE)
        names = [value for name, value in Seen(page).attributes if name == "aria-label"]
        assert any(name and name.startswith("The drawing:") for name in names)
        assert page.count('role="img" aria-label="Where it is') == 1

    def test_it_follows_light_dark_and_print(self) -> None:
        page = page_of(SAMPLE)
        for words in ("prefers-color-scheme:dark", "@media print", "width=device-width", "@font-face"):
            assert words in page


class TestSvg:
    def test_it_is_xml_with_text_as_text(self) -> None:
        root = ElementTree.fromstring(made(content_of(SAMPLE), Form.SVG))
        assert root.tag == f"{SVG}svg"
        texts = {each.text for each in root.iter(f"{SVG}text")}
        assert {"Return valve", "Heat source", "F 22", "1 danger"} <= texts
        assert root.find(f"{SVG}title") is not None

    def test_it_says_what_was_judged_and_is_no_certificate(self) -> None:
        texts = [
            each.text or ""
            for each in ElementTree.fromstring(made(content_of("cottage"), Form.SVG)).iter(f"{SVG}text")
        ]
        assert any(each.startswith("Nothing found by") for each in texts)
        assert any("not a certificate" in each for each in texts)

    def test_everything_lies_in_its_view(self) -> None:
        root = ElementTree.fromstring(made(content_of(SAMPLE), Form.SVG))
        left, top, wide, high = map(float, root.attrib["viewBox"].split())
        for each in root.iter(f"{SVG}text"):
            assert left <= float(each.attrib["x"]) <= left + wide
            assert top <= float(each.attrib["y"]) <= top + high


class TestPng:
    def test_it_is_a_picture_of_the_drawing(self) -> None:
        image = Image.open(io.BytesIO(made(content_of("village-hall"), Form.PNG)))
        assert image.width > 1000
        assert len(image.convert("RGB").getcolors(1_000_000) or ()) > 50


class TestCsv:
    def test_findings_and_parts_are_rows(self) -> None:
        rows = list(csv.DictReader(io.StringIO(made(content_of(SAMPLE), Form.CSV).decode("utf-8-sig"))))
        (finding,) = (row for row in rows if row["section"] == "finding")
        assert finding["grade"] == "danger"
        pumps = [row for row in rows if row["item"] == "Pump"]
        assert [row["count"] for row in pumps] == ["1"]
        assert any(row["section"] == "Pipe" and float(row["length_m"]) > 1 for row in rows)

    def test_no_cell_is_a_formula(self) -> None:
        content = replace(content_of("cottage"), title="=HYPERLINK(1)", file="+1", made_on="@x")
        rows = csv.reader(io.StringIO(made(content, Form.CSV).decode("utf-8-sig")))
        assert not [cell for row in rows for cell in row if cell.startswith(("=", "+", "-", "@", "\t", "\r"))]


class TestHostileTexts:
    def test_html_shows_them_and_makes_nothing_of_them(self) -> None:
        page = made(hostile(), Form.HTML).decode("utf-8")
        seen = Seen(page)
        assert "script" not in seen.tags
        assert "alert(1)</script>" in seen.text
        assert "\u202e" not in page and "\x07" not in page
        assert "<U+202E>" in seen.text

    def test_svg_stays_xml(self) -> None:
        root = ElementTree.fromstring(made(hostile(), Form.SVG))
        assert not list(root.iter(f"{SVG}script"))
        assert any("<script>" in (each.text or "") for each in root.iter(f"{SVG}text"))

    def test_pdf_shows_them(self) -> None:
        text = text_of(pdf(made(hostile(), Form.PDF)))
        assert "<script>alert(1)</script>" in text
        assert "second line" in text

    def test_csv_holds_no_formula_and_no_hidden_letters(self) -> None:
        data = made(hostile(), Form.CSV).decode("utf-8-sig")
        assert "\u202e" not in data
        assert not [c for row in csv.reader(io.StringIO(data)) for c in row if c.startswith("=")]
        assert HOSTILE not in data

    @pytest.mark.parametrize("form", list(Form))
    def test_long_words_and_other_alphabets(self, form: Form) -> None:
        content = replace(
            content_of("village-hall"), title="W" * 4000, plant="Ωλβ 中文 \U0001f525 ملف", file="\ud800x"
        )
        assert made(content, form)


@pytest.mark.parametrize("form", list(Form))
def test_an_empty_drawing(form: Form) -> None:
    assert made(gather(Drawing(), "empty", DAY), form)


@pytest.mark.slow
@pytest.mark.parametrize(
    ("cottages", "parts"), [(6, 250), pytest.param(24, 1_000, marks=pytest.mark.evening)]
)
def test_many_parts(cottages: int, parts: int) -> None:
    drawing = many(cottages)
    assert len(drawing.components) > parts
    content = gather(drawing, "many", DAY)
    reader = pdf(made(content, Form.PDF))
    assert len(reader.pages) > parts / 20
    assert "Many cottages" in reader.pages[1].extract_text()
    for form in (Form.HTML, Form.SVG, Form.PNG, Form.CSV):
        assert made(content, form)


def test_a_font_has_the_letters_asked_for_whatever_was_asked_before() -> None:
    def letters(text: str) -> set[str]:
        (data,) = re.findall(r"base64,([^)]*)\)", font_faces({400: [text]}))
        return set(map(chr, TTFont(io.BytesIO(base64.b64decode(data))).getBestCmap()))

    assert letters("ab") == {*"ab …"}
    assert letters("bc") == {*"bc …"}
    assert font_faces({400: ["ba"]}) == font_faces({400: ["a", "b"]}) != font_faces({600: ["ab"]})
