"""What every test shares: no screen is needed, how hard random tests try, and what runs beside what."""

import gc
import os

import pytest
from hypothesis import settings
from xdist.remote import Producer
from xdist.scheduler import LoadScopeScheduling

from circuitcheck import garbage

# Before the first window: a test never needs a screen unless somebody asks for one.
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

# The same examples in every run, so that a failure is the change's and not the day's.
settings.register_profile("ci", derandomize=True, max_examples=100, deadline=None, database=None)
# New examples each time, for an evening: pytest --hypothesis-profile=thorough
settings.register_profile("thorough", max_examples=5_000, deadline=None)
settings.load_profile("ci")

APPEARANCES = ("light", "dark", "high-contrast-light", "high-contrast-dark")


def pytest_addoption(parser: pytest.Parser) -> None:
    """`--pictures FOLDER`: keep a picture of each step of the scripted users, or of every screen, to be looked at,
    in the `--appearance` and, of screens, the `--language` wanted. `--evening`: run what takes many minutes too."""
    parser.addoption("--evening", action="store_true", help="run what takes many minutes too")
    parser.addoption("--pictures", default="", help="keep pictures of the scripted users' steps there")
    parser.addoption("--appearance", default="light", choices=APPEARANCES, help="how pictures look")
    parser.addoption("--language", default="en", choices=("en", "de"), help="what pictures of screens speak")


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Leave out what takes many minutes, unless it is asked for."""
    if not config.getoption("--evening"):
        long = [item for item in items if item.get_closest_marker("evening")]
        config.hook.pytest_deselected(items=long)
        items[:] = [item for item in items if not item.get_closest_marker("evening")]


class WidgetsTogether(LoadScopeScheduling):  # type: ignore[misc]  # xdist is untyped
    """Deal core tests out one by one, and all the editor's to one and the same process."""

    def _split_scope(self, nodeid: str) -> str:
        return "widgets" if nodeid.startswith("tests/editor/") else nodeid


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_make_scheduler(config: pytest.Config, log: Producer) -> WidgetsTogether | None:
    """Deal the tests out so wherever `--dist=loadscope` is asked for, as pyproject.toml does.

    WORKAROUND xdist's own groups (`loadgroup`) are silently ignored from pytest 9.2 on:
    https://github.com/pytest-dev/pytest-xdist/issues/1386
    """
    return WidgetsTogether(config, log) if config.getoption("dist") == "loadscope" else None


def pytest_collection_finish(session: pytest.Session) -> None:
    """Ten thousand collected tests stay to the end: whatever looks for garbage need not look through them again.
    They stay frozen while the program reads drawings. What is measured is the program as it is."""
    if not session.config.getoption("--benchmark-enable"):
        gc.freeze()
        garbage.grow_old = lambda: None
