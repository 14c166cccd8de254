"""The drawing itself: what is not joined, and what only looks joined."""
