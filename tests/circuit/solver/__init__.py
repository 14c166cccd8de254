"""The network solver, by hand, against a compiled engine, and by the conditions that a solution must meet."""
