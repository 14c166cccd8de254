"""Where relief and safety valves discharge, and whether the pipe carries it."""
