"""Formulas on plain numbers: units in their names, the source in the docstring."""
