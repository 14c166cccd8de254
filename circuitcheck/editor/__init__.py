"""The window in which circuits are drawn: the only part of the program that uses Qt."""
