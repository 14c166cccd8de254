"""What happens when the program itself fails: what it notes, what it shows, and what one may hand on."""
