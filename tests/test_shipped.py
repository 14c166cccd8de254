"""What ships with the program is found from a checkout and from a wheel, and is all there."""

import re
import struct
import subprocess
import sys
import tomllib
import zipfile
from pathlib import Path

import pytest

from circuitcheck import shipped
from circuitcheck.shipped import data_path, version

ROOT = Path(__file__).resolve().parent.parent
FONTS = {"Regular": 400, "Medium": 500, "SemiBold": 600, "Bold": 700}


def files_below(folder: Path) -> set[str]:
    return {path.relative_to(folder).as_posix() for path in folder.rglob("*") if path.is_file()}


def weight_class(font: Path) -> int:
    """Return usWeightClass of the OS/2 table of a TrueType file (OpenType specification, 'OS/2')."""
    content = font.read_bytes()
    (tables,) = struct.unpack_from(">H", content, 4)
    for entry in range(12, 12 + 16 * tables, 16):
        tag, _checksum, offset, _length = struct.unpack_from(">4sLLL", content, entry)
        if tag == b"OS/2":
            return int(struct.unpack_from(">H", content, offset + 4)[0])
    raise AssertionError(f"{font} has no OS/2 table")


def test_a_checkout_has_every_folder() -> None:
    assert list(data_path("icons").glob("*.svg"))
    assert list(data_path("samples").glob("*.wetcircuit"))


def test_each_weight_of_the_font_ships_with_its_licence() -> None:
    fonts = data_path("fonts")
    found = {name: weight_class(fonts / f"SourceSans3-{name}.ttf") for name in FONTS}
    assert found == FONTS
    assert "SIL OPEN FONT LICENSE Version 1.1" in (fonts / "OFL.txt").read_text(encoding="utf-8")


def test_a_missing_folder_is_named_in_a_sentence() -> None:
    with pytest.raises(FileNotFoundError, match=r"The folder 'lessons-lost' .* is missing .* Install"):
        data_path("lessons-lost")


def test_a_stranger_beside_an_installed_package_is_not_taken(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "circuitcheck").mkdir()
    (tmp_path / "samples").mkdir()
    monkeypatch.setattr(shipped, "__file__", str(tmp_path / "circuitcheck" / "shipped.py"))
    with pytest.raises(FileNotFoundError):
        data_path("samples")


def test_the_version_is_the_project_files() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert version() == project["version"]


def test_every_file_the_readme_points_to_exists() -> None:
    named = set(re.findall(r"samples/[\w./-]*\w", (ROOT / "README.md").read_text(encoding="utf-8")))
    assert named
    assert {name for name in named if not (ROOT / name).exists()} == set()


@pytest.mark.slow
def test_a_wheel_made_from_the_source_distribution_holds_all_that_ships(tmp_path: Path) -> None:
    # Without isolation: the build needs no network, hatchling comes with the dev extra.
    build = [sys.executable, "-m", "build", "--no-isolation", "--outdir", str(tmp_path), str(ROOT)]
    built = subprocess.run(build, capture_output=True, text=True, check=False)
    assert built.returncode == 0, built.stdout + built.stderr
    (wheel,) = tmp_path.glob("*.whl")
    unpacked = tmp_path / "unpacked"
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(unpacked)

    package = unpacked / "circuitcheck"
    for folder in ("icons", "samples"):
        assert files_below(package / folder) == files_below(ROOT / folder)
    drawings = sorted(path.name for path in (ROOT / "circuitcheck" / "arrangements").glob("*.wetcircuit"))
    assert drawings == sorted(path.name for path in (package / "arrangements").glob("*.wetcircuit"))
    assert files_below(package / "fonts") == files_below(ROOT / "circuitcheck" / "fonts")
    assert (package / "LICENSE.txt").is_file()
    assert {path.name.partition("-")[0] for path in unpacked.iterdir()} == {"circuitcheck"}

    ask = (
        f"import sys; sys.path.insert(0, {str(unpacked)!r})\n"
        "from circuitcheck.shipped import data_path, version\n"
        "print(version(), *map(data_path, ('icons', 'samples', 'fonts')), sep='\\n')"
    )
    answer = subprocess.run([sys.executable, "-I", "-c", ask], capture_output=True, text=True, check=True)
    expected = [version(), *(str(package / name) for name in ("icons", "samples", "fonts"))]
    assert answer.stdout.splitlines() == expected
