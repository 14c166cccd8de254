"""Versions of the drawing file: which can be read, and how an earlier one is brought up to date."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any

from circuitcheck.drawing.value import FORMAT_VERSION
from circuitcheck.told import a_word, worded

Step = Callable[[dict[str, Any]], dict[str, Any]]
"""From the content of a file of one version to that of the next; it need not set `wetcircuit`."""

STEPS: Mapping[int, Step] = MappingProxyType({})
"""The step that leads on from each earlier version; version 1 is the first there was."""


class VersionError(ValueError):
    """The file is of no version that this program reads; the text is one sentence for the user."""


def upgraded(
    content: dict[str, Any], steps: Mapping[int, Step] = STEPS, newest: int = FORMAT_VERSION
) -> dict[str, Any]:
    """The content of a file as one of the `newest` version. Raises VersionError."""
    version = _version(content)
    if version > newest:
        raise VersionError(
            worded(
                "The file is of format version {version}, written by a later version of this program; "
                "this one reads versions up to {newest}.",
                version=str(version),
                newest=newest,
            )
        )
    while version < newest:
        if version not in steps:
            raise VersionError(
                worded(
                    "The file is of format version {version}, which this program does not know.",
                    version=str(version),
                )
            )
        content = {**steps[version](content), "wetcircuit": version + 1}
        version += 1
    return content


def _version(content: dict[str, Any]) -> int:
    if "wetcircuit" not in content:
        raise VersionError(
            a_word('The file is no drawing: it has no "wetcircuit", the version of its format.')
        )
    version = content["wetcircuit"]
    if type(version) is float and version.is_integer():
        version = int(version)
    if type(version) is not int:
        raise VersionError(a_word('"wetcircuit", the version of the file\'s format, must be a whole number.'))
    if version < 1:
        raise VersionError(f"The file is of format version {version}, which there never was.")
    return version
