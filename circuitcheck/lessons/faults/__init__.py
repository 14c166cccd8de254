"""The faults of practice: one file a check, named as the check, found by walking."""
