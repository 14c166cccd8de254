"""Review in the window: notes, acceptances, comparing with an earlier file, the review record."""
