"""Text, JSON and CSV made of answers by hand: what each shows of them."""

from __future__ import annotations

import csv
import io
import json

from circuitcheck.finding import Finding, Grade, Says, Witness
from circuitcheck.report.as_csv import as_csv
from circuitcheck.report.as_json import as_json
from circuitcheck.report.as_text import MARKS, as_text
from circuitcheck.report.checked import Checked, Told

DANGER = Finding(
    "vessel-can-be-cut-off",
    Grade.DANGER,
    Says("{thing} can be cut off.", {"thing": "Fire\x1b[2J"}),
    ("hs1", "tp1"),
    ("p1", "p2"),
    Witness(("tp1:a",), ("tp1:a", "iv1"), ("tp1",)),
    {"length_m": 1.23456, "limit_m": 1000000.0},
)
UNSURE = Finding(
    "open-end", Grade.UNANSWERED, Says("It is not known."), missing=("p1.size_mm",), would_be=Grade.FAULT
)
FILE = Checked(
    "hall.wetcircuit",
    "Hall",
    (),
    (Told(DANGER, False), Told(UNSURE, True)),
    judged=("vessel-can-be-cut-off",),
    not_applicable=("near-miss",),
    not_judged=("open-end",),
    taken=("sv1.set_pressure_bar = 3",),
    rule_book="england",
    why_not_judged={"open-end": "not known: p1.size_mm"},
)
BROKEN = Checked("broken.wetcircuit", "", ("The file is no drawing.", "=1+1"), ())
QUIET = Checked("quiet.wetcircuit", "", (), (), judged=("open-end", "near-miss"))


def test_json() -> None:
    told = json.loads(as_json([FILE, BROKEN]))
    assert told["rule_book"] == "england"
    first, second = told["files"]
    assert first["findings"][0]["numbers"] == {"length_m": 1.235, "limit_m": 1000000.0}
    assert first["findings"][0]["witness"] == {"shut": ["tp1:a"], "alone": ["tp1:a", "iv1"]}
    assert first["findings"][0]["message"] == "Fire\x1b[2J can be cut off."
    assert "would_be" not in first["findings"][0]
    assert (first["findings"][1]["would_be"], first["findings"][1]["witness"]) == ("fault", None)
    assert [each["accepted"] for each in first["findings"]] == [False, True]
    assert second["error"] == ["The file is no drawing.", "=1+1"] and second["findings"] == []


def test_json_is_safe_to_print_and_keeps_letters() -> None:
    odd = Checked("\udcff.wetcircuit", "Kocioł\u202e\x9b 暖房 \U000e0041", (), ())
    text = as_json([odd])
    assert "Kocioł" in text and "暖房" in text
    assert not {"\u202e", "\x9b", "\udcff", "\U000e0041"} & set(text)
    (file,) = json.loads(text)["files"]
    assert (file["file"], file["title"]) == (odd.file, odd.title)


def test_no_file_has_no_rule_book() -> None:
    assert json.loads(as_json([BROKEN]))["rule_book"] is None


def test_csv() -> None:
    header, danger, unsure, *errors = csv.reader(io.StringIO(as_csv([FILE, BROKEN, QUIET])))
    row = dict(zip(header, danger, strict=True))
    assert row == {
        "file": "hall.wetcircuit", "check": "vessel-can-be-cut-off", "grade": "danger", "would_be": "",
        "message": "Fire<U+001B>[2J can be cut off.", "components": "hs1 tp1", "pipes": "p1 p2",
        "shut": "tp1:a", "alone": "tp1:a iv1", "missing": "", "accepted": "no",
        "reason": "", "accepted_by": "", "until": "",
    }  # fmt: skip
    row = dict(zip(header, unsure, strict=True))
    assert (row["would_be"], row["missing"], row["accepted"], row["shut"]) == (
        "fault",
        "p1.size_mm",
        "yes",
        "",
    )
    assert [each[header.index("message")] for each in errors] == ["The file is no drawing.", "'=1+1"]


def test_text() -> None:
    text = as_text([FILE, BROKEN, QUIET])
    assert "! danger: vessel-can-be-cut-off" in text
    assert "? unanswered, would be fault, accepted: open-end" in text
    assert "Fire<U+001B>[2J can be cut off." in text and "\x1b" not in text
    assert "1 checks judged, 1 do not apply." in text
    assert "Not judged: open-end (not known: p1.size_mm)." in text and "Rule book: england." in text
    assert "sv1.set_pressure_bar = 3" in text
    assert "could not be judged" in text and "The file is no drawing." in text
    assert "Nothing found by 2 checks." in text
    assert "not a certificate" in text
    assert all(line == line.rstrip() and len(line) <= 110 for line in text.splitlines())


def test_colour_is_never_the_only_sign_of_a_grade() -> None:
    plain_text, coloured = as_text([FILE]), as_text([FILE], colour=True)
    assert "\x1b[31;1m! danger\x1b[0m" in coloured
    import re

    assert re.sub(r"\x1b\[[\d;]*m", "", coloured) == plain_text
    assert len(set(MARKS.values())) == len(Grade)
