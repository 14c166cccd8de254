"""What a supervisor says of a drawing: notes, acceptances and records."""
