"""A drawing put to work: how everything stands, what flows then, what is cut off, how it warms in time. No Qt."""
