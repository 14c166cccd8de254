"""The tests; their folders mirror the package's."""
