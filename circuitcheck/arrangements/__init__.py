"""The usual arrangements: sound, complete drawings to begin from, and to put practice's faults into."""
