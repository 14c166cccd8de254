"""What stands in the outline: parts by group with their ports, pipes with their ends, findings. No widget.

A row is made when the row above it is opened, and its text when it is shown, so that thousands cost nothing.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence, Set
from dataclasses import dataclass
from enum import Enum, auto

from circuitcheck.drawing.value import Drawing, End, Joint
from circuitcheck.editor.translating import later, shown_told, tr
from circuitcheck.finding import Finding
from circuitcheck.parts.kind import Group
from circuitcheck.report.finding_text import grade_words, message, title
from circuitcheck.told import spoken, upper

Key = tuple[str, ...]
"""Names a row from one drawing to the next."""

PIPES, FINDINGS = later("Pipes"), later("Findings")
_NUMBERS = re.compile(r"(\d+)")


class Form(Enum):
    """What a row stands for."""

    GROUP = auto()
    PART = auto()
    PIPE = auto()
    CONTROL = auto()
    PORT = auto()
    END = auto()
    NAMED = auto()
    FINDING = auto()


@dataclass(eq=False, slots=True)
class Row:
    """One row. `ids` is what to select for it; `leads_to` the thing where one goes on from it.

    `below` None: not made yet. `members` are the ids in a group, which may be thousands.
    """

    key: Key
    form: Form
    above: Row | None
    place: int
    number: int
    ids: tuple[str, ...] = ()
    leads_to: str = ""
    members: Set[str] = frozenset()
    finding: Finding | None = None
    below: list[Row] | None = None


class Outline:
    """The rows of one drawing and its findings; `typed`, where given, leaves only what is named so."""

    def __init__(self, drawing: Drawing, findings: Sequence[Finding] = (), typed: str = "") -> None:
        self._drawing = drawing
        self._words = typed.casefold().split()
        self._findings = [each for each in findings if self._is_wanted(self._finding_words(each))]
        self._numbered: list[Row] = []
        self.top: list[Row] = []
        self._set_up()

    @property
    def is_searched(self) -> bool:
        """Whether only some of it is left, by what was typed."""
        return bool(self._words)

    def numbered(self, number: int) -> Row | None:
        """The row of that number; None where it is of an outline that is gone."""
        return self._numbered[number] if 0 <= number < len(self._numbered) else None

    def below(self, row: Row) -> list[Row]:
        """The rows below one, made when first asked for."""
        if row.below is None:
            row.below = []
            self._fill(row)
        return row.below

    def has_below(self, row: Row) -> bool:
        """Whether there are any, without making them."""
        if row.below is not None:
            return bool(row.below)
        drawing, id = self._drawing, row.ids[0] if row.ids else ""
        match row.form:
            case Form.GROUP:
                return True
            case Form.PART:
                return bool(drawing.components[id].kind.ports)
            case Form.CONTROL:
                return bool(drawing.controls[id].acts_on or drawing.controls[id].in_same_room_as)
            case Form.PIPE | Form.FINDING:
                return bool(row.ids)
        return False

    def row_of(self, key: Key) -> Row | None:
        """The row of a key; the rows above it are made on the way. None where there is none."""
        kind, *rest = key
        match kind:
            case "group":
                among = self.top
            case "thing":
                group = next((each for each in self.top if rest[0] in each.members), None)
                among = [] if group is None else self.below(group)
            case "finding":
                group = self.row_of(("group", FINDINGS))
                among = [] if group is None else self.below(group)
            case _:
                above = self.row_of(("finding", *rest[:-1]) if kind == "named" else ("thing", rest[0]))
                among = [] if above is None else self.below(above)
        return next((row for row in among if row.key == key), None)

    def rows_of(self, ids: Iterable[str]) -> list[Row]:
        """The rows of things, in the order of the outline."""
        wanted = frozenset(ids)
        found: list[Row] = []
        for group in self.top:
            if not wanted.isdisjoint(group.members):
                found += [row for row in self.below(group) if row.ids[0] in wanted]
        return found

    # Texts.

    def text(self, row: Row) -> str:
        """What a row says."""
        match row.form:
            case Form.GROUP:
                count = len(self._findings) if row.key[1] == FINDINGS else len(row.members)
                return tr("{group} ({count})", group=tr(row.key[1]), count=count)
            case Form.FINDING if row.finding is not None:
                grade = shown_told(upper(grade_words(row.finding)))
                return tr("{grade}: {finding}", grade=grade, finding=title(row.finding))
            case Form.PORT:
                return self._port_text(row)
            case Form.END:
                end = self._drawing.pipes[row.key[1]].ends[int(row.key[2])]
                return self._end_text(end)
            case Form.NAMED if row.key[0] == "acts on":
                return tr("Acts on {part}", part=self._called(row.leads_to))
            case Form.NAMED if row.key[0] == "in one room":
                return tr("In one room with {part}", part=self._called(row.leads_to))
            case Form.NAMED:
                return _first_upper(self._called(row.leads_to))
        return self._thing_text(row.ids[0])

    def spoken(self, row: Row) -> str:
        """What is read out of a row: of a finding the sentence as well."""
        if row.finding is not None and row.form is Form.FINDING:
            return f"{self.text(row)}. {shown_told(message(self._drawing, row.finding))}"
        return self.text(row)

    def _called(self, id: str) -> str:
        try:
            return " ".join(shown_told(self._drawing.name(id)).split())
        except KeyError:  # taken out since the findings were found
            return id

    def _thing_text(self, id: str) -> str:
        drawing = self._drawing
        if id in drawing.pipes:
            one, other = (
                self._called(end.part) if isinstance(end, Joint) else tr("free end")
                for end in drawing.pipes[id].ends
            )
            text = tr("{pipe}: {one} to {other}", pipe=drawing.name(id), one=one, other=other)
            return _first_upper(text)
        thing = drawing.components.get(id) or drawing.controls[id]
        name = _first_upper(self._called(id))
        kind = tr(thing.kind.title)
        says_more = thing.label and kind.casefold() not in name.casefold()
        return tr("{name} ({kind})", name=name, kind=kind) if says_more else name

    def _port_text(self, row: Row) -> str:
        _, part, port = row.key
        pipe = self._drawing.joined.get(Joint(part, port))
        if pipe is None:
            return tr("Port {port}: no pipe", port=spoken(port))
        other = _other_end(self._drawing.pipes[pipe].ends, Joint(part, port))
        to = (
            tr("{part}, port {port}", part=self._called(other.part), port=spoken(other.port))
            if isinstance(other, Joint)
            else tr("a free end")
        )
        return tr(
            "Port {port}: by {pipe} to {there}", port=spoken(port), pipe=self._drawing.name(pipe), there=to
        )

    def _end_text(self, end: End) -> str:
        if isinstance(end, Joint):
            return tr("End on {part}, port {port}", part=self._called(end.part), port=spoken(end.port))
        return tr("Free end")

    def _finding_words(self, finding: Finding) -> str:
        names = " ".join(self._called(id) for id in (*finding.components, *finding.pipes))
        return f"{shown_told(title(finding))} {shown_told(grade_words(finding))} {names}"

    # Rows.

    def _is_wanted(self, text: str) -> bool:
        lowered = text.casefold() if self._words else ""
        return all(word in lowered for word in self._words)

    def _set_up(self) -> None:
        drawing = self._drawing
        groups: dict[str, list[str]] = {group.value: [] for group in Group}
        for id, part in drawing.components.items():
            groups[part.kind.group.value].append(id)
        for id, control in drawing.controls.items():
            groups[control.kind.group.value].append(id)
        groups[PIPES] = list(drawing.pipes)
        for name, ids in groups.items():
            left = [id for id in ids if self._is_wanted(self._searched(id))] if self._words else ids
            if left:
                self._add(None, ("group", name), Form.GROUP, members=frozenset(left))
        if self._findings:
            self._add(None, ("group", FINDINGS), Form.GROUP)

    def _searched(self, id: str) -> str:
        """What of a thing is looked through: what it says, what it is, and its id in the file."""
        drawing = self._drawing
        thing = drawing.components.get(id) or drawing.controls.get(id)
        return f"{self._thing_text(id)} {tr(thing.kind.title if thing else later('Pipe'))} {id}"

    def _fill(self, row: Row) -> None:
        id = row.ids[0] if row.ids else ""
        match row.form:
            case Form.GROUP:
                self._fill_group(row)
            case Form.PART:
                self._fill_ports(row, id)
            case Form.PIPE:
                for place, end in enumerate(self._drawing.pipes[id].ends):
                    there = end.part if isinstance(end, Joint) else id
                    self._add(row, ("end", id, str(place)), Form.END, ids=(there,), leads_to=there)
            case Form.CONTROL:
                control = self._drawing.controls[id]
                for how, named in (("acts on", control.acts_on), ("in one room", control.in_same_room_as)):
                    for each in named:
                        self._add(row, (how, id, each), Form.NAMED, ids=(each,), leads_to=each)
            case Form.FINDING:
                for each in row.ids:
                    self._add(row, ("named", *row.key[1:], each), Form.NAMED, ids=(each,), leads_to=each)

    def _fill_group(self, row: Row) -> None:
        for id in sorted(row.members, key=self._order):
            self._add(row, ("thing", id), self._form(id), ids=(id,), leads_to=id)
        for finding in self._findings if row.key[1] == FINDINGS else ():
            ids = (*finding.components, *finding.pipes)
            self._add(row, ("finding", finding.check, *ids), Form.FINDING, ids=ids, finding=finding)

    def _fill_ports(self, row: Row, id: str) -> None:
        drawing = self._drawing
        for port in drawing.components[id].kind.ports:
            joint = Joint(id, port.name)
            pipe = drawing.joined.get(joint)
            other = None if pipe is None else _other_end(drawing.pipes[pipe].ends, joint)
            there = other.part if isinstance(other, Joint) else pipe or id
            self._add(row, ("port", *joint), Form.PORT, ids=(pipe or id,), leads_to=there)

    def _form(self, id: str) -> Form:
        drawing = self._drawing
        return Form.PART if id in drawing.components else Form.PIPE if id in drawing.pipes else Form.CONTROL

    def _order(self, id: str) -> list[tuple[int, str]]:
        """As one would look for it: by its text, numbers by their size."""
        pieces = _NUMBERS.split(self._thing_text(id).casefold())
        bare = (each.lstrip("0") if each.isdecimal() else each for each in pieces)
        return [(len(each), each) if each.isdecimal() else (0, each) for each in bare]

    def _add(
        self,
        above: Row | None,
        key: Key,
        form: Form,
        *,
        ids: tuple[str, ...] = (),
        leads_to: str = "",
        members: Set[str] = frozenset(),
        finding: Finding | None = None,
    ) -> None:
        to = self.top if above is None else self.below(above)
        row = Row(key, form, above, len(to), len(self._numbered), ids, leads_to, members, finding)
        to.append(row)
        self._numbered.append(row)


def _other_end(ends: tuple[End, End], here: Joint) -> End:
    return ends[1] if ends[0] == here else ends[0]


def _first_upper(text: str) -> str:
    return text[:1].upper() + text[1:]
