"""Findings on the sheet: what keeps its colour, what is ringed, what is shown shut, what is cut off."""

import pytest

from circuitcheck.drawing.edits import move, remove
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.editor import theme as themes
from circuitcheck.editor.sheet.painting import Tone
from circuitcheck.finding import Finding, Grade, Says, Witness
from circuitcheck.picture.labels import grown, overlap
from circuitcheck.picture.marks import Fill, Hatch, Mark, Stroke, TextMark
from circuitcheck.sheet.concern import concerned, shut_states

from ...made import made
from .conftest import Hand

AT = {
    "hs": (6, 8),
    "iv": (14, 6),
    "t": (20, 6),
    "ev": (20, 12),
    "pu": (26, 6),
    "sv": (12, 18),
    "tu": (20, 20),
}


@pytest.fixture
def circuit() -> Drawing:
    """A heat source, a valve, a vessel behind it, a pump back to the return; a safety valve apart."""
    return made(
        {
            "hs": "heat_source",
            "iv": "isolating_valve",
            "t": "tee",
            "ev": "expansion_vessel",
            "pu": "pump",
            "sv": "safety_valve",
            "tu": "tundish",
        },
        """hs.flow - iv.a
        iv.b - t.a
        t.branch - ev.connection
        t.b - pu.in
        pu.out - hs.return
        sv.outlet - tu.inlet""",
        at=AT,
    )


@pytest.fixture
def cut_off() -> Finding:
    return Finding(
        "vessel-can-be-cut-off",
        Grade.DANGER,
        Says("It can."),
        ("hs", "iv", "pu", "t", "ev"),
        witness=Witness(("iv", "pu"), (), ("iv", "pu")),
        cut_off_components=("t", "ev"),
        cut_off_pipes=("p2", "p3", "p4"),
    )


@pytest.fixture
def worked(hand: Hand, circuit: Drawing) -> Hand:
    hand.show(circuit)
    return hand


def tones(hand: Hand) -> dict[str, Tone]:
    content = hand.view._content
    return {
        id: item.view.palette.tone for items in (content.parts, content.pipes) for id, item in items.items()
    }


def above(hand: Hand) -> tuple[Mark, ...]:
    return hand.view._stage.findings._above._shown


def below(hand: Hand) -> tuple[Mark, ...]:
    return hand.view._stage.findings._below._shown


class TestConcern:
    def test_it_is_the_water_of_the_thing_judged(self, circuit: Drawing, cut_off: Finding) -> None:
        assert concerned(circuit, cut_off) == {
            *("hs", "iv", "t", "ev", "pu"),
            *("p1", "p2", "p3", "p4", "p5"),
        }

    def test_a_discharge_is_another_water(self, circuit: Drawing) -> None:
        finding = Finding("tundish-too-far", Grade.FAULT, Says("Too far."), ("sv",), ("p6",))
        assert concerned(circuit, finding) == {"sv", "tu", "p6"}

    def test_a_coil_is_not_the_water_of_the_store(self) -> None:
        drawing = made(
            {"st": "unvented_store", "m": "cold_main", "hs": "heat_source"},
            "m.outlet - st.cold\nhs.flow - st.coil_flow",
        )
        finding = Finding("any", Grade.FAULT, Says("."), (), ("p1",))
        assert concerned(drawing, finding) == {"m", "st", "p1"}

    def test_names_that_are_gone_do_no_harm(self, circuit: Drawing, cut_off: Finding) -> None:
        assert concerned(remove(circuit, ["hs", "p2"]), cut_off) >= {"t", "ev"}

    def test_a_leg_of_a_three_port_valve_has_its_own_state(self) -> None:
        finding = Finding(
            "any", Grade.FAULT, Says("."), ("x",), witness=Witness(("v:a", "w", "u:b"), (), ("v", "w", "u"))
        )
        assert shut_states(finding) == {"v": {"shut_a"}, "w": {"shut"}, "u": {"shut_b"}}


class TestChosen:
    def test_the_rest_turns_quiet_and_the_witness_is_danger(self, worked: Hand, cut_off: Finding) -> None:
        worked.view.set_finding(cut_off)
        shown = tones(worked)
        assert {id for id, tone in shown.items() if tone is Tone.QUIET} == {"sv", "tu", "p6"}
        assert {id for id, tone in shown.items() if tone is Tone.WITNESS} == {"iv", "pu"}
        assert worked.view._content.parts["iv"].view.look.states == {"shut"}

    def test_letting_go_brings_all_back(self, worked: Hand, cut_off: Finding) -> None:
        before = tones(worked), dict(worked.view._content.layout.labels)
        worked.view.set_finding(cut_off)
        worked.view.set_finding(None)
        assert (tones(worked), dict(worked.view._content.layout.labels)) == before
        assert above(worked) == below(worked) == ()

    def test_every_valve_of_the_witness_says_shut(self, worked: Hand, cut_off: Finding) -> None:
        worked.view.set_finding(cut_off)
        said = [mark.text for mark in above(worked) if isinstance(mark, TextMark)]
        assert said.count("shut") == 2
        assert "cut off from the" in said and "heat source" in said

    def test_the_thing_judged_is_ringed_eight_px_out(self, worked: Hand, cut_off: Finding) -> None:
        worked.view.set_finding(cut_off)
        ring = above(worked)[0]
        assert isinstance(ring, Stroke)
        assert (ring.role, ring.width) == ("danger", 2.5)
        xs = [value for _, values in ring.path for value in values[::2]]
        box = worked.view._content.box("hs")
        assert min(xs) == pytest.approx(box.left() - 8)
        assert max(xs) == pytest.approx(box.right() + 8)

    def test_what_is_cut_off_lies_in_a_hatched_band(self, worked: Hand, cut_off: Finding) -> None:
        worked.view.set_finding(cut_off)
        tint, hatch, edge = below(worked)
        assert isinstance(tint, Fill) and isinstance(hatch, Hatch) and isinstance(edge, Stroke)
        assert (tint.role, hatch.role, edge.role) == ("danger_tint", "danger", "danger")
        assert (hatch.pitch, hatch.opacity, edge.dash) == (8, 0.3, (6, 4))

    def test_high_contrast_drops_the_tint_and_keeps_the_hatch(self, worked: Hand, cut_off: Finding) -> None:
        worked.view.set_theme(themes.high_contrast_dark())
        worked.view.set_finding(cut_off)
        assert [type(mark) for mark in below(worked)] == [Hatch, Stroke]

    def test_labels_keep_clear_of_ring_and_band(self, worked: Hand, cut_off: Finding) -> None:
        worked.view.set_finding(cut_off)
        content = worked.view._content
        for id in ("hs", "ev"):
            box = content.layout.boxes[id]
            assert overlap(grown(box, 9.9), content.layout.labels[id].box) == 0
            assert overlap(grown(box, 16.1), content.layout.labels[id].box) > 0, "no further off than it must"

    def test_it_follows_what_moves(self, worked: Hand, cut_off: Finding) -> None:
        worked.view.set_finding(cut_off)
        before = above(worked)[0]
        worked.view.set_drawing(move(worked.drawing, ["hs"], 0, 2))
        assert above(worked)[0] != before

    def test_a_finding_on_what_is_gone_does_no_harm(self, worked: Hand, cut_off: Finding) -> None:
        worked.view.set_finding(cut_off)
        worked.view.set_drawing(remove(worked.drawing, ["hs", "iv", "ev"]))
        assert "hs" not in worked.view._content.parts

    def test_one_on_a_pipe_rings_the_pipe(self, worked: Hand) -> None:
        worked.view.set_finding(Finding("any", Grade.ADVICE, Says("."), (), ("p6",)))
        ring = above(worked)[0]
        assert isinstance(ring, Stroke) and ring.role == "advice"


class TestMarks:
    def test_the_heaviest_grade_marks_each_thing(self, worked: Hand) -> None:
        findings = [
            Finding("a", Grade.ADVICE, Says("."), ("hs",)),
            Finding("b", Grade.DANGER, Says("."), ("hs",)),
            Finding("c", Grade.FAULT, Says("."), ("sv",)),
            Finding("d", Grade.UNANSWERED, Says("."), (), ("p6",), would_be=Grade.FAULT),
            Finding("e", Grade.ADVICE, Says("."), ()),
        ]
        worked.view.set_findings(findings)
        roles = [mark.role for mark in above(worked) if isinstance(mark, Fill)]
        assert roles.count("danger") == 1
        assert roles.count("fault") == 1
        assert "advice" not in roles
        assert [mark.text for mark in above(worked) if isinstance(mark, TextMark)] == ["?"]

    def test_they_do_not_lie_on_labels(self, worked: Hand) -> None:
        worked.view.set_findings([Finding("a", Grade.FAULT, Says("."), (id,)) for id in ("iv", "pu", "sv")])
        taken = worked.view._stage.findings.taken
        assert len(taken) == 3
        for box in taken:
            assert all(overlap(box, label.box) == 0 for label in worked.view._content.layout.labels.values())

    def test_while_one_is_chosen_only_it_is_marked(self, worked: Hand, cut_off: Finding) -> None:
        worked.view.set_findings([Finding("c", Grade.FAULT, Says("."), ("sv",)), cut_off])
        worked.view.set_finding(cut_off)
        assert "fault" not in {mark.role for mark in above(worked)}


def test_open_ports_are_marked_and_optional_ones_are_not(worked: Hand) -> None:
    content = worked.view._content
    assert content.layout.open_ports["sv"] == (((12 * 16, 19 * 16), (0, 1)),)
    assert content.layout.open_ports["hs"] == ()
    marks = content.parts["sv"].view.ports
    assert {mark.role for mark in marks} == {"ink", "fault", "fault_text"}


def test_a_joined_port_is_no_longer_marked(worked: Hand) -> None:
    worked.drag((20, 21), (12, 24), (12, 19))
    assert worked.drawing.joined.keys() >= {Joint("sv", "inlet")}
    assert worked.view._content.layout.open_ports["sv"] == ()
