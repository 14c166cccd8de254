"""Whether hot and cold water come to the outlets safely, clean, and in the measure they need."""
