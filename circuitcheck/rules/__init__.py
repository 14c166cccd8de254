"""Rule books: limits and tables that differ by place or source, as data with their source."""
