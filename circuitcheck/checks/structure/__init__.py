"""Checks of what the building must carry."""
