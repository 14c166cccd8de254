"""The panel of worked figures: its rows, the opened figure with its working, and what both say."""
