"""A drawing laid out: where all of it lies on the sheet, and the marks of it, for whatever paints them; no Qt."""
