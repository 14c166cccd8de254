"""The Drawing value, and the pure edits that turn one Drawing into another."""
