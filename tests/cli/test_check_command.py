"""`check`: what counts, what is said where, and files and folders that cannot be read."""

from __future__ import annotations

import csv
import io
import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from circuitcheck import cli
from circuitcheck.checks.catalogue import checks
from circuitcheck.cli import run
from tests.cli.drawings import (
    Told,
    accepting,
    advised,
    dangerous,
    faulty,
    part,
    pipe,
    sound,
    unanswered,
    write,
)

Capture = pytest.CaptureFixture[str]
CUT_OFF = ("vessel-can-be-cut-off", "hs1", "iv1", "ev1")


def as_json(capsys: Capture, *arguments: object) -> tuple[int, dict[str, Any]]:
    """The exit status and the object printed."""
    status = run(["check", "--as", "json", *map(str, arguments)])
    told: dict[str, Any] = json.loads(capsys.readouterr().out)
    return status, told


STATUS: list[tuple[str, Told, tuple[str, ...], int]] = [
    ("sound", sound(), (), 0),
    ("sound, whatever counts", sound(), ("--at-least", "advice", "--strict"), 0),
    ("fault", faulty(), (), 1),
    ("fault where only danger counts", faulty(), ("--at-least", "danger"), 0),
    ("danger", dangerous(), ("--at-least", "danger"), 1),
    ("advice", advised(), (), 0),
    ("advice where it counts", advised(), ("--at-least", "advice"), 1),
    ("unanswered", unanswered(), ("--at-least", "advice"), 0),
    ("unanswered danger under strict", unanswered(), ("--strict", "--at-least", "danger"), 1),
    ("accepted danger", accepting(dangerous(), *CUT_OFF), (), 1),
    ("accepted advice", accepting(advised(), *CUT_OFF), ("--at-least", "advice"), 0),
    ("accepted for other ids", accepting(advised(), CUT_OFF[0], "hs1"), ("--at-least", "advice"), 1),
    ("accepted until that day", accepting(advised(), *CUT_OFF, until="2031-05-01"), ("--at-least", "advice", "--on", "2031-05-01"), 0),
    ("accepted until the day before", accepting(advised(), *CUT_OFF, until="2031-05-01"), ("--at-least", "advice", "--on", "2031-05-02"), 1),
]  # fmt: skip


@pytest.mark.parametrize(
    ("told", "options", "status"), [each[1:] for each in STATUS], ids=[each[0] for each in STATUS]
)
def test_exit_status(tmp_path: Path, told: Told, options: tuple[str, ...], status: int) -> None:
    assert run(["check", str(write(tmp_path / "hall.wetcircuit", told)), *options]) == status


def test_all_faults_accepted_end_with_0_and_all_but_one_with_1(tmp_path: Path, capsys: Capture) -> None:
    path = write(tmp_path / "hall.wetcircuit", faulty())
    status, printed = as_json(capsys, path)
    found = printed["files"][0]["findings"]
    assert (status, len(found)) == (1, 2)
    records = [
        record
        for each in found
        for record in accepting({}, each["check"], *each["components"], *each["pipes"])["acceptances"]
    ]
    write(path, {**faulty(), "acceptances": records[:1]})
    assert run(["check", str(path)]) == 1
    write(path, {**faulty(), "acceptances": records})
    assert run(["check", str(path)]) == 0


def test_2_beats_1(tmp_path: Path) -> None:
    one = write(tmp_path / "a.wetcircuit", dangerous())
    assert run(["check", str(one)]) == 1
    assert run(["check", str(one), str(tmp_path / "missing.wetcircuit")]) == 2
    (tmp_path / "b.wetcircuit").write_text("{")
    assert run(["check", str(tmp_path)]) == 2


class TestShape:
    """The JSON that others rely on."""

    def test_all_of_it(self, tmp_path: Path, capsys: Capture) -> None:
        path = write(tmp_path / "hall.wetcircuit", dangerous())
        _, told = as_json(capsys, path)
        assert list(told) == ["program", "rule_book", "files"]
        (file,) = told["files"]
        assert list(file) == [
            "file", "title", "error", "rule_book", "taken", "judged", "not_applicable", "not_judged", "why_not_judged",
            "findings",
        ]  # fmt: skip
        assert (file["file"], file["title"], file["error"]) == (str(path), "Village hall", None)
        assert sorted([*file["judged"], *file["not_applicable"], *file["not_judged"]]) == sorted(checks())
        assert "sv1.outlet_size_mm = 15" in file["taken"]
        (finding,) = file["findings"]
        message = finding.pop("message")
        assert "isolating valve iv1" in message
        assert finding == {
            "check": "vessel-can-be-cut-off",
            "grade": "danger",
            "components": ["hs1", "iv1", "ev1"],
            "pipes": [],
            "witness": {"shut": ["iv1"], "alone": ["iv1"]},
            "numbers": {},
            "missing": [],
            "accepted": False,
        }

    def test_an_unanswered_finding(self, tmp_path: Path, capsys: Capture) -> None:
        _, told = as_json(capsys, write(tmp_path / "hall.wetcircuit", unanswered()))
        (file,) = told["files"]
        (finding,) = file["findings"]
        assert (finding["check"], finding["grade"]) == ("discharge-bore-too-small", "unanswered")
        assert (finding["would_be"], finding["missing"]) == ("danger", ["p3.size_mm"])
        assert file["not_judged"] == ["discharge-bore-too-small"]

    def test_a_file_that_cannot_be_read(self, tmp_path: Path, capsys: Capture) -> None:
        bad = {"wetcircuit": 1, "components": [part("x1", "teapot"), part("x1", "tee")]}
        status, told = as_json(capsys, write(tmp_path / "hall.wetcircuit", bad))
        (file,) = told["files"]
        assert status == 2 and file["findings"] == []
        assert len(file["error"]) >= 2 and any("teapot" in each for each in file["error"])

    def test_sorted_by_grade_then_check_then_first_part(self, tmp_path: Path, capsys: Capture) -> None:
        told = dangerous()
        told["components"] += [
            part("z9", "drain"), part("a9", "drain"), part("v9", "isolating_valve", secured=True),
            part("h9", "heat_source"), part("t9", "tee"), part("e9", "expansion_vessel"), part("r9", "radiator"),
        ]  # fmt: skip
        told["pipes"] += [
            pipe("q1", "h9.flow", "t9.a"), pipe("q2", "t9.branch", "v9.a"), pipe("q3", "v9.b", "e9.connection"),
            pipe("q4", "t9.b", "r9.flow"), pipe("q5", "r9.return", "h9.return"),
        ]  # fmt: skip
        _, printed = as_json(capsys, write(tmp_path / "hall.wetcircuit", told))
        keys = [
            (each["grade"], each["check"], (*each["components"], *each["pipes"], "")[0])
            for each in printed["files"][0]["findings"]
        ]
        ranks = {"danger": 0, "fault": 1, "advice": 2, "unanswered": 3}
        assert keys == sorted(keys, key=lambda key: (ranks[key[0]], *key[1:]))
        assert [
            key for key in keys if key[1] in ("safety-valve-absent", "vessel-can-be-cut-off", "open-end")
        ] == [
            ("danger", "safety-valve-absent", "h9"),
            ("danger", "vessel-can-be-cut-off", "hs1"),
            ("fault", "open-end", "a9"),
            ("fault", "open-end", "z9"),
            ("advice", "vessel-can-be-cut-off", "h9"),
        ]

    @pytest.mark.parametrize("form", ["text", "json", "csv"])
    def test_two_runs_print_the_same_bytes(self, tmp_path: Path, form: str) -> None:
        for number, told in enumerate((sound(), faulty(), dangerous(), unanswered())):
            write(tmp_path / f"{number}.wetcircuit", told)
        call = [sys.executable, "-m", "circuitcheck", "check", str(tmp_path), "--as", form]
        runs = [
            subprocess.run([*call, *more], capture_output=True, check=False)
            for more in ((), (), ("--jobs", "3"))
        ]
        assert runs[0].stdout and {each.returncode for each in runs} == {1}
        assert runs[0].stdout == runs[1].stdout == runs[2].stdout

    def test_numbers_have_four_significant_figures(self, tmp_path: Path, capsys: Capture) -> None:
        told = {
            "wetcircuit": 1,
            "components": [
                part("us1", "unvented_store", volume_l=150), part("tr1", "temperature_relief_valve"),
                part("tu1", "tundish"), part("de1", "discharge_end"),
            ],
            "pipes": [
                pipe("p1", "us1.relief", "tr1.inlet"),
                pipe("p2", "tr1.outlet", "tu1.inlet", size_mm=15, length_m=0.2),
                pipe("p3", "tu1.outlet", "de1.inlet", size_mm=22, length_m=10.123456, bends=0),
            ],
        }  # fmt: skip
        _, printed = as_json(capsys, write(tmp_path / "store.wetcircuit", told))
        (finding,) = [
            each for each in printed["files"][0]["findings"] if each["check"] == "discharge-too-long"
        ]
        assert finding["numbers"]["length_m"] == 10.12
        assert finding["numbers"]["limit_m"] == 9


class TestCsv:
    """One row a finding; nothing in it is a formula."""

    def rows(self, capsys: Capture, path: Path) -> list[dict[str, str]]:
        run(["check", str(path), "--as", "csv"])
        return list(csv.DictReader(io.StringIO(capsys.readouterr().out)))

    @pytest.mark.parametrize("label", ["=1+1", "+1", "-1", "@sum"])
    def test_formulas_are_quoted(self, tmp_path: Path, capsys: Capture, label: str) -> None:
        told = dangerous()
        told["components"][0]["label"] = label
        (row,) = self.rows(capsys, write(tmp_path / "hall.wetcircuit", told))
        assert row["message"].startswith(f"'{label} can be cut off")

    def test_columns(self, tmp_path: Path, capsys: Capture) -> None:
        (row,) = self.rows(capsys, write(tmp_path / "hall.wetcircuit", accepting(dangerous(), *CUT_OFF)))
        assert {name: row[name] for name in ("check", "grade", "components", "shut", "alone", "accepted")} == {
            "check": "vessel-can-be-cut-off", "grade": "danger", "components": "hs1 iv1 ev1",
            "shut": "iv1", "alone": "iv1", "accepted": "yes",
        }  # fmt: skip

    def test_a_file_that_cannot_be_read_has_a_row(self, tmp_path: Path, capsys: Capture) -> None:
        (tmp_path / "a.wetcircuit").write_text("[]")
        (row,) = self.rows(capsys, tmp_path / "a.wetcircuit")
        assert (row["grade"], row["check"]) == ("error", "") and row["message"]


class TestText:
    """Text for a person, safe on a terminal."""

    def test_results_and_messages_go_apart(self, tmp_path: Path, capsys: Capture) -> None:
        run(["check", str(write(tmp_path / "hall.wetcircuit", dangerous()))])
        out, err = capsys.readouterr()
        assert "! danger: vessel-can-be-cut-off" in out and "not judged" not in out
        assert "0 checks not judged" in err and "danger" not in err

    def test_how_many_were_not_judged_is_always_said(self, tmp_path: Path, capsys: Capture) -> None:
        path = write(tmp_path / "hall.wetcircuit", unanswered())
        for form in ("text", "json", "csv"):
            run(["check", str(path), "--as", form])
            assert "1 check not judged" in capsys.readouterr().err
        run(["check", str(path)])
        out = capsys.readouterr().out
        assert "? unanswered, would be danger: discharge-bore-too-small" in out
        assert "Not judged: discharge-bore-too-small (not known: p3.size_mm)." in out

    def test_no_colour_where_there_is_no_terminal(self, tmp_path: Path, capsys: Capture) -> None:
        run(["check", str(write(tmp_path / "hall.wetcircuit", dangerous()))])
        assert "\x1b" not in capsys.readouterr().out

    @pytest.mark.parametrize("character", ["\x1b", "\x9b", "\u202e", "\u2066", "\u200b", "\x07", "\u2028"])
    def test_what_could_steer_a_terminal_is_shown_as_a_code_or_a_blank(
        self, tmp_path: Path, capsys: Capture, character: str
    ) -> None:
        told = dangerous()
        told["title"] = f"Hall{character}[31m"
        told["components"][0]["label"] = f"Fire{character}place"
        path = write(tmp_path / "hall.wetcircuit", told)
        for form in ("text", "json", "csv"):
            run(["check", str(path), "--as", form])
            out, err = capsys.readouterr()
            assert character not in out + err
        run(["check", str(path)])
        # A name stands on one line, so what ends a line in it is a blank.
        shown = " " if character.isspace() else f"<U+{ord(character):04X}>"
        assert f"Fire{shown}place" in capsys.readouterr().out
        _, printed = as_json(capsys, path)
        assert printed["files"][0]["title"] == told["title"]

    def test_in_the_messages_of_a_file_that_cannot_be_read(self, tmp_path: Path, capsys: Capture) -> None:
        bad = {"wetcircuit": 1, "components": [part("x\x1b[31m", "tea\u202epot")]}
        run(["check", str(write(tmp_path / "hall.wetcircuit", bad))])
        out, err = capsys.readouterr()
        assert not {"\x1b", "\u202e"} & set(out + err)

    def test_an_accepted_finding_is_marked(self, tmp_path: Path, capsys: Capture) -> None:
        run(["check", str(write(tmp_path / "hall.wetcircuit", accepting(dangerous(), *CUT_OFF)))])
        assert "! danger, accepted: vessel-can-be-cut-off" in capsys.readouterr().out


class TestFolders:
    """Walked in order, without links and hidden files; one bad thing never stops the others."""

    def names(self, capsys: Capture, *paths: Path) -> list[str]:
        _, told = as_json(capsys, *paths)
        return [Path(each["file"]).name for each in told["files"]]

    def test_sorted_and_below(self, tmp_path: Path, capsys: Capture) -> None:
        for name in ("c", "a", "b/z", "b/a", "b/d/m"):
            path = tmp_path / f"{name}.wetcircuit"
            path.parent.mkdir(parents=True, exist_ok=True)
            write(path, sound())
        (tmp_path / "notes.txt").write_text("no drawing")
        (tmp_path / "x.wetcircuit.old").write_text("no drawing")
        _, told = as_json(capsys, tmp_path)
        inside = [str(Path(each["file"]).relative_to(tmp_path)) for each in told["files"]]
        assert inside == [f"{name}.wetcircuit" for name in ("a", "b/a", "b/d/m", "b/z", "c")]

    def test_links_and_hidden_things_are_passed_over(self, tmp_path: Path, capsys: Capture) -> None:
        elsewhere = tmp_path / "elsewhere"
        elsewhere.mkdir()
        write(elsewhere / "far.wetcircuit", sound())
        folder = tmp_path / "folder"
        (folder / ".hidden").mkdir(parents=True)
        write(folder / ".hidden" / "h.wetcircuit", sound())
        write(folder / ".h.wetcircuit", sound())
        write(folder / "seen.wetcircuit", sound())
        (folder / "link.wetcircuit").symlink_to(elsewhere / "far.wetcircuit")
        (folder / "link").symlink_to(elsewhere)
        (folder / "round").symlink_to(folder)
        assert self.names(capsys, folder) == ["seen.wetcircuit"]

    def test_paths_in_the_order_given(self, tmp_path: Path, capsys: Capture) -> None:
        one, two = (write(tmp_path / f"{name}.wetcircuit", sound()) for name in ("b", "a"))
        assert self.names(capsys, one, two) == ["b.wetcircuit", "a.wetcircuit"]

    def test_a_file_of_another_ending_is_read_where_it_is_named(
        self, tmp_path: Path, capsys: Capture
    ) -> None:
        assert self.names(capsys, write(tmp_path / "hall.json", sound())) == ["hall.json"]

    @pytest.mark.skipif(not hasattr(__import__("os"), "mkfifo"), reason="no named pipes here")
    def test_what_is_no_file_is_passed_over(self, tmp_path: Path, capsys: Capture) -> None:
        import os

        os.mkfifo(tmp_path / "a.wetcircuit")
        write(tmp_path / "b.wetcircuit", sound())
        assert self.names(capsys, tmp_path) == ["b.wetcircuit"]

    def test_none_found_is_2(self, tmp_path: Path, capsys: Capture) -> None:
        assert run(["check", str(tmp_path)]) == 2
        out, err = capsys.readouterr()
        assert out == "" and "no drawing" in err

    def test_one_empty_folder_beside_a_full_one_is_2_and_stops_nothing(
        self, tmp_path: Path, capsys: Capture
    ) -> None:
        (tmp_path / "empty").mkdir()
        path = write(tmp_path / "hall.wetcircuit", sound())
        status, told = as_json(capsys, tmp_path / "empty", path)
        assert (status, len(told["files"])) == (2, 1)

    def test_a_folder_that_cannot_be_looked_into(
        self, tmp_path: Path, capsys: Capture, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        (tmp_path / "shut").mkdir()
        write(tmp_path / "z.wetcircuit", sound())
        usual = Path.iterdir

        def iterdir(self: Path) -> Any:
            if self.name == "shut":
                raise PermissionError(13, "Permission denied")
            return usual(self)

        monkeypatch.setattr(Path, "iterdir", iterdir)
        assert run(["check", str(tmp_path)]) == 2
        out, err = capsys.readouterr()
        assert "Village hall" in out and "shut: Permission denied" in err

    def test_a_name_that_is_too_long(self, tmp_path: Path, capsys: Capture) -> None:
        path = write(tmp_path / "hall.wetcircuit", sound())
        assert run(["check", "x" * 5000, str(path)]) == 2
        assert "Village hall" in capsys.readouterr().out

    @pytest.mark.parametrize(
        "content",
        [b"", b"{", b"[]", b"\xff\xfe", b"[" * 100_000, b'{"wetcircuit": 2}', b'{"wetcircuit": 1, "wetcircuit": 1}',
         b'{"wetcircuit": 1, "acceptances": [{"check": "open-end", "until": "soon"}]}'],
        ids=["empty", "cut short", "a list", "no UTF-8", "very deep", "later version", "a key twice", "no day"],
    )  # fmt: skip
    def test_an_unreadable_file_never_stops_the_others(
        self, tmp_path: Path, capsys: Capture, content: bytes
    ) -> None:
        (tmp_path / "b.wetcircuit").write_bytes(content)
        write(tmp_path / "a.wetcircuit", sound())
        write(tmp_path / "c.wetcircuit", dangerous())
        status, told = as_json(capsys, tmp_path)
        assert status == 2
        assert [bool(each["error"]) for each in told["files"]] == [False, True, False]
        assert [len(each["findings"]) for each in told["files"]] == [0, 0, 1]


def test_a_crashed_check_is_seen_and_ends_with_2(
    tmp_path: Path, capsys: Capture, monkeypatch: pytest.MonkeyPatch
) -> None:
    from dataclasses import replace

    from circuitcheck import analysis

    def crashing(case: object) -> Any:
        raise ZeroDivisionError("a flaw")

    broken = {**checks(), "open-end": replace(checks()["open-end"], judge=crashing)}
    monkeypatch.setattr(analysis, "checks", lambda: broken)
    path = write(tmp_path / "hall.wetcircuit", sound())
    status, told = as_json(capsys, path)
    assert (status, told["files"][0]["not_judged"]) == (2, ["open-end"])
    assert run(["check", str(path)]) == 2
    assert "1 check failed inside the program" in capsys.readouterr().err


@pytest.mark.parametrize(
    "call",
    [
        ["check"],
        ["check", "x", "--at-least", "unanswered"],
        ["check", "x", "--as", "parchment"],
        ["check", "x", "--jobs", "0"],
        ["check", "x", "--jobs", "many"],
        ["check", "x", "--on", "soon"],
        ["judge", "x"],
        [],
    ],
)
def test_a_wrong_call_is_2(call: list[str], capsys: Capture) -> None:
    with pytest.raises(SystemExit) as wrong:
        run(call)
    assert wrong.value.code == 2
    assert capsys.readouterr().out == ""


class TestAsAProcess:
    """The whole program, as it is called."""

    def call(self, *arguments: str, encoding: str = "utf-8") -> subprocess.CompletedProcess[bytes]:
        import os

        env = {**os.environ, "PYTHONIOENCODING": encoding}
        return subprocess.run(
            [sys.executable, "-m", "circuitcheck", *arguments], capture_output=True, check=False, env=env
        )

    @pytest.mark.parametrize("form", ["text", "json", "csv"])
    @pytest.mark.parametrize("encoding", ["utf-8", "ascii", "cp1252"])
    def test_letters_of_all_the_world_come_out_as_utf_8(
        self, tmp_path: Path, form: str, encoding: str
    ) -> None:
        told = dangerous()
        told["components"][0]["label"] = "Kocioł 暖房"
        run = self.call(
            "check", str(write(tmp_path / "hall.wetcircuit", told)), "--as", form, encoding=encoding
        )
        assert run.returncode == 1
        assert "Kocioł 暖房" in run.stdout.decode("utf-8")

    @pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="names are text there")
    @pytest.mark.parametrize("form", ["text", "json", "csv"])
    def test_a_file_name_that_is_no_text(self, tmp_path: Path, form: str) -> None:
        import os

        with open(os.fsencode(tmp_path) + b"/\xff.wetcircuit", "wb") as file:
            file.write(json.dumps(sound()).encode())
        run = self.call("check", str(tmp_path), "--as", form)
        assert run.returncode == 0
        run.stdout.decode("utf-8")

    def test_no_command_is_called_so(self) -> None:
        run = self.call("judge", "x")
        assert run.returncode == 2 and b"judge" in run.stderr

    def test_no_qt_and_no_heavy_library_for_a_house(self, tmp_path: Path) -> None:
        path = write(tmp_path / "hall.wetcircuit", dangerous())
        code = (
            "import sys; from circuitcheck.cli import run; status = run(['check', sys.argv[1]]);"
            "loaded = {name.partition('.')[0] for name in sys.modules};"
            "print(sorted(loaded & {'PySide6', 'shiboken6', 'networkx', 'shapely', 'scipy'})); sys.exit(status)"
        )
        run = subprocess.run(
            [sys.executable, "-c", code, str(path)], capture_output=True, check=False, text=True
        )
        assert run.returncode == 1, run.stderr
        assert run.stdout.splitlines()[-1] == "[]"


def test_every_command_of_the_parser_is_one_the_program_starts() -> None:
    for name in cli.COMMANDS:
        with pytest.raises(SystemExit) as helped:
            run([name, "--help"])
        assert helped.value.code == 0
