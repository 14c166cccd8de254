"""The open vent and the cold feed of an open-vented circuit."""
