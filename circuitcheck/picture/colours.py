"""Every colour of the program by its role: for light, for dark, and for both in high contrast."""

from __future__ import annotations

from collections.abc import Mapping

ROLES: Mapping[str, tuple[str, str, str, str]] = {
    # role: light, dark, high contrast light, high contrast dark
    "paper": ("#FCFBF7", "#17191B", "#FFFFFF", "#000000"),
    "grid": ("#DDD8CC", "#34383C", "#FFFFFF", "#000000"),
    "body": ("#FFFFFF", "#22262A", "#FFFFFF", "#000000"),
    "field": ("#FFFFFF", "#2A2E32", "#FFFFFF", "#000000"),
    "chrome": ("#F1EFE9", "#212427", "#FFFFFF", "#000000"),
    "panel": ("#F8F7F3", "#1C1F21", "#FFFFFF", "#000000"),
    "hairline": ("#DAD5CA", "#363B40", "#000000", "#FFFFFF"),
    "ink": ("#1D2126", "#ECE8DF", "#000000", "#FFFFFF"),
    "ink_2": ("#54595F", "#B4B2AB", "#000000", "#FFFFFF"),
    "quiet": ("#868A8C", "#7B7E80", "#595959", "#A6A6A6"),
    "edge": ("#837E73", "#848A90", "#000000", "#FFFFFF"),
    "select": ("#5B34C9", "#B9A0FF", "#3A00B8", "#D6C6FF"),
    "select_text": ("#FFFFFF", "#1B1036", "#FFFFFF", "#1B1036"),
    "flow": ("#C23B0A", "#FF8F5E", "#8A2400", "#FFAE8A"),
    "return_": ("#1D5FC4", "#7FB2FF", "#003C96", "#A9CCFF"),
    "cold": ("#0A6E6E", "#4ECDC2", "#004A4A", "#7DEBE1"),
    "hot": ("#8F6000", "#EFC04C", "#5C3D00", "#FFD873"),
    "discharge": ("#565C63", "#A8AEB5", "#33373B", "#D0D4D8"),
    "vent": ("#5B6714", "#BFCB6A", "#3B4400", "#DCE68F"),
    "danger": ("#B0002C", "#FF6F88", "#8A0020", "#FF9CAE"),
    "danger_text": ("#FFFFFF", "#22000A", "#FFFFFF", "#22000A"),
    "danger_tint": ("#FAE6EA", "#3A1820", "#FFFFFF", "#000000"),
    "fault": ("#F2B01E", "#F2B01E", "#4A3200", "#F2B01E"),
    "fault_text": ("#4A3200", "#2A1C00", "#FFFFFF", "#2A1C00"),
    "advice": ("#3F4C7A", "#AEBBEA", "#26315C", "#CBD5F7"),
    "advice_text": ("#FFFFFF", "#131A33", "#FFFFFF", "#131A33"),
    "unanswered": ("#54595F", "#B4B2AB", "#33373B", "#D0D4D8"),
    "cure": ("#0A6B3B", "#62D394", "#004D26", "#8FEDB6"),
    "cure_text": ("#FFFFFF", "#04180C", "#FFFFFF", "#04180C"),
    "cure_tint": ("#E2F2E8", "#15301F", "#FFFFFF", "#000000"),
    # Decoration inside symbols, never the only sign of anything.
    "water_tint": ("#DDE8E4", "#1B2F2E", "#FFFFFF", "#000000"),
    "flame_tint": ("#F6DDD3", "#4A2F26", "#FFFFFF", "#000000"),
    "gas_tint": ("#DDD8CC", "#34383C", "#FFFFFF", "#000000"),
    "coil_middle": ("#8A4A5E", "#BFA0AE", "#473036", "#D3BEC7"),
}
"""Light, dark, high contrast light, high contrast dark."""


def light(role: str) -> str:
    """A role's colour on light paper, as `#RRGGBB`."""
    return ROLES[role][0]


def dark(role: str) -> str:
    """A role's colour on dark paper, as `#RRGGBB`."""
    return ROLES[role][1]


def printed(role: str) -> str:
    """A role's colour in print, where the paper is white and is not printed."""
    return "#FFFFFF" if role in ("paper", "body") else ROLES[role][0]
