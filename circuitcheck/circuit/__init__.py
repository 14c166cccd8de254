"""The circuit behind a Drawing: joined water, what can cut it off, and where it can circulate."""
