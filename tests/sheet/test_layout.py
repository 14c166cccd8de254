"""The layout of a drawing: labels, letters, hops and open ports, kept up to date by what changed."""

from collections.abc import Callable, Mapping
from dataclasses import replace
from itertools import combinations

import pytest

from circuitcheck.drawing.edits import move, relabel, remove, set_field, turn
from circuitcheck.drawing.value import Control, Drawing
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds
from circuitcheck.picture.labels import overlap
from circuitcheck.sheet import depiction, labelling
from circuitcheck.sheet.layout import Layout, same_circuit
from circuitcheck.sheet.things import things
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.made import made


class Services:
    """Gives every pipe one service, and counts how often it was asked."""

    def __init__(self, name: str = "flow") -> None:
        self.name = name
        self.asked = 0

    def __call__(self, drawing: Drawing) -> Mapping[str, str]:
        self.asked += 1
        return dict.fromkeys(drawing.pipes, self.name)


@pytest.fixture
def crossed() -> Drawing:
    return made(
        {"a": "pump", "b": "pump", "c": ("isolating_valve", {}), "d": "isolating_valve"},
        "a.out - b.in\nc.b - d.a",
        at={"a": (0, 10), "b": (20, 10), "c": (10, 4), "d": (10, 16)},
    )


@pytest.fixture
def standing(crossed: Drawing) -> Drawing:
    """As `crossed`, its valves turned so that the second pipe runs upright."""
    return turn(turn(crossed, ["c"]), ["d"])


def laid(drawing: Drawing, services: Services | None = None) -> Layout:
    layout = Layout(services or Services())
    layout.update(drawing)
    return layout


def test_the_level_pipe_hops(standing: Drawing) -> None:
    assert laid(standing).hops == {"p1": ((160, 160),)}


def test_a_hop_goes_when_the_upright_pipe_does(standing: Drawing) -> None:
    layout = laid(standing)
    changes = layout.update(remove(standing, ["p2"]))
    assert layout.hops == {}
    assert "p1" in changes.pipes
    assert changes.gone == {"p2"}


def test_only_what_changed_is_named(standing: Drawing) -> None:
    layout = laid(standing)
    changes = layout.update(relabel(standing, "a", "A"))
    assert changes.parts == {"a"}
    assert changes.pipes == frozenset()


def test_the_label_follows_at_once_and_finds_its_place_at_the_end(standing: Drawing) -> None:
    layout = laid(standing)
    box = layout.labels["a"].box
    moved = move(standing, ["a"], 0, -3)
    layout.update(moved, passing=True)
    assert layout.labels["a"].box == (box[0], box[1] - 48, box[2], box[3] - 48)
    layout.update(moved)
    assert laid(moved).labels == layout.labels


def test_a_picture_has_no_history(standing: Drawing) -> None:
    layout = laid(standing)
    for step in (
        move(standing, ["a"], 4, 4),
        remove(standing, ["p1"]),
        move(standing, ["b"], 0, 4),
        standing,
    ):
        layout.update(step)
    fresh = laid(standing)
    assert layout.labels == fresh.labels
    assert layout.gaps == fresh.gaps
    assert layout.hops == fresh.hops
    assert layout.lines == fresh.lines


def test_services_are_asked_for_only_when_the_circuit_is_another(standing: Drawing) -> None:
    services = Services()
    layout = laid(standing, services)
    layout.update(move(standing, ["a", "b"], 1, 1))
    layout.update(relabel(standing, "a", "A"))
    assert services.asked == 1
    layout.update(remove(standing, ["p2"]))
    assert services.asked == 2


def test_a_large_drawing_waits_with_services_until_the_gesture_ends(
    standing: Drawing, monkeypatch: pytest.MonkeyPatch
) -> None:
    from circuitcheck.sheet import layout as module

    monkeypatch.setattr(module, "SMALL_DRAWING", 1)
    services = Services()
    layout = laid(standing, services)
    changed = remove(standing, ["b"])
    layout.update(changed, passing=True)
    assert services.asked == 1
    layout.update(changed)
    assert services.asked == 2


def test_in_a_large_drawing_only_labels_that_are_crowded_move(
    standing: Drawing, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(labelling, "SMALL_DRAWING", 1)
    layout = laid(standing)
    before = dict(layout.labels)
    under_b = move(standing, ["d"], 10, -4)
    layout.update(under_b)
    assert layout.labels["a"] == before["a"]
    assert layout.labels["b"] != before["b"]


@pytest.mark.parametrize("many", [0, 2000])
def test_the_bounds_follow_every_change(
    many: int, standing: Drawing, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("circuitcheck.sheet.layout.MANY_ELSEWHERE", many)
    edits: tuple[Callable[[Drawing], Drawing], ...] = (
        lambda each: move(each, ["a"], -9, -30),
        lambda each: move(each, ["a"], 9, 31),
        lambda each: relabel(each, "b", "A pump with a name far longer than its symbol is wide"),
        lambda each: move(each, ["d"], 0, 25),
        lambda each: remove(each, ["p1"]),
        lambda each: remove(each, ["d"]),
        lambda each: relabel(each, "b", ""),
    )
    layout, drawing = laid(standing), standing
    for edit in edits:
        drawing = edit(drawing)
        layout.update(drawing, passing=True)
        look_at_bounds(layout)
        layout.update(drawing)
        look_at_bounds(layout)
    layout.keep_clear({"a": 30.0}, [(0.0, 0.0, 400.0, 400.0)])
    look_at_bounds(layout)


def look_at_bounds(layout: Layout) -> None:
    """They are the box round all symbols, labels and lines."""
    boxes = [*layout.boxes.values(), *(label.box for label in layout.labels.values())]
    for line in layout.lines.values():
        xs, ys = zip(*line, strict=True)
        boxes.append((min(xs), min(ys), max(xs), max(ys)))
    lefts, tops, rights, lows = zip(*boxes, strict=True)
    assert layout.bounds() == (min(lefts), min(tops), max(rights), max(lows))
    assert layout.lowest(float("-inf"), float("inf")) == max(lows)


def test_moves_and_names_leave_the_circuit_the_same(standing: Drawing) -> None:
    assert same_circuit(standing, move(relabel(standing, "a", "A"), ["b", "p1"], 1, 0))
    assert not same_circuit(standing, remove(standing, ["p1"]))
    assert not same_circuit(standing, set_field(standing, "a", "isolating_valves", False))


@pytest.mark.parametrize("sample", sorted(file.stem for file in data_path("samples").glob("*.wetcircuit")))
def test_no_label_of_a_sample_lies_on_another_or_on_a_symbol(sample: str) -> None:
    layout = laid(read(data_path("samples") / f"{sample}.wetcircuit"))
    for one, two in combinations(layout.labels.values(), 2):
        assert overlap(one.box, two.box) == 0, (one.lines, two.lines)
    for label in layout.labels.values():
        for id, box in layout.boxes.items():
            assert label.is_inside or overlap(label.box, box) == 0, (label.lines, id)


def test_parts_and_pipes_without_a_place_are_not_shown() -> None:
    layout = laid(made({"a": "pump", "b": "pump"}, "a.out - b.in", at={"a": (0, 0)}))
    assert layout.boxes.keys() == {"a"}
    assert layout.lines == {}


def test_a_part_that_loses_its_place_goes(standing: Drawing) -> None:
    layout = laid(standing)
    adrift = replace(
        standing, components={**standing.components, "a": replace(standing.components["a"], at=None)}
    )
    layout.update(adrift)
    assert "a" not in layout.boxes and "a" not in layout.labels
    assert "p1" not in layout.lines


def test_a_placed_control_is_shown_and_another_is_not() -> None:
    kind = kinds()["room_thermostat"]
    drawing = Drawing(
        controls={"c1": Control("c1", kind, at=Point(3, 3), set_c=20), "c2": Control("c2", kind)}
    )
    assert things(drawing).keys() == {"c1"}
    assert laid(drawing).labels["c1"].lines == ("Room thermostat", "20 °C")


class TestDepiction:
    def part(self, kind: str, **data: object) -> Drawing:
        return made({"x": (kind, data)}, "", at={"x": (0, 0)})

    @pytest.mark.parametrize(
        ("kind", "data", "figure"),
        [
            ("heat_source", {"output_kw": 18}, "18 kW"),
            ("heat_source", {}, ""),
            ("temperature_relief_valve", {"set_pressure_bar": 7.5}, "7.5 bar · 90 °C"),
            ("zone_valve", {"serves": "hot_water"}, "hot water"),
            ("discharge_end", {}, ""),
            ("discharge_end", {"place": "gully_below_grating"}, "gully, below the grating"),
            ("filling_link", {}, "taken off"),
            ("filling_link", {"left_connected": True}, "left connected"),
        ],
    )
    def test_the_figure_that_matters(self, kind: str, data: dict[str, object], figure: str) -> None:
        assert depiction.figure_of(self.part(kind, **data).components["x"]) == figure

    def test_the_decimal_sign_is_that_of_the_place(self) -> None:
        part = self.part("pump", shut_off_head_m=5.5).components["x"]
        assert depiction.figure_of(part, ",") == "5,5 m"

    def test_a_tee_has_a_label_only_where_it_is_given_one(self) -> None:
        tee = self.part("tee").components["x"]
        assert depiction.label_lines(tee) == ()
        assert depiction.label_lines(replace(tee, label="Riser")) == ("Riser",)

    def test_control_characters_of_a_file_are_shown_and_not_obeyed(self) -> None:
        shown = depiction.one_line("Pump\u202e\x1b[31m\nred")
        assert shown == "Pump[202E][1B][31m red"

    def test_states_come_from_the_data(self) -> None:
        assert depiction.states(self.part("isolating_valve", secured=True).components["x"]) == {"secured"}
        assert depiction.states(self.part("pump").components["x"]) == frozenset()

    def test_a_store_carries_its_label_inside(self) -> None:
        layout = laid(self.part("unvented_store", volume_l=180))
        label = layout.labels["x"]
        assert label.is_inside
        assert (label.lines, label.heads) == (("Unvented", "store", "180 l · 60 °C"), 2)
        left, top, right, low = layout.boxes["x"]
        assert left < label.box[0] and label.box[2] < right and top < label.box[1] and label.box[3] < low

    def test_a_long_name_stands_outside_a_store(self) -> None:
        drawing = relabel(self.part("unvented_store"), "x", "Store in the loft over the landing")
        assert not laid(drawing).labels["x"].is_inside

    @pytest.mark.parametrize(
        ("parts", "said"),
        [
            ({}, ""),
            ({"hs": "heat_source"}, "Heating"),
            ({"hs": "heat_source", "ev": "expansion_vessel"}, "Sealed heating"),
            (
                {"hs": "heat_source", "ev": "expansion_vessel", "st": "unvented_store"},
                "Sealed heating, mains-fed store",
            ),
            (
                {"hs": "heat_source", "ov": "open_vent", "st": "vented_store"},
                "Open-vented heating, store fed from a cistern",
            ),
        ],
    )
    def test_the_subtitle_says_what_plant_it_is(self, parts: dict[str, str], said: str) -> None:
        drawing = made(parts, "")
        assert depiction.subtitle(drawing) == laid(drawing).subtitle == said

    def test_the_subtitle_follows_an_edit(self) -> None:
        layout = laid(made({"hs": "heat_source"}, ""))
        with_vessel = made({"hs": "heat_source", "ev": "expansion_vessel"}, "")
        layout.update(with_vessel)
        assert layout.subtitle == "Sealed heating"
        layout.update(relabel(with_vessel, "ev", "Vessel"))
        assert layout.subtitle == "Sealed heating"
        layout.update(Drawing())
        assert layout.subtitle == ""
