"""What several commands take alike."""

from __future__ import annotations

import argparse


def jobs(text: str) -> int:
    """How many at a time, from what was typed."""
    number = int(text)
    if number < 1:
        raise argparse.ArgumentTypeError("at least 1")
    return number
