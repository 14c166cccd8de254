"""The first minutes: what to begin with, and a tour of one fault and its cure."""
