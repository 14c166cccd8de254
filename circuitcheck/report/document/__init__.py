"""What is handed over: one content of a drawing, and one painter for each format of file."""
