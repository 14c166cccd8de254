"""The data fields of the sheet, the design, a pipe and a control."""

from __future__ import annotations

from circuitcheck.parts.kind import Field, choice, number, switch
from circuitcheck.rules.book import book_names

RULE_BOOKS = book_names()
MATERIALS = ("copper", "plastic", "steel")

SHEET_FIELDS: tuple[Field, ...] = (number("metres_per_square", "Scale", "m per square", above=0, most=1000),)

DESIGN_FIELDS: tuple[Field, ...] = (
    number("flow_temperature_c", "Flow", "°C", least=-50, most=300),
    number("return_temperature_c", "Return", "°C", least=-50, most=300),
    number("fill_temperature_c", "Fill", "°C", least=-50, most=300),
    number("fill_pressure_bar", "Fill pressure", "bar", least=0),
    number("static_height_m", "Static height", "m", least=0, most=1000),
    number("system_content_l", "System content", "l", least=0),
    choice("rule_book", "Rule book", RULE_BOOKS, default="england"),
    number("safety_margin_bar", "Safety margin", "bar", default=0.3, least=0),
    number("floor_capacity_kn_m2", "Floor carries", "kN/m²", least=0),
    number("occupants", "Occupants", "", least=0),
    choice("dwelling", "Dwelling", ("new", "existing"), default="existing"),
    number("glycol_percent", "Glycol", "%", default=0, least=0, most=100),
    choice(
        "heat_called_by",
        "Heat called by",
        ("valve_end_switches", "programmer_only"),
        default="valve_end_switches",
        help="End switches let the heat source and pump run only while a motor valve stands open.",
    ),
)

PIPE_FIELDS: tuple[Field, ...] = (
    number("size_mm", "Size", "mm", above=0),
    choice("material", "Material", MATERIALS, default="copper"),
    number("length_m", "Length", "m", least=0),
    number("rise_m", "Rise", "m", help="Height gained from the first end to the second; negative falls."),
    number("bends", "Bends", "", least=0),
    number("bore_mm", "Bore", "mm", above=0, help="Inner diameter, where the tube is not standard."),
    switch("insulated", "Insulated", default=None),
    number(
        "straight_drop_m",
        "Straight drop",
        "m",
        least=0,
        help="How far it runs straight down below a tundish before its first bend.",
    ),
    switch("heatproof", "Marked fit for hot discharge", default=None),
)

CONTROL_FIELDS: tuple[Field, ...] = (number("set_c", "Set", "°C", least=-50, most=300),)
