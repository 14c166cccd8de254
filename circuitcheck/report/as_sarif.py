"""The answers as a SARIF 2.1.0 log, which many code-review and build systems can show.

Source: Static Analysis Results Interchange Format (SARIF) version 2.1.0, OASIS Standard, 2020.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Sequence
from pathlib import Path
from typing import Any
from urllib.parse import quote

from circuitcheck.checks.catalogue import checks
from circuitcheck.checks.check import Check
from circuitcheck.finding import Finding, Grade
from circuitcheck.report.as_json import escaped
from circuitcheck.report.checked import Checked, Told, record_object
from circuitcheck.shipped import version

SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
LEVELS = {Grade.DANGER: "error", Grade.FAULT: "warning", Grade.ADVICE: "note", Grade.UNANSWERED: "none"}

Object = dict[str, Any]


def as_sarif(files: Sequence[Checked]) -> str:
    """One log with one run for all files; the same answers give the same text.

    An unanswered finding is of kind `open`; an accepted one carries a suppression. What was not
    judged in a file stands, with the reason, in the properties of the file's artifact.
    """
    rules = checks()
    places = {name: place for place, name in enumerate(rules)}
    run = {
        "tool": {
            "driver": {
                "name": "circuitcheck",
                "version": version(),
                "rules": [_rule(check) for check in rules.values()],
            }
        },
        "invocations": [_invocation(files)],
        "artifacts": [_artifact(each) for each in files],
        "results": [
            _result(told, each, number, places) for number, each in enumerate(files) for told in each.told
        ],
    }
    log = {"$schema": SCHEMA, "version": "2.1.0", "runs": [run]}
    return escaped(json.dumps(log, ensure_ascii=False, indent=1) + "\n")


def _rule(check: Check) -> Object:
    lesson = check.lesson
    return {
        "id": check.name,
        "shortDescription": {"text": f"{lesson.title}."},
        "fullDescription": {"text": lesson.flags},
        "help": {"text": f"{lesson.why}\n\nRemedy: {lesson.remedy}\n\nSource: {lesson.source}"},
        "properties": {"topic": check.topic},
    }


def _invocation(files: Sequence[Checked]) -> Object:
    """Whether every file was read and every check ran through; what failed is told one by one."""
    told = [
        {
            "level": "error",
            "message": {"text": text},
            "locations": [{"physicalLocation": {"artifactLocation": _location(each, number)}}],
        }
        for number, each in enumerate(files)
        for text in (*each.error, *(f"{name} failed inside the program" for name in each.crashed))
    ]
    return {"executionSuccessful": not told, "toolExecutionNotifications": told}


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


def _result(told: Told, each: Checked, number: int, places: dict[str, int]) -> Object:
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
                "physicalLocation": {"artifactLocation": _location(each, number)},
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


def _location(each: Checked, number: int) -> Object:
    return {"uri": _uri(each.file), "index": number}


def _uri(file: str) -> str:
    """A file's name as a URI: absolute with its scheme, relative without one."""
    path = Path(file)
    return path.as_uri() if path.is_absolute() else quote(path.as_posix(), errors="surrogateescape")
