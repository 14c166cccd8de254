"""What ends work on many files early; each text is one sentence."""

from __future__ import annotations


class FolderError(Exception):
    """The work can't be done this way."""


class StateError(FolderError):
    """The file that answers are kept in can't be used for it."""


class ClusterError(FolderError):
    """The cluster can't do the work."""


class InterruptedRunError(FolderError):
    """Somebody broke the run off: what was done, and what of it is kept."""
