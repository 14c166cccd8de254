"""One file a gesture: how it starts, moves, ends, and is left with Escape."""
