"""What leaves the program: answers as text, JSON and CSV."""
