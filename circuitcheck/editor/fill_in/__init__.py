"""The table to fill in: what is not known first, each number asked for once, with what needs it."""
