"""The heat source of a sealed circuit and its safety devices."""
