"""Every check explains itself, and says what it found in words alone."""

from __future__ import annotations

import re
from importlib import import_module

import pytest

from circuitcheck.checks.catalogue import NOT_JUDGED_BY_THIS_PROGRAM, checks, lesson
from circuitcheck.checks.check import lesson_of
from circuitcheck.drawing.value import Drawing
from tests.checks.houses import OPEN_RADIATOR, pumped, sealed, store_discharge, vented
from tests.made import made

ASKED_FOR = {
    "air-vent-absent", "balanced-cold-unreduced", "bath-not-blended", "bypass-set-wrong",
    "cistern-runs-dry", "cistern-too-low", "cistern-too-small", "cisterns-mixed", "coil-not-fit-for-sealed", "cold-check-absent",
    "cold-drawn-after-check", "cold-feed-absent", "cold-feed-can-be-cut-off", "connections-changed-over", "content-below-minimum", "cross-connection",
    "cut-out-drives-no-valve", "discharge-absent", "discharge-bore-too-small", "discharge-can-be-shut",
    "discharge-ends-unsafely", "discharge-not-heatproof", "discharge-rises", "discharge-too-long",
    "drain-absent", "emitter-not-in-a-loop", "emitter-starved", "expansion-relief-absent",
    "fill-pressure-below-reserve", "filling-link-absent", "filling-link-left-connected", "filling-link-without-double-check",
    "filter-absent", "fitted-backwards", "floor-heating-unlimited", "floor-load", "gauge-absent",
    "heat-called-without-interlock", "heat-leak-absent", "heat-strays", "heights-disagree",
    "hot-pipe-too-long", "hot-supply-too-hot", "hot-water-slow", "immersion-without-cut-out", "label-twice",
    "main-too-weak", "near-miss", "no-drop-below-tundish", "no-way-round-when-zones-shut", "open-end",
    "open-vent-absent", "open-vent-can-be-cut-off", "open-vent-too-small", "overheat-cut-out-absent",
    "overlapping-parts", "pipe-too-fast", "plastic-near-heat-source", "pump-against-shut-valves",
    "pump-between-vent-and-feed", "pump-over-or-draws-air", "pump-too-weak", "relief-can-be-cut-off",
    "relief-misplaced", "relief-settings-out-of-order", "safety-valve-absent",
    "safety-valve-away-from-source", "safety-valve-can-be-cut-off", "safety-valve-set-too-high",
    "safety-valve-too-small", "secondary-return-without-check", "shared-discharge-too-small",
    "source-flow-below-minimum", "stop-valve-absent", "store-pressure-not-limited", "store-thermostat-absent",
    "store-too-cool", "store-vent-absent", "store-vent-can-be-cut-off", "store-vessel-absent",
    "store-vessel-can-be-cut-off", "store-vessel-precharge-wrong", "store-vessel-too-small", "temperature-relief-absent",
    "thermostatic-valve-in-thermostat-room", "tundish-absent", "tundish-out-of-sight", "tundish-too-far",
    "unclear-crossing", "uncontrolled-heat-into-store", "uncontrolled-source-sealed", "unreached-part",
    "vent-and-feed-apart", "vent-over-wrong-cistern", "vent-pipe-dips", "vented-store-on-main",
    "vessel-absent", "vessel-can-be-cut-off", "vessel-on-pump-delivery", "vessel-precharge-wrong",
    "vessel-too-small", "zone-without-control", "zones-share-a-valve",
}  # fmt: skip


def test_every_check_is_there() -> None:
    assert set(checks()) >= ASKED_FOR
    assert list(checks()) == sorted(checks())


@pytest.mark.parametrize("name", checks())
def test_a_check_is_named_as_its_file_and_its_topic_as_its_folder(name: str) -> None:
    check = checks()[name]
    module = import_module(f"circuitcheck.checks.{check.topic}.{name.replace('-', '_')}")
    assert module.judge is check.judge
    assert check.name == check.lesson.name == name
    assert getattr(module, "NAME", name) == name


@pytest.mark.parametrize("name", checks())
def test_a_lesson_is_complete(name: str) -> None:
    told = lesson(name)
    assert 10 < len(told.title) < 90 and not told.title.endswith(".")
    for text in (told.flags, told.why, told.remedy, told.source):
        assert len(text) > 20 and text.endswith(".") and "  " not in text
        assert "{" not in text and "<" not in text
    # A source is a document, or it is said that there is none.
    assert re.search(r"\d|no source", told.source)


@pytest.mark.parametrize("name", checks())
def test_the_topic_says_what_it_is_of(name: str) -> None:
    docstring = import_module(f"circuitcheck.checks.{checks()[name].topic}").__doc__
    assert docstring and docstring.strip().endswith(".")


COMPLETE = "Title.\n\nFlags: One.\nWhy: Two\n    lines.\nRemedy: Three.\nSource: Four."


def test_a_lesson_is_read_from_a_docstring() -> None:
    told = lesson_of("a-check", COMPLETE)
    assert (told.name, told.title, told.flags, told.why, told.remedy, told.source) == (
        "a-check", "Title", "One.", "Two lines.", "Three.", "Four.",
    )  # fmt: skip


@pytest.mark.parametrize("section", ["Flags", "Why", "Remedy", "Source"])
def test_a_docstring_that_lacks_a_section_is_refused(section: str) -> None:
    without = re.sub(rf"^{section}:.*(\n    .*)*\n?", "", COMPLETE, flags=re.MULTILINE)
    assert section not in without
    with pytest.raises(ValueError, match=section):
        lesson_of("a-check", without)
    empty = re.sub(rf"^{section}:.*(\n    .*)*", f"{section}:", COMPLETE, flags=re.MULTILINE)
    with pytest.raises(ValueError, match=section):
        lesson_of("a-check", empty)


def test_an_empty_docstring_is_refused() -> None:
    with pytest.raises(ValueError, match="a-check"):
        lesson_of("a-check", "")


def test_an_unknown_lesson() -> None:
    with pytest.raises(KeyError):
        lesson("no-such-check")


def test_what_no_check_judges_is_said() -> None:
    assert any("structure" in each for each in NOT_JUDGED_BY_THIS_PROGRAM)
    assert any("workmanship" in each for each in NOT_JUDGED_BY_THIS_PROGRAM)


LABEL = "Back {bedroom} <b>rail</b> %s"

FAULTY: dict[str, Drawing] = {
    "nothing safe": sealed(vessel="", safety=""),
    "cut off": sealed(vessel="t2.branch iv.a:b ev.connection", safety="t1.branch v2.a:b sv.inlet",
        iv="isolating_valve", v2="isolating_valve"),
    "check valves": sealed(vessel="t2.branch cv.in:out ev.connection", safety="t1.branch c2.in:out sv.inlet",
        cv="check_valve", c2="check_valve"),
    "vent and feed": vented(vent="t1.branch iv.a:b ov.connection", feed="fc.feed v2.a:b t2.branch",
        iv="isolating_valve", v2="isolating_valve"),
    "feed only": vented(vent=""),
    "vent only": vented(feed=""),
    "not known if combined": vented(vent="", hs=("heat_source", {"combined_feed_and_vent": None})),
    "no way round": pumped("hs.flow pu.in:out t1.a:b zv.in:out rad.flow:return t2.a:b hs.return",
        "t1.branch iv.a:b t2.branch", zv="zone_valve", rad=OPEN_RADIATOR, iv="isolating_valve"),
    "bypass backwards": pumped("hs.flow pu.in:out t1.a:b zv.in:out rad.flow:return t2.a:b hs.return",
        "t2.branch bv.in:out t1.branch", zv="zone_valve", rad=OPEN_RADIATOR, bv="bypass_valve"),
    "three-port valve": pumped("hs.flow pu.in:out tp.ab:a rad.flow:return t1.a:b hs.return",
        "tp.b r2.flow:return t1.branch", tp="three_port_valve", rad="radiator", r2="radiator"),
    "not known": pumped("hs.flow pu.in:out zv.in:out rad.flow:return hs.return",
        hs=("heat_source", {"pump_overrun_min": None}), zv="zone_valve", rad="radiator"),
    "discharge": store_discharge(({"size_mm": 12, "length_m": 1},), ({"size_mm": 22, "length_m": 30, "bends": 2},)),
    "discharge not known": store_discharge(({},), ({},), store={"volume_l": None}),
    "no discharge": made({"sv": "safety_valve", "k": "cap"}, "sv.outlet - k.connection"),
    "nothing joined": made({"hs": "heat_source", "t1": "tee", "ev": "expansion_vessel"}, "1,1 - 2,2"),
}  # fmt: skip


def labelled(drawing: Drawing) -> Drawing:
    """The drawing with a trying label on every part."""
    from dataclasses import replace

    components = {
        id: replace(part, label=f"{LABEL} no. {number}")
        for number, (id, part) in enumerate(drawing.components.items(), start=1)
    }
    return replace(drawing, components=components)


@pytest.mark.parametrize("drawing", FAULTY.values(), ids=FAULTY.keys())
def test_messages_hold_labels_and_no_ids_or_gaps(drawing: Drawing) -> None:
    from circuitcheck.analysis import analyse

    analysis = analyse(labelled(drawing))
    assert analysis.crashed == ()
    assert analysis.findings
    for finding in analysis.findings:
        for part in drawing.components:
            # An unanswered finding names fields by id, and a pipe has no label.
            words = [word for word in re.findall(r"[\w.:]+", finding.message) if "." not in word.rstrip(".")]
            assert part not in [word.rstrip(".") for word in words], finding.message
        assert not re.search(r"[{}]", finding.message.replace("{bedroom}", "")), finding.message
        assert finding.message[0].isupper() and finding.message.rstrip().endswith(".")
        assert "None" not in finding.message
