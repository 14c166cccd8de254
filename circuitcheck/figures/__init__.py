"""Each worked figure of a drawing, computed when first asked for."""
