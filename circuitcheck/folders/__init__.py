"""Many drawings at once: several at a time, on other machines, gone on with after an interruption."""
