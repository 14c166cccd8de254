"""Flows and pressures in a network of pipes, pumps and valves."""
