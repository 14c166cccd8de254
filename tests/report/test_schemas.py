"""JSON answers hold to the schema that ships, SARIF logs to the standard."""

from __future__ import annotations

import json
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft4Validator, Draft202012Validator, ValidationError

import circuitcheck.report as report
from circuitcheck.checks.catalogue import checks
from circuitcheck.report.as_json import as_json
from circuitcheck.report.as_sarif import as_sarif
from circuitcheck.report.checked import Checked, check_file
from circuitcheck.shipped import data_path
from tests.cli.drawings import accepting, advised, dangerous, unanswered, write

OURS = json.loads((Path(report.__file__).parent / "check.schema.json").read_text(encoding="utf-8"))
# Source: SARIF 2.1.0, OASIS Standard, 2020: the whole schema that goes with it (release rtm.5), copied as it is
# from a package under the MIT licence. It is strict on unknown names throughout.
SARIF = json.loads((Path(__file__).parent / "sarif-2.1.0-rtm.5.json").read_text(encoding="utf-8"))
TODAY = date(2031, 5, 1)


@pytest.fixture(scope="module")
def answers(tmp_path_factory: pytest.TempPathFactory) -> list[Checked]:
    """The samples, a drawing with numbers missing, an accepted finding, and a file that is none."""
    folder = tmp_path_factory.mktemp("drawings")
    files = sorted(data_path("samples").glob("*.wetcircuit"))
    files.append(write(folder / "unanswered.wetcircuit", unanswered()))
    accepted = accepting(advised(), "vessel-can-be-cut-off", "hs1", "iv1", "ev1")
    files.append(write(folder / "accepted é.wetcircuit", accepted))
    broken = folder / "broken.wetcircuit"
    broken.write_text("{", encoding="utf-8")
    found = [check_file(path, TODAY) for path in (*files, broken)]
    danger = write(folder / "danger.wetcircuit", dangerous())
    return [*found, check_file(danger, TODAY, with_cures=True)]


def test_both_schemas_are_schemas() -> None:
    Draft202012Validator.check_schema(OURS)
    Draft4Validator.check_schema(SARIF)


def test_json_holds_to_the_schema_that_ships(answers: list[Checked]) -> None:
    told = json.loads(as_json(answers))
    Draft202012Validator(OURS).validate(told)
    grades = {finding["grade"] for file in told["files"] for finding in file["findings"]}
    assert {"danger", "unanswered"} <= grades
    assert any("cures" in finding for file in told["files"] for finding in file["findings"])


@pytest.mark.parametrize("lost", ["program", "files"])
def test_the_schema_lets_nothing_be_left_out(lost: str, answers: list[Checked]) -> None:
    told = json.loads(as_json(answers))
    del told[lost]
    with pytest.raises(ValidationError):
        Draft202012Validator(OURS).validate(told)


@pytest.fixture(scope="module")
def log(answers: list[Checked]) -> dict[str, Any]:
    found: dict[str, Any] = json.loads(as_sarif(answers))
    return found


def test_sarif_holds_to_the_standard(log: dict[str, Any]) -> None:
    Draft4Validator(SARIF, format_checker=Draft4Validator.FORMAT_CHECKER).validate(log)


@pytest.mark.parametrize("spoil", ["unknown name", "no message", "a level of our own"])
def test_a_log_that_strays_from_the_standard_is_refused(spoil: str, log: dict[str, Any]) -> None:
    strayed = json.loads(json.dumps(log))
    result = strayed["runs"][0]["results"][0]
    if spoil == "unknown name":
        result["remark"] = "not a name of the standard"
    elif spoil == "no message":
        del result["message"]
    else:
        result["level"] = "danger"
    with pytest.raises(ValidationError):
        Draft4Validator(SARIF).validate(strayed)


def test_sarif_tells_what_json_tells(answers: list[Checked], log: dict[str, Any]) -> None:
    (run,) = log["runs"]
    rules = run["tool"]["driver"]["rules"]
    assert [rule["id"] for rule in rules] == list(checks())
    told = [(each.file, told.finding, told.accepted) for each in answers for told in each.told]
    assert len(run["results"]) == len(told)
    for result, (file, finding, accepted) in zip(run["results"], told, strict=True):
        assert rules[result["ruleIndex"]]["id"] == result["ruleId"] == finding.check
        assert result["message"]["text"] == finding.message
        place = result["locations"][0]
        index = place["physicalLocation"]["artifactLocation"]["index"]
        assert run["artifacts"][index]["location"]["uri"] == Path(file).as_uri()
        assert [each["name"] for each in place["logicalLocations"]] == [*finding.components, *finding.pipes]
        assert ("suppressions" in result) is accepted
        assert (result["kind"] == "open") is (finding.grade == "unanswered")


def test_sarif_says_which_file_was_not_read(log: dict[str, Any]) -> None:
    (invocation,) = log["runs"][0]["invocations"]
    assert invocation["executionSuccessful"] is False
    (notification,) = invocation["toolExecutionNotifications"]
    uri = notification["locations"][0]["physicalLocation"]["artifactLocation"]["uri"]
    assert uri.endswith("/broken.wetcircuit")


def test_an_accepted_finding_carries_its_reason(log: dict[str, Any]) -> None:
    reasons = [
        suppression["justification"]
        for result in log["runs"][0]["results"]
        for suppression in result.get("suppressions", ())
    ]
    assert reasons and all(reasons)
