"""Learning in the window: practice with faults put into sound drawings."""
