"""Operating a drawing: its valves turned, its flow seen to move, pressure and temperature in time."""
