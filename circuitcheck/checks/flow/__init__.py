"""Whether every part gets the flow it is meant to have, in every situation."""
