"""Practice: faults put into sound drawings, the score of who looks for them, and progress. No window here."""
