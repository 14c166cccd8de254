"""A drawing as strokes, fills and texts, painted alike on the sheet and on paper; no Qt."""
