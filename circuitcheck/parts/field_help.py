"""What each data field means, for whoever fills it in: one or two sentences beside its name.

By the field's name, for parts of many kinds have the same field. Where one kind means something else by it, its
`help` stands with its field there, and counts instead.
"""

from __future__ import annotations

from collections.abc import Mapping

FIELD_HELP: Mapping[str, str] = {
    "all_thermostatic": "Every emitter of the group has a thermostatic head, so that all of them can shut at once.",
    "bends": "Changes of direction along the pipe. Left out, they are counted on a sheet with a scale.",
    "built_in": "What stands inside the casing already and need not be drawn. Its manual lists it.",
    "built_in_safety_valve_bar": "The pressure at which the safety valve inside opens; it is stamped on the valve.",
    "built_in_vessel_l": "The whole volume of the expansion vessel inside, gas and water together.",
    "built_in_vessel_precharge_bar": "The gas pressure of the vessel inside, read while its water side is empty.",
    "capacity_kw": "The heat whose steam the valve can let off at its set pressure; it is stamped on the valve.",
    "clear_of_people": "What comes out is scalding: yes, where it can reach nobody who passes or stands there.",
    "coil_content_l": "The heating water inside the coil.",
    "coil_maximum_pressure_bar": "The highest pressure that the coil is made for, from the store's data plate.",
    "coil_power_kw": "The heat that the coil passes to the store at the flow it is rated for.",
    "combined_feed_and_vent": "The maker allows one pipe to be both cold feed and open vent. Only the manual can "
    "tell.",
    "conditions_met": "Whether this end keeps every condition that the rule book sets for a roof, a high level or a "
    "soil stack. Leave it open until somebody has looked.",
    "content_l": "The water that the cistern holds, filled to its water line.",
    "diameter_mm": "The store's outer diameter. With its weight it tells what the floor has to carry.",
    "double_check": "The link has two check valves in a row, so that heating water cannot come back into the main.",
    "dwelling": "A new dwelling or one that stands already: for a new one some rules are stricter.",
    "empty_weight_kg": "The store's weight without water, from its data plate.",
    "fill_pressure_bar": "The gauge pressure to which the cold system is filled, read at its pressure gauge.",
    "fill_temperature_c": "The temperature of the water when the system is filled.",
    "fitting": "What the outlet serves. It decides how much water is needed there, and whether it must be blended.",
    "floor_capacity_kn_m2": "The load that the floor under the store carries. A structural engineer tells it.",
    "flow_lpm": "The most water that the main gives at the running pressure, measured at the stop valve.",
    "flow_temperature_c": "The temperature at which heating water leaves the heat source, as designed.",
    "glycol_percent": "The share of antifreeze in the heating water; 0 for plain water.",
    "heatproof": "The pipe bears the mark of one that stands scalding discharge. Without it plastic is not safe "
    "there.",
    "height_above_water_mm": "How far the vent rises above the water line before it turns down over the cistern.",
    "high_limit": "What stops the heat when the thermostat fails. One that must be reset by hand stays off until "
    "somebody has looked why.",
    "hot_flow_lpm": "The most hot water that it heats at once, from its data plate.",
    "immersion_cut_out": "The immersion heater has a cut-out of its own that stops it when its thermostat fails.",
    "immersion_kw": "The electric heat of the immersion heater; 0 where there is none.",
    "in_sight": "It can be seen where people come by, so that somebody notices when it runs.",
    "insulated": "The pipe is lagged along its whole length.",
    "internal_expansion": "The store keeps a cushion of air inside in place of an expansion vessel.",
    "isolating_valves": "It has a valve at each side, which anybody who services it can shut.",
    "kv_m3h": "The flow in cubic metres an hour that loses 1 bar through it when fully open.",
    "left_connected": "The link stays on between fillings. It should be taken off.",
    "length_m": "The pipe's run from end to end. Left out, it is measured on a sheet with a scale.",
    "material": "The tube's material: it decides bore, roughness and what heat the pipe may meet.",
    "maximum_flow_lpm": "What the pump moves against no resistance at all: where its curve ends.",
    "maximum_flow_temperature_c": "The hottest heating water that may enter or leave it.",
    "maximum_pressure_bar": "The highest pressure that it is made for, from its data plate.",
    "metres_per_square": "How many metres one square of the sheet stands for, where the drawing is to scale.",
    "minimum_content_l": "The least water that must be able to go round through it, from its manual.",
    "minimum_flow_lpm": "The least flow through it while it heats, from its manual.",
    "note": "Anything the next person should know. It stands in the document and changes no answer.",
    "occupants": "How many people live there; it decides how much hot water is needed.",
    "outlet_size_mm": "The bore of the valve's outlet. The discharge pipe may not be narrower.",
    "output_kw": "The most heat that a heat source gives; of emitters, what they give with water 50 K warmer than "
    "the room.",
    "output_w": "The heat that it gives with water 50 K warmer than the room, as its maker states it.",
    "over": "The cistern over which the vent ends.",
    "place": "Where the discharge ends. What is unknown is asked for, and never taken for safe.",
    "precharge_bar": "The gas pressure of the vessel, read while its water side is empty.",
    "pump_overrun_min": "How long the pump must go on after the heat is off, to carry away what is stored in it.",
    "relief_pressure_bar": "The pressure at which the group's expansion relief valve opens.",
    "resistance_kpa": "The pressure that the group of emitters loses at the flow it is designed for.",
    "rest": "Where the valve goes when its supply fails: leg a, leg b, or it stays where it is.",
    "return_temperature_c": "The temperature at which heating water comes back to the heat source, as designed.",
    "rule_book": "Whose limits the checks hold the drawing against. The report names it.",
    "running_pressure_bar": "The main's pressure while water runs at the flow given beside it.",
    "safety_margin_bar": "What is added to the static height so that the top of the system never falls below the "
    "pressure of the air.",
    "serves": "What it works for, where the circuit alone does not tell.",
    "set_c": "The temperature at which the control calls no more heat.",
    "set_difference_kpa": "The difference in pressure at which the bypass begins to open.",
    "set_pressure_bar": "The pressure to which the valve is set, stamped on it or read off its scale.",
    "set_temperature_c": "The temperature to which the valve is set, stamped on it or read off its scale.",
    "shut_off_head_m": "The pump's head against shut valves: where its curve begins.",
    "size_mm": "The tube's nominal size: its outer diameter for copper and plastic.",
    "standing_pressure_bar": "The main's highest pressure while nothing runs, as at night.",
    "static_height_m": "How far the highest point of the system stands above the expansion vessel.",
    "system_content_l": "All the heating water of the system. Left out, it is summed from the drawing.",
    "thermostat_c": "The temperature at which the store's thermostat calls no more heat.",
    "thermostatic": "The radiator has a thermostatic head, which shuts it when the room is warm.",
    "valves": "The radiator has a valve at each end, so that it can be shut off.",
    "volume_l": "Its whole volume, from its data plate.",
    "water_content_l": "The heating water inside it.",
}
