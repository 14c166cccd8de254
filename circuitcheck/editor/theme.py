"""Themes: every colour of the program by its role, light, dark, and both in high contrast."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from PySide6.QtGui import QColor

from circuitcheck.picture.colours import ROLES


@dataclass(frozen=True, slots=True)
class Theme:
    """The colours by role: `theme["flow"]`. In high contrast strokes grow by 1 px and tints go."""

    name: str
    is_dark: bool
    high_contrast: bool
    colours: Mapping[str, QColor]

    def __getitem__(self, role: str) -> QColor:
        """The colour of a role. Raises KeyError for no such role."""
        return self.colours[role]

    def hex(self, role: str) -> str:
        """The colour of a role as `#rrggbb`."""
        return self.colours[role].name()


def _theme(column: int, name: str, *, is_dark: bool, high_contrast: bool = False) -> Theme:
    colours = {role: QColor(values[column]) for role, values in ROLES.items()}
    return Theme(name, is_dark, high_contrast, MappingProxyType(colours))


def light() -> Theme:
    """Ink on warm paper."""
    return _theme(0, "light", is_dark=False)


def dark() -> Theme:
    """Pale ink on a dark sheet."""
    return _theme(1, "dark", is_dark=True)


def high_contrast_light() -> Theme:
    """Black on white: every text and line at 7 to 1 or more."""
    return _theme(2, "high contrast light", is_dark=False, high_contrast=True)


def high_contrast_dark() -> Theme:
    """White on black: every text and line at 7 to 1 or more."""
    return _theme(3, "high contrast dark", is_dark=True, high_contrast=True)
