"""The outline: the drawing as a tree, for all who would rather walk it by name than see it."""
