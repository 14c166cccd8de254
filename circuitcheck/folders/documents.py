"""The errand of `report`: make the document of a drawing and put it where it belongs."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace
from datetime import date

from circuitcheck.finding import Grade
from circuitcheck.folders.errand import Made, digest
from circuitcheck.report.document.content import Content
from circuitcheck.report.document.gathering import gather
from circuitcheck.report.document.index import Entry
from circuitcheck.report.document.many import Task
from circuitcheck.report.document.paper import Orientation, Paper
from circuitcheck.report.document.writing import Form, made, told_in
from circuitcheck.storage.reading import DrawingError, parse
from circuitcheck.storage.saver import SaveError, save_bytes
from circuitcheck.told import Tongue, tell, worded, worded_n
from circuitcheck.tongues import SOURCE, tongue


@dataclass(frozen=True, slots=True)
class Documents:
    """How documents are made, the same for all of one call; `language` is one of `tongues.CODES`."""

    form: Form
    today: date
    paper: Paper = Paper.A4
    orientation: Orientation | None = None
    language: str = SOURCE

    @property
    def tongue(self) -> Tongue:
        """The language of the documents."""
        return told_in(self.form, tongue(self.language))

    def bound(self) -> Mapping[str, str]:
        """All that a document depends on beside the file's bytes and the program."""
        return {
            "the command": "report",
            "the date": self.today.isoformat(),
            "the kind of file": self.form,
            "--paper": self.paper,
            "--orientation": self.orientation or "",
            "--language": self.language,
        }

    def made(self, data: bytes, task: Task) -> Made:
        """The document of a file's bytes; one in which the program failed somewhere is made again next time."""
        try:
            drawing = parse(data, str(task.source))
        except DrawingError as error:
            faults = tuple(fault.message for fault in error.faults)
            return Made(_told(Entry(faults, " ".join(tell(each, self.tongue) for each in faults))))
        content = gather(drawing, str(task.source), self.today, tongue=self.tongue)
        document = made(content, self.form, self.paper, self.orientation)
        entry = _entry(content, digest(document))
        return Made(_told(entry), document, is_lasting=not entry.crashed)

    def put(self, made: Made, task: Task) -> Made:
        """Write the document, whole or not at all."""
        if not made.document:
            return made
        try:
            if task.makes_folder:
                task.target.parent.mkdir(parents=True, exist_ok=True)
            save_bytes(task.target, made.document)
        except SaveError as error:
            return self._unwritten(made, str(error))
        except OSError as error:
            return self._unwritten(made, f"{task.target}: {error.strerror or error}")
        return replace(made, document=b"")

    def _unwritten(self, made: Made, fault: str) -> Made:
        entry = replace(entry_of(made.answer), faults=(fault,), why=fault, is_written=False)
        return Made(_told(entry), is_lasting=False)

    def refused(self, task: Task, reason: str) -> str:
        """The answer for a file that no document could be made of."""
        return _told(Entry((reason,), reason))

    def stands(self, answer: str, task: Task) -> bool:
        """Whether the document is there, just as it was written."""
        entry = entry_of(answer)
        if not entry.is_written:
            return True
        try:
            return digest(task.target.read_bytes()) == entry.seal
        except OSError:
            return False


def _entry(content: Content, seal: str) -> Entry:
    counted: dict[str, Counter[str]] = {}
    for each in content.findings:
        counted.setdefault(each.title, Counter())[each.grade.value] += 1
    judgement = content.judgement
    return Entry(
        title=content.title,
        verdict=tell(_verdict(content), content.tongue),
        review="" if content.review.holds is None else content.review.state,
        grades={grade.value: count for grade, count in judgement.counts},
        checks={
            title: {grade.value: found[grade.value] for grade in Grade} for title, found in counted.items()
        },
        accepted=sum(bool(each.accepted) for each in content.findings),
        not_judged=dict(judgement.not_judged),
        crashed=judgement.crashed,
        rule_book=content.rule_book,
        is_written=True,
        seal=seal,
    )


def _verdict(content: Content) -> str:
    """The verdict in few words: what bounds it is said once for the whole list."""
    count, silent = len(content.findings), len(content.judgement.silent)
    if not count:
        return worded_n("Nothing found by 1 check.", "Nothing found by {count} checks.", silent)
    return worded(
        "{findings}; {silent}.",
        findings=worded_n("1 finding", "{count} findings", count),
        silent=worded_n("1 check found nothing", "{count} checks found nothing", silent),
    )


def _told(entry: Entry) -> str:
    return json.dumps(asdict(entry))


def entry_of(text: str) -> Entry:
    """The entry that `Documents` told."""
    told = json.loads(text)
    return Entry(faults=tuple(told.pop("faults")), **told)
