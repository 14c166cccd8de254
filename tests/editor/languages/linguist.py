"""Reads and writes the files that translators edit, and makes of them what the program loads."""

from __future__ import annotations

import subprocess
import sys
import xml.etree.ElementTree as ET
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from circuitcheck.editor.language import FOLDER
from circuitcheck.editor.translating import CONTEXT

_HEAD = '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n'


@dataclass(frozen=True)
class Entry:
    """One text: where it is from, and its translation; empty where there is none yet."""

    section: str
    told: str


def source_of(code: str) -> Path:
    """The file that translators edit."""
    return FOLDER / f"{code}.ts"


def read(code: str) -> dict[str, Entry]:
    """Every entry of a language by its English text."""
    found = {}
    for message in ET.parse(source_of(code)).iterfind(".//message"):
        source = message.findtext("source") or ""
        if source in found:
            raise ValueError(f"twice in {code}.ts: {source}")
        found[source] = Entry(message.findtext("extracomment") or "", message.findtext("translation") or "")
    return found


def write(code: str, entries: Mapping[str, Entry]) -> None:
    """Write them by section, in the order they are given in; what has no translation is marked unfinished."""
    root = ET.Element("TS", version="2.1", language=code, sourcelanguage="en")
    context = ET.SubElement(root, "context")
    ET.SubElement(context, "name").text = CONTEXT
    for source, entry in entries.items():
        message = ET.SubElement(context, "message")
        ET.SubElement(message, "source").text = source
        ET.SubElement(message, "extracomment").text = entry.section
        told = ET.SubElement(message, "translation", {} if entry.told else {"type": "unfinished"})
        told.text = entry.told or None
    ET.indent(root, "")
    text = ET.tostring(root, encoding="unicode")
    source_of(code).write_text(f"{_HEAD}{text}\n", encoding="utf-8", newline="\n")


def compiled(code: str, into: Path) -> bytes:
    """What Qt's own tool makes of the file, by way of a file in that folder."""
    made = into / f"{code}.qm"
    tool = Path(sys.executable).with_name("pyside6-lrelease")
    subprocess.run([tool, "-silent", source_of(code), "-qm", made], check=True, timeout=60)
    return made.read_bytes()
