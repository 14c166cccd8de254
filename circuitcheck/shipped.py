"""What ships with the program: its folders of icons, samples and fonts, and its version."""

from pathlib import Path


def data_path(folder: str) -> Path:
    """Return the folder of that name that ships with the program: `icons`, `samples` or `fonts`.

    A wheel holds all of them inside the package; in a checkout, and so in an editable install,
    icons and samples lie beside it.

    Raises FileNotFoundError, with a sentence for the user, where there is no such folder.
    """
    package = Path(__file__).resolve().parent
    inside = package / folder
    if inside.is_dir():
        return inside
    beside = package.parent / folder
    # Beside an installed package lie other people's packages; only a checkout's folders are ours.
    if _is_checkout(package.parent) and beside.is_dir():
        return beside
    raise FileNotFoundError(
        f"The folder '{folder}' that ships with circuitcheck is missing from {package}. "
        "Install the program again."
    )


def version() -> str:
    """Return the program's version, such as `0.1.0`: a checkout's own, else the installed one's."""
    checkout = Path(__file__).resolve().parent.parent
    if _is_checkout(checkout):
        import tomllib

        project = tomllib.loads((checkout / "pyproject.toml").read_text(encoding="utf-8"))["project"]
        return str(project["version"])
    from importlib.metadata import version as installed_version

    return installed_version("circuitcheck")


def _is_checkout(folder: Path) -> bool:
    """Say whether the folder around the package is a checkout or an unpacked source distribution."""
    return (folder / "pyproject.toml").is_file()
