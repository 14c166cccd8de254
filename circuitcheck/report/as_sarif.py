"""The answers as a SARIF 2.1.0 log, which many code-review and build systems can show.

Source: Static Analysis Results Interchange Format (SARIF) version 2.1.0, OASIS Standard, 2020.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any
from urllib.parse import quote

from circuitcheck.checks.catalogue import checks
from circuitcheck.checks.check import Check
from circuitcheck.finding import Finding, Grade
from circuitcheck.report.as_json import dumped, indented, listed
from circuitcheck.report.as_text import Parts
from circuitcheck.report.checked import Checked, Told, record_object
from circuitcheck.shipped import version

SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
LEVELS = {Grade.DANGER: "error", Grade.FAULT: "warning", Grade.ADVICE: "note", Grade.UNANSWERED: "none"}

Object = dict[str, Any]


def as_sarif(files: Iterable[Checked]) -> str:
    """One log with one run for all files; the same answers give the same text.

    An unanswered finding is of kind `open`; an accepted one carries a suppression. What was not
    judged in a file stands, with the reason, in the properties of the file's artifact.
    """
    return "".join(whole(lambda: (one(each) for each in files)))


def one(checked: Checked) -> str:
    """The part of one file, as if it were the first: its notifications, artifact and results."""
    places = {name: place for place, name in enumerate(checks())}
    told = [_result(each, checked, places) for each in checked.told]
    return json.dumps([_notifications(checked), _artifact(checked), told])


def whole(parts: Parts) -> Iterator[str]:
    """The log, by parts; each file's results get its place among the artifacts."""
    rules = [_rule(check) for check in checks().values()]
    driver = {"name": "circuitcheck", "version": version(), "rules": rules}
    failed = any(json.loads(part)[0] for part in parts())
    yield f'{{\n "$schema": {dumped(SCHEMA)},\n "version": "2.1.0",\n "runs": [\n  {{\n   "tool": '
    yield indented(dumped({"driver": driver}), 3)
    yield f',\n   "invocations": [\n    {{\n     "executionSuccessful": {dumped(not failed)},\n'
    yield '     "toolExecutionNotifications": '
    yield from listed(_placed(parts, 0), 5)
    yield '\n    }\n   ],\n   "artifacts": '
    yield from listed((dumped(json.loads(part)[1]) for part in parts()), 3)
    yield ',\n   "results": '
    yield from listed(_placed(parts, 2), 3)
    yield "\n  }\n ]\n}\n"


def _placed(parts: Parts, which: int) -> Iterator[str]:
    """The notifications or the results of all files, each with the place of its file."""
    for number, part in enumerate(parts()):
        for each in json.loads(part)[which]:
            for location in each["locations"]:
                location["physicalLocation"]["artifactLocation"]["index"] = number
            yield dumped(each)


def _rule(check: Check) -> Object:
    lesson = check.lesson
    return {
        "id": check.name,
        "shortDescription": {"text": f"{lesson.title}."},
        "fullDescription": {"text": lesson.flags},
        "help": {"text": f"{lesson.why}\n\nRemedy: {lesson.remedy}\n\nSource: {lesson.source}"},
        "properties": {"topic": check.topic},
    }


def _notifications(each: Checked) -> list[Object]:
    """What failed in a file, told one by one."""
    return [
        {
            "level": "error",
            "message": {"text": text},
            "locations": [{"physicalLocation": {"artifactLocation": _location(each)}}],
        }
        for text in (*each.error, *(f"{name} failed inside the program" for name in each.crashed))
    ]


def _artifact(each: Checked) -> Object:
    return {
        "location": {"uri": _uri(each.file)},
        "roles": ["analysisTarget"],
        "mimeType": "application/json",
        "properties": {
            "title": each.title,
            "ruleBook": each.rule_book,
            "judged": list(each.judged),
            "notApplicable": list(each.not_applicable),
            "notJudged": dict(each.why_not_judged),
            "taken": list(each.taken),
            "reviews": [record_object(held) for held in each.records],
        },
    }


def _result(told: Told, each: Checked, places: dict[str, int]) -> Object:
    finding = told.finding
    unanswered = finding.grade is Grade.UNANSWERED
    found: Object = {
        "ruleId": finding.check,
        "ruleIndex": places[finding.check],
        "kind": "open" if unanswered else "fail",
        "level": LEVELS[finding.grade],
        "message": {"text": finding.message},
        "locations": [
            {
                "physicalLocation": {"artifactLocation": _location(each)},
                "logicalLocations": [
                    {"name": id, "kind": kind}
                    for kind, ids in (("component", finding.components), ("pipe", finding.pipes))
                    for id in ids
                ],
            }
        ],
        "partialFingerprints": {"checkAndItems/v1": _fingerprint(finding)},
        "properties": _properties(finding),
    }
    if told.accepted:
        found["suppressions"] = [_suppression(told)]
    return found


def _suppression(told: Told) -> Object:
    found: Object = {"kind": "inSource", "status": "accepted", "justification": told.reason}
    if told.acceptance is not None:
        named = {
            "author": told.acceptance.author,
            "date": told.acceptance.date,
            "until": told.acceptance.until,
        }
        found["properties"] = {name: value for name, value in named.items() if value}
    return found


def _properties(finding: Finding) -> Object:
    found: Object = {
        "grade": finding.grade.value,
        "numbers": {name: float(f"{value:.4g}") for name, value in finding.numbers.items()},
        "missing": list(finding.missing),
    }
    if finding.witness is not None:
        found["witness"] = {"shut": list(finding.witness.shut), "alone": list(finding.witness.alone)}
    if finding.would_be is not None:
        found["wouldBe"] = finding.would_be.value
    return found


def _fingerprint(finding: Finding) -> str:
    """The same for the same check on the same items, whatever the message says."""
    named = json.dumps([finding.check, list(finding.components), list(finding.pipes)])
    return hashlib.sha256(named.encode()).hexdigest()


def _location(each: Checked) -> Object:
    return {"uri": _uri(each.file), "index": 0}


def _uri(file: str) -> str:
    """A file's name as a URI: absolute with its scheme, relative without one."""
    path = Path(file)
    return path.as_uri() if path.is_absolute() else quote(path.as_posix(), errors="surrogateescape")
