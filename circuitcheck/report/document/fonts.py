"""The font that ships, cut down to the letters of one file, so that a page carries it along."""

from __future__ import annotations

import base64
import io
import logging
from collections.abc import Iterable, Mapping
from contextlib import closing
from functools import lru_cache

from circuitcheck.picture.lettering import FACES
from circuitcheck.report.plain import plain
from circuitcheck.shipped import data_path

FAMILY = "Source Sans 3"


def font_path(weight: int) -> str:
    """The file of one weight."""
    return str(data_path("fonts") / f"SourceSans3-{FACES[weight]}.ttf")


def font_faces(letters: Mapping[int, Iterable[str]]) -> str:
    """A style sheet's `@font-face` rules for these weights, each font inside it, with these letters only."""
    return "".join(
        _face(weight, frozenset(f"{plain(''.join(texts))} …")) for weight, texts in sorted(letters.items())
    )


# Documents of one drawing have the same letters, those of a folder often: and cutting a font down takes longer than
# all else of a page.
@lru_cache(maxsize=64)
def _face(weight: int, letters: frozenset[str]) -> str:
    # Slow to import, and only what is painted with its own font needs it.
    from fontTools.subset import Options, Subsetter, load_font, save_font

    options = Options(flavor="woff", layout_features=["kern", "tnum", "mark", "mkmk"], notdef_outline=True)
    options.recalc_timestamp = False
    with _Quiet():
        out = io.BytesIO()
        with closing(load_font(font_path(weight), options, dontLoadGlyphNames=True)) as font:
            subsetter = Subsetter(options)
            subsetter.populate(unicodes=map(ord, letters))
            subsetter.subset(font)
            save_font(font, out, options)
    data = base64.b64encode(out.getvalue()).decode("ascii")
    return (
        f'@font-face{{font-family:"{FAMILY}";font-weight:{weight};font-style:normal;'
        f'src:url(data:font/woff;base64,{data}) format("woff")}}\n'
    )


class _Quiet:
    """Keeps the font tools from writing to the user's terminal."""

    def __enter__(self) -> None:
        self._level = logging.getLogger("fontTools").level
        logging.getLogger("fontTools").setLevel(logging.ERROR)

    def __exit__(self, *error: object) -> None:
        logging.getLogger("fontTools").setLevel(self._level)
