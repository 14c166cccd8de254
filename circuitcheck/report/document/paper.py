"""The papers a document is made for."""

from __future__ import annotations

from enum import StrEnum


class Paper(StrEnum):
    """The size of the sheets."""

    A4 = "a4"
    A3 = "a3"


class Orientation(StrEnum):
    """How a sheet lies."""

    PORTRAIT = "portrait"
    LANDSCAPE = "landscape"
