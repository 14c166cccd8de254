"""The parts: one file a kind, and the catalogue that finds them."""
