"""The graph behind a drawing, against brute force and by hand."""
