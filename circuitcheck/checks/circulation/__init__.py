"""Whether pumps always have somewhere to drive the water."""
