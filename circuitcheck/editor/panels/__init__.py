"""The panels beside the sheet: parts to place, details of what is chosen, findings."""
