"""The mains-fed store and what keeps it safe."""
