"""The statuses a command ends with."""

from __future__ import annotations

SOUND, FOUND, FAILED = 0, 1, 2
"""Nothing counts; something does; a file that can't be read or a wrong call."""
INTERRUPTED = 130
"""Ctrl-C, as shells tell it."""
