"""The checks: topic folders, one file a check, named as the check."""
